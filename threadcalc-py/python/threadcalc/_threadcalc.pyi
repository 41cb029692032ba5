"""The native part of threadcalc; import its names from ``threadcalc``.

Lengths are millimetres unless a name says otherwise. Exact numbers come out as ``Fraction``; an
int, Fraction, Decimal, str or float goes in. A float stands for its shortest decimal text: 6.8 is
34/5. More than 9 decimals, NaN and infinity are errors. A wrong type and a missing keyword are
``TypeError``, every bad value is ``ThreadcalcError``.
"""

from collections.abc import Iterable
from decimal import Decimal
from fractions import Fraction
from typing import Any, Literal, TypeAlias, final
from typing_extensions import Self

__all__ = [
    "Alternative",
    "CardRow",
    "Comment",
    "Depths",
    "Drill",
    "Feed",
    "Finding",
    "FoundThread",
    "HoleNote",
    "Job",
    "Limits",
    "Pipe",
    "Plan",
    "Profile",
    "TapDrill",
    "TaperDepths",
    "Thread",
    "depths",
    "drill_diameter",
    "drills",
    "exact_speeds",
    "feed",
    "near",
    "percent_thread",
    "plan",
    "programmed_speed",
    "read_comment",
    "read_fit",
    "read_hole_note",
    "read_number",
    "standard_threads",
    "tap_drill",
    "taper_depths",
]

_Exact: TypeAlias = int | Fraction | Decimal | str | float
_Range: TypeAlias = tuple[Fraction | None, Fraction | None]
_Json: TypeAlias = None | bool | int | float | str | list[_Json] | dict[str, _Json]
_Field: TypeAlias = None | bool | _Exact | bytes | Thread | list[str] | tuple[str, ...] | set[str] | dict[str, _Field]
_Form: TypeAlias = Literal["metric", "unified", "npt", "nptf", "npsc", "npsm", "npsf", "g", "r", "rp", "rc"]
_Unit: TypeAlias = Literal["mm", "inch"]
_Mode: TypeAlias = Literal["per_minute", "per_revolution"]
_Tap: TypeAlias = Literal["cut", "form"]
_Basis: TypeAlias = Literal["3H/4", "5H/8"]
_Side: TypeAlias = Literal["internal", "external"]
_Hand: TypeAlias = Literal["right", "left"]
_Set: TypeAlias = Literal["metric", "number", "letter", "fractional"]
_Within: TypeAlias = Literal["yes", "no", "does-not-apply"]

