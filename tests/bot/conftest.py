"""What the tests of the bot share: plain preferences."""

import pytest

from bot.language.quantities import Units
from bot.preferences import Preferences


@pytest.fixture
def anyone() -> Preferences:
    """An asker of whom nothing is known."""
    return Preferences()


@pytest.fixture
def in_inches() -> Preferences:
    """An asker whose bare numbers are inches and °F."""
    return Preferences(units=Units.IN)
