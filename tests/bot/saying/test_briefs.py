"""The briefs of the questions that moved, at the width of a phone, in every language and unit."""

import re

import pytest

from bot.ask import ask
from bot.brief import MOST_LINES, phone_lines
from bot.commands import COMMANDS
from bot.facts import Say
from bot.language.units import Units
from bot.preferences import LANGUAGES, Language, Preferences
from bot.reply import PartName, Reply, Role
from bot.saying.voice import voice
from bot.saying.words import Words
from tests.bot.saying import pinning

# A question that shows all of itself at once, such as a page of the guide, has no brief.
MOVED = [command for command in COMMANDS if command.tell and len(command.opens) < len(PartName)]
EACH = 20
MOST_WORDS = 12
# A figure and its unit are read as one word.
UNIT = re.compile(r"(?<=\d)\s(?=°[CF]|in\b|cm\b|h\b)")
# What is quoted is the asker's own.
QUOTED = re.compile(r"“[^”]*”|„[^“]*“")
# Answers after which there is nothing to do.
NOTHING_TO_DO = ("convert",)


def asked(name: str) -> list[str]:
    examples = next(command.examples for command in MOVED if command.name == name)
    is_pinned = (pinning.FOLDER / f"{name}.toml").exists()
    return [*examples, *(pinning.lines(name)[:EACH] if is_pinned else ())]


def told(line: str, language: Language, units: Units) -> Reply:
    return ask(line, Preferences(forced_units=units, language=language))


@pytest.mark.parametrize("name", [command.name for command in MOVED])
@pytest.mark.parametrize("language", LANGUAGES)
def test_a_brief_fits_a_phone_and_begins_with_a_short_sentence(
    name: str, language: Language
) -> None:
    for line in asked(name):
        for units in Units:
            reply = told(line, language, units)
            # What cannot wait has its own measure: tests/bot/dangers.
            if reply.status == "problem" or reply.dangers:
                continue
            assert reply.language == language, line
            assert phone_lines(reply.brief) <= MOST_LINES, (line, reply.brief)
            assert reply.brief[0].role is Role.HEAD
            first = re.split(r"[.!?](?: |$)", reply.brief[0].text)[0]
            assert len(UNIT.sub("", first).split()) <= MOST_WORDS, first
            does = {Role.STEP, Role.CAUTION} & {one.role for one in reply.brief}
            assert does or name in NOTHING_TO_DO, line


@pytest.mark.parametrize("name", [command.name for command in MOVED])
def test_another_language_tells_the_same_figures(name: str) -> None:
    for line in asked(name):
        replies = [told(line, language, Units.CM) for language in LANGUAGES]
        if replies[0].dangers or replies[0].status == "problem":
            continue
        first, *others = (figures(reply) for reply in replies)
        assert all(other == first for other in others), line
        assert len({reply.values for reply in replies}) == 1
        assert len({len(reply.steps) for reply in replies}) == 1


def figures(reply: Reply) -> set[str]:
    text = pinning.everything(reply).replace(" bis ", " to ")
    return set(pinning.in_text(re.sub(r"(\d),(\d)", r"\1.\2", text)))


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_brief_that_heats_a_night_lacks_its_thermostat(language: Language) -> None:
    heated = 0
    for line in asked("night"):
        for units in Units:
            reply = told(line, language, units)
            off = next((v for v in reply.values if v.name == "thermostat_off"), None)
            heats = any("W" in one.text for one in reply.brief if one.role is Role.STEP)
            if off and heats and not reply.dangers:
                heated += 1
                assert sum(one.role is Role.STEP for one in reply.brief) == 2, reply.brief
    assert heated > 5


def test_what_is_not_there_in_a_language_is_told_whole_in_english_and_says_so_once(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    note, rest = (voice("de", Units.CM).text(Say(f"only-english{end}")) for end in ("", "-rest"))
    is_there = Words.__contains__
    missing = ("convert-", "night-")
    monkeypatch.setattr(
        Words,
        "__contains__",
        lambda self, key: (
            is_there(self, key) and not (self.language == "de" and key.startswith(missing))
        ),
    )
    reply = told("convert 14in", "de", Units.CM)
    assert reply.language == "en"
    assert [line.text for line in reply.brief].count(note) == 1
    assert reply.brief[0].text.startswith("14 in is 35.56 cm")
    danger = told("night room:2C animal:bearded dragon", "de", Units.CM)
    assert danger.language == "en"
    assert "wärmeres Zimmer" in danger.brief[0].text
    assert [line.text for line in danger.brief].count(rest) == 1
    assert note not in pinning.everything(danger)
    assert note not in pinning.everything(told("convert 14in", "en", Units.CM))


def test_a_danger_and_its_answer_are_told_in_the_language_of_who_asks() -> None:
    danger = told("night room:2C animal:bearded dragon", "de", Units.CM)
    assert danger.dangers
    assert danger.language == "de"
    assert "auf Deutsch" not in pinning.everything(danger)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("units", Units)
def test_a_plan_for_a_box_that_is_too_small_says_tube_and_heat(
    language: Language, units: Units
) -> None:
    asker = Preferences(forced_units=units, language=language)
    line = "plan animal:slider enclosure:48x24x24in lid:full mesh room:70F night:66F"
    brief = ask(line, asker).brief
    steps = [one.text for one in brief if one.role is Role.STEP]
    assert len(steps) == 2
    assert len(UNIT.sub("", steps[0]).split()) <= MOST_WORDS, steps
