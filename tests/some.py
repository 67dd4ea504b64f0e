"""How many examples a property is tried with: some in each run, all of them in a full one."""

import os

__all__ = ["FULL", "some"]

FULL = "NOONSTONE_TEST_FULL" in os.environ
_SHARE, _FEWEST = 5, 5


def some(examples: int) -> int:
    """Return how many of so many examples are tried in this run."""
    return examples if FULL else max(_FEWEST, examples // _SHARE)
