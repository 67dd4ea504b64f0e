"""What a keeper keeps: settings, enclosures with their set-ups, and dated readings."""

from datetime import date
from enum import StrEnum
from typing import Literal, Self

from pydantic import Field, model_validator

from bot.kept.group import AnimalSlug
from bot.kept.reminders import MOST_REMINDERS, ReminderExport
from bot.kept.values import Kept, Name, Zone, name_key
from bot.language.quantities import Units

__all__ = [
    "MOST_ENCLOSURES",
    "MOST_READINGS",
    "Enclosure",
    "KeeperExport",
    "KeeperSettings",
    "KeptScreen",
    "Measured",
    "Reading",
    "Setup",
]

MOST_ENCLOSURES = 20
MOST_READINGS = 600
_BOUNDS = {
    "uvi": (0.0, 100.0),
    "basking": (-20.0, 120.0),
    "warm": (-20.0, 80.0),
    "cool": (-20.0, 80.0),
    "night": (-20.0, 60.0),
}


class Measured(StrEnum):
    """What a reading is of: the UV index [1], or a temperature [degC] and where."""

    UVI = "uvi"
    BASKING = "basking"
    WARM = "warm"
    COOL = "cool"
    NIGHT = "night"


class Reading(Kept):
    """A value read on a day; a UV index may say at what distance [m]."""

    day: date
    of: Measured
    value: float
    distance_m: float | None = Field(default=None, ge=0.05, le=3.0)

    @model_validator(mode="after")
    def _possible(self) -> Self:
        low, high = _BOUNDS[self.of]
        if not low <= self.value <= high:
            raise ValueError(f"a reading of {self.of} lies between {low:g} and {high:g}")
        if self.distance_m is not None and self.of is not Measured.UVI:
            raise ValueError("only a UV index has a distance")
        return self


class KeptScreen(Kept):
    """What is between: nothing, a share passed [1], or a weave [1/m, 1/m, m]."""

    passes: float | None = Field(default=None, gt=0.0, le=1.0)
    mesh_x_per_m: float | None = Field(default=None, gt=0.0, le=20_000.0)
    mesh_y_per_m: float | None = Field(default=None, gt=0.0, le=20_000.0)
    wire_m: float | None = Field(default=None, gt=0.0, le=0.02)

    @model_validator(mode="after")
    def _one_kind(self) -> Self:
        weave = [x is not None for x in (self.mesh_x_per_m, self.mesh_y_per_m, self.wire_m)]
        if any(weave) and not (all(weave) and self.passes is None):
            raise ValueError("a screen is a share passed, or a weave with two meshes and a wire")
        return self


class Setup(Kept):
    """A set-up as far as it was told; None is not told."""

    animal: AnimalSlug | None = None
    tube_percent: float | None = Field(default=None, ge=1.0, le=20.0)
    reflector: Literal["polished", "plain"] | None = None
    screen: KeptScreen | None = None
    distance_m: float | None = Field(default=None, ge=0.05, le=3.0)
    tube_length_m: float | None = Field(default=None, ge=0.1, le=2.0)
    tube_since: date | None = None
    length_m: float | None = Field(default=None, ge=0.1, le=20.0)
    depth_m: float | None = Field(default=None, ge=0.1, le=20.0)
    height_m: float | None = Field(default=None, ge=0.1, le=20.0)


class Enclosure(Kept):
    """An enclosure: its name, its set-up, its readings by day."""

    name: Name
    setup: Setup = Setup()
    readings: tuple[Reading, ...] = Field(default=(), max_length=MOST_READINGS)

    @model_validator(mode="after")
    def _one_a_day(self) -> Self:
        seen = {(r.day, r.of) for r in self.readings}
        if len(seen) < len(self.readings):
            raise ValueError("two readings of one kind are of the same day")
        return self


class KeeperSettings(Kept):
    """How a keeper wants to be answered; None leaves it open."""

    units: Units | None = None
    zone: Zone | None = None


class KeeperExport(Kept):
    """Everything that is kept of one keeper, as a file."""

    noonstone: Literal["keeper"] = "keeper"
    version: Literal[1] = 1
    settings: KeeperSettings = KeeperSettings()
    enclosures: tuple[Enclosure, ...] = Field(default=(), max_length=MOST_ENCLOSURES)
    reminders: tuple[ReminderExport, ...] = Field(default=(), max_length=MOST_REMINDERS)

    @model_validator(mode="after")
    def _names_once_and_known(self) -> Self:
        names = [name_key(enclosure.name) for enclosure in self.enclosures]
        if len(set(names)) < len(names):
            raise ValueError("two enclosures have one name")
        for reminder in self.reminders:
            if reminder.enclosure is not None and name_key(reminder.enclosure) not in names:
                raise ValueError("a reminder is about an enclosure that is not in the file")
        return self
