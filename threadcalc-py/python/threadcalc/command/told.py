"""What a command is told: dialects, options, machines and lists of tools, by names or in files of JSON."""

from __future__ import annotations

import json
import pathlib
import sys
from collections.abc import Iterable
from typing import Any

import click

from threadcalc._threadcalc import Dialect
from threadcalc.command.page import shown
from threadcalc.command.refusal import Refusal, refused
from threadcalc.errors import ThreadcalcError

__all__ = ["DIALECTS", "INPUT", "checked_under", "dialect_named", "pairs", "read_bytes", "read_json", "read_object"]

INPUT = click.Path(allow_dash=True)
# What a dialect that is missing may be.
DIALECTS = "rs274ngc, unset (every reading is tried), or a file of JSON with the control's own codes"


def dialect_named(text: str) -> Dialect:
    """A built-in dialect by its name, or one of the shop's own in a file of JSON."""
    try:
        return Dialect(text)
    except ThreadcalcError as error:
        if not pathlib.Path(text).exists():
            raise Refusal(f"{shown(text)!r} is no file, and no built-in dialect: {error.hint}") from None
    fields = read_object(text)
    with refused(shown(text)):
        return Dialect(**fields)


def read_bytes(path: str) -> bytes:
    """A file, or the standard input for ``-``."""
    with refused(shown(path)):
        return sys.stdin.buffer.read() if path == "-" else pathlib.Path(path).read_bytes()


def read_json(path: str) -> Any:
    """The value of a file of JSON."""
    try:
        return json.loads(read_bytes(path).decode("utf-8-sig"), object_pairs_hook=_once)
    except UnicodeDecodeError as error:
        raise Refusal(f"{shown(path)}: byte {error.start + 1} is no UTF-8") from None
    except json.JSONDecodeError as error:
        raise Refusal(f"{shown(path)}: line {error.lineno}, column {error.colno}: no JSON: {error.msg}") from None
    except (_Twice, RecursionError) as error:
        raise Refusal(f"{shown(path)}: no JSON that is read here: {error}") from None


class _Twice(ValueError):
    pass


def _once(fields: list[tuple[str, Any]]) -> dict[str, Any]:
    """An object; of a key that stands twice in it one value would be lost."""
    made = dict(fields)
    if len(made) < len(fields):
        names = [key for key, _ in fields]
        raise _Twice(f"the key {next(key for key in names if names.count(key) > 1)!r} stands twice in an object")
    return made


def read_object(path: str) -> dict[str, Any]:
    """The object of a file of JSON."""
    value = read_json(path)
    if not isinstance(value, dict):
        raise Refusal(f"{shown(path)}: expected an object, {{...}}")
    return value


def pairs(texts: Iterable[str]) -> dict[str, str]:
    """What several ``KEY=VALUE`` say."""
    found: dict[str, str] = {}
    for text in texts:
        key, equals, value = text.partition("=")
        if not equals or not key:
            raise click.UsageError(f"{text!r}: expected KEY=VALUE, such as block_delete=true")
        if key in found:
            raise click.UsageError(f"{key} is given twice")
        found[key] = value
    return found


def checked_under(command: Any) -> Any:
    """The options of a command that checks programs, but for the dialect."""
    options = (
        click.option("--option", "options", multiple=True, metavar="KEY=VALUE", help="An option of the check."),
        click.option("--machine", type=INPUT, help="The machine's limits, a file of JSON, as in a job."),
        click.option("--tools", type=INPUT, help="The tool list, a file of JSON: a list of objects."),
    )
    for option in reversed(options):
        command = option(command)
    return command
