"""The native part of threadcalc; import its names from ``threadcalc``.

Lengths are millimetres unless a name says otherwise. Exact numbers come out as ``Fraction``; an
int, Fraction, Decimal, str or float goes in. A float stands for its shortest decimal text: 6.8 is
34/5. More than 9 decimals, NaN and infinity are errors. A wrong type and a missing keyword are
``TypeError``, every bad value is ``ThreadcalcError``.
"""

from collections.abc import Iterable, Iterator, Mapping
from decimal import Decimal
from fractions import Fraction
from os import PathLike
from pathlib import Path
from typing import Any, Literal, TypeAlias, final
from typing_extensions import Self

__all__ = [
    "Alternative",
    "Audit",
    "AuditSummary",
    "AuditedProgram",
    "BlindThread",
    "BottomReading",
    "Bottoming",
    "CardRow",
    "ChamferForm",
    "ChamferReading",
    "CoatingGrowth",
    "Comment",
    "Comparison",
    "Countersunk",
    "Cycle",
    "Depths",
    "Dialect",
    "Drill",
    "Engagement",
    "EngagementLengths",
    "FactorRange",
    "Feed",
    "FeedFit",
    "Finding",
    "FoundThread",
    "Gauge",
    "Gauges",
    "Gear",
    "GearFit",
    "HolderClearance",
    "HolderTravel",
    "HoleChange",
    "HoleNote",
    "Identification",
    "IsoTap",
    "Job",
    "Limits",
    "Match",
    "NextMove",
    "NotGoRule",
    "Pipe",
    "Plan",
    "Profile",
    "ProgramDepth",
    "ProgramFinding",
    "ProgramFindingKind",
    "ReEntry",
    "Reading",
    "Report",
    "ShankMark",
    "Spindle",
    "StartingForces",
    "StartingStrength",
    "TapAdvice",
    "TapDrill",
    "TapKind",
    "TapLimit",
    "TaperDepths",
    "TappedHole",
    "TappingTime",
    "Thread",
    "ThroughHole",
    "TorqueBand",
    "UsualCountersink",
    "audit",
    "best_wire_mm",
    "bottoming",
    "chamfers_for_full_thread",
    "chamfers_that_fit",
    "check",
    "compare",
    "countersink",
    "cycle",
    "depths",
    "drill_diameter",
    "drills",
    "engagement",
    "engagement_group",
    "exact_speeds",
    "feed",
    "feed_fit",
    "form_hole_mm",
    "forming_factor",
    "full_thread_that_fits",
    "gauges",
    "gear_fit",
    "h_limit_for_plating",
    "holder_clearance",
    "holder_travel",
    "identify",
    "identify_feed",
    "identify_lead",
    "iso_tap_class",
    "iso_tap_pitch_diameter_mm",
    "judge_drill",
    "judge_tap",
    "materials",
    "near",
    "nearest_exact_speeds",
    "next_move",
    "not_go_rule",
    "over_wires",
    "pattern_time_s",
    "percent_thread",
    "plan",
    "power_kw",
    "probable_hole_mm",
    "program_depth",
    "program_depth_of_derived",
    "program_finding_kinds",
    "programmed_speed",
    "property_classes",
    "re_entry_r",
    "read_comment",
    "read_fit",
    "read_hole_note",
    "read_number",
    "read_shank_mark",
    "recommended_class",
    "run_out_mm",
    "speed_after_turns",
    "spindle_speed",
    "spindle_speed_feet",
    "standard_threads",
    "starting_forces",
    "starting_part_strength",
    "starting_strength",
    "surface_speed_m_min",
    "tap_drill",
    "taper_depths",
    "taper_factor",
    "tapping_time",
    "threads_near_diameter",
    "threads_near_pitch",
    "threads_of_pitch",
    "through_hole",
    "torque_by_chip_area",
    "torque_by_pitch",
    "torque_nm",
    "trimmed_depth_mm",
    "turns_to_speed",
    "usual_countersink",
    "usual_tap_limit",
    "usual_tap_limit_for_plating",
    "write_baseline",
]

