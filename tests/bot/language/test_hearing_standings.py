"""What a fact is told of, how it stands, and what it stands in the place of."""

import pytest

from bot.language.hearing import Fact, FactName
from bot.language.hearing.facts import Scope, Standing
from tests.bot.language.hearing_score import heard_in, told


def heard_values(text: str, name: FactName) -> list[str]:
    return [told(fact) for fact in heard_in(text).all(name)]


def apart(text: str) -> dict[tuple[FactName, str], Standing]:
    return {(fact.name, told(fact)): fact.standing for fact in heard_in(text).aside}


@pytest.mark.parametrize(
    ("text", "name", "value"),
    [
        ("45C on the basking rock. oops, 35C. beardie", FactName.BASKING, "35 C"),
        ("I typed 30 for the cold side before, I meant 25. Hot spot 40", FactName.COOL, "25 C"),
        ("oops 16 inches not 6 away. 12% over mesh", FactName.DISTANCE, "16 in"),
        ("cool end is 79 (typed 89). basking 107", FactName.COOL, "79 F"),
        ("the tube is 12 inches, no, 14 inches away. 12%", FactName.DISTANCE, "14 in"),
        ("a 10% tube, scratch that, 12%. 14 inches", FactName.TUBE, "12"),
        ("cool side 80, sorry 78", FactName.COOL, "78 F"),
    ],
)
def test_a_correction_replaces_what_was_said(text: str, name: FactName, value: str) -> None:
    assert heard_values(text, name) == [value]


def test_a_correction_is_marked_and_shows_both_figures() -> None:
    (fact,) = heard_in("basking is 45C, oops, 35C").all(FactName.BASKING)
    assert fact.corrects
    assert fact.words == "basking is 45C, oops, 35C"


def test_a_figure_of_another_place_corrects_nothing() -> None:
    text = "basking 98, sorry, cool 75"
    assert heard_values(text, FactName.BASKING) == ["98 F"]
    assert heard_values(text, FactName.COOL) == ["75 F"]


@pytest.mark.parametrize(
    ("text", "name", "value", "standing"),
    [
        ("basking was 95 last week, now 86", FactName.BASKING, "95 F", Standing.WAS),
        ("my friend has 110 basking", FactName.BASKING, "110 F", Standing.OTHERS),
        ("it should be 14 inches above his back", FactName.DISTANCE_BACK, "14 in", Standing.WISHED),
        ("basking used to be 110", FactName.BASKING, "110 F", Standing.WAS),
    ],
)
def test_what_is_not_so_now_stands_apart(
    text: str, name: FactName, value: str, standing: Standing
) -> None:
    heard = heard_in(text)
    assert heard.all(name) == () or value not in heard_values(text, name)
    assert apart(text)[name, value] is standing


def test_what_is_planned_fills_a_question_and_says_so() -> None:
    (fact,) = heard_in("going to hang a 12% tube over my beardie").all(FactName.TUBE)
    assert fact.standing is Standing.PLANNED


def test_what_is_so_stands_as_it_is() -> None:
    heard = heard_in("beardie, basking 98, cool 75, 12% tube 14 inches away")
    assert {fact.standing for fact in heard.facts} == {Standing.IS}
    assert heard.aside == ()


def scopes(text: str) -> dict[str, int]:
    facts: tuple[Fact, ...] = heard_in(text).facts
    return {
        fact.name.value: fact.scope.animal for fact in facts if fact.name is not FactName.ANIMAL
    }


def test_each_of_two_animals_has_its_own_figures() -> None:
    text = "The corn snake has a warm side of 88. The beardie basks at 105, cool side 80."
    assert scopes(text) == {"warm": 0, "basking": 1, "cool": 1}


def test_the_same_place_of_two_animals_is_no_contradiction() -> None:
    text = "corn snake: cool 75. beardie: cool 85"
    heard = heard_in(text)
    assert [(told(f), f.scope) for f in heard.all(FactName.COOL)] == [
        ("75 F", Scope(0)),
        ("85 F", Scope(1)),
    ]
    assert not [ask for ask in heard.questions if ask.name is FactName.COOL]


@pytest.mark.parametrize(
    ("text", "name", "value"),
    [
        ("store told me 6 inches. I have it at 12. 10.0 tube", FactName.DISTANCE, "12 in"),
        ("the guide says 16 inches for 12%, mine 14", FactName.DISTANCE, "14 in"),
        ("cool end used to be 30, fan brings it to 26", FactName.COOL, "26 C"),
        ("is 95 ok for basking? mine reads 91", FactName.BASKING, "91 F"),
    ],
)
def test_a_bare_figure_told_against_another_takes_its_place(
    text: str, name: FactName, value: str
) -> None:
    assert heard_values(text, name) == [value]


def test_what_a_label_or_an_instrument_says_is_no_hearsay() -> None:
    assert heard_values("the end cap says 12%, it hangs 14 inches away", FactName.TUBE) == ["12"]
    assert heard_values("the gun says 98 on the basking spot", FactName.BASKING) == ["98 F"]
    assert heard_values("the chart says 15 inches for a 12% tube", FactName.DISTANCE) == []
