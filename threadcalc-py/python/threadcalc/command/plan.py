"""``threadcalc plan``: one callout to a tapping block."""

from __future__ import annotations

import sys
from typing import Any

import click

import threadcalc
from threadcalc.command.page import shown
from threadcalc.command.refusal import FOUND, Refusal, refused
from threadcalc.command.told import INPUT, dialect_named, pairs, read_json

__all__ = ["plan"]


@click.command()
@click.argument("thread", required=False)
@click.option("--job", type=INPUT, help="The job, or a list of jobs, as a file of JSON; - is the standard input.")
@click.option("--unit", help="Unit of the program: mm or inch.")
@click.option("--mode", help="Feed mode: per_minute or per_revolution.")
@click.option("--decimals", help="Decimals of F, 0 to 9.")
@click.option("--rpm", help="S that is asked for.")
@click.option("--surface-speed-m-min", help="Surface speed instead of S.")
@click.option("--surface-speed-ft-min", help="The same in feet.")
@click.option("--hole", help="through or blind.")
@click.option("--depth-mm", "full_thread_depth_mm", help="Full thread on the drawing (full_thread_depth_mm).")
@click.option("--tap", help="cut or form.")
@click.option("--holder", help="rigid, tension_compression or floating.")
@click.option(
    "--dialect",
    type=dialect_named,
    metavar="DIALECT",
    help="rs274ngc, unset, or a file of JSON; without one no words are given.",
)
@click.option("--set", "more", multiple=True, metavar="KEY=VALUE", help="Any other key: machine.highest_rpm=6000")
@click.option("--json", "as_json", is_flag=True, help="A line of JSON for each plan.")
def plan(job: str | None, more: tuple[str, ...], as_json: bool, **told: Any) -> None:
    """Plans a tapped hole: "7/16-14 UNC-2B" with options, or --job.

    Options stand above what the job says. Prints the page of the plan with its cautions, or its JSON.
    """
    given = {key: value for key, value in told.items() if value is not None} | pairs(more)
    jobs = _jobs(job) if job is not None else [{}]
    plans = []
    for place, fields in enumerate(jobs, 1):
        with refused(f"{shown(job)}, job {place}" if job is not None and len(jobs) > 1 else ""):
            plans.append(threadcalc.plan(fields | given))
    for place, made in enumerate(plans):
        click.echo(made.to_json() if as_json else ("\n" if place else "") + made.text.rstrip("\n"))
    wrong = any(finding.severity == "error" for made in plans for finding in made.findings)
    sys.exit(FOUND if wrong else 0)


def _jobs(path: str) -> list[dict[str, Any]]:
    read = read_json(path)
    jobs = read if isinstance(read, list) else [read]
    if not jobs or not all(isinstance(fields, dict) for fields in jobs):
        raise Refusal(f"{shown(path)}: expected a job, {{...}}, or a list of jobs")
    return jobs
