"""How long the site takes to build, and one answer as HTML.

Run on request: python -m pytest tests/bench
"""

from pytest_benchmark.fixture import BenchmarkFixture

from bot.ask import ask
from bot.fronts.pages.site import render_site
from bot.preferences import Preferences
from bot.render.html import render_html

DISTANCE = "distance tube:12% reflector:polished screen:none animal:bearded dragon"


def test_build_the_site(benchmark: BenchmarkFixture) -> None:
    assert benchmark(render_site)["index.html"]


def test_render_html(benchmark: BenchmarkFixture) -> None:
    reply = ask(DISTANCE, Preferences())
    assert benchmark(lambda: render_html(reply))