_Exact: TypeAlias = int | Fraction | Decimal | str | float
_Range: TypeAlias = tuple[Fraction | None, Fraction | None]
_Json: TypeAlias = None | bool | int | float | str | list[_Json] | dict[str, _Json]
_Gears: TypeAlias = list[_Exact] | list[list[_Exact]] | list[tuple[_Exact, ...]] | tuple[tuple[_Exact, ...], ...]
_Field: TypeAlias = (
    None | bool | _Exact | bytes | Thread | Dialect | list[str] | tuple[str, ...] | set[str] | _Gears | dict[str, _Field]
)
_Form: TypeAlias = Literal[
    "metric", "unified", "npt", "nptf", "npsc", "npsm", "npsf", "g", "r", "rp", "rc", "metric-j", "miniature", "unified-r",
    "unified-j", "whitworth", "ba", "trapezoidal", "acme", "stub-acme", "buttress", "pull-buttress",
]
_Unit: TypeAlias = Literal["mm", "inch"]
_Mode: TypeAlias = Literal["per_minute", "per_revolution"]
_Tap: TypeAlias = Literal["cut", "form"]
_Basis: TypeAlias = Literal["3H/4", "5H/8"]
_Side: TypeAlias = Literal["internal", "external"]
_Hand: TypeAlias = Literal["right", "left"]
_HoleValue: TypeAlias = Literal["lead", "depth", "hand", "speed", "count", "thread", "tool", "place"]
_Set: TypeAlias = Literal["metric", "number", "letter", "fractional"]
_Holder: TypeAlias = Literal["rigid", "tension_compression", "floating"]
_ReturnTo: TypeAlias = Literal["r_plane", "initial"]
_DwellUnit: TypeAlias = Literal["seconds", "milliseconds"]
_RetractIn: TypeAlias = Literal["factor", "percent"]
_FeedBasis: TypeAlias = Literal["by_mode", "per_min_always", "per_rev_in_tap_cycle", "lead_word"]
_RigidUntil: TypeAlias = Literal["next_cycle", "cycle_cancelled", "spindle_code", "program_end"]
_RepeatZero: TypeAlias = Literal["error", "store_only", "once"]
_NoPoint: TypeAlias = Literal["as_written", "least_increment"]
_NumberSpaces: TypeAlias = Literal["ignored", "error"]
_BlockOrder: TypeAlias = Literal["rs274ngc", "units_first"]
_DialectField: TypeAlias = None | bool | _Exact | list[str] | tuple[str, ...] | dict[str, _DialectField]
_DialectLike: TypeAlias = Dialect | str | dict[str, Any]
_PropertyClass: TypeAlias = Literal["4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9"]
_Material: TypeAlias = Literal[
    "free_cutting_steel",
    "structural_steel",
    "tempered_steel",
    "high_strength_steel",
    "tool_steel",
    "austenitic_stainless",
    "grey_cast_iron",
    "malleable_cast_iron",
    "copper_alloy",
    "aluminium",
]
_Hole: TypeAlias = Literal["through", "blind"]
_TapKind: TypeAlias = Literal["straight_flute", "spiral_point", "spiral_flute", "form"]
_TapClass: TypeAlias = Literal["1", "2", "3"]
_Chamfer: TypeAlias = Literal["A", "B", "C", "D", "E", "F", "taper", "plug", "semi_bottoming", "bottoming"]
_BottomVerdict: TypeAlias = Literal["fine", "warning", "error"]
_DrilledTo: TypeAlias = Literal["full_diameter", "point"]
_DepthRounding: TypeAlias = Literal["deeper", "shallower"]
_EngagementGroup: TypeAlias = Literal["S", "N", "L"]
_FitQuality: TypeAlias = Literal["fine", "medium", "coarse"]
_RunOut: TypeAlias = Literal["normal", "short", "long"]
_GaugeKind: TypeAlias = Literal[
    "thread_plug_go",
    "thread_plug_not_go",
    "plain_plug_go",
    "plain_plug_not_go",
    "thread_ring_go",
    "thread_ring_not_go",
    "plain_ring_go",
    "plain_ring_not_go",
    "taper_plug",
    "taper_ring",
]
_Move: TypeAlias = Literal[
    "nothing",
    "clean_and_gauge_again",
    "compare_names",
    "deburr",
    "tap_deeper",
    "change_tap",
    "larger_tap",
    "smaller_tap",
    "check_feed",
    "check_axial_force",
    "check_cutting",
    "stop_and_gauge_back",
    "repair_or_scrap",
    "tap_shallower",
]
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
        """The same thread with this number of starts, 1 to 12; pipe threads, S, BA and wire insert holes have 1.

        Raises:
            ThreadcalcError: ``out-of-range``.

        >>> Thread("M16x1.5").with_starts(2).lead_mm
        Fraction(3, 1)
        """
    def with_wire_insert(self) -> Thread:
        """The tapped hole that takes a wire insert for this thread: the same pitch on a larger diameter.

        Raises:
            ThreadcalcError: ``unsupported-form`` for another thread than M, MJ, UN and UNJ of one start;
                ``contradiction`` for an external one.

        >>> hole = Thread("M8x1.25").with_wire_insert()
        >>> str(hole), float(hole.major_mm)
        ('M8x1.25 STI', 9.624)

        Source: ASME B18.29.1-2010 and B18.29.2M-2005: larger by 1.5 H, to 0.001 mm and 0.0001 in;
        from memory.
        """
    def profile(self) -> Profile:
        """The basic profile, unrounded; that of a pipe thread at the gauge plane.

        >>> round(Thread("M10").profile().pitch_diameter_mm, 3)
        9.026

        Source: ISO 68-1, ISO 724; ASME B1.1; ISO 228-1, ISO 7-1; ASME B1.20.1; ISO 5855-1, ISO 1501,
        ISO 2904; ASME B1.5, B1.8, B1.9, B1.15; BS 84, BS 93.
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

        Beside M, UN, G, Rp, NPSC and NPSM: MJ and UNJ, holes for wire inserts in M and UN, Tr (over 5.6 to 180 mm,
        pitches of 1.5 to 32 mm, one start), ACME 2G 3G 4G and stub ACME 2G of one start, holes with buttress
        threads of class 2, BA No. 0 to 16 (close bolts No. 0 to 10; normal: bolts, and all holes). A limit that
        has not been read is None: the minor diameters of MJ and of UNJ's screw, the largest of the holes of UNJ,
        Tr and wire inserts, the major diameter of a buttress hole, the far limits of the roots of stub ACME.

        Raises:
            ThreadcalcError: ``class-unset`` without a class, where the thread needs one (an
                internal G, Rp and NPSC have none), and without a side for a class of both, such as 2G;
                ``unknown-class`` for an external M class whose crest grade does not exist, and for close
                bolts from No. 11 BA;
                ``not-sourced`` for what has not been read, with a hint at what has: M outside 1 to 355
                mm and pitches of 0.2 to 8 mm, UN pitches too fine for the rule, NPSF and other families
                and classes; ``does-not-apply`` for taper threads, which are gauged by turns:
                ``pipe().gauge_tolerance_turns`` and :func:`taper_depths`.

        >>> low, high = Thread("M8x1.25-6H").limits().minor_mm
        >>> float(low), float(high)
        (6.647, 6.912)
        >>> screw = Thread("1-5 ACME-2G").with_side("external")
        >>> [float(end / Fraction("25.4")) for end in screw.limits().pitch_diameter_mm]
        [0.8726, 0.892]

        Source: ISO 965-1:2013, tables, and its formulas outside them; ASME B1.1-2003, formulas, and
        its printed limits where they differ; ISO 228-1:2000 (G); ISO 7-1:1994 (Rp); ASME
        B1.20.1-1983, tables of NPSC and NPSM; ISO 2903:2016 with GOST 24739-81 (Tr); ASME B1.5-1997
        (ACME); ASME B1.9-1973 (buttress); BS 93 (BA), its formulas; ISO 5855-1:1999 (MJ); ASME B1.15-1995 and
        SAE AS8879D (UNJ); ASME B18.29.1-2010 and B18.29.2M-2005 (wire inserts).
        """
    def limits_at(self, length_mm: _Exact) -> Limits:
        """The limits of size of the tolerance class where this much of a Unified thread engages.

        The tolerance of the pitch diameter counts with the length of engagement LE: 0.0015 D^(1/3) +
        0.0015 sqrt(LE) + 0.015 P^(2/3) of 2A, in inches. The standard's tables, and ``limits``, take LE = D for
        UNC, UNF, 4-UN, 6-UN and 8-UN and hold up to 1.5 D; for the others, UNS among them, LE = 9 P, and they hold
        from 5 P to 15 P. ``source`` says whether they hold for this length. Only the far limit of the pitch
        diameter moves with the length; GO, the allowance, crests and the minor diameter stay. A drawing that wants
        other limits than those of the tables gives them itself: ask before making to these.

        Threads of other standards have the limits of ``limits`` at every length; of M another class is recommended
        for a long or short one: :func:`engagement_group`.

        Raises:
            ThreadcalcError: ``out-of-range`` for a length outside 0 to 10 000 mm; ``not-sourced`` for UNJ and for
                inch holes of wire inserts; those of ``limits``.

        >>> low, high = Thread("1/2-13 UNC-3A").limits_at("25.4").pitch_diameter_mm
        >>> float(low / Fraction("25.4")), float(high / Fraction("25.4"))
        (0.4459, 0.45)

        Source: ASME B1.1-2003, formulas for limits of size; for which lengths the tables hold, and that the
        allowance stays, from memory.
        """
    def coating_growth(self, thickness_um: _Exact) -> CoatingGrowth:
        """How much a coating of one thickness changes the diameters.

        With a and b the flank angles: 2 t on major and minor diameter, 2 t (1/cos a + 1/cos b) /
        (tan a + tan b) on the pitch diameter: 4 t on 60 degrees, 4.3314 t on 55, 4.9660 t on 47.5, 7.7275 t on
        30, 7.9879 t on 29, 4.3138 t on 7 and 45. The factors are to four decimals, rounded up; that of 60 degrees
        is exact. ``thickness_um`` is measured square to the surface, and the same all over: thin even coats,
        never hot-dip, paint or dipped coats. A current plates crests and the first threads thicker than flanks
        and the depth of a hole: gauge after coating.

        Raises:
            ThreadcalcError: ``out-of-range`` for a thickness outside 0 to 1000 um.

        >>> Thread("M8-6g").coating_growth(5).pitch_diameter_mm
        Fraction(1, 50)

        Source: Machinery's Handbook 27 p. 1793 (ASME B1.13M), 60 degrees; derived for the others.
        """
    def limits_before_coating(self, thinnest_um: _Exact, thickest_um: _Exact) -> Limits:
        """The limits of size to make the thread to, so that it keeps those of its class once it is coated.

        External: the largest less the growth by the thickest coating, the smallest less that by the thinnest;
        internal: the smallest and the growth by the thickest, the largest and that by the thinnest. Exact and
        not rounded. Where only a nominal or smallest thickness is known, half as much again is taken as the
        thickest. For classes without an allowance (6H, 6h, 2B, 3A), and where an allowance is to be kept after
        coating (2A with the symbol G); the limits of classes with an allowance (6g, 2A) are those before coating
        as they are: see ``thickest_coating_um``. The positions of ISO 965-4 and ISO 965-5 for hot-dip galvanised
        threads are another matter.

        Raises:
            ThreadcalcError: ``out-of-range`` for a thickness outside 0 to 1000 um, for a band that takes the
                whole tolerance (``high`` is the thickest that would) and for a coating that leaves no thread;
                ``contradiction`` if the thinnest is more than the thickest; those of ``limits``.

        >>> low, high = Thread("M10x1.5-6h").limits_before_coating(5, 8).pitch_diameter_mm
        >>> float(low), float(high)
        (8.874, 8.994)

        Source: Machinery's Handbook 27 p. 1793 (ASME B1.13M), external threads; internal threads likewise.
        """
    def thickest_coating_um(self) -> Fraction:
        """The thickest coating that the allowance of the class has room for, in micrometres; 0 without one.

        A quarter of the allowance on a 60 degree thread. The limits of such a class (6g, 2A) are those before
        coating; once coated, GO of the basic size (3A, 6h, 6H) and NOT GO of the class gauge it. An allowance
        that is not the coating's to use is kept by ``limits_before_coating``.

        Raises:
            ThreadcalcError: those of ``limits``; ``does-not-apply`` for Rp and NPSC, whose limits lie on both
                sides of the basic size; ``not-sourced`` for holes of wire inserts and other threads than
                M, UN, UNR and pipe threads.

        >>> float(Thread("M8-6g").thickest_coating_um())
        7.0

        Source: ASME B1.1, section on coated threads, as ASTM F1941 quotes it; Machinery's Handbook 27 p. 1776.
        Metric threads: ISO 965-1, from memory.
        """
    @property
    def form(self) -> _Form:
        """The profile.

        >>> Thread("Rc 1/2").form
        'rc'
        """
    @property
    def series(self) -> str | None:
        """The standard's series token; None for a metric special and for the families without series.

        >>> Thread("M8").series, Thread("7/16-14").series
        ('coarse', 'UNC')
        """
    @property
    def is_standard(self) -> bool:
        """True if the standard lists this diameter with this pitch, single start.

        A trapezoidal or buttress thread may have any number of starts; the hole of a wire insert is
        standard if the screw is.
        """
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
        """The tolerance class as written, with ``-S`` or ``-L`` behind it for short or long engagement."""
    @property
    def engagement(self) -> Literal["S", "N", "L"] | None:
        """How long the thread engages, as the designation says; None without a class.

        >>> Thread("M20x2-7g6g-L").engagement, Thread("M20x2-6g").engagement
        ('L', 'N')
        """
    @property
    def wire_insert(self) -> bool:
        """True for the hole of a wire insert.

        >>> Thread("1/4-20 UNC-2B STI").wire_insert
        True
        """
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
class CoatingGrowth:
    """How much a coating changes the diameters of a thread, in millimetres: an external thread grows by it, an
    internal one closes."""

    @property
    def crest_mm(self) -> Fraction:
        """Major and minor diameter: twice the thickness."""
    @property
    def pitch_diameter_mm(self) -> Fraction:
        """Pitch diameter: four times the thickness on a 60 degree thread."""
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
        """How sure the limits are: "confirmed", "by rule", "from memory" or "by formula"."""
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
class Match:
    """A standard pitch and how far a lead is from it."""

    @property
    def pitch_mm(self) -> Fraction:
        """The pitch, in millimetres."""
    @property
    def tpi(self) -> Fraction | None:
        """Its threads per inch; None for a metric pitch."""
    @property
    def systems(self) -> tuple[Literal["metric", "unified", "whitworth-pipe", "npt"], ...]:
        """The systems whose tables list it: ISO 261, ASME B1.1, ISO 228-1 and ISO 7-1, ASME B1.20."""
    @property
    def lead_error(self) -> Fraction:
        """Lead over pitch and starts, less one; positive means that the lead is too long."""
    @property
    def is_within(self) -> bool:
        """True if the lead, or one that its rounded words stand for, is within the tolerance."""
    @property
    def is_exact(self) -> bool:
        """True if the lead is this pitch to one in a million."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Identification:
    """What a lead says of the thread."""

    @property
    def verdict(self) -> Literal["identified", "ambiguous", "nonstandard"]:
        """One pitch is near, more than one may be meant, or none is near."""
    @property
    def matches(self) -> list[Match]:
        """The pitches that the lead may be, nearest first, the finer one first on a tie.

        Those within the tolerance; where there is none, or one that another is as near as, the two nearest.
        """
    @property
    def lead_mm(self) -> Fraction:
        """The lead, in millimetres."""
    @property
    def shortest_lead_mm(self) -> Fraction:
        """The shortest lead that rounded words may stand for, in millimetres; else the lead."""
    @property
    def longest_lead_mm(self) -> Fraction:
        """The longest lead that rounded words may stand for, in millimetres; else the lead."""
    @property
    def starts(self) -> int:
        """The starts that were declared."""
    def __str__(self) -> str:
        """The first four matches with their errors: ``0.8 mm (-0.388 %); 32 TPI (+0.397 %)``."""
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
    @classmethod
    def read(cls, name: str | bytes, /) -> Drill:
        """The drill that a name or a diameter means: "6.8", "6.8 mm", "#7", "No. 7", "F", "13/64", "0.2010 in".

        A number without a unit is in millimetres, also a whole one (the 2 inch drill is "2 in"); a fraction is
        in inches. A diameter that stands in no set is a
        drill named by its diameter.

        Raises:
            ThreadcalcError: ``empty``, ``unreadable``, ``unknown-value`` (#98), ``out-of-range``.

        >>> Drill.read("No. 7"), Drill.read("13/64")
        (Drill('number', '#7'), Drill('fractional', '13/64'))
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

        None for a form tap, whose 100 % is 0.68 P, and for other threads than M and UN, whose 100 % is their own
        height.
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
    def probable_hole_mm(self) -> Fraction | None:
        """The hole that the drill probably leaves, in millimetres, as probable_hole_mm() has it.

        None for a taper thread, and where no oversize is known or no thread would be left. It never changes
        which drill is chosen.
        """
    @property
    def probable_percent(self) -> float | None:
        """Percent of thread that the probable hole leaves, on the basis."""
    @property
    def probable_left_to_limit_mm(self) -> Fraction | None:
        """What the probable hole leaves to the largest minor diameter, in millimetres; negative beyond it."""
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
class BlindThread:
    """The thread that a blind hole has room for: depths from the face, in millimetres."""

    @property
    def full_thread_mm(self) -> Fraction:
        """The longest full thread."""
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
    def drill_point_mm(self) -> float | None:
        """To the drill's point; None if neither it nor the angle was given."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class ChamferReading:
    """One form of chamfer in a blind hole."""

    @property
    def form(self) -> _Chamfer:
        """The form, by its letter or its name."""
    @property
    def chamfer_threads(self) -> Fraction:
        """Its longest chamfer, in threads."""
    @property
    def full_thread_mm(self) -> Fraction | None:
        """The full thread above that chamfer, in millimetres; None if nothing is left."""
    @property
    def gives_wanted(self) -> bool:
        """True if a tap of this form gives the full thread that is wanted."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class BottomReading:
    """The bottom of a hole as one point angle makes it."""

    @property
    def point_angle_deg(self) -> Fraction:
        """The point angle, in degrees."""
    @property
    def full_diameter_mm(self) -> Fraction:
        """How deep the hole has its full diameter, in millimetres; below 0 where the point alone is deeper."""
    @property
    def room_mm(self) -> Fraction:
        """From the very end of the tap to there, in millimetres."""
    @property
    def verdict(self) -> _BottomVerdict:
        """Less than 0 is an error, 0 to 1 pitch a warning."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Bottoming:
    """The readings of one hole: one for a known point angle, one for each usual angle otherwise."""

    @property
    def readings(self) -> list[BottomReading]:
        """The readings, the sharpest point first."""
    @property
    def worst(self) -> _BottomVerdict:
        """The worst verdict of all readings."""
    @property
    def is_certain(self) -> bool:
        """True if the angle was given: readings of assumed angles are never certain."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Countersunk:
    """A countersunk mouth: depths from the face, in millimetres."""

    @property
    def tip_mm(self) -> float:
        """To the tip of a pointed countersink that leaves this diameter; one with a flat goes less deep."""
    @property
    def depth_at_major_mm(self) -> float:
        """To where the cone has narrowed to the major diameter: above it there is no thread at all."""
    @property
    def full_thread_lost_mm(self) -> float:
        """To where the cone has narrowed to the hole: what it takes of the full thread."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class UsualCountersink:
    """The countersink that is usual for a thread, exact."""

    @property
    def least_mm(self) -> Fraction:
        """Smallest diameter at the face, in millimetres."""
    @property
    def most_mm(self) -> Fraction:
        """Largest diameter at the face, in millimetres."""
    @property
    def angle_deg(self) -> Fraction:
        """Included angle, in degrees."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class ProgramDepth:
    """A depth as a program says it."""

    @property
    def text(self) -> str:
        """The number of the word without sign and letter: no trailing zeros, always a point."""
    @property
    def value(self) -> Fraction:
        """What a control reads back from it, in the unit of the program."""
    @property
    def depth_mm(self) -> Fraction:
        """The same in millimetres."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class ThroughHole:
    """Depths of a tapped through hole from the face, and what comes out below, in millimetres."""

    @property
    def program_tap_mm(self) -> Fraction:
        """To the point that the tap's length offset is set on: what the program says."""
    @property
    def tap_mm(self) -> Fraction:
        """To the very end of the tap at its deepest: centre and over-travel included."""
    @property
    def tap_below_mm(self) -> Fraction:
        """What of that comes out below."""
    @property
    def full_diameter_mm(self) -> Fraction:
        """To the end of the drill's full diameter."""
    @property
    def drill_point_mm(self) -> float:
        """To the drill's point."""
    @property
    def drill_below_mm(self) -> float:
        """What of that comes out below."""
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
class EngagementLengths:
    """Lengths of normal engagement of one diameter and pitch of metric threads, and the group of a length."""

    @property
    def group(self) -> _EngagementGroup:
        """The group of the length that was asked for: short, normal, long."""
    @property
    def normal_over_mm(self) -> Fraction:
        """Normal is longer than this, in millimetres; up to this it is short."""
    @property
    def normal_to_mm(self) -> Fraction:
        """Normal is up to this, in millimetres; more is long."""
    @property
    def source(self) -> str:
        """Standard, edition and table or rule."""
    @property
    def confidence(self) -> str:
        """How sure the lengths are: ``confirmed`` or ``by formula``."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Engagement:
    """What a screw and a tapped hole carry together; areas in mm2, loads in newtons."""

    @property
    def tensile_area_mm2(self) -> float:
        """Tensile stress area of the screw, in square millimetres."""
    @property
    def internal_shear_area_mm2(self) -> float:
        """Shear area of the threads in the hole, in square millimetres."""
    @property
    def external_shear_area_mm2(self) -> float:
        """Shear area of the screw's threads, in square millimetres."""
    @property
    def tensile_load_n(self) -> float:
        """Load that breaks the screw, in newtons."""
    @property
    def internal_strip_load_n(self) -> float:
        """Load that strips the threads of the hole, in newtons."""
    @property
    def external_strip_load_n(self) -> float:
        """Load that strips the screw's threads, in newtons."""
    @property
    def weakest(self) -> Literal["screw", "external", "internal"]:
        """What gives way first; of equals the screw, then its threads."""
    @property
    def required_length_mm(self) -> float:
        """Length at which the weaker thread carries the screw's tensile load, incomplete threads and all."""
    @property
    def strip_ratio(self) -> float:
        """Strip load of the screw's threads over that of the hole's, J; above 1 the hole strips first."""
    @property
    def safety_factor(self) -> float | None:
        """The weakest part's load over the load given; None without one."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class StartingStrength:
    """Strengths of a screw or of a part to begin with, in MPa: marked, and never a default."""

    @property
    def tensile_mpa(self) -> float:
        """Smallest tensile strength of the property class or the group of materials, in MPa."""
    @property
    def shear_mpa(self) -> float:
        """0.6 of it, in MPa."""
    @property
    def source(self) -> str:
        """Where both are from."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class TorqueBand:
    """Torque of a tap in newton metres: never one number."""

    @property
    def low_nm(self) -> float:
        """A new tap under good conditions: half the likely torque."""
    @property
    def likely_nm(self) -> float:
        """What the formula gives."""
    @property
    def high_nm(self) -> float:
        """A new tap under bad conditions: half as much again."""
    @property
    def worn_nm(self) -> float:
        """A worn tap: twice the likely torque."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class FactorRange:
    """A factor that nobody knows better than to a range."""

    @property
    def low(self) -> float:
        """Smallest in use."""
    @property
    def start(self) -> float:
        """Where to start from without better knowledge: the middle, a judgement."""
    @property
    def high(self) -> float:
        """Largest in use."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class StartingForces:
    """Cutting forces of a group of materials to start from, in N/mm2. The tap maker's own replace them."""

    @property
    def material(self) -> _Material:
        """The group of materials."""
    @property
    def by_pitch_n_mm2(self) -> float:
        """For ``torque_nm`` and ``torque_by_pitch`` only, in N/mm2."""
    @property
    def by_chip_area_n_mm2(self) -> float | None:
        """For ``torque_by_chip_area`` only, in N/mm2; None where the table has none."""
    @property
    def is_read(self) -> bool:
        """True if the values were read in a published table; False: from memory of the trade."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Gear:
    """A gear of a spindle: its range of speeds and the torque over it, linear between the points.

    Args:
        lowest_rpm: Lowest speed, 0 or more.
        highest_rpm: Highest speed.
        points: 1 to 8 pairs of rpm and Nm, speeds ascending. One is a torque over the whole range;
            more have to reach over it. Take the curve of the short-time duty that tapping is.

    Raises:
        ThreadcalcError: ``contradiction`` for a lowest speed above the highest or points that do not
            ascend; ``out-of-range``.

    >>> gear = Gear(20, 4000, [(20, 20), (1000, 20), (4000, 5)])
    >>> gear.torque_nm(2500), gear.torque_nm(5000), gear.fastest_for(12.5)
    (12.5, None, 2500.0)
    """

    def __new__(cls, lowest_rpm: _Exact, highest_rpm: _Exact, points: Iterable[tuple[_Exact, _Exact]]) -> Self: ...
    @property
    def lowest_rpm(self) -> Fraction:
        """Lowest speed, in turns per minute."""
    @property
    def highest_rpm(self) -> Fraction:
        """Highest speed, in turns per minute."""
    def torque_nm(self, rpm: _Exact) -> float | None:
        """The torque at a speed in newton metres; None outside the range."""
    def fastest_for(self, torque_nm: _Exact) -> float | None:
        """The largest speed of the range at which the curve holds a torque; None if none does."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class GearFit:
    """How a torque and a speed fit the gears of a spindle."""

    @property
    def gear(self) -> int | None:
        """The gear with the most torque at the speed, counted from 0 as given; None if none runs it."""
    @property
    def torque_nm(self) -> float | None:
        """The torque that it holds there, in newton metres."""
    @property
    def is_enough(self) -> bool:
        """True if that is enough."""
    @property
    def fastest_rpm(self) -> float | None:
        """The largest speed of any gear at which the torque is there; round it down."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class TappingTime:
    """What tapping a hole comes to; speeds in turns per minute, times in seconds."""

    @property
    def reached_rpm(self) -> float:
        """The fastest that the spindle turns on the way in: that of the last stroke, the deepest."""
    @property
    def retract_rpm(self) -> float:
        """The fastest that it turns on the way out, after the last stroke."""
    @property
    def reaches_speed(self) -> bool:
        """True if the programmed speed is reached on the way in, in the last stroke at least."""
    @property
    def turns(self) -> float:
        """Turns of the last stroke."""
    @property
    def turns_to_speed(self) -> float:
        """Turns from standstill to the programmed speed, reached or not."""
    @property
    def distance_to_speed_mm(self) -> float:
        """The way that these turns take: an R plane this high lets the tap enter at full speed."""
    @property
    def time_in_s(self) -> float:
        """Time in, of all strokes."""
    @property
    def time_out_s(self) -> float:
        """Time out, of all strokes."""
    @property
    def time_s(self) -> float:
        """Time in, the dwell of each stroke and time out."""
    @property
    def strokes(self) -> int:
        """How many strokes; 1 without a peck."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class FeedFit:
    """How a tapping stroke fits the feed limit of its axis, exact."""

    @property
    def feed_mm_min(self) -> Fraction:
        """Axis feed on the way in, in mm/min."""
    @property
    def retract_feed_mm_min(self) -> Fraction:
        """Axis feed on the way out, in mm/min."""
    @property
    def is_within(self) -> bool:
        """True if both are within the limit."""
    @property
    def fastest_rpm(self) -> Fraction:
        """The largest speed that both are within the limit at; not rounded."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class HolderClearance:
    """Room from the R plane to the face by holder, exact."""

    @property
    def least_mm(self) -> Fraction:
        """The least in use, in millimetres."""
    @property
    def ample_mm(self) -> Fraction:
        """What is always enough for the holder, though not for a slow spindle's ramp, in millimetres."""
    @property
    def least_turns(self) -> Fraction:
        """Turns of the spindle over ``least_mm``."""
    @property
    def ample_turns(self) -> Fraction:
        """Turns of the spindle over ``ample_mm``."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class HolderTravel:
    """How far a holder has to give, exact."""

    @property
    def extension_mm(self) -> Fraction:
        """The tap is pulled out of the holder by this much, in millimetres."""
    @property
    def compression_mm(self) -> Fraction:
        """The tap is pushed into the holder by this much, in millimetres."""
    def fits(self, extension_mm: _Exact, compression_mm: _Exact) -> bool:
        """True if a holder with this much extension and compression, in millimetres, has room for it."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Gauge:
    """A gauge to fetch, with the product's limits that it stands for, in millimetres, exact.

    The gauge's own size, with its maker's tolerance and wear, is in the gauge standards and is not here.
    """

    @property
    def kind(self) -> _GaugeKind:
        """What it is. Plugs are for a hole, rings for a screw; a plain plug is a pin, a plain ring may be a
        snap gauge; a taper plug or ring is read by how far it goes.
        """
    @property
    def pitch_diameter_mm(self) -> Fraction | None:
        """The pitch diameter that it stands for; of a taper gauge, at the gauge plane. None for a plain gauge,
        and where the limit has not been read.
        """
    @property
    def diameter_mm(self) -> Fraction | None:
        """The major or minor diameter that it stands for. None for a NOT GO thread gauge, whose crests and
        roots are relieved, for a taper gauge, and where the limit has not been read.
        """
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Gauges:
    """The gauges of a thread."""

    @property
    def gauges(self) -> list[Gauge]:
        """GO before NOT GO, thread gauges before plain ones."""
    @property
    def hand(self) -> _Hand:
        """Left: left-hand gauges, turned anticlockwise."""
    @property
    def class_assumed(self) -> bool:
        """True if the thread has no class and the standard's medium one was taken."""
    @property
    def limits_source(self) -> str | None:
        """The source of the limits; None where none have been read."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class NotGoRule:
    """How far a NOT GO thread gauge may go."""

    @property
    def most_turns(self) -> int:
        """The most turns, by hand and without force, from either end."""
    @property
    def standard(self) -> str:
        """The standard that says so."""
    @property
    def remark(self) -> str:
        """What it says besides."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class NextMove:
    """What to do after gauging a tapped hole."""

    @property
    def verdict(self) -> Literal["accept", "rework", "reject"]:
        """What becomes of this hole: "accept" is good by this gauge, "rework" can be brought to size, "reject"
        is too large, and no tap makes it smaller again.
        """
    @property
    def moves(self) -> list[_Move]:
        """The moves, first things first.

        - nothing
        - clean_and_gauge_again: blow chips and oil out, and gauge again before anything else
        - compare_names: gauge, tap and drawing name the same thread, class and hand
        - deburr: countersink or deburr the mouth
        - tap_deeper: if the drilled hole has room; same tool and length, same S, same R
        - change_tap: this one is worn or chipped
        - larger_tap: the next larger class or H limit
        - smaller_tap: the next smaller class or H limit, for the next hole
        - check_feed: feed and lead at the speed that really ran; overrides off
        - check_axial_force: holder, its springs, the feed below the lead, a heavy start
        - check_cutting: run-out, chips welded to the flanks, coolant
        - stop_and_gauge_back: gauge the holes back to the last good one
        - repair_or_scrap: a wire insert or the next size, if the engineer says so
        - tap_shallower: the next hole less deep
        """
    @property
    def deeper_mm(self) -> Fraction | None:
        """How much deeper the tap has to go in millimetres, exact; negative: less deep, for the next hole.
        None where depth is not the question.
        """
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class ReEntry:
    """An R plane from which the tap finds the thread again."""

    @property
    def r_mm(self) -> Fraction:
        """The R plane in millimetres, exact."""
    @property
    def pitches(self) -> int:
        """By how many pitches it has moved; above 0 away from the part."""
    @property
    def rule(self) -> str:
        """What else has to hold when a tap enters a tapped hole again."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class TapKind:
    """How a tap is built. Hashable; equality is on values.

    Args:
        name: "straight_flute", "spiral_point", "spiral_flute" or "form".

    Raises:
        ThreadcalcError: ``unknown-value``.

    >>> kind = TapKind("spiral_point")
    >>> kind.tap, kind.torque_factor, kind.advice("blind").suits
    ('cut', 0.95, 'badly')

    Source: a tap maker's published table (factors, coarse pitch in steel); common practice (advice).
    """

    def __new__(cls, name: _TapKind, /) -> Self: ...
    @property
    def name(self) -> _TapKind:
        """The name."""
    @property
    def tap(self) -> _Tap:
        """Whether it cuts or forms."""
    @property
    def torque_factor(self) -> float | None:
        """The factor K for ``torque_by_chip_area``, coarse pitch in steel: straight flutes 1.35 (with a
        chamfer of 5 threads), spiral flutes 1.15, spiral point 0.95; None for a form tap, which leaves no
        chip: see ``forming_factor``.
        """
    def advice(self, hole: _Hole, /) -> TapAdvice:
        """How the kind suits a through or a blind hole, and why.

        >>> TapKind("spiral_flute").advice("blind").reason
        'draws the chips up and out'
        """
    def __reduce__(self) -> tuple[object, ...]: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...
    def __hash__(self) -> int: ...

@final
class TapAdvice:
    """A kind of tap in a kind of hole."""

    @property
    def suits(self) -> Literal["well", "with_care", "badly"]:
        """How well it suits: "well" is the usual choice, "with_care" works where the reason says, "badly" is
        trouble to be expected.
        """
    @property
    def reason(self) -> str:
        """Why."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class ChamferForm:
    """The chamfer of a tap by its letter or by its name. Hashable; equality is on values.

    In threads: A 6 to 8; B 3.5 to 5.5, with spiral point; C 2 to 3; D 3.5 to 5; E 1.5 to 2; F 1 to 1.5;
    taper 7 to 10; plug 3 to 5; semi-bottoming 2 to 2.5; bottoming 1 to 2.

    Args:
        name: "A" to "F", "taper", "plug", "semi_bottoming" or "bottoming".

    Raises:
        ThreadcalcError: ``unknown-value``.

    >>> form = ChamferForm("C")
    >>> int(form.shortest_threads), int(form.longest_threads), form.fits("blind", 2.5)
    (2, 3, False)

    Source: DIN 2197 as tap makers print it (B to 5.5: from memory of the standard); the names: tap
    makers' published tables; usual holes: common practice.
    """

    def __new__(cls, name: _Chamfer, /) -> Self: ...
    @property
    def name(self) -> _Chamfer:
        """The letter or the name."""
    @property
    def shortest_threads(self) -> Fraction:
        """The shortest chamfer of the form, in threads."""
    @property
    def longest_threads(self) -> Fraction:
        """The longest chamfer of the form, in threads: plan on it."""
    @property
    def usual_hole(self) -> _Hole | None:
        """The kind of hole that the form is made for; None for both."""
    def fits(self, hole: _Hole, room_threads: _Exact) -> bool:
        """True if the longest chamfer of the form has room. Form B never fits a blind hole: its spiral point
        drives the chips to the bottom.

        Args:
            hole: Through or blind.
            room_threads: In a blind hole between the end of full thread and that of the drilled
                diameter, below a through hole down to what the tap may not touch, in threads.
        """
    def __reduce__(self) -> tuple[object, ...]: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...
    def __hash__(self) -> int: ...

@final
class IsoTap:
    """The tap class of ISO 2857 for a thread, plated or not."""

    @property
    def tap_class(self) -> _TapClass | None:
        """The class; None if the standard has none: a tap of special size."""
    @property
    def closing_mm(self) -> Fraction:
        """How much smaller the plating makes the pitch diameter of the hole, in millimetres, exact: a special
        tap has to be larger by that.
        """
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class TapLimit:
    """The limit of a ground tap: H3, D5. Hashable; equality is on values.

    Args:
        letter: H above basic and L below it in steps of 0.0005 in, D above basic in steps of 0.013 mm.
        number: 1 to 30.

    Raises:
        ThreadcalcError: ``unknown-value``, ``out-of-range``.

    >>> str(TapLimit("H", 3))
    'H3'

    Source: ASME B94.9 from memory; D as a tap maker's published table gives it for M5 to M10.
    """

    def __new__(cls, letter: Literal["H", "L", "D"], number: int, /) -> Self: ...
    @property
    def letter(self) -> Literal["H", "L", "D"]:
        """The letter."""
    @property
    def number(self) -> int:
        """The number."""
    def above_basic_mm(self, thread: Thread, /) -> tuple[Fraction | None, Fraction]:
        """How far the tap's pitch diameter may lie above the basic one, smallest and largest, in mm, exact.

        H n: (n - 1) x 0.0005 in to n x 0.0005 in. L n: as much below. D n: largest n x 0.013 mm, smallest
        0.020 (P 0.8), 0.025 (P 1) or 0.031 (P 1.25 and 1.5) less, None at other pitches, whose tolerance
        has not been read.

        Raises:
            ThreadcalcError: ``not-sourced`` for H and L above 1 in, where the steps are wider.

        >>> smallest, largest = TapLimit("H", 3).above_basic_mm(Thread("1/4-20"))
        >>> float(smallest), float(largest)
        (0.0254, 0.0381)
        """
    def pitch_diameter_mm(self, thread: Thread, /) -> tuple[Fraction | None, Fraction]:
        """The smallest and the largest pitch diameter of the tap, in millimetres, exact; the smallest is None
        where ``above_basic_mm`` has none.

        Raises:
            ThreadcalcError: As ``above_basic_mm``; ``does-not-apply`` for taper threads, ``not-sourced`` where
                the basic pitch diameter has not been read.

        >>> [float(size) for size in TapLimit("D", 5).pitch_diameter_mm(Thread("M8"))]
        [7.222, 7.253]
        """
    def __reduce__(self) -> tuple[object, ...]: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...
    def __hash__(self) -> int: ...

@final
class ShankMark:
    """What the shank of a tap says. What it does not say is None or False, and never assumed."""

    @property
    def thread(self) -> Thread | None:
        """The thread, without class."""
    @property
    def hand(self) -> _Hand:
        """Left only if the shank says so."""
    @property
    def tolerance_class(self) -> str | None:
        """The class of thread that the tap is meant to cut."""
    @property
    def own_limits(self) -> bool:
        """6HX: the maker's own limits for that class, usually towards its upper end."""
    @property
    def ground(self) -> bool:
        """True if the thread of the tap is marked as ground."""
    @property
    def limit(self) -> TapLimit | None:
        """H, L or D limit."""
    @property
    def iso_class(self) -> _TapClass | None:
        """Class of ISO 2857."""
    @property
    def chamfer(self) -> ChamferForm | None:
        """Form of the chamfer."""
    @property
    def wire_insert(self) -> bool:
        """True for a wire insert: larger than the screw's own thread."""
    @property
    def not_read(self) -> tuple[int, int] | None:
        """The first word that was not understood, by byte and length (UTF-8 for a str)."""
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
class Dialect:
    """What a control calls things: a claim about one machine that somebody must have proved there.

    Args:
        base: The fields to begin with: "rs274ngc" (NISTIR 6556: G84 right hand only, feed per minute
            only), "unset", another ``Dialect`` or a dict.
        **fields: The fields below and those of ``Reading`` by their names. A code is a letter and
            digits, "G84", or a list of one; a word is a letter; "none" says that the control has no
            such code or word, "unknown" that nobody has said whether it does something.

    Raises:
        ThreadcalcError: ``unknown-key`` with the nearest known key, ``unknown-value``, ``out-of-range``.

    >>> mill = Dialect(name="mill-1", tap_rh="G84", tap_lh="G74", peck_word="Q")
    >>> mill.tap_lh, mill.feed_per_revolution, mill.return_initial
    ('G74', None, 'G98')
    >>> Dialect(**mill.to_dict()) == mill
    True
    >>> read = Dialect(mill, feed_basis="by_mode", units_codes={"inch": ["G20", "G70"]}).reading
    >>> read.feed_basis, read.units_codes["inch"], read.cycle_starts_spindle
    ('by_mode', ['G20', 'G70'], None)
    """

    def __new__(cls, base: _DialectLike = "unset", /, **fields: _DialectField) -> Self: ...
    @property
    def name(self) -> str:
        """The shop's own name for it, up to 19 bytes."""
    @property
    def tap_rh(self) -> str | None:
        """Code of the right-hand tapping cycle; None: the control has none."""
    @property
    def tap_lh(self) -> str | None:
        """Code of the left-hand tapping cycle; None: the control has none."""
    @property
    def lh_by_spindle_direction(self) -> bool:
        """Left hand is the right-hand cycle with the spindle turning backwards (M4) before it."""
    @property
    def feed_per_minute(self) -> str:
        """Code of feed per minute, "G94" unless said otherwise."""
    @property
    def feed_per_revolution(self) -> str | None:
        """Code of feed per revolution; None: the control taps by feed per minute only."""
    @property
    def needs_spindle_running(self) -> bool:
        """Whether the spindle must already turn when the cycle starts."""
    @property
    def rigid_tap_code(self) -> str | None:
        """Code that makes the next tapping cycle a synchronised one; None: the cycle itself says it."""
    @property
    def rigid_tap_code_has_s(self) -> bool:
        """Whether that code carries the speed."""
    @property
    def peck_word(self) -> str | None:
        """Letter of a peck's depth; None: no pecks."""
    @property
    def peck_code_rh(self) -> str | None:
        """Code of the right-hand cycle with pecks, where that is a cycle of its own."""
    @property
    def peck_code_lh(self) -> str | None:
        """Code of the left-hand cycle with pecks, where that is a cycle of its own."""
    @property
    def dwell_word(self) -> str | None:
        """Letter of the dwell at the bottom; None: the cycle has no dwell."""
    @property
    def dwell_unit(self) -> _DwellUnit | None:
        """What the dwell is counted in; required for a dwell."""
    @property
    def retract_multiplier_word(self) -> str | None:
        """Letter of a faster way out; None: out as fast as in."""
    @property
    def retract_in(self) -> _RetractIn | None:
        """What the faster way out is counted in; required for one."""
    @property
    def return_r_plane(self) -> str | None:
        """Code of the return to the R plane, "G99" unless said otherwise; None: the control has none."""
    @property
    def return_initial(self) -> str | None:
        """Code of the return to the height before the cycle, "G98" unless said otherwise."""
    @property
    def axis_decimals_mm(self) -> int:
        """Decimals of axis words in millimetres; 3 unless said otherwise."""
    @property
    def axis_decimals_inch(self) -> int:
        """Decimals of axis words in inches; 4 unless said otherwise."""
    @property
    def trailing_point(self) -> bool:
        """Whether a whole length, feed or dwell in seconds has a point, ``Z-20.``."""
    @property
    def reading(self) -> Reading:
        """What the control makes of a program, for checking one; nothing that is written depends on it."""
    def to_json(self) -> str:
        """The dialect as the text of its JSON."""
    def to_dict(self) -> dict[str, _Json]:
        """The dialect as a dict; ``Dialect`` and a job take it back."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Reading:
    """What a control makes of the words that it reads.

    Its fields are given to ``Dialect``, flat and by these names. None is not known: a checker then
    tries every reading and says where the answer depends on it.

    >>> Dialect(least_increment={"axis": {"mm": "0.001"}}).reading.least_increment["axis"]
    {'mm': Fraction(1, 1000), 'inch': None}
    >>> Dialect("rs274ngc").reading.no_point, Dialect().reading.no_point
    ('as_written', None)
    """

    @property
    def units_default(self) -> _Unit | None:
        """The unit before any units code: a parameter of the control, or what it had when it was switched off."""
    @property
    def feed_mode_default(self) -> _Mode | None:
        """The feed mode before any code of it. Mills start per minute, lathes per revolution. Takes "G94", "G95"."""
    @property
    def units_codes(self) -> dict[str, list[str]]:
        """Codes of "inch" and of "mm", up to two each: G20 and G21, G70 and G71 by ISO 6983-1; some take both."""
    @property
    def feed_basis(self) -> _FeedBasis | None:
        """What F is in a tapping cycle. F1.5 is the lead on one control, and breaks the tap on another."""
    @property
    def lead_word(self) -> str | None:
        """Letter of the lead, where it does not stand behind F."""
    @property
    def stroke_code(self) -> str | None:
        """Code of one synchronised stroke that is no cycle: down and back with the lead behind its own letter."""
    @property
    def cycle_starts_spindle(self) -> bool | None:
        """Whether the tapping cycle starts the spindle. If not, a tap without M3 is pushed in unturned."""
    @property
    def rigid_tap_code_sticky_until(self) -> _RigidUntil | None:
        """How long the code for rigid tapping holds. If for one cycle, the second tool taps unsynchronised."""
    @property
    def S_in_cycle_block_allowed(self) -> bool | None:
        """Whether S may stand in the cycle's own block. Some controls take it only after the stroke."""
    @property
    def S_decimals(self) -> int | None:
        """Decimals of S that the control keeps, 0 to 9. Most cut them off."""
    @property
    def peck_returns_to_R(self) -> bool | None:
        """Whether a peck returns to the R plane; if not it breaks the chip in the hole, and takes less time."""
    @property
    def repeat_word(self) -> str | None:
        """Letter of repeats: L or K."""
    @property
    def repeat_zero_means(self) -> _RepeatZero | None:
        """What no repeats mean: an alarm, a cycle kept for later positions, or one hole."""
    @property
    def no_point(self) -> _NoPoint | None:
        """What a number without a point is: ``Z-20`` is 20 mm on one control and 0.02 mm on another."""
    @property
    def least_increment(self) -> dict[str, dict[str, Fraction | None]]:
        """What numbers without a point count, by "axis", "F_per_min", "F_per_rev", each "mm" and "inch"."""
    @property
    def max_decimals(self) -> dict[str, dict[str, int | None]]:
        """The most decimals of a word, by the same names; with as many, a word may be a rounded one."""
    @property
    def mirror_on(self) -> str | None:
        """Code that mirrors an axis."""
    @property
    def mirror_off(self) -> str | None:
        """Code that ends mirroring."""
    @property
    def scale_on(self) -> str | None:
        """Code that scales."""
    @property
    def scale_off(self) -> str | None:
        """Code that ends scaling."""
    @property
    def rotate_on(self) -> str | None:
        """Code that rotates."""
    @property
    def rotate_off(self) -> str | None:
        """Code that ends rotation."""
    @property
    def mirror_flips_hand(self) -> bool | None:
        """Whether a mirrored tapping cycle changes its hand; the tap breaks where it was not meant to."""
    @property
    def rapid_cancels_cycle(self) -> bool | None:
        """Whether G0 to G3 end a cycle. Where they do not, only G80 does."""
    @property
    def cycle_words_sticky_across_cancel(self) -> bool | None:
        """Whether R and Z of a cancelled cycle are still there for the next one."""
    @property
    def F_converted_on_units_change(self) -> bool | None:
        """Whether a change of units converts F. If not, F40 in inches becomes F40 in millimetres."""
    @property
    def override_locked_in_cycle(self) -> bool | None:
        """Whether overrides are locked inside the cycle. Where not, M49 has to lock them."""
    @property
    def unlisted_codes_alarm(self) -> bool | None:
        """Whether codes that neither the dialect names nor all mills share are an alarm."""
    @property
    def semicolon_comment(self) -> bool | None:
        """Whether a semicolon begins a comment."""
    @property
    def max_block_chars(self) -> int | None:
        """The longest line that the control takes in characters, 1 to 65535."""
    @property
    def spaces_in_numbers(self) -> _NumberSpaces | None:
        """What blanks inside a number are: nothing, or an alarm."""
    @property
    def subprogram_call(self) -> str | None:
        """Code that calls a subprogram, its number behind P."""
    @property
    def subprogram_return(self) -> str | None:
        """Code that returns from one."""
    @property
    def order_table(self) -> _BlockOrder | None:
        """In what order the words of a block act: whether ``G20 F40.`` is inches per minute."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Cycle:
    """The words of one tapped hole at the place the spindle stands, or why there are none."""

    @property
    def words(self) -> list[str]:
        """The words in order; empty if refused."""
    @property
    def blocks(self) -> list[str]:
        """The program lines in order; empty if refused."""
    @property
    def restore(self) -> list[str]:
        """What the next operation must set again: feed mode, F, spindle direction."""
    @property
    def refused(self) -> Finding | None:
        """The finding that says why there are no words; None if there are."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Job:
    """One tapped hole: what a plan is asked for.

    Args:
        **fields: Required by ``plan``: ``thread``, ``unit``, ``mode``, ``decimals``, ``rpm`` or
            ``surface_speed_m_min`` or ``surface_speed_ft_min``, ``hole`` ("through", "blind"),
            ``full_thread_depth_mm`` (not for taper threads), ``tap`` ("cut", "form").

            Tap: ``tap_kind``, ``tap_mark`` (what stands on the shank), ``chamfer_form`` ("A" to "F") or
            ``chamfer_threads``, ``tap_set_on`` ("front", "centre"), ``tap_centre_mm``, ``projection_mm``.
            Holder: ``holder`` ("rigid", "tension_compression", "floating"), ``holder_extension_mm``,
            ``holder_compression_mm``, ``underfeed_percent``, ``over_travel_turns``.
            Drill: ``drill_sets`` or ``drill_list`` or ``drill_mm``, ``oversize_mm``, ``taper_reamer``, ``percent``, ``basis``,
            ``point_angle_deg``. Hole and part: ``bottom_clearance_mm``, ``drill_depth_mm``,
            ``part_thickness_mm``, ``countersink_mm``, ``countersink_angle_deg``, ``coating_um``,
            ``material`` or ``cutting_force_n_mm2``, ``part_shear_mpa``, ``hole_count``.
            Cycle: ``r_plane_mm``, ``return_to`` ("r_plane", "initial"), ``peck_mm``, ``dwell_s``.
            ``machine``: a dict of ``highest_rpm``, ``lowest_rpm``, ``speed_step``,
            ``axis_feed_limit_mm_min``, ``acceleration_rpm_s``, ``retract_factor``,
            ``least_clearance_turns``, ``gears`` (up to 4 lists: lowest and highest speed, then the torque
            in Nm, or pairs of speed and torque).
            ``screw``: a dict of ``tolerance_class``, ``property_class``, ``tensile_mpa``, ``shear_mpa``,
            ``engagement_mm``, ``load_n``.
            ``dialect``: "rs274ngc", "unset", a ``Dialect`` or a dict of its fields.

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
class Spindle:
    """What holder, spindle and axis have to do for one planned hole."""

    @property
    def torque(self) -> TorqueBand | None:
        """Torque of the tap; None without a material or a cutting force."""
    @property
    def power_kw(self) -> float | None:
        """Power that the likely torque takes at the programmed speed, in kW."""
    @property
    def gear(self) -> GearFit | None:
        """The gear, for the largest torque of a new tap; None without gears or torque."""
    @property
    def time(self) -> TappingTime:
        """Speeds and times from the R plane and back, all strokes; without an acceleration no ramps."""
    @property
    def all_holes_s(self) -> float | None:
        """Time of all the holes of the part without the ways between them, in seconds."""
    @property
    def axis(self) -> FeedFit | None:
        """The axis feed against its limit; None without a limit."""
    @property
    def holder_travel(self) -> HolderTravel | None:
        """How far the holder has to give; None for a rigid one."""
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
    def taper(self) -> TaperDepths | None:
        """Depths of a taper thread, whose depth is its size; None for a straight one."""
    @property
    def countersink(self) -> Countersunk | None:
        """The countersink and what it takes of the full thread; None without one."""
    @property
    def spindle(self) -> Spindle:
        """What holder, spindle and axis have to do: torque, power, gear, time."""
    @property
    def tap_class(self) -> IsoTap | None:
        """Class of tap by ISO 2857, plating included; None for other threads than M and MJ."""
    @property
    def tap_limit(self) -> TapLimit | None:
        """The H limit that leaves room for the plating; None without one and for metric threads."""
    @property
    def joint(self) -> Engagement | None:
        """What the joint carries; None where the job speaks of no screw."""
    @property
    def gauges(self) -> Gauges:
        """The gauges to fetch, with the limits they stand for."""
    @property
    def formed_minor_mm(self) -> tuple[Fraction, Fraction] | None:
        """Minor diameter that a formed thread is judged by; None for cut threads and where none was read."""
    @property
    def not_go(self) -> NotGoRule | None:
        """How far NOT GO may enter; None where that has not been read."""
    @property
    def sources(self) -> dict[str, str]:
        """The source of every part of the plan, by its name."""
    @property
    def not_checked(self) -> list[str]:
        """What this plan did not check."""
    @property
    def text(self) -> str:
        """The plan as a page of text."""
    def to_json(self) -> str:
        """The plan as the text of its JSON: exact values are strings, derived ones numbers."""
    def to_dict(self) -> dict[str, _Json]:
        """The plan as a dict: its JSON, parsed."""

def read_fit(text: str | bytes, /) -> tuple[Thread, Thread]:
    """Reads a fit: the internal thread, then the external one, whatever their order in the text.

    A class of both sides, normal of BA, 2G of ACME, gets the side that the other leaves.

    Args:
        text: Two threads in one designation, str or bytes: ``M8x1.25-6H/6g``, ``Rp/R 1/2``.

    Raises:
        DesignationError: If it cannot be read; ``missing`` for a text with one class only,
            ``contradiction`` for two classes of one side, and for two different ones that are of both
            sides (2G/3G).

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

def threads_near_diameter(diameter_mm: _Exact, within_mm: _Exact) -> list[Thread]:
    """The standard threads of all families whose basic major diameter is about this one.

    Of pipe threads the diameter of the thread counts, of NPT and its kin the pipe's outside. A screw measures less
    than its basic diameter, by allowance, tolerance and wear.

    Args:
        diameter_mm: As it was measured, above 0 and up to 2000.
        within_mm: How far a diameter may be from it; 0 is exactly.

    Raises:
        ThreadcalcError: ``out-of-range``, ``not-exact``.

    >>> threads_near_diameter(6, 0)[-1]
    Thread('0 BA')

    Source: as :func:`standard_threads`.
    """

def threads_near_pitch(pitch_mm: _Exact, within_mm: _Exact) -> list[Thread]:
    """The standard threads of all families whose pitch is about this one.

    They have one start: of a lead with several starts the pitch is the lead over their number.

    Args:
        pitch_mm: Above 0 and up to 1000.
        within_mm: How far a pitch may be from it; 0 is exactly.

    Raises:
        ThreadcalcError: ``out-of-range``, ``not-exact``.

    >>> threads_near_pitch("0.23", 0)
    [Thread('14 BA')]

    Source: as :func:`standard_threads`.
    """

def near(
    thread: Thread, /
) -> list[tuple[str, Literal["one-character", "same-diameter", "same-pitch", "same-figures"]]]:
    """Designations of the standard threads nearest to a thread, with why each is near.

    First usual slips of typing (``one-character``: one missing, one too much, or a figure for its neighbour on the
    keys), then the nearest of the same diameter and of the same pitch, pipe threads of the same figures, and those
    that differ by any other character.

    >>> near(Thread("M10x1.3"))[0]
    ('M10x1.25', 'same-diameter')
    >>> near(Thread("M8x1.2"))[0]
    ('M8x1.25', 'one-character')
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

def nearest_exact_speeds(
    thread_or_lead_mm: Thread | _Exact,
    rpm: _Exact,
    *,
    unit: _Unit,
    decimals: int,
    step: _Exact | None = None,
    lowest: _Exact | None = None,
    highest: _Exact | None = None,
) -> tuple[int | None, int | None]:
    """The whole speeds next below and above one at which the feed word per minute is exact.

    They lie from half of the speed to its double; None where there is none.

    Args:
        thread_or_lead_mm: A thread, or a lead in millimetres above 0.
        rpm: The speed to be near to, in turns per minute.
        unit: The unit the machine is set to.
        decimals: Decimals of the feed word, 0 to 9.
        step: The control holds the multiples of this speed; None: every whole speed.
        lowest: Lowest speed; None for no limit.
        highest: Highest speed; None for no limit.

    Raises:
        ThreadcalcError: ``out-of-range``, ``unknown-value``.

    >>> nearest_exact_speeds(Thread("5/8-11 UNC"), 445, unit="inch", decimals=0)
    (440, 451)
    """

def identify(lead_mm: _Exact, *, within: _Exact = 0.0035, starts: int = 1) -> list[Match]:
    """The standard pitches that a lead may be, nearest first; none for a lead that is no standard pitch.

    More than one is ambiguous: two lie so near, or the tolerance is that wide. ``identify_lead`` says
    which, and the two nearest where there is none. A lead alone never gives a diameter.

    Args:
        lead_mm: The lead in millimetres, above 0 and up to 1000.
        within: Relative tolerance, 0 to 0.25.
        starts: Starts as they are declared, 1 to 12; more are never inferred.

    Raises:
        ThreadcalcError: ``out-of-range``, ``overflow``.

    >>> [str(near) for near in identify("1.8143")]
    ['14 TPI']
    >>> [(str(near), str(near.lead_error)) for near in identify(0.7969)]
    [('0.8 mm', '-31/8000'), ('32 TPI', '63/15875')]
    >>> identify(1.3)
    []

    Source: the pitches of ISO 261, ASME B1.1, ISO 228-1, ISO 7-1, ASME B1.20.1 and B1.20.3; derived.
    """

def identify_lead(lead_mm: _Exact, *, within: _Exact = 0.0035, starts: int = 1) -> Identification:
    """What a lead says of the thread.

    One pitch within the tolerance is identified, more are ambiguous, and so are two within 0.45 % where
    the nearest is not within 0.35 %. A holder that is under-fed on purpose shortens the lead by more than
    pitches lie apart: use the declared thread there.

    Args:
        lead_mm: The lead in millimetres, above 0 and up to 1000.
        within: Relative tolerance, 0 to 0.25.
        starts: Starts as they are declared, 1 to 12; more are never inferred.

    Raises:
        ThreadcalcError: ``out-of-range``, ``overflow``.

    >>> identify_lead(1.3)
    <Identification nonstandard [20 TPI, 19 TPI]>
    >>> identify_lead(3, starts=2).matches
    [<Match 1.5 mm, lead_error 0>]

    Source: the pitches of ISO 261, ASME B1.1, ISO 228-1, ISO 7-1, ASME B1.20.1 and B1.20.3; derived.
    """

def identify_feed(
    feed: _Exact,
    rpm: _Exact | None = None,
    *,
    unit: _Unit,
    mode: _Mode,
    decimals: int | None = None,
    most_decimals: int | None = None,
    rpm_decimals: int | None = None,
    most_rpm_decimals: int | None = None,
    within: _Exact = 0.0035,
    starts: int = 1,
) -> Identification:
    """What feed and speed of a program say of the thread.

    The lead is feed / speed, or the feed itself per revolution. A word that is written with all the
    decimals that the control takes may be rounded: it stands for everything within half of its last
    digit, and the tolerance is counted from the nearest of these leads.

    Args:
        feed: The feed in the unit of the program, above 0.
        rpm: The speed in turns per minute; per minute only.
        unit: Unit of the program.
        mode: What the feed is counted by.
        decimals: Decimals that the feed is written with, 0 to 9; None: not known.
        most_decimals: The most decimals that the control takes in a feed; None: not known.
        rpm_decimals: Decimals that the speed is written with; None: not known.
        most_rpm_decimals: The most decimals that the control takes in a speed; None: not known.
        within: Relative tolerance, 0 to 0.25.
        starts: Starts as they are declared, 1 to 12; more are never inferred.

    Raises:
        ThreadcalcError: ``missing`` without a speed per minute, ``contradiction`` with one per revolution
            and for a value with more decimals than are said to be written, ``out-of-range``,
            ``unknown-value``, ``overflow``.

    >>> identify_feed(914.4, 720, unit="mm", mode="per_minute")
    <Identification identified [20 TPI]>
    >>> identify_feed("0.05", unit="inch", mode="per_revolution", decimals=2, most_decimals=2)
    <Identification ambiguous [20 TPI, 1.25 mm, 19 TPI]>

    Source: ISO 6983-1 (F with G94 and G95); 1 in = 25.4 mm exactly; derived.
    """

def threads_of_pitch(pitch_mm: _Exact, diameter_mm: _Exact, *, starts: int = 1) -> list[Thread]:
    """The standard threads of a pitch and about a diameter; there may be none.

    A basic major diameter within 0.0127 mm (0.0005 in) of the one given is the same: tables of tools
    write diameters no finer. Pipe threads have one start.

    Args:
        pitch_mm: The pitch in millimetres, exact: that of a match.
        diameter_mm: The diameter in millimetres, as a table of tools or a comment gives it.
        starts: Starts as they are declared, 1 to 12.

    Raises:
        ThreadcalcError: ``out-of-range``, ``overflow``.

    >>> threads_of_pitch(identify(1.27)[0].pitch_mm, 6.35)
    [Thread('1/4-20 UNC'), Thread('1/4-20 BSW')]

    Source: as ``standard_threads``; the room of the diameter is derived from three decimals of an inch.
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
        tap: Cut: D - 1.299038 P x percent/100 on "3H/4", 1.082532 P on "5H/8". Form: 0.68 P. The others have their
            own height: MJ and UNJ 0.974279 P, S 0.96 P, BSW, BSF, G and Rp 1.280655 P, BA 1.2 P to 0.01 mm,
            buttress 1.2 P, Tr and ACME P, stub ACME 0.6 P; NPSC and NPSM: E1 + 0.8 P - 1.6 P x percent/100.
            D is the hole's own, of a wire insert larger than the screw's.
        basis: What 100 % is: required for a cut tap in M and UN, an error for a form tap and for all others.

    Raises:
        ThreadcalcError: ``missing``, ``contradiction``, ``out-of-range``, ``unknown-value``,
            ``does-not-apply`` for taper threads and formed Tr, ACME and buttress, ``not-sourced`` for NPSF and other
            formed threads that are not of 60 degrees.

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
    drills: Iterable[Drill | str | bytes | _Exact] | None = None,
    oversize_mm: _Exact | None = None,
) -> TapDrill:
    """Chooses the drill of the sets, or of a list, for a tapped hole. Nearest is by diameter, ties to the larger.

    Args:
        thread: The thread; without a class it is judged by the medium class, with a finding.
        tap: Cut or form tap.
        percent: The drill nearest to that hole; without it, the drill nearest to D - P within the
            minor-diameter limits (MJ, UNJ, BA: D - 0.9 P; S: D - 0.8 P; Tr, ACME: D - 0.95 P; stub ACME:
            D - 0.57 P; buttress: D - 1.14 P; form: nearest to D - P/2).
        basis: What 100 % is; required with a percent for a cut tap in M and UN, an error for the others.
        sets: Drill sets to choose from; None: metric for metric threads, BSW, BSF, G, R, Rp and Rc, inch sets for
            the others.
        taper_reamer: For a taper thread: the hole is reamed to the taper before it is tapped.
        drills: The drills that the shop owns, up to 24, to choose from instead of sets: names as Drill.read
            reads them, or diameters in millimetres.
        oversize_mm: How much larger than the drill its hole is, 0 or more; None: the usual.

    NPT and NPTF take the drill nearest to K0 = E0 - 0.8 p, with taper reamer to K0 - 3 p/16; Rc the
    smallest drill not below D1 at the face, with taper reamer nearest to D1 - useful thread/16. A list is
    chosen from by the same rule; the error ``no-drill`` gives its nearest drill and the range that would do.

    Raises:
        ThreadcalcError: ``missing``, ``contradiction`` (also sets beside a list), ``no-drill``,
            ``unknown-value``, ``out-of-range``, ``too-long`` (more than 24 drills), ``not-exact``;
            ``does-not-apply`` for a percent or a form tap in a taper thread.

    >>> tap_drill(Thread("M10x1.5-6H"), tap="cut").drill.name
    '8.5'
    >>> tap_drill(Thread("1/4-20 UNC-2B"), tap="cut", percent=75, basis="3H/4").drill.name
    '#7'
    >>> tap_drill(Thread("M8-6H"), tap="cut", drills=["6.8", "#7", 6.9]).drill.name
    '6.8'
    >>> found = tap_drill(Thread("1/4-18 NPT"), tap="cut")
    >>> found.drill.name, found.percent, [finding.id for finding in found.findings]
    ('7/16', None, ['taper-hole'])

    Source: ISO 2306 (D - P); Machinery's Handbook 31 (percent); ASME B94.9-2008 (NPT, direct tapping);
    form taps, taper reamer, Rc and the rules of the other straight threads: common practice.
    """

