"""What the questions that may be meant are called where one of them is pressed."""

from collections.abc import Sequence

from bot import guide
from bot.facts import Say
from bot.language.units import Units
from bot.menu import MODULES
from bot.queries.question import Question
from bot.questions.animals import name_said
from bot.questions.record import record_of
from bot.saying.voice import voice

__all__ = ["names_offered"]

_ANIMAL, _PAGE = "animal", "guide"


def names_offered(offers: Sequence[Question], language: str) -> list[str]:
    """Return a name for each question: its animal, what it is for, else the question as typed.

    No two are called alike.
    """
    animals = [str(offer.given.get(_ANIMAL, "")) for offer in offers]
    same = len({offer.command for offer in offers}) == 1
    if same and all(animals) and len(set(animals)) == len(offers):
        said = (voice(language, Units.CM).name(name_said(animal), "") for animal in animals)
        return [name[:1].upper() + name[1:] for name in said]
    names = [_purpose(offer, language) for offer in offers]
    return [
        name if name and names.count(name) == 1 else offer.line()
        for name, offer in zip(names, offers, strict=True)
    ]


def _purpose(offer: Question, language: str) -> str:
    """Return what a question is for, or which page it opens; nothing where nobody says it."""
    if offer.command == _PAGE:
        page, part = offer.given.get("page", ""), offer.given.get("part", "")
        return part or (guide.page(page, language).title if page else "")
    if offer.command not in MODULES or record_of(offer.command).fills is None:
        return ""
    return voice(language, Units.CM).text(Say.of("ask-purpose", offer.command))
