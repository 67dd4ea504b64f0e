"""Any text of any kind: hearing never raises, never invents, and its work is bounded."""

import re
import tomllib
from importlib.resources import files

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.language.hearing import Ask, Fact, Heard
from bot.language.normal import normalise
from bot.language.quantities import Measure
from calc.name_index import names_with_targets
from tests.bot.language.hearing_score import heard_in
from tests.bot.language.steps import steps_of
from tests.some import some

LEXICON = tomllib.loads(
    (files("bot.language.hearing") / "lexicon.toml").read_text(encoding="utf-8")
)
PHRASES = [phrase for values in LEXICON.values() for rows in values.values() for phrase in rows]
FIGURES = ["98", "12%", "14in", "38 C", "4x2x2", "10.0", "75w", "6 months", "12h", "98/75", "7am"]
FIGURES += ["40 gallon", "1'2\"", "1,200 mm", "10-12 in", "18x16 0.011in", "½", "0", "9999999", "3"]
JOINTS = [" ", ", ", ". ", "\n", " and ", " or ", " to ", " is ", " at ", "", "(", ") ", " - ", "?"]
PIECES = st.sampled_from(
    [*PHRASES, *FIGURES, *names_with_targets(), "corn", "my gecko", "not", "maybe", "should be"]
)
SALADS = st.lists(st.tuples(PIECES, st.sampled_from(JOINTS)), max_size=40).map(
    lambda rows: "".join(piece + joint for piece, joint in rows)
)
# A text of this many characters that repeats one thing is the worst that can be sent.
LONG = 2000
# Lines of Python, about 5 ms of them; the longest sentence of the collection takes 16,000.
MOST_STEPS = 280_000


def holds_its_words(text: str, heard: Heard) -> None:
    rows: list[Fact | Ask] = [*heard.facts, *heard.questions]
    for said in rows:
        assert 0 <= said.start < said.end <= len(text)
        assert said.words == text[said.start : said.end]
        assert said.words.strip()


def number_words_in(words: str) -> bool:
    return bool(
        re.search(r"[0-9]|\b(?:half|an?|one|two|three|ten|teen|ty|x)\w*\b", normalise(words), re.I)
    )


@settings(max_examples=some(300))
@given(st.text(max_size=400))
def test_any_text_is_heard_without_an_error(text: str) -> None:
    holds_its_words(text, heard_in(text))


@settings(max_examples=some(400))
@given(SALADS)
def test_any_salad_of_the_trades_words_is_heard_without_an_error(text: str) -> None:
    heard = heard_in(text)
    holds_its_words(text, heard)
    for fact in heard.facts:
        if isinstance(fact.value, Measure):
            assert number_words_in(fact.words)
            assert fact.value.text.strip()


@given(st.text(alphabet=st.characters(blacklist_categories=["L", "N"]), max_size=200))
def test_a_text_without_letters_and_digits_says_nothing(text: str) -> None:
    assert heard_in(text).facts == ()


@given(SALADS)
def test_a_text_is_heard_the_same_way_every_time(text: str) -> None:
    assert heard_in(text) == heard_in(text)


@settings(max_examples=some(50))
@given(st.lists(st.sampled_from(PHRASES), max_size=25).map(" ".join))
def test_words_without_a_figure_give_no_measure(text: str) -> None:
    if not number_words_in(text):
        assert not any(isinstance(fact.value, Measure) for fact in heard_in(text).facts)


WORST = [
    *("98 ", "basking 98 ", "12% uvb ", "14 in from the log ", "4x2x2 ", "18 mesh ", "½", "1/2 "),
    *(
        "on the mesh ",
        "no mesh or ",
        "a ",
        "reflecter ",
        "12 on 12 off ",
        "should i get ",
        '"',
        "\n",
    ),
    *("my beardie 12% on mesh, 14in to log; basking 98F cool 75 ", "gecko ", "1", "1x", "98 and "),
    *("75w halogen ", "6 months old tube ", "uvi 3 at 12in ", "😀é", "is it 98F ", "not maybe "),
    *(
        "t5",
        "t5 ",
        "12h ",
        "1,200 mm ",
        "1'2\"",
        "18x16 0.011in ",
        "wood ",
        "dials ",
        "screen 20% ",
    ),
    *("mesh (", "not a mesh lid ", "tortoise russian ", "no no no mesh ", "should i should i "),
]


@pytest.mark.parametrize("unit", WORST, ids=ascii)
def test_the_work_is_bounded_whatever_is_repeated(unit: str) -> None:
    text = unit * (LONG // len(unit))
    heard_in(text)
    assert steps_of(lambda: heard_in(text)) < MOST_STEPS


@pytest.mark.parametrize("unit", ["t5 ", "wood ", "no mesh or "])
def test_more_words_of_the_trade_than_any_message_has_are_said_to_be_too_many(unit: str) -> None:
    text = unit * (LONG // len(unit))
    assert heard_in(text).questions[0].question.id == "unclear-long"


def test_what_is_beyond_the_limit_costs_nothing() -> None:
    text = "basking 98 cool 75, " * 100
    heard_in(text)
    assert steps_of(lambda: heard_in(text * 50)) <= steps_of(lambda: heard_in(text)) + 100
