"""Messages of the kinds that were missed most: what was, ages, surfaces, lengths of tubes.

The hand that mends wrote them and mended on them: the floors are a rope and measure no other hand.
"""

import tomllib

import pytest

from tests.bot.language.hearing_score import SENTENCES
from tests.bot.language.marked import found_of

_KINDS: dict[str, list[str]] = tomllib.loads((SENTENCES / "kinds.toml").read_text(encoding="utf-8"))
# Kind: precision, recall, found or asked.
_LEAST = {
    "was_and_now": (0.97, 0.93, 0.97),
    "ages": (0.98, 0.92, 0.98),
    "surfaces": (0.97, 0.93, 0.95),
    "tube_lengths": (0.98, 0.94, 0.96),
    "only_spoken_of": (0.98, 0.89, 0.97),
    "wishes": (0.98, 0.76, 0.88),
    "whole": (0.98, 0.95, 0.98),
    "told_apart": (0.97, 0.90, 0.98),
}


@pytest.mark.parametrize("kind", _LEAST)
def test_the_kinds_that_were_missed_most_are_heard(kind: str) -> None:
    found = found_of(_KINDS[kind])
    told = (found.precision, found.recall, found.found_or_asked)
    assert all(one >= least for one, least in zip(told, _LEAST[kind], strict=True)), told