@final
class Thread:
    """A screw thread. Immutable and hashable; equality is on values.

    Args:
        designation: One designation, str or bytes. Offsets in errors are bytes (UTF-8).

    Raises:
        DesignationError: If it cannot be read, or contradicts itself.

    >>> thread = Thread("1/4-20 UNC-2B")
    >>> thread.lead_mm
    Fraction(127, 100)
    >>> thread == Thread(".250-20 unc 2B")
    True
    >>> Thread("1/4-20 UNF")
    Traceback (most recent call last):
    ...
    threadcalc.errors.DesignationError: ...
    >>> Thread("1/4 NPT")
    Thread('1/4-18 NPT')

    Source: ISO 965-1, ISO 261; ASME B1.1; ISO 228-1, ISO 7-1, ASME B1.20.1 and B1.20.3 (pipe threads).
    """

    def __new__(cls, designation: str | bytes, /) -> Self: ...
    @staticmethod
    def metric(diameter_mm: _Exact, pitch_mm: _Exact) -> Thread:
        """An ISO metric thread, right hand, single start.

        Args:
            diameter_mm: Nominal diameter in millimetres, above 0 up to 2000.
            pitch_mm: Pitch in millimetres, above 0 up to 5/8 of the diameter.

        Raises:
            ThreadcalcError: ``out-of-range`` if diameter and pitch make no thread.

        >>> Thread.metric(8, 1.25)
        Thread('M8x1.25')
        """
    @staticmethod
    def unified(diameter_in: _Exact, threads_per_inch: _Exact) -> Thread:
        """A Unified thread, right hand, single start.

        Args:
            diameter_in: Diameter in inches; a str names the size as a designation does (``"#10"``).
            threads_per_inch: Threads per inch, above 0.

        Raises:
            ThreadcalcError: ``out-of-range`` if diameter and pitch make no thread.

        >>> Thread.unified(0.25, 20)
        Thread('1/4-20 UNC')
        >>> Thread.unified("#10", 32)
        Thread('10-32 UNF')
        """
    def with_class(self, tolerance_class: str | bytes, /) -> Thread:
        """The same thread with this tolerance class, and the side that follows from it.

        Raises:
            ThreadcalcError: ``unknown-class``; ``contradiction`` if the side was set to the other one.

        >>> Thread("M8").with_class("6H").side
        'internal'
        """
    def with_side(self, side: _Side, /) -> Thread:
        """The same thread on this side of the fit.

        Raises:
            ThreadcalcError: ``contradiction`` if the form or the tolerance class belongs to the other side.
        """
    def with_hand(self, hand: _Hand, /) -> Thread:
        """The same thread with this hand.

        >>> print(Thread("M10x1-6H").with_hand("left"))
        M10x1-6H-LH
        """
    def with_starts(self, starts: int, /) -> Thread:
        """The same thread with this number of starts, 1 to 12; a pipe thread has 1.

        Raises:
            ThreadcalcError: ``out-of-range``.

        >>> Thread("M16x1.5").with_starts(2).lead_mm
        Fraction(3, 1)
        """
    def profile(self) -> Profile:
        """The basic profile, unrounded; that of a pipe thread at the gauge plane.

        >>> round(Thread("M10").profile().pitch_diameter_mm, 3)
        9.026

        Source: ISO 68-1, ISO 724; ASME B1.1; ISO 228-1, ISO 7-1; ASME B1.20.1.
        """
    def pipe(self) -> Pipe:
        """The dimensions of a pipe thread, in millimetres.

        Raises:
            ThreadcalcError: ``does-not-apply`` if the thread is none.

        >>> pipe = Thread("1/4-18 NPT").pipe()
        >>> float(pipe.hand_tight_length_mm / Fraction("25.4"))
        0.2278
        >>> Thread("G1/2").pipe().pipe_diameter_mm is None
        True

        Source: ASME B1.20.1-1983 table 2; ASME B1.20.3; ISO 7-1:1994; ISO 228-1:2000.
        """
    def limits(self) -> Limits:
        """The limits of size of the tolerance class, the standard's own rounded decimals.

        Raises:
            ThreadcalcError: ``class-unset`` without a class, where the thread needs one (an
                internal G and Rp have none); ``not-sourced`` for classes whose tables have not
                been read; ``does-not-apply`` for taper threads, which are gauged by turns.

        >>> low, high = Thread("M8x1.25-6H").limits().minor_mm
        >>> float(low), float(high)
        (6.647, 6.912)

        Source: ISO 965-1; ASME B1.1; ISO 228-1 (G); ISO 7-1 (Rp).
        """
    @property
    def form(self) -> _Form:
        """The profile.

        >>> Thread("Rc 1/2").form
        'rc'
        """
    @property
    def series(self) -> str | None:
        """The standard's series token; None for a metric special and for pipe threads.

        >>> Thread("M8").series, Thread("7/16-14").series
        ('coarse', 'UNC')
        """
    @property
    def is_standard(self) -> bool:
        """True if the standard lists this diameter with this pitch, single start."""
    @property
    def size(self) -> str:
        """The text that names the size.

        >>> Thread("#10-32").size
        'No. 10'
        """
    @property
    def nominal_mm(self) -> Fraction | None:
        """The diameter that names the thread, in millimetres, exact; None for a pipe thread.

        >>> Thread("M8").nominal_mm, Thread("G1/2").nominal_mm
        (Fraction(8, 1), None)
        """
    @property
    def major_mm(self) -> Fraction:
        """Basic major diameter in millimetres, exact.

        NPT and its kin: the outside diameter of the pipe. R and Rc: at the gauge plane.

        >>> float(Thread("G1/2").major_mm)
        20.955
        """
    @property
    def pitch_mm(self) -> Fraction:
        """Distance between neighbouring threads in millimetres, exact."""
    @property
    def lead_mm(self) -> Fraction:
        """Advance in one turn in millimetres, exact: pitch x starts."""
    @property
    def starts(self) -> int:
        """Number of starts."""
    @property
    def hand(self) -> _Hand:
        """Direction of the helix."""
    @property
    def taper_on_diameter(self) -> Fraction:
        """Taper on the diameter: 1/16 for NPT, NPTF, R and Rc, 0 for straight threads."""
    @property
    def side(self) -> _Side | None:
        """Side of the fit, where class or caller says so."""
    @property
    def tolerance_class(self) -> str | None:
        """The tolerance class as written."""
    @property
    def wire_insert(self) -> bool:
        """True for the hole of a wire insert; this version reads none."""
    @property
    def written_as(self) -> Literal["BSP", "BSPP", "BSPT", "PF", "PT", "PS", "NPT(F)"] | None:
        """The older or open name that a pipe thread was read from; no part of its value.

        >>> thread = Thread("1/2 BSPT")
        >>> str(thread), thread.written_as, thread == Thread("Rc1/2")
        ('Rc1/2', 'BSPT', True)
        """
    @property
    def choice(self) -> Literal[1, 2, 3] | None:
        """How strongly the standard prefers the diameter.

        1 first, 2 second, 3 third choice; Unified: 1 primary, 2 secondary. None if it does not list
        it, and for pipe threads.

        >>> Thread("M8").choice, Thread("M7").choice, Thread("M8.1x1").choice
        (1, 2, None)

        Source: ISO 261:1998 table 2; ASME B1.1-2003 table 1.
        """
    @property
    def is_iso_262(self) -> bool:
        """True if ISO 262 selects this diameter and pitch for screws, bolts and nuts.

        >>> Thread("M8").is_iso_262, Thread("M8x0.75").is_iso_262
        (True, False)

        Source: ISO 262:1998.
        """
    @property
    def findings(self) -> list[Finding]:
        """What is doubtful about the thread.

        A special, with what is near; an older name that leaves something to assume; for a pipe
        thread the families that it is easily taken for.

        >>> [finding.id for finding in Thread("1/4-18").findings]
        ['not-standard']
        >>> [finding.id for finding in Thread("1/2 BSPT").findings]
        ['family-assumed', 'pipe-family']
        """
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...
    def __hash__(self) -> int: ...
    def __reduce__(self) -> tuple[object, ...]: ...
    @classmethod
    def _from_parts(
        cls,
        form: str,
        major_mm: tuple[int, int],
        pitch_mm: tuple[int, int],
        starts: int,
        hand: str,
        side: str | None,
        tolerance_class: str,
        written_as: str | None = None,
    ) -> Thread: ...

