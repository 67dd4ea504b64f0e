"""What an editor gets wrong in a words file is an error with its place, before it is sent."""

from dataclasses import dataclass
from enum import Enum, auto

import pytest

from bot.facts import (
    Bound,
    Figure,
    Kind,
    Name,
    Say,
    Says,
    degrees,
    hours,
    metres,
    plain_number,
    share,
    uvi,
    watts,
)
from bot.language.units import Units
from bot.saying.compile import WordsError
from bot.saying.voice import Voice, voice
from bot.saying.words import Words, words


class Answer(Enum):
    TOO_WARM = auto()
    NOTHING = auto()


@dataclass(frozen=True)
class Facts:
    room: object = degrees(18.0)
    answer: object = Answer.TOO_WARM
    count: object = 2
    off: object = None
    animal: object = Name("animal-argentine-tegu")
    things: object = ()
    far: object = metres(0.41, (0.38, 0.52))


def shared(language: str) -> dict[str, str]:
    stems = ("figures", "list", "animal", "own")
    return {stem: words(language).text(stem) for stem in stems}


def said(text: str, facts: object = None, language: str = "en", units: Units = Units.IN) -> str:
    told = Words(language, shared(language) | {"x": text})
    return Voice(told, units).say(Say("x-a", facts or Facts())).replace("\u00a0", " ")


@pytest.mark.parametrize(
    ("fault", "told"),
    [
        ("x-a = Hm { TEMP($room)", "en/x.ftl:1: x-a: Expected token"),
        ("x-b = one\nx-b = two", "en/x.ftl:2: x-b is said twice"),
        ("x-a = { x-gone }", "en/x.ftl:1: x-a: there is no x-gone"),
        ("x-a = { x-b }\nx-b = { x-a }", "says itself"),
        ("x-a = { TEMPS($room) }", "there is no function TEMPS"),
        ('x-a = { TEMP($room, form: "most") }', "TEMP has no form 'most'"),
        ('x-a = { TEMP($room, from: "best") }', "TEMP has no option from"),
        ('x-a = { TEMP($room, units: "last") }', "units is 'both', 'first' or 'second'"),
        ('x-a = { LENGTH($far, form: "doubt") }', "LENGTH has no form 'doubt'"),
        ('x-a = { TEMP("18") }', "TEMP takes one fact"),
        ("x-a = { $count ->\n [one] one\n }", "Expected one of the variants to be marked"),
        ("x-a = { $count ->\n [one] one\n [one] one\n *[other] more\n }", "has [one] twice"),
        ("x-a = { 3 }", "NumberLiteral is not used here"),
    ],
)
def test_exact_a_fault_in_a_file_is_found_when_it_is_read(fault: str, told: str) -> None:
    with pytest.raises(WordsError) as error:
        Words("en", shared("en") | {"x": fault}).check()
    assert told in str(error.value)


@pytest.mark.parametrize(
    ("fault", "told"),
    [
        ("x-a = { LENGTH($room) }", "LENGTH($room) got"),
        ("x-a = { $room }", "cannot be said plainly"),
        ("x-a = { $gone }", "no attribute 'gone'"),
        ("x-a = { TEMP($off) }", "TEMP($off) got None"),
        ("x-a = { NAME($room) }", "is no name"),
        ("x-a = { DAY($room) }", "DAY($room) got"),
        ('x-a = { NAME($animal, form: "odd") }', "there is no message -animal-argentine-tegu.odd"),
    ],
)
def test_exact_a_wrong_fact_is_never_said(fault: str, told: str) -> None:
    with pytest.raises(WordsError) as error:
        said(fault)
    assert told in str(error.value)


def test_exact_a_message_that_nobody_wrote_is_an_error() -> None:
    with pytest.raises(WordsError, match="there is no message x-b"):
        Voice(Words("en", shared("en") | {"x": ""}), Units.IN).say(Says("x", None)("b"))


def test_exact_a_variant_is_chosen_by_the_fact() -> None:
    choice = "x-a = { $%s ->\n [0] none at all\n [one] one\n [too_warm] warm\n [yes] yes\n"
    choice += " [some] known\n [none] unknown\n *[other] other\n }"
    told = [said(choice % "count", Facts(count=count)) for count in (0, 1, 2)] + [
        said(choice % "answer"),
        said(choice % "answer", Facts(answer=Answer.NOTHING)),
    ]
    told += [said(choice % "count", Facts(count=True)), said(choice % "off")]
    told += [said(choice % "room")]
    assert told == ["none at all", "one", "other", "warm", "other", "yes", "unknown", "known"]


@pytest.mark.parametrize(
    ("pattern", "english", "german"),
    [
        ("{ TEMP($room) }", "64 °F (18 °C)", "18 °C (64 °F)"),
        ('{ TEMP($room, units: "first") }', "64 °F", "18 °C"),
        ("{ LENGTH($far) }", "16 in (41 cm)", "41 cm (16 in)"),
        (
            '{ LENGTH($far, form: "range") }',
            "15 to 20.5 in (38 to 52 cm)",
            "38 bis 52 cm (15 bis 20,5 in)",
        ),
        ('{ CAP($animal, form: "a") }', "An Argentine tegu", "Ein Schwarzweißer Teju"),
        ("{ LIST($things) }", "a, b and c", "a, b und c"),
    ],
)
def test_exact_a_figure_is_told_in_both_units_and_each_language(
    pattern: str, english: str, german: str
) -> None:
    facts = Facts(things=("a", "b", "c"))
    assert said(f"x-a = {pattern}", facts) == english
    assert said(f"x-a = {pattern}", facts, "de", Units.CM) == german


@pytest.mark.parametrize(
    ("figure", "form", "told"),
    [
        (uvi(3.94, (2.4, 5.46)), "doubt", "3.9 (2.4 to 5.5)"),
        (uvi(0.2, (0.03, 0.5)), "doubt", "0.20 (0.03 to 0.50)"),
        (uvi(4.0, (3.0, 5.0)), "range", "3 to 5"),
        (uvi(0.75), "given", "0.75"),
        (share(0.446), "best", "45 %"),
        (plain_number(0.944, (0.906, 1.0)), "doubt", "0.94 (0.91 to 1)"),
        (plain_number(36.4), "doubt", "36"),
        (plain_number(3.14159), "best", "3.1"),
        (watts(74.6, (50.4, 100.0)), "range", "50 to 100 W"),
        (hours(13.333), "best", "13 h 20 min"),
        (hours(12.0), "best", "12 h"),
        (degrees(-0.2), "best", "32 °F (0 °C)"),
        (metres(0.2601, bound=Bound.AT_LEAST), "best", "10.5 in (27 cm)"),
        (metres(0.2659, bound=Bound.AT_MOST), "best", "10 in (26 cm)"),
        (metres(0.28, (0.2601, 0.2999), Bound.INWARD), "range", "10.5 to 11.5 in (27 to 29 cm)"),
        (metres(0.2601, (0.2601, 0.2999), Bound.INWARD), "best", "10.5 in (27 cm)"),
    ],
)
def test_exact_figures_are_rounded_so_that_none_passes_its_bound(
    figure: Figure, form: str, told: str
) -> None:
    text = voice("en", Units.IN).figure(figure, form, False)
    assert text.replace("\u00a0", " ") == told


def test_exact_number_and_unit_stay_on_one_line() -> None:
    for kind in set(Kind) - {Kind.UVI, Kind.NUMBER}:
        text = voice("en", Units.IN).figure(Figure(kind, 2.0, 2.0, 2.0), "best", True)
        assert " " not in text
        assert ("\u00a0" in text) is (kind is not Kind.ANGLE)