def judge_drill(
    thread: Thread,
    drill: Drill | str | bytes | _Exact,
    *,
    tap: _Tap,
    basis: _Basis | None = None,
    oversize_mm: _Exact | None = None,
) -> TapDrill:
    """Judges a drill that the shop has for a tapped hole, as tap_drill judges the one it chooses.

    Args:
        thread: The thread; without a class it is judged by the medium class, with a finding.
        drill: The drill, its name as Drill.read reads it, or its diameter in millimetres.
        tap: Cut or form tap.
        basis: What 100 % is; an error for a form tap and for other threads than M and UN.
        oversize_mm: How much larger than the drill its hole is, 0 or more; None: the usual.

    Findings beside those of the limits: ``other-taps-hole``, a hole that the other kind of tap takes in this
    thread; ``oversize-over-limit``, a drill within the limits whose probable hole is not.

    Raises:
        ThreadcalcError: ``contradiction``, ``out-of-range``, ``unreadable``, ``does-not-apply``,
            ``not-sourced``.

    >>> found = judge_drill(Thread("M8-6H"), "7.4", tap="cut")
    >>> [finding.id for finding in found.findings]
    ['drill-outside-limits', 'other-taps-hole']

    Source: as tap_drill and probable_hole_mm; the other tap's hole: common practice.
    """

