"""Runs the examples in the docstrings of the stub: they are what a reader of the API copies."""

from __future__ import annotations

import ast
import doctest
import pathlib
import sys

import threadcalc


def documented(tree: ast.AST, prefix: str = "") -> list[tuple[str, str, int]]:
    """Name, docstring and line of everything in the stub that has one."""
    found = []
    for node in ast.iter_child_nodes(tree):
        if isinstance(node, ast.ClassDef | ast.FunctionDef):
            name = f"{prefix}{node.name}"
            text = ast.get_docstring(node)
            if text:
                found.append((name, text, node.lineno))
            found += documented(node, f"{name}.")
    return found


def main(path: str) -> int:
    runner = doctest.DocTestRunner(optionflags=doctest.ELLIPSIS | doctest.IGNORE_EXCEPTION_DETAIL)
    names = {name: getattr(threadcalc, name) for name in threadcalc.__all__}
    names["Fraction"] = threadcalc.read_number("1").__class__
    tree = ast.parse(pathlib.Path(path).read_text(encoding="utf-8"))
    for name, text, line in documented(tree):
        runner.run(doctest.DocTestParser().get_doctest(text, dict(names), name, path, line))
    print(f"{runner.tries} examples, {runner.failures} failed")
    return 1 if runner.failures or runner.tries < 20 else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
