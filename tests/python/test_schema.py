"""The committed schemas against the library, by a general-purpose validator of JSON Schema (draft 2020-12)."""

from __future__ import annotations

import copy
import json
import pathlib
from collections.abc import Iterator
from fractions import Fraction

import pytest
import threadcalc as tc
from jobs import METRIC, fields_of, job_of_text
from jsonschema import Draft202012Validator
from table import Table
from test_same_bits import FOLDER, Random, draw

SCHEMAS = pathlib.Path(__file__).parent.parent.parent / "schema"
JOB_SCHEMA, PLAN_SCHEMA = (json.loads((SCHEMAS / f"{name}.schema.json").read_text("utf-8")) for name in ("job", "plan"))
JOB, PLAN = Draft202012Validator(JOB_SCHEMA), Draft202012Validator(PLAN_SCHEMA)
RANDOM_JOBS = 2_000

# Every kind of key is in one of the two; what excludes another key is put in its place by `with_key`.
STRAIGHT: dict[str, object] = {
    "schema": 1,
    **METRIC,
    "tap_set_on": "centre",
    "holder": "floating",
    "part_shear_mpa": "200",
    "countersink_mm": 9,
    "material": "aluminium",
    "machine": {"highest_rpm": 3000, "acceleration_rpm_s": 3000.5, "gears": [[0, "3000", 50]]},
    "screw": {"property_class": "8.8", "load_n": 1000},
    "dialect": {"name": "own", "tap_rh": "G84", "needs_spindle_running": True},
}
TAPER: dict[str, object] = {
    **{key: STRAIGHT[key] for key in ("schema", "unit", "mode", "decimals", "rpm", "hole", "tap")},
    "thread": "1/4-18 NPT",
    "dialect": "rs274ngc",
}
# What the library takes and does not judge: the schema knows that none of these is below 0.
NOT_JUDGED = {"holder_extension_mm", "holder_compression_mm", "drill_depth_mm", "part_thickness_mm"}


def valid(validator: Draft202012Validator, data: object) -> None:
    faults = [f"{'.'.join(map(str, fault.absolute_path))}: {fault.message}" for fault in validator.iter_errors(data)]
    assert not faults, "\n".join(faults)


def as_json(fields: dict[str, object]) -> dict[str, object]:
    """The fields of a job as JSON has them: exact values as texts."""
    return json.loads(json.dumps({"schema": 1} | fields, default=str))


def planned(job: dict[str, object]) -> tc.Plan | None:
    try:
        return tc.plan(job)
    except tc.ThreadcalcError:
        return None


def holds(job: dict[str, object]) -> bool:
    """Whether a job has a plan; if so, schema, job and plan are held against each other."""
    found = planned(job)
    if found is None:
        return False
    valid(JOB, job)
    data = json.loads(found.to_json())
    valid(PLAN, data)
    again = tc.Job(**job)
    valid(JOB, json.loads(again.to_json()))
    assert again.to_dict() == json.loads(again.to_json())
    assert tc.plan(again.to_dict()).to_json() == found.to_json()
    # The job as it was planned assumes nothing any more; everything else stays as it is.
    valid(JOB, data["job"])
    filled = tc.plan(data["job"]).to_dict()
    assert {**filled, "findings": None} == {**data, "findings": None}
    assert [finding for finding in data["findings"] if not finding["id"].endswith("-assumed")] == [
        finding for finding in filled["findings"] if not finding["id"].endswith("-assumed")
    ]
    return True


@pytest.mark.parametrize("schema", [JOB_SCHEMA, PLAN_SCHEMA], ids=["job", "plan"])
def test_the_schemas_are_schemas(schema: dict[str, object]) -> None:
    Draft202012Validator.check_schema(schema)


def test_random_jobs_and_their_plans() -> None:
    listed = (FOLDER / "threads.txt").read_text(encoding="utf-8").splitlines()
    threads = [line for line in listed if not line.startswith("#")]
    random = Random(20261125)
    assert sum(holds(as_json(draw(random, threads))) for _ in range(RANDOM_JOBS)) > RANDOM_JOBS / 2


def from_json_text(job: dict[str, object]) -> dict[str, object]:
    """A row's job in the types of JSON: its table has texts only."""
    for key, value in job.items():
        if isinstance(value, dict):
            from_json_text(value)
        elif value in ("true", "false"):
            job[key] = value == "true"
        elif key == "gears" and isinstance(value, str):
            job[key] = [value.split()]
    return job


@pytest.mark.parametrize("name", ["plan", "whole_plan"])
def test_the_jobs_and_plans_of_the_tables(name: str) -> None:
    rows = Table(name).rows
    jobs = [fields_of(row) if name == "plan" else job_of_text(row.bytes("job").decode()) for row in rows]
    assert [holds(as_json(from_json_text(job))) for job in jobs] == [row["status"] == "ok" for row in rows]


@pytest.mark.parametrize("job", [STRAIGHT, TAPER], ids=["straight", "taper"])
def test_the_jobs_that_the_faults_are_put_in(job: dict[str, object]) -> None:
    assert holds(job)


