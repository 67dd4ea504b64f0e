"""The documented ranges of days, lights and set-ups: both ends hold, beyond them it says why."""

from datetime import date
from zoneinfo import ZoneInfo

import numpy as np
import pytest

from calc.animals import animals
from calc.daylight import day, day_hours
from calc.heat.enclosure import Enclosure
from calc.setup.warmth import plan_warmth
from calc.timer import flat_times, month_plan
from calc.validity import OutsideModelError
from tests.calc.refused import Range, assert_ends_hold, assert_refused_beyond

MAY = date(2026, 5, 4)
LONDON = ZoneInfo("Europe/London")
DRAGON = animals()["bearded-dragon"]
RANGES = [
    Range(lambda x: day(x, MAY), "latitude", -90.0, 90.0, "degrees"),
    Range(lambda x: day(40.0, MAY, x), "longitude", -180.0, 180.0, "degrees"),
    Range(lambda x: day(40.0, date(int(x), 6, 1)), "year", 1900, 2100, "", step=1),
    Range(lambda x: month_plan(40.0, LONDON, int(x)), "year", 1900, 2100, "", step=1),
    Range(lambda x: month_plan(x, LONDON, 2026), "latitude", -90.0, 90.0, "degrees"),
    Range(flat_times, "hours of light", 1.0, 23.0, "h"),
    Range(
        lambda x: plan_warmth(DRAGON, Enclosure(1.2, 0.6, 0.6), 0.2, x),
        "room air",
        10.0,
        35.0,
        "degC",
    ),
]


@pytest.mark.parametrize("given", RANGES, ids=str)
def test_the_documented_ends_hold(given: Range) -> None:
    assert_ends_hold(given)


@pytest.mark.parametrize("given", RANGES, ids=str)
def test_beyond_the_ends_the_refusal_tells_quantity_value_range_and_unit(given: Range) -> None:
    assert_refused_beyond(given)


@pytest.mark.parametrize(
    ("shortest", "longest", "name", "value", "low", "high"),
    [
        (0.9, 14.0, "shortest lights", 0.9, 1.0, 14.0),
        (12.0, 11.0, "shortest lights", 12.0, 1.0, 11.0),
        (1.0, 23.5, "longest lights", 23.5, 1.0, 23.0),
        (0.5, 0.9, "longest lights", 0.9, 1.0, 23.0),
    ],
)
def test_shortest_and_longest_lights_are_in_order_and_within_a_day(
    shortest: float, longest: float, name: str, value: float, low: float, high: float
) -> None:
    with pytest.raises(OutsideModelError) as caught:
        month_plan(51.5, LONDON, 2026, shortest_h=shortest, longest_h=longest)
    error = caught.value
    assert (error.name, error.value, error.unit) == (name, value, "h")
    assert (error.low, error.high) == (low, high)


def test_the_year_farthest_away_is_the_one_told() -> None:
    dates = np.array([date(2026, 5, 4), date(2300, 1, 1), date(1850, 1, 1)], "datetime64[D]")
    with pytest.raises(OutsideModelError) as caught:
        day_hours(40.0, dates)
    assert caught.value.value == 2300


def test_a_refusal_is_told_in_one_line() -> None:
    error = OutsideModelError("distance", 0.01, 0.05, 3.0, "m")
    assert str(error) == "distance is 0.01 m; the model holds from 0.05 up to 3"
