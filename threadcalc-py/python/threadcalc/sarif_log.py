"""Reports as SARIF 2.1.0, the OASIS standard for results of static analysis, which editors and servers read.

Plain dictionaries: the schema of the standard, which the tests hold them against, says more of them than classes would.
"""

from __future__ import annotations

import json
import os
import pathlib
from collections.abc import Iterable, Mapping
from itertools import zip_longest
from typing import Any, Protocol
from urllib.parse import quote_from_bytes

from threadcalc._threadcalc import ProgramFinding, Report, check, program_finding_kinds

__all__ = ["SarifLog", "sarif"]

_SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
_LEVELS = {"error": "error", "warning": "warning", "info": "note"}


class _Text(Protocol):
    def write(self, text: str, /) -> object: ...


class SarifLog:
    """A log that is written as it grows: nothing but what goes to its end is kept in memory.

    Use it as a context manager; the log is whole when it is closed.
    """

    def __init__(self, out: _Text) -> None:
        self._out = out
        self._kinds = program_finding_kinds()
        self._index = {kind.id: place for place, kind in enumerate(self._kinds)}
        self._notes: list[dict[str, Any]] = []
        self._never_checked: list[str] = []
        self._gap = ""
        head = {"$schema": _SCHEMA, "version": "2.1.0"}
        run = {
            "tool": {"driver": self._driver()},
            # The check counts bytes, and a program has one for a character.
            "columnKind": "unicodeCodePoints",
            "defaultEncoding": "ISO-8859-1",
            "newlineSequences": ["\r\n", "\n", "\r"],
        }
        out.write(f'{json.dumps(head)[:-1]}, "runs": [{json.dumps(run)[:-1]}, "results": [')

    def __enter__(self) -> SarifLog:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def add(
        self,
        path: str | os.PathLike[str],
        report: Report | Mapping[str, Any],
        silenced: Iterable[ProgramFinding] = (),
    ) -> None:
        """Adds the findings of a program; ``silenced`` are those of a ``Report`` that a baseline knows."""
        uri = _uri(path)
        record: Mapping[str, Any] = report.to_dict() if isinstance(report, Report) else report
        known = list(silenced)
        found = report.findings if isinstance(report, Report) else []
        for finding, one in zip_longest(record["findings"], found):
            self._result(uri, finding, one in known)
        for left in record["not_checked"]:
            line = f"not checked, {left['count']} times from here on" if left["count"] > 1 else "not checked"
            self._note(f"{line}: {left['text']}", "note", uri, max(left["first_line"], 1))
        self._never_checked = record["never_checked"]

    def skip(self, path: str | os.PathLike[str], reason: str) -> None:
        """Adds a file that was not checked."""
        self._note(f"not checked: {reason}", "warning", _uri(path))

    def close(self) -> None:
        """Writes the end of the log."""
        for what in self._never_checked:
            self._note(f"never checked, no text shows it: {what}", "note")
        invocation = {"executionSuccessful": True, "toolExecutionNotifications": self._notes}
        self._out.write(f'], "invocations": [{json.dumps(invocation)}]}}]}}\n')

    def _driver(self) -> dict[str, Any]:
        # Late: only a log needs it, and it takes longer than the rest of the package.
        from importlib.metadata import version

        cautions = " ".join(check(b"", dialect="unset").cautions)
        rules = [
            {
                "id": kind.id,
                "shortDescription": {"text": kind.meaning},
                "help": {"text": f"{kind.meaning} The finding says: {kind.message}. {cautions}"},
                "defaultConfiguration": {"level": _LEVELS[kind.severity]},
                "properties": {"number": kind.number},
            }
            for kind in self._kinds
        ]
        return {"name": "threadcalc", "version": version("threadcalc"), "rules": rules}

    def _result(self, uri: str, finding: Mapping[str, Any], is_known: bool) -> None:
        region = {key: finding[name] for key, name in _REGION}
        result: dict[str, Any] = {
            "ruleId": finding["id"],
            "ruleIndex": self._index[finding["id"]],
            "level": _LEVELS[finding["severity"]],
            "message": {"text": finding["text"]},
            "locations": [_location(uri, region)],
            "relatedLocations": _related(uri, finding),
            "properties": {key: finding[key] for key in _PROPERTIES} | {"numbers": finding["numbers"]},
        }
        if finding["replaces"] and finding["certain"]:
            result["fixes"] = [_fix(uri, region, finding["suggestion"])]
        if is_known:
            result["suppressions"] = [{"kind": "external", "justification": "known to the baseline"}]
        self._out.write(self._gap + json.dumps(result))
        self._gap = ",\n"

    def _note(self, text: str, level: str, uri: str | None = None, line: int | None = None) -> None:
        note: dict[str, Any] = {"message": {"text": text}, "level": level}
        if uri is not None:
            note["locations"] = [_location(uri, None if line is None else {"startLine": line})]
        self._notes.append(note)


