"""What a phone shows of an answer on Discord at first sight: the brief, at most eight lines."""

import re
from textwrap import wrap

import pytest

from bot.ask import ask
from bot.brief import MOST_LINES, PHONE
from bot.commands import COMMANDS
from bot.preferences import LANGUAGES, Language, Preferences
from bot.render.post import render_post

# What is itself the answer, such as a page or a list, is as long as it is.
EXAMPLES = [e for c in COMMANDS if not c.shown_open(()) for e in c.examples]
HAZARDS = ["the lamp is smoking", "my gecko got a burn", "is a red bulb ok at night"]
# Typed with mistakes, with nothing, of what is not known.
MISTAKEN = [
    "distance",
    "distance tube:banana",
    "temps animal:unicorn basking:100F",
    "lamp lavalamp",
]


def shown_lines(text: str) -> int:
    """Return how many lines of a phone a text of Discord takes, without its markup."""
    bare = re.sub(r"\*\*|^-# |^### |\\(?=\W)", "", text, flags=re.MULTILINE)
    return sum(len(wrap(line, PHONE)) or 1 for line in bare.split("\n") if line)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("line", [*EXAMPLES, *HAZARDS, *MISTAKEN])
def test_an_answer_is_seen_at_once(line: str, language: Language) -> None:
    brief = render_post(ask(line, Preferences(language=language))).brief
    assert 1 <= shown_lines(brief) <= MOST_LINES, brief


def test_lines_are_counted_as_a_phone_wraps_them() -> None:
    assert shown_lines("**" + "x " * 19 + "**\n-# " + "y" * 38) == 2
    assert shown_lines("a" * 39) == 2
