"""How many examples a property is tried with: some in each run, all of them in a full one."""

import os
from collections.abc import Iterable, Sequence
from itertools import product
from typing import Any

import pytest

__all__ = ["FULL", "crossed", "some", "some_of"]

FULL = "NOONSTONE_TEST_FULL" in os.environ
_SHARE, _FEWEST = 5, 5


def some(examples: int) -> int:
    """Return how many of so many examples are tried in this run."""
    return examples if FULL else max(_FEWEST, examples // _SHARE)


def some_of(values: Iterable[Any], share: int = _SHARE) -> list[Any]:
    """Return each so manieth case for this run, spread over all of them; in a full one every one.

    The cases of a full run bear its mark, since nothing else is run in it.
    """
    every = list(values)
    return [pytest.param(one, marks=pytest.mark.full) for one in every] if FULL else every[::share]


def crossed(ones: Sequence[Any], others: Sequence[Any], share: int = _SHARE) -> list[Any]:
    """Return pairs of which a run tries a part with each of both; a full one tries every pair."""
    every = product(enumerate(ones), enumerate(others))
    kept = [(one, other) for (i, one), (j, other) in every if FULL or (i + j) % share == 0]
    return [pytest.param(*pair, marks=pytest.mark.full) for pair in kept] if FULL else kept
