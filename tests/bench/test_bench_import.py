"""The largest import that is allowed, while another keeper saves, on both databases.

Run on request: python -m pytest tests/bench -s
"""

import asyncio
from pathlib import Path

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from bot.database.store import Store, open_store_at
from bot.operating.stalls import Stalls, watch_stalls
from tests.bot.database.databases import KINDS, fresh_postgresql, fresh_sqlite
from tests.bot.database.kept_values import NOW
from tests.bot.database.large import LARGE

FERN, MOSS = 4_000_000_000_000_000_001, 4_000_000_000_000_000_002


async def _measured(store: Store) -> tuple[float, float, float]:
    """Return the seconds of the import, of the longest save meanwhile, and of a stall."""
    clock = asyncio.get_running_loop().time
    stalls, longest_s = Stalls(), 0.0
    watching = asyncio.create_task(watch_stalls(stalls))
    await store.enclosures.put(MOSS, "Willow", {"distance_m": 0.4})
    started = clock()
    importing = asyncio.create_task(store.exchange.take_keeper(FERN, LARGE, NOW))
    while not importing.done():
        asked = clock()
        await store.enclosures.put(MOSS, "Willow", {"distance_m": 0.4})
        longest_s = max(longest_s, clock() - asked)
    await importing
    taken_s = clock() - started
    watching.cancel()
    return taken_s, longest_s, stalls.longest_s(clock())


async def _on(kind: str, folder: Path) -> tuple[float, float, float]:
    if kind == "sqlite":
        store = await open_store_at(fresh_sqlite(folder))
        measured = await _measured(store)
        await store.close()
        return measured
    async with fresh_postgresql("import") as url:
        store = await open_store_at(url)
        measured = await _measured(store)
        await store.close()
        return measured


@pytest.mark.parametrize("kind", KINDS)
def test_import(kind: str, benchmark: BenchmarkFixture, tmp_path: Path) -> None:
    taken_s, longest_s, stall_s = benchmark.pedantic(  # type: ignore[no-untyped-call]
        lambda: asyncio.run(_on(kind, tmp_path)), rounds=1
    )
    benchmark.extra_info |= {
        "import_ms": 1000.0 * taken_s,
        "save_ms": 1000.0 * longest_s,
        "stall_ms": 1000.0 * stall_s,
    }
    print(
        f"\n{kind}: import {taken_s:.2f} s, longest save meanwhile {longest_s:.2f} s, "
        f"longest stall {1000.0 * stall_s:.0f} ms"
    )