_REGION = (("startLine", "line"), ("startColumn", "column"), ("endColumn", "end_column"))
_PROPERTIES = ("certain", "reading", "suggestion", "grounds", "thread", "tool", "hole", "program")


def sarif(programs: Iterable[tuple[str | os.PathLike[str], Report | Mapping[str, Any]]]) -> str:
    """The findings of programs as one SARIF 2.1.0 log.

    Each rule is a kind of finding; each result says what will happen, where, and the lines that it rests on. Where the
    suggestion takes the place of a word and rests on nothing assumed, it is a fix. ``SarifLog`` writes the same log
    piece by piece.

    Args:
        programs: Each program's path, as the log is to name it, and its report or what ``Report.to_dict`` made of it.

    >>> import json
    >>> from threadcalc import check
    >>> program = "G17 G21 G90 G94\\nT1 M6 (TAP M6)\\nG43 H1\\nS500 M3\\nG98 G84 X0 Y0 Z-12. R5. F800.\\nG80\\nM30\\n"
    >>> log = json.loads(sarif([("cover.nc", check(program, dialect="rs274ngc"))]))
    >>> [result["message"]["text"] for result in log["runs"][0]["results"]]
    ['cuts a lead of 1.6 mm, the thread has 1 mm: 7.2 mm off at the bottom: write F500.']
    """
    pieces: list[str] = []
    with SarifLog(_Pieces(pieces)) as log:
        for path, report in programs:
            log.add(path, report)
    return "".join(pieces)


class _Pieces:
    def __init__(self, pieces: list[str]) -> None:
        self.write = pieces.append


def _uri(path: str | os.PathLike[str]) -> str:
    """A path as a reference, whatever bytes it has."""
    plain = pathlib.Path(path)
    return plain.as_uri() if plain.is_absolute() else quote_from_bytes(os.fsencode(plain.as_posix()))


def _location(uri: str, region: Mapping[str, int] | None) -> dict[str, Any]:
    place: dict[str, Any] = {"artifactLocation": {"uri": uri}}
    if region is not None:
        place["region"] = region
    return {"physicalLocation": place}


def _related(uri: str, finding: Mapping[str, Any]) -> list[dict[str, Any]]:
    """The lines that a finding rests on; what has no line is in its grounds."""
    said = [(one["text"], one["line"]) for one in finding["evidence"] if one["line"] > 0]
    said += [(f"called from line {line}", line) for line in finding["call_path"]]
    return [
        {"id": place, "message": {"text": text}} | _location(uri, {"startLine": line})
        for place, (text, line) in enumerate(said, 1)
    ]


def _fix(uri: str, region: Mapping[str, int], text: str) -> dict[str, Any]:
    replacement = {"deletedRegion": region, "insertedContent": {"text": text}}
    change = {"artifactLocation": {"uri": uri}, "replacements": [replacement]}
    return {"description": {"text": f"write {text}"}, "artifactChanges": [change]}
