"""Questions about saved data that moved: nothing lost, whole in each language, short to read.

Pinned: our own values prove nothing but that none got lost. ``pinning.py`` renews them.
"""

import re
from pathlib import Path

import pytest

from bot.brief import MOST_LINES, phone_lines
from bot.commands import command_at
from bot.database.store import open_store
from bot.language.units import Units
from bot.preferences import LANGUAGES, Language
from bot.reply import Reply, Role
from tests.bot.keeping import pinning
from tests.bot.saying.test_briefs import MOST_WORDS, figures

KINDS = [(language, units) for language in LANGUAGES for units in Units]


async def answers(folder: Path, language: Language, units: Units) -> list[tuple[str, Reply]]:
    """Return the answers of the questions that moved, with their lines."""
    store = await open_store("", folder)
    found = await pinning.answers(pinning.desk_at(store), units, language)
    await store.close()
    told = zip(pinning.lines(), found, strict=True)
    return [(line, reply) for line, reply in told if has_moved(line)]


def has_moved(line: str) -> bool:
    found = command_at(line)
    return found is not None and found[0].tell is not None


@pytest.mark.slow
async def test_unchanged_a_saved_question_lost_no_value_and_no_figure(tmp_path: Path) -> None:
    store = await open_store("", tmp_path)
    found = await pinning.answers(pinning.desk_at(store), Units.IN, "en")
    await store.close()
    for line, before, reply in zip(pinning.lines(), pinning.pinned(), found, strict=True):
        assert {"line": line, **pinning.told(reply)} == before


@pytest.mark.slow
@pytest.mark.parametrize(("language", "units"), KINDS)
async def test_a_brief_fits_a_phone_and_is_whole_in_the_language(
    tmp_path: Path, language: Language, units: Units
) -> None:
    for line, reply in await answers(tmp_path, language, units):
        # Who has just chosen a language has it from the next question on.
        if not line.startswith("mine prefer"):
            assert reply.language == language, line
        # How a text that was not read is refused has its own measure.
        if reply.dangers or reply.status == "problem":
            continue
        assert phone_lines(reply.brief) <= MOST_LINES, (line, reply.brief)
        assert reply.brief[0].role is Role.HEAD
        first = re.split(r"[.!?](?: |$)", reply.brief[0].text)[0]
        assert len(first.split()) <= MOST_WORDS, first


@pytest.mark.slow
async def test_another_language_tells_the_same_figures(tmp_path: Path) -> None:
    told = [await answers(tmp_path / x, x, Units.CM) for x in LANGUAGES]
    for (line, first), (_, other) in zip(*told, strict=True):
        assert other.status == first.status, line
        assert other.values == first.values
        if not first.dangers and first.status == "ok":
            assert figures(other) == figures(first), line
            assert len(other.steps) == len(first.steps), line
