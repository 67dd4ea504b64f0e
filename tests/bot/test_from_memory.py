"""A range from memory alone: nothing is sure that is judged by it, and the answer says so once."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences

MEMORY = "Range from memory, unchecked."
SURE = ("far too low", ": low", ": high", "is too weak", "is too strong")
ASKED = (
    "uvi distance:50in tube:6% reflector:plain screen:45%",
    "uvi distance:50in tube:6% reflector:not sure screen:not sure",
    "check uvi 0.05",
    "check tube:6% distance:50in reflector:plain screen:45%",
    "temps warm:26C",
)


def _brief(text: str, preferences: Preferences) -> str:
    return "\n".join(line.text for line in ask(text, preferences).brief)


@pytest.mark.parametrize("text", ASKED)
def test_a_range_from_memory_is_said_once_and_makes_nothing_sure(
    text: str, anyone: Preferences
) -> None:
    brief = _brief(f"{text} animal:ball python", anyone)
    assert brief.count(MEMORY) == 1
    assert not any(sure in brief for sure in SURE), brief


@pytest.mark.parametrize("text", ASKED)
def test_a_range_that_somebody_checked_says_nothing_of_memory(
    text: str, anyone: Preferences
) -> None:
    assert MEMORY not in _brief(f"{text} animal:bearded dragon", anyone)


def test_a_range_that_the_asker_gave_is_not_from_memory(anyone: Preferences) -> None:
    brief = _brief(f"{ASKED[0]} animal:ball python uvi:0.5-1.4", anyone)
    assert MEMORY not in brief
    assert "far too low" in brief
