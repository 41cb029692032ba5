#!/usr/bin/env python3
"""The public functions of the core, by rustdoc's JSON: the entries of the panic proof, and their check.

    api.py write JSON BY_HAND OUT           the entries as Rust, but for those in BY_HAND
    api.py check JSON SYMBOLS EXCEPTIONS    every public function is one of the exported SYMBOLS

JSON is what rustdoc writes with `--output-format json`. SYMBOLS holds the exported names of the
built proof, one a line: an entry counts only if the linker kept it. EXCEPTIONS holds names that
need no entry, each with its reason behind a blank.

Names: `feed` (function), `Length::plus` (method), `Display.for.Length` (trait impl). A function
that takes a function or a type of any kind cannot be called without thought: `check` prints the
line to complete and to add to by_hand.rs.
"""

import json
import os
import re
import sys

# No code of ours runs in these.
MARKERS = {"Copy", "Eq", "StructuralPartialEq", "Send", "Sync", "Unpin", "Freeze", "UnwindSafe", "RefUnwindSafe"}
# No entry where the compiler wrote them. Clone copies bytes. Debug is for tests and logs: core's own
# formatting of doubles and of text keeps a branch to a panic that no linker can see is never taken.
EXEMPT_WHEN_DERIVED = {"Clone", "Debug"}

# How each trait is called in an entry: arguments, body.
CALLS = {
    "Clone": ("this: &{0}", "this.clone()"),
    "Debug": ("this: &{0}, out: &mut Formatter<'_>", "Debug::fmt(this, out)"),
    "Deserialize": ("", "{0}::deserialize(Spring)"),
    "Default": ("", "<{0}>::default()"),
    "Display": ("this: &{0}, out: &mut Formatter<'_>", "Display::fmt(this, out)"),
    "Error": ("this: &{0}", "core::error::Error::source(this).is_some()"),
    "Hash": ("this: &{0}", "this.hash(&mut Sink)"),
    "Iterator": ("this: {0}", "all(this)"),
    "Ord": ("a: &{0}, b: &{0}", "a.cmp(b)"),
    "PartialEq": ("a: &{0}, b: &{0}", "a == b"),
    "PartialOrd": ("a: &{0}, b: &{0}", "a.partial_cmp(b)"),
    "Serialize": ("this: &{0}", "this.serialize(Sink)"),
    "Write": ("this: &mut {0}, text: &str", "this.write_str(text)"),
}

# What stands in a line that a person has to complete.
UNKNOWN = "/* "

# A length for the types that are generic over theirs.
LENGTHS = {"Text": "24", "Findings": "16"}


class Api:
    """The items that a user of the crate can name, and a suggested entry for each."""

    def __init__(self, path):
        with open(path, encoding="utf-8") as file:
            document = json.load(file)
        self.index = document["index"]
        self.entries = {}
        self.by_hand = set()
        self.module(self.item(document["root"]))

    def item(self, number):
        return self.index.get(str(number))

    def module(self, module):
        for number in module["inner"]["module"]["items"]:
            item = self.item(number)
            if item and "use" in item["inner"]:
                used = item["inner"]["use"]
                item = self.item(used["id"])
                if item and used["is_glob"]:
                    self.module(item)
                    continue
            if item is None or item["visibility"] != "public":
                continue
            kind, inner = next(iter(item["inner"].items()))
            if kind == "function":
                self.add(item["name"], self.call(item, None))
            elif kind in ("struct", "enum", "union"):
                for impl in inner["impls"]:
                    self.impl(item["name"], self.item(impl))
            elif kind == "module":
                self.module(item)

    def add(self, name, call):
        arguments, body = call
        self.entries[name] = f'entry!("{name}", ({arguments}) => {body});'
        if UNKNOWN in arguments + body:
            self.by_hand.add(name)

    def impl(self, owner, item):
        if item is None or "impl" not in item["inner"]:
            return
        impl = item["inner"]["impl"]
        if impl["is_synthetic"] or impl["blanket_impl"] is not None or impl["is_negative"]:
            return
        itself = render(impl["for"], owner)
        if impl["trait"] is None:
            for number in impl["items"]:
                method = self.item(number)
                if method and "function" in method["inner"] and method["visibility"] == "public":
                    self.add(f"{owner}::{method['name']}", self.call(method, itself))
            return
        trait = impl["trait"]["path"].rsplit("::", 1)[-1]
        derived = any("automatically_derived" in json.dumps(attribute) for attribute in item["attrs"])
        if trait in MARKERS or (derived and trait in EXEMPT_WHEN_DERIVED):
            return
        given = [a for a in generic_arguments(impl["trait"], owner) if a != itself]
        call = f"<{itself}>::from(value)" if trait == "From" else f"{UNKNOWN}the methods of {trait} */"
        arguments, body = CALLS.get(trait, ("value: " + ", ".join(given), call))
        name = ".".join([trait, *(plain(one) for one in given), "for", owner])
        self.add(name, (arguments.format(itself), body.format(itself)))

    def call(self, item, itself):
        signature = item["inner"]["function"]["sig"]
        kinds = {one["name"] for one in item["inner"]["function"]["generics"]["params"] if "type" in one["kind"]}
        owner = itself.split("<")[0] if itself else None
        named = [(name.lstrip("_") or "value", render(kind, owner, itself)) for name, kind in signature["inputs"]]
        any_kind = lambda kind: kinds & set(re.findall(r"\w+", kind))
        named = [(name, f"{UNKNOWN}{kind} */" if any_kind(kind) else kind) for name, kind in named]
        takes_self = bool(named) and named[0][0] == "self"
        if takes_self:
            named[0] = ("this", named[0][1])
            body = f"this.{item['name']}({', '.join(name for name, _ in named[1:])})"
        else:
            place = f"<{itself}>::" if itself else ""
            body = f"{place}{item['name']}({', '.join(name for name, _ in named)})"
        if "Iterator" in json.dumps(signature["output"]):
            body = f"all({body})"
        return ", ".join(f"{name}: {kind}" for name, kind in named), body


