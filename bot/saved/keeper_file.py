"""Everything that is kept of one keeper, as a file."""

from typing import Literal, Self

from pydantic import Field, model_validator

from bot.saved.cases import CaseExport
from bot.saved.keeper import MOST_ENCLOSURES, MOST_SPARES, Enclosure, KeeperSettings, Spare
from bot.saved.pool import MOST_GIVEN_EVERYWHERE, GivenReading
from bot.saved.reminders import MOST_REMINDERS, ReminderExport
from bot.saved.values import Kept, name_key

__all__ = ["KeeperExport"]


class KeeperExport(Kept):
    """Everything that is kept of one keeper; a file of the first version has no later fields.

    ``cases`` are there to be read: an import shares nothing, which its keeper alone does.
    """

    noonstone: Literal["keeper"] = "keeper"
    version: Literal[1, 2, 3] = 3
    settings: KeeperSettings = Field(default_factory=KeeperSettings)
    enclosures: tuple[Enclosure, ...] = Field(default=(), max_length=MOST_ENCLOSURES)
    reminders: tuple[ReminderExport, ...] = Field(default=(), max_length=MOST_REMINDERS)
    spares: tuple[Spare, ...] = Field(default=(), max_length=MOST_SPARES)
    cases: tuple[CaseExport, ...] = Field(default=(), max_length=MOST_ENCLOSURES)
    given: tuple[GivenReading, ...] = Field(default=(), max_length=MOST_GIVEN_EVERYWHERE)

    @model_validator(mode="after")
    def _names_once_and_known(self) -> Self:
        names = [name_key(enclosure.name) for enclosure in self.enclosures]
        if len(set(names)) < len(names):
            raise ValueError("two enclosures have one name")
        if len({name_key(spare.name) for spare in self.spares}) < len(self.spares):
            raise ValueError("two spare lamps have one name")
        for reminder in self.reminders:
            if reminder.enclosure is not None and name_key(reminder.enclosure) not in names:
                raise ValueError("a reminder is about an enclosure that is not in the file")
        return self
