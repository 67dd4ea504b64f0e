"""How deep the water has to be is told where it is asked, in both languages."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from calc.animals import animals
from calc.setup.space import smallest_floor

DEEP = [
    animal.name
    for animal in animals().values()
    if (floor := smallest_floor(animal.slug)) is not None and floor.water_m
]


@pytest.mark.parametrize("name", DEEP)
def test_the_depth_stands_in_the_brief(name: str, anyone: Preferences) -> None:
    told = [line.text for line in ask(f"how deep should the water be for a {name}", anyone).brief]
    assert any(text.startswith("Depth: ") for text in told)


def test_it_is_told_in_german() -> None:
    line = "wie tief muss das Wasser für eine Rotwangenschildkröte sein"
    told = [one.text for one in ask(line, Preferences(language="de")).brief]
    assert any(text.startswith("Tiefe: ") for text in told)


def test_who_asks_for_its_warmth_is_told_no_depth(anyone: Preferences) -> None:
    told = ask("needs animal:slider about:basking", anyone).brief
    assert not any(line.text.startswith("Depth") for line in told)


UNKNOWN = [
    animal.name
    for animal in animals().values()
    if animal.water_c is not None and animal.name not in DEEP
]


@pytest.mark.parametrize("name", UNKNOWN)
def test_a_depth_that_is_not_known_is_said_to_be_unknown(name: str, anyone: Preferences) -> None:
    told = [line.text for line in ask(f"how deep should the water be for a {name}", anyone).brief]
    assert "Depth: I have no figure." in told
    german = ask(f"needs animal:{name} about:water", Preferences(language="de")).brief
    assert "Tiefe: Dafür habe ich keine Zahl." in [line.text for line in german]
