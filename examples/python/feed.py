"""The feed word of a thread, its error, and the speeds at which it is exact."""

from threadcalc import Thread, exact_speeds, feed

thread = Thread("5/8-11 UNC-2B")
rpm = 450
found = feed(thread, rpm, unit="inch", mode="per_minute", decimals=2)
print(f"{thread} at S{rpm}: {found}, lead error {found.lead_error}")
for speed in exact_speeds(thread, rpm, unit="inch", decimals=2, count=3):
    print(f"exact at S{speed}")
