"""How long a question takes, warm: beside it the plain parse of one quantity by pint.

Run on request: python -m pytest tests/bench
"""

import pint
import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from bot.ask import ask
from bot.preferences import Preferences
from bot.render.post import render_post
from bot.render.text import render_text

FREE_WORDS = (
    "ask hi everyone how far away should i put the uvb tube for my new bearded dragon, the "
    "shop sold me a twelve percent one and a shiny hood and i have no mesh at all between the"
    " lamp and the basking branch. i was told ten inches by one person and twenty by another "
    "one so now i am really confused about the whole thing and would like to know what is "
    "right before he moves in on saturday. the enclosure is four feet long and two feet deep,"
    " made of wood with glass doors, room at 70F and dark by five, thanks"
)
"""A question in some five hundred characters of free words."""

LINES = {
    "ask distance": "distance tube:12% reflector:polished screen:none animal:bearded dragon",
    "ask distance, weave": "distance tube:12% reflector:plain screen:18x16 0.011in uvi:3-5",
    "ask uvi": "uvi distance:14in tube:12% reflector:polished screen:45% animal:bearded dragon",
    "ask plan": "plan animal:bearded dragon enclosure:48x24x24in lid:solid room:70F night:58F",
    "ask plan, refused": "plan animal:bearded dragon enclosure:48x24x10in lid:full mesh room:70F",
    "ask convert": "convert 14 1/2 in",
    "ask free words": FREE_WORDS,
    "ask, refused": "distance tube:banana reflector:plain screen:none",
}


@pytest.mark.parametrize("line", LINES.values(), ids=LINES.keys())
def test_ask(line: str, benchmark: BenchmarkFixture) -> None:
    preferences = Preferences()
    assert benchmark(lambda: ask(line, preferences)).answer


def test_render_text(benchmark: BenchmarkFixture) -> None:
    reply = ask(LINES["ask distance"], Preferences())
    assert benchmark(lambda: render_text(reply))


def test_render_post(benchmark: BenchmarkFixture) -> None:
    reply = ask(LINES["ask distance"], Preferences())
    assert benchmark(lambda: render_post(reply))


def test_plain_pint_parse(benchmark: BenchmarkFixture) -> None:
    registry: pint.UnitRegistry[float] = pint.UnitRegistry()
    assert benchmark(lambda: registry.Quantity("14 in").to("cm"))
