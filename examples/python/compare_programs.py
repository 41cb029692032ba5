"""Says in which tapped holes two versions of a program differ, before the new one runs.

The valve cover of the demo shop again: S and F fit each other, the taps stop higher, and there is a fourth hole.
"""

import pathlib

from threadcalc import compare

shop = pathlib.Path(__file__).parent.parent / "shop"
print(compare(shop / "valve_cover.nc", shop / "valve_cover_2.nc", dialect="rs274ngc"))
