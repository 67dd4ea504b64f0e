"""The words of dangers: whole in every language, short enough for a phone, the same acts."""

import re
import tomllib
from pathlib import Path

import pytest

from bot.ask import ask
from bot.brief import PHONE, phone_lines
from bot.dangers.calls import call_sentences
from bot.dangers.table import Hazard, HazardKind, Later, Soon, Who, hazard, hazards
from bot.facts import Say
from bot.language.units import Units
from bot.preferences import LANGUAGES, Language, Preferences
from bot.problems import problem
from bot.reply import Alarm, Role
from bot.said_first import said_first
from bot.saying.voice import voice
from bot.saying.words import words

EVERY = pytest.mark.parametrize("key", list(hazards()))
IN_EACH = pytest.mark.parametrize("language", LANGUAGES)
PRESSING = [key for key, row in hazards().items() if row.kind not in ("wrong", "never")]
TWINS = tomllib.loads((Path(__file__).parent / "twins.toml").read_text(encoding="utf-8"))
NOTHING = problem("help", Say("refused-nothing"), Preferences())


def acts_of(row: Hazard) -> list[Say]:
    return [*row.do_now, *(act for instead in instead_of(row) for act in instead.do_now)]


def instead_of(row: Hazard) -> list[Later]:
    return [x for x in (row.later, row.one_lamp, row.one_lamp_later) if x]


def messages_of(row: Hazard) -> list[Say]:
    titles = [row.title, *(instead.title for instead in instead_of(row))]
    return [*titles, *acts_of(row), *row.then, row.asked, row.why]


def test_every_row_has_its_messages_and_no_other_is_written() -> None:
    wanted = {say.id for row in hazards().values() for say in messages_of(row)}
    for language in LANGUAGES:
        assert set(words(language).entries("danger")) == wanted


def test_every_call_has_its_words_and_no_other_is_written() -> None:
    calls = [row.call for row in hazards().values()]
    conditions = {c for call in calls for c in (call.only_if, call.else_if, call.also_if) if c}
    wanted = {f"call-{form}-{c}" for c in conditions for form in ("if", "brief-if")}
    wanted |= {f"call-note-{c.note}" for c in calls if c.note}
    told = ("call-if-", "call-brief-if-", "call-note-")
    for language in LANGUAGES:
        written = set(words(language).entries("call"))
        assert {k for k in written if k.startswith(told)} == wanted


@IN_EACH
@EVERY
def test_every_call_can_be_said_alone_and_together(key: str, language: Language) -> None:
    speaker = voice(language, Units.CM)
    for spoken in (True, False):
        for row in hazards().values():
            for say in call_sentences([(hazard(key), spoken), (row, False)]):
                assert speaker.text(say).endswith(".")


def test_nobody_is_called_by_a_name_that_is_no_member() -> None:
    assert all(isinstance(row.call.who, Who) for row in hazards().values())
    assert all(isinstance(row.call.soon, Soon) for row in hazards().values())
    assert all((row.call.also_who is None) == (not row.call.also_if) for row in hazards().values())


@IN_EACH
@EVERY
def test_titles_and_acts_are_short(key: str, language: Language) -> None:
    row = hazard(key)
    for units in Units:
        say = voice(language, units).text
        titles = [row.title, *(instead.title for instead in instead_of(row))]
        assert all(len(say(title)) <= PHONE for title in titles)
        assert not [say(act) for act in acts_of(row) if len(say(act).split()) > 12]


@IN_EACH
@pytest.mark.parametrize("key", PRESSING)
def test_the_short_form_is_at_most_four_lines_of_a_phone(key: str, language: Language) -> None:
    for units in Units:
        for urgency in ("", "this week"):
            asker = Preferences(language=language, forced_units=units)
            for one_lamp in (False, True):
                heard = {"key": key, "urgency": urgency, "one_lamp": one_lamp}
                alarms = [Alarm.model_validate(heard)]
                told = said_first(NOTHING, alarms, asker).brief
                acts = [line for line in told if line.role is Role.DANGER]
                assert 1 <= phone_lines(acts) <= 4


def pairs() -> list[tuple[str, str, str]]:
    english, german = (voice(language, Units.CM).text for language in ("en", "de"))
    return [(s.id, english(s), german(s)) for row in hazards().values() for s in messages_of(row)]


def test_german_tells_the_same_figures() -> None:
    for key, english, german in pairs():
        told = re.findall(r"\d+(?:\.\d+)?", english)
        assert re.findall(r"\d+(?:\.\d+)?", re.sub(r"(\d),(\d)", r"\1.\2", german)) == told, key


@pytest.mark.parametrize("english", TWINS)
def test_german_names_in_each_act_what_english_names(english: str) -> None:
    """A plug is a plug, a vet a vet, and what one forbids the other forbids."""
    first, second = (re.compile(rf"\b(?:{x})", re.I) for x in (english, TWINS[english]["german"]))
    ours = TWINS[english].get("but", [])
    acts = [pair for pair in pairs() if "-do-now-" in pair[0] or "-then-" in pair[0]]
    told = [(key, bool(first.search(a)), bool(second.search(b))) for key, a, b in acts]
    assert any(a and b for _, a, b in told)
    assert [key for key, a, b in told if a != b and key not in ours] == []


@IN_EACH
def test_an_alarm_is_told_in_the_language_whatever_the_answer(language: Language) -> None:
    asker = Preferences(language=language)
    say = voice(language, Units.IN).text
    for line in ("the lamp is smoking", "needs bearded dragon the lamp is smoking", "xyz:1 smoke"):
        reply = ask(line, asker)
        if reply.dangers:
            assert reply.title == say(hazard("fire").title)
            acts = (say(hazard("fire").do_now[0]), f"{say(hazard('fire').title)}.")
            assert reply.brief[0].text in acts
    alone = ask("the lamp is smoking", asker)
    assert alone.language == language
    assert next(part.label for part in alone.parts) == say(Say("part-steps"))


def test_what_stays_english_behind_a_german_alarm_says_so_once() -> None:
    german = Preferences(language="de")
    reply = said_first(ask("convert 14in", Preferences()), [Alarm(key="fire")], german)
    note = voice("de", Units.IN).text(Say("only-english-rest"))
    assert reply.language == "en"
    assert [line.text for line in reply.brief].count(note) == 1
    assert reply.dangers[0].call["only_if"] == "Flammen oder Rauch, der nicht aufhört"


def test_a_calm_rule_alone_has_a_title_of_its_own() -> None:
    for language in LANGUAGES:
        reply = said_first(NOTHING, [Alarm(key="fire", asked=True)], Preferences(language=language))
        assert reply.title == voice(language, Units.IN).text(Say("door-title-asked"))
        assert hazard("fire").kind is HazardKind.PEOPLE
