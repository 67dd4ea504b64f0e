"""Hostile text: one plain, harmless sentence, never another error, never much work."""

from collections.abc import Callable
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.language.dates import read_age, read_date
from bot.language.errors import NotUnderstoodError
from bot.language.lamps import read_fixture, read_tube_strength
from bot.language.quantities import (
    Units,
    read_convertible,
    read_duration,
    read_length,
    read_number,
    read_number_range,
    read_percent,
    read_power,
    read_temperature,
    read_temperature_difference,
    read_volume,
)
from bot.language.readings import read_dated_readings, read_placed_readings
from bot.language.screens import read_screen
from bot.language.shown import shown
from bot.language.sizes import read_size
from bot.language.words import split_line
from tests.bot.language.steps import steps_of
from tests.bot.refusing import sentence
from tests.some import some

Reader = Callable[[str], Any]

OPTIONS = ("tube", "reflector", "screen", "animal", "distance")
READERS: dict[str, Reader] = {
    "length": read_length,
    "bare length": lambda text: read_length(text, Units.IN),
    "temperature": read_temperature,
    "difference": read_temperature_difference,
    "convertible": read_convertible,
    "power": read_power,
    "duration": read_duration,
    "volume": read_volume,
    "number": read_number,
    "numbers": read_number_range,
    "percent": read_percent,
    "tube": read_tube_strength,
    "fixture": read_fixture,
    "screen": read_screen,
    "date": read_date,
    "age": read_age,
    "size": read_size,
    "placed": read_placed_readings,
    "dated": read_dated_readings,
    "line": lambda text: split_line(text, OPTIONS),
    "free line": lambda text: split_line(text, OPTIONS, free="animal"),
}
QUANTITIES = [name for name in READERS if "line" not in name and name != "fixture"]

HOSTILE = [
    *("nan", "NaN in", "inf", "-inf cm", "Infinity", "1e5", "1e400 in", "1E3F", "0x10 in"),
    *("9**9**9", "9^9^9 in", "10**10000000", "14²in", "2³ C", "14 in**2", "14_000 mm", "1_0"),
    *("14\x00in", "14\x1b[31min", "\u202e41 in", "14 in\x7f", "\ud800", "١e٥ in"),
    *("<@123456789012345678>", "@everyone 14in", "<@&1> 14F", "<#99>", "</ask:1>", "<:a:1>"),
    *("**14** in", "`14in`", "||14in||", "[14in](https://example.org)", "# 14in", "> 14in"),
    *("https://example.org/14in", "14in\n# title", "14 in # c", "14 in; import os"),
    *('__import__("os").system("true") in', "in**(9**9**9)", "a.b in", "[1,2] in", "$(true)"),
    *("%s%s%n", "{0.__class__}", "' OR 1=1 --", "<script>alert(1)</script>", "&#x31;4in"),
]
ENDLESS = [
    *("1" * 10_000, "9**" * 3333, "½" * 10_000, " " * 10_000, "\x00" * 10_000, "(" * 10_000),
    *("a" * 10_000, "1/2 " * 2500, "-" * 10_000, "1," * 5000, "´" * 10_000, "\u0301" * 10_000),
    *("12 in, " * 1500, "x1" * 5000, "no " * 3000, "1'2\"" * 2500, "tube:" * 2000, '"' * 10_000),
]
MARKUP = set("*_~`|<>@#[]{}\\\n\r\t")


def refusal(read: Reader, text: str) -> NotUnderstoodError:
    with pytest.raises(NotUnderstoodError) as caught:
        read(text)
    return caught.value


def answer_to(read: Reader, text: str) -> str:
    """Return the sentence of the refusal, or nothing where the text is read."""
    try:
        read(text)
    except NotUnderstoodError as error:
        return sentence(error)
    return ""


def harmless(text: str) -> bool:
    return text.isprintable() and not MARKUP & set(text) and "://" not in text


@pytest.mark.parametrize("name", QUANTITIES)
def test_hostile_text_gets_one_plain_sentence(name: str) -> None:
    for text in HOSTILE + ENDLESS:
        sentence = answer_to(READERS[name], text)
        assert sentence.startswith("I read "), text[:40]
        assert sentence.endswith(".")
        assert harmless(sentence)
        assert len(sentence) < 320


@pytest.mark.parametrize("name", READERS)
@settings(max_examples=some(60))
@given(st.text(max_size=300))
def test_any_text_is_read_or_refused(name: str, text: str) -> None:
    assert harmless(answer_to(READERS[name], text))


@pytest.mark.parametrize("name", READERS)
@settings(max_examples=some(60))
@given(st.text(alphabet="0123456789.,/-'\" xX%°½”fFcCinmt:=\u00a0\u202f", max_size=80))
def test_any_mixture_of_the_grammar_is_read_or_refused(name: str, text: str) -> None:
    assert harmless(answer_to(READERS[name], text))


@given(st.text(max_size=500))
def test_shown_text_is_short_and_harmless(text: str) -> None:
    line = shown(text)
    assert len(line) <= 40
    assert harmless(line)


def test_shown_text_keeps_what_people_need_to_recognise() -> None:
    assert shown("14 1/2 in") == "14 1/2 in"
    assert shown("1'2\" on 03/04/2026") == "1'2\" on 03/04/2026"
    assert shown("café\u0301\u0301\u0301") == "café\u0301"
    assert shown("9**9") == "9 9"
    assert shown("@everyone see https://example.org/x") == "everyone see https: example.org x"
    assert shown("x" * 41) == "x" * 39 + "…"


@pytest.mark.parametrize("name", READERS)
def test_a_huge_text_costs_no_more_steps_than_a_long_one(name: str) -> None:
    for unit in ("9", "½", "\x00", "tube:"):
        refusal(READERS[name], unit * 3000)
        longer = steps_of(lambda unit=unit: refusal(READERS[name], unit * 3000))  # type: ignore[misc]
        huge = steps_of(lambda unit=unit: refusal(READERS[name], unit * 300_000))  # type: ignore[misc]
        assert huge <= longer + 50
