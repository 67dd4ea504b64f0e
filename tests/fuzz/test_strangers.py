"""Whatever strangers put in: no error, no markup, no limit broken, the same question again."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.ask import ask
from bot.commands import COMMANDS
from bot.preferences import Preferences
from tests.bot.language.test_hostile import ENDLESS, HOSTILE
from tests.fuzz.harmless import assert_harmless
from tests.fuzz.targets import TARGETS

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


@pytest.mark.parametrize("name", TARGETS)
@settings(max_examples=80)
@given(number=NUMBERS, text=st.text(max_size=400))
def test_any_text_is_taken(name: str, number: int, text: str) -> None:
    TARGETS[name](number, text)


@pytest.mark.parametrize("name", TARGETS)
@settings(max_examples=120)
@given(number=NUMBERS, text=SALADS)
def test_any_salad_of_what_is_known_is_taken(name: str, number: int, text: str) -> None:
    TARGETS[name](number, text)


@pytest.mark.parametrize("name", TARGETS)
def test_every_hostile_text_that_was_ever_thought_of_is_taken(name: str) -> None:
    for number, text in enumerate([*HOSTILE, *ENDLESS]):
        for shift in range(4):
            TARGETS[name](number + shift * 7, text)


@pytest.mark.parametrize("command", COMMANDS, ids=lambda command: command.name)
def test_the_example_beside_a_refusal_repeats_no_markup(command: object) -> None:
    for text in ("[x](http://a.invalid)", "<@&5>", "\u202egnp.exe", "**b**"):
        for option in OPTIONS:
            assert_harmless(
                ask(f"{getattr(command, 'name', '')} {option.name}:{text}", Preferences())
            )
