"""The questions about heat: readings, the basking lamp, the air, the night, heat sources."""

from collections.abc import Mapping
from functools import partial
from typing import Annotated

from pydantic import Field

from bot.language.choices import (
    GIVES,
    LAMP_PLACES,
    LAMP_SHAPES,
    LIDS,
    MATERIALS,
    SURFACES,
    YES_NO,
    read_choice,
    read_thermometers,
)
from bot.language.errors import NotUnderstoodError
from bot.queries.options import (
    AirRange,
    AirTemperature,
    AnimalName,
    Duration,
    EnclosureSize,
    Length,
    Percent,
    Power,
    Setting,
    SurfaceRange,
    SurfaceTemperature,
)
from bot.queries.query import Option, Query, reading
from bot.queries.states import StateNames
from bot.saved.group import NOTHING_OWN, Own

__all__ = [
    "AirQuery",
    "BaskingQuery",
    "BoxQuery",
    "LampQuery",
    "NightQuery",
    "SurfaceQuery",
    "TempsQuery",
    "WattsQuery",
]

LampPlaceName = Annotated[
    str, reading(partial(read_choice, names=LAMP_PLACES)), Option(choices=tuple(LAMP_PLACES))
]
LampShapeName = Annotated[
    str, reading(partial(read_choice, names=LAMP_SHAPES)), Option(choices=tuple(LAMP_SHAPES))
]
LidName = Annotated[str, reading(partial(read_choice, names=LIDS)), Option(choices=tuple(LIDS))]
MaterialName = Annotated[
    str, reading(partial(read_choice, names=MATERIALS)), Option(choices=tuple(MATERIALS))
]
SurfaceName = Annotated[
    str, reading(partial(read_choice, names=SURFACES)), Option(choices=tuple(SURFACES))
]
Thermometers = Annotated[
    frozenset[str], reading(read_thermometers), Option(completes="thermometer")
]
YesNo = Annotated[str, reading(partial(read_choice, names=YES_NO)), Option(choices=tuple(YES_NO))]
GivesName = Annotated[str, reading(partial(read_choice, names=GIVES)), Option(choices=tuple(GIVES))]
HeatSourceName = Annotated[str, Option(completes="heat_source")]


class TempsQuery(Query):
    """What the keeper's readings say, and what to do first."""

    basking: SurfaceRange | None = Field(None, examples=["98F"])
    cool: AirRange | None = Field(None, examples=["75F"])
    warm: AirRange | None = Field(None, examples=["83F"])
    night: AirRange | None = Field(None, examples=["64F"])
    water: AirRange | None = Field(None, examples=["78F"])
    lamp_on: Duration | None = Field(None, examples=["3 hours"])
    measured: Thermometers = Field(frozenset(), examples=["infrared gun and digital probe"])
    animal: AnimalName = Field("", examples=["bearded dragon"])
    room: AirTemperature | None = Field(None, examples=["72F"])
    enclosure: EnclosureSize | None = Field(None, examples=["48x24x24in"])
    material: MaterialName = Field("glass", examples=["wood"])
    lid: LidName = Field("full mesh", examples=["solid"])
    watts: Power | None = Field(None, examples=["75W"])
    state: StateNames = Field(frozenset(), examples=["young"])


class BaskingQuery(Query):
    """From one reading to the wanted surface: move the lamp, change it, or dim it."""

    surface: SurfaceTemperature = Field(examples=["92F"])
    air: AirTemperature = Field(examples=["80F"])
    distance: Length = Field(examples=["10in"])
    want: SurfaceTemperature | None = Field(None, examples=["103F"])
    animal: AnimalName = Field("", examples=["bearded dragon"])
    watts: Power | None = Field(None, examples=["75W"])
    dimmer: Percent | None = Field(None, examples=["90%"])
    safe: Length | None = Field(None, examples=["8in"])
    holder: Power | None = Field(None, examples=["100W"])
    reach: YesNo | None = Field(None, examples=["no"])
    wood: SurfaceTemperature | None = Field(None, examples=["120F"])


class WattsQuery(Query):
    """A first wattage for a lamp that has not been bought yet."""

    room: AirTemperature = Field(examples=["70F"])
    distance: Length = Field(examples=["10in"])
    lamp: LampShapeName = Field("flood", examples=["flood"])
    want: SurfaceTemperature | None = Field(None, examples=["103F"])
    animal: AnimalName = Field("", examples=["bearded dragon"])
    holder: Power | None = Field(None, examples=["100W"])
    enclosure: EnclosureSize | None = Field(None, examples=["48x24x24in"])
    material: MaterialName = Field("glass", examples=["wood"])
    lid: LidName = Field("full mesh", examples=["solid"])
    place: LampPlaceName = Field("inside", examples=["inside"])


class BoxQuery(Query):
    """A question about a box that needs its lid; of a cage of mesh all round that is told."""

    @classmethod
    def lacking(cls, given: Mapping[str, str], _own: Own = NOTHING_OWN) -> tuple[str, ...]:
        """Return what is missing, the lid too unless all sides are mesh."""
        wanted = [o.name for o in cls.options() if o.required or o.name == "lid"]
        if _is_mesh(given.get("material", "")):
            wanted.remove("lid")
        return tuple(name for name in wanted if name not in given)


def _is_mesh(material: str) -> bool:
    try:
        return read_choice(material, MATERIALS) == "mesh"
    except NotUnderstoodError:
        return False


class AirQuery(BoxQuery):
    """Watts to hold the air, and where the warmth goes."""

    enclosure: EnclosureSize = Field(examples=["48x24x24in"])
    material: MaterialName = Field(examples=["wood"])
    lid: LidName = Field("full mesh", examples=["solid"])
    room: AirTemperature = Field(examples=["68F"])
    want: AirTemperature | None = Field(None, examples=["80F"])
    animal: AnimalName = Field("", examples=["bearded dragon"])
    watts: Power | None = Field(None, examples=["75W"])
    place: LampPlaceName = Field("inside", examples=["inside"])

    def asks_of_an_animal(self) -> bool:
        """Say whether the wanted air is the animal's."""
        return self.want is None


class NightQuery(Query):
    """Whether the night needs heat, and how much."""

    room: AirTemperature = Field(examples=["58F"])
    animal: AnimalName = Field("", examples=["bearded dragon"])
    enclosure: EnclosureSize | None = Field(None, examples=["48x24x24in"])
    material: MaterialName = Field("glass", examples=["wood"])
    lid: LidName = Field("full mesh", examples=["solid"])
    place: LampPlaceName = Field("inside", examples=["inside"])
    state: StateNames = Field(frozenset(), examples=["young"])


class SurfaceQuery(Query):
    """What a surface really is, from what the infrared gun shows."""

    reading: SurfaceTemperature = Field(examples=["98F"])
    material: SurfaceName = Field(examples=["slate"])
    air: AirTemperature | None = Field(None, examples=["80F"])
    setting: Setting | None = Field(None, examples=["95%"])
    glass: YesNo = Field("no", examples=["no"])


class LampQuery(Query):
    """What a kind of heat source is good for."""

    kind: HeatSourceName = Field("", examples=["radiant panel"])
    about: GivesName = Field("", examples=["uv"])
