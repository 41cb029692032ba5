"""Which public functions and methods of the core the reference tests call.

The compiler says so: an unoptimised object of the test program names every function of the core that its
own code calls, and holds what it made of generic ones.
"""

from __future__ import annotations

import pathlib
import re
import subprocess
import time

import public_rust

ROOT = pathlib.Path(__file__).resolve().parents[2]
OBJECT = ROOT / "build/coverage/rust/reference.o"
# `core::room::function`, `core::room::Type<_>::method` and `core::room::<impl core::room::Type>::method`.
SYMBOL = re.compile(
    r"threadcalc_core::(?:\w+::)*?"
    r"(?:<impl threadcalc_core::(?:\w+::)*(\w+)>::|([A-Z]\w*)(?:<[^:]*>)?::)?(\w+)$"
)


def required(library: str) -> set[str]:
    """The operations: free functions, and methods that are more than a look at what is stored (const)."""
    required = set()
    # A room has types of its own, whose names may be those of types elsewhere.
    for text, sources in [(library, public_rust.source_texts()), *public_rust.rooms(library)]:
        found = public_rust.methods(text, sources)
        required |= public_rust.functions(text) | {f"{m.type}::{m.name}" for m in found if not m.is_const}
    return required


def called() -> set[str]:
    """Builds the object and reads its symbols."""
    OBJECT.parent.mkdir(parents=True, exist_ok=True)
    command = ["cargo", "rustc", "--quiet", "-p", "threadcalc-core", "--test", "reference", "--"]
    command += [f"--emit=obj={OBJECT}", "-Ccodegen-units=1", "-Copt-level=0"]
    if not OBJECT.exists():
        # cargo would not notice that it is gone.
        command.append(f"--cfg=again_{time.time_ns()}")
    subprocess.run(command, cwd=ROOT, check=True)
    listing = subprocess.run(["nm", "-C", str(OBJECT)], check=True, capture_output=True, text=True).stdout
    names = (SYMBOL.search(line.strip()) for line in listing.splitlines())
    return {"::".join(part for part in (name[1] or name[2], name[3]) if part) for name in names if name}


def planted(library: str) -> str:
    """lib.rs with a function more."""
    return library + "pub use planted::planted;\n"