@final
class Profile:
    """The basic profile of a thread, unrounded formulas, in millimetres.

    That of a pipe thread is at the gauge plane. None stands where the standard has none: the stress
    area of a pipe thread, the crests and roots of NPTF and NPSF.

    Source: ISO 68-1, ISO 724, ISO 898-1 (stress area); ASME B1.1; ISO 228-1, ISO 7-1; ASME B1.20.1.
    """

    @property
    def triangle_height_mm(self) -> float:
        """Height of the fundamental triangle, H."""
    @property
    def major_mm(self) -> float | None:
        """Basic major diameter, D."""
    @property
    def pitch_diameter_mm(self) -> float | None:
        """Basic pitch diameter, D2."""
    @property
    def minor_mm(self) -> float | None:
        """Basic minor diameter of the internal thread, D1."""
    @property
    def external_minor_mm(self) -> float | None:
        """Minor diameter of the external thread at its rounded root, d3."""
    @property
    def stress_area_mm2(self) -> float | None:
        """Tensile stress area of the external thread, in square millimetres."""
    @property
    def flank_angles_deg(self) -> tuple[float, float]:
        """Angles of the two flanks against the normal to the axis, in degrees."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Pipe:
    """Basic dimensions of a pipe thread, in millimetres, exact; None where its standard has none.

    With D in inches: E0 = D - (0.05 D + 1.1) p, E1 = E0 + L1/16, L2 = (0.80 D + 6.8) p,
    E2 = E0 + L2/16, K0 = E0 - 0.8 p. G, R, Rp, Rc: D2 = D - h, h = 0.640327 P as printed.

    Source: ASME B1.20.1-1983 table 2; ASME B1.20.3; ISO 7-1:1994; ISO 228-1:2000.
    """

    @property
    def pipe_diameter_mm(self) -> Fraction | None:
        """Outside diameter of the pipe, D."""
    @property
    def pitch_diameter_small_end_mm(self) -> Fraction | None:
        """Pitch diameter at the small end, E0; at the end of the pipe, deepest in the hole."""
    @property
    def pitch_diameter_gauge_plane_mm(self) -> Fraction | None:
        """Pitch diameter at the gauge plane, E1, D2 or d2: at the face of a tapped hole."""
    @property
    def hand_tight_length_mm(self) -> Fraction | None:
        """Length of hand-tight engagement, L1."""
    @property
    def effective_length_mm(self) -> Fraction | None:
        """Length of effective thread, L2."""
    @property
    def pitch_diameter_effective_mm(self) -> Fraction | None:
        """Pitch diameter at the end of the effective thread, E2."""
    @property
    def minor_diameter_small_end_mm(self) -> Fraction | None:
        """Minor diameter at the small end, K0."""
    @property
    def thread_height_mm(self) -> Fraction | None:
        """Height of the thread, h."""
    @property
    def gauge_length_mm(self) -> Fraction | None:
        """Gauge length of ISO 7-1 (R, Rc)."""
    @property
    def useful_length_mm(self) -> Fraction | None:
        """Useful thread of ISO 7-1 at the basic gauge length (R, Rc)."""
    @property
    def gauge_tolerance_turns(self) -> Fraction | None:
        """Turns that the gauge may stand off, either way."""
    @property
    def source(self) -> str:
        """Standard, edition and table or rule."""
    @property
    def confidence(self) -> str:
        """How sure the table's values are: "confirmed", "by rule" or "from memory"."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Limits:
    """Limits of size, exact decimals of the standard, in millimetres: (smallest, largest).

    None stands where the standard sets none, or this version has not read it.
    """

    @property
    def major_mm(self) -> _Range:
        """Major diameter."""
    @property
    def pitch_diameter_mm(self) -> _Range:
        """Pitch diameter."""
    @property
    def minor_mm(self) -> _Range:
        """Minor diameter."""
    @property
    def native_unit(self) -> _Unit:
        """The unit in which the standard gives its decimals."""
    @property
    def decimals(self) -> int:
        """How many decimals the standard gives, in that unit."""
    @property
    def source(self) -> str:
        """Standard, edition and table or rule."""
    @property
    def confidence(self) -> str:
        """How sure the limits are: "confirmed", "by rule" or "from memory"."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Finding:
    """Something doubtful or wrong that does not keep a result from existing."""

    @property
    def id(self) -> str:
        """The stable id, such as "not-standard"."""
    @property
    def severity(self) -> Literal["error", "warning", "info"]:
        """How bad it is. While an error stands, a plan gives no words."""
    @property
    def message(self) -> str:
        """What it means, in one line."""
    @property
    def numbers(self) -> dict[str, float]:
        """The numbers, by name; the names carry the units."""
    @property
    def evidence(self) -> str:
        """The input that it rests on, by its name in a job; may be empty."""
    @property
    def suggestion(self) -> str:
        """What would be right; may be empty."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class FoundThread:
    """A thread that a comment mentions."""

    @property
    def thread(self) -> Thread:
        """The thread."""
    @property
    def at(self) -> int:
        """Where its text begins, in bytes (UTF-8 for a str)."""
    @property
    def length(self) -> int:
        """How many bytes its text is."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Comment:
    """The threads that a comment mentions."""

    @property
    def threads(self) -> list[FoundThread]:
        """The first four threads, in order."""
    @property
    def more(self) -> bool:
        """True if the comment mentions more than those."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class HoleNote:
    """A hole note as read. Lengths are exact and in millimetres, None where the note says none."""

    @property
    def count(self) -> int | None:
        """How many holes."""
    @property
    def thread(self) -> Thread | None:
        """The thread."""
    @property
    def thread_at(self) -> int | None:
        """Where the thread's callout begins in the note, in bytes (UTF-8 for a str)."""
    @property
    def thread_length(self) -> int | None:
        """How many bytes of the note the thread's callout is."""
    @property
    def thread_depth_mm(self) -> Fraction | None:
        """Depth of full thread."""
    @property
    def thread_through(self) -> bool:
        """True if the thread goes through."""
    @property
    def drill_mm(self) -> Fraction | None:
        """Diameter of the drilled hole."""
    @property
    def drill_depth_mm(self) -> Fraction | None:
        """Depth of the drilled hole."""
    @property
    def drill_through(self) -> bool:
        """True if the drilled hole goes through."""
    @property
    def has_countersink(self) -> bool:
        """True if the hole is countersunk, with sizes or without."""
    @property
    def countersink_mm(self) -> Fraction | None:
        """Diameter of the countersink."""
    @property
    def countersink_angle_deg(self) -> Fraction | None:
        """Included angle of the countersink, in degrees."""
    @property
    def has_counterbore(self) -> bool:
        """True if the hole is counterbored or spotfaced, with sizes or without."""
    @property
    def counterbore_mm(self) -> Fraction | None:
        """Diameter of the counterbore or spotface."""
    @property
    def counterbore_depth_mm(self) -> Fraction | None:
        """Depth of the counterbore or spotface."""
    @property
    def is_spotface(self) -> bool:
        """True if the counterbore is a spotface: only as deep as it takes to clean up."""
    @property
    def sides(self) -> Literal["near", "far", "both"] | None:
        """Which side of the part the note speaks of."""
    @property
    def plating(self) -> Literal["after", "before"] | None:
        """Whether the thread's limits are meant after or before plating."""
    @property
    def equally_spaced(self) -> bool:
        """True if the holes are equally spaced."""
    @property
    def bolt_circle_mm(self) -> Fraction | None:
        """Diameter of the circle that the holes lie on."""
    @property
    def findings(self) -> list[Finding]:
        """What was assumed, what is doubtful, and what was not understood (``not-read``, by byte and length)."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Feed:
    """A synchronised feed. Its exact numbers are made when they are asked for."""

    @property
    def word(self) -> str:
        """The word of the program, such as "F914.4"."""
    @property
    def text(self) -> str:
        """The number of the word, such as "914.4"."""
    @property
    def unit(self) -> _Unit:
        """The unit of the word."""
    @property
    def mode(self) -> _Mode:
        """The feed mode of the word."""
    @property
    def value(self) -> Fraction:
        """What a control reads back from the text, in the unit of the word."""
    @property
    def exact(self) -> Fraction:
        """The feed before rounding, in the unit of the word."""
    @property
    def lead_error(self) -> Fraction:
        """value / exact - 1; positive means that the programmed lead is too long."""
    @property
    def lead_cut_mm(self) -> Fraction:
        """The lead that will really be cut, in millimetres."""
    def axial_error_mm(self, depth_mm: _Exact) -> Fraction:
        """lead_error x depth: how far the tap is from true at that depth, in millimetres.

        Args:
            depth_mm: Depth from the face in millimetres, 0 or more.

        Raises:
            ThreadcalcError: ``out-of-range`` for a negative depth; ``overflow``.

        >>> feed(Thread("5/8-11 UNC"), 450, unit="inch", mode="per_minute", decimals=2).axial_error_mm(45)
        Fraction(1, 1000)
        """
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Drill:
    """A drill of one of the sets, or one of another diameter.

    Args:
        set: The set.
        name: Its name in the set.

    Raises:
        ThreadcalcError: ``unknown-value`` if the set has no such drill.

    >>> Drill("number", "#7").diameter_mm
    Fraction(25527, 5000)

    Source: ASME B94.11M (number, letter, fractional); ISO 235 (metric).
    """

    def __new__(cls, set: _Set, name: str | bytes) -> Self: ...
    @classmethod
    def of_diameter(cls, diameter_mm: _Exact, /) -> Drill:
        """The drill of exactly this diameter in the sets, else one that is named by its diameter.

        >>> Drill.of_diameter(6.8)
        Drill('metric', '6.8')
        """
    @property
    def name(self) -> str:
        """The name in its set: "6.8", "#7", "F", "5/16"."""
    @property
    def diameter_mm(self) -> Fraction:
        """The diameter in millimetres, exact."""
    @property
    def set(self) -> _Set | None:
        """The set; None for a diameter that stands in no set."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...
    def __hash__(self) -> int: ...
    def __reduce__(self) -> tuple[object, ...]: ...