def plain(text):
    return "".join(c for c in text if c.isalnum() or c == "_")


def generic_arguments(path, owner):
    bracketed = ((path.get("args") or {}).get("angle_bracketed") or {}).get("args", [])
    lengths = LENGTHS.get(path["path"].rsplit("::", 1)[-1], "16")
    shown = []
    for argument in bracketed:
        if "type" in argument:
            shown.append(render(argument["type"], owner))
        elif "const" in argument:
            text = argument["const"]["expr"]
            shown.append(lengths if text.isidentifier() else text)
        elif "lifetime" in argument:
            shown.append("'_")
    return shown


def render(kind, owner, itself=None):
    """A type as it is written in the arguments of an entry."""
    name, inner = next(iter(kind.items()))
    inside = lambda one: render(one, owner, itself)
    if name == "primitive":
        return inner
    if name == "generic":
        return (itself or owner) if inner == "Self" else inner
    if name == "resolved_path":
        arguments = generic_arguments(inner, owner)
        return inner["path"].rsplit("::", 1)[-1] + (f"<{', '.join(arguments)}>" if arguments else "")
    if name == "borrowed_ref":
        static = "'static " if inner["lifetime"] == "'static" else ""
        return f"&{static}{'mut ' if inner['is_mutable'] else ''}{inside(inner['type'])}"
    if name == "slice":
        return f"[{inside(inner)}]"
    if name == "array":
        return f"[{inside(inner['type'])}; {inner['len']}]"
    if name == "tuple":
        return f"({', '.join(map(inside, inner))})"
    return f"{UNKNOWN}{name} */"


def write(document, by_hand, out):
    with open(by_hand, encoding="utf-8") as file:
        written = set(re.findall(r'entry!\(\s*"([^"]+)"', file.read()))
    api = Api(document)
    lines = [line for name, line in sorted(api.entries.items()) if name not in written | api.by_hand]
    text = "".join(f"{line}\n" for line in lines)
    # An equal file keeps its date, and what was built of it.
    if not os.path.exists(out) or open(out, encoding="utf-8").read() != text:
        with open(out, "w", encoding="utf-8") as file:
            file.write(text)
    return 0


def check(document, symbols, exceptions):
    api = Api(document)
    with open(symbols, encoding="utf-8") as file:
        built = set(file.read().split())
    with open(exceptions, encoding="utf-8") as file:
        lines = [line.split(maxsplit=1) for line in file if line.strip() and not line.startswith("#")]
    excepted = {line[0] for line in lines}
    faults = [f"{line[0]}: an exception without a reason" for line in lines if len(line) < 2]
    missing = sorted(set(api.entries) - built - excepted)
    if missing:
        faults.append("public functions without an entry; complete these lines and add them to by_hand.rs:")
        faults += [f"    {api.entries[name]}" for name in missing]
    for name in sorted((built | excepted) - set(api.entries)):
        faults.append(f"{name}: an entry or an exception, but no public function of the core")
    for name in sorted(built & excepted):
        faults.append(f"{name}: has an entry, so it needs no exception")
    for fault in faults:
        print(fault)
    if not faults:
        impls = sum(".for." in name for name in api.entries)
        print(f"{len(api.entries) - impls} public functions, {impls} trait impls, {len(excepted)} exceptions")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit({"write": write, "check": check}[sys.argv[1]](*sys.argv[2:]))
