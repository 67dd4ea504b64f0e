"""What an animal needs as the site shows it: the answer to ``needs``, and what to ask next."""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

from bot import guide
from bot.ask import answered
from bot.brief import brief_of
from bot.facts import Name, Say
from bot.preferences import Language, Preferences
from bot.queries.needs import NeedsQuery
from bot.queries.question import Question
from bot.questions.general.needs import needs
from bot.questions.general.needs_facts import Needs
from bot.questions.general.needs_targets import Need, OneNeed
from bot.reply import Line, Reply
from bot.saying.voice import Voice, voice
from bot.understood import Understood, understand
from calc.animal import Animal
from calc.animals import animals

__all__ = ["COLUMNS", "Sheet", "sheets"]

COLUMNS = {
    Need.UVI: Say("page-column-uvi"),
    Need.BASKING_SURFACE: Say("page-column-basking_surface"),
    Need.COOL_AIR: Say("page-column-cool_air"),
}
"""What the table of all animals shows of each."""


@dataclass(frozen=True, slots=True)
class Sheet:
    """The page of one animal, and its row in the table of all."""

    animal: Animal
    name: str
    reply: Reply
    brief: tuple[Line, ...]
    cells: tuple[str, ...]
    asks: tuple[str, ...]


@cache
def sheets(language: Language) -> tuple[Sheet, ...]:
    """Return every animal's page by its name; a target that is not known is shown as such."""
    made = (_sheet(animal, language) for animal in animals().values())
    return tuple(sorted(made, key=lambda sheet: guide.alphabetical(sheet.name)))


def _sheet(animal: Animal, language: Language) -> Sheet:
    preferences = Preferences(language=language)
    speaker = voice(language, preferences.shown)
    asked = understand(Question("needs", {"animal": animal.name}), preferences)
    assert isinstance(asked, Understood)
    assert isinstance(asked.query, NeedsQuery)
    facts = needs(asked.query, asked.context)
    reply = answered(asked)
    name = speaker.name(Name(f"animal-{animal.slug}"), "")
    known = {one.need: one for one in facts.needs}
    return Sheet(
        animal=animal,
        name=name[0].upper() + name[1:],
        reply=reply,
        brief=brief_of(reply),
        cells=tuple(speaker.text(_cell(known.get(need))) for need in COLUMNS),
        asks=tuple(_asks(facts, speaker)),
    )


def _cell(one: OneNeed | None) -> Say:
    if one is None:
        return Say("page-needs-none")
    if one.uvi is not None:
        return Say("needs-aim-uvi", one)
    return Say("page-unknown") if one.warmth is None else Say("needs-aim-warmth", one)


def _asks(facts: Needs, speaker: Voice) -> Iterator[str]:
    """Return questions about the animal that work as they stand."""
    if facts.uvi is not None:
        yield speaker.text(Say("page-ask-tube", facts))
    if facts.basking is not None or facts.cool is not None:
        yield speaker.text(Say("page-ask-temps", facts))
    if facts.has_air:
        yield speaker.text(Say("page-ask-night", facts))
    yield speaker.text(Say("page-ask-hours", facts))