@final
class Alternative:
    """A drill beside the chosen one, judged like it."""

    @property
    def drill(self) -> Drill:
        """The drill."""
    @property
    def percent(self) -> float | None:
        """Percent of thread on the basis of the answer; None for a taper thread."""
    @property
    def within_limits(self) -> _Within:
        """Whether the hole lies within the class's minor-diameter limits."""
    @property
    def left_to_limit_mm(self) -> Fraction | None:
        """What is left to the largest minor diameter, in millimetres; negative beyond it."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class TapDrill:
    """A chosen tap drill."""

    @property
    def drill(self) -> Drill:
        """The drill."""
    @property
    def percent(self) -> float | None:
        """Percent of thread that it leaves, on the basis; None for a taper thread."""
    @property
    def basis(self) -> _Basis | None:
        """The basis of every percent here.

        None for a form tap, whose 100 % is 0.68 P, and for pipe threads, whose 100 % is their own height.
        """
    @property
    def within_limits(self) -> _Within:
        """Whether the hole lies within the class's minor-diameter limits; decided exactly."""
    @property
    def left_to_limit_mm(self) -> Fraction | None:
        """What is left to the largest minor diameter, in millimetres; negative beyond it."""
    @property
    def limits(self) -> Limits | None:
        """The limits that the hole was judged by."""
    @property
    def alternatives(self) -> list[Alternative]:
        """The two next smaller and the two next larger drills of the sets, smallest first."""
    @property
    def findings(self) -> list[Finding]:
        """What is doubtful."""

