"""A tube that is advised has a bound on its strength; what is owned has its label's."""

import re

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from tests.bot.saying.pinning import everything

_DRAGON = "animal:bearded dragon"
_NAMED = re.compile(r"T5 HO, ((?:up to )?\d+ %(?: or weaker)?)")


@pytest.mark.parametrize(
    "line",
    [
        f"plan {_DRAGON} enclosure:4x2x2ft lid:solid",
        f"plan {_DRAGON} enclosure:4x2x2ft lid:full mesh",
        f"tube {_DRAGON} enclosure:48in screen:none distance:14in",
        "distance tube:14% reflector:polished screen:none animal:leopard gecko",
        f"arrange {_DRAGON} enclosure:4x2x2ft lid:solid",
    ],
)
def test_advice_names_the_most_that_a_tube_may_have(line: str, anyone: Preferences) -> None:
    named = _NAMED.findall(everything(ask(line, anyone)).replace("\u00a0", " "))
    advised = [one for one in named if one != "14 %"]
    assert advised
    assert all("or weaker" in one or "up to" in one for one in advised)


def test_a_tube_that_is_there_keeps_its_own_strength(anyone: Preferences) -> None:
    line = f"plan {_DRAGON} enclosure:4x2x2ft lid:solid tube:9% reflector:polished"
    told = everything(ask(line, anyone)).replace("\u00a0", " ")
    assert "T5 HO, 9 %," in told
    assert "or weaker" not in told
