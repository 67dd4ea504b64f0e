"""What an animal needs: its whole table, nothing filled in, and next questions that work."""

import pytest

from bot.ask import ask
from bot.drawing import Side, Tone, Tool
from bot.language.quantities import Units
from bot.preferences import Preferences
from bot.queries.question import Question
from calc.animal import Group
from calc.animals import animals

ANIMALS = sorted(animals())
TARGETS = {
    "uvi": "uvi",
    "basking_surface": "basking_surface_c",
    "warm_air": "warm_air_c",
    "cool_air": "cool_air_c",
    "night_floor": "night_floor_c",
    "night_heat_off": "night_heat_off_c",
    "water": "water_c",
    "light": "light_hours",
}


@pytest.mark.parametrize("slug", ANIMALS)
def test_every_known_target_is_told_and_no_other(slug: str, anyone: Preferences) -> None:
    animal = animals()[slug]
    reply = ask(Question("needs", {"animal": animal.name}), anyone)
    assert reply.status == "ok"
    told = {value.name: (value.low, value.high) for value in reply.values}
    known = {name: getattr(animal, field) for name, field in TARGETS.items()}
    assert told == {name: (t.low, t.high) for name, t in known.items() if t is not None}
    open_here = {name for name, target in known.items() if target is None} - {"night_heat_off"}
    if animal.group is not Group.TURTLE:
        open_here -= {"water"}
    if not animal.basking:
        open_here -= {"basking_surface"}
    if animal.warm_air_c is None and animal.cool_air_c is None:
        open_here -= {"uvi", "warm_air", "cool_air", "night_floor"}
    assert sum("not known here" in row.text for row in reply.rows) == len(open_here)


@pytest.mark.parametrize("units", Units)
@pytest.mark.parametrize("slug", ANIMALS)
def test_the_questions_it_offers_are_answered(slug: str, units: Units) -> None:
    preferences = Preferences(forced_units=units)
    reply = ask(Question("needs", {"animal": animals()[slug].name}), preferences)
    offered = [
        f"{command}{step.partition(f': {command}')[2]}"
        for step in reply.steps
        for command in ("temps", "tube", "plan")
        if f": {command} " in step
    ]
    assert len(offered) == (3 if animals()[slug].uvi is not None else 0)
    for line in offered:
        answer = ask(line, preferences)
        assert "That did not work" not in answer.title, line


def test_the_first_sentence_has_what_a_newcomer_needs_first(anyone: Preferences) -> None:
    answer = ask("needs beardie", anyone).answer
    for part in (
        "UV index 3 to 5",
        "Basking: 95 to 110 °F (35 to 43.5 °C)",
        "Cool end: 77 to 82 °F (25 to 28 °C)",
        "above 60 °F (15.5 °C)",
        "Light: 12 h a day",
    ):
        assert part in answer


def test_an_animal_that_does_not_bask_is_not_said_to(anyone: Preferences) -> None:
    reply = ask("needs crested gecko", anyone)
    assert reply.answer.startswith("No heat lamp: it needs no basking spot.")
    assert reply.rows[0].label == "UV index at its brightest place"


def test_other_views_stand_beside_the_figure(anyone: Preferences) -> None:
    why = ask("needs panther chameleon", anyone).why
    assert sum("put it in zone" in told for told in why) == 2


def test_the_picture_has_all_that_it_needs_at_its_place_and_no_verdict(anyone: Preferences) -> None:
    picture = ask("needs bearded dragon", anyone).picture
    assert picture is not None
    drawing = picture.drawing
    assert isinstance(drawing, Side)
    assert [place.tool for place in drawing.places] == [
        Tool.UV_METER,
        Tool.INFRARED_GUN,
        Tool.PROBE,
        Tool.PROBE,
        Tool.NIGHT,
        Tool.CLOCK,
    ]
    gauges = [place.gauge for place in drawing.places if place.gauge]
    assert len(gauges) == len(drawing.places)
    assert {(gauge.verdict, gauge.reading, gauge.tone) for gauge in gauges} == {
        ("", None, Tone.PLAIN)
    }
    # A night has nothing to aim for: only a mark below which there is heat.
    assert [gauge.below is not None for gauge in gauges] == [
        False,
        False,
        False,
        False,
        True,
        False,
    ]
    assert gauges[4].wanted is None


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("gecko", "which one it is: leopard gecko, crested gecko, African fat-tailed gecko"),
        ("bal pyton", "perhaps royal python"),
        ("berdy drgn", "perhaps bearded dragon"),
        ("tortise", "which one it is: Hermann's tortoise, Greek tortoise, Horsfield's tortoise"),
    ],
)
def test_a_part_of_a_name_or_a_slip_offers_who_may_be_meant(
    typed: str, meant: str, anyone: Preferences
) -> None:
    reply = ask(Question("needs", {"animal": typed}), anyone)
    assert reply.status == "problem"
    assert meant in reply.answer


def test_nothing_is_asked_for_and_the_groups_animal_is_taken(anyone: Preferences) -> None:
    assert ask("needs", anyone).status == "problem"
    ours = Preferences(default_animal="corn snake")
    assert ask("needs", ours).title == "What a corn snake needs"


@pytest.mark.parametrize(
    "line",
    [
        "distance animal:axolotl tube:12% reflector:polished screen:none",
        "uvi animal:axolotl tube:12% reflector:polished screen:none distance:14in",
        "plan animal:axolotl enclosure:48x24x24in lid:solid",
        "card animal:axolotl",
    ],
)
def test_what_lives_in_water_alone_is_under_no_lamp(line: str, anyone: Preferences) -> None:
    reply = ask(line, anyone)
    assert reply.status == "problem"
    assert reply.answer.startswith("An axolotl needs no lamp, no heater and no UV.")
    assert ask("needs axolotl", anyone).status == "ok"


def test_no_tube_gets_too_weak_for_who_may_do_without(anyone: Preferences) -> None:
    line = "decline readings:2026-01-03 0.5, 2026-03-01 0.4 animal:dyeing dart frog"
    assert "No tube gets too weak for it." in ask(line, anyone).answer
