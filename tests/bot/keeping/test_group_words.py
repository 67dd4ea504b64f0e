"""What moderators are answered: nothing lost, whole in each language, short to read.

Pinned: our own values prove nothing but that none got lost. ``group_pins.py`` renews them.
"""

import re
from functools import cache

import pytest

from bot.brief import MOST_LINES, phone_lines
from bot.commands import command_at
from bot.preferences import LANGUAGES, Language
from bot.reply import Reply, Role
from tests.bot.keeping import group_pins
from tests.bot.saying.test_briefs import MOST_WORDS, figures

UNITS = ("in", "cm")


@cache
def replies(units: str, language: Language) -> list[tuple[str, Reply]]:
    """Return the answers of the questions that moved, in turn."""
    return group_pins.replies(units, language)


def moved(units: str, language: Language) -> list[tuple[str, Reply]]:
    told = []
    for line, reply in replies(units, language):
        found = command_at(line) or command_at(line.partition(" ")[2])
        assert found is not None, line
        if found[0].tell is not None:
            told.append((line, reply))
    return told


@pytest.mark.slow
@pytest.mark.parametrize("units", UNITS)
def test_unchanged_moderators_lost_no_value_and_no_figure(units: str) -> None:
    before = group_pins.pinned()[units]
    now = [[line, group_pins.told(reply)] for line, reply in replies(units, "en")]
    assert len(now) == len(before)
    for was, found in zip(before, now, strict=True):
        assert found == was


@pytest.mark.slow
@pytest.mark.parametrize("units", UNITS)
@pytest.mark.parametrize("language", LANGUAGES)
def test_a_brief_fits_a_phone_and_is_whole_in_the_language(units: str, language: Language) -> None:
    for line, reply in moved(units, language):
        assert reply.language == language, line
        assert phone_lines(reply.brief) <= MOST_LINES, (line, reply.brief)
        assert reply.brief[0].role is Role.HEAD
        # What could not be read is told in one sentence with an example, which is longer, and the
        # guide names its first page.
        if reply.answer.startswith(("I read", "Ich las")) or "topic:guide" in line:
            continue
        first = re.split(r"[.!?](?: |$)", reply.brief[0].text)[0]
        assert len(first.split()) <= MOST_WORDS, first


@pytest.mark.parametrize("units", UNITS)
def test_another_language_tells_the_same_figures(units: str) -> None:
    for (line, first), (_, other) in zip(*(moved(units, x) for x in LANGUAGES), strict=True):
        assert other.status == first.status, line
        assert other.values == first.values, line
        if first.status == "ok":
            assert figures(other) == figures(first), line
            assert len(other.steps) == len(first.steps), line
            assert len(other.rows) == len(first.rows), line
