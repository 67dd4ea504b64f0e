"""What ten thousand servers cost: memory, and the time until all of them are there.

Run on request: python -m pytest tests/bench -s
"""

import asyncio
from pathlib import Path

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from tests.bench.crowd import Crowd, crowd, noonstone, percentiles, resident_bytes
from tests.discord.cast import Server
from tests.discord.test_process import LAUNCH
from tests.discord.test_watching import fetched, free_port
from tests.discord.world import World

_SERVERS, _A_SHARD, _QUESTIONS = 10_000, 1_000, 300
# Channels and roles of a server: the least, and what a group of some hundred people has.
SIZES = {"lean": (0, 0), "usual": (40, 25)}
_WITHIN_S = 240.0
# Without the five seconds between two connections, which say nothing about the bot.
_HURRIED = LAUNCH.replace(
    "from bot.__main__",
    "async def at_once(*_, **__): pass\ndiscord.Client.before_identify_hook = at_once\n"
    "from bot.__main__",
)


def _servers(many: int, size: tuple[int, int]) -> list[Server]:
    channels, roles = size
    return [
        Server(
            (1_000_000 + n) << 22,
            f"Group number {n}",
            (2_000_000 + n) << 22,
            more_channels=channels,
            more_roles=roles,
        )
        for n in range(many)
    ]


async def _told(port: int, name: str) -> float:
    _, told = await fetched(port, "/metrics")
    return float(next(line for line in told.splitlines() if line.startswith(name)).split()[1])


async def _measured(
    folder: Path, port: int, many: int, size: tuple[int, int]
) -> tuple[int, float, list[float]]:
    """Return the memory held, the seconds until all are there, and times to acknowledge."""
    world = World(_servers(many, size))
    world.platform.shards_wanted = max(1, many // _A_SHARD)
    clock = asyncio.get_running_loop().time
    async with crowd(noonstone(folder / str(many), _HURRIED), world) as asked:
        started = clock()
        async with asyncio.timeout(_WITHIN_S):
            while await _told(port, "noonstone_servers") < many:
                await asyncio.sleep(0.2)
        taken_s = clock() - started
        times = await _asked(asked)
        return resident_bytes(asked.process), taken_s, times


async def _asked(asked: Crowd) -> list[float]:
    return [await asked.acknowledged_s("convert", {"value": "14in"}) for _ in range(_QUESTIONS)]


@pytest.mark.parametrize("size", SIZES)
def test_ten_thousand_servers(
    size: str, benchmark: BenchmarkFixture, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    port = free_port()
    monkeypatch.setenv("NOONSTONE_HEALTH_PORT", str(port))
    few, _, _ = asyncio.run(_measured(tmp_path, port, 1, SIZES[size]))
    many, taken_s, times = benchmark.pedantic(  # type: ignore[no-untyped-call]
        lambda: asyncio.run(_measured(tmp_path, port, _SERVERS, SIZES[size])), rounds=1
    )
    each = (many - few) / _SERVERS
    p50, p99 = percentiles(times)
    benchmark.extra_info |= {"bytes_a_server": each, "total_mb": many / 1e6, "ready_s": taken_s}
    print(
        f"\n{size}: {each / 1000:.1f} kB a server, {few / 1e6:.0f} MB with one, "
        f"{many / 1e6:.0f} MB with {_SERVERS}; all there after {taken_s:.0f} s; "
        f"p50 {1000 * p50:.2f} ms, p99 {1000 * p99:.2f} ms"
    )
