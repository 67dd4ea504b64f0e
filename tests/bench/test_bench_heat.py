"""How long the questions about heat take, warm, and the engine's pieces beside them.

Run on request: python -m pytest tests/bench
"""

from zoneinfo import ZoneInfo

import ephem
import ht
import numpy as np
import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from bot.ask import ask
from bot.commands import command_named
from bot.preferences import Preferences
from bot.questions.general.help import TOPICS, Topic
from calc.daylight import day_hours
from calc.heat.convection import nusselt_vertical_churchill
from calc.heat.first_wattage import LampShape, first_wattage
from calc.heat.surface import Slab, steady_surface
from calc.timer import month_plan

LINES = [c.examples[0] for name in TOPICS[Topic.WARMTH] if (c := command_named(name))]


@pytest.mark.parametrize("line", LINES)
def test_ask(line: str, benchmark: BenchmarkFixture) -> None:
    preferences = Preferences()
    assert benchmark(lambda: ask(line, preferences)).status == "ok"


def test_ask_seasons(benchmark: BenchmarkFixture) -> None:
    line = "hours animal:corn snake latitude:home zone:America/Chicago year:2026"
    assert benchmark(lambda: ask(line, Preferences())).table


def test_surface_balance(benchmark: BenchmarkFixture) -> None:
    assert benchmark(lambda: steady_surface(Slab(), 218.5, 22.0)) > 39.0


def test_first_wattage(benchmark: BenchmarkFixture) -> None:
    assert benchmark(lambda: first_wattage(LampShape.FLOOD, 21.0, 39.4, 0.3)).buy_w


def test_vertical_plate(benchmark: BenchmarkFixture) -> None:
    assert benchmark(lambda: nusselt_vertical_churchill(1.8e9, 0.69)) > 140.0


def test_vertical_plate_by_ht(benchmark: BenchmarkFixture) -> None:
    plate = ht.conv_free_immersed.Nu_vertical_plate_Churchill
    assert benchmark(lambda: plate(0.69, 2.63e9)) > 140.0


def test_a_year_of_days(benchmark: BenchmarkFixture) -> None:
    days = np.arange("2026-01-01", "2027-01-01", dtype="datetime64[D]")
    assert benchmark(lambda: day_hours(51.5, days)).size == 365


def test_one_sunrise_by_ephem(benchmark: BenchmarkFixture) -> None:
    observer = ephem.Observer()
    observer.lat, observer.lon, observer.date = "51.5", "0", "2026/6/21 12:00"
    sun = ephem.Sun()
    assert benchmark(lambda: observer.previous_rising(sun, use_center=True))


def test_month_plan(benchmark: BenchmarkFixture) -> None:
    zone = ZoneInfo("America/Chicago")
    assert len(benchmark(lambda: month_plan(32.5, zone, 2026))) == 12
