"""Whatever strangers put in: no error, no markup, no limit broken, the same question again."""

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from bot.ask import ask
from bot.command import Command
from bot.commands import COMMANDS
from bot.preferences import Preferences
from bot.saved.group_file import ServerExport
from bot.saved.keeper_file import KeeperExport
from tests.bot.language.test_hostile import ENDLESS, HOSTILE
from tests.fuzz.files import FILES
from tests.fuzz.harmless import assert_harmless
from tests.fuzz.targets import TARGETS
from tests.some import FULL, crossed, some

OPTIONS = [option for command in COMMANDS for option in command.query.options()]
WORDS = [
    *HOSTILE,
    *(example for command in COMMANDS for example in command.examples),
    *(option.example for option in OPTIONS if option.example),
    *(f"{option.name}:" for option in OPTIONS),
    *('"', "'", "=", ":", "|", "~", "~n", "\\", "\n", "\x1f", "\u200b", "\u202e", "𝟙", "😀", "é"),
]
SALADS = st.lists(st.sampled_from(WORDS) | st.text(max_size=8), max_size=8).map("".join)
NUMBERS = st.integers(0, 10_000)
# The pool has its own test in test_grammar.py.
QUICK = [name for name in TARGETS if name not in ("page", "wire", "pool")]


@pytest.mark.parametrize("name", QUICK)
@settings(max_examples=some(80))
@given(number=NUMBERS, text=st.text(max_size=400))
def test_any_text_is_taken(name: str, number: int, text: str) -> None:
    TARGETS[name](number, text)


@pytest.mark.parametrize("name", QUICK)
@settings(max_examples=some(120))
@given(number=NUMBERS, text=SALADS)
@example(number=0, text="\ud8003-5")
def test_any_salad_of_what_is_known_is_taken(name: str, number: int, text: str) -> None:
    TARGETS[name](number, text)


@pytest.mark.slow
@settings(max_examples=some(200))
@given(
    file=st.sampled_from(FILES),
    places=st.lists(st.tuples(st.integers(0, 600), st.sampled_from(WORDS)), max_size=3),
)
def test_a_file_with_anything_put_into_it_is_taken(
    file: str, places: list[tuple[int, str]]
) -> None:
    for place, word in places:
        file = file[:place] + word + file[place + len(word) :]
    for number in range(2):
        TARGETS["file"](number, file)
        TARGETS["import"](number, file)


def test_the_files_themselves_are_taken() -> None:
    assert KeeperExport.model_validate_json(FILES[0]).enclosures[0].readings
    assert ServerExport.model_validate_json(FILES[1]).targets


@pytest.mark.parametrize("name", QUICK)
def test_every_hostile_text_that_was_ever_thought_of_is_taken(name: str) -> None:
    for number, text in enumerate([*HOSTILE, *ENDLESS]):
        for shift in range(4 if FULL else 1):
            TARGETS[name](number + shift * 7, text)


@pytest.mark.parametrize(
    ("command", "text"),
    crossed(COMMANDS, ("[x](http://a.invalid)", "<@&5>", "\u202egnp.exe", "**b**"), 2),
    ids=lambda one: getattr(one, "name", ascii(one)),
)
def test_the_example_beside_a_refusal_repeats_no_markup(command: Command, text: str) -> None:
    for option in command.query.options():
        assert_harmless(ask(f"{command.name} {option.name}:{text}", Preferences()))


@pytest.mark.parametrize(
    "words",
    [
        "setting up a tank with a 12% tube, how do i use a dimmer for my veiled chameleon",
        "my bearded dragon squints under his 12% uv tube with no mesh 12 in away",
        "beardie 12% no mesh",
    ],
)
@pytest.mark.parametrize(
    "odd", ["<@1>", "@everyone", "**b**", "\x00", "\u202e", "http://a.invalid", "[x](http://a.b)"]
)
def test_a_question_that_is_offered_repeats_no_markup(words: str, odd: str) -> None:
    for line in (f"{words} {odd}", f"{odd} {words}"):
        assert_harmless(ask(line, Preferences()))
