"""A group's own figures: answers use them, and say that they are the group's."""

from datetime import date

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.questions.setup.own_told import own_told
from bot.reply import Reply
from bot.saved.group import Own, OwnAnimal, OwnLamp, OwnRange, OwnScreen, OwnTarget
from calc.animal import Subject
from calc.uv.lamp import CLASS_CONSTANT_UVI_M

MAY = date(2026, 5, 4)
LAMP = OwnLamp(
    name="Hood by the door",
    constant_uvi_m=CLASS_CONSTANT_UVI_M / 2,
    doubt_factor=1.15,
    readings=3,
    lit_length_m=0.519,
    set_on=MAY,
)
SCREEN = OwnScreen(name="Mesh lid", passes=0.55, set_on=MAY)
TARGETS = (
    OwnTarget(animal="bearded-dragon", subject=Subject.UVI, low=2.0, high=3.0, set_on=MAY),
    OwnTarget(
        animal="bearded-dragon",
        subject=Subject.BASKING_SURFACE,
        low=36.0,
        best=38.0,
        high=40.0,
        set_on=MAY,
    ),
)
GROUP = Preferences(own=Own(lamps=(LAMP,), screens=(SCREEN,), targets=TARGETS))
ANYONE = Preferences()
REST = "reflector:polished screen:none animal:bearded dragon uvi:3-5"


def rows(reply: Reply, label: str) -> list[str]:
    return [row.text for row in reply.rows if row.label == label]


def figures(reply: Reply) -> dict[str, float]:
    return {value.name: value.best for value in reply.values}


def test_a_lamp_of_the_groups_own_answers_from_its_constant_and_says_so() -> None:
    own = ask(f"distance tube:HOOD by the door {REST}", GROUP)
    class_alike = ask(f"distance tube:6% {REST}", ANYONE)
    assert own.status == "ok", own.answer
    # Half the constant of a 12 % tube is what a 6 % tube of the class has.
    assert figures(own)["distance"] == pytest.approx(figures(class_alike)["distance"])
    (told,) = rows(own, "The group's own")
    assert "Hood by the door" in told
    assert "4 May 2026" in told
    assert "3 meter readings" in told
    assert "the group's own lamp" in rows(own, "Tube")[0]


def test_a_lamp_of_another_group_is_not_known() -> None:
    assert ask(f"distance tube:hood by the door {REST}", ANYONE).status == "problem"


def test_a_screen_of_the_groups_own_is_taken_by_its_name() -> None:
    line = "distance tube:12% reflector:polished screen:{} animal:bearded dragon uvi:3-5"
    own, given = ask(line.format("mesh lid"), GROUP), ask(line.format("passes 55%"), ANYONE)
    assert own.values == given.values
    (told,) = rows(own, "The group's own")
    assert told.startswith("screen “Mesh lid”: lets 55 % of the UV through, blocks 45 %")
    assert told.endswith("set on 4 May 2026")


def test_a_target_of_the_groups_own_stands_in_place_of_ours() -> None:
    own = ask("distance tube:12% reflector:polished screen:none animal:beardie", GROUP)
    given = ask("distance tube:12% reflector:polished screen:none uvi:2-3", ANYONE)
    assert own.values == given.values
    assert "the group's own figure, set on 4 May 2026" in rows(own, "Aim for")[0]
    assert "groups_own" in {line.key for line in own.sources}
    other = ask("distance tube:12% reflector:polished screen:none animal:leopard gecko", GROUP)
    assert "groups_own" not in {line.key for line in other.sources}


def test_a_temperature_of_the_groups_own_is_what_readings_are_judged_by() -> None:
    line = "temps animal:bearded dragon basking:100F cool:79F lamp_on:3h measured:infrared gun"
    own, ours = ask(line, GROUP), ask(line, ANYONE)
    assert own.status == "ok", own.answer
    assert "the group's own figure" in own.model_dump_json()
    assert "the group's own figure" not in ours.model_dump_json()