def refused(job: dict[str, object], code: str) -> None:
    """The schema refuses the job and the library does too, with this code."""
    assert not JOB.is_valid(job)
    with pytest.raises(tc.ThreadcalcError) as caught:
        tc.plan(job)
    assert caught.value.name == code


def with_key(path: tuple[str, ...], value: object) -> dict[str, object]:
    """A job that has this key, and is right but for its value."""
    job = copy.deepcopy(TAPER if path == ("projection_mm",) else STRAIGHT)
    if path[0].startswith("surface_speed"):
        del job["rpm"]
    if path == ("percent",):
        job["basis"] = "3H/4"
    if path == ("chamfer_form",):
        job["chamfer_threads"] = None
    inner = job
    for key in path[:-1]:
        inner = inner.setdefault(key, {})
    inner[path[-1]] = value
    return job


def keys(schema: dict, path: tuple[str, ...] = ()) -> Iterator[tuple[tuple[str, ...], dict]]:
    """Every key of a job by its path, with what the schema says of it."""
    for shape in (schema, *schema.get("anyOf", ())):
        for key, inner in shape.get("properties", {}).items():
            yield (*path, key), inner
            yield from keys(inner, (*path, key))


NUMBERS = [
    path
    for path, shape in keys(JOB_SCHEMA)
    if "#/$defs/asked_" in json.dumps(shape) and "properties" not in shape and "items" not in json.dumps(shape)
]
CHOICES = [path for path, shape in keys(JOB_SCHEMA) if "enum" in shape]
REQUIRED = [key for key in JOB_SCHEMA["required"] if key != "schema"]


@pytest.mark.parametrize("path", NUMBERS, ids=".".join)
def test_a_number_below_zero_is_refused(path: tuple[str, ...]) -> None:
    for value in (-1, -0.5, "-1", "-1/3", "-0,5"):
        job = with_key(path, value)
        assert not JOB.is_valid(job), value
        if path[-1] not in NOT_JUDGED:
            refused(job, "out-of-range")


@pytest.mark.parametrize("path", NUMBERS, ids=".".join)
def test_a_number_that_is_none_is_refused(path: tuple[str, ...]) -> None:
    for value, code in (("5 mm", "unreadable"), ("1e3", "unreadable"), ("1/0", "out-of-range"), ("", "empty")):
        refused(with_key(path, value), code)
    for value in (True, [5], {"value": 5}):
        job = with_key(path, value)
        assert not JOB.is_valid(job), value
        with pytest.raises((tc.ThreadcalcError, TypeError)):
            tc.plan(job)


@pytest.mark.parametrize("path", CHOICES, ids=".".join)
def test_a_choice_that_there_is_none_of_is_refused(path: tuple[str, ...]) -> None:
    for value in ("?", ""):
        refused(with_key(path, value), "unknown-value")


@pytest.mark.parametrize("key", REQUIRED)
def test_a_required_key_is_missed(key: str) -> None:
    refused({other: value for other, value in STRAIGHT.items() if other != key}, "missing")
    refused(STRAIGHT | {key: None}, "missing")


@pytest.mark.parametrize("inner", ["", "machine", "screw", "dialect"])
def test_an_unknown_key_is_refused(inner: str) -> None:
    for key in ("rpms", "Thread", ""):
        refused(with_key((inner, key) if inner else (key,), 5), "unknown-key")


