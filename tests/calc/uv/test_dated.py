"""Dated readings at one distance, and what no tube does among them."""

from math import exp

import numpy as np
import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from calc.uv.dated import DatedReading, Odd, at_one_place, findings_of
from calc.uv.decline import Trend, decline_of
from calc.uv.lamp import Fixture, Lamp, of_length, uvi_at
from calc.uv.lengths import length_of_tube
from calc.uv.screen import NoScreen
from tests.some import some

LAMP = Lamp(12.0, Fixture.POLISHED)


def odd(*read: tuple[float, float]) -> list[tuple[Odd, tuple[int, ...], bool]]:
    found = findings_of([DatedReading(day, uvi) for day, uvi in read])
    return [(finding.odd, finding.at, finding.set_aside) for finding in found]


@pytest.mark.parametrize(
    ("read", "told"),
    [
        ([(0, 4.4), (7, 2.1)], [(Odd.FADE, (0, 1), False)]),
        ([(0, 4.4), (60, 5.9)], [(Odd.RISE, (0, 1), False)]),
        ([(0, 4.4), (0, 6.2)], [(Odd.SAME_DAY, (0, 1), False)]),
        ([(0, 4.4), (30, 41.0)], [(Odd.TENFOLD, (0, 1), False)]),
        ([(0, 4.4), (30, 41.0), (60, 4.2)], [(Odd.TENFOLD, (1,), True)]),
        ([(0, 4.4), (30, 4.3), (60, 41.0)], [(Odd.TENFOLD, (2,), False)]),
        ([(0, 4.4), (30, 2.2), (60, 4.3), (90, 4.2)], [(Odd.STRAY, (1,), True)]),
        ([(0, 4.4), (30, 4.3), (60, 7.5), (90, 4.2), (120, 4.1)], [(Odd.STRAY, (2,), True)]),
    ],
)
def test_what_no_tube_does_is_found(
    read: list[tuple[float, float]], told: list[tuple[Odd, tuple[int, ...], bool]]
) -> None:
    assert odd(*read) == told


@pytest.mark.parametrize(
    "read",
    [
        [(0, 4.4)],
        [(0, 4.4), (0, 4.7)],
        [(0, 4.4), (60, 4.7)],
        [(0, 4.4), (180, 2.6)],
        [(0, 5.6), (9, 4.4), (60, 4.3), (120, 4.2), (180, 4.1)],
        [(0, 0.3), (60, 0.2)],
    ],
)
def test_what_a_tube_and_a_hand_do_is_not_odd(read: list[tuple[float, float]]) -> None:
    assert odd(*read) == []


@given(st.floats(0.0, 0.0019), st.integers(2, 12), st.integers(0, 2**32 - 1))
@settings(max_examples=some(60), deadline=None)
def test_a_tube_that_fades_as_published_is_never_odd(rate: float, count: int, seed: int) -> None:
    days = np.sort(np.random.default_rng(seed).uniform(0.0, 400.0, count))
    assert odd(*((float(d), 5.0 * exp(-rate * float(d))) for d in days)) == []


def test_good_readings_are_seldom_called_odd() -> None:
    random = np.random.default_rng(8)
    called = 0
    for _ in range(400):
        days = np.sort(random.uniform(0.0, 300.0, 8))
        seen = 5.0 * np.exp(-0.001 * days + random.normal(0.0, 0.07, 8))
        called += bool(odd(*zip(days.tolist(), seen.tolist(), strict=True)))
    assert called / 400 < 0.08


@given(
    st.floats(0.001, 0.006),
    st.lists(st.floats(0.2, 0.8), min_size=4, max_size=8),
    st.floats(0.2, 0.8),
)
@example(rate=0.00390625, distances=[0.5, 0.5, 0.5, 0.4272068353056679], place=0.427734375)
@settings(max_examples=some(60), deadline=None)
def test_readings_at_many_distances_fade_as_at_one(
    rate: float, distances: list[float], place: float
) -> None:
    days = [40.0 * i for i in range(len(distances))]
    spread = [
        DatedReading(d, max(0.05, uvi_at(LAMP, at, NoScreen()) * exp(-rate * d)), at)
        for d, at in zip(days, distances, strict=True)
    ]
    there = at_one_place(spread, LAMP, place)
    here = uvi_at(LAMP, place, NoScreen())
    for reading in there:
        if reading.uvi > 0.05:
            assert reading.uvi == pytest.approx(here * exp(-rate * reading.day), rel=1e-9)
    found = decline_of(there, 0.5)
    if found.month_factor and found.trend is Trend.FALLING:
        assert found.month_factor.best == pytest.approx(exp(-30.0 * rate), rel=1e-6)


def test_a_reading_that_is_moved_is_doubted_by_tape_and_untold_length() -> None:
    untold = of_length(LAMP, length_of_tube())
    moved = [
        at_one_place([DatedReading(0.0, 4.0, 0.3)], lamp, to)[0].moved
        for lamp in (LAMP, untold)
        for to in (0.3, 0.35, 0.6)
    ]
    assert moved[0] == moved[3] == 0.0
    assert min(moved[1:3]) > 0.02
    assert moved[1] < moved[4] < moved[5]


def test_a_reading_without_a_distance_stays_as_it_is() -> None:
    plain = DatedReading(0.0, 4.0)
    assert at_one_place([plain], LAMP, 0.5) == (plain,)


def test_doubt_of_the_move_widens_what_is_said() -> None:
    days = (0.0, 50.0, 100.0, 150.0)
    plain = [DatedReading(d, 5.0 * exp(-0.003 * d)) for d in days]
    moved = [DatedReading(r.day, r.uvi, moved=0.1) for r in plain]
    narrow, wide = (decline_of(seen, 2.0).month_factor for seen in (plain, moved))
    assert narrow is not None
    assert wide is not None
    assert wide.high / wide.low > narrow.high / narrow.low
    assert wide.best == pytest.approx(narrow.best)
