"""Whom a care sheet is for, as it stands among the facts of an answer that has one."""

from dataclasses import dataclass
from datetime import date

from bot.facts import Name
from bot.questions.shared import animal_name
from bot.saved.group import Own
from calc.animal import Animal

__all__ = ["CareFor"]


@dataclass(frozen=True, slots=True)
class CareFor:
    """Whom a sheet is for and the day it is made; ``is_read``: with what was read by then."""

    kept: Animal
    own: Own
    day: date
    is_read: bool

    @property
    def animal(self) -> Name:
        """Return the animal by its name."""
        return animal_name(self.kept)
