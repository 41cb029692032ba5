"""Audits of whole folders: every file has its item, in a fixed order, and nothing of it is touched."""

from __future__ import annotations

import gc
import os
import pathlib
import signal
import subprocess
import sys
import tempfile
import time

import archives
import pytest
import threadcalc as tc

Shown = tuple[str, str | None, str]


def shown(program: tc.AuditedProgram) -> Shown:
    """All that an item says, as text."""
    report = program.report
    said = "" if report is None else f"{report}\n{report.tapped_holes}\n{[one.numbers for one in report.findings]}"
    return os.fsdecode(program.path), program.skipped, f"{program}\n{said}\n{program.silenced}"


def audited(*paths: object, **told: object) -> list[Shown]:
    return [shown(program) for program in tc.audit(paths, **{"dialect": "rs274ngc", **told})]


def reasons(programs: list[tc.AuditedProgram], root: pathlib.Path) -> dict[str, str | None]:
    return {os.fsdecode(program.path.relative_to(root)): program.skipped for program in programs}


def test_every_file_has_an_item_that_is_its_check_or_the_reason_why_not(tmp_path: pathlib.Path) -> None:
    archives.mixed(tmp_path)
    audit = tc.audit(tmp_path, dialect="rs274ngc", largest_bytes=5000)
    files = {path for path, kind in archives.state(tmp_path).items() if not os.path.isdir(path) or os.path.islink(path)}
    assert (len(audit), audit.total, audit.done) == (len(files), len(files), 0)
    programs = []
    for program in audit:
        programs.append(program)
        assert audit.done == len(programs)
    assert {os.fsencode(program.path) for program in programs} == files
    skipped = {name: text for name, text in reasons(programs, tmp_path).items() if text is not None}
    assert {name: text.partition(": ")[0] for name, text in skipped.items()} == {
        "big.nc": "utf-16",
        "blank.nc": "empty",
        "deep/link.nc": "symbolic-link",
        "deep/loop": "symbolic-link",
        "deep/nowhere": "symbolic-link",
        "empty.nc": "empty",
        "little.nc": "utf-16",
        "long.nc": "too-large",
        "note.txt": "not-a-program",
        "picture.bin": "binary",
        "pipe": "no-regular-file",
    }
    size = (tmp_path / "long.nc").stat().st_size
    assert skipped["long.nc"] == f"too-large: {size} bytes, at most 5000"
    assert skipped["picture.bin"].endswith("byte 6 is NUL")
    for program in programs:
        assert (program.report is None) == (program.skipped is not None)
        if program.report is not None:
            alone = tc.check(program.path, dialect="rs274ngc")
            assert str(program.report) == str(alone) and program.report.findings == alone.findings
            assert program.report.tapped_holes == alone.tapped_holes
            severities = [("error", "warning", "info").index(one.severity) for one in program.findings]
            assert severities == sorted(severities) and len(severities) == len(alone.findings)
    assert os.fsencode(tmp_path) + b"/" + archives.LATIN_1 in {os.fsencode(one.path) for one in programs}


def test_nothing_of_the_folder_is_changed(tmp_path: pathlib.Path) -> None:
    archives.mixed(tmp_path / "archive")
    before = archives.state(tmp_path / "archive")
    audit = tc.audit(tmp_path / "archive", dialect="unset", resume=tmp_path / "journal", workers=4)
    tc.write_baseline(audit, tmp_path / "known")
    list(tc.audit(tmp_path / "archive", dialect="unset", resume=tmp_path / "journal", baseline=tmp_path / "known"))
    assert archives.state(tmp_path / "archive") == before


def test_what_the_system_refuses_is_told_in_its_words() -> None:
    # Root reads everything: as root, the audit runs as nobody, for whom pytest's own folders are shut.
    code = (
        "import os, pathlib, sys, threadcalc as tc\n"
        "if os.geteuid() == 0: os.setgroups([]); os.setgid(65534); os.setuid(65534)\n"
        "for one in tc.audit(sys.argv[1], dialect='unset'): print(one.path.name, one.skipped)\n"
    )
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        archives.write(folder, {file: archives.CLEAN for file in ("open.nc", "shut.nc", "locked/a.nc")})
        folder.chmod(0o755)
        (folder / "shut.nc").chmod(0)
        (folder / "locked").chmod(0)
        told = subprocess.run([sys.executable, "-c", code, name], text=True, capture_output=True)
        (folder / "locked").chmod(0o755)
    assert told.returncode == 0, told.stderr
    refused = "not-readable: Permission denied (os error 13)"
    assert told.stdout.splitlines() == [f"locked {refused}", "open.nc None", f"shut.nc {refused}"]


