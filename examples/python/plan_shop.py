"""Plans the ten holes of the demo shop, `examples/shop/jobs.json`, and prints every plan.

A job is what its machine says with what the hole says on top of it.
"""

import json
import pathlib

from threadcalc import plan

SHOP = json.loads((pathlib.Path(__file__).parent.parent / "shop" / "jobs.json").read_text())

for number, entry in enumerate(SHOP["jobs"], 1):
    print(f"=== {number} of {len(SHOP['jobs'])}: {entry['title']} ({entry['machine']})")
    print(plan({**SHOP["machines"][entry["machine"]], **entry["job"]}))