@pytest.mark.parametrize(
    ("change", "code"),
    [
        ({"schema": 2}, "unknown-value"),
        ({"rpm": None}, "missing"),
        ({"surface_speed_m_min": 15}, "contradiction"),
        ({"rpm": None, "surface_speed_m_min": 15, "surface_speed_ft_min": "50"}, "contradiction"),
        ({"full_thread_depth_mm": None}, "missing"),
        ({"decimals": 10}, "out-of-range"),
        ({"decimals": 2.5}, "out-of-range"),
        ({"decimals": "10"}, "out-of-range"),
        ({"percent": 101, "basis": "3H/4"}, "out-of-range"),
        ({"point_angle_deg": 60}, "out-of-range"),
        ({"hole_count": 1.5}, "out-of-range"),
        ({"tap_mark": "M8 Ø"}, "unknown-value"),
        ({"drill_sets": ["metric", "feet"]}, "unknown-value"),
        ({"drill_sets": "metric feet"}, "unknown-value"),
        ({"dialect": "some"}, "unknown-value"),
        ({"dialect": {"tap_rh": "84"}}, "unknown-value"),
        ({"dialect": {"name": "two words"}}, "unknown-value"),
        ({"dialect": {"tap_rh": "G84.2.1"}}, "unknown-value"),
        ({"dialect": {"feed_per_minute": "none"}}, "unknown-value"),
        ({"dialect": {"peck_word": "Z"}}, "unknown-value"),
        ({"dialect": {"axis_decimals_mm": 10}}, "out-of-range"),
        ({"dialect": {"S_decimals": 10}}, "out-of-range"),
        ({"dialect": {"tap_rh": ["G84", "G74"]}}, "unknown-value"),
        ({"dialect": {"feed_per_minute": ["none"]}}, "unknown-value"),
        ({"dialect": {"units_codes": {"mm": ["G21", "G71", "G171"]}}}, "too-long"),
        ({"dialect": {"units_codes": {"mm": ["21"]}}}, "unknown-value"),
        ({"dialect": {"units_codes": {"mm": "G21 G71 G171"}}}, "too-long"),
        ({"dialect": {"units_codes": {"in": "G20"}}}, "unknown-key"),
        ({"dialect": {"feed_basis": "lead"}}, "unknown-value"),
        ({"dialect": {"dwell_unit": "min"}}, "unknown-value"),
        ({"dialect": {"feed_mode_default": "G93"}}, "unknown-value"),
        ({"dialect": {"cycle_starts_spindle": "perhaps"}}, "unknown-value"),
        ({"dialect": {"least_increment": {"axis": {"mm": 0.005}}}}, "out-of-range"),
        ({"dialect": {"least_increment": {"axis": {"mm": "1/3"}}}}, "out-of-range"),
        ({"dialect": {"least_increment": {"S": {"mm": 1}}}}, "unknown-key"),
        ({"dialect": {"max_decimals": {"axis": {"mm": 10}}}}, "out-of-range"),
        ({"dialect": {"max_decimals": {"axis": {"cm": 3}}}}, "unknown-key"),
        ({"dialect": {"max_block_chars": 0}}, "out-of-range"),
        ({"dialect": {"max_block_chars": 65536}}, "out-of-range"),
        ({"drill_list": [6.8, -1]}, "out-of-range"),
        ({"drill_list": [6.8, ""]}, "empty"),
        ({"drill_list": [6.8] * 25}, "too-long"),
        ({"machine": {"gears": [[0, 3000]]}}, "out-of-range"),
        ({"machine": {"gears": [[0, 3000, 0, 50]]}}, "out-of-range"),
        ({"machine": {"gears": [[0, 3000, 50]] * 5}}, "too-long"),
        ({"machine": {"gears": [[0, 3000, "50 Nm"]]}}, "unreadable"),
    ],
    ids=str,
)
def test_a_job_with_one_fault_is_refused(change: dict[str, object], code: str) -> None:
    refused(STRAIGHT | change, code)


@pytest.mark.parametrize("thread", ["1/4-18 NPT", "NPT 1/4", "1/4-18 NPTF", "Rc 1/2", "Rc1/2", "1/2 BSPT", "1/2 PT"])
def test_the_depth_of_a_taper_thread_is_not_asked(thread: str) -> None:
    job = TAPER | {"thread": thread, "projection_mm": 4}
    valid(JOB, job)
    valid(PLAN, tc.plan(job).to_dict())
    for key, value in (("full_thread_depth_mm", 12), ("chamfer_threads", 3), ("chamfer_form", "C"), ("countersink_mm", 20)):
        refused(job | {key: value}, "does-not-apply")


@pytest.mark.parametrize("thread", ["M8", "1/4-20", "8-32 UNC-2B", "G1/2", "1/8-27 NPSC", "1/2 BSPP", "1/2 PS"])
def test_the_depth_of_any_other_thread_is_required(thread: str) -> None:
    job = {key: value for key, value in TAPER.items() if key != "thread"} | {"thread": thread}
    refused(job, "missing")
    valid(JOB, job | {"full_thread_depth_mm": 12})


@pytest.mark.parametrize("value", ["metric letter", "metric, letter", ["metric", "letter"], [], "metric"], ids=str)
def test_drill_sets_are_a_list_or_a_text(value: object) -> None:
    assert holds(STRAIGHT | {"drill_sets": value})


def plain_texts() -> Iterator[str]:
    """The texts of the table of numbers without typographic blanks, dashes and slashes, which the schema leaves out."""
    for row in Table("read_number").rows:
        text = row.bytes("text").decode("utf-8", errors="replace")
        if all(letter.isascii() or letter in "¼½¾⅛⅜⅝⅞" for letter in text):
            yield text


def value_of(text: str) -> Fraction:
    """The value that the library reads; below any where it reads none."""
    try:
        return tc.read_number(text)
    except tc.ThreadcalcError as error:
        # How many digits fit in 64 bits is no matter of a pattern.
        return Fraction(1) if error.name == "overflow" else Fraction(-1)


@pytest.mark.parametrize("value", [["6.8", 6.7, "#7", "13/64", "F"], "6.8, #7", 6.8, "6.8", []], ids=str)
def test_a_drill_list_is_a_list_or_a_text(value: object) -> None:
    assert holds(STRAIGHT | {"drill_list": value})


def test_the_schema_takes_the_numbers_that_the_reader_takes() -> None:
    takes, above = (
        Draft202012Validator({"$ref": f"#/$defs/asked_{name}", "$defs": JOB_SCHEMA["$defs"]}).is_valid
        for name in ("zero_or_more", "above_zero")
    )
    texts = list(plain_texts())
    assert len(texts) > 30
    for text in texts:
        value = value_of(text)
        assert takes(text) == (value >= 0 and "-" not in text[:1]), text
        assert above(text) == (value > 0), text
