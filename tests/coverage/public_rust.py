"""What the core makes public: its free functions and the methods of its types, read from the source.

Standard library only: the size check reads the same list.
"""

from __future__ import annotations

import pathlib
import re
from typing import NamedTuple

SOURCE = pathlib.Path(__file__).resolve().parents[2] / "threadcalc-core/src"
EXPORTS = re.compile(r"^pub use [a-z_0-9:]+::(?:\{([^}]*)\}|(\w+));", re.MULTILINE)
ROOM = re.compile(r"^pub mod (\w+);", re.MULTILINE)
# An inherent implementation that begins and ends at the margin, as rustfmt writes it.
IMPLEMENTATION = re.compile(r"^impl(?:<[^\n]*?>)? (\w+)(<[^\n{]*>)? \{\n(.*?)^\}", re.MULTILINE | re.DOTALL)
METHOD = re.compile(r"^    pub (const )?fn (\w+)", re.MULTILINE)


class Method(NamedTuple):
    """A public method: of a type, with a name; whether it is const, and whether its type takes parameters."""

    type: str
    name: str
    is_const: bool
    is_generic: bool


def exported(library: str) -> set[str]:
    """The names that the text of lib.rs exports."""
    return {name for several, one in EXPORTS.findall(library) for name in re.findall(r"\w+", several or one)}


def functions(library: str) -> set[str]:
    """The free functions that the text of lib.rs exports."""
    return {name for name in exported(library) if name[0].islower()}


def methods(library: str, sources: list[str]) -> list[Method]:
    """The public methods, in the texts of all files, of the types that the text of lib.rs exports."""
    types = exported(library)
    return [
        Method(kind, name, bool(const), bool(parameters))
        for source in sources
        for kind, parameters, body in IMPLEMENTATION.findall(source)
        if kind in types
        for const, name in METHOD.findall(body)
    ]


def library_text() -> str:
    """The text of lib.rs."""
    return (SOURCE / "lib.rs").read_text(encoding="utf-8")


def source_texts(folder: pathlib.Path = SOURCE) -> list[str]:
    """The texts of all files of the core, or of one room."""
    return [path.read_text(encoding="utf-8") for path in sorted(folder.rglob("*.rs"))]


def rooms(library: str) -> list[tuple[str, list[str]]]:
    """The rooms that the text of lib.rs makes public whole: the text of each head, and of all its files."""
    folders = [SOURCE / name for name in ROOM.findall(library)]
    return [((folder / "mod.rs").read_text(encoding="utf-8"), source_texts(folder)) for folder in folders]
