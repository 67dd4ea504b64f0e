"""How soon a question is acknowledged, beside a bare discord.py bot in the same run.

Both run as processes before a stand-in of Discord in this one; bare and ours are asked in turns,
so that a busy machine is equally busy for both. Run on request: python -m pytest tests/bench -s
"""

import asyncio
from collections.abc import Callable
from itertools import count
from pathlib import Path

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from tests.bench.crowd import Crowd, Given, bare_bot, crowd, noonstone, percentiles

_TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "animal": "bearded dragon"}
_numbers = count(1)


def _never_seen() -> Given:
    return {**_TUBE, "screen": f"blocks {10 + next(_numbers) / 1000:.3f}%"}


QUESTIONS: dict[str, tuple[str, Callable[[], Given]]] = {
    "distance, asked before": ("distance", lambda: _TUBE),
    "distance, never seen": ("distance", _never_seen),
    "convert, asked before": ("convert", lambda: {"value": "14in"}),
    "help": ("help", dict),
}
_WARM_UP, _IN_TURN, _AT_ONCE, _BATCHES = 50, 1000, 50, 40


async def _compared(
    folder: Path, name: str, given: Callable[[], Given], at_once: int, rounds: int
) -> tuple[list[float], list[float]]:
    """Return the times of the bare bot and of ours."""
    bare_s: list[float] = []
    ours_s: list[float] = []

    async def batch(asked: Crowd, name: str, given: Callable[[], Given]) -> list[float]:
        each = (asked.acknowledged_s(name, given()) for _ in range(at_once))
        return list(await asyncio.gather(*each))

    async with crowd(bare_bot) as bare, crowd(noonstone(folder)) as ours:
        for _ in range(_WARM_UP // at_once + 5):
            await batch(bare, "nothing", dict)
            await batch(ours, name, given)
        for _ in range(rounds):
            bare_s += await batch(bare, "nothing", dict)
            ours_s += await batch(ours, name, given)
    return bare_s, ours_s


@pytest.mark.parametrize("at_once", [1, _AT_ONCE], ids=["in turn", "50 at once"])
@pytest.mark.parametrize("question", QUESTIONS)
def test_acknowledged(
    question: str, at_once: int, benchmark: BenchmarkFixture, tmp_path: Path
) -> None:
    name, given = QUESTIONS[question]
    rounds = _IN_TURN if at_once == 1 else _BATCHES
    bare_s, ours_s = benchmark.pedantic(  # type: ignore[no-untyped-call]
        lambda: asyncio.run(_compared(tmp_path, name, given, at_once, rounds)), rounds=1
    )
    assert len(ours_s) == rounds * at_once
    (bare_p50, bare_p99), (p50, p99) = percentiles(bare_s), percentiles(ours_s)
    benchmark.extra_info |= {
        "bare_p50_ms": 1000 * bare_p50,
        "bare_p99_ms": 1000 * bare_p99,
        "p50_ms": 1000 * p50,
        "p99_ms": 1000 * p99,
        "p50_ratio": p50 / bare_p50,
        "p99_ratio": p99 / bare_p99,
    }
    print(
        f"\n{question}: p50 {1000 * p50:.2f} ms ({p50 / bare_p50:.2f} × bare), "
        f"p99 {1000 * p99:.2f} ms ({p99 / bare_p99:.2f} × bare)"
    )
