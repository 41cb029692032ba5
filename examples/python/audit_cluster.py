"""Checks an archive of programs on several machines, into two tables.

usage: python audit_cluster.py FOLDER TABLES --dialect NAME [--scheduler ADDRESS] [--parts N]

Every machine sees FOLDER and TABLES under the same path. The archive is cut into parts by the names of the files;
a part is one task, and a task that a lost machine left behind is done again elsewhere. TABLES gets a Parquet file
for each part:

    findings/   a row for each finding
    files/      a row for each file: checked, or skipped with the reason

Without a scheduler's address the machine's own processors do the work. No row in `findings` does not mean safe: the
check reads text, and sees neither part, clamps and offsets nor the tool in the pocket.
"""

import argparse
import collections
import json
import os
import pathlib

import pyarrow as pa
import pyarrow.parquet as parquet
from distributed import Client, LocalCluster, as_completed
from threadcalc import audit

FINDINGS = pa.schema({
    "file": pa.string(), "line": pa.int64(), "column": pa.int64(), "id": pa.string(), "severity": pa.string(),
    "certain": pa.bool_(), "silenced": pa.bool_(), "message": pa.string(), "suggestion": pa.string(),
})
FILES = pa.schema({
    "file": pa.string(), "checked": pa.bool_(), "skipped": pa.string(), "findings": pa.int64(),
    "silenced": pa.int64(), "tapping_blocks": pa.int64(), "not_checked": pa.list_(pa.string()),
})


def name_of(path):
    """A table holds UTF-8; other bytes of a name are written as \\xE9."""
    return os.fsencode(path).decode("utf-8", "backslashreplace")


def rows_of(program):
    """The row of a file, and those of its findings."""
    file, report = name_of(program.path), program.report
    told = [(one, False) for one in program.findings] + [(one, True) for one in program.silenced]
    findings = [
        {"file": file, "line": one.line, "column": one.column, "id": one.id, "severity": one.severity,
         "certain": one.certain, "silenced": silenced, "message": one.message, "suggestion": one.suggestion}
        for one, silenced in told
    ]
    row = {"file": file, "checked": report is not None, "skipped": program.skipped,
           "findings": len(program.findings), "silenced": len(program.silenced),
           "tapping_blocks": len(report.tapped_holes) if report else None,
           "not_checked": report.not_checked if report else None}
    return row, findings


def write(rows, schema, path):
    """A table in one step: a task that is done twice leaves one file."""
    path.parent.mkdir(parents=True, exist_ok=True)
    part = path.with_suffix(f".{os.getpid()}.part")
    parquet.write_table(pa.Table.from_pylist(rows, schema=schema), part)
    part.replace(path)


def audit_part(number, parts, folder, tables, told):
    """One task: the files of a part, and how many of them were checked and skipped, and had what findings."""
    counts, files, findings = collections.Counter(), [], []
    for program in audit(folder, part=(number, parts), workers=1, **told):
        row, found = rows_of(program)
        files.append(row)
        findings += found
        counts["checked" if row["checked"] else f"skipped, {row['skipped'].partition(':')[0]}"] += 1
    counts.update(f"{one['severity']} {one['id']}" for one in findings if not one["silenced"])
    write(findings, FINDINGS, pathlib.Path(tables, "findings", f"{number:05}-of-{parts:05}.parquet"))
    write(files, FILES, pathlib.Path(tables, "files", f"{number:05}-of-{parts:05}.parquet"))
    return counts


def main():
    reader = argparse.ArgumentParser()
    reader.add_argument("folder")
    reader.add_argument("tables")
    reader.add_argument("--dialect", required=True, help="rs274ngc, unset, or a JSON file with the control's own codes")
    reader.add_argument("--baseline", help="known findings, as write_baseline writes them")
    reader.add_argument("--scheduler", help="its address; without one this machine does the work")
    reader.add_argument("--parts", type=int, help="how many; four for each worker")
    asked = reader.parse_args()
    if os.path.exists(asked.tables) and os.listdir(asked.tables):
        reader.error(f"{asked.tables} is not empty: rows of an older audit would be among the new ones")
    is_file = asked.dialect.endswith(".json")
    dialect = json.loads(pathlib.Path(asked.dialect).read_text(encoding="utf-8")) if is_file else asked.dialect
    told = {"dialect": dialect, "baseline": asked.baseline and os.path.abspath(asked.baseline)}
    here = None if asked.scheduler else LocalCluster(threads_per_worker=1, dashboard_address=None)
    with Client(asked.scheduler or here) as client:
        parts = asked.parts or 4 * sum(client.nthreads().values())
        folder, tables = os.path.abspath(asked.folder), os.path.abspath(asked.tables)
        tasks = [client.submit(audit_part, number, parts, folder, tables, told, pure=False) for number in range(parts)]
        counts = collections.Counter()
        for task in as_completed(tasks):
            counts += task.result()
    if here:
        here.close()
    for what, count in sorted(counts.items()):
        print(f"{what}: {count}")


if __name__ == "__main__":
    main()
