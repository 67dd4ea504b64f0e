"""Facts and cautions that several questions share."""

from dataclasses import dataclass
from enum import Enum, auto

from bot.answers.animals import GROUPS_OWN
from bot.facts import Name, Say
from bot.layered import Care, Weight
from calc.animals import Animal, Target, own_name
from calc.sources import Kind as SourceKind
from calc.sources import source

__all__ = ["HEAT_CARE", "How", "Known", "animal_name", "known_by"]


class How(Enum):
    """How a figure is known."""

    COMMON_PRACTICE = auto()
    MEMORY = auto()
    OWN = auto()
    PUBLISHED = auto()


_HOW = {SourceKind.COMMON_PRACTICE: How.COMMON_PRACTICE, SourceKind.MEMORY: How.MEMORY}


@dataclass(frozen=True, slots=True)
class Known:
    """How a figure is known, from where, and what is noted about it."""

    kind: How
    citation: str
    note: str | None


def known_by(target: Target) -> Say:
    """Return how a target is known."""
    entry = source(target.source)
    kind = How.OWN if target.source == GROUPS_OWN else _HOW.get(entry.kind, How.PUBLISHED)
    return Say("known", Known(kind, entry.citation, target.note or None))


def animal_name(animal: Animal) -> Name:
    """Return the name of an animal; one of the group's own is called as the group calls it."""
    own = own_name(animal.slug)
    return Name("", own) if own else Name(f"animal-{animal.slug}")


HEAT_CARE = (
    Care(Say("care-guard"), Say("care-guard-short"), Weight.STEP),
    Care(Say("care-off-first")),
    Care(Say("care-vet-heat")),
)
