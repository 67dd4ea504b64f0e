"""The questions about a keeper's own enclosures, and the keeper's settings."""

from typing import Annotated

from pydantic import Field

from bot.facts import Say
from bot.language.choices import read_choice
from bot.language.quantities import read_number
from bot.queries.day import Clock
from bot.queries.options import (
    Age,
    AirTemperature,
    AnimalName,
    EnclosureSize,
    FixtureOption,
    Length,
    ScreenOption,
    SurfaceTemperature,
    Text,
    TubeClass,
    TubeCount,
    TubeLength,
    UvLampKind,
)
from bot.queries.query import Option, Query, reading
from bot.queries.saved import (
    Document,
    EnclosureName,
    LampInStock,
    MaybeTongue,
    MaybeUnits,
    NewName,
    Sure,
    ZoneName,
)

__all__ = [
    "CompareQuery",
    "ExportQuery",
    "ForgetQuery",
    "ImportQuery",
    "ListQuery",
    "NamedQuery",
    "PreferQuery",
    "ReadingQuery",
    "RemoveQuery",
    "SaveQuery",
    "SpareQuery",
    "TimerQuery",
    "UnreadQuery",
]

_KINDS = {
    "uvi": ("uv", "uv index"),
    "basking": ("surface", "basking surface"),
    "warm": ("warm end", "warm air"),
    "cool": ("cool end", "cool air"),
    "night": ("night low",),
}
_Uvi = Annotated[
    float, reading(lambda text: read_number(text, Say("wanted-uvi-one"), "4.2")), Option()
]
_Kind = Annotated[
    str, reading(lambda text: read_choice(text, _KINDS)), Option(choices=tuple(_KINDS))
]


class SaveQuery(Query):
    """Keep an enclosure, or change what is told of it."""

    name: NewName = Field(examples=["Pebble's box"])
    words: Text = Field("", examples=["beardie, 12% tube in a polished hood, no screen"])
    animal: AnimalName = Field("", examples=["bearded dragon"])
    tube: TubeClass | None = Field(None, examples=["12%"])
    reflector: FixtureOption | None = Field(None, examples=["polished"])
    screen: ScreenOption | None = Field(None, examples=["none"])
    distance: Length | None = Field(None, examples=["14in"])
    length: TubeLength | None = Field(None, examples=["22in"])
    age: Age | None = Field(None, examples=["new"])
    enclosure: EnclosureSize | None = Field(None, examples=["48x24x24in"])
    lamp: UvLampKind | None = Field(None, examples=["T5 HO tube"])
    tubes: TubeCount | None = Field(None, examples=["1"])
    gap: Length | None = Field(None, examples=["2in"])


class ListQuery(Query):
    """All that is kept of the asker."""


class NamedQuery(Query):
    """One enclosure."""

    name: EnclosureName = Field("", examples=["Pebble's box"])


class ReadingQuery(NamedQuery):
    """Readings of one day."""

    uvi: _Uvi | None = Field(None, examples=["4.2"])
    distance: Length | None = Field(None, examples=["14in"])
    basking: SurfaceTemperature | None = Field(None, examples=["103F"])
    warm: AirTemperature | None = Field(None, examples=["84F"])
    cool: AirTemperature | None = Field(None, examples=["79F"])
    night: AirTemperature | None = Field(None, examples=["68F"])
    day: Text = Field("", examples=["yesterday"])


class UnreadQuery(NamedQuery):
    """Take readings of a day away again."""

    day: Text = Field(examples=["today"])
    of: _Kind | None = Field(None, examples=["uvi"])


class CompareQuery(NamedQuery):
    """What changed between two days, or what differs between two enclosures or two lamps."""

    first: Text = Field("", examples=["2026-05-04"])
    second: Text = Field("", examples=["2026-08-02"])
    other: EnclosureName = Field("", examples=["Spare box"])
    lamp: LampInStock = Field("", examples=["Spare tube"])
    other_lamp: LampInStock = Field("", examples=["Pebble's box"])


class SpareQuery(Query):
    """Keep a spare lamp, hang it over an enclosure, or take it away."""

    name: NewName = Field(examples=["Spare tube"])
    tube: TubeClass | None = Field(None, examples=["12%"])
    length: TubeLength | None = Field(None, examples=["22in"])
    lamp: UvLampKind | None = Field(None, examples=["T5 HO tube"])
    bought: Text = Field("", examples=["2026-01-10"])
    into: EnclosureName = Field("", examples=["Pebble's box"])
    gone: Sure = Field("no", examples=["yes"])


class TimerQuery(Query):
    """When the lamps of all enclosures go on and off."""

    on: Clock | None = Field(None, examples=["8:00"])


class RemoveQuery(Query):
    """Take an enclosure away, with all its readings and reminders."""

    name: EnclosureName = Field(examples=["Spare box"])


class PreferQuery(Query):
    """How the asker wants to be answered."""

    units: MaybeUnits | None = Field(None, examples=["cm"])
    language: MaybeTongue | None = Field(None, examples=["de"])
    zone: ZoneName = Field("", examples=["Europe/Berlin"])


class ExportQuery(Query):
    """Everything that is kept, as a file."""


class ImportQuery(Query):
    """Take a file back that an export made."""

    file: Document = Field(examples=["mine.json"])


class ForgetQuery(Query):
    """Delete everything."""

    sure: Sure = Field("no", examples=["yes"])