def test_the_groups_animal_is_taken_where_none_is_named_and_said() -> None:
    preferences = Preferences(default_animal="leopard gecko")
    fallen_back = ask("distance tube:6% reflector:plain screen:none", preferences)
    assert rows(fallen_back, "The group's own") == [
        "no animal was named, so I took the group's: leopard gecko"
    ]
    for line in (
        "distance tube:6% reflector:plain screen:none uvi:1-2",
        "distance tube:6% reflector:plain screen:none animal:crested gecko",
        "check beardie, 12% tube, plain, no mesh, 14in to his back",
    ):
        assert rows(ask(line, preferences), "The group's own") == []


MOSS = OwnAnimal(
    name="Moss lizard",
    wants={Subject.UVI: OwnRange(low=2.0, high=3.0)},
    surface_limit_c=40.0,
    set_on=MAY,
)
KEEPERS = Preferences(own=Own(lamps=(LAMP,), screens=(SCREEN,), animals=(MOSS,)))


def test_check_hears_a_lamp_and_a_screen_of_the_groups_own_by_name() -> None:
    freely = ask(
        'check my moss lizard has the HOOD by the door 12 in above its back through "mesh lid"',
        KEEPERS,
    )
    given = ask(
        "check animal:moss lizard tube:hood by the door screen:mesh lid distance:12in", KEEPERS
    )
    assert figures(freely)["uvi"] == figures(given)["uvi"]
    (missing,), (again,) = rows(freely, "Missing"), rows(given, "Missing")
    assert missing == again
    # The readings hold what is behind the tube, and how long it is.
    assert "fixture" not in missing
    assert "how long the tube is" not in missing
    assert "tube Hood by the door (from “HOOD by the door”)" in rows(freely, "Read of the UV")[0]
    assert [told for told in rows(freely, "The group's own") if "Mesh lid" in told]


def test_a_name_of_the_groups_own_lamp_is_heard_in_free_words_and_in_german() -> None:
    away = ask("how far should the hood by the door be for my moss lizard", KEEPERS)
    assert away.command == "distance"
    assert rows(away, "Understood as")[0].startswith(
        "distance animal:Moss lizard tube:Hood by the door"
    )
    assert "reflector" not in rows(away, "Understood as")[0]
    german = ask("Meine Moss lizard hat Hood by the door 30 cm über dem Rücken", KEEPERS)
    assert "tube:Hood by the door" in rows(german, "Verstanden als")[0]


@pytest.mark.parametrize("name", ["Tube", "UVB tube", "mesh lid"])
def test_a_name_of_ordinary_words_that_may_mean_any_is_heard_in_quotes(name: str) -> None:
    named = LAMP.model_copy(update={"name": name})
    own = Own(lamps=(named,))
    assert not own_told(f"the {name} a foot above", own).lamps
    told = own_told(f'the "{name}" a foot above', own)
    assert [tube.lamp for tube, _ in told.lamps] == [named]
    assert told.rest == "the tube a foot above"


@pytest.mark.parametrize(
    ("name", "words", "heard"),
    [
        ("Hood A", "beardie under hood A, 14 in away", True),
        ("Hood A", "Hood A hangs 14 in over the back", True),
        ("Hood A", "is a hood a good idea?", False),
        ("Tube 2", "tube 2, 14 in from its back", True),
        ("Tube 2", "is tube 2 too near?", True),
        ("Tube 2", "my tube 2 ft above the rock", False),
        ("Tube 2", "a tube 2 years old", False),
        ("Tube 2", "a tube 2.5 ft long", False),
        ("Tube 2", "my tube 2 tubes of 12 %", False),
        ("Mesh lid", "no change under the Mesh lid at 14 in", True),
        ("Mesh lid", "under my mesh lid at 14 in", False),
        ("Mesh lid", "Mesh lid, 14 in, beardie", False),
        ("Mesh lid", "a lamp over the screen called mesh lid", True),
        ("Tube", "die Lampe namens Tube hängt 30 cm über dem Rücken", True),
        ("Uvb Tube", "die Uvb Tube hängt 30 cm über dem Rücken", False),
        ("UVB tube", "the UVB tube is 14 in away", False),
        ("Tube", "our group's tube is 14 in away", True),
    ],
)
def test_an_ordinary_name_is_heard_unquoted_where_it_can_mean_nothing_else(
    name: str, words: str, heard: bool
) -> None:
    own = Own(lamps=(LAMP.model_copy(update={"name": name}),))
    assert bool(own_told(words, own).lamps) is heard
