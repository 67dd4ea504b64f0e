"""What is denied: only what is plainly said not to be there is taken as not there."""

import pytest

from bot.language.hearing import FactName
from tests.bot.language.hearing_score import heard_in, told


def facts(text: str) -> set[tuple[str, str]]:
    return {(fact.name.value, told(fact)) for fact in heard_in(text).facts}


def asked(text: str) -> set[str]:
    return {question.name.value for question in heard_in(text).questions}


@pytest.mark.parametrize(
    "text",
    [
        "no mesh",
        "there isn't a mesh",
        "there is not any screen",
        "i don't have a screen",
        "doesn't have a mesh lid",
        "we took out the screen",
        "removed the mesh",
        "not using a mesh",
        "no screen lid",
        "no cover or mesh",
        "neither mesh nor reflector",
    ],
)
def test_a_mesh_said_not_to_be_there_is_no_screen(text: str) -> None:
    assert ("screen", "none") in facts(text)


@pytest.mark.parametrize(
    "text",
    [
        "its not a mesh lid",
        "it isn't a mesh top",
        "not a screen lid",
        "its not mesh",
        "i replaced the mesh",
        "swapped the screen",
        "i can't use a mesh",
        "mesh instead of a glass lid",
        "a lid instead of mesh",
        "i don't need a mesh",
    ],
)
def test_a_mesh_that_is_something_else_is_asked_about_and_not_taken_as_nothing(text: str) -> None:
    heard = heard_in(text)
    assert heard.all(FactName.SCREEN) == ()
    assert "mesh" not in {told(fact) for fact in heard.all(FactName.LID)}
    assert "screen" in asked(text)


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("not a T5", {("without", "t5")}),
        ("its not a t8", {("without", "t8")}),
        ("it's not a T5 its a T8", {("without", "t5"), ("lamp", "t8")}),
        ("no basking lamp", set()),
        ("no heat lamp, 98 basking", {("basking", "98 F")}),
        ("without reflector", {("reflector", "plain")}),
        ("its not a polished reflector", {("reflector", "plain")}),
        ("i replaced the reflector", set()),
        ("it can't have a reflector", set()),
        ("dont have a thermometer", set()),
        ("i don't have a temp gun", set()),
        ("no digital probe yet", set()),
        ("no thermostat", {("thermostat", "no")}),
        ("my friend has no uvb", set()),
        ("owner had him under a lamp with no thermostat", set()),
        ("i was told no red bulbs", set()),
        ("it should have no mesh", set()),
        ("my friend uses a mesh but mine has no mesh", {("screen", "none")}),
        ("not on a dimmer", set()),
        ("no uvb", {("without", "uvb")}),
        ("we don't use any uvb", {("without", "uvb")}),
        ("i replaced the uvb", set()),
        ("i can't put the uvb inside", set()),
        ("no heat mat", {("without", "heat mat")}),
        ("i dont use red lights", {("without", "red")}),
        ("not inside", set()),
        ("the tube is not 12%", set()),
        ("not 98 basking", set()),
        ("never used a red bulb", {("without", "red")}),
        ("he is not a leopard gecko", set()),
    ],
)
def test_every_other_denial_says_no_more_than_it_says(
    text: str, wanted: set[tuple[str, str]]
) -> None:
    assert facts(text) == wanted
