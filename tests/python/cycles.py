"""The operation of the table of tapping cycles."""

from __future__ import annotations

import json

import threadcalc as tc
from operations import given, thread
from table import Cells


def dialect(row: Cells) -> dict[str, tc.Dialect]:
    """A name of the dialect's, then its fields as ``key=value``."""
    if not row["dialect"]:
        return {}
    base, *fields = row["dialect"].split(" ")
    made = tc.Dialect(base, **dict(field.split("=") for field in fields))
    # Whatever way it takes, it is the same dialect.
    assert tc.Dialect(made.to_dict()) == tc.Dialect(**json.loads(made.to_json())) == made
    assert tc.Job(dialect=made) == tc.Job(dialect=made.to_dict())
    return {"dialect": made}


def cycle(row: Cells) -> dict[str, object]:
    cut = thread(row)
    own = dialect(row)
    # No feed can be made for a speed of 0: the cycle itself is asked about it, with the feed of another.
    speed = {"rpm": "1" if row["rpm"] == "0" else row["rpm"]} if row["mode"] == "per_minute" else {}
    made = tc.feed(cut, **given(row, "unit", "mode"), **speed, decimals=int(row["decimals"]))
    numbers = given(row, "rpm", "depth_mm", "r_plane_mm", "peck_mm", "dwell_s", "retract_factor")
    found = tc.cycle(cut, made, **own, **numbers, **given(row, "holder", "return_to"))
    assert found.words == " ".join(found.blocks).split()
    assert (found.refused is None) == bool(found.words)
    return {
        "blocks": ["; ".join(found.blocks)],
        "restore": found.restore,
        "refused": [found.refused.id if found.refused else ""],
        "reason": [found.refused.suggestion if found.refused else ""],
    }


OPERATIONS = (cycle,)
