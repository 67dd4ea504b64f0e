"""A year of two groups, with one of two processes killed each week: nothing lost, nothing twice.

Run on request: pytest tests/bench/test_bench_year.py -s -k "three weeks" (or quarter, or "a year").
"""

import asyncio
import time
from collections import Counter
from collections.abc import Mapping
from datetime import UTC, datetime, timedelta
from pathlib import Path
from statistics import median

import numpy as np
import pytest
from pytest_benchmark.fixture import BenchmarkFixture
from sqlalchemy import URL

from bot.database.store import open_store_at
from bot.language.quantities import read_length
from bot.pooled import reads_of
from bot.questions.uv.length_asked import lit_length
from calc.quantities import Quantity
from calc.uv.lamp import Fixture, Lamp, uvi_at
from calc.uv.pool import prior_of_age
from calc.uv.pool_read import Pooled, by_class
from calc.uv.screen import NoScreen
from tests.bench.year import GROUPS, Size, Week, Year
from tests.bot.database.databases import fresh_postgresql
from tests.discord.cast import Person
from tests.discord.saving import messages_to
from tests.discord.world import World

SIZES = {
    "three weeks": Size(keepers=40, questions=150, readings=60, offered=30, reminded=12, weeks=3),
    "a quarter": Size(
        keepers=2000, questions=7500, readings=2500, offered=260, reminded=130, weeks=13
    ),
    "a year": Size(
        keepers=2000, questions=30_000, readings=10_000, offered=1040, reminded=520, weeks=52
    ),
}
_SEED = 20_261_129
_Class = tuple[float, Fixture]
# Between the first quarter and the last one.
_MOST_SLOWER, _MOST_MORE_MEMORY = 1.5, 1.3


async def _lived(url: URL, folder: Path, size: Size) -> tuple[Year, list[Week]]:
    world = World(GROUPS)
    await world.open()
    try:
        year = Year(world, folder, size, _SEED)
        weeks = await year.through()
        await _nothing_lost_or_doubled(url, year, world)
    finally:
        await world.close()
    return year, weeks


async def _nothing_lost_or_doubled(url: URL, year: Year, world: World) -> None:
    log = year.log
    store = await open_store_at(url)
    for who, read in log.readings.items():
        (box,) = await store.enclosures.all(who.id)
        kept = [(r.day, r.value) for r in box.readings if r.of is Quantity.UVI]
        assert len(kept) == len(set(kept))
        assert dict(kept) == read
    assert all(len(messages_to(world, who)) == 1 for who in log.reminded)
    last = datetime.now(UTC).date() + timedelta(weeks=year.size.weeks)
    for group in GROUPS:
        told = Counter(_offered_in(year, group.id))
        kept_here = await store.pool.of_group(group.id)
        assert Counter((one.reading.day, one.reading.uvi) for one in kept_here) == told
        _told_as_by_numpy(year, group.id, by_class(list(reads_of(kept_here, last).values())))
    await store.close()


def _told_as_by_numpy(year: Year, group: int, found: Mapping[_Class, Pooled]) -> None:
    """Hold counts and medians of each class against those of the log alone."""
    logs: dict[_Class, dict[Person, list[float]]] = {}
    for who, given in year.log.offered.items():
        box = year.log.boxes[who]
        if year.group_of(who).id != group:
            continue
        percent = float(box["tube"].rstrip("%"))
        lit_m = lit_length(read_length(box["length"]))
        lamp = Lamp(percent, Fixture.POLISHED, lit_m)
        inches = float(box["distance"].removesuffix("in"))
        best = float(uvi_at(lamp, 0.0254 * inches, NoScreen()))
        read = logs.setdefault((percent, Fixture.POLISHED), {}).setdefault(who, [])
        read += [float(np.log(value / best)) for _, value in given]
    assert found.keys() == logs.keys()
    for key, by_keeper in logs.items():
        middle = np.exp(np.median([np.median(values) for values in by_keeper.values()]))
        assert found[key].values.keepers == len(by_keeper)
        assert found[key].values.readings == sum(map(len, by_keeper.values()))
        # The age of a tube that was not told takes the same from each.
        aged = np.exp(prior_of_age(Lamp(key[0], key[1], 0.8)).mean)
        assert found[key].middle * aged == pytest.approx(float(middle), rel=1e-9)


def _offered_in(year: Year, group: int) -> list[tuple[object, float]]:
    def is_here(who: Person) -> bool:
        return year.group_of(who).id == group

    return [each for who, given in year.log.offered.items() if is_here(who) for each in given]


@pytest.mark.parametrize("long", SIZES)
def test_nothing_is_lost_and_nothing_comes_twice(
    long: str, benchmark: BenchmarkFixture, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    async def run() -> tuple[Year, list[Week]]:
        async with fresh_postgresql("year") as url:
            told = url.render_as_string(hide_password=False)
            monkeypatch.setenv("NOONSTONE_DATABASE_URL", told)
            return await _lived(url, tmp_path / "data", SIZES[long])

    began = time.monotonic()
    lived = benchmark.pedantic(lambda: asyncio.run(run()), rounds=1)  # type: ignore[no-untyped-call]
    year, weeks = lived
    quarter = max(1, len(weeks) // 4)
    first, last = weeks[:quarter], weeks[-quarter:]
    slower = _middle_s(last) / _middle_s(first)
    more = _held(last) / _held(first)
    print(
        f"\n{long}: {year.log.questions} questions, "
        f"{sum(map(len, year.log.readings.values()))} readings, "
        f"{sum(map(len, year.log.offered.values()))} offered "
        f"and {year.log.refused} refused, {len(year.log.reminded)} reminded, "
        f"{len(weeks)} kills, {year.log.again} asked again, in {time.monotonic() - began:.0f} s; "
        f"answered in {1000 * _middle_s(first):.0f} then {1000 * _middle_s(last):.0f} ms, "
        f"memory × {more:.2f}"
    )
    assert slower <= _MOST_SLOWER or len(weeks) < 12
    assert more <= _MOST_MORE_MEMORY


def _middle_s(weeks: list[Week]) -> float:
    return median(each for week in weeks for each in week.answered_s)


def _held(weeks: list[Week]) -> float:
    return median(each for week in weeks for each in week.held)