@final
class Depths:
    """Depths from the face, in millimetres."""

    @property
    def tap_mm(self) -> Fraction:
        """To the very end of the tap, its centre included."""
    @property
    def program_tap_mm(self) -> Fraction:
        """To the point that the tap's length offset is set on: what the program says."""
    @property
    def full_diameter_mm(self) -> Fraction:
        """To the end of the drill's full diameter."""
    @property
    def drill_point_mm(self) -> float:
        """To the drill's point."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class TaperDepths:
    """Depths of a taper pipe hole from the face, in millimetres; turns from the face."""

    @property
    def hand_tight_mm(self) -> Fraction:
        """From the face to the plane that the tap's ring stands at: L1 (NPT, NPTF), the gauge length (Rc)."""
    @property
    def projection_mm(self) -> Fraction:
        """How far the tap projects through the ring."""
    @property
    def projection_tolerance_mm(self) -> Fraction | None:
        """How much the table's projection may be off, either way; None for a measured tap."""
    @property
    def tap_mm(self) -> Fraction:
        """To the end of the tap for a thread of basic size."""
    @property
    def first_hole_mm(self) -> Fraction:
        """The same for the first hole: one turn shallow, then gauge."""
    @property
    def full_diameter_mm(self) -> Fraction:
        """To the end of the drill's full diameter: one turn for trimming and the clearance below the tap."""
    @property
    def drill_point_mm(self) -> float:
        """To the drill's point."""
    @property
    def tap_turns(self) -> Fraction:
        """Turns of the tap in the hole for basic size."""
    @property
    def hand_tight_turns(self) -> Fraction:
        """Turns of hand-tight engagement."""
    @property
    def diameter_per_turn_mm(self) -> Fraction:
        """Change of diameter for one turn deeper: P/16."""
    @property
    def gauge_tolerance_turns(self) -> Fraction:
        """Turns that the gauge may stand off, either way."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class CardRow:
    """A speed and the feed that belongs to it."""

    @property
    def rpm(self) -> Fraction:
        """Speed in turns per minute."""
    @property
    def feed(self) -> Feed:
        """Its feed."""
    @property
    def exact(self) -> bool:
        """True if the word is exact."""
    @property
    def planned(self) -> bool:
        """True for the speed of the plan."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Job:
    """One tapped hole: what a plan is asked for.

    Args:
        **fields: Required by ``plan``: ``thread``, ``unit``, ``mode``, ``decimals``, ``rpm``,
            ``hole`` ("through", "blind"), ``full_thread_depth_mm``, ``tap`` ("cut", "form").
            Optional: ``chamfer_threads``, ``tap_set_on`` ("front", "centre"), ``tap_centre_mm``,
            ``drill_sets`` or ``drill_mm``, ``percent``, ``basis``, ``point_angle_deg``,
            ``bottom_clearance_mm``, ``r_plane_mm``, ``machine`` (a dict of ``highest_rpm``,
            ``lowest_rpm``, ``speed_step``), ``dialect`` ("rs274ngc", "unset", or a dict of ``name``,
            ``tap_rh``, ``tap_lh``, ``feed_per_revolution``, ``needs_spindle_running``).

    Raises:
        ThreadcalcError: ``unknown-key`` with the nearest known key, and what its value's reader says.

    >>> Job(thread="M8x1.25-6H", unit="mm").missing
    ['mode', 'decimals', 'rpm', 'hole', 'full_thread_depth_mm', 'tap']
    """

    def __new__(cls, **fields: _Field) -> Self: ...
    @property
    def missing(self) -> list[str]:
        """The required fields that are not given."""
    def to_json(self) -> str:
        """The job as the text of its JSON; exact values are strings."""
    def to_dict(self) -> dict[str, _Json]:
        """The job as a dict; ``plan`` takes it back."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Plan:
    """Everything from a callout to a tapping block. ``str()`` gives it as a page of text."""

    @property
    def words(self) -> list[str]:
        """The words of the tapping block in order; empty while an error stands or without a dialect."""
    @property
    def blocks(self) -> list[str]:
        """The program lines in order; empty as ``words``."""
    @property
    def restore(self) -> list[str]:
        """What the next operation must set again."""
    @property
    def withheld(self) -> list[str]:
        """The ids of the findings that withhold the words."""
    @property
    def findings(self) -> list[Finding]:
        """What is doubtful or wrong, and every assumption that was made."""
    @property
    def thread(self) -> Thread:
        """The thread, internal, with the class that was used."""
    @property
    def job(self) -> Job:
        """The job as it was planned: every assumption filled in."""
    @property
    def profile(self) -> Profile:
        """Basic profile."""
    @property
    def limits(self) -> Limits | None:
        """Limits of size; None where the standard's values are not sourced."""
    @property
    def drill(self) -> TapDrill:
        """The drill, its percent and its neighbours."""
    @property
    def feed(self) -> Feed:
        """The feed at the programmed speed."""
    @property
    def programmed_rpm(self) -> Fraction:
        """The speed that the control will hold, in turns per minute."""
    @property
    def asked_rpm(self) -> Fraction:
        """The speed asked for, in turns per minute."""
    @property
    def lead_cut_mm(self) -> Fraction:
        """The lead that will be cut, in millimetres."""
    @property
    def axial_error_mm(self) -> Fraction:
        """Error of the lead over the full thread depth, in millimetres."""
    @property
    def depths(self) -> Depths:
        """Depths from the face."""
    @property
    def card(self) -> list[CardRow]:
        """Speeds with their feeds, slowest first; empty per revolution, where the feed is the lead."""
    @property
    def not_checked(self) -> list[str]:
        """What a plan cannot check."""
    @property
    def text(self) -> str:
        """The plan as a page of text."""
    def to_json(self) -> str:
        """The plan as the text of its JSON: exact values are strings, derived ones numbers."""
    def to_dict(self) -> dict[str, _Json]:
        """The plan as a dict: its JSON, parsed."""

