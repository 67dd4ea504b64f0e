"""The questions for keepers with a UV index meter, and for the whole enclosure."""

from collections.abc import Mapping
from typing import Self

from pydantic import Field, model_validator

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.screens import NoScreen
from bot.language.uv_lamps import UvLamp
from bot.language.wanted import UpTo
from bot.queries.options import (
    Age,
    AnimalName,
    DatedReadings,
    EnclosureSize,
    FixtureIfKnown,
    FixtureOption,
    Hours,
    Latitude,
    Length,
    Month,
    OwnTube,
    Readings,
    ScreenIfKnown,
    ScreenOption,
    Tube,
    TubeCount,
    TubeLength,
    UviRange,
    UvLampKind,
    UvLampOrOwn,
    WhiteLamps,
)
from bot.queries.query import Query
from bot.queries.uv import LampQuery
from bot.saved.group import NOTHING_OWN, Own

__all__ = ["DeclineQuery", "DoseQuery", "MeterQuery", "SectionQuery"]

_DAY_S = 86_400.0
_MOST_UVI = 20


class MeterQuery(Query):
    """What a keeper's own meter readings say of the lamp."""

    readings: Readings = Field(examples=["4.2 at 12 in, 2.9 at 15 in"])
    animal: AnimalName = Field("", examples=["bearded dragon"])
    uvi: UviRange | None = Field(None, examples=["3-5"])
    screen: ScreenOption = Field(NoScreen("none"), examples=["none"])
    without: Readings | None = Field(None, examples=["7.6 at 12 in"])
    distance: Length | None = Field(None, examples=["14in"])
    length: TubeLength | None = Field(None, examples=["22in"])
    tube: Tube | None = Field(None, examples=["12%"])
    reflector: FixtureOption | None = Field(None, examples=["polished"])
    lamp: UvLampKind | None = Field(None, examples=["T5 HO tube"])
    tubes: TubeCount = Field(1, examples=["1"])
    gap: Length | None = Field(None, examples=["2in"])


class DeclineQuery(Query):
    """How a tube fades, and when to replace it."""

    readings: DatedReadings | None = Field(None, examples=["2026-01-03 4.2, 2026-03-01 3.9"])
    animal: AnimalName = Field("", examples=["bearded dragon"])
    uvi: UviRange | None = Field(None, examples=["3-5"])
    age: Age | None = Field(None, examples=["8 months"])
    lamp: UvLampKind = Field(UvLamp.T5_HO, examples=["T5 HO tube"])


class SectionQuery(LampQuery):
    """Where the UV goes in the whole enclosure."""

    tube: Tube | None = Field(None, examples=["12%"])
    reflector: FixtureIfKnown | None = Field(None, examples=["polished"])
    screen: ScreenIfKnown | None = Field(None, examples=["none"])
    distance: Length = Field(examples=["16in"])
    enclosure: EnclosureSize = Field(examples=["48x24x24in"])
    animal: AnimalName = Field("", examples=["bearded dragon"])
    uvi: UviRange | None = Field(None, examples=["3-5"])
    length: TubeLength | None = Field(None, examples=["34in"])
    tubes: TubeCount = Field(1, examples=["1"])
    gap: Length | None = Field(None, examples=["2in"])
    start: Length | None = Field(None, examples=["2in"])
    across: Length | None = Field(None, examples=["8in"])
    platform: Length | None = Field(None, examples=["12in"])
    back: Length | None = Field(None, examples=["2in"])
    heat: Length | None = Field(None, examples=["8in"])
    patch: Length | None = Field(None, examples=["8in"])
    lamp: UvLampKind | None = Field(None, examples=["T5 HO tube"])
    readings: Readings | None = Field(None, examples=["4.2 at 12 in"])
    light: WhiteLamps = Field((), examples=["24W led bar"])


class DoseQuery(Query):
    """A day under the tube beside a day of sun, and how long people may stay."""

    uvi: UviRange | None = Field(None, examples=["4"])
    hours: Hours = Field(examples=["10"])
    distance: Length | None = Field(None, examples=["14in"])
    length: TubeLength | None = Field(None, examples=["22in"])
    latitude: Latitude | None = Field(None, examples=["27S"])
    month: Month | None = Field(None, examples=["December"])
    lamp: UvLampOrOwn = Field(UvLamp.T5_HO, examples=["T5 HO tube"])
    readings: Readings | None = Field(None, examples=["4.2 at 12 in"])

    @property
    def kept(self) -> OwnTube | None:
        """The group's own lamp, where one is named."""
        return self.lamp if isinstance(self.lamp, OwnTube) else None

    @property
    def kind(self) -> UvLamp:
        """The kind of UV lamp that is meant."""
        return self.lamp.lamp.kind if isinstance(self.lamp, OwnTube) else self.lamp

    @classmethod
    def lacking(cls, given: Mapping[str, str], own: Own = NOTHING_OWN) -> tuple[str, ...]:
        """Return what is missing: a UV index, unless readings tell it, or a kept lamp somewhere."""
        if {"uvi", "readings"} & given.keys():
            wanted: tuple[str, ...] = ()
        else:
            wanted = ("uvi",) if own.lamp(given.get("lamp", "")) is None else ("distance",)
        missing = tuple(name for name in wanted if name not in given)
        return (*missing, *super().lacking(given, own))

    @model_validator(mode="after")
    def _is_a_day(self) -> Self:
        if not 0.0 < self.hours.low <= _DAY_S:
            wanted = Say("wanted-day-hours")
            raise NotUnderstoodError(self.hours.text, wanted, "hours:10", "hours")
        low, high = self.uvi or (1.0, 1.0)
        if not 0.0 < low <= high <= _MOST_UVI:
            read = f"{low:g}" if low == high else f"{low:g}-{high:g}"
            wanted = Say("wanted-uvi-up-to", UpTo(_MOST_UVI))
            raise NotUnderstoodError(read, wanted, "uvi:4", "uvi")
        if (self.latitude is None) is not (self.month is None):
            if self.month is None:
                raise NotUnderstoodError("", Say("wanted-month-too"), "June", "month")
            raise NotUnderstoodError("", Say("wanted-latitude-too"), "27S", "latitude")
        return self
