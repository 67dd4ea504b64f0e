"""A long day in short: a hundred thousand questions, and a crowd that wants pictures meanwhile.

Run on request: python -m pytest tests/bench -s
"""

import asyncio
import random
from itertools import count
from pathlib import Path

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from bot.commands import COMMANDS
from bot.fronts.discord.question import Question
from tests.bench.crowd import Crowd, Given, crowd, noonstone, percentiles, resident_bytes
from tests.discord.answers import Answer
from tests.discord.test_watching import fetched, free_port

_TUBE = {"tube": "12%", "reflector": "polished", "animal": "bearded dragon"}
_QUESTIONS, _BATCH, _SAMPLE_EVERY, _WARM_UP = 100_000, 50, 5_000, 20_000
# Longer than the minute whose longest stall is told, so that the start is no part of it.
_CROWD_S, _BETWEEN_S, _PICTURE_EVERY = 75.0, 0.02, 25
_numbers = count(1)


def _asked_all_day() -> list[tuple[str, Given]]:
    read = (Question.read(line) for command in COMMANDS for line in command.examples)
    return [(question.command, question.given) for question in read if question is not None]


def _of_a_day(known: list[tuple[str, Given]], chance: random.Random) -> tuple[str, Given]:
    """Return a question: mostly one of the usual ones, at times a new one, at times nonsense."""
    dice = chance.random()
    if dice < 0.7:
        return chance.choice(known)
    if dice < 0.95:
        screen = f"blocks {10 + next(_numbers) / 10_000:.4f}%"
        return "distance", {**_TUBE, "screen": screen}
    return "distance", {**_TUBE, "screen": f"banana {next(_numbers)}"}


async def _soaked(folder: Path) -> list[int]:
    """Return the memory that the bot held, every so many questions."""
    known, chance = _asked_all_day(), random.Random(1)
    held: list[int] = []
    async with crowd(noonstone(folder)) as asked:
        for done in range(0, _QUESTIONS, _BATCH):
            if done % _SAMPLE_EVERY == 0:
                held.append(resident_bytes(asked.process))
            batch = (asked.begun(*_of_a_day(known, chance)) for _ in range(_BATCH))
            await asyncio.gather(*batch)
            asked.world.platform.forget()
        held.append(resident_bytes(asked.process))
    return held


def test_memory_over_a_hundred_thousand_questions(
    benchmark: BenchmarkFixture, tmp_path: Path
) -> None:
    held = benchmark.pedantic(  # type: ignore[no-untyped-call]
        lambda: asyncio.run(_soaked(tmp_path)), rounds=1
    )
    warm, last = held[_WARM_UP // _SAMPLE_EVERY], held[-1]
    benchmark.extra_info |= {"warm_mb": warm / 1e6, "last_mb": last / 1e6, "ratio": last / warm}
    print(f"\nmemory in MB, every {_SAMPLE_EVERY}: {' '.join(f'{b / 1e6:.0f}' for b in held)}")
    assert max(held[_WARM_UP // _SAMPLE_EVERY :]) <= 1.05 * warm


async def _with_pictures(folder: Path, port: int) -> tuple[list[float], float, int]:
    """Return the times to acknowledge, the longest stall and the number of pictures."""
    known, chance = _asked_all_day(), random.Random(2)
    times: list[float] = []
    shown = 0

    async def ask(asked: Crowd) -> None:
        exchange = await asked.begun(*_of_a_day(known, chance))
        assert exchange.answered is not None
        times.append(exchange.answered - exchange.born)

    async def look(asked: Crowd) -> None:
        nonlocal shown
        screen = f"blocks {10 + next(_numbers) / 10_000:.4f}%"
        exchange = await asked.begun("distance", {**_TUBE, "screen": screen})
        answer = Answer(asked.world.platform, exchange)
        pressed = await asked.world.press(answer, "Picture", user=exchange.person)
        assert pressed.exchange.answered is not None
        times.append(pressed.exchange.answered - pressed.exchange.born)
        shown += bool(pressed.post.files)

    async with crowd(noonstone(folder)) as asked:
        clock = asyncio.get_running_loop().time
        until, running = clock() + _CROWD_S, set[asyncio.Task[None]]()
        while clock() < until:
            await asyncio.sleep(_BETWEEN_S)
            what = ask if next(_numbers) % _PICTURE_EVERY else look
            task = asyncio.create_task(what(asked))
            running.add(task)
            task.add_done_callback(running.discard)
        await asyncio.gather(*running)
        _, told = await fetched(port, "/metrics")
    stall = next(line for line in told.splitlines() if line.startswith("noonstone_loop_stall"))
    return times, float(stall.split()[1]), shown


def test_acknowledged_while_pictures_are_drawn(
    benchmark: BenchmarkFixture, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    port = free_port()
    monkeypatch.setenv("NOONSTONE_HEALTH_PORT", str(port))
    times, stall_s, shown = benchmark.pedantic(  # type: ignore[no-untyped-call]
        lambda: asyncio.run(_with_pictures(tmp_path, port)), rounds=1
    )
    p50, p99 = percentiles(times)
    benchmark.extra_info |= {"p50_ms": 1000 * p50, "p99_ms": 1000 * p99, "stall_ms": 1000 * stall_s}
    print(
        f"\n{len(times)} questions, {shown} pictures: p50 {1000 * p50:.1f} ms, "
        f"p99 {1000 * p99:.1f} ms, longest {1000 * max(times):.0f} ms; "
        f"longest stall of the loop {1000 * stall_s:.0f} ms"
    )
    assert p99 < 0.25
