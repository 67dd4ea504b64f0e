"""The questions about a keeper's own enclosures, and the keeper's settings."""

from typing import Annotated

from pydantic import Field

from bot.facts import Say
from bot.language.choices import read_choice
from bot.language.quantities import read_number
from bot.queries.options import (
    GAP,
    TUBES,
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
    MaybeTongue,
    MaybeUnits,
    NewName,
    Sure,
    ZoneName,
)
from bot.queries.uv import LAMP

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
    "UnreadQuery",
]

_NAME = "the name of the enclosure; not needed if you keep one"
_DAY = "the day it was read: today, yesterday or 2026-05-04; today if not given"
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

    name: NewName = Field(description="a name for the enclosure", examples=["Pebble's box"])
    words: Text = Field(
        "",
        description="the set-up in your own words; the facts are kept, the words are not",
        examples=["beardie, 12% tube in a polished hood, no screen"],
    )
    animal: AnimalName = Field(
        "", description="who lives in it, such as bearded dragon", examples=["bearded dragon"]
    )
    tube: TubeClass | None = Field(
        None, description="tube strength on the label: 12%, 6%", examples=["12%"]
    )
    reflector: FixtureOption | None = Field(
        None, description="the fixture behind the tube: polished or plain", examples=["polished"]
    )
    screen: ScreenOption | None = Field(
        None, description="what is between: none, 45% (blocked), passes 55%", examples=["none"]
    )
    distance: Length | None = Field(
        None, description="from the tube to the animal's back, such as 14in", examples=["14in"]
    )
    length: TubeLength | None = Field(
        None,
        description="length of the tube or the watts on it: 22in, 85cm, 39W",
        examples=["22in"],
    )
    age: Age | None = Field(
        None, description="how long the tube has been in use, such as 6 months", examples=["new"]
    )
    enclosure: EnclosureSize | None = Field(
        None, description="length, depth and height: 48x24x24in", examples=["48x24x24in"]
    )
    lamp: UvLampKind | None = Field(None, description=LAMP, examples=["T5 HO tube"])
    tubes: TubeCount | None = Field(None, description=TUBES, examples=["1"])
    gap: Length | None = Field(None, description=GAP, examples=["2in"])


class ListQuery(Query):
    """All that is kept of the asker."""


class NamedQuery(Query):
    """One enclosure."""

    name: EnclosureName = Field("", description=_NAME, examples=["Pebble's box"])


class ReadingQuery(NamedQuery):
    """Readings of one day."""

    uvi: _Uvi | None = Field(
        None, description="the UV index read where it basks, such as 4.2", examples=["4.2"]
    )
    distance: Length | None = Field(
        None, description="how far from the tube the UV was read", examples=["14in"]
    )
    basking: SurfaceTemperature | None = Field(
        None, description="the basking surface, such as 103F", examples=["103F"]
    )
    warm: AirTemperature | None = Field(
        None, description="the air at the warm end, such as 84F", examples=["84F"]
    )
    cool: AirTemperature | None = Field(
        None, description="the air at the cool end, such as 79F", examples=["79F"]
    )
    night: AirTemperature | None = Field(
        None, description="the coldest at night, such as 68F", examples=["68F"]
    )
    day: Text = Field("", description=_DAY, examples=["yesterday"])


class UnreadQuery(NamedQuery):
    """Take readings of a day away again."""

    day: Text = Field(description="the day whose readings go: 2026-05-04", examples=["today"])
    of: _Kind | None = Field(
        None, description="only this kind: uvi, basking, warm, cool, night", examples=["uvi"]
    )


class CompareQuery(NamedQuery):
    """What changed between two days."""

    first: Text = Field("", description="the earlier day; else the first", examples=["2026-05-04"])
    second: Text = Field("", description="the later day; else the last", examples=["2026-08-02"])


class RemoveQuery(Query):
    """Take an enclosure away, with all its readings and reminders."""

    name: EnclosureName = Field(description="the enclosure that goes", examples=["Spare box"])


class PreferQuery(Query):
    """How the asker wants to be answered."""

    units: MaybeUnits | None = Field(
        None, description="in (with °F), cm (with °C), or none", examples=["cm"]
    )
    language: MaybeTongue | None = Field(
        None, description="the language of answers: en, de, or none", examples=["de"]
    )
    zone: ZoneName = Field(
        "", description="your time zone, such as Europe/Berlin, or none", examples=["Europe/Berlin"]
    )


class ExportQuery(Query):
    """Everything that is kept, as a file."""


class ImportQuery(Query):
    """Take a file back that an export made."""

    file: Document = Field(description="the JSON file that an export made", examples=["mine.json"])


class ForgetQuery(Query):
    """Delete everything."""

    sure: Sure = Field("no", description="yes deletes for good", examples=["yes"])
