"""A cage of mesh all round has the room's air: said so in every question, in both languages."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.ask import ask
from bot.preferences import Preferences
from calc.heat.box import Spot, ends_held, watts_to_hold
from calc.heat.enclosure import Enclosure, Lid, Material, upright_opening_flow
from calc.heat.halves import end_flow
from tests.bot.saying.pinning import everything

CAGE = "enclosure:24x24x48in material:mesh animal:veiled chameleon"
GERMAN = Preferences(language="de")


@given(st.floats(0.3, 2.0), st.floats(0.3, 2.0), st.floats(0.45, 2.0), st.floats(10.0, 150.0))
def test_its_air_is_the_rooms_whatever_lamp_hangs_in_it(
    length_m: float, depth_m: float, height_m: float, watts: float
) -> None:
    cage = Enclosure(length_m, depth_m, height_m, Material.MESH)
    held = ends_held(cage, watts, 22.0, Spot.MIDDLE)
    closed = Enclosure(length_m, depth_m, height_m, Material.GLASS, Lid.SOLID)
    assert held.cool_c.best >= 22.0
    assert held.cool_c.best < ends_held(closed, watts, 22.0, Spot.MIDDLE).cool_c.best


def test_a_usual_cage_is_within_two_kelvin_of_its_room_under_a_usual_lamp() -> None:
    held = ends_held(Enclosure(0.6, 0.6, 1.2, Material.MESH), 75.0, 22.0, Spot.WARM_END)
    assert held.warm_c.high < 24.0


def test_no_lamp_holds_it_much_over_its_room() -> None:
    need = watts_to_hold(Enclosure(0.6, 0.6, 1.2, Material.MESH), 28.0, 21.0)
    assert need.total_w.low > 500.0


@given(st.floats(0.1, 20.0), st.floats(5.0, 35.0))
def test_the_gap_between_two_halves_is_one_upright_opening(apart_k: float, room_c: float) -> None:
    assert end_flow(apart_k, room_c) == upright_opening_flow(0.45, 0.45, apart_k, room_c)
    doubled = upright_opening_flow(0.9, 0.45, apart_k, room_c)
    assert doubled == pytest.approx(2.0 * end_flow(apart_k, room_c))


@pytest.mark.parametrize(
    "line",
    [
        f"air room:70F {CAGE}",
        f"night room:60F {CAGE}",
        f"plan night:60F room:65F {CAGE}",
        "air room:70F enclosure:24x24x48in material:screen cage animal:veiled chameleon",
    ],
)
def test_the_room_is_warmed_and_no_heater_bought(line: str, anyone: Preferences) -> None:
    reply = ask(line, anyone)
    told = everything(reply).lower()
    assert "warm the room" in told
    assert "second heater" not in told
    assert "raum" in everything(ask(line, GERMAN)).lower()


def test_a_lid_is_not_asked_for_where_all_sides_are_mesh(anyone: Preferences) -> None:
    assert ask(f"air room:70F {CAGE}", anyone).status == "ok"
    wood = ask(f"air room:70F {CAGE}".replace("material:mesh", "material:wood"), anyone)
    assert "I still need lid" in wood.answer


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("plan for a veiled chameleon, all mesh cage 24x24x48", "mesh on all sides lets the air"),
        ("plan for a veiled chameleon in a screen cage 24x24x48", "mesh on all sides lets the air"),
        ("is an all mesh cage good for a veiled chameleon", "it has the air of the room"),
    ],
)
def test_it_is_heard_in_free_words(line: str, told: str, anyone: Preferences) -> None:
    assert told in everything(ask(line, anyone)).lower()


def test_it_is_heard_in_german() -> None:
    reply = ask("Jemenchamäleon Gazekäfig 60x60x120 cm, was brauche ich alles?", GERMAN)
    assert "Gitter an allen Seiten" in everything(reply)


def test_the_heat_of_a_lamp_covers_what_the_room_nearly_holds(anyone: Preferences) -> None:
    reply = ask(f"air room:70F watts:60W place:above {CAGE}", anyone)
    assert reply.answer.startswith("Yes")
    assert not any("Warm the room" in line.text for line in reply.brief)


def test_a_night_in_a_cage_hears_the_cage(anyone: Preferences) -> None:
    line = "screen cage for a crested gecko 18x18x24 in, room 60F at night, does it need heat?"
    assert "Warm the room: mesh holds no warm air." in everything(ask(line, anyone))
