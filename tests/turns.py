"""Which tests a run of the whole suite takes: slow ones and long lists of cases by turns.

Whoever names a file, a folder or a test gets all of it, and a full run takes every turn at once.
"""

import os
import subprocess
from collections import defaultdict
from collections.abc import Iterable, Sequence
from math import ceil
from pathlib import Path
from typing import NamedTuple
from zlib import crc32

__all__ = ["ALWAYS", "TURN", "Case", "in_turn", "now", "turns"]

TURN = "NOONSTONE_TEST_TURN"
# What harm may come of, what is published and what holds the house is tried whole each time.
ALWAYS = (
    "tests/bot/dangers/",
    "tests/bot/test_limits_law.py",
    "tests/calc/test_limits.py",
    "tests/published/",
    "tests/test_",
)
_SHARE_OF_SLOW, _SHARE_OF_CASES, _FEWEST_CASES = 4, 6, 4


class Case(NamedTuple):
    """One test: its name, that of its function, and whether it takes about a second."""

    name: str
    function: str
    slow: bool


def now() -> int:
    """Return whose turn it is: the number of commits, so that a checkout fails as it failed."""
    told = os.environ.get(TURN)
    if told is not None:
        return int(told)
    counted = subprocess.run(
        ["git", "rev-list", "--count", "HEAD"],
        cwd=Path(__file__).parent,
        capture_output=True,
        text=True,
        check=False,
    )
    return int(counted.stdout) if counted.returncode == 0 else 0


def turns(cases: Iterable[Case]) -> list[list[set[str]]]:
    """Return the groups of tests that take turns, each as the names of its first turn, second, …

    All slow tests are one group, and so are the cases of each function that has more than a few.
    """
    slow: list[str] = []
    functions: dict[str, list[str]] = defaultdict(list)
    for case in cases:
        if case.slow:
            slow.append(case.name)
        elif not case.name.startswith(ALWAYS):
            functions[case.function].append(case.name)
    long = [names for names in functions.values() if len(names) > _FEWEST_CASES]
    groups = [_parted(names, _SHARE_OF_CASES, _FEWEST_CASES) for names in long]
    return [_parted(slow, _SHARE_OF_SLOW, 1), *groups] if slow else groups


def in_turn(groups: Sequence[Sequence[set[str]]], turn: int) -> tuple[set[str], set[str]]:
    """Return which of those that take turns are tried at one, and which are left to others."""
    tried = {name for group in groups for name in group[turn % len(group)]}
    return tried, {name for group in groups for part in group for name in part} - tried


def _parted(names: list[str], share: int, fewest: int) -> list[set[str]]:
    mixed = sorted(names, key=lambda name: (crc32(name.encode()), name))
    at_once = max(fewest, ceil(len(mixed) / share))
    return [set(mixed[first : first + at_once]) for first in range(0, len(mixed), at_once)]