def probable_hole_mm(drill: Drill | str | bytes | _Exact, oversize_mm: _Exact | None = None) -> Fraction:
    """The hole that a drill probably leaves in average work, in millimetres: drills cut larger than they are.

    Number, letter and fractional drills have the mean oversize printed for the drill, between two drills by a
    straight line to 0.0001 in; others 0.075 mm, below 3.5 mm the inch drills' where it is less.

    Args:
        drill: The drill, its name as Drill.read reads it, or its diameter in millimetres.
        oversize_mm: The caller's own oversize, 0 or more, in place of both.

    Raises:
        ThreadcalcError: ``not-sourced`` below 3/64 in and, of inch drills, above 1 3/64 in;
            ``out-of-range``, ``unreadable``.

    >>> probable_hole_mm("#7") / Fraction("25.4")
    Fraction(128, 625)

    Source: a tap maker's tap drill chart (inch); a drill maker's tap drill page (metric mean 0.075 mm).
    """

def form_hole_mm(thread: Thread) -> tuple[Fraction, Fraction]:
    """The usual window of the hole for a form tap in millimetres: 75 and 65 % of its own height, 0.68 P.

    The tap maker's window for the tap and the material goes before it.

    Raises:
        ThreadcalcError: ``not-sourced`` for other threads than those of 60 degrees, ``does-not-apply`` for Tr, ACME
            and buttress, ``contradiction`` for an external thread, ``out-of-range``.

    >>> [str(float(end)) for end in form_hole_mm(Thread("M8-6H"))]
    ['7.3625', '7.4475']

    Source: common practice.
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

def full_thread_that_fits(
    thread: Thread,
    drill_depth_mm: _Exact,
    *,
    drill_depth_to: _DrilledTo,
    drill_mm: _Exact,
    chamfer_threads: _Exact,
    bottom_clearance_mm: _Exact,
    point_angle_deg: _Exact | None = None,
    tap_centre_mm: _Exact = 0,
    tap_set_on: Literal["front", "centre"] = "front",
) -> BlindThread:
    """The longest full thread in a blind hole that is drilled to a given depth: ``depths`` back.

    full thread = depth of the full diameter - bottom clearance - tap centre - chamfer threads x P. Exact;
    the height of the drill's point is taken to the next 0.000001 mm above.

    Args:
        thread: A straight thread.
        drill_depth_mm: Depth of the hole from the face, in millimetres, above 0 up to 10 000.
        drill_depth_to: What that depth is measured to.
        drill_mm: Diameter of the drilled hole, in millimetres.
        chamfer_threads: Threads of the tap's chamfer, 0 to 20; the longest of its form.
        bottom_clearance_mm: Room below the tap, in millimetres.
        point_angle_deg: Point angle of the drill in degrees, above 60 up to 180; needed for a depth to
            the point. Where nobody knows it, see ``bottoming``.
        tap_centre_mm: Length of the tap's male centre, in millimetres.
        tap_set_on: The place on the tap that its length offset is set on.

    Raises:
        ThreadcalcError: ``out-of-range`` names the value that makes no sense, or ``drill_depth_mm`` where
            nothing is left for a full thread; ``missing`` for a depth to the point without the angle;
            ``does-not-apply`` for taper threads.

    >>> found = full_thread_that_fits(Thread("M8"), 23.5, drill_depth_to="full_diameter", drill_mm=6.8,
    ...                               chamfer_threads=3, bottom_clearance_mm=3.75)
    >>> int(found.full_thread_mm), float(found.tap_mm)
    (16, 19.75)

    Source: common practice; chamfer lengths by form: DIN 2197.
    """

def chamfers_for_full_thread(
    thread: Thread,
    wanted_mm: _Exact,
    *,
    drill_depth_mm: _Exact,
    drill_depth_to: _DrilledTo,
    drill_mm: _Exact,
    bottom_clearance_mm: _Exact,
    point_angle_deg: _Exact | None = None,
    tap_centre_mm: _Exact = 0,
) -> list[ChamferReading]:
    """Every form of chamfer in a blind hole, A to F first, and whether it gives the full thread wanted.

    Form B drives its chips to the bottom and never gives it.

    Args:
        thread: A straight thread.
        wanted_mm: The full thread wanted, in millimetres.
        drill_depth_mm: Depth of the hole from the face, in millimetres.
        drill_depth_to: What that depth is measured to.
        drill_mm: Diameter of the drilled hole, in millimetres.
        bottom_clearance_mm: Room below the tap, in millimetres.
        point_angle_deg: Point angle of the drill in degrees; needed for a depth to the point.
        tap_centre_mm: Length of the tap's male centre, in millimetres.

    Raises:
        ThreadcalcError: As ``full_thread_that_fits``, but for a hole that is too shallow.

    >>> found = chamfers_for_full_thread(Thread("M8"), 16, drill_depth_mm=22, drill_depth_to="full_diameter",
    ...                                  drill_mm=6.8, bottom_clearance_mm=3)
    >>> [reading.form for reading in found if reading.gives_wanted]
    ['E', 'F', 'bottoming']

    Source: DIN 2197 as tap makers print it, see ``ChamferForm``.
    """

def bottoming(
    thread: Thread,
    tap_end_mm: _Exact,
    drill_point_mm: _Exact,
    *,
    drill_mm: _Exact,
    point_angle_deg: _Exact | None = None,
) -> Bottoming:
    """The room below a tap in a blind hole whose depth is given to the drill's point.

    room = drill point - d/2 / tan(point angle / 2) - end of the tap. Exact; the height of the point is
    taken to the next 0.000001 mm above.

    Args:
        thread: The thread.
        tap_end_mm: From the face to the very end of the tap, its centre included, in millimetres.
        drill_point_mm: From the face to the tip of the drill, in millimetres.
        drill_mm: Diameter of the drilled hole, in millimetres.
        point_angle_deg: Point angle of the drill in degrees, above 60 up to 180. None: unknown, and every
            usual angle is answered: 118, 130, 135 and 140 degrees.

    Raises:
        ThreadcalcError: ``out-of-range``.

    >>> found = bottoming(Thread("M8"), 19.75, 21.5, drill_mm=6.8)
    >>> [(int(reading.point_angle_deg), reading.verdict) for reading in found.readings]
    [(118, 'error'), (130, 'warning'), (135, 'warning'), (140, 'warning')]
    >>> found.worst, found.is_certain
    ('error', False)

    Source: common practice.
    """

def run_out_mm(thread: Thread, run_out: _RunOut) -> Fraction:
    """The run-out of a blind hole for an ISO metric thread, in millimetres.

    The hole has to have its full diameter at least to full thread + run-out. By pitch, for coarse and fine
    threads alike.

    Args:
        thread: An ISO metric thread.
        run_out: "normal" is e1; "short" and "long" are not sourced yet.

    Raises:
        ThreadcalcError: ``does-not-apply`` for other threads than M and for holes of wire inserts;
            ``not-sourced`` for pitches that the table does not have, the short and the long run-out;
            ``contradiction`` for an external thread.

    >>> float(run_out_mm(Thread("M8"), "normal"))
    6.2

    Source: DIN 76-1, run-out of blind tapped holes, e1.
    """

def countersink(
    thread: Thread, countersink_mm: _Exact, *, angle_deg: _Exact, hole_mm: _Exact | None = None
) -> Countersunk:
    """The depth of a countersink, and the full thread that it takes away at the mouth of a tapped hole.

    The thread stands between the hole and the major diameter, so a turn of it is whole only below the
    place where the cone has narrowed to the hole.

    Args:
        thread: A straight thread.
        countersink_mm: Diameter at the face, in millimetres, larger than the hole.
        angle_deg: Included angle in degrees, 60 to 130.
        hole_mm: The drilled hole, in millimetres. None: the basic minor diameter.

    Raises:
        ThreadcalcError: ``out-of-range``; ``contradiction`` for an external thread; ``does-not-apply`` for
            taper threads; ``not-sourced`` for a profile that nobody has read.

    >>> found = countersink(Thread("M8"), 8.4, angle_deg=90, hole_mm=6.8)
    >>> round(found.depth_at_major_mm, 9), round(found.full_thread_lost_mm, 9)
    (0.2, 0.8)

    Source: geometry; minor diameter: ISO 68-1, ASME B1.1, ISO 228-1, ISO 7-1, ASME B1.20.1.
    """

def usual_countersink(thread: Thread) -> UsualCountersink:
    """The usual countersink of an ISO metric tapped hole: 1 to 1.05 times the nominal diameter, 120 degrees.

    Raises:
        ThreadcalcError: ``does-not-apply`` for other threads than M and for holes of wire inserts;
            ``contradiction`` for an external thread.

    >>> usual = usual_countersink(Thread("M8"))
    >>> float(usual.least_mm), float(usual.most_mm), int(usual.angle_deg)
    (8.0, 8.4, 120)

    Source: DIN 76-1, from memory; common practice.
    """

def program_depth(depth_mm: _Exact, *, unit: _Unit, decimals: int, rounding: _DepthRounding) -> ProgramDepth:
    """A depth in the unit of the program, at its decimals, rounded once to the side that is safe.

    Args:
        depth_mm: From the face down, in millimetres, 0 to 10 000.
        unit: Unit of the program.
        decimals: Decimals of the word, 0 to 9.
        rounding: "deeper" for straight threads and drills; "shallower" for the first hole of a taper pipe
            tap, which can be tapped deeper but not made smaller again.

    Raises:
        ThreadcalcError: ``out-of-range``, ``overflow``.

    >>> found = program_depth(21, unit="inch", decimals=4, rounding="deeper")
    >>> found.text, float(found.depth_mm)
    ('0.8268', 21.00072)

    Source: common practice; ISO 6983-1 (numbers with a point); 1 in = 25.4 mm exactly.
    """

def program_depth_of_derived(
    depth_mm: _Exact, *, unit: _Unit, decimals: int, rounding: _DepthRounding
) -> ProgramDepth:
    """The same of a derived depth, such as that of a drill's point.

    The nearest 0.000000001 mm is rounded, since the last digits of a double are no depth.

    Args:
        depth_mm: From the face down, in millimetres, 0 to 10 000.
        unit: Unit of the program.
        decimals: Decimals of the word, 0 to 9.
        rounding: As for ``program_depth``.

    Raises:
        ThreadcalcError: As ``program_depth``.

    >>> program_depth_of_derived(26.703872784726475, unit="mm", decimals=3, rounding="deeper").text
    '26.704'

    Source: as ``program_depth``.
    """

def through_hole(
    thread: Thread,
    part_thickness_mm: _Exact,
    *,
    chamfer_threads: _Exact,
    drill_mm: _Exact,
    point_angle_deg: _Exact,
    drill_clearance_mm: _Exact,
    over_travel_turns: _Exact = 0,
    tap_centre_mm: _Exact = 0,
    tap_set_on: Literal["front", "centre"] = "front",
) -> ThroughHole:
    """How far tap and drill come out below a part: the room that vice, parallels and table have to leave.

    tap below = chamfer threads x P + tap centre + over-travel turns x lead; drill below = drill clearance +
    the height of the point. The program leaves out the over-travel.

    Args:
        thread: A straight thread.
        part_thickness_mm: Thickness of the part at the hole, in millimetres.
        chamfer_threads: Threads of the tap's chamfer, 0 to 20; plan on the longest of its form.
        drill_mm: Diameter of the drilled hole, in millimetres.
        point_angle_deg: Point angle of the drill in degrees, above 60 up to 180.
        drill_clearance_mm: How far the drill's full diameter has to come out, in millimetres.
        over_travel_turns: Turns that the spindle coasts on after the programmed depth, 0 to 20.
        tap_centre_mm: Length of the tap's male centre, in millimetres.
        tap_set_on: The place on the tap that its length offset is set on.

    Raises:
        ThreadcalcError: ``out-of-range``; ``does-not-apply`` for taper threads.

    >>> found = through_hole(Thread("M8"), 20, chamfer_threads=5.5, drill_mm=6.8, point_angle_deg=118,
    ...                      drill_clearance_mm=1, over_travel_turns=1)
    >>> float(found.tap_below_mm), float(found.tap_mm)
    (8.125, 28.125)

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

