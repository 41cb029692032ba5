"""The operations of the tables of limits, engagement, cutting data and motion."""

from __future__ import annotations

import threadcalc as tc
from operations import given, in_unit, pipe_limits, thread
from table import Cells


def attributes(found: object, *columns: str) -> dict[str, object]:
    return {column: getattr(found, column) for column in columns}


def yes(is_so: bool) -> str:
    return "yes" if is_so else "no"


def size_limits(row: Cells) -> dict[str, object]:
    """All six limits in the unit of the row, and which one the standard does not set."""
    found = thread(row).limits()
    ranges = {"major": found.major_mm, "pitch": found.pitch_diameter_mm, "minor": found.minor_mm}
    ends = {f"{name}_{end}": pair[at] for name, pair in ranges.items() for at, end in enumerate(("min", "max"))}
    absent = [name for name, limit in ends.items() if limit is None]
    return {name: in_unit(row, limit) for name, limit in ends.items()} | {"unit": found.native_unit, "absent": absent}


def limits_metric(row: Cells) -> dict[str, object]:
    return size_limits(row)


def limits_unified(row: Cells) -> dict[str, object]:
    return size_limits(row)


def limits_acme(row: Cells) -> dict[str, object]:
    return pipe_limits(row)


def limits_ba(row: Cells) -> dict[str, object]:
    return pipe_limits(row)


def limits_buttress(row: Cells) -> dict[str, object]:
    return pipe_limits(row)


def limits_j(row: Cells) -> dict[str, object]:
    return pipe_limits(row)


def limits_not_read(row: Cells) -> dict[str, object]:
    return pipe_limits(row)


def limits_trapezoidal(row: Cells) -> dict[str, object]:
    return pipe_limits(row)


def limits_wire_insert(row: Cells) -> dict[str, object]:
    return pipe_limits(row)


def engagement(row: Cells) -> dict[str, object]:
    internal, external = (tc.Thread(row.bytes(side)) for side in ("internal", "external"))
    strengths = ("internal_shear_mpa", "external_shear_mpa", "external_tensile_mpa")
    keywords = given(row, "length_mm", *strengths, "without_full_thread_mm", "drilled_mm", "load_n")
    found = tc.engagement(internal, external, **keywords)
    return attributes(
        found,
        "tensile_area_mm2",
        "internal_shear_area_mm2",
        "external_shear_area_mm2",
        "tensile_load_n",
        "internal_strip_load_n",
        "external_strip_load_n",
        "weakest",
        "required_length_mm",
        "strip_ratio",
        "safety_factor",
    )


def starting_strength(row: Cells) -> dict[str, object]:
    strength = tc.starting_strength(row["property_class"], row["diameter_mm"])
    assert row["property_class"] in tc.property_classes()
    return attributes(strength, "tensile_mpa", "shear_mpa")


def starting_part_strength(row: Cells) -> dict[str, object]:
    return attributes(tc.starting_part_strength(row["material"]), "tensile_mpa", "shear_mpa")


def spindle_speed(row: Cells) -> dict[str, object]:
    if row["what"] == "surface":
        assert row["unit"] == "mm"
        return {"value": tc.surface_speed_m_min(row["diameter"], row["rpm"])}
    call = {"mm": tc.spindle_speed, "inch": tc.spindle_speed_feet}[row["unit"]]
    return {"value": call(row["diameter"], row["surface_speed"])}


def factor_of(row: Cells) -> float:
    """A number, or ``forming low``: which end of which range."""
    kind, _, end = row["factor"].partition(" ")
    ranges = {"forming": tc.forming_factor, "taper": tc.taper_factor}
    return getattr(ranges[kind](), end) if end else float(kind)


def torque(row: Cells) -> dict[str, object]:
    one, force, factor = thread(row), float(row["force_n_mm2"]), factor_of(row)
    if row["formula"] == "pitch":
        band = tc.torque_by_pitch(one, force, factor=factor)
        assert tc.torque_nm(one, force, factor=factor) == band.likely_nm
    else:
        assert row["formula"] == "chip"
        band = tc.torque_by_chip_area(one, force, drill_mm=row["drill_mm"], factor=factor)
    return attributes(band, "likely_nm", "low_nm", "high_nm", "worn_nm")


