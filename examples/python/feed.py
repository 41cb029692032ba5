"""The feed word of a thread, its error, and the speeds at which it is exact."""

from threadcalc import Thread, exact_speeds, feed

thread = Thread("5/8-11 UNC-2B")
word = feed(thread, 450, unit="inch", mode="per_minute", decimals=2)
print(f"{thread} at S450: {word.word}, lead error {word.lead_error}")
for speed in exact_speeds(thread, 450, unit="inch", decimals=2, count=3):
    print(f"exact at S{speed}")