def read_fit(text: str | bytes, /) -> tuple[Thread, Thread]:
    """Reads a fit: the internal thread, then the external one, whatever their order in the text.

    Args:
        text: Two threads in one designation, str or bytes: ``M8x1.25-6H/6g``, ``Rp/R 1/2``.

    Raises:
        DesignationError: If it cannot be read; ``missing`` for a text with one class only,
            ``contradiction`` for two classes of one side.

    >>> internal, external = read_fit("M8x1.25-6H/6g-LH")
    >>> print(internal, external)
    M8x1.25-6H-LH M8x1.25-6g-LH

    Source: ISO 965-1:2013 (designation of a fit); ISO 7-1:1994 (Rp/R, Rc/R); ASME B1.1-2003; from memory.
    """

def read_hole_note(text: str | bytes, /, *, unit: _Unit | None = None) -> HoleNote:
    """Reads the whole hole note of a drawing, of one line or several.

    Args:
        text: How many, which thread, how deep, drilled, countersunk, counterbored, where, plated; in
            words or symbols. str or bytes; lone Latin-1 bytes are read like their UTF-8 forms.
        unit: The unit of the drawing, for lengths that bear no mark. None: that of the thread's
            standard, with finding ``unit-assumed``.

    Raises:
        DesignationError: What ``Thread`` raises for the thread of the note; ``empty``, ``too-long``
            above 400 bytes, ``unreadable`` if there is neither thread nor hole, ``missing`` for a
            length without a unit in a note without a thread, ``contradiction`` for two threads or two
            values of one thing, ``out-of-range``.

    >>> note = read_hole_note("4X M8x1.25-6H 16 DEEP, 6.8 DRILL 20 DEEP, EQ SP", unit="mm")
    >>> note.count, note.thread, float(note.thread_depth_mm), float(note.drill_mm)
    (4, Thread('M8x1.25-6H'), 16.0, 6.8)
    >>> note.equally_spaced, note.findings
    (True, [])

    Source: ISO 129-1 and ASME Y14.5 for the symbols, from memory; common practice for the words.
    """

def read_comment(text: str | bytes, /, *, tool_is_tap: bool = False) -> Comment:
    """Finds the threads that a comment of a program or a line of a tool list mentions; never an error.

    Dates, part numbers, tool diameters and words of a program (M30, G1) are no threads.

    Args:
        text: One comment, str or bytes.
        tool_is_tap: True if the tool list says that the tool is a tap: a bare M8 is a thread then.

    >>> found = read_comment("T5 TAP M8 LH, 1/4-20 HOLES").threads
    >>> [(str(one.thread), one.at, one.length) for one in found]
    [('M8x1.25-LH', 7, 5), ('1/4-20 UNC', 14, 6)]

    Source: common practice.
    """

def read_number(text: str | bytes, /) -> Fraction:
    """Reads an exact number: 1.25, 1,25, .5, 127/70, 1 1/4. Never a locale; no exponent.

    Raises:
        ThreadcalcError: ``empty``, ``unreadable`` with the byte, ``too-long``, ``not-exact`` above
            9 decimals, ``out-of-range`` for a denominator of 0, ``overflow``.

    >>> read_number("1,25")
    Fraction(5, 4)

    Source: ISO 80000-1 (decimal sign), from memory.
    """

def standard_threads(
    form: _Form | None = None, series: str | None = None
) -> list[Thread]:
    """Every thread of the standard series, right hand, without a class.

    Args:
        form: Only this form.
        series: Only this series: "coarse", "fine", "UNC", "UNF", "UNEF", "8-UN" and the like; pipe
            threads have none.

    Raises:
        ThreadcalcError: ``unknown-value``.

    >>> len(standard_threads("metric", "coarse"))
    40
    >>> standard_threads("rc")[0]
    Thread('Rc1/16')

    Source: ISO 261; ASME B1.1; ASME B1.20.1 and B1.20.3; ISO 228-1; ISO 7-1.
    """

def near(thread: Thread, /) -> list[tuple[str, Literal["same-diameter", "same-pitch", "same-figures"]]]:
    """Designations of the standard threads nearest to a thread, with why each is near.

    >>> near(Thread("M10x1.3"))[0]
    ('M10x1.25', 'same-diameter')
    """

