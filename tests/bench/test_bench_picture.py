"""How long a picture takes, warm, and how long the event loop stalls while fifty are drawn.

Run on request: python -m pytest tests/bench -s
"""

import asyncio
import time
from statistics import quantiles

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from bot.ask import ask
from bot.drawing import Drawing, fingerprint
from bot.preferences import Preferences
from bot.render.picture import draw
from bot.serving.studio import Studio

LINES = {
    "a curve": "distance tube:12% reflector:polished screen:none animal:bearded dragon",
    "eight curves": "tube distance:14in screen:none animal:bearded dragon",
    "a table": "card animal:bearded dragon",
}
_AT_ONCE = 50
_TICK_S = 0.001


def drawing_of(line: str) -> Drawing:
    picture = ask(line, Preferences()).picture
    assert picture is not None
    assert picture.drawing is not None
    return picture.drawing


@pytest.mark.parametrize("line", LINES.values(), ids=LINES.keys())
def test_draw(line: str, benchmark: BenchmarkFixture) -> None:
    drawing = drawing_of(line)
    draw(drawing)
    times: list[float] = []

    def timed() -> bytes:
        started = time.perf_counter()
        png = draw(drawing)
        times.append(time.perf_counter() - started)
        return png

    assert benchmark.pedantic(timed, rounds=100)  # type: ignore[no-untyped-call]
    cuts = quantiles(times, n=100)
    benchmark.extra_info |= {"p50_ms": 1000 * cuts[49], "p99_ms": 1000 * cuts[98]}
    print(f"\ndraw, warm: p50 {1000 * cuts[49]:.0f} ms, p99 {1000 * cuts[98]:.0f} ms")


@pytest.mark.parametrize("line", LINES.values(), ids=LINES.keys())
def test_fingerprint(line: str, benchmark: BenchmarkFixture) -> None:
    drawing = drawing_of(line)
    assert benchmark(lambda: fingerprint(drawing))


def test_the_loop_while_fifty_are_asked_at_once(benchmark: BenchmarkFixture) -> None:
    drawings = [
        drawing_of(f"distance tube:12% reflector:polished screen:{n}% animal:bearded dragon")
        for n in range(1, _AT_ONCE + 1)
    ]

    async def asked() -> tuple[float, float, int]:
        studio = Studio(waiting=_AT_ONCE)
        await studio.warm()
        stalls: list[float] = []

        async def watch() -> None:
            while True:
                started = time.perf_counter()
                await asyncio.sleep(_TICK_S)
                stalls.append(time.perf_counter() - started - _TICK_S)

        watching = asyncio.create_task(watch())
        await asyncio.sleep(10 * _TICK_S)
        started = time.perf_counter()
        pictures = await asyncio.gather(*(studio.png(drawing) for drawing in drawings))
        taken = time.perf_counter() - started
        watching.cancel()
        await studio.close()
        return max(stalls), taken, sum(isinstance(p, bytes) for p in pictures)

    stall_s, taken_s, drawn = benchmark.pedantic(  # type: ignore[no-untyped-call]
        lambda: asyncio.run(asked()), rounds=3
    )
    assert drawn == _AT_ONCE
    benchmark.extra_info |= {"longest_stall_ms": 1000 * stall_s, "fifty_s": taken_s}
    print(f"\n50 at once: longest stall {1000 * stall_s:.1f} ms, all after {taken_s:.1f} s")
