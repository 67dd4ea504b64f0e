"""A map means something else for who climbs, swims, is awake at night or does not bask."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Reply
from calc.animals import animals
from calc.setup.lives import Life, lives_of, stand_for
from calc.setup.set_up import StandKind
from tests.bot.saying.pinning import everything

LINE = "section tube:6% reflector:plain screen:none distance:16in enclosure:48x24x36in length:22in"
GERMAN = Preferences(language="de")
LIT = [slug for slug, animal in animals().items() if animal.uvi is not None]


def asked(name: str, who: Preferences) -> Reply:
    return ask(f"{LINE} animal:{name}", who)


@pytest.mark.parametrize("slug", LIT)
def test_every_way_of_life_is_told_in_both_languages(slug: str, anyone: Preferences) -> None:
    animal = animals()[slug]
    lives = lives_of(animal)
    told, german = (everything(asked(animal.name, who)) for who in (anyone, GERMAN))
    assert ("It climbs, so" in told) == (Life.CLIMBS in lives) == ("Es klettert, also" in german)
    assert ("the dock: put" in told) == (Life.WATER in lives)
    assert ("awake at night" in told) == (Life.NIGHT in lives)


@pytest.mark.parametrize("slug", LIT)
def test_who_does_not_bask_is_given_no_heat_lamp(slug: str, anyone: Preferences) -> None:
    animal = animals()[slug]
    reply = asked(animal.name, anyone)
    assert reply.set_up is not None
    assert bool(reply.set_up.lamps) == (animal.basking_surface_c is not None)
    assert reply.set_up.stands[0].kind is stand_for(animal)


def test_a_heat_lamp_that_was_told_is_drawn_all_the_same(anyone: Preferences) -> None:
    reply = ask(f"{LINE} animal:crested gecko heat:8in", anyone)
    assert reply.set_up is not None
    assert reply.set_up.lamps


def test_the_highest_branch_keeps_the_nearest_distance(anyone: Preferences) -> None:
    told = everything(asked("veiled chameleon", anyone)).replace("\u00a0", " ")
    near = next(
        value.low
        for value in ask(
            "distance tube:6% reflector:plain screen:none length:22in animal:veiled chameleon",
            anyone,
        ).values
        if value.name == "distance"
    )
    highest_in = (36 * 0.0254 - near - 0.05) / 0.0254
    assert f"higher than {round(highest_in * 2 - 0.5) / 2:g} in" in told


def test_a_stand_is_a_dock_a_branch_or_a_platform() -> None:
    kinds = {name: stand_for(animals()[name]) for name in ("slider", "veiled-chameleon")}
    assert kinds == {"slider": StandKind.DOCK, "veiled-chameleon": StandKind.BRANCH}
    assert stand_for(animals()["bearded-dragon"]) is StandKind.PLATFORM