def programmed_speed(
    rpm: _Exact, *, step: _Exact = 1, lowest: _Exact | None = None, highest: _Exact | None = None
) -> Fraction:
    """The speed that the control will really hold: rounded down to its step, never up.

    Args:
        rpm: Speed asked for, in turns per minute, above 0.
        step: Step in which the control holds a speed, above 0.
        lowest: Lowest speed of the machine.
        highest: Highest speed of the machine; a speed above comes down to it.

    Raises:
        ThreadcalcError: ``out-of-range`` if no speed is left.

    >>> programmed_speed("1000.3")
    Fraction(1000, 1)
    """

def feed(
    thread_or_lead_mm: Thread | _Exact, rpm: _Exact | None = None, *, unit: _Unit, mode: _Mode, decimals: int
) -> Feed:
    """The synchronised feed: lead x programmed speed per minute, or the lead per revolution.

    Args:
        thread_or_lead_mm: A thread, or a lead in millimetres above 0.
        rpm: The programmed speed in turns per minute; per minute only.
        unit: The unit the machine is set to.
        mode: What the feed is counted by.
        decimals: Decimals of the feed word, 0 to 9; rounded once, half to even.

    Raises:
        ThreadcalcError: ``missing`` without a speed per minute, ``contradiction`` with one per
            revolution, ``out-of-range``, ``unknown-value``, ``feed-rounds-to-zero``, ``overflow``.

    >>> feed(Thread("1/4-20 UNC"), 720, unit="mm", mode="per_minute", decimals=3).word
    'F914.4'
    >>> feed(1.25, unit="mm", mode="per_revolution", decimals=3).text
    '1.25'

    Source: ISO 6983-1 (F with G94 and G95); 1 in = 25.4 mm exactly.
    """

def exact_speeds(
    thread_or_lead_mm: Thread | _Exact,
    rpm: _Exact,
    *,
    unit: _Unit,
    decimals: int,
    count: int = 5,
    lowest: int = 1,
    highest: int | None = None,
) -> list[int]:
    """Whole speeds at which the feed word per minute is exact, nearest first, lower first on a tie.

    Args:
        thread_or_lead_mm: A thread, or a lead in millimetres above 0.
        rpm: The speed to be near to, in turns per minute.
        unit: The unit the machine is set to.
        decimals: Decimals of the feed word, 0 to 9.
        count: How many speeds at most, up to 100000.
        lowest: Lowest speed, 1 or more.
        highest: Highest speed; None for no limit.

    Raises:
        ThreadcalcError: ``out-of-range``, ``unknown-value``.

    >>> exact_speeds(Thread("5/8-11 UNC"), 445, unit="inch", decimals=0, count=2)
    [440, 451]
    """

def drills(*sets: _Set) -> list[Drill]:
    """Every drill of the sets, set by set; of all sets if none is named.

    Raises:
        ThreadcalcError: ``unknown-value``.

    >>> drills("letter")[0].diameter_mm * 10000 / Fraction("25.4")
    Fraction(2340, 1)

    Source: ASME B94.11M (number, letter, fractional); ISO 235 (metric).
    """

def drill_diameter(thread: Thread, percent: _Exact, *, tap: _Tap, basis: _Basis | None = None) -> float:
    """The hole for a percent of thread, in millimetres.

    Args:
        thread: The thread.
        percent: Percent of thread, above 0 up to 100.
        tap: Cut: D - 1.299038 P x percent/100 on "3H/4", 1.082532 P on "5H/8". Form: 0.68 P.
            G and Rp: 1.280655 P; NPSC and NPSM: E1 + 0.8 P - 1.6 P x percent/100.
        basis: What 100 % is: required for a cut tap in a metric or Unified thread, an error for a
            form tap and for pipe threads, whose 100 % is their own height.

    Raises:
        ThreadcalcError: ``missing``, ``contradiction``, ``out-of-range``, ``unknown-value``,
            ``does-not-apply`` for taper threads, ``not-sourced`` for NPSF and formed pipe threads.

    >>> hole = drill_diameter(Thread("1/4-20 UNC-2B"), 75, tap="cut", basis="3H/4")
    >>> round(hole / 25.4, 4)
    0.2013

    Source: Machinery's Handbook 31; form taps: common practice; ISO 228-1 and ASME B1.20.1 (heights).
    """

def percent_thread(thread: Thread, drill_mm: _Exact, *, tap: _Tap, basis: _Basis | None = None) -> float:
    """The percent of thread that a hole leaves; the inverse of ``drill_diameter``.

    Args:
        thread: The thread.
        drill_mm: Diameter of the hole in millimetres, above 0 and below the major diameter.
        tap: Cut or form tap.
        basis: As for ``drill_diameter``.

    Raises:
        ThreadcalcError: As ``drill_diameter``.

    >>> round(percent_thread(Thread("M8"), 6.8, tap="cut", basis="3H/4"), 1)
    73.9

    Source: as ``drill_diameter``.
    """

