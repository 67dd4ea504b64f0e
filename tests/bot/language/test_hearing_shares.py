"""A percentage is of the tube, the mesh or the air: by the word beside it, or it is asked about."""

import pytest

from bot.language.hearing import FactName
from tests.bot.language.hearing_score import heard_in, told


def facts(text: str) -> set[tuple[str, str]]:
    return {(fact.name.value, told(fact)) for fact in heard_in(text).facts}


@pytest.mark.parametrize(
    "text",
    [
        "screen 20%",
        "20% screen",
        "20 % mesh",
        "mesh 20%",
        "my screen is 20%",
        "the mesh is about 20 percent",
        "a 20% mesh",
        "screen: 20%",
        "screen = 20 pct",
    ],
)
def test_a_percentage_beside_a_screen_is_what_it_blocks_and_is_marked_as_taken_so(
    text: str,
) -> None:
    (fact,) = heard_in(text).facts
    assert (fact.name, told(fact)) == (FactName.SCREEN, "20%")
    assert fact.assumed
    assert heard_in(text).questions == ()


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("mesh 45 %", {("screen", "45%")}),
        ("45% mesh", {("screen", "45%")}),
        ("mesh blocks 20%", {("screen", "20%")}),
        ("the screen is 60% open", {("screen", "passes 60%")}),
        ("12% tube, 20% screen", {("tube", "12"), ("screen", "20%")}),
        ("tube 12% mesh 12%", {("tube", "12"), ("screen", "12%")}),
        ("12% tube screen 10%", {("tube", "12"), ("screen", "10%")}),
        ("tube 12% humidity 40%", {("tube", "12")}),
        ("humidity 40% tube 12%", {("tube", "12")}),
        ("12% uvb humidity 15%", {("tube", "12")}),
        ("uvb 6% 15% humidity", {("tube", "6")}),
        ("humidity 12%", set()),
        ("12% humidity", set()),
        ("tube on the mesh 12%", {("tube", "12"), ("lid", "mesh"), ("placement", "over")}),
        ("no mesh 12% tube", {("screen", "none"), ("tube", "12")}),
        ("12% no mesh", {("screen", "none"), ("tube", "12")}),
    ],
)
def test_each_percentage_goes_to_its_own(text: str, wanted: set[tuple[str, str]]) -> None:
    assert facts(text) == wanted


@pytest.mark.parametrize("text", ["screen 12%", "12% mesh", "mesh 6%"])
def test_a_strength_of_tubes_beside_a_screen_alone_is_asked_about(text: str) -> None:
    heard = heard_in(text)
    assert heard.facts == ()
    (question,) = heard.questions
    assert question.name is FactName.SCREEN
    assert question.question.id == "unclear-whose"
