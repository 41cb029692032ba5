#!/usr/bin/env python3
"""Checks the dialect of every reference table beside this file.

Standard library only. Prints file:line: message and exits 1 on any fault.
"""
import pathlib
import re
import sys

STATUSES = {
    "ok", "empty", "unreadable", "too-long", "not-exact", "out-of-range", "overflow",
    "series-mismatch", "unknown-class", "class-unset", "not-sourced",
    "feed-rounds-to-zero", "missing", "unknown-value", "contradiction", "no-drill",
    "fit", "unsupported-form", "does-not-apply", "unknown-key", "unsupported-field", "bad-json",
}
# What only a caller in C can do wrong.
STATUSES_OF_C = {"null-pointer", "structure-size", "buffer-too-short"}
ORIGINS = {"printed", "rule", "derived", "memory"}
HEADS = ("table", "standard", "units", "checked", "rows")
KNOWN_HEADS = set(HEADS) | {"compare", "tolerance", "text", "offset", "findings"}
IDENTIFIER = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*\Z")
NUMBER = re.compile(r"[0-9]+(\.[0-9]+)?\Z")
LAST_COLUMNS = ["status", "origin", "source"]


def check_heads(name, heads, columns, row_count):
    """Yields (line, message) for the head lines of one table."""
    seen = {}
    for line, text in heads:
        key, colon, value = text[2:].partition(": ")
        if not text.startswith("# ") or not colon or not value:
            yield line, "a head line reads '# key: value'"
            continue
        if key not in KNOWN_HEADS:
            yield line, f"unknown head '{key}'"
        if key in seen and key != "tolerance":
            yield line, f"head '{key}' twice"
        seen[key] = value
        if key == "tolerance":
            words = value.split(" ", 2)
            if len(words) < 3:
                yield line, "tolerance needs a column, a value and a reason"
            elif words[0] not in columns:
                yield line, f"tolerance for unknown column '{words[0]}'"
            elif not NUMBER.match(words[1]) and words[1] not in columns:
                yield line, f"tolerance '{words[1]}' is no number and no column"
    for key in HEADS:
        if key not in seen:
            yield 1, f"head '{key}' is missing"
    if ("tolerance" in seen) == (seen.get("compare") == "exact"):
        yield 1, "either 'compare: exact' or tolerance lines"
    if seen.get("table", name) != name:
        yield 1, f"head 'table' is not the file's name '{name}'"
    if seen.get("rows", str(row_count)) != str(row_count):
        yield 1, f"head 'rows' says {seen['rows']}, the file has {row_count}"


def check_row(cells, columns, ids, statuses):
    """Yields messages for one row."""
    if len(cells) != len(columns):
        yield f"{len(cells)} cells, {len(columns)} columns"
        return
    if not IDENTIFIER.match(cells[0]):
        yield f"id '{cells[0]}' is not lower-case kebab"
    if cells[0] in ids:
        yield f"id '{cells[0]}' is used twice"
    ids.add(cells[0])
    status, origin, source = cells[-3:]
    if status not in statuses:
        yield f"unknown status '{status}'"
    if origin not in ORIGINS:
        yield f"unknown origin '{origin}'"
    if not source:
        yield "no source"
    if (status != "ok") != cells[0].startswith("bad-"):
        yield "ids of rows with an error start with 'bad-', and no others"
    if any(cell != cell.strip() for cell in cells):
        yield "a cell starts or ends with a space: write \\x20"


def check_table(path, totals):
    """Yields (line, message) for one table and adds its rows to totals."""
    data = path.read_bytes()
    if not data.endswith(b"\n") or b"\r" in data or data.startswith(b"\xef\xbb\xbf"):
        yield 1, "lines end in LF, the last one too, and there is no byte order mark"
    for line, raw in enumerate(data.split(b"\n"), 1):
        if any(byte < 32 or byte > 126 or byte == 34 for byte in raw):
            yield line, "quote, tab, control or non-ASCII byte"
    lines = list(enumerate(data.decode("ascii", "replace").splitlines(), 1))
    heads = [pair for pair in lines if pair[1].startswith("#")]
    body = lines[len(heads):]
    if any(text.startswith("#") for _, text in body) or not body:
        yield 1, "head lines first, then the column line, then rows"
        return
    columns = body[0][1].split(",")
    if columns[0] != "id" or columns[-3:] != LAST_COLUMNS or len(set(columns)) != len(columns):
        yield body[0][0], "columns start with id and end in status,origin,source, each once"
    yield from check_heads(path.stem, heads, columns, len(body) - 1)
    ids = set()
    statuses = STATUSES | STATUSES_OF_C if path.parent.name == "c" else STATUSES
    for line, text in body[1:]:
        for message in check_row(text.split(","), columns, ids, statuses):
            yield line, message
    edges = sum(name.startswith(("bad-", "edge-")) for name in ids)
    totals.append((path.name, len(body) - 1, edges))


def main():
    totals, faults = [], 0
    for path in sorted(pathlib.Path(__file__).parent.rglob("*.csv")):
        for line, message in check_table(path, totals):
            print(f"{path.name}:{line}: {message}")
            faults += 1
    rows, edges = sum(t[1] for t in totals), sum(t[2] for t in totals)
    print(f"{len(totals)} tables, {rows} rows, {edges} edges or invalid, {faults} faults")
    if 3 * edges < rows or rows < 170:
        print("lint.py:1: fewer than 170 rows, or less than a third edges or invalid")
        faults += 1
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
