"""``threadcalc check``: what programs do to their tapped holes."""

from __future__ import annotations

import json
import sys
from typing import Any

import click

import threadcalc
from threadcalc.command.page import shown, wrapped
from threadcalc.command.refusal import FOUND, WRONG, Refusal, complain, refused
from threadcalc.command.told import (
    DIALECTS,
    INPUT,
    checked_under,
    dialect_named,
    pairs,
    read_bytes,
    read_json,
    read_object,
)
from threadcalc.sarif_log import SarifLog

__all__ = ["asked_of", "check", "has_errors"]


@click.command()
@click.argument("programs", nargs=-1, required=True, type=INPUT, metavar="PROGRAM...")
@click.option("--dialect", type=dialect_named, metavar="DIALECT", help="rs274ngc, unset, or a file of JSON.")
@checked_under
@click.option("--json", "form", flag_value="json", help="A line of JSON for each program.")
@click.option("--sarif", "form", flag_value="sarif", help="One SARIF 2.1.0 log of all programs.")
def check(programs: tuple[str, ...], dialect: threadcalc.Dialect | None, form: str | None, **told: Any) -> None:
    """Checks programs before anybody presses cycle start; - is the standard input.

    Prints what will happen at each tapped hole that is doubtful or wrong, the worst first, and what was not checked.
    Keys of --option: surface_z_mm, block_delete, evaluate_macros, thread, full_thread_depth_mm, holder,
    underfeed_percent, cutting_force_n_mm2.
    """
    if dialect is None:
        raise click.UsageError(f"Missing option '--dialect'. {DIALECTS}")
    asked = asked_of(**told) | {"dialect": dialect}
    write = {"json": _write_json, "sarif": _write_sarif}.get(form or "", _write_text)
    sys.exit(write(programs, asked))


def asked_of(options: tuple[str, ...], machine: str | None, tools: str | None) -> Any:
    """What a check is told beside the dialect, as keywords; what it refuses, it refuses before the first program."""
    asked: Any = {
        "options": pairs(options),
        "machine": read_object(machine) if machine else None,
        "tools": read_json(tools) if tools else None,
    }
    with refused():
        threadcalc.check(b"", dialect="unset", **asked)
    return asked


def has_errors(report: threadcalc.Report) -> bool:
    """Whether something of severity error was found."""
    return any(finding.severity == "error" for finding in report.findings)


class _Reports:
    """The reports of programs; one that cannot be read is told, and the next one follows."""

    def __init__(self, programs: tuple[str, ...], asked: Any) -> None:
        self.programs = programs
        self.asked = asked
        self.status = 0

    def __iter__(self) -> Any:
        for path in self.programs:
            try:
                report = threadcalc.check(read_bytes(path), **self.asked)
            except Refusal as refusal:
                complain(refusal.format_message())
                self.status = WRONG
                continue
            if has_errors(report):
                self.status = max(self.status, FOUND)
            yield path, report


def _write_text(programs: tuple[str, ...], asked: Any) -> int:
    reports = _Reports(programs, asked)
    for place, (path, report) in enumerate(reports):
        click.echo(("\n" if place else "") + wrapped(f"{shown(path)}\n{report}"))
    return reports.status


def _write_json(programs: tuple[str, ...], asked: Any) -> int:
    reports = _Reports(programs, asked)
    for path, report in reports:
        click.echo(f'{{"file":{json.dumps(path)},"report":{report.to_json()}}}')
    return reports.status


def _write_sarif(programs: tuple[str, ...], asked: Any) -> int:
    reports = _Reports(programs, asked)
    with SarifLog(sys.stdout) as log:
        for path, report in reports:
            log.add("stdin" if path == "-" else path, report)
    return reports.status
