"""How long hostile text keeps the bot busy: each input on its own, the slowest told.

An input counts with the least processor time of three tries, so that a busy machine is not taken
for a slow bot. The aim is 50 ms at most. Run on request: python -m pytest tests/bench
"""

import random
import time
from collections.abc import Iterator
from statistics import quantiles

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from bot.questions.setup.told import heard_in
from tests.bot.language.test_hearing_any_text import FIGURES, JOINTS, PHRASES
from tests.bot.language.test_hostile import ENDLESS, HOSTILE
from tests.fuzz.files import FILES
from tests.fuzz.targets import TARGETS
from tests.fuzz.test_strangers import WORDS

_LONGEST = 2000
_SALADS = 400
_TRIES = 3


def hostile_inputs() -> Iterator[str]:
    """Yield the same inputs every time: the known ones, long salads, one thing again and again."""
    yield from (*HOSTILE, *ENDLESS, *WORDS, *FILES)
    chance = random.Random(1)
    pieces = [*WORDS, *PHRASES, *FIGURES, *JOINTS]
    for _ in range(_SALADS):
        salad = "".join(chance.choices(pieces, k=chance.randint(1, 400)))
        yield salad[:_LONGEST]
    for piece in (*FIGURES, *chance.sample(PHRASES, 100)):
        for joint in (" ", ""):
            yield ((piece + joint) * _LONGEST)[:_LONGEST]


def least_s(name: str, number: int, text: str) -> float:
    """Return the least processor time of a few tries that a target took for an input."""
    times = []
    for _ in range(_TRIES):
        # What was heard a moment ago is remembered, and the next asker says something else.
        heard_in.cache_clear()
        started = time.thread_time()
        TARGETS[name](number, text)
        times.append(time.thread_time() - started)
    return min(times)


@pytest.mark.parametrize("name", [name for name in TARGETS if name not in ("page", "wire", "pool")])
def test_hostile_text(name: str, benchmark: BenchmarkFixture) -> None:
    inputs = list(enumerate(hostile_inputs()))
    for number, text in inputs[:50]:
        TARGETS[name](number, text)
    times = benchmark.pedantic(  # type: ignore[no-untyped-call]
        lambda: [(least_s(name, number, text), text) for number, text in inputs], rounds=1
    )
    slowest_s, slowest = max(times)
    cuts = quantiles([taken for taken, _ in times], n=100)
    benchmark.extra_info |= {
        "inputs": len(times),
        "p50_ms": 1000 * cuts[49],
        "p99_ms": 1000 * cuts[98],
        "max_ms": 1000 * slowest_s,
        "slowest": slowest[:60],
    }
    print(
        f"\n{name}: p99 {1000 * cuts[98]:.1f} ms, max {1000 * slowest_s:.1f} ms: {slowest[:60]!r}"
    )
