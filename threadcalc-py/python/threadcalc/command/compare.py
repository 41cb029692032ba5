"""``threadcalc compare``: in which tapped holes two versions of a program differ."""

from __future__ import annotations

from typing import Any

import click

import threadcalc
from threadcalc.command.check import asked_of
from threadcalc.command.page import wrapped
from threadcalc.command.told import DIALECTS, INPUT, checked_under, dialect_named, read_bytes

__all__ = ["compare"]


@click.command()
@click.argument("old", type=INPUT)
@click.argument("new", type=INPUT)
@click.option("--dialect", type=dialect_named, metavar="DIALECT", help="rs274ngc, unset, or a file of JSON.")
@checked_under
@click.option("--json", "as_json", is_flag=True, help="The comparison as JSON.")
def compare(old: str, new: str, dialect: threadcalc.Dialect | None, as_json: bool, **told: Any) -> None:
    """Says in which tapped holes the version NEW of a program is not what OLD was: lead, depth, hand, speed, place.

    It is no check: it does not know which of the two is right. The exit status is 0 whether they differ or not.
    """
    if dialect is None:
        raise click.UsageError(f"Missing option '--dialect'. {DIALECTS}")
    if old == new == "-":
        raise click.UsageError("only one of the two can be the standard input")
    asked = asked_of(**told)
    comparison = threadcalc.compare(read_bytes(old), read_bytes(new), dialect=dialect, **asked)
    click.echo(comparison.to_json() if as_json else wrapped(str(comparison)))