def starting_forces(row: Cells) -> dict[str, object]:
    forces = tc.starting_forces(row["material"])
    assert row["material"] in tc.materials()
    return attributes(forces, "by_pitch_n_mm2", "by_chip_area_n_mm2") | {"is_read": yes(forces.is_read)}


def power(row: Cells) -> dict[str, object]:
    return {"power_kw": tc.power_kw(float(row["torque_nm"]), row["rpm"])}


def gear(text: str) -> tc.Gear:
    """``20-500 20:120 500:120``: the range, then the points."""
    speeds, *points = text.split(" ")
    lowest, _, highest = speeds.rpartition("-")
    pairs = [tuple(point.split(":")) for point in points]
    return tc.Gear(lowest, highest, pairs)


def gear_fit(row: Cells) -> dict[str, object]:
    gears = [gear(text) for text in row["gears"].split("|") if text]
    torque_nm = float(row["torque_nm"])
    fit = tc.gear_fit(gears, torque_nm, row["rpm"])
    # What one gear says of itself is what the choice among them says of it.
    assert fit.torque_nm == (None if fit.gear is None else gears[fit.gear].torque_nm(row["rpm"]))
    fastest = [gear.fastest_for(torque_nm) for gear in gears]
    assert fit.fastest_rpm == max((speed for speed in fastest if speed is not None), default=None)
    found = {"gear": fit.gear, "held_nm": fit.torque_nm, "fastest_rpm": fit.fastest_rpm}
    # `none` stands for no value, so that it is compared and not left out.
    shown = {
        column: "none" if value is None else str(value) if row[column] == "none" else value
        for column, value in found.items()
    }
    return shown | {"is_enough": yes(fit.is_enough)}


def motion(row: Cells) -> dict[str, object]:
    ramp = row["acceleration_rpm_s"]
    found = tc.tapping_time(
        **given(row, "lead_mm", "rpm", "travel_mm", "retract_factor", "peck_mm"),
        acceleration_rpm_s=float(ramp) if ramp else None,
        dwell_s=float(row["dwell_s"]),
    )
    columns = ("reached_rpm", "retract_rpm", "turns", "turns_to_speed", "distance_to_speed_mm")
    times = ("time_in_s", "time_out_s", "time_s")
    counted = {"reaches_speed": yes(found.reaches_speed), "strokes": str(found.strokes)}
    return attributes(found, *columns, *times) | counted


def ramp(row: Cells) -> dict[str, object]:
    acceleration = float(row["acceleration_rpm_s"])
    if row["what"] == "turns":
        return {"value": tc.turns_to_speed(row["rpm"], acceleration)}
    assert row["what"] == "speed"
    return {"value": tc.speed_after_turns(float(row["turns"]), acceleration)}


def feed_fit(row: Cells) -> dict[str, object]:
    fit = tc.feed_fit(**given(row, "lead_mm", "rpm", "retract_factor", feed_limit_mm_min="limit_mm_min"))
    exact = attributes(fit, "feed_mm_min", "retract_feed_mm_min", "fastest_rpm")
    return exact | {"is_within": yes(fit.is_within)}


def pattern_time(row: Cells) -> dict[str, object]:
    keywords = given(row, "rapid_distance_mm", "rapid_feed_mm_min")
    return {"time_s": tc.pattern_time_s(int(row["holes"]), **keywords, seconds_per_hole=float(row["seconds_per_hole"]))}


def holder_clearance(row: Cells) -> dict[str, object]:
    room = tc.holder_clearance(thread(row), row["holder"])
    return attributes(room, "least_mm", "ample_mm", "least_turns", "ample_turns")


def holder_travel(row: Cells) -> dict[str, object]:
    travel = tc.holder_travel(**given(row, "lead_mm", "depth_mm", "underfeed_percent", "over_travel_turns"))
    fits = travel.fits(*row["room_mm"].split("/"))
    return attributes(travel, "extension_mm", "compression_mm") | {"fits": yes(fits)}


OPERATIONS = (
    engagement,
    feed_fit,
    gear_fit,
    holder_clearance,
    holder_travel,
    limits_acme,
    limits_ba,
    limits_buttress,
    limits_j,
    limits_metric,
    limits_not_read,
    limits_trapezoidal,
    limits_unified,
    limits_wire_insert,
    motion,
    pattern_time,
    power,
    ramp,
    spindle_speed,
    starting_forces,
    starting_part_strength,
    starting_strength,
    torque,
)
