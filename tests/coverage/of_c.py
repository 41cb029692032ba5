"""Which functions of the header the C reference program calls while it runs the tables.

The program is compiled with a header that is made here: a macro of each function's name counts the call
and then makes it. A macro does not expand in itself, so the call inside it is the function.
"""

from __future__ import annotations

import os
import pathlib
import re
import subprocess

ROOT = pathlib.Path(__file__).resolve().parents[2]
HEADER = ROOT / "include/threadcalc.h"
FOLDER = ROOT / "build/coverage/c"
DECLARED = re.compile(r"^THREADCALC_API\b[^;]*?\bTHREADCALC_CALL\s+(threadcalc_\w+)\s*\(", re.MULTILINE)
COUNTERS = """
#include <stdio.h>
#include <stdlib.h>
unsigned long trace_calls[{count}];
static const char *const names[] = {{{names}}};
static void write_trace(void)
{{
    FILE *file = fopen(getenv("THREADCALC_TRACE"), "w");
    size_t place;
    for (place = 0; file && place < sizeof names / sizeof names[0]; place++) {{
        fprintf(file, "%s %lu\\n", names[place], trace_calls[place]);
    }}
    if (!file || fclose(file)) {{
        abort();
    }}
}}
__attribute__((constructor)) static void trace(void)
{{
    atexit(write_trace);
}}
"""


def required(header: str) -> set[str]:
    """Every function that the header declares."""
    return set(DECLARED.findall(header))


def header_text() -> str:
    """The text of the header."""
    return HEADER.read_text(encoding="utf-8")


def called(libraries: pathlib.Path) -> set[str]:
    """Compiles the reference program with counters, runs it, and reads them."""
    FOLDER.mkdir(parents=True, exist_ok=True)
    names = sorted(required(header_text()))
    macros = [f"#define {name}(...) (trace_calls[{place}]++, {name}(__VA_ARGS__))" for place, name in enumerate(names)]
    header = ['#include "threadcalc.h"', "extern unsigned long trace_calls[];", *macros]
    (FOLDER / "trace.h").write_text("\n".join(header) + "\n", encoding="utf-8")
    quoted = ", ".join(f'"{name}"' for name in names)
    (FOLDER / "trace.c").write_text(COUNTERS.format(count=len(names), names=quoted), encoding="utf-8")
    sources = [*sorted((ROOT / "tests/c").glob("reference*.c")), ROOT / "tests/c/csv.c"]
    flags = ["-std=gnu99", "-O1", "-Wall", "-Werror", "-Iinclude"]
    program, trace = FOLDER / "reference", FOLDER / "trace.txt"
    objects = []
    for source in sources:
        objects.append(FOLDER / f"{source.stem}.o")
        compile_it = ["gcc", *flags, "-include", str(FOLDER / "trace.h"), "-c", str(source), "-o", str(objects[-1])]
        subprocess.run(compile_it, cwd=ROOT, check=True)
    link = ["gcc", *flags, *map(str, objects), str(FOLDER / "trace.c"), str(libraries / "libthreadcalc.a")]
    link += ["-lgcc_s", "-lutil", "-lrt", "-lpthread", "-lm", "-ldl", "-o", str(program)]
    subprocess.run(link, cwd=ROOT, check=True)
    environment = dict(os.environ, THREADCALC_TRACE=str(trace))
    subprocess.run([str(program)], cwd=ROOT, env=environment, check=True, stdout=subprocess.DEVNULL)
    counts = dict(line.split() for line in trace.read_text(encoding="utf-8").splitlines())
    return {name for name, count in counts.items() if int(count) > 0}


def planted(header: str) -> str:
    """The header with a function more."""
    return header + "THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_planted(void);\n"
