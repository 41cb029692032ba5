"""``threadcalc audit``: whole folders of programs, the most dangerous findings first."""

from __future__ import annotations

import collections
import json
import os
import sys
from collections.abc import Iterable, Iterator
from typing import Any, Protocol

import click

import threadcalc
from threadcalc.command.check import asked_of
from threadcalc.command.page import shown, wrapped
from threadcalc.command.refusal import FOUND, WRONG, Refusal, complain, refused
from threadcalc.command.told import DIALECTS, checked_under, dialect_named
from threadcalc.sarif_log import SarifLog

__all__ = ["audit"]

_SEVERITIES = ("error", "warning", "info")
# Reasons why an audit is not whole, though it was to be.
_INCOMPLETE = ("not-readable", "changed-while-read")


def _dialect_of_folder(text: str) -> tuple[str, threadcalc.Dialect]:
    folder, equals, dialect = text.rpartition("=")
    if not equals or not folder:
        raise click.BadParameter(f"{text!r}: expected FOLDER=DIALECT")
    return folder, dialect_named(dialect)


@click.command()
@click.argument("paths", nargs=-1, required=True, type=click.Path(), metavar="PATH...")
@click.option("--dialect", type=dialect_named, metavar="DIALECT", help="rs274ngc, unset, or a file of JSON.")
@click.option(
    "--dialect-of",
    "folders",
    type=_dialect_of_folder,
    multiple=True,
    metavar="FOLDER=DIALECT",
    help="A folder's own; the deepest counts.",
)
@checked_under
@click.option("--suffix", "suffixes", multiple=True, help="How names of programs end, such as .nc; else all files.")
@click.option("--largest-bytes", type=int, help="Larger files are skipped.")
@click.option("--workers", type=click.IntRange(min=1), help="Files at a time; one for each processor otherwise.")
@click.option("--baseline", type=click.Path(), help="Known findings, which are not listed again.")
@click.option("--write-baseline", type=click.Path(), help="Writes what was found as known.")
@click.option("--resume", type=click.Path(), help="A journal: what it has is not read again, what is new is added.")
@click.option("--json", "form", flag_value="json", help="A line of JSON for each file, in their order.")
@click.option("--sarif", "form", flag_value="sarif", help="One SARIF 2.1.0 log.")
def audit(
    paths: tuple[str, ...],
    dialect: threadcalc.Dialect | None,
    folders: tuple[tuple[str, threadcalc.Dialect], ...],
    options: tuple[str, ...],
    machine: str | None,
    tools: str | None,
    write_baseline: str | None,
    form: str | None,
    **told: Any,
) -> None:
    """Checks folders of programs; it only reads them.

    Lists what was found, the most dangerous first: by severity, what is certain before what is assumed, what touches
    many holes before what touches few. Then what was not checked and why, and a summary.
    """
    given = {key: value for key, value in told.items() if value}
    asked = asked_of(options, machine, tools) | {"dialect": _dialects(paths, dialect, dict(folders))}
    with refused():
        running = threadcalc.audit(paths, **asked, **given)
    forms: dict[str | None, type[_Out]] = {"json": _Json, "sarif": _Sarif, None: _Text}
    out = forms[form]()
    programs = _shown_progress(running, out)
    with refused():
        if write_baseline is None:
            collections.deque(programs, maxlen=0)
        else:
            known = threadcalc.write_baseline(programs, write_baseline)
            complain(f"{shown(write_baseline)}: {known} known findings")
    out.close(running.summary)
    sys.exit(_status(running.summary))


def _dialects(
    paths: tuple[str, ...], dialect: threadcalc.Dialect | None, folders: dict[str, threadcalc.Dialect]
) -> threadcalc.Dialect | dict[str, threadcalc.Dialect]:
    """One dialect, or that of each folder; the one without a folder holds for everything that was named."""
    if dialect is None and not folders:
        raise click.UsageError(f"Missing option '--dialect' or '--dialect-of'. {DIALECTS}")
    if dialect is None or not folders:
        return dialect or folders
    named = {path if os.path.isdir(path) else os.path.dirname(path) or "." for path in paths}
    return dict.fromkeys(named, dialect) | folders


def _shown_progress(running: threadcalc.Audit, out: _Out) -> Iterator[threadcalc.AuditedProgram]:
    """Every program, written down; a bar on the standard error where that is a terminal."""
    try:
        with click.progressbar(
            running, length=running.total, label="audit", file=sys.stderr, hidden=not sys.stderr.isatty()
        ) as bar:
            for program in bar:
                out.add(program)
                yield program
    except KeyboardInterrupt:
        far = f"stopped after {running.done} of {running.total} files"
        raise Refusal(f"{far}; --resume goes on from a journal") from None


def _status(summary: threadcalc.AuditSummary) -> int:
    if any(reason in summary.skipped for reason in _INCOMPLETE):
        return WRONG
    return FOUND if summary.severities.get("error") else 0


class _Out(Protocol):
    def add(self, program: threadcalc.AuditedProgram) -> None: ...
    def close(self, summary: threadcalc.AuditSummary) -> None: ...


class _Text:
    """A list for people, in the end: what is most dangerous may stand in the last file."""

    def __init__(self) -> None:
        self._found: list[tuple[tuple[Any, ...], str]] = []
        self._skipped: list[str] = []

    def add(self, program: threadcalc.AuditedProgram) -> None:
        path = shown(program.path)
        if program.skipped is not None:
            self._skipped.append(f"  {path}: {program.skipped}")
        for one in program.findings:
            text = f"{one.severity} {path}, line {one.line}, column {one.column}: {one.id}: {one.text}"
            if one.grounds:
                text += f"\n  because: {one.grounds}"
            self._found.append((_danger(one), text))

    def close(self, summary: threadcalc.AuditSummary) -> None:
        # A stable sort: those of one danger stay in the order of the files.
        lines = [text for _, text in sorted(self._found, key=lambda found: found[0])]
        if self._skipped:
            lines += ["not checked:", *self._skipped]
        lines += [str(summary), *threadcalc.check(b"", dialect="unset").cautions]
        click.echo(wrapped("\n".join(lines)))


def _danger(finding: threadcalc.ProgramFinding) -> tuple[Any, ...]:
    holes = float(finding.numbers.get("affected_holes", 0))
    return _SEVERITIES.index(finding.severity), not finding.certain, -holes


class _Json:
    """A line for each file as it comes; ``silenced`` are the places in its findings that the baseline knew."""

    def add(self, program: threadcalc.AuditedProgram) -> None:
        report = program.report
        silenced = _places(report.findings if report else (), program.silenced)
        head = {"file": os.fspath(program.path), "skipped": program.skipped, "silenced": silenced}
        told = json.dumps(head, separators=(",", ":"))
        click.echo(f'{told[:-1]},"report":{report.to_json() if report else "null"}}}')

    def close(self, summary: threadcalc.AuditSummary) -> None:
        click.echo(str(summary), err=True)


def _places(findings: Iterable[threadcalc.ProgramFinding], some: list[threadcalc.ProgramFinding]) -> list[int]:
    return [place for place, finding in enumerate(findings) if finding in some]


class _Sarif:
    """One log, written as the files come."""

    def __init__(self) -> None:
        self._log = SarifLog(sys.stdout)

    def add(self, program: threadcalc.AuditedProgram) -> None:
        if program.report is None:
            self._log.skip(program.path, str(program.skipped))
        else:
            self._log.add(program.path, program.report, program.silenced)

    def close(self, summary: threadcalc.AuditSummary) -> None:
        self._log.close()
        click.echo(str(summary), err=True)
