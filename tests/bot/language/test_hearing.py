"""Facts from free sentences: the collection, the words of each fact, and what is asked."""

import pytest

from bot.language.hearing import Ask, Fact, FactName
from bot.language.quantities import Measure
from tests.bot.language.hearing_score import (
    CHATS,
    HELD_ASIDE,
    TUNED_ON,
    heard_in,
    score,
    sentences,
    told,
)


def values(text: str, name: FactName) -> list[str]:
    return [told(fact) for fact in heard_in(text).all(name)]


def asked(text: str) -> set[FactName]:
    return {question.name for question in heard_in(text).questions}


def one(text: str, name: FactName) -> Fact:
    (fact,) = heard_in(text).all(name)
    return fact


@pytest.mark.slow
def test_the_collection_is_heard_with_few_slips() -> None:
    result = score(TUNED_ON)
    assert result.precision >= 0.98, result.slips
    assert result.recall >= 0.95, result.slips
    assert len(list(sentences((*TUNED_ON, *CHATS, *HELD_ASIDE)))) >= 400


@pytest.mark.slow
def test_the_messages_of_a_chat_group_are_heard_with_few_slips() -> None:
    result = score(CHATS)
    assert result.precision >= 0.98, result.slips
    assert result.recall >= 0.98, result.slips


def test_the_sentences_held_aside_are_heard_well_enough() -> None:
    result = score(HELD_ASIDE)
    assert result.precision >= 0.95, result.slips
    assert result.recall >= 0.95, result.slips


@pytest.mark.slow
def test_what_must_be_asked_and_what_is_hedged_is_so_in_the_collection() -> None:
    for row in sentences(TUNED_ON):
        heard = heard_in(row["text"])
        questions = {question.name.value for question in heard.questions}
        assert set(row.get("asks", [])) <= questions, row["text"]
        hedged = {fact.name.value for fact in heard.facts if fact.hedged}
        assert set(row.get("hedged", [])) <= hedged, row["text"]


@pytest.mark.slow
def test_every_fact_and_every_question_shows_the_askers_own_words() -> None:
    for row in sentences((*TUNED_ON, *CHATS, *HELD_ASIDE)):
        heard = heard_in(row["text"])
        rows: list[Fact | Ask] = [*heard.facts, *heard.questions]
        for said in rows:
            assert said.words == row["text"][said.start : said.end]
            assert said.words.strip()


@pytest.mark.parametrize(
    ("text", "unit", "assumed"),
    [
        ("basking 98", "degF", True),
        ("basking 38", "degC", True),
        ("basking 55", "degC", True),
        ("basking 75", "degF", True),
        ("basking 98 F", "degF", False),
        ("basking is 38 °C", "degC", False),
        ("basking 38 degrees", "degC", True),
    ],
)
def test_a_bare_basking_reading_takes_the_unit_that_can_be_true(
    text: str, unit: str, assumed: bool
) -> None:
    fact = one(text, FactName.BASKING)
    assert isinstance(fact.value, Measure)
    assert (fact.value.unit, fact.assumed, fact.value.assumed) == (unit, assumed, assumed)


def test_in_the_doubtful_band_the_other_readings_decide_or_it_is_asked() -> None:
    for doubtful in ("basking 65", "cool side 45"):
        assert heard_in(doubtful).facts == ()
        assert len(asked(doubtful)) == 1
    assert values("cool side 45, basking 98", FactName.COOL) == ["45 F"]
    assert values("basking 65, cool side 60 F", FactName.BASKING) == ["65 F"]
    mixed = "basking 65, cool side 75 F, night 20 C"
    assert FactName.BASKING in asked(mixed)


def test_places_before_and_after_their_numbers_do_not_mix() -> None:
    for text in (
        "basking 98 warm 85 cool 75",
        "98 basking 85 warm 75 cool",
        "basking: 98F\nwarm side: 85F\ncool side: 75F",
        "98F on the basking spot, 85F on the warm side and 75F on the cool side",
    ):
        found = [values(text, name)[0] for name in (FactName.BASKING, FactName.WARM, FactName.COOL)]
        assert found == ["98 F", "85 F", "75 F"], text


def test_the_other_side_is_the_opposite_of_the_one_named_last() -> None:
    assert values("basking 98, other side 75", FactName.COOL) == ["75 F"]
    assert values("cool end 75, other side 88", FactName.WARM) == ["88 F"]
    assert FactName.TEMPERATURE in asked("other side is 75F")


