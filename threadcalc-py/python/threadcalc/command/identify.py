"""``threadcalc identify``: which standard pitch a lead is."""

from __future__ import annotations

from typing import Any

import click

import threadcalc
from threadcalc.command.page import wrapped
from threadcalc.command.refusal import refused

__all__ = ["identify"]

# Neither has a default.
_NEEDED = {"unit": "mm or inch", "mode": "per_minute or per_revolution"}


@click.command()
@click.argument("lead_mm", required=False)
@click.option("--feed", metavar="F", help="F of the program, instead of the lead.")
@click.option("--rpm", metavar="S", help="S of the program; none per revolution.")
@click.option("--unit", help="The unit of F: mm or inch.")
@click.option("--mode", help="The feed mode of F: per_minute or per_revolution.")
@click.option("--decimals", type=int, help="Decimals of F as it is written, where it may be rounded.")
@click.option("--within", help="How far off the lead may be, relative (0.0035).")
@click.option("--starts", type=int, help="Starts of the thread (1).")
def identify(lead_mm: str | None, feed: str | None, **told: Any) -> None:
    """Names the standard pitch of a lead in mm, or of the S and F of a program.

    The lead says nothing of the diameter: the tap's shank and the drawing do.
    """
    if (lead_mm is None) == (feed is None):
        raise click.UsageError("give the lead in mm, or --feed with --unit and --mode")
    given = {key: value for key, value in told.items() if value is not None}
    if lead_mm is not None:
        far = sorted(given.keys() - {"within", "starts"})
        if far:
            raise click.UsageError(f"--{far[0]} goes with --feed; a lead is in mm")
        with refused():
            click.echo(wrapped(str(threadcalc.identify_lead(lead_mm, **given))))
        return
    assert feed is not None
    for key, choices in _NEEDED.items():
        if key not in given:
            raise click.UsageError(f"Missing option '--{key}'. {choices}")
    with refused():
        click.echo(wrapped(str(threadcalc.identify_feed(feed, given.pop("rpm", None), **given))))