def engagement_group(thread: Thread, length_mm: _Exact) -> EngagementLengths:
    """Whether a length of engagement is short, normal or long for a metric thread, and where normal begins and ends.

    The standard's table; where it has nothing its formula, 2.24 P d^0.2 and 6.7 P d^0.2 with the smallest diameter
    of the thread's step (0.99 1.4 2.8 5.6 11.2 22.4 45 90 180 355), to 0.01 mm: ``confidence`` says so, and the table
    leaves the formula by -6 to +21 %. The limits of size of a class are the same for every group: what changes is the
    class that is recommended, ``recommended_class``. Unified threads have no groups: ``Thread.limits_at``.

    Raises:
        ThreadcalcError: ``does-not-apply`` for threads other than ISO metric M; ``out-of-range`` for a length
            outside 0 to 10 000 mm; ``not-sourced`` outside 1 to 355 mm and pitches of 0.2 to 8 mm.

    >>> found = engagement_group(Thread("M8"), 20)
    >>> found.group, int(found.normal_over_mm), int(found.normal_to_mm)
    ('L', 4, 12)

    Source: ISO 965-1, table of lengths of engagement, as Machinery's Handbook 27 p. 1792 and a reprint of ISO 965-2
    print it; the formula from memory.
    """

def recommended_class(side: _Side, group: _EngagementGroup, quality: _FitQuality) -> str | None:
    """The class of tolerance of metric threads that is recommended for a group of engagement.

    Position H inside, h for fine and g for other external threads; None where there is none (short and coarse). Up to
    1.4 mm the medium class of normal engagement is 5H and 6h.

    Raises:
        ThreadcalcError: ``unknown-value``.

    >>> recommended_class("internal", "L", "medium"), recommended_class("external", "S", "coarse")
    ('7H', None)

    Source: ISO 965-1, recommended classes, from memory; the grades of internal threads as tap makers print them.
    """

def engagement(
    internal: Thread,
    external: Thread,
    length_mm: _Exact,
    *,
    internal_shear_mpa: _Exact,
    external_shear_mpa: _Exact,
    external_tensile_mpa: _Exact,
    without_full_thread_mm: _Exact = 0,
    drilled_mm: _Exact | None = None,
    load_n: _Exact | None = None,
) -> Engagement:
    """What a screw and a tapped hole carry together, at the limits of size that overlap least.

    With L the length of full thread, n threads per length, D1 and D2 the hole's largest minor and
    pitch diameters, d and d2 the screw's smallest major and pitch diameters:
    screw's threads pi n L D1 (1/(2n) + 0.57735 (d2 - D1)), hole's pi n L d (1/(2n) + 0.57735 (d - D2)).

    Static loads along the axis, threads that share them evenly, and the strengths given: no bending,
    fatigue, temperature, creep, torque or bursting of a thin wall. Structural, pressure and lifting
    joints belong to the engineer responsible.

    Args:
        internal: The thread of the hole, with its class.
        external: The thread of the screw, with its class.
        length_mm: Length of engagement in millimetres, incomplete threads and all.
        internal_shear_mpa: Shear strength of the tapped part, in MPa.
        external_shear_mpa: Shear strength of the screw, in MPa.
        external_tensile_mpa: Tensile strength of the screw, in MPa.
        without_full_thread_mm: What of the length has no full thread, chamfers and the like.
        drilled_mm: The hole as it was drilled, instead of the class's largest minor diameter.
        load_n: An axial load to be held against the weakest part, in newtons.

    Raises:
        ThreadcalcError: ``class-unset``; ``contradiction`` for swapped sides, threads that are not the
            same, or classes that leave no overlap; ``does-not-apply`` for threads other than M, MJ, UN, UNR and
            UNJ, and for holes of wire inserts;
            ``out-of-range``; those of ``Thread.limits``.

    >>> hole, screw = Thread("M10x1.5-6H"), Thread("M10x1.5-6g")
    >>> found = engagement(hole, screw, 10, internal_shear_mpa=200, external_shear_mpa=480,
    ...                    external_tensile_mpa=800, load_n=20000)
    >>> round(found.external_shear_area_mm2, 2), found.weakest
    (155.8, 'internal')
    >>> found.required_length_mm > 10, round(found.safety_factor, 1)
    (True, 2.1)

    Source: FED-STD-H28/2B and ASME B1.1 appendix B (shear areas, length, J); ISO 898-1 and ASME B1.1
    (tensile stress area).
    """

