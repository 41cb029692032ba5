"""Which functions, constructors and methods of the Python package the reference tests call.

Run as a program it is the tests themselves, with a package in threadcalc's place that notes each call and
hands it on.
"""

from __future__ import annotations

import ast
import pathlib
import subprocess
import sys
import types

ROOT = pathlib.Path(__file__).resolve().parents[2]
STUB = ROOT / "threadcalc-py/python/threadcalc/_threadcalc.pyi"
TRACE = ROOT / "build/coverage/python.txt"


def stub_text() -> str:
    """The text of the stub."""
    return STUB.read_text(encoding="utf-8")


def required(stub: str) -> set[str]:
    """Functions, constructors and methods of the stub; what is read off an answer is no operation."""
    names = set()
    for node in ast.parse(stub).body:
        if isinstance(node, ast.FunctionDef):
            names.add(node.name)
        if isinstance(node, ast.ClassDef):
            methods = [item for item in node.body if isinstance(item, ast.FunctionDef) and not is_property(item)]
            names |= {f"{node.name}.{item.name}" for item in methods if not item.name.startswith("_")}
            names |= {node.name for item in methods if item.name == "__new__"}
    return names


def is_property(function: ast.FunctionDef) -> bool:
    return any(isinstance(mark, ast.Name) and mark.id == "property" for mark in function.decorator_list)


def called() -> set[str]:
    """Runs the reference tests in a process of their own and reads what they called."""
    TRACE.parent.mkdir(parents=True, exist_ok=True)
    TRACE.unlink(missing_ok=True)
    run = subprocess.run([sys.executable, __file__], cwd=ROOT, capture_output=True, text=True, check=False)
    if run.returncode:
        raise SystemExit(f"the Python reference tests fail under the trace:\n{run.stdout}{run.stderr}")
    return set(TRACE.read_text(encoding="utf-8").split())


def planted(stub: str) -> str:
    """The stub with a function more."""
    return stub + "\ndef planted() -> None: ...\n"


class Answer:
    """An object of the package; its methods are noted when they are called."""

    def __init__(self, native: object, noted: set[str]) -> None:
        self.__dict__.update(_native=native, _noted=noted)

    def __getattr__(self, name: str) -> object:
        found = getattr(self._native, name)
        if callable(found):
            return noting(found, f"{type(self._native).__name__}.{name}", self._noted)
        return wrap(found, self._noted)

    def __eq__(self, other: object) -> bool:
        return bool(self._native == unwrap(other))

    def __hash__(self) -> int:
        return hash(self._native)

    def __str__(self) -> str:
        return str(self._native)

    def __repr__(self) -> str:
        return repr(self._native)


class Class:
    """A class of the package: calling it is noted, and so are its static and class methods."""

    def __init__(self, native: type, noted: set[str]) -> None:
        self.__dict__.update(_native=native, _noted=noted)

    def __call__(self, *arguments: object, **keywords: object) -> object:
        return noting(self._native, self._native.__name__, self._noted)(*arguments, **keywords)

    def __getattr__(self, name: str) -> object:
        return noting(getattr(self._native, name), f"{self._native.__name__}.{name}", self._noted)

    def __instancecheck__(self, instance: object) -> bool:
        return isinstance(unwrap(instance), self._native)


def noting(function: object, name: str, noted: set[str]) -> object:
    """The function, noting its name on every call."""

    def call(*arguments: object, **keywords: object) -> object:
        noted.add(name)
        return wrap(function(*unwrap(arguments), **unwrap(keywords)), noted)

    return call


def wrap(value: object, noted: set[str]) -> object:
    if isinstance(value, list | tuple):
        return type(value)(wrap(item, noted) for item in value)
    return Answer(value, noted) if type(value).__module__.startswith("threadcalc") else value


def unwrap(value: object) -> object:
    if isinstance(value, Answer):
        return value._native
    if isinstance(value, dict):
        return {key: unwrap(item) for key, item in value.items()}
    return type(value)(unwrap(item) for item in value) if isinstance(value, list | tuple) else value


def traced(noted: set[str]) -> types.ModuleType:
    """The package with everything in it wrapped; exceptions stay as they are, to be caught."""
    import threadcalc

    package = types.ModuleType("threadcalc")
    for name in threadcalc.__all__:
        found = getattr(threadcalc, name)
        if isinstance(found, type) and not issubclass(found, BaseException):
            found = Class(found, noted)
        elif not isinstance(found, type):
            found = noting(found, name, noted)
        setattr(package, name, found)
    return package


def main() -> int:
    import pytest

    noted: set[str] = set()
    sys.modules["threadcalc"] = traced(noted)
    status = pytest.main(["-q", str(ROOT / "tests/python/test_reference.py")])
    TRACE.write_text("\n".join(sorted(noted)) + "\n", encoding="utf-8")
    return int(status)


if __name__ == "__main__":
    sys.exit(main())
