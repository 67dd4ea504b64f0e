"""What a keeper keeps: settings, enclosures with their set-ups, and dated readings."""

from datetime import date
from typing import Annotated, Literal, Self

from pydantic import BeforeValidator, Field, PlainSerializer, model_validator
from pydantic_core import PydanticCustomError

from bot.language.quantities import Units
from bot.language.tongue import Tongue
from bot.language.uv_lamps import UvLamp
from bot.saved.group import AnimalSlug
from bot.saved.kept_screens import KeptScreen, Pane
from bot.saved.values import Kept, Name, Zone
from calc.quantities import Quantity, row_of

__all__ = [
    "KEPT_AS",
    "MOST_ENCLOSURES",
    "MOST_READINGS",
    "MOST_SPARES",
    "Enclosure",
    "KeeperSettings",
    "KeptQuantity",
    "KeptScreen",
    "Reading",
    "Setup",
    "Spare",
    "kept_quantity",
]

MOST_ENCLOSURES = 20
MOST_READINGS = 600
MOST_SPARES = 40
KEPT_AS = {
    Quantity.UVI: "uvi",
    Quantity.BASKING_SURFACE: "basking",
    Quantity.WARM_AIR: "warm",
    Quantity.COOL_AIR: "cool",
    Quantity.NIGHT_AIR: "night",
}
"""What is read and kept, with its word in the store, in files and among the options."""

_OF_WORD = {word: quantity for quantity, word in KEPT_AS.items()}


def kept_quantity(word: object) -> Quantity:
    """Return what a reading is of, by the word that is kept for it, or raise ValueError."""
    if isinstance(word, Quantity) and word in KEPT_AS:
        return word
    if isinstance(word, str) and not isinstance(word, Quantity) and word in _OF_WORD:
        return _OF_WORD[word]
    raise PydanticCustomError("enum", "one of: {words}", {"words": ", ".join(_OF_WORD)})


KeptQuantity = Annotated[
    Quantity, BeforeValidator(kept_quantity), PlainSerializer(KEPT_AS.__getitem__, return_type=str)
]


class Reading(Kept):
    """A value read on a day; a UV index may say at what distance [m]."""

    day: date
    of: KeptQuantity
    value: float
    distance_m: float | None = Field(default=None, ge=0.05, le=3.0)

    @model_validator(mode="after")
    def _possible(self) -> Self:
        row = row_of(self.of)
        if not row.lowest <= self.value <= row.highest:
            ends = f"{row.lowest:g} and {row.highest:g}"
            raise ValueError(f"a reading of {KEPT_AS[self.of]} lies between {ends}")
        if self.distance_m is not None and self.of is not Quantity.UVI:
            raise ValueError("only a UV index has a distance")
        return self


class Setup(Kept):
    """A set-up as far as it was told; None is not told.

    ``lamp`` is the kind of UV lamp where it is no T5 HO tube, ``lid`` a pane of which was not told
    whether the lamp hangs over it.
    """

    animal: AnimalSlug | None = None
    lamp: UvLamp | None = None
    tube_percent: float | None = Field(default=None, ge=1.0, le=20.0)
    reflector: Literal["polished", "plain"] | None = None
    screen: KeptScreen | None = None
    distance_m: float | None = Field(default=None, ge=0.05, le=3.0)
    tube_length_m: float | None = Field(default=None, ge=0.1, le=2.0)
    tubes: int | None = Field(default=None, ge=1, le=4)
    gap_m: float | None = Field(default=None, gt=0.0, le=1.0)
    lid: Pane | None = None
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


class Spare(Kept):
    """A UV lamp in stock: its kind, and of a tube its class [%] and length [m]."""

    name: Name
    lamp: UvLamp = UvLamp.T5_HO
    tube_percent: float | None = Field(default=None, ge=1.0, le=20.0)
    tube_length_m: float | None = Field(default=None, ge=0.1, le=2.0)
    bought_on: date | None = None


class KeeperSettings(Kept):
    """How a keeper wants to be answered; None leaves it open."""

    units: Units | None = None
    zone: Zone | None = None
    language: Tongue | None = None
