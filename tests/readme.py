"""The README against reality: its code is the examples' code, its outputs are what its commands print.

`<!-- file: PATH -->` and `<!-- output of: COMMAND -->` stand above the block they are about.
With THREADCALC_WRITE_README=1 the blocks are rewritten instead of compared.
"""

import os
import pathlib
import re
import subprocess
import sys

ROOT = pathlib.Path(__file__).resolve().parent.parent
BLOCK = re.compile(r"<!-- (file|output of): (.+?) -->\n```(\w+)\n(.*?)```\n", re.DOTALL)
# The two commands a newcomer types; tests/run itself is what runs this check.
COMMAND = re.compile(r"```sh\n(cargo .+?)\n```", re.DOTALL)


def run(command: str) -> str:
    done = subprocess.run(["bash", "-c", command], cwd=ROOT, capture_output=True, text=True, check=False)
    return done.stdout if done.returncode == 0 else f"exit {done.returncode}: {done.stderr}"


def real(kind: str, what: str) -> str:
    return (ROOT / what).read_text() if kind == "file" else run(what)


def main() -> int:
    path = ROOT / "README.md"
    text = path.read_text()
    if os.environ.get("THREADCALC_WRITE_README"):
        path.write_text(BLOCK.sub(lambda m: m[0][: m.start(4) - m.start()] + real(m[1], m[2]) + "```\n", text))
        return 0
    passed = failed = 0
    for kind, what, _language, shown in BLOCK.findall(text):
        if real(kind, what) == shown:
            passed += 1
        else:
            failed += 1
            print(f"README.md: the block for `{what}` is not what it is about")
    commands = COMMAND.findall(text)
    for command in commands:
        if run(command).startswith("7/16-14 UNC-2B"):
            passed += 1
        else:
            failed += 1
            print(f"README.md: `{command}` does not print its plan")
    for folder in sorted(p.name for p in ROOT.iterdir() if p.is_dir() and not p.name.startswith(".")):
        if folder in ("target", "build"):
            continue
        if f"| `{folder}` |" in text:
            passed += 1
        else:
            failed += 1
            print(f"README.md: the folder {folder} is not in the table of folders")
    if passed < 9:
        failed += 1
        print("README.md: fewer blocks and commands were checked than it has")
    print(f"README: {passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
