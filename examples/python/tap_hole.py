"""Plans one tapped hole in one call and prints the plan.

A clamp-bar hole in the eight-valve body of the demo shop, which makes irrigation manifolds.
"""

from threadcalc import plan

print(
    plan(
        {
            "thread": "7/16-14 UNC-2B",
            "rpm": 650,
            "unit": "mm",
            "mode": "per_minute",
            "decimals": 3,
            "hole": "blind",
            "full_thread_depth_mm": 20,
            "tap": "cut",
            "dialect": "rs274ngc",
        }
    ),
    end="",
)
