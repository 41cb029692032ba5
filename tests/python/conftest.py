"""Settings of every property test: the same examples on every run, no clock, nothing kept on disk."""

from hypothesis import settings

settings.register_profile("threadcalc", deadline=None, derandomize=True, database=None, max_examples=200)
settings.load_profile("threadcalc")
