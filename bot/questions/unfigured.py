"""An animal that is known by name alone: no figure of another, and what holds for any animal.

Words: ``words/<language>/unfigured.ftl`` and ``which.ftl``.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.facts import Bound, Length, Name, Say, metres
from bot.language.shown import shown
from bot.layered import Brief, Layered
from bot.questions.animals import (
    AnimalsMeant,
    among_of,
    animals_meant,
    name_said,
    perhaps_meant,
)
from calc.naming import Known, Several, named
from calc.uv.nearest import COMFORTABLE_MINIMUM_M

__all__ = ["unfigured", "which_animal", "which_asked"]

# It answers what an animal needs, and free words; to a question for figures it is a refusal.
_ANSWERED = frozenset(("ask", "needs"))
_GUIDE = ("what-this-bot-cannot-know", "measuring-temperatures", "when-to-call-a-vet")


@dataclass(frozen=True, slots=True)
class Unfigured:
    """An animal without figures, and how near no UV tube hangs above any animal."""

    name: str
    nearest: Length


@dataclass(frozen=True, slots=True)
class WhichOf:
    """Words for an animal that mean several; ``more``: more of those here than are named."""

    words: str
    here: tuple[Name, ...]
    others: tuple[Name, ...]
    more: bool


@dataclass(frozen=True, slots=True)
class IfItIs:
    """An animal that was perhaps meant, and its name as it is typed."""

    animal: Name
    typed: str


def unfigured(command: str, name: str) -> Layered:
    """Return that there are no figures for an animal, and what holds for any."""
    facts = Unfigured(name, metres(COMFORTABLE_MINIMUM_M, bound=Bound.AT_LEAST))
    steps = (
        Say("unfigured-step-ask"),
        Say("unfigured-step-tube", facts),
        Say("unfigured-step-shade"),
        Say("unfigured-step-measure"),
        Say("unfigured-step-later"),
    )
    return Layered(
        command=command,
        status="ok" if command in _ANSWERED else "problem",
        title=Say("unfigured-title", facts),
        brief=Brief(Say("unfigured-head", facts), steps=steps[:1]),
        steps=steps,
        guide=_GUIDE,
    )


def which_asked(words: str, among: Sequence[str]) -> Layered:
    """Return the question which animal is meant by words for several, or for none I know."""
    among = among or _of_any(words)
    here = [name for name in among if isinstance(named(name).what, Known)]
    near = here if among else perhaps_meant(words)
    steps = (
        *(Say("which-step", IfItIs(name_said(name), name)) for name in near),
        Say("which-step-again"),
    )
    return Layered(
        command="ask",
        status="problem",
        title=Say("which-title"),
        brief=Brief(which_animal(words, among), steps=steps),
        steps=steps,
        guide=_GUIDE,
    )


def _of_any(words: str) -> tuple[str, ...]:
    """Return one animal of each group for a word that means all of them, such as reptile."""
    what = named(words).what
    return among_of(what) if isinstance(what, Several) and not what.candidates else ()


def which_animal(words: str, among: Sequence[str]) -> Say:
    """Return that words for an animal mean several, or none that is known."""
    among = among or _of_any(words)
    here = [name for name in among if isinstance(named(name).what, Known)]
    meant = animals_meant(among, here) if among else AnimalsMeant((), ())
    facts = WhichOf(shown(words), meant.here, meant.others, meant.more)
    if meant.here and meant.others:
        return Say("which-of-both", facts)
    if meant.here:
        return Say("which-of", facts)
    return Say("which-of-others" if meant.others else "which-unknown", facts)
