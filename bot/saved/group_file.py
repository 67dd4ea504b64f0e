"""All that the moderators of a group set, as it goes out in a file and comes back."""

from typing import Literal, Self

from pydantic import Field, model_validator

from bot.saved.boards import MOST_BOARDS, BoardExport
from bot.saved.group import (
    MOST_ANIMALS,
    MOST_CHANNELS,
    MOST_LAMPS,
    MOST_SCREENS,
    MOST_TARGETS,
    NOTHING_OWN,
    Own,
    OwnAnimal,
    OwnLamp,
    OwnScreen,
    OwnTarget,
    ServerSettings,
    Shown,
)
from bot.saved.pool import MOST_POOLED, PooledReading
from bot.saved.public import MOST_PLACES, PublicRule
from bot.saved.values import Kept, name_key

__all__ = ["ServerExport"]


class ServerExport(Kept):
    """A group's data as a file: everything that moderators can set.

    ``readings`` are those of its keepers. Whose they are is not in it, so that each keeper alone
    brings them back.
    """

    noonstone: Literal["server"] = "server"
    version: Literal[1] = 1
    settings: ServerSettings = Field(default_factory=ServerSettings)
    channels: dict[int, Shown] = Field(default_factory=dict, max_length=MOST_CHANNELS)
    public: dict[int, PublicRule] = Field(default_factory=dict, max_length=MOST_PLACES)
    lamps: tuple[OwnLamp, ...] = Field(default=(), max_length=MOST_LAMPS)
    screens: tuple[OwnScreen, ...] = Field(default=(), max_length=MOST_SCREENS)
    targets: tuple[OwnTarget, ...] = Field(default=(), max_length=MOST_TARGETS)
    animals: tuple[OwnAnimal, ...] = Field(default=(), max_length=MOST_ANIMALS)
    readings: tuple[PooledReading, ...] = Field(default=(), max_length=MOST_POOLED)
    boards: tuple[BoardExport, ...] = Field(default=(), max_length=MOST_BOARDS)

    @property
    def own(self) -> Own:
        """The group's own figures."""
        found = Own(
            lamps=self.lamps, screens=self.screens, targets=self.targets, animals=self.animals
        )
        return found if found != NOTHING_OWN else NOTHING_OWN

    @model_validator(mode="after")
    def _each_once(self) -> Self:
        for kind, keys in (
            ("lamp", [name_key(x.name) for x in self.lamps]),
            ("screen", [name_key(x.name) for x in self.screens]),
            ("animal", [name_key(x.name) for x in self.animals]),
            ("target", [f"{x.animal} {x.subject}" for x in self.targets]),
            ("board", [f"{x.topic} in {x.channel}" for x in self.boards]),
        ):
            twice = next((key for key in keys if keys.count(key) > 1), None)
            if twice is not None:
                raise ValueError(f"the {kind} {twice} is given twice")
        return self
