"""How an asker wants to be answered: a plain value, made at the fronts and passed in."""

from dataclasses import dataclass, replace
from datetime import UTC, date, datetime
from typing import Literal, Self, get_args

from bot.language.quantities import Units
from bot.language.tongue import tongue_of
from bot.saved.group import NOTHING_OWN, Own
from calc.animal import State

__all__ = ["FIRST", "LANGUAGES", "OFFERED", "Context", "Language", "Preferences"]

Language = Literal["en", "de"]
"""The languages of answers, by the names of their folders of words."""

FIRST: Language = "en"
LANGUAGES: tuple[Language, ...] = get_args(Language)
OFFERED: tuple[Language, ...] = ("en", "de")
"""The languages that a Discord set to them brings by itself.

One is offered once its dangers are heard: on a fresh batch of another hand at least 95 of 100
hazards alarm and at most 5 of 100 harmless messages with the same words.
"""


@dataclass(frozen=True, slots=True)
class Preferences:
    """What a front knows of the asker before the question is read.

    ``units`` gives bare numbers their unit and is shown first where the question names none;
    ``forced_units`` is shown first whatever the question says (a button, a command-line option).
    ``language`` is that of the answers, None where nobody chose one; what has no words in it is
    told in English.
    ``own`` are the figures that the asker's group set for itself. ``today`` is the day where the
    asker lives; None is the day in Greenwich. ``states`` are those that free words told.
    ``vets`` is whom the asker's group calls.
    """

    units: Units | None = None
    forced_units: Units | None = None
    guide_url: str = ""
    default_animal: str = ""
    own: Own = NOTHING_OWN
    today: date | None = None
    language: Language | None = None
    states: frozenset[State] = frozenset()
    vets: str = ""

    @property
    def spoken(self) -> Language:
        """Return the language that the asker is answered in."""
        return self.language or FIRST

    def speaking(self, text: str) -> Self:
        """Return them with the language of the asker's own sentence where nobody chose one."""
        tongue = tongue_of(text) if self.language is None else None
        found = next((known for known in LANGUAGES if tongue and known == tongue.value), None)
        return replace(self, language=found) if found else self

    @property
    def shown(self) -> Units:
        """Return the system that stands first where the question names none."""
        usual = Units.IN if self.spoken == FIRST else Units.CM
        return self.forced_units or self.units or usual

    @property
    def bare(self) -> Units | None:
        """Return the system in which a number without a unit is read, if there is one."""
        # Never the forced one: showing centimetres first must not turn a typed 14 into 14 cm.
        return self.units


@dataclass(frozen=True, slots=True)
class Context:
    """What an answer needs beside the query: decided, nothing optional."""

    units: Units
    guide_url: str = ""
    default_animal: str = ""
    own: Own = NOTHING_OWN
    today: date | None = None
    language: Language = FIRST
    states: frozenset[State] = frozenset()

    @property
    def day(self) -> date:
        """Return the day on which is asked."""
        return self.today or datetime.now(UTC).date()
