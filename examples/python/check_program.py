"""Checks a program that is already in the control, before anybody presses cycle start.

The valve cover of the demo shop, which makes irrigation manifolds: S was changed at the machine.
"""

import pathlib

from threadcalc import Dialect, check

MILL = Dialect(
    "rs274ngc",
    name="mill-1",
    feed_per_revolution="G95",
    override_locked_in_cycle=True,
    unlisted_codes_alarm=False,
)

program = pathlib.Path(__file__).parent.parent / "shop" / "valve_cover.nc"
report = check(program, dialect=MILL)
for hole in report.tapped_holes:
    print(f"line {hole.line}: lead {float(hole.lead_mm):g} mm, {hole.thread}")
print(report)