def property_classes() -> list[_PropertyClass]:
    """The property classes of screws that ``starting_strength`` knows.

    >>> property_classes()[5]
    '8.8'
    """

def starting_strength(property_class: _PropertyClass, diameter_mm: _Exact, /) -> StartingStrength:
    """Strengths of a screw to begin with: a measured or specified strength comes first.

    Class 8.8 has 800 MPa up to 16 mm and 830 MPa above; class 9.8 ends at 16 mm. The 0.6 is common practice for
    steel.

    Args:
        property_class: Property class of the screw.
        diameter_mm: Nominal diameter in millimetres, 1.6 to 39.

    Raises:
        ThreadcalcError: ``unknown-value``; ``out-of-range`` for a diameter that the standard has no strength
            for in this class.

    >>> strength = starting_strength("8.8", 10)
    >>> strength.tensile_mpa, strength.shear_mpa
    (800.0, 480.0)

    Source: ISO 898-1:2013 scope and table 3, from memory; shear: common practice.
    """

def starting_part_strength(material: _Material, /) -> StartingStrength:
    """Strengths of the weakest usual material of a group, for the threads of a tapped part to begin with.

    The groups with a range stand at its lower end. Of the others: free-cutting steel 11SMn30, grey cast iron
    EN-GJL-150, copper alloy leaded gunmetal as cast, aluminium EN AW-5754 soft. Pure aluminium and castings of
    aluminium carry less: the material's certificate comes first.

    Raises:
        ThreadcalcError: ``unknown-value``.

    >>> starting_part_strength("aluminium").shear_mpa
    114.0

    Source: EN 10087, EN 1561, EN 485-2 and the ranges of the groups, from memory; shear: common practice.
    """

def spindle_speed(diameter_mm: _Exact, surface_speed_m_min: _Exact) -> float:
    """The speed at which a diameter runs at a surface speed, in rpm, not rounded: n = 1000 v / (pi D).

    What the control holds of it is ``programmed_speed``.

    Args:
        diameter_mm: Diameter in millimetres, above 0 up to 2000.
        surface_speed_m_min: Surface speed in metres per minute, above 0 up to 20000.

    Raises:
        ThreadcalcError: ``out-of-range``, ``overflow``.

    >>> round(spindle_speed(10, 15), 2)
    477.46

    Source: tool makers' published formulas; common practice.
    """

def spindle_speed_feet(diameter_in: _Exact, surface_speed_ft_min: _Exact) -> float:
    """The same in inches and feet per minute, in rpm, not rounded: n = 12 v / (pi D).

    Args:
        diameter_in: Diameter in inches, above 0 up to 2000.
        surface_speed_ft_min: Surface speed in feet per minute, above 0 up to 20000.

    Raises:
        ThreadcalcError: ``out-of-range``, ``overflow``.

    >>> round(spindle_speed_feet("1/4", 50), 1)
    763.9

    Source: tool makers' published formulas; common practice.
    """

def surface_speed_m_min(diameter_mm: _Exact, rpm: _Exact) -> float:
    """The surface speed of a diameter at a spindle speed, in m/min: v = pi D n / 1000.

    Args:
        diameter_mm: Diameter in millimetres, above 0 up to 2000.
        rpm: Spindle speed in turns per minute, above 0 up to 1000000.

    Raises:
        ThreadcalcError: ``out-of-range``, ``overflow``.

    >>> round(surface_speed_m_min(10, 480), 2)
    15.08

    Source: tool makers' published formulas; common practice.
    """

def torque_nm(thread: Thread, cutting_force_n_mm2: _Exact, *, factor: _Exact = 1) -> float:
    """The likely torque of a tap, in newton metres: the middle of ``torque_by_pitch``.

    Args:
        thread: The thread.
        cutting_force_n_mm2: Out of a table for kc P^2 D / 8000, in N/mm2, 50 to 20000.
        factor: 1 for a cutting tap; see ``forming_factor`` and ``taper_factor``.

    Raises:
        ThreadcalcError: ``out-of-range``.

    >>> round(torque_nm(Thread("M10"), 2500), 2)
    7.03

    Source: a tap maker's published formula.
    """

def torque_by_pitch(thread: Thread, cutting_force_n_mm2: _Exact, *, factor: _Exact = 1) -> TorqueBand:
    """The torque of a tap from pitch and diameter: M = starts x factor x kc P^2 D / 8000.

    Args:
        thread: The thread; D is its basic major diameter, and the pitch counts, not the lead.
        cutting_force_n_mm2: Out of a table for this very formula, in N/mm2, 50 to 20000.
        factor: 0.1 to 20: 1 for a cutting tap; see ``forming_factor`` and ``taper_factor``.

    Raises:
        ThreadcalcError: ``out-of-range``.

    >>> band = torque_by_pitch(Thread("M10"), 2500)
    >>> round(band.likely_nm, 2), round(band.worn_nm, 2)
    (7.03, 14.06)

    Source: a tap maker's published formula; the band and the starts: common practice.
    """

def torque_by_chip_area(
    thread: Thread, cutting_force_n_mm2: _Exact, *, drill_mm: _Exact, factor: _Exact
) -> TorqueBand:
    """The torque of a cutting tap from the metal that the drilled hole leaves.

    M = starts x factor x tan(flank angle) kc (D - Do)^2 (D + 2 Do) / 24000

    Args:
        thread: The thread.
        cutting_force_n_mm2: Out of a table for this very formula, in N/mm2, 50 to 20000.
        drill_mm: The drilled hole Do, in millimetres.
        factor: 0.1 to 20, for the kind of tap: in steel 1.35 straight flutes, 1.15 spiral flutes, 0.95
            spiral point.

    Raises:
        ThreadcalcError: ``out-of-range``; ``does-not-apply`` for taper threads.

    >>> round(torque_by_chip_area(Thread("M10"), 3900, drill_mm=8.5, factor=1.15).likely_nm, 2)
    6.55

    Source: a tap maker's published formula; the band and the starts: common practice.
    """

def power_kw(torque_nm: _Exact, rpm: _Exact) -> float:
    """The power that a torque takes at a speed, in kilowatts: P = 2 pi M n / 60000.

    Args:
        torque_nm: Torque in newton metres, 0 to 1000000.
        rpm: Spindle speed in turns per minute, above 0 up to 1000000.

    Raises:
        ThreadcalcError: ``out-of-range``.

    >>> round(power_kw(7.03, 500), 3)
    0.368

    Source: mechanics; derived.
    """

def forming_factor() -> FactorRange:
    """How much more torque a form tap takes than a cutting tap in the same thread.

    >>> factor = forming_factor()
    >>> factor.low, factor.start, factor.high
    (2.0, 2.5, 3.0)

    Source: a tap maker's published rule; the start is the middle.
    """

def taper_factor() -> FactorRange:
    """How much more torque a taper pipe tap takes, which cuts on its whole length.

    >>> taper_factor().start
    2.5

    Source: common practice, a judgement.
    """

def materials() -> list[_Material]:
    """The groups of materials that ``starting_forces`` knows.

    >>> "grey_cast_iron" in materials()
    True
    """

def starting_forces(material: _Material, /) -> StartingForces:
    """Cutting forces of a group of materials to start from. The tap maker's own replace them.

    Raises:
        ThreadcalcError: ``unknown-value``.

    >>> forces = starting_forces("tempered_steel")
    >>> forces.by_pitch_n_mm2, forces.by_chip_area_n_mm2
    (2600.0, 3900.0)

    Source: a tap maker's published tables, one for each formula; aluminium from memory of the trade.
    """

def gear_fit(gears: Iterable[Gear], torque_nm: _Exact, rpm: _Exact) -> GearFit:
    """Finds the gear for a torque and a speed, and the largest speed that would do.

    Where ranges overlap the gear with the most torque is taken, the first on a tie. A control that
    chooses by the speed alone may take another one.

    Args:
        gears: 1 to 6 gears.
        torque_nm: Torque in newton metres: ``high_nm`` of a band for a new tap, ``worn_nm`` for its end.
        rpm: Spindle speed in turns per minute.

    Raises:
        ThreadcalcError: ``out-of-range``.

    >>> gears = [Gear(20, 500, [(20, 120)]), Gear(20, 4000, [(20, 20)])]
    >>> fit = gear_fit(gears, 39, 150)
    >>> fit.gear, fit.is_enough, fit.fastest_rpm
    (0, True, 500.0)

    Source: derived.
    """

def tapping_time(
    lead_mm: _Exact,
    rpm: _Exact,
    travel_mm: _Exact,
    *,
    acceleration_rpm_s: _Exact | None,
    retract_factor: _Exact = 1,
    dwell_s: _Exact = 0,
    peck_mm: _Exact | None = None,
) -> TappingTime:
    """The speed that a tapping stroke reaches, and the time that the hole takes.

    The axis follows the spindle exactly; the spindle starts at rest at the R plane, gains and loses
    speed at a constant rate within the travel, and stands still at the bottom. With N = travel / lead:
    a long stroke takes 60 N / n + n / a, a short one reaches sqrt(60 a N) and takes 2 n / a.
    With a peck the tap goes back to the R plane after every stroke, at the speed of the way out, and in
    again from there: a control that only breaks the chip at each peck takes less than this.

    Args:
        lead_mm: Lead of the thread in millimetres.
        rpm: Programmed speed in turns per minute.
        travel_mm: From the R plane to the bottom of the stroke, in millimetres.
        acceleration_rpm_s: How fast the spindle gains and loses speed, in rpm per second; None: not
            known, no ramps, so that the time is the least there can be.
        retract_factor: Speed on the way out over speed on the way in, 0.1 to 1000.
        dwell_s: Wait at the bottom of each stroke, in seconds.
        peck_mm: Depth of a peck, a thousandth of the travel to all of it: the strokes end at one peck
            from the R plane, at two, and so on, the last at the full travel; None: one stroke.

    Raises:
        ThreadcalcError: ``out-of-range`` names the value that makes no sense; ``overflow``.

    >>> found = tapping_time(Thread("M8").lead_mm, 3000, 20, acceleration_rpm_s=3000)
    >>> found.reaches_speed, round(found.reached_rpm, 2), round(found.time_s, 3)
    (False, 1697.06, 2.263)
    >>> found.distance_to_speed_mm
    31.25
    >>> pecked = tapping_time(Thread("M8").lead_mm, 3000, 20, acceleration_rpm_s=3000, peck_mm=5)
    >>> pecked.strokes, round(pecked.time_s, 3)
    (4, 6.954)

    Source: mechanics; derived.
    """

def turns_to_speed(rpm: _Exact, acceleration_rpm_s: _Exact) -> float:
    """Turns from standstill to a speed, which the tap needs above the face: N = n^2 / (120 a).

    Args:
        rpm: Speed in turns per minute.
        acceleration_rpm_s: Acceleration in rpm per second, 1 to 10000000.

    Raises:
        ThreadcalcError: ``out-of-range``.

    >>> turns_to_speed(600, 1500)
    2.0

    Source: mechanics; derived.
    """

def speed_after_turns(turns: _Exact, acceleration_rpm_s: _Exact) -> float:
    """The speed after a number of turns from standstill, in rpm: n = sqrt(120 a N).

    Args:
        turns: Turns, 0 to 1000000.
        acceleration_rpm_s: Acceleration in rpm per second, 1 to 10000000.

    Raises:
        ThreadcalcError: ``out-of-range``.

    >>> speed_after_turns(2, 1500)
    600.0

    Source: mechanics; derived.
    """

def feed_fit(
    lead_mm: _Exact, rpm: _Exact, *, feed_limit_mm_min: _Exact, retract_factor: _Exact = 1
) -> FeedFit:
    """Checks the axis feed of a lead and a speed against the limit of the axis, exact.

    Some controls clamp the axis silently and cut the wrong pitch.

    Args:
        lead_mm: Lead of the thread in millimetres.
        rpm: Spindle speed in turns per minute.
        feed_limit_mm_min: The fastest feed of the axis, in mm/min.
        retract_factor: Speed on the way out over speed on the way in, 0.1 to 1000.

    Raises:
        ThreadcalcError: ``out-of-range`` names the value that makes no sense; ``overflow``.

    >>> fit = feed_fit(1.25, 4000, feed_limit_mm_min=4000)
    >>> fit.is_within, fit.fastest_rpm
    (False, Fraction(3200, 1))

    Source: derived.
    """

def pattern_time_s(
    holes: int, *, rapid_distance_mm: _Exact, rapid_feed_mm_min: _Exact, seconds_per_hole: _Exact
) -> float:
    """The time of a pattern of holes for a quotation, in seconds.

    Args:
        holes: How many holes.
        rapid_distance_mm: Rapid way for each hole in millimetres, the way to the first one included.
        rapid_feed_mm_min: Rapid feed in mm/min; the axes' own ramps are not counted.
        seconds_per_hole: Time of one stroke in seconds, ``TappingTime.time_s``.

    Raises:
        ThreadcalcError: ``out-of-range`` names the value that makes no sense; ``overflow``.

    >>> round(pattern_time_s(12, rapid_distance_mm=50, rapid_feed_mm_min=20000, seconds_per_hole=3.35), 6)
    42.0

    Source: derived.
    """

def holder_clearance(thread: Thread, holder: _Holder) -> HolderClearance:
    """The room from the R plane to the face that is in use.

    Rigid: 2 P to 5 P. The others: 5 P to 10 P or 12 mm, whichever is more, so that the holder centres
    again. For the turns that the spindle needs see ``turns_to_speed``; the larger of the two decides.

    Args:
        thread: The thread.
        holder: How the tap is held.

    Raises:
        ThreadcalcError: ``unknown-value``, ``overflow``.

    >>> room = holder_clearance(Thread("M8"), "tension_compression")
    >>> float(room.least_mm), float(room.ample_mm)
    (6.25, 12.5)

    Source: common practice; floating holders as tension and compression ones: a judgement.
    """

def holder_travel(
    lead_mm: _Exact, depth_mm: _Exact, *, underfeed_percent: _Exact, over_travel_turns: _Exact
) -> HolderTravel:
    """How far a tension and compression holder has to give in a hole, exact.

    Args:
        lead_mm: Lead of the thread in millimetres.
        depth_mm: From the face, where the tap takes hold, to the end of the stroke, in millimetres.
        underfeed_percent: Feed below the lead in percent, -20 to 20; negative presses the tap in.
        over_travel_turns: Turns that the spindle coasts on while the axis stands, 0 to 20.

    Raises:
        ThreadcalcError: ``out-of-range`` names the value that makes no sense; ``overflow``.

    >>> travel = holder_travel(1.5, 20, underfeed_percent=5, over_travel_turns=0.5)
    >>> float(travel.extension_mm), travel.fits(1, 1)
    (1.75, False)

    Source: derived.
    """

def gauges(thread: Thread) -> Gauges:
    """Which gauges to fetch for a thread, with the limits they stand for.

    Hole: GO plug (smallest pitch and major diameter), NOT GO plug (largest pitch diameter), GO and NOT GO
    plain plugs (smallest and largest minor diameter). Screw: GO ring (largest pitch and minor diameter), NOT
    GO ring (smallest pitch diameter), GO and NOT GO plain rings (largest and smallest major diameter). Taper
    thread: one plug or ring, read by its turns. A thread without a side is taken as a hole. A size is None
    where the standard's limit has not been read; the gauge is to be fetched all the same.

    Raises:
        ThreadcalcError: ``overflow``.

    >>> found = gauges(Thread("M10x1-6H-LH"))
    >>> [gauge.kind for gauge in found.gauges][:2], found.hand
    (['thread_plug_go', 'thread_plug_not_go'], 'left')
    >>> float(found.gauges[2].diameter_mm)
    8.917

    Source: ISO 1502 and ASME B1.2 for what a gauge checks, from memory; the limits' own sources.
    """

