"""The questions for keepers with a UV index meter, and for the whole enclosure."""

from typing import Self

from pydantic import Field, model_validator

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.screens import NoScreen
from bot.language.uv_lamps import UvLamp
from bot.language.wanted import UpTo
from bot.queries.options import (
    GAP,
    TUBES,
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
    Readings,
    ScreenIfKnown,
    ScreenOption,
    Tube,
    TubeClass,
    TubeCount,
    TubeLength,
    UviRange,
    UvLampKind,
)
from bot.queries.query import Query
from bot.queries.uv import ANIMAL, LAMP, SCREEN, UVI

__all__ = ["DeclineQuery", "DoseQuery", "MeterQuery", "SectionQuery"]

_DAY_S = 86_400.0
_MOST_UVI = 20


class MeterQuery(Query):
    """What a keeper's own meter readings say of the lamp."""

    readings: Readings = Field(
        description="UV index read, and how far from the tube: 4.2 at 12 in, 2.9 at 15 in",
        examples=["4.2 at 12 in, 2.9 at 15 in"],
    )
    animal: AnimalName = Field("", description=ANIMAL, examples=["bearded dragon"])
    uvi: UviRange | None = Field(None, description=UVI, examples=["3-5"])
    screen: ScreenOption = Field(
        NoScreen("none"),
        description="what was between tube and meter, if anything: 45%, 18x16 0.011in",
        examples=["none"],
    )
    without: Readings | None = Field(
        None,
        description="the same read with the screen taken away, to learn what it passes",
        examples=["7.6 at 12 in"],
    )
    distance: Length | None = Field(
        None, description="from the tube to the animal's back where it basks", examples=["14in"]
    )
    length: TubeLength | None = Field(
        None,
        description="length of the tube or the watts on it: 22in, 85cm, 39W",
        examples=["22in"],
    )
    tube: TubeClass | None = Field(
        None, description="strength on the label, to set the lamp against it", examples=["12%"]
    )
    reflector: FixtureOption | None = Field(
        None, description="the fixture behind the tube: polished or plain", examples=["polished"]
    )
    lamp: UvLampKind | None = Field(None, description=LAMP, examples=["T5 HO tube"])
    tubes: TubeCount = Field(1, description=TUBES, examples=["1"])
    gap: Length | None = Field(None, description=GAP, examples=["2in"])


class DeclineQuery(Query):
    """How a tube fades, and when to replace it."""

    readings: DatedReadings | None = Field(
        None,
        description="UV index read at one place, with dates: 2026-01-03 4.2, 2026-03-01 3.9",
        examples=["2026-01-03 4.2, 2026-03-01 3.9"],
    )
    animal: AnimalName = Field("", description=ANIMAL, examples=["bearded dragon"])
    uvi: UviRange | None = Field(None, description=UVI, examples=["3-5"])
    age: Age | None = Field(
        None,
        description="how long the tube has been in use, without a meter",
        examples=["8 months"],
    )
    lamp: UvLampKind = Field(
        UvLamp.T5_HO, description="which kind of UV lamp it is", examples=["T5 HO tube"]
    )


class SectionQuery(Query):
    """Where the UV goes in the whole enclosure."""

    tube: Tube = Field(description="tube strength on the label: 12%, 6%", examples=["12%"])
    reflector: FixtureIfKnown = Field(
        description="the fixture behind the tube: polished, plain or not sure",
        examples=["polished"],
    )
    screen: ScreenIfKnown = Field(
        description=f"{SCREEN}; mesh or not sure will do", examples=["none"]
    )
    distance: Length = Field(
        description="from the tube to the animal's back on its platform", examples=["16in"]
    )
    enclosure: EnclosureSize = Field(
        description="length, depth and height: 48x24x24in or 120x60x60 cm", examples=["48x24x24in"]
    )
    animal: AnimalName = Field("", description=ANIMAL, examples=["bearded dragon"])
    uvi: UviRange | None = Field(None, description=UVI, examples=["3-5"])
    length: TubeLength | None = Field(
        None, description="length of the tube; else about half the enclosure", examples=["34in"]
    )
    tubes: TubeCount = Field(1, description=TUBES, examples=["1"])
    gap: Length | None = Field(None, description=GAP, examples=["2in"])
    start: Length | None = Field(
        None, description="from the warm end wall to the tube's near end", examples=["2in"]
    )
    across: Length | None = Field(
        None,
        description="from the back wall to the middle of the tubes; else the middle of the depth",
        examples=["8in"],
    )
    platform: Length | None = Field(
        None, description="length of the basking platform, from the warm end", examples=["12in"]
    )
    back: Length | None = Field(
        None, description="height of the animal's back over what it lies on", examples=["2in"]
    )
    heat: Length | None = Field(
        None, description="from the warm end wall to the middle of the heat lamp", examples=["8in"]
    )
    patch: Length | None = Field(
        None, description="width of the patch that the heat lamp warms", examples=["8in"]
    )
    lamp: UvLampKind | None = Field(None, description=LAMP, examples=["T5 HO tube"])


class DoseQuery(Query):
    """A day under the tube beside a day of sun, and how long people may stay."""

    uvi: UviRange = Field(description="UV index at the basking spot, such as 4", examples=["4"])
    hours: Hours = Field(description="hours a day that the tube is on, such as 10", examples=["10"])
    distance: Length | None = Field(
        None, description="from the tube to that spot, to tell how you fare", examples=["14in"]
    )
    length: TubeLength | None = Field(
        None,
        description="length of the tube or the watts on it: 22in, 85cm, 39W",
        examples=["22in"],
    )
    latitude: Latitude | None = Field(
        None, description="latitude of the sun to compare with: 40N, 27S", examples=["27S"]
    )
    month: Month | None = Field(
        None, description="month of the sun to compare with: June", examples=["December"]
    )

    @model_validator(mode="after")
    def _is_a_day(self) -> Self:
        if not 0.0 < self.hours.low <= _DAY_S:
            wanted = Say("wanted-day-hours")
            raise NotUnderstoodError(self.hours.text, wanted, "hours:10", "hours")
        low, high = self.uvi
        if not 0.0 < low <= high <= _MOST_UVI:
            read = f"{low:g}" if low == high else f"{low:g}-{high:g}"
            wanted = Say("wanted-uvi-up-to", UpTo(_MOST_UVI))
            raise NotUnderstoodError(read, wanted, "uvi:4", "uvi")
        if (self.latitude is None) is not (self.month is None):
            if self.month is None:
                raise NotUnderstoodError("", Say("wanted-month-too"), "June", "month")
            raise NotUnderstoodError("", Say("wanted-latitude-too"), "27S", "latitude")
        return self
