"""A box too small for a grown animal is said to be so; what is safest in it follows."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences

_ROOM = "lid:full mesh room:70F night:62F"


@pytest.mark.parametrize(
    "asked",
    [
        "plan animal:Argentine tegu enclosure:48x24x24in",
        "plan animal:bearded dragon enclosure:30x18x18in",
        "plan animal:green iguana enclosure:36x18x36in",
    ],
)
def test_too_small_a_box_is_said(asked: str) -> None:
    reply = ask(f"{asked} {_ROOM}", Preferences())
    assert "Too small by" in reply.answer
    assert "It can be done" not in reply.answer


def test_a_box_that_is_enough_is_not_called_too_small() -> None:
    reply = ask(f"plan animal:bearded dragon enclosure:4x2x2ft {_ROOM}", Preferences())
    assert "Too small" not in reply.answer
