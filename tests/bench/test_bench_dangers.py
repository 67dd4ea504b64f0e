"""How long it takes to listen for hazards: a usual message, and what is worst to read."""

import time

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from bot.dangers import listen

USUAL = (
    "my beardie is 2 years old, 4x2x2 wooden viv, 12% t5 with a reflector 15 inches above him, "
    "basking 104, cool end 80. since yesterday the dimmer hums and the plug is hot, is that normal?"
)
# What the pairs have most to do with: negations, words that begin many phrases, things and states.
PIECES = (
    "not ",
    "i he is it my a in ",
    "lamp is on the wood touching his back cold limp ",
    "he,",
    "38 ",
)


@pytest.mark.parametrize("text", [USUAL, *((piece * 500)[:500] for piece in PIECES)])
def test_listen(benchmark: BenchmarkFixture, text: str) -> None:
    benchmark(listen, text)
    begun = time.process_time()
    for _ in range(20):
        listen(text)
    assert (time.process_time() - begun) / 20 < 0.005