def not_go_rule(thread: Thread) -> NotGoRule:
    """How far the NOT GO thread gauge of a thread may go.

    Raises:
        ThreadcalcError: ``does-not-apply`` for taper threads, ``not-sourced`` for other threads than M, UN, UNR and
            UNJ, and for holes of wire inserts.

    >>> not_go_rule(Thread("M8")).most_turns, not_go_rule(Thread("1/4-20")).most_turns
    (2, 3)

    Source: ISO 1502:1996 and ASME B1.2-1983 as gauge makers quote them; the remark on ISO 1502 from
    memory.
    """

def next_move(
    thread: Thread,
    result: Literal["go_passes", "go_stops", "not_go_enters", "taper_stands"],
    *,
    turns: _Exact | None = None,
    required_turns: _Exact | None = None,
) -> NextMove:
    """What to do after gauging a tapped hole.

    Args:
        thread: The thread.
        result: What the gauge said, by hand and without force: "go_passes" is GO to the full depth of thread;
            "go_stops" below 1 turn is a GO that does not start.
        turns: Turns until it stops, 0 to 1000; of a taper plug turns from flush, -20 to 20, above 0 outside
            the hole, where the thread is small. Not for "go_passes".
        required_turns: The depth of full thread that is asked for over the lead: 16 mm of M8 are 12.8.
            Required for "go_stops", not looked at otherwise.

    Raises:
        ThreadcalcError: ``does-not-apply`` for external threads and gauges of another kind of thread;
            ``not-sourced`` for NOT GO where ``not_go_rule`` has none; ``missing``, ``contradiction``,
            ``unknown-value``, ``out-of-range``, ``overflow``.

    >>> found = next_move(Thread("M8-6H"), "go_stops", turns=10, required_turns=12.8)
    >>> found.verdict, found.moves[:2], float(found.deeper_mm)
    ('rework', ['clean_and_gauge_again', 'tap_deeper'], 3.5)

    Source: common practice; how far NOT GO may enter: ``not_go_rule``; taper threads: their gauge's turns.
    """

def trimmed_depth_mm(thread: Thread, depth_mm: _Exact, stand_off_turns: _Exact) -> Fraction:
    """The depth that brings a taper plug flush, with the same R: depth + turns x lead, exact.

    Args:
        thread: A taper thread.
        depth_mm: The tapping depth of the program, in millimetres below the face, up to 10000.
        stand_off_turns: Turns from flush, -20 to 20; above 0 the plug stands out, the thread is small; below
            0 it sinks in, and the new depth is for the next hole.

    Raises:
        ThreadcalcError: ``does-not-apply`` for straight threads; ``out-of-range``, ``overflow``.

    >>> round(float(trimmed_depth_mm(Thread("1/4-18 NPT"), "16.033", 1)), 3)
    17.444

    Source: derived.
    """

def re_entry_r(r_mm: _Exact, pitch_mm: _Exact, wanted_mm: _Exact) -> ReEntry:
    """The R plane nearest to a wanted one that lies whole pitches from the R of the tapped hole, exact.

    R = r + k P, k whole. Ties go away from the part. The rest of the rule has to hold as well: see
    ``ReEntry.rule``. With several starts a whole pitch finds the next start's groove, which is as good.

    Args:
        r_mm: The R plane that the hole was tapped from: Z in millimetres, growing away from the part.
        pitch_mm: Pitch of the thread in millimetres, above 0 up to 1000.
        wanted_mm: Where the R plane should be, in Z of the same work offset.

    Raises:
        ThreadcalcError: ``out-of-range``, ``overflow``.

    >>> again = re_entry_r(5, 1.25, 12)
    >>> float(again.r_mm), again.pitches
    (12.5, 6)

    Source: derived.
    """

def best_wire_mm(thread: Thread) -> float:
    """The wire that touches the flanks at the pitch line, in millimetres: P / (2 cos a).

    Raises:
        ThreadcalcError: ``does-not-apply`` for taper threads and for unequal flanks.

    >>> round(best_wire_mm(Thread("M10")), 6)
    0.866025

    Source: FED-STD-H28, from memory; a handbook page prints 0.57735 P.
    """

def over_wires(thread: Thread, wire_mm: _Exact, pitch_diameter_mm: _Exact, *, lead_angle: bool = False) -> float:
    """The measurement over three wires, in millimetres: E - (P/2) cot a + W (1 + cosec a).

    The flattening of wires and flanks under the measuring force is not in it.

    Args:
        thread: The thread.
        wire_mm: Diameter of the wires W, in millimetres; 60 degrees: 0.56 to 0.90 P; 55 degrees: 0.506 to
            0.853 P.
        pitch_diameter_mm: Pitch diameter E, in millimetres; major diameter - 2 P to + P.
        lead_angle: True adds (W/2) tan^2(lead angle) cos a cot a for the tilt of the wires, which most
            shop tables leave out.

    Raises:
        ThreadcalcError: ``out-of-range`` for a wire that does not rest on the flanks or a pitch diameter
            that is not the thread's; ``does-not-apply`` for taper threads and unequal flanks.

    >>> round(over_wires(Thread("M10"), 0.866, 9.026), 3)
    10.325

    Source: FED-STD-H28 from memory; without its last term as a model engineers' handbook prints it,
    with its range of wires for 60 degrees.
    """

def chamfers_that_fit(hole: _Hole, room_threads: _Exact) -> list[ChamferForm]:
    """The forms of chamfer that fit a hole with this room, in threads; see ``ChamferForm.fits``.

    Raises:
        ThreadcalcError: ``unknown-value`` (hole); what is wrong with the number.

    >>> [form.name for form in chamfers_that_fit("blind", 2.5)]
    ['E', 'F', 'semi_bottoming', 'bottoming']

    Source: as ``ChamferForm``.
    """

def iso_tap_class(thread: Thread, *, plating_um: _Exact = 0) -> IsoTap:
    """The tap class of ISO 2857 for the tolerance class of a thread and the plating of the hole.

    A plating of thickness t makes the pitch diameter smaller by 4 t. Up to the allowance of position G the class
    for position G of the same grade makes room for it, beyond that none does. The hole is gauged after plating
    with the gauges of position H; a class of position G on the drawing is the one before plating.

    Args:
        thread: An M or MJ thread with its class.
        plating_um: Thickness of the plating on the surface, in micrometres; thin and even, never hot-dip.

    Raises:
        ThreadcalcError: ``does-not-apply`` for threads other than M and MJ, and for holes of wire inserts; ``class-unset``;
            ``contradiction`` for an external class; ``out-of-range``.

    >>> thread = Thread("M8-6H")
    >>> [iso_tap_class(thread, plating_um=um).tap_class for um in (0, 7, 12)]
    ['2', '3', None]

    Source: ISO 2857 and ISO 965-1 (EI of position G, by its formula), from memory.
    """

def iso_tap_pitch_diameter_mm(thread: Thread, tap_class: _TapClass) -> tuple[Fraction, Fraction]:
    """The smallest and the largest pitch diameter of a tap of this class, in millimetres, not rounded.

    With t the pitch diameter tolerance of 5H: class 1 D2 + 0.1 t to D2 + 0.3 t, class 2 0.3 t to 0.5 t,
    class 3 0.5 t to 0.7 t.

    Args:
        thread: An M or MJ thread; its own class does not matter, it is in the choice of the tap's.
        tap_class: "1", "2" or "3".

    Raises:
        ThreadcalcError: ``does-not-apply`` for threads other than M and MJ, and for holes of wire inserts; ``not-sourced`` where t
            has not been read; ``unknown-value``.

    >>> smallest, largest = iso_tap_pitch_diameter_mm(Thread("M8"), "2")
    >>> float(smallest), float(largest)
    (7.2255, 7.2505)

    Source: ISO 2857, from memory; two tap makers' published tables give the same from M3 to M12.
    """

def h_limit_for_plating(thread: Thread, plating_um: _Exact) -> TapLimit:
    """The smallest H limit whose taps leave room for a plating: 4 t / 0.0005 in, rounded up, + 1.

    Without plating it is H1: taps are chosen larger than that for their life; what the class allows at most
    is for the gauge.

    Args:
        thread: The thread, up to 1 in.
        plating_um: Thickness of the plating on the surface, in micrometres, 0 to 1000.

    Raises:
        ThreadcalcError: ``out-of-range``, also beyond H30; ``not-sourced`` above 1 in.

    >>> str(h_limit_for_plating(Thread("1/4-20 UNC-2B"), 7.62))
    'H4'

    Source: ASME B94.9, from memory; derived.
    """

def usual_tap_limit(thread: Thread, /) -> TapLimit:
    """The limit of a ground tap that tap makers recommend for a class of thread, not plated.

    H for Unified threads, D for metric ones, whose taps of the inch system it is.

    A recommendation and no standard: a tap that cuts oversize needs a smaller number, one that closes in a
    larger one. GO and NOT GO decide.

    Raises:
        ThreadcalcError: ``class-unset``; ``does-not-apply`` for an external class or another thread than UN and M;
            ``not-sourced`` for holes of wire inserts, for other classes than 2B, 3B and 6H, for other Unified sizes than those of UNC and
            UNF up to 3/4-10, and for other metric ones than the coarse pitches of
            M1.6 to M36 of the first choice, M1.8, M3.5, M4.5, M7, M14, M8x1 and M10x1.25.

    >>> str(usual_tap_limit(Thread("1/4-20 UNC-2B"))), str(usual_tap_limit(Thread("M6-6H")))
    ('H5', 'D5')

    Source: a tap maker's printed recommendations for classes 2B and 3B. D: printed recommendations for 6H
    (M1.6, M1.8), the one limit for which a tap maker's printed list has each of M5 to M10; the rest from memory; common
    practice.
    """

def usual_tap_limit_for_plating(thread: Thread, plating_um: _Exact) -> TapLimit:
    """The limit of a ground tap for a thread that is gauged after plating: the usual one, raised.

    By what the plating closes the pitch diameter, 4 t on a 60 degree thread, over the step of 0.0005 in (H) or
    0.013 mm (D), rounded up. The smallest limit that leaves room at all is ``h_limit_for_plating``.

    Args:
        thread: The thread with its class.
        plating_um: Thickness of the plating on the surface, in micrometres, 0 to 1000.

    Raises:
        ThreadcalcError: Those of ``usual_tap_limit``; ``out-of-range``, also beyond 30.

    >>> str(usual_tap_limit_for_plating(Thread("1/4-20 UNC-2B"), 7.62))
    'H8'

    Source: four times the thickness, raised by as many limits: common practice; the usual limit as there.
    """

def read_shank_mark(text: str | bytes, /) -> ShankMark:
    """Reads what stands on the shank of a tap, words in any order.

    - M8, 1/4-20 UNC, G1/4: the thread, as in a designation
    - LH, LEFT: left hand
    - 6H, 6G, 7G, 2B: the class of thread it cuts; with X, within the maker's own limits
    - ISO1 to ISO3: class of ISO 2857
    - H3, GH3, L1, D5: limit; with G, ground
    - STI, EG: for a wire insert
    - C, FORM C, C/2-3, PLUG: chamfer
    - HSS, TIN, DIN 371, 3FL and their like: known, and of no account

    A word that is none of these is kept in ``not_read``.

    Args:
        text: The mark, str or bytes, up to 96 bytes.

    Raises:
        DesignationError: ``empty``, ``too-long``, ``unreadable`` if nothing is understood; those of
            ``Thread`` if the thread contradicts itself.

    >>> mark = read_shank_mark("HSS-E M8x1.25 6HX LH")
    >>> str(mark.thread), mark.hand, mark.own_limits
    ('M8x1.25', 'left', True)

    Source: common practice; ASME B94.9 and DIN 2197 for letters, from memory.
    """

def judge_tap(
    mark: ShankMark,
    thread: Thread,
    *,
    plating_um: _Exact = 0,
    hole: _Hole | None = None,
    room_threads: _Exact | None = None,
    wire_insert: bool = False,
) -> list[Finding]:
    """Compares what stands on a shank with the job; an empty list is the right tap.

    - tap-hand: the hand differs
    - tap-thread, tap-wire-insert: form, size, pitch or starts differ; a wire insert is wanted or not
    - tap-class: not the class for the job: error where it is two classes larger or a looser UN class, warning
      where it is one larger, info where it is smaller
    - tap-too-small: limit or class leave no room for the plating; warning where that is not certain
    - tap-too-large: the largest tap of the limit is above the class, where that has been read
    - tap-unmarked: no thread, or neither class nor limit; with plating, no limit
    - tap-own-limits: 6HX
    - tap-chamfer: form B in a blind hole, or less room than the longest chamfer
    - class-assumed, limits-not-sourced, not-read: as their names say

    A tap cuts a little larger than it is; what comes of that only the gauge says.

    Args:
        mark: What the shank says.
        thread: The thread wanted; without a class it is judged by the medium class, with a finding.
        plating_um: Thickness of a plating that the thread is gauged after, in micrometres.
        hole: Through or blind, if it is known.
        room_threads: Room for the chamfer in threads, if it is known; see ``ChamferForm.fits``.
        wire_insert: True if the hole is for a wire insert.

    Raises:
        ThreadcalcError: ``contradiction`` for an external thread; ``out-of-range``, ``unknown-value``,
            ``overflow``.

    >>> findings = judge_tap(read_shank_mark("M10x1 6H HSS-E"), Thread("M10x1-6H-LH"))
    >>> [(finding.id, finding.severity) for finding in findings]
    [('tap-hand', 'error')]

    Source: ISO 2857 and ASME B94.9, from memory; which severity: judgement.
    """

