"""What a conversation has understood so far, to be shown when somebody wants to know."""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.dialogue.kept import Dialogue
from bot.facts import Say
from bot.language.shown import shown
from bot.language.unsure import NOT_SURE
from bot.queries.typed import typed_all

__all__ = ["KnownSoFar", "known_told", "wishes_known"]

_WISHES = frozenset(("known", "what do you know", "bekannt", "was weißt du"))


@dataclass(frozen=True, slots=True)
class KnownLine:
    """An option and what was told for it."""

    text: str


@dataclass(frozen=True, slots=True)
class KnownSoFar:
    """The parts of the set-up that were told, each as it is typed, and the last question."""

    told: tuple[Say, ...]
    asked: str | None


def wishes_known(line: str) -> bool:
    """Whether a line wishes to see what was understood so far.

    >>> wishes_known("Known"), wishes_known("is that known")
    (True, False)
    """
    return line.lower().strip(" ?!.") in _WISHES


def known_told(dialogue: Dialogue) -> Iterator[Say]:
    """Yield what is told of it: the set-up, the last question, how to begin anew."""
    told = tuple(
        Say("talk-known-line", KnownLine(f"{name}: {shown(text)}"))
        for name, text in typed_all(dialogue.known).items()
        if text != NOT_SURE
    )
    facts = KnownSoFar(told, dialogue.asked.line() if dialogue.asked else None)
    if not told and not dialogue.asked:
        yield Say("talk-known-none")
        return
    if told:
        yield Say("talk-known", facts)
    if dialogue.asked:
        yield Say("talk-known-asked", facts)
    yield Say("talk-known-new")
