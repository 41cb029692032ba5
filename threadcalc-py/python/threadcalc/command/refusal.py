"""What cannot be done, in one line on the standard error, with exit status 2."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import IO, Any

import click

from threadcalc.command.page import shown

__all__ = ["FOUND", "WRONG", "OneLine", "Refusal", "complain", "refused"]

# The exit status where something of severity error was found, and where the command was used wrongly.
FOUND, WRONG = 1, 2


class Refusal(click.ClickException):
    """Wrong use, or something that cannot be read."""

    exit_code = WRONG

    def __init__(self, message: str, context: click.Context | None = None) -> None:
        context = context or click.get_current_context(silent=True)
        super().__init__(f"{context.command_path if context else 'threadcalc'}: {message}")

    def show(self, file: IO[Any] | None = None) -> None:
        """Says it in one line."""
        complain(self.format_message())


class OneLine(click.Group):
    """A group whose commands refuse in one line, without the usage in front of it."""

    def make_context(self, *arguments: Any, **keywords: Any) -> click.Context:
        """As click does, with its refusals in one line."""
        with _one_line():
            return super().make_context(*arguments, **keywords)

    def invoke(self, context: click.Context) -> Any:
        """As click does, with its refusals in one line."""
        with _one_line():
            return super().invoke(context)


@contextmanager
def _one_line() -> Iterator[None]:
    try:
        yield
    except click.exceptions.NoArgsIsHelpError:
        raise
    except click.UsageError as error:
        raise Refusal(error.format_message(), error.ctx) from None
    except KeyboardInterrupt:
        raise Refusal("stopped") from None


@contextmanager
def refused(what: str = "") -> Iterator[None]:
    """Turns what the library and the system refuse into a refusal that says of what."""
    try:
        yield
    except OSError as error:
        raise Refusal(f"{what or shown(error.filename or '')}: {error.strerror or error}") from None
    except (ValueError, TypeError) as error:
        raise Refusal(f"{what}: {error}" if what else str(error)) from None


def complain(text: str) -> None:
    """Writes one line to the standard error."""
    click.echo(" ".join(text.split()), err=True)
