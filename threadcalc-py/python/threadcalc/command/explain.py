"""``threadcalc explain``: what a finding of a check means."""

from __future__ import annotations

import difflib

import click

import threadcalc
from threadcalc.command.page import wrapped

__all__ = ["explain"]


@click.command()
@click.argument("ids", nargs=-1, metavar="[ID]...")
def explain(ids: tuple[str, ...]) -> None:
    """Says what findings of a check mean, by their ids; without one, lists all."""
    kinds = {kind.id: kind for kind in threadcalc.program_finding_kinds()}
    if not ids:
        for kind in kinds.values():
            click.echo(wrapped(f"{kind.severity:8}{kind.id}: {kind.meaning}"))
        return
    for place, name in enumerate(ids):
        key = name.lower().replace("_", "-")
        if key not in kinds:
            near = difflib.get_close_matches(name, kinds, 1)
            raise click.UsageError(f"no finding is called {name!r}" + (f"; {near[0]} is" if near else ""))
        kind = kinds[key]
        text = f"{kind.id}\n  usually: {kind.severity}\n  {kind.meaning}\n  It says: {kind.message}."
        if "{" in kind.message:
            text += "\n  Names in braces are its numbers; what stands in [] is left out where one is missing."
        click.echo(("\n" if place else "") + wrapped(text))
