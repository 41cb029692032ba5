"""One table of ``tests/reference``: its head, its rows, and the comparison of a row with a result.

Nothing here uses threadcalc, so that a fault of the library cannot hide itself.
"""

from __future__ import annotations

import os
import pathlib
import re
from collections.abc import Callable
from fractions import Fraction

FOLDER = pathlib.Path(os.environ.get("THREADCALC_REFERENCE", pathlib.Path(__file__).parent.parent / "reference"))
TABLES = sorted(path.stem for path in FOLDER.glob("*.csv"))


class Cells(dict):
    """One row by column; remembers which columns were looked at."""

    def __init__(self, cells: dict[str, str], used: set[str]) -> None:
        super().__init__(cells)
        self.used = used

    def __getitem__(self, column: str) -> str:
        self.used.add(column)
        return super().__getitem__(column)

    def bytes(self, column: str) -> bytes:
        """The bytes a cell stands for: ``\\xHH`` is one byte."""
        unescaped = re.sub(r"\\x([0-9a-fA-F]{2})", lambda match: chr(int(match[1], 16)), self[column])
        return unescaped.encode("latin-1")


class Table:
    def __init__(self, name: str) -> None:
        self.name = f"{name}.csv"
        lines = (FOLDER / self.name).read_text(encoding="ascii").splitlines()
        heads = [line[2:].partition(": ")[::2] for line in lines if line.startswith("#")]
        body = [line.split(",") for line in lines if not line.startswith("#")]
        self.columns, rows = body[0], body[1:]
        self.used: set[str] = {"id", "status", "origin", "source"}
        self.rows = [Cells(dict(zip(self.columns, cells, strict=True)), self.used) for cells in rows]
        self.count = int(dict(heads)["rows"])
        self.tolerances = {words[0]: words[1] for words in (value.split(" ") for key, value in heads if key == "tolerance")}

    def tolerance(self, column: str, row: Cells) -> Fraction:
        """The head's tolerance: a number, or half a unit of the decimals another column counts."""
        value = self.tolerances[column]
        return Fraction(1, 2 * 10 ** int(row[value])) if value in self.columns else Fraction(value)

    def check(self, operation: Callable[[Cells], dict[str, object]], error: type[Exception]) -> int:
        """Runs every row; returns how many. Raises with all rows that differ."""
        run, faults = 0, []
        for row in self.rows:
            for fault in self.faults(row, operation, error):
                faults.append(f"{self.name}:{row['id']} {fault}")
            run += 1
        assert not faults, f"{len(faults)} differences:\n" + "\n".join(faults)
        return run

    def faults(self, row: Cells, operation: Callable[[Cells], dict[str, object]], error: type[Exception]) -> list[str]:
        want = row["status"]
        try:
            results = operation(row)
        except error as raised:
            faults = [] if raised.name == want else [f"want {want} got {raised.name} ({raised})"]
            if "at" in row and row["at"] not in ("", str(raised.at)):
                faults.append(f"at: want {row['at']} got {raised.at}")
            return faults
        except TypeError as raised:
            # A required value that is left out is no result either: its type says so.
            left_out = re.search(r"missing \d+ required", str(raised))
            return [] if want == "missing" and left_out else [f"want {want} got TypeError ({raised})"]
        if want != "ok":
            return [f"want {want} got {results}"]
        return [
            f"{column}: want {row[column]} got {got}"
            for column, got in results.items()
            if not self.same(row, column, got)
        ]

    def same(self, row: Cells, column: str, got: object) -> bool:
        want = row[column]
        if isinstance(got, list):
            return want == " ".join(map(str, got))
        if want == "":
            return True
        if want == "-":
            return got is None
        if got is None:
            return False
        if isinstance(got, Fraction) and column not in self.tolerances:
            return got == Fraction(want)
        if isinstance(got, Fraction | float):
            # Double against printed decimal: the one rounding of the double itself is far below the tolerance.
            return abs(Fraction(got) - Fraction(want)) <= self.tolerance(column, row)
        return want == str(got)
