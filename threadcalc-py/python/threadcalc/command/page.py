"""Text for a screen of 80 columns at a machine: plain ASCII, lines that wrap."""

from __future__ import annotations

import os
import sys
import textwrap

__all__ = ["shown", "wrapped"]

_COLUMNS = 80


def wrapped(text: str) -> str:
    """The same lines, those that are too long continued below, further in."""
    lines = []
    for line in text.splitlines():
        if len(line) <= _COLUMNS:
            lines.append(line)
            continue
        margin = line[: len(line) - len(line.lstrip())] + "    "
        lines += textwrap.wrap(
            line, _COLUMNS, subsequent_indent=margin, break_long_words=False, break_on_hyphens=False
        )
    return "\n".join(lines)


def shown(path: str | bytes | os.PathLike[str]) -> str:
    """A path as text that any screen takes, whatever bytes it has."""
    name = os.fsdecode(path)
    plain = name if name.isprintable() else name.encode("unicode_escape").decode("ascii")
    encoding = getattr(sys.stdout, "encoding", None) or "ascii"
    return plain.encode(encoding, "backslashreplace").decode(encoding)
