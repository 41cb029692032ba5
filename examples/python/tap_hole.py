"""Plans one tapped hole of the demo shop in one call and prints the plan."""

import threadcalc

job = threadcalc.Job(
    thread="7/16-14 UNC-2B",
    rpm=650,
    unit="mm",
    mode="per_minute",
    decimals=3,
    hole="blind",
    full_thread_depth_mm=20,
    tap="cut",
    dialect="rs274ngc",
)
print(threadcalc.plan(job), end="")