def tap_drill(
    thread: Thread,
    *,
    tap: _Tap,
    percent: _Exact | None = None,
    basis: _Basis | None = None,
    sets: str | Iterable[_Set] | None = None,
    taper_reamer: bool = False,
) -> TapDrill:
    """Chooses the drill of the sets for a tapped hole. Nearest is by diameter, ties to the larger.

    Args:
        thread: The thread; without a class it is judged by the medium class, with a finding.
        tap: Cut or form tap.
        percent: The drill nearest to that hole; without it, the drill nearest to D - P within the
            minor-diameter limits (form: nearest to D - P/2).
        basis: What 100 % is; required with a percent for a cut tap, an error for pipe threads.
        sets: Drill sets to choose from; None: metric for M, G, R, Rp and Rc, inch sets for the others.
        taper_reamer: For a taper thread: the hole is reamed to the taper before it is tapped.

    NPT and NPTF take the drill nearest to K0 = E0 - 0.8 p, with taper reamer to K0 - 3 p/16; Rc the
    smallest drill not below D1 at the face, with taper reamer nearest to D1 - useful thread/16.

    Raises:
        ThreadcalcError: ``missing``, ``contradiction``, ``no-drill``, ``unknown-value``, ``out-of-range``;
            ``does-not-apply`` for a percent or a form tap in a taper thread.

    >>> tap_drill(Thread("M10x1.5-6H"), tap="cut").drill.name
    '8.5'
    >>> tap_drill(Thread("1/4-20 UNC-2B"), tap="cut", percent=75, basis="3H/4").drill.name
    '#7'
    >>> found = tap_drill(Thread("1/4-18 NPT"), tap="cut")
    >>> found.drill.name, found.percent, [finding.id for finding in found.findings]
    ('7/16', None, ['taper-hole'])

    Source: ISO 2306 (D - P); Machinery's Handbook 31 (percent); ASME B94.9-2008 (NPT, direct tapping);
    form taps, taper reamer and Rc: common practice.
    """

def depths(
    thread: Thread,
    full_thread_mm: _Exact,
    *,
    chamfer_threads: _Exact,
    drill_mm: _Exact,
    point_angle_deg: _Exact,
    bottom_clearance_mm: _Exact,
    tap_centre_mm: _Exact = 0,
    tap_set_on: Literal["front", "centre"] = "front",
    through: bool = False,
) -> Depths:
    """How deep to tap and to drill, from the face.

    Args:
        thread: The thread.
        full_thread_mm: Full thread from the face, in millimetres.
        chamfer_threads: Threads of the tap's chamfer; plan on the longest of its form.
        drill_mm: Diameter of the drilled hole, in millimetres.
        point_angle_deg: Point angle of the drill in degrees, above 60 up to 180.
        bottom_clearance_mm: Room below the tap, in millimetres.
        tap_centre_mm: Length of the tap's male centre, in millimetres.
        tap_set_on: The place on the tap that its length offset is set on.
        through: True for a through hole.

    Raises:
        ThreadcalcError: ``out-of-range`` names the value that makes no sense; ``does-not-apply`` for
            taper threads, see ``taper_depths``.

    >>> found = depths(Thread("M8"), 16, chamfer_threads=3, drill_mm=6.8,
    ...                point_angle_deg=118, bottom_clearance_mm=3.75)
    >>> float(found.tap_mm), float(found.full_diameter_mm)
    (19.75, 23.5)

    Source: common practice; chamfer lengths by form: DIN 2197.
    """

def taper_depths(
    thread: Thread,
    *,
    drill_mm: _Exact,
    point_angle_deg: _Exact,
    bottom_clearance_mm: _Exact,
    projection_mm: _Exact | None = None,
) -> TaperDepths:
    """How deep to tap and to drill a taper pipe thread, from the face: its depth sets its size.

    tap = L1 + projection; first hole = tap - 1 P; full diameter = tap + 1 P + bottom clearance.

    Args:
        thread: NPT, NPTF or Rc.
        drill_mm: Diameter of the drilled hole, in millimetres.
        point_angle_deg: Point angle of the drill in degrees, above 60 up to 180.
        bottom_clearance_mm: Room below the tap for chips, in millimetres; one turn more is kept for
            trimming the depth.
        projection_mm: How far the small end of this tap projects through its ring gauge, in
            millimetres: measure yours. None: the projection of ASME B94.9 for NPT and NPTF.

    Raises:
        ThreadcalcError: ``does-not-apply`` for straight threads, ``contradiction`` for external ones,
            ``missing`` for a projection that no table has, ``out-of-range``.

    >>> found = taper_depths(Thread("1/4-18 NPT"), drill_mm="11.1", point_angle_deg=118,
    ...                      bottom_clearance_mm=3)
    >>> round(float(found.tap_mm), 3), round(float(found.tap_turns), 2)
    (17.445, 12.36)

    Source: ASME B1.20.1-1983 (L1); ASME B94.9-2008, table of taper pipe tap limits (projection);
    ISO 7-1:1994 (gauge length); one turn for trimming: common practice.
    """

def plan(job: Job | dict[str, Any], /) -> Plan:
    """Plans one tapped hole: thread, limits, drill, speed, feed, depths, words and what is doubtful.

    Args:
        job: A ``Job``, or a dict of its fields. What is not required and not given is assumed, and
            each assumption is a finding.

    Raises:
        ThreadcalcError: ``missing`` names the field; every error of the single calculations.

    >>> found = plan({"thread": "1/4-20 UNC-2B", "unit": "mm", "mode": "per_minute", "decimals": 3,
    ...               "rpm": 720, "hole": "blind", "full_thread_depth_mm": 12, "tap": "cut",
    ...               "dialect": "rs274ngc"})
    >>> found.feed.word, found.withheld
    ('F914.4', [])
    """
