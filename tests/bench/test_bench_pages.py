"""How long the site takes to build, cold and with its pictures drawn, and one answer as HTML.

Run on request: python -m pytest tests/bench
"""

import asyncio
import subprocess
import sys
from pathlib import Path

from aiohttp.test_utils import TestClient, TestServer
from pytest_benchmark.fixture import BenchmarkFixture

from bot.ask import ask
from bot.fronts.pages.server import application
from bot.fronts.pages.site import Site
from bot.preferences import Preferences
from bot.render.html import render_html

DISTANCE = "distance tube:12% reflector:polished screen:none animal:bearded dragon"


def test_build_the_site_from_the_command_line(benchmark: BenchmarkFixture, tmp_path: Path) -> None:
    line = [sys.executable, "-m", "bot", "pages", "--out", str(tmp_path)]
    benchmark.pedantic(lambda: subprocess.run(line, check=True), rounds=3)  # type: ignore[no-untyped-call]
    assert (tmp_path / "index.html").exists()


def test_build_the_site_again_with_its_pictures_drawn(benchmark: BenchmarkFixture) -> None:
    assert benchmark(lambda: dict(Site()))["index.html"]


def test_render_html(benchmark: BenchmarkFixture) -> None:
    reply = ask(DISTANCE, Preferences())
    assert benchmark(lambda: render_html(reply))


def test_ask_on_the_try_it_page(benchmark: BenchmarkFixture) -> None:
    loop = asyncio.new_event_loop()
    client = TestClient(TestServer(application(per_minute=10**9), loop=loop), loop=loop)
    loop.run_until_complete(client.start_server())

    async def asked() -> int:
        response = await client.get("/try.html", params={"q": DISTANCE})
        await response.read()
        return response.status

    assert benchmark(lambda: loop.run_until_complete(asked())) == 200
    loop.run_until_complete(client.close())
    loop.close()
