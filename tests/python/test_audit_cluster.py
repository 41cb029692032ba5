"""The audit of the example on a cluster gives the rows of the audit on one machine."""

from __future__ import annotations

import os
import pathlib
import subprocess
import sys

import archives
import pyarrow.parquet as parquet
import pytest
import threadcalc as tc

EXAMPLE = pathlib.Path(__file__).parents[2] / "examples/python/audit_cluster.py"
Rows = list[dict[str, object]]


def run(*arguments: object) -> subprocess.CompletedProcess[str]:
    return subprocess.run([sys.executable, str(EXAMPLE), *map(str, arguments)], text=True, capture_output=True)


def rows(folder: pathlib.Path) -> Rows:
    return sorted(parquet.read_table(folder).to_pylist(), key=repr)


def on_one_machine(audit: tc.Audit) -> tuple[Rows, Rows]:
    files, findings = [], []
    for program in audit:
        file = os.fsencode(program.path).decode("utf-8", "backslashreplace")
        report = program.report
        files.append({
            "file": file, "checked": report is not None, "skipped": program.skipped,
            "findings": len(program.findings), "silenced": len(program.silenced),
            "tapping_blocks": None if report is None else len(report.tapped_holes),
            "not_checked": None if report is None else report.not_checked,
        })
        for one in [] if report is None else report.findings:
            findings.append({
                "file": file, "line": one.line, "column": one.column, "id": one.id, "severity": one.severity,
                "certain": one.certain, "silenced": one in program.silenced, "message": one.message,
                "suggestion": one.suggestion,
            })
    return sorted(files, key=repr), sorted(findings, key=repr)


@pytest.mark.parametrize("with_baseline", [False, True])
def test_the_tables_are_those_of_one_machine(tmp_path: pathlib.Path, with_baseline: bool) -> None:
    folder, tables = tmp_path / "archive", tmp_path / "tables"
    archives.mixed(folder)
    archives.many(folder, 60)
    told = {}
    if with_baseline:
        told["baseline"] = tmp_path / "known"
        tc.write_baseline(
            (one for one in tc.audit(folder, dialect="rs274ngc") if "part0000" not in one.path.name), told["baseline"]
        )
    audit = tc.audit(folder, dialect="rs274ngc", **told)
    files, findings = on_one_machine(audit)
    options = [f"--{name}={path}" for name, path in told.items()]
    done = run(folder, tables, "--dialect=rs274ngc", "--parts=7", *options)
    assert done.returncode == 0, done.stderr
    assert rows(tables / "files") == files and rows(tables / "findings") == findings
    assert sorted(path.name for path in (tables / "files").iterdir()) == [f"{n:05}-of-00007.parquet" for n in range(7)]
    summary = audit.summary
    counts = {"checked": summary.checked, **{f"skipped, {name}": count for name, count in summary.skipped.items()}}
    counts |= {" ".join(key): count for key, count in summary.findings.items()}
    assert done.stdout.splitlines() == [f"{what}: {count}" for what, count in sorted(counts.items())]
    assert run(folder, tables, "--dialect=rs274ngc").returncode == 2
