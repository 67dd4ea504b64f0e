"""Ranges that are said to hold nine in ten, asked in a world that the engine does not know."""

import numpy as np
import pytest

from tests.reference.coverage import ANY_SHARE, ASKED, missed, misses, shade
from tests.reference.lamp_world import RIGHT, WRONG


@pytest.mark.slow
@pytest.mark.parametrize("name", ASKED)
def test_nine_in_ten_is_nine_in_ten(name: str) -> None:
    below, above = misses(name, RIGHT)
    assert 0.87 <= 1.0 - below - above <= 0.93
    # Neither side hides the other: each misses at most one in ten.
    assert below <= 0.10
    assert above <= 0.10


@pytest.mark.parametrize(("name", "most"), [("in range", 0.98), ("in shade", 0.95)])
def test_a_share_that_is_often_nothing_is_held_more_often(name: str, most: float) -> None:
    """Of seven in ten keepers no place is in range, and no range can hold fewer than those."""
    below, above = missed(ANY_SHARE[name], RIGHT, 500)
    assert 0.90 <= 1.0 - below - above <= most


def test_a_meter_that_reads_too_high_is_in_no_range() -> None:
    """What all readings share cannot be seen in them; the table of coverage tells how much."""
    (world,) = [w for w in WRONG if "hand meters" in w.name]
    below, above = misses("meter", world, share=0.3)
    assert below > 0.3
    assert above < 0.02


def test_rows_of_another_length_are_borne() -> None:
    for world in (w for w in WRONG if w.name.startswith("rows")):
        below, above = misses("distance", world, share=0.3)
        assert 1.0 - below - above > 0.82


def test_shade_that_is_called_likely_is_there_about_so_often() -> None:
    """Of 120 keepers with a tube of known length, by the chance that they were told."""
    rng = np.random.default_rng(20261128)
    told, there = np.array([shade(RIGHT, rng) for _ in range(120)], dtype=float).T
    assert abs(np.mean(told) - np.mean(there)) < 0.06
    assert np.mean(there[told >= 0.95]) > 0.95
    assert np.mean(there[told <= 0.3]) < 0.3
    between = (told > 0.3) & (told < 0.95)
    assert 0.3 < np.mean(there[between]) < 0.9