@pytest.mark.parametrize(
    "text",
    ["temp is 98", "98F", "ambient 82F", "left 95F", "105/80"],
)
def test_a_temperature_from_nowhere_is_asked_about(text: str) -> None:
    assert heard_in(text).facts == ()
    assert asked(text) == {FactName.TEMPERATURE}


@pytest.mark.parametrize(
    "text",
    [
        "no mesh",
        "there is no screen",
        "screen: none",
        "without a mesh",
        "no reflector or screen",
        "nothing between tube and dragon",
    ],
)
def test_a_denied_screen_is_no_screen(text: str) -> None:
    assert values(text, FactName.SCREEN) == ["none"]
    assert values(text, FactName.PLACEMENT) == []


@pytest.mark.parametrize(
    "text",
    [
        "its not a mercury lamp",
        "i don't use a mercury vapour bulb",
        "used to have a mercury vapor bulb",
        "we replaced the mercury bulb",
        "a halogen instead of a mercury bulb",
    ],
)
def test_a_denied_lamp_is_heard_as_not_there(text: str) -> None:
    assert values(text, FactName.WITHOUT) == ["mercury vapour"]
    assert "mercury vapour" not in values(text, FactName.LAMP)


@pytest.mark.parametrize(
    "text",
    ["should i get a red bulb?", "do i need a red bulb", "can i use a red light at night"],
)
def test_a_lamp_that_is_only_asked_about_is_no_fact(text: str) -> None:
    assert heard_in(text).facts == ()
    assert asked(text) == {FactName.LAMP}


@pytest.mark.parametrize(
    "text",
    [
        "basking should be 105",
        "i was told the basking spot needs to be 105F",
        "recommended 105 basking",
    ],
)
def test_a_wish_is_no_reading(text: str) -> None:
    heard = heard_in(text)
    assert heard.facts == ()
    assert heard.questions == ()


def test_a_correction_replaces_and_a_contradiction_is_asked_about() -> None:
    assert values("12%, no wait 6% tube", FactName.TUBE) == ["6"]
    text = "the tube is 12%. later he says the tube is 6%"
    assert values(text, FactName.TUBE) == ["12", "6"]
    assert asked(text) == {FactName.TUBE}
    assert heard_in(text).one(FactName.TUBE) is None


def test_a_distance_is_of_the_lamp_it_is_told_of() -> None:
    text = "the uvb is 16in above the rock, the heat lamp 12in above the rock"
    assert values(text, FactName.DISTANCE_PERCH) == ["16 in"]
    assert values(text, FactName.LAMP_DISTANCE) == ["12 in"]
    assert values("tube 14 from his back, 98F basking", FactName.DISTANCE_BACK) == ["14 in"]
    assert values("tube 35 from his back, 38C basking", FactName.DISTANCE_BACK) == ["35 cm"]
    assert asked("tube 14 from his back") == {FactName.DISTANCE_BACK}


def test_a_percentage_is_of_what_it_is_told_of() -> None:
    text = "12% tube, mesh blocks 45%, dimmer at 80%, humidity 30%"
    names = [fact.name for fact in heard_in(text).facts]
    assert names == [FactName.TUBE, FactName.SCREEN, FactName.DIMMER]


def test_two_animals_and_kin_are_asked_about() -> None:
    assert asked("a corn snake and a leopard gecko") == {FactName.ANIMAL}
    assert asked("my gecko is cold") == {FactName.ANIMAL}
    assert asked("my dragon") == {FactName.ANIMAL}


def test_spaces_signs_and_letters_from_elsewhere_are_read_and_shown_as_typed() -> None:
    text = "Beardie：　１２％ tube, 14½″ to his back, basking 39,5\u00a0℃"
    heard = heard_in(text)
    assert [told(fact) for fact in heard.facts] == ["bearded dragon", "12", "14.5 in", "39.5 C"]
    distance = heard.all(FactName.DISTANCE_BACK)[0]
    assert distance.words == "14½″ to his back"


def test_a_message_too_long_is_read_to_its_limit_and_said_so() -> None:
    text = "basking 98F. " + "blah " * 500
    assert values(text, FactName.BASKING) == ["98 F"]
    assert asked(text) == {FactName.TEXT}
