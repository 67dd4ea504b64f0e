"""What the tests of the bot share: plain preferences, and a browser."""

from collections.abc import AsyncIterator

import pytest
import pytest_asyncio
from playwright.async_api import Browser, async_playwright, expect

from bot.language.quantities import Units
from bot.preferences import Preferences
from tests.bot.in_browser import CHROMIUM, FLAGS


@pytest.fixture
def anyone() -> Preferences:
    """An asker of whom nothing is known."""
    return Preferences()


@pytest.fixture
def in_inches() -> Preferences:
    """An asker whose bare numbers are inches and °F."""
    return Preferences(units=Units.IN)


@pytest_asyncio.fixture(scope="module", loop_scope="module")
async def browser() -> AsyncIterator[Browser]:
    """A browser of the module's own."""
    # A busy machine is no fault of the page's.
    expect.set_options(timeout=20_000)
    async with async_playwright() as playwright:
        opened = await playwright.chromium.launch(executable_path=CHROMIUM, args=FLAGS)
        yield opened
        await opened.close()
