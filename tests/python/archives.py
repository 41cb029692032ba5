"""Folders of programs for the tests of audits: as a shop's archive has them, with what else lies around."""

from __future__ import annotations

import hashlib
import os
import pathlib
import shutil

SAMPLES = pathlib.Path(__file__).parent.parent / "nc"
CLEAN = "G17 G21 G90 G94\nT1 M6 (TAP M6)\nG43 H1\nS500 M3\nG98 G84 X0 Y0 Z-12. R5. F500.\nG80\nM30\n"
WRONG = CLEAN.replace("F500.", "F800.")
LATIN_1 = b"caf\xe9.nc"


def write(folder: pathlib.Path, programs: dict[str, str]) -> None:
    """Programs by their names below the folder."""
    for name, text in programs.items():
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_bytes(text.encode("latin-1"))


def mixed(folder: pathlib.Path) -> None:
    """The samples, and every kind of file that is none."""
    (folder / "samples").mkdir(parents=True)
    for path in sorted(SAMPLES.glob("*.nc")):
        shutil.copy(path, folder / "samples")
    write(folder, {
        "crlf.nc": WRONG.replace("\n", "\r\n"),
        "deep/er/cover.nc": WRONG,
        "deep/twin.nc": CLEAN,
        "empty.nc": "",
        "blank.nc": " \r\n\n",
        "leadless.nc": CLEAN.replace(" F500.", ""),
        "long.nc": CLEAN + "(FOR THE ARCHIVE)\n" * 500,
        "note.txt": "Set-up sheet of the valve cover.\nClamp it twice.\n",
        "O1000": WRONG,
    })
    (folder / "picture.bin").write_bytes(b"G0 X1\0\xff" * 20)
    (folder / "little.nc").write_bytes(CLEAN.encode("utf-16-le").join([b"\xff\xfe", b""]))
    (folder / "big.nc").write_bytes(CLEAN.encode("utf-16-be").join([b"\xfe\xff", b""]))
    (folder / "deep/loop").symlink_to(folder)
    (folder / "deep/link.nc").symlink_to(folder / "crlf.nc")
    (folder / "deep/nowhere").symlink_to(folder / "gone")
    os.mkfifo(folder / "pipe")
    with open(os.path.join(os.fsencode(folder), LATIN_1), "wb") as file:
        file.write(WRONG.encode())


def many(folder: pathlib.Path, count: int, holes: int = 1) -> None:
    """As many programs, every third with a wrong feed, in folders of a hundred."""
    for number in range(count):
        text = WRONG if number % 3 == 0 else CLEAN
        more = "".join(f"X{place}.\n" for place in range(1, holes))
        write(folder, {f"{number // 100:04}/part{number:05}.nc": text.replace("G80", f"{more}G80 (PART {number})")})


def state(folder: pathlib.Path) -> dict[bytes, tuple[object, ...]]:
    """Of everything below a folder: kind, size, time of change, mode and a hash of its bytes."""
    found: dict[bytes, tuple[object, ...]] = {}
    for at, folders, files in os.walk(os.fsencode(folder)):
        for name in [b"", *folders, *files]:
            path = os.path.join(at, name)
            status = os.lstat(path)
            plain = os.path.isfile(path) and not os.path.islink(path)
            content = hashlib.sha256(pathlib.Path(os.fsdecode(path)).read_bytes()).hexdigest() if plain else ""
            found[path] = (status.st_mode, status.st_size, status.st_mtime_ns, status.st_ctime_ns, content)
    return found
