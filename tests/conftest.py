"""What holds for every test."""

from hypothesis import settings

# A test is never timed: on a busy machine it would fail for no reason. The benchmarks measure.
settings.register_profile("noonstone", deadline=None)
settings.load_profile("noonstone")