def cycle(
    thread: Thread,
    feed: Feed,
    *,
    dialect: _DialectLike,
    rpm: _Exact,
    depth_mm: _Exact,
    r_plane_mm: _Exact,
    holder: _Holder,
    return_to: _ReturnTo,
    peck_mm: _Exact | None = None,
    dwell_s: _Exact | None = None,
    retract_factor: _Exact | None = None,
) -> Cycle:
    """The words of one tapped hole at the place the spindle stands.

    The tapped depth is rounded deeper, the R plane higher and a peck shallower, to the dialect's
    decimals. What the dialect lacks is refused with ``code-not-on-control``; pecks are refused with
    ``peck-tapping`` in a floating holder, and in any that gives if the control needs a code to
    synchronise.

    Args:
        thread: The thread: its hand and its lead.
        feed: The feed, made for the thread's lead and, per minute, for this speed.
        dialect: A ``Dialect``, the name of a built-in one, or a dict of its fields.
        rpm: Programmed speed, at most 9 decimals.
        depth_mm: From the face to the point that the tap's length offset is set on.
        r_plane_mm: R plane above the face.
        holder: How the tap is held.
        return_to: Where the tap returns to.
        peck_mm: Depth of a peck.
        dwell_s: Wait at the bottom in seconds, 0 to 60.
        retract_factor: Speed on the way out over speed on the way in.

    Raises:
        ThreadcalcError: ``contradiction`` if the feed is that of another speed or lead, if the dialect
            tells the left hand in two ways, or if two words would have one letter; ``out-of-range`` and
            ``not-exact`` for numbers that no word can hold; ``missing`` if the dialect does not say what
            a dwell or a way out is counted in.

    >>> m8 = Thread("M8x1.25-6H")
    >>> word = feed(m8, 600, unit="mm", mode="per_minute", decimals=3)
    >>> hole = dict(rpm=600, depth_mm=20, r_plane_mm=5, holder="rigid", return_to="r_plane")
    >>> cycle(m8, word, dialect="rs274ngc", **hole).blocks
    ['G17 G21 G90 G94', 'S600 M3', 'G99 G84 Z-20. R5. F750.', 'G80']
    >>> cycle(m8, word, dialect="rs274ngc", peck_mm=5, **hole).refused.suggestion
    'rs274ngc has no word for the depth of a peck'

    Source: ISO 6983-1 and NISTIR 6556 (the words); rounding: common practice.
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

@final
class TappedHole:
    """A block of a program that taps, and what it cuts."""

    @property
    def line(self) -> int:
        """The line, from 1."""
    @property
    def number(self) -> int:
        """Which of the program's tapping blocks it is, from 1."""
    @property
    def lead_mm(self) -> Fraction | None:
        """The lead that is cut, in mm; None if it cannot be computed."""
    @property
    def speed_rpm(self) -> Fraction | None:
        """S; None if it is not known."""
    @property
    def feed(self) -> Fraction | None:
        """F in the program's unit and mode; None if it is not known."""
    @property
    def hand(self) -> _Hand | None:
        """The hand that is cut; None if it depends on the control."""
    @property
    def count(self) -> int:
        """How many holes, one behind the other."""
    @property
    def depth_mm(self) -> Fraction | None:
        """From the face to the tap's end, in mm; None if it is not known."""
    @property
    def thread(self) -> Thread | None:
        """The thread that is expected; None if nobody names one."""
    @property
    def source(self) -> str | None:
        """Who names it: an input, the tool list, or a comment."""
    @property
    def tool(self) -> int | None:
        """The tool in the spindle."""
    @property
    def x_mm(self) -> Fraction | None:
        """Where the hole is in the program's X, in mm; of several the last one. None if it is not known."""
    @property
    def y_mm(self) -> Fraction | None:
        """The same in Y."""
    @property
    def work_offset(self) -> str:
        """The work offset that both are counted from, "G54" or "G54.1 P2"; "G54" if the program names none."""
    @property
    def unit(self) -> _Unit | None:
        """The unit that the program is in; None if it does not say."""
    @property
    def feed_mode(self) -> _Mode | None:
        """The feed mode that holds; None if the program does not say."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class ProgramFinding:
    """Something doubtful or wrong in a program."""

    @property
    def id(self) -> str:
        """The stable id."""
    @property
    def severity(self) -> Literal["error", "warning", "info"]:
        """How bad it is."""
    @property
    def line(self) -> int:
        """The line, from 1."""
    @property
    def column(self) -> int:
        """Where in the line it begins, in bytes from 1."""
    @property
    def end_column(self) -> int:
        """The column behind its end."""
    @property
    def program(self) -> int | None:
        """The number of the program that the line is in."""
    @property
    def call_path(self) -> list[int]:
        """The lines of the calls that lead to the line, the outermost first."""
    @property
    def tool(self) -> int | None:
        """The tool in the spindle."""
    @property
    def hole(self) -> int | None:
        """Which tapping block of the program, from 1."""
    @property
    def thread(self) -> Thread | None:
        """The thread that the hole is to have."""
    @property
    def message(self) -> str:
        """What will happen, in one line."""
    @property
    def text(self) -> str:
        """The same with the reading it holds under and with what to write."""
    @property
    def numbers(self) -> dict[str, float | str]:
        """The numbers, by name; a hand or a letter is a str."""
    @property
    def evidence(self) -> list[tuple[str, int]]:
        """The lines that it rests on: what each did, and its number; 0 is no line of the program."""
    @property
    def grounds(self) -> str:
        """What it rests on, in one line: the lines that it follows from, the calls, the tool; may be empty."""
    @property
    def suggestion(self) -> str:
        """What to write instead; may be empty."""
    @property
    def replaces(self) -> bool:
        """Whether the suggestion takes the place of what stands from column to end column; else it is to be added, or
        stands for a word of another block."""
    @property
    def reading(self) -> str:
        """Which reading of what is not known it holds under; empty if under every one."""
    @property
    def certain(self) -> bool:
        """False if it rests on something assumed."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class ProgramFindingKind:
    """What a finding of a program means, by its id."""

    @property
    def id(self) -> str:
        """The stable id."""
    @property
    def number(self) -> int:
        """The stable number of the id, as in C."""
    @property
    def severity(self) -> Literal["error", "warning", "info"]:
        """The severity unless the numbers say otherwise."""
    @property
    def meaning(self) -> str:
        """What it means, in one sentence."""
    @property
    def message(self) -> str:
        """What a finding of it says: a name in braces stands for a number of the finding, and what stands in square
        brackets is left out where a finding lacks a number of it."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

def program_finding_kinds() -> list[ProgramFindingKind]:
    """Every kind of finding that a check can have.

    >>> {kind.id: kind.meaning for kind in program_finding_kinds()}["wrong-hand"]
    'The cycle is of the other hand than the thread.'
    """

@final
class Report:
    """What a check has to say of a program. ``str`` of it is a list, the worst first with what each rests on; then what
    was checked and what was not.

    No findings does not mean safe: the check sees text, and not the part, the clamps, the offsets, the tool in the
    pocket or the switches. ``not_checked`` says what was left open.
    """

    @property
    def tapped_holes(self) -> list[TappedHole]:
        """The blocks that tap, in the order in which they run."""
    @property
    def findings(self) -> list[ProgramFinding]:
        """What is doubtful or wrong, by line."""
    @property
    def not_checked(self) -> list[str]:
        """What was not checked and why: what this program left open, and what no text shows."""
    @property
    def cautions(self) -> list[str]:
        """What stands at the foot of every report."""
    def to_json(self) -> str:
        """The report as the text of its JSON, that of ``schema/report.schema.json`` and of the C door."""
    def to_dict(self) -> dict[str, Any]:
        """The report as a dict: its JSON, parsed."""

def check(
    program: bytes | str | PathLike[str],
    *,
    dialect: _DialectLike,
    options: dict[str, Any] | None = None,
    machine: dict[str, Any] | None = None,
    tools: Iterable[dict[str, Any]] | None = None,
) -> Report:
    """Checks a program: the lead that every tapped hole will get, and what is doubtful or wrong.

    Calls of subprograms in the same text are followed. Other threads run meanwhile.

    Args:
        program: The program as bytes or text, or the path of its file.
        dialect: A ``Dialect``, its fields as a dict, or "rs274ngc" or "unset". What it does not say is tried under
            every reading, and the answer says where it depends on it.
        options: ``surface_z_mm`` (the face of the part in the program's Z, 0), ``block_delete`` (False: such blocks
            run), ``evaluate_macros`` (True), ``thread`` (of every tapped hole, before what comments say),
            ``full_thread_depth_mm``, ``holder`` ("rigid"), ``underfeed_percent``, ``cutting_force_n_mm2``.
        machine: The machine's limits, by the names they have in a job.
        tools: The tool list, a dict for each tool: ``number``, ``kind`` ("cut_tap", "form_tap", "tap", "drill",
            "spot_drill", "other"), ``thread``, ``diameter_mm``, ``point_angle_deg``, ``chamfer_threads``,
            ``holder``. Up to 64.

    Raises:
        ThreadcalcError: ``unknown-key`` with the nearest known key, ``unknown-value``, ``out-of-range``,
            ``too-long`` for more tools.
        OSError: If the file cannot be read.

    >>> report = check(
    ...     "G17 G21 G90 G94\\nT1 M6 (TAP M6)\\nG43 H1\\nS500 M3\\nG98 G84 X0 Y0 Z-12. R5. F800.\\nG80\\nM30\\n",
    ...     dialect="rs274ngc",
    ... )
    >>> [(one.line, one.id, one.suggestion) for one in report.findings]
    [(5, 'lead-mismatch', 'F500.')]
    >>> report.tapped_holes[0].lead_mm
    Fraction(8, 5)

    Source: RS274/NGC, NISTIR 6556 (format, modal groups, order, cycles); ISO 6983-1; where controls differ, the
    dialect.
    """

@final
class AuditedProgram:
    """What an audit says of a file. ``str`` of it is a list, the worst first."""

    @property
    def path(self) -> Path:
        """The file, below the path that was named."""
    @property
    def report(self) -> Report | None:
        """What the check has to say; None if it was skipped."""
    @property
    def skipped(self) -> str | None:
        """Why it was not checked: the name of the reason, a colon, and what there is to know. None if it was.

        The reasons are ``symbolic-link``, ``no-regular-file``, ``not-readable`` with the system's words,
        ``no-dialect``, ``too-large`` with both sizes, ``empty``, ``utf-16``, ``binary`` (a NUL among its first 8192
        bytes), ``not-a-program`` (no line with a G, M, T or O word) and ``changed-while-read``.
        """
    @property
    def findings(self) -> list[ProgramFinding]:
        """What the baseline did not know: errors, then warnings, then the rest, each by line."""
    @property
    def silenced(self) -> list[ProgramFinding]:
        """What the baseline knew, in the same order."""

@final
class AuditSummary:
    """What the files of an audit come to. ``str`` of it is a table."""

    @property
    def total(self) -> int:
        """The files of the audit."""
    @property
    def done(self) -> int:
        """The files so far."""
    @property
    def checked(self) -> int:
        """The programs that were checked."""
    @property
    def with_findings(self) -> int:
        """The programs with a finding that the baseline did not know."""
    @property
    def skipped(self) -> dict[str, int]:
        """The files that were not checked, by the name of the reason."""
    @property
    def left_out(self) -> int:
        """The files whose names are no program's, as ``suffixes`` has it."""
    @property
    def findings(self) -> dict[tuple[str, str], int]:
        """How many findings the baseline did not know, by severity and id."""
    @property
    def severities(self) -> dict[str, int]:
        """How many findings the baseline did not know, by severity."""
    @property
    def silenced(self) -> dict[str, int]:
        """How many findings the baseline knew, by severity."""
    @property
    def known_left(self) -> int | None:
        """How many findings of the baseline did not occur so far; None without a baseline.

        At the end of an audit of everything they are mended: write the baseline anew, or it will silence them again.
        """
    @property
    def tapping_blocks(self) -> int:
        """The blocks that tap."""
    @property
    def without_lead(self) -> int:
        """Those of them whose lead could not be computed, and so was not checked."""
    @property
    def not_checked(self) -> dict[str, int]:
        """How often something was not checked, by reason."""

@final
class Audit:
    """The files of an audit, one after the other: an iterator of ``AuditedProgram``. ``str`` of it is its summary.

    They come in the order of the files, whichever is checked first, and no more than a few wait to be taken. Workers
    end with the last file, or when nobody holds the audit any more.
    """

    def __iter__(self) -> Self: ...
    def __next__(self) -> AuditedProgram: ...
    def __len__(self) -> int: ...
    @property
    def total(self) -> int:
        """The files of the audit, known before the first is checked."""
    @property
    def done(self) -> int:
        """How many of them were given."""
    @property
    def summary(self) -> AuditSummary:
        """What the files so far come to."""

def audit(
    paths: str | PathLike[str] | Iterable[str | PathLike[str]],
    *,
    dialect: _DialectLike | Mapping[str | PathLike[str], _DialectLike],
    options: dict[str, Any] | None = None,
    machine: dict[str, Any] | None = None,
    tools: Iterable[dict[str, Any]] | None = None,
    workers: int | None = None,
    suffixes: Iterable[str] | None = None,
    largest_bytes: int = 67108864,
    baseline: str | PathLike[str] | None = None,
    resume: str | PathLike[str] | None = None,
    part: tuple[int, int] | None = None,
) -> Audit:
    """Checks files, and folders with all that is in them, as ``check`` does. It only reads them.

    Every file has its item, with a report or with the reason why it has none; no file is checked twice. Symbolic
    links below a folder are not followed. No findings does not mean safe: ``Report`` says what no check sees.

    Args:
        paths: A file or a folder, or several. Files come in the order of the paths, those of a folder by name.
        dialect: As in ``check``, for all files; or a dict from folder to dialect, where the deepest folder counts
            and a file in none of them is skipped.
        options: As in ``check``, for all files.
        machine: As in ``check``, for all files.
        tools: As in ``check``, for all files.
        workers: How many files are checked at once; None for as many as there are processors. What comes out does
            not depend on it.
        suffixes: How the names of programs below a folder end, such as ``[".nc", ".tap", ""]``; the empty one stands
            for names without a point, case does not matter. None: every file is looked at. A file that is named
            itself needs no suffix.
        largest_bytes: Larger files are skipped: a worker holds a program whole. 64 MiB.
        baseline: A file that ``write_baseline`` wrote. A finding is known by its file's name below the folder that
            was named, what it says but for line numbers, and the text of its block and of the blocks it rests on:
            without case, blanks and N number, with comments. Lines may move; what is changed comes back. Every known
            finding silences one: of two where one was known, the later in the file is shown. Errors are silenced as
            well; the summary counts them.
        resume: A journal, begun if it is not there. A file that stands in it with the same size and time of change is
            not read again. A last line that was torn off is dropped. Journal and baseline are never audited.
        part: For several machines: ``(number, parts)`` takes those files whose names below the folder fall into the
            part with this number, from 0, of so many. Every file falls into one part, on every machine, even if
            others come and go. Each part has a journal of its own.

    Raises:
        ThreadcalcError: As ``check``, for the dialect, the options, the machine and the tools.
        ValueError: A baseline or a journal of another schema, a journal of another version, dialect, options, machine
            or tools, no workers, no such part.
        OSError: A path that is not there, a baseline or a journal that cannot be opened; while it runs, a journal that
            cannot be written.

    >>> import pathlib, tempfile
    >>> folder = tempfile.TemporaryDirectory()
    >>> program = pathlib.Path(folder.name, "cover.nc")
    >>> written = program.write_text(
    ...     "G17 G21 G90 G94\\nT1 M6 (TAP M6)\\nG43 H1\\nS500 M3\\nG98 G84 X0 Y0 Z-12. R5. F800.\\nG80\\nM30\\n"
    ... )
    >>> programs = list(audit(folder.name, dialect="rs274ngc", workers=2))
    >>> [(one.path.name, one.skipped, [found.id for found in one.findings]) for one in programs]
    [('cover.nc', None, ['lead-mismatch'])]

    The same again, but for what is known:

    >>> known = pathlib.Path(folder.name, "known.jsonl")
    >>> write_baseline(programs, known)
    1
    >>> again = audit(folder.name, dialect="rs274ngc", baseline=known)
    >>> [(one.findings, [found.id for found in one.silenced]) for one in again]
    [([], ['lead-mismatch'])]
    >>> again.summary.silenced
    {'error': 1}
    >>> folder.cleanup()
    """

def write_baseline(programs: Iterable[AuditedProgram], path: str | PathLike[str]) -> int:
    """Writes all findings of these programs as known ones, silenced or not; says how many.

    A line of JSON for each finding that differs from the others, sorted: file, id, block, key, severity and how often
    it occurs. An older file is replaced in one step.

    Args:
        programs: What an audit gave; the audit itself, if nobody has taken of it yet.
        path: The file.

    Raises:
        OSError: If the file cannot be written.

    >>> import os, tempfile
    >>> with tempfile.TemporaryDirectory() as folder:
    ...     write_baseline([], os.path.join(folder, "known.jsonl"))
    0
    """

@final
class HoleChange:
    """A hole that is not what it was. ``str`` of it is one line: which hole, where it stands in both versions, and what
    has changed from what to what, in the unit of the new version."""

    @property
    def kind(self) -> Literal["changed", "added", "removed"]:
        """What became of it."""
    @property
    def before(self) -> TappedHole | None:
        """The hole in the old version; None if it is new."""
    @property
    def after(self) -> TappedHole | None:
        """The hole in the new version; None if it is gone."""
    @property
    def changed(self) -> list[_HoleValue]:
        """What has changed; empty for a hole that is new or gone."""
    @property
    def not_compared(self) -> list[_HoleValue]:
        """What was not known on either side."""
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

@final
class Comparison:
    """What has become of the tapped holes of a program. ``str`` of it has a line for every change, and says what was not
    compared; ``len`` is the number of changes.

    It says nothing of whether either version is right: ``check`` the new one.
    """

    @property
    def changes(self) -> list[HoleChange]:
        """What has changed: the holes of the new version in their order, then those that it no longer has."""
    @property
    def not_compared(self) -> dict[_HoleValue, int]:
        """At how many holes a value was known on neither side, by its name."""
    @property
    def counts(self) -> dict[Literal["before", "after", "changed", "added", "removed"], int]:
        """How many tapping blocks there are "before" and "after", and how many are "changed", "added" and "removed"."""
    def to_json(self) -> str:
        """The comparison as the text of its JSON, by schema/comparison.schema.json."""
    def to_dict(self) -> dict[str, _Json]:
        """The comparison as a dict: its JSON, parsed."""
    def __iter__(self) -> Iterator[HoleChange]: ...
    def __len__(self) -> int: ...

def compare(
    old: bytes | str | PathLike[str],
    new: bytes | str | PathLike[str],
    *,
    dialect: _DialectLike,
    options: dict[str, Any] | None = None,
    machine: dict[str, Any] | None = None,
    tools: Iterable[dict[str, Any]] | None = None,
) -> Comparison:
    """Compares the tapped holes of two versions of a program: lead, depth, hand, speed, count, thread, tool and place.

    A hole is found again by its place: work offset, X and Y, and at one place by the order of visits. What is left,
    holes that have moved and those whose place depends on a variable, is paired in the order of the program so that
    most agree, then by thread or lead. Comments, numbers of blocks, the unit and the feed mode change nothing: where S,
    the feed mode or the unit is another, leads within 0.01 % are the same, and where the unit is, lengths within
    0.002 mm. What is known on one side only has changed; what is known on neither is not compared. Other threads run
    meanwhile.

    Args:
        old: The old version as bytes or text, or the path of its file.
        new: The new version.
        dialect: Of both, as ``check`` takes it.
        options: As ``check`` takes them.
        machine: As ``check`` takes it.
        tools: The tool list of both, as ``check`` takes it.

    Raises:
        ThreadcalcError: Those of ``check``.
        OSError: If a file cannot be read.

    >>> old = "G17 G21 G90 G94\\nT1 M6 (TAP M8)\\nS640 M3\\nG98 G84 X0 Y0 Z-12. R5. F800.\\nX20.\\nG80\\nM30\\n"
    >>> new = old.replace("X20.", "N9 (NEW)\\nX20. F1024.\\nX40.")
    >>> comparison = compare(old, new, dialect="rs274ngc")
    >>> for change in comparison:
    ...     print(change)
    hole 2, line 6 (before: hole 2, line 5): lead 1.25 -> 1.6 mm
    hole 3, line 7 added: lead 1.6 mm, depth 12 mm, hand right, speed 640 rpm, thread M8x1.25, tool 1, place X40 Y0 G54
    >>> comparison.counts
    {'before': 2, 'after': 3, 'changed': 1, 'added': 1, 'removed': 0}

    Source: longest common subsequence, common practice of comparing texts.
    """