def test_the_order_is_that_of_the_paths_and_the_names(tmp_path: pathlib.Path) -> None:
    archives.many(tmp_path, 250)
    wanted = sorted(path for path in tmp_path.rglob("*.nc"))
    by_workers = [audited(tmp_path, workers=workers) for workers in (1, 2, 8)]
    assert [path for path, _, _ in by_workers[0]] == [str(path) for path in wanted]
    assert by_workers[0] == by_workers[1] == by_workers[2]
    # Twice the same file is one file; a file that was named comes where it was named.
    last, first = wanted[-1], tmp_path / "0000"
    assert [path for path, _, _ in audited(last, first, tmp_path / "0000/../0000")] == [
        str(path) for path in [last, *sorted(first.iterdir())]
    ]


def test_which_names_are_programs(tmp_path: pathlib.Path) -> None:
    names = ("a.nc", "b.NC", "c.tap", "d.txt", "O1000", "e.nc.bak", "nc")
    archives.write(tmp_path, {name: archives.CLEAN for name in names})

    def named(*suffixes: str) -> set[str]:
        audit = tc.audit(tmp_path, dialect="unset", suffixes=suffixes)
        found = {one.path.name for one in audit}
        assert audit.summary.left_out == len(names) - len(found)
        return found

    assert named(".nc") == named("NC") == {"a.nc", "b.NC"}
    assert named(".tap", "") == {"c.tap", "O1000", "nc"}
    assert named() == set()
    assert [one.path.name for one in tc.audit(tmp_path / "d.txt", dialect="unset", suffixes=[".nc"])] == ["d.txt"]
    pytest.raises(TypeError, tc.audit, tmp_path, dialect="unset", suffixes=".nc")


def test_the_deepest_folder_has_the_dialect(tmp_path: pathlib.Path) -> None:
    archives.write(tmp_path, {f"{name}/a.nc": archives.WRONG.replace("G94", "G95") for name in ("x", "x/y", "x/y/z", "w")})
    mill = tc.Dialect("rs274ngc", feed_per_revolution="G95")
    told = {tmp_path / "x": mill, str(tmp_path / "x/y"): {"tap_rh": "G284"}, tmp_path / "x/y/z": "rs274ngc"}
    programs = list(tc.audit(tmp_path, dialect=told))
    assert [program.skipped for program in programs] == [
        "no-dialect: it stands in none of the folders that have a dialect", None, None, None
    ]
    alone = [tc.check(tmp_path / name, dialect=dialect) for name, dialect in
             (("x/a.nc", mill), ("x/y/a.nc", told[str(tmp_path / "x/y")]), ("x/y/z/a.nc", "rs274ngc"))]
    assert [str(program.report) for program in programs[1:]] == [str(report) for report in alone]
    assert len({str(report) for report in alone}) == 3
    with pytest.raises(FileNotFoundError, match="no such folder; a key of dialect is a folder or a field"):
        tc.audit(tmp_path, dialect={"tap_rhh": "G84"})
    with pytest.raises(tc.ThreadcalcError) as caught:
        tc.audit(tmp_path, dialect={"tap_rh": "G84", "tap_l": "G74"})
    assert caught.value.name == "unknown-key"


def test_parts_are_the_whole(tmp_path: pathlib.Path) -> None:
    archives.mixed(tmp_path)
    archives.many(tmp_path, 120)
    whole = audited(tmp_path)
    parts = [audited(tmp_path, part=(number, 5)) for number in range(5)]
    assert sorted(sum(parts, [])) == sorted(whole) and all(len(part) > 10 for part in parts)
    # More files move none from part to part, and no file is moved by where the folder stands.
    archives.write(tmp_path, {"0000/a.nc": archives.CLEAN})
    more = [audited(tmp_path, part=(number, 5)) for number in range(5)]
    assert sum(set(part) <= set(now) for part, now in zip(parts, more)) == 5
    tmp_path.rename(tmp_path.parent / "moved")
    moved = audited(tmp_path.parent / "moved", part=(3, 5))
    assert [path.replace("moved", tmp_path.name) for path, _, _ in moved] == [path for path, _, _ in more[3]]
    (tmp_path.parent / "moved").rename(tmp_path)
    for part in ((5, 5), (0, 0)):
        pytest.raises(ValueError, tc.audit, tmp_path, dialect="unset", part=part)


