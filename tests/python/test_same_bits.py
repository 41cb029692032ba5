"""Random plans and the reports of the samples hashed: Rust and C print the same hashes. See tests/same_bits/README.md."""

from __future__ import annotations

import json
import pathlib
import struct
from collections.abc import Callable
from fractions import Fraction

import threadcalc as tc

FOLDER = pathlib.Path(__file__).parent.parent / "same_bits"
SAMPLES = sorted((FOLDER.parent / "nc").glob("*.expect.json"))
EMPTY = 0xCBF29CE484222325
WORD = (1 << 64) - 1
JOBS = 10_000
FORMS = ("A", "B", "C", "D", "E", "F", "taper", "plug", "semi_bottoming", "bottoming")


class Random:
    """SplitMix64."""

    def __init__(self, seed: int) -> None:
        self.state = seed

    def pick(self, count: int) -> int:
        self.state = self.state + 0x9E3779B97F4A7C15 & WORD
        mixed = self.state
        mixed = (mixed ^ mixed >> 30) * 0xBF58476D1CE4E5B9 & WORD
        mixed = (mixed ^ mixed >> 27) * 0x94D049BB133111EB & WORD
        return (mixed ^ mixed >> 31) % count


def fnv_1a(state: int, data: bytes) -> int:
    for byte in data:
        state = (state ^ byte) * 0x100000001B3 & WORD
    return state


def draw(random: Random, threads: list[str]) -> dict[str, object]:
    """One job by the draws of the README, all of them in its order, used or not."""
    pick = random.pick
    job: dict[str, object] = {
        "thread": threads[pick(len(threads))],
        "unit": ("mm", "inch")[pick(2)],
        "mode": ("per_minute", "per_revolution")[pick(2)],
        "decimals": pick(6) + 1,
        "rpm": Fraction(pick(60_000) + 1, 10),
        "hole": ("through", "blind")[pick(2)],
        "full_thread_depth_mm": Fraction(pick(4_000) + 1, 100),
        "tap": ("cut", "form")[pick(2)],
    }
    drill, percent, basis, sets = pick(3), pick(26) + 50, ("3H/4", "5H/8")[pick(2)], pick(15) + 1
    if drill == 1:
        job["percent"] = percent
        job["basis"] = basis if job["tap"] == "cut" else None
    if drill == 2:
        names = ("metric", "number", "letter", "fractional")
        job["drill_sets"] = [name for bit, name in enumerate(names) if sets >> bit & 1]
    job["point_angle_deg"] = (118, 130, 135, 140)[pick(4)]
    job["dialect"] = ("rs274ngc", None)[pick(2)]
    used = pick(2) == 1
    rest = draw_rest(pick, drill, str(job["hole"]))
    if used:
        job |= rest
        if "surface_speed_m_min" in rest or "surface_speed_ft_min" in rest:
            del job["rpm"]
    return job


def draw_rest(pick: Callable[[int], int], drill: int, hole: str) -> dict[str, object]:
    """The draws behind the one that says whether they are used."""
    rest: dict[str, object] = {}
    if pick(2):
        rest["full_thread_depth_mm"] = None
    holder = pick(3)
    rest["holder"] = ("rigid", "tension_compression", "floating")[holder]
    underfeed = pick(4)
    rest["underfeed_percent"] = underfeed if holder else None
    rest["over_travel_turns"] = Fraction(pick(4), 2)
    speed, surface = pick(3), pick(40) + 2
    if speed:
        rest[("surface_speed_m_min", "surface_speed_ft_min")[speed - 1]] = surface
    rest["material"] = tc.materials()[pick(10)]
    form = pick(20) - 10
    rest["chamfer_form"] = FORMS[form] if form >= 0 else None
    rest["part_thickness_mm"] = (None, 10, 60)[pick(3)]
    drilled = (None, 20, 45)[pick(3)]
    rest["drill_depth_mm"] = drilled if hole == "blind" else None
    rest["countersink_mm"] = (None, None, None, None, 12, 30)[pick(6)]
    rest["coating_um"] = (None, 5, 9)[pick(3)]
    machine: dict[str, object] = {}
    machine["acceleration_rpm_s"] = (None, 500, 4000)[pick(3)]
    machine["axis_feed_limit_mm_min"] = (None, 1000, 4000)[pick(3)]
    machine["gears"] = [[20, 600, 40], [20, 4000, 8]][: pick(3)]
    rest["machine"] = machine
    screw = pick(3)
    if screw:
        given = ({"property_class": "8.8"}, {"tensile_mpa": 900, "load_n": 5000})[screw - 1]
        rest |= {"screw": given, "part_shear_mpa": (200, 250)[screw - 1]}
    rest["hole_count"] = (None, 12)[pick(2)]
    if pick(3) == 2 and drill == 0:
        rest["drill_list"] = ["#7", "F", "6.8", 8.5]
    return rest


def shown(value: Fraction | float | str) -> str:
    if isinstance(value, Fraction):
        return f"{value.numerator}/{value.denominator}"
    return struct.pack(">d", value).hex() if isinstance(value, float) else value


def lines(job: dict[str, object]) -> str:
    try:
        plan = tc.plan(job)
        # Through JSON and back it is the same job, with the same plan to the last bit.
        assert tc.plan(tc.Job(**job).to_dict()).to_json() == plan.to_json()
    except tc.ThreadcalcError as error:
        return f"error {error.name} {error.field}\n"
    depths = plan.depths
    items = (
        str(plan.thread),
        plan.thread.lead_mm,
        plan.programmed_rpm,
        plan.feed.word,
        plan.feed.value,
        plan.feed.lead_error,
        plan.axial_error_mm,
        plan.lead_cut_mm,
        plan.drill.drill.name,
        plan.drill.percent,
        depths.tap_mm,
        depths.program_tap_mm,
        depths.full_diameter_mm,
        depths.drill_point_mm,
        " ".join(plan.words),
        " ".join(plan.restore),
        " ".join(finding.id for finding in plan.findings),
        " ".join(plan.withheld),
    )
    # The text of a plan ends in a line feed of its own.
    return "|".join(map(shown, items)) + f"\n{plan}{plan.to_json()}\n"


def test_ten_thousand_plans_have_the_expected_hash() -> None:
    listed = (FOLDER / "threads.txt").read_text(encoding="utf-8").splitlines()
    threads = [line for line in listed if not line.startswith("#")]
    random, state, planned = Random(20261125), EMPTY, 0
    for _ in range(JOBS):
        text = lines(draw(random, threads))
        planned += not text.startswith("error")
        state = fnv_1a(state, text.encode())
    assert planned > JOBS / 2
    assert f"{state:016x}\n" == (FOLDER / "expected.txt").read_text(encoding="ascii")


def test_the_reports_of_the_samples_have_the_expected_hash() -> None:
    state, checked = EMPTY, 0
    for path in SAMPLES:
        sample = json.loads(path.read_bytes())
        program = (path.parent / sample["program"]).read_bytes()
        for run in sample["runs"]:
            report = tc.check(program, dialect=run["dialect"], options=run["options"])
            state, checked = fnv_1a(state, f"{report.to_json()}\n".encode()), checked + 1
    assert checked == 17
    assert f"{state:016x}\n" == (FOLDER / "reports.txt").read_text(encoding="ascii")