def test_wrong_use_is_told_before_anything_runs(tmp_path: pathlib.Path) -> None:
    archives.write(tmp_path, {"a.nc": archives.CLEAN})
    with pytest.raises(FileNotFoundError) as caught:
        tc.audit([tmp_path, tmp_path / "gone"], dialect="unset")
    assert caught.value.filename == str(tmp_path / "gone") and caught.value.errno == 2
    pytest.raises(ValueError, tc.audit, tmp_path, dialect="unset", workers=0)
    pytest.raises(TypeError, tc.audit, tmp_path)
    pytest.raises(TypeError, tc.audit, [3], dialect="unset")
    for told in ({"dialect": "no-such"}, {"options": {"surface_z": 0}}, {"machine": {"highest": 3}},
                 {"tools": [{"number": place} for place in range(65)]}):
        pytest.raises(tc.ThreadcalcError, tc.audit, tmp_path, **{"dialect": "unset", **told})


def test_options_machine_and_tools_are_those_of_check(tmp_path: pathlib.Path) -> None:
    archives.write(tmp_path, {"a.nc": archives.CLEAN})
    for told in ({"options": {"thread": "M8"}}, {"machine": {"highest_rpm": 400}},
                 {"tools": [{"number": 1, "thread": "M8x1.25"}]}):
        (program,) = tc.audit(tmp_path, dialect="rs274ngc", **told)
        assert program.findings and str(program.report) == str(
            tc.check(tmp_path / "a.nc", dialect="rs274ngc", **told)
        )


def test_the_summary_adds_up(tmp_path: pathlib.Path) -> None:
    archives.mixed(tmp_path)
    audit = tc.audit(tmp_path, dialect="rs274ngc")
    programs = list(audit)
    summary = audit.summary
    assert summary.total == summary.done == len(programs) == summary.checked + sum(summary.skipped.values())
    assert summary.checked == sum(program.report is not None for program in programs)
    assert summary.with_findings == sum(bool(program.findings) for program in programs)
    found = [(one.severity, one.id) for program in programs for one in program.findings]
    assert summary.findings == {key: found.count(key) for key in set(found)}
    assert sum(summary.severities.values()) == len(found) and summary.silenced == {} and summary.known_left is None
    holes = [hole for program in programs if program.report for hole in program.report.tapped_holes]
    assert summary.tapping_blocks == len(holes)
    assert summary.without_lead == sum(hole.lead_mm is None for hole in holes) > 0
    text = str(audit)
    assert text == str(summary)
    for line in (f"files: {len(programs)} of {len(programs)}", "  skipped, symbolic-link: 3",
                 "  error lead-mismatch: ", "not checked in any program:"):
        assert line in text


def test_a_dropped_audit_ends_its_workers(tmp_path: pathlib.Path) -> None:
    archives.many(tmp_path, 300)

    def workers() -> int:
        names = [path.read_text() for path in pathlib.Path("/proc/self/task").glob("*/comm")]
        return sum(name.startswith("threadcalc-audi") for name in names)

    # A thread has its name a moment after it was made, and ends a moment after it was told to.
    def come_to(wanted: int) -> bool:
        gc.collect()
        until = time.monotonic() + 20
        while workers() != wanted and time.monotonic() < until:
            time.sleep(0.01)
        return workers() == wanted

    assert come_to(0)
    audit = tc.audit(tmp_path, dialect="rs274ngc", workers=3)
    next(audit)
    assert come_to(3)
    del audit
    assert come_to(0)


def test_ctrl_c_ends_an_audit(tmp_path: pathlib.Path) -> None:
    os.mkfifo(tmp_path / "wait")
    archives.write(tmp_path, {"a.nc": archives.CLEAN})
    # A pipe put in a file's place behind the walk: a worker that waits for ever.
    code = (
        "import os, pathlib, sys, threadcalc as tc\n"
        "folder = sys.argv[1]\n"
        "os.remove(folder + '/wait'); open(folder + '/wait', 'w').write('G1')\n"
        "for number in range(200): open(f'{folder}/b{number:03}.nc', 'w').write('G1\\n')\n"
        "audit = tc.audit(folder, dialect='unset', workers=1)\n"
        "next(audit)\n"
        "os.remove(folder + '/wait'); os.mkfifo(folder + '/wait')\n"
        "print('ready', flush=True)\n"
        "try:\n    list(audit)\n"
        "except KeyboardInterrupt:\n    print('interrupted', audit.done, flush=True); os._exit(0)\n"
    )
    process = subprocess.Popen([sys.executable, "-c", code, str(tmp_path)], stdout=subprocess.PIPE, text=True)
    assert process.stdout is not None and process.stdout.readline() == "ready\n"
    time.sleep(0.5)
    process.send_signal(signal.SIGINT)
    out, _ = process.communicate(timeout=30)
    assert out == "interrupted 201\n" and process.returncode == 0
