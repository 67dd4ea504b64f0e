"""The questions about heat: readings, the basking lamp, the air, the night, heat sources."""

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
from bot.queries.options import (
    AirTemperature,
    AnimalName,
    Duration,
    EnclosureSize,
    Length,
    Percent,
    Power,
    Setting,
    SurfaceTemperature,
)
from bot.queries.query import Option, Query, reading
from bot.queries.states import STATE, StateNames

__all__ = [
    "AirQuery",
    "BaskingQuery",
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

_ANIMAL = "your animal, such as bearded dragon; every animal needs its own"
_ENCLOSURE = "inside length, depth and height, such as 48x24x24in or 120x60x60cm"
_LID = "the lid: solid, part mesh or full mesh"
_MATERIAL = "the walls: glass, wood, pvc or melamine"
_WANT = "the temperature you want; without it, name the animal, whose own is taken"
_DISTANCE = "from the lamp's face to the surface, such as 10in or 25cm"


class TempsQuery(Query):
    """What the keeper's readings say, and what to do first."""

    basking: SurfaceTemperature | None = Field(
        None, description="basking surface, by infrared gun, such as 98F", examples=["98F"]
    )
    cool: AirTemperature | None = Field(
        None, description="air at the cool end, by digital probe, such as 75F", examples=["75F"]
    )
    warm: AirTemperature | None = Field(
        None, description="air at the warm end, out of the beam, such as 83F", examples=["83F"]
    )
    night: AirTemperature | None = Field(
        None, description="the lowest at night, such as 64F", examples=["64F"]
    )
    water: AirTemperature | None = Field(
        None, description="the water, where it swims, such as 78F", examples=["78F"]
    )
    lamp_on: Duration | None = Field(
        None, description="how long the lamp had been on, such as 3 hours", examples=["3 hours"]
    )
    measured: Thermometers = Field(
        frozenset(),
        description="what you measured with: infrared gun, digital probe, dial or strip",
        examples=["infrared gun and digital probe"],
    )
    animal: AnimalName = Field("", description=_ANIMAL, examples=["bearded dragon"])
    room: AirTemperature | None = Field(
        None,
        description="the air of the room by day; with it I reckon what mends the cool end",
        examples=["72F"],
    )
    enclosure: EnclosureSize | None = Field(None, description=_ENCLOSURE, examples=["48x24x24in"])
    material: MaterialName = Field("glass", description=_MATERIAL, examples=["wood"])
    lid: LidName = Field("full mesh", description=_LID, examples=["solid"])
    watts: Power | None = Field(
        None, description="the heat lamp's wattage, such as 75W", examples=["75W"]
    )
    state: StateNames = Field(frozenset(), description=STATE, examples=["young"])


class BaskingQuery(Query):
    """From one reading to the wanted surface: move the lamp, change it, or dim it."""

    surface: SurfaceTemperature = Field(
        description="the basking surface now, by infrared gun, such as 92F", examples=["92F"]
    )
    air: AirTemperature = Field(
        description="the air beside the spot, out of the beam, such as 80F", examples=["80F"]
    )
    distance: Length = Field(description=_DISTANCE, examples=["10in"])
    want: SurfaceTemperature | None = Field(None, description=_WANT, examples=["103F"])
    animal: AnimalName = Field("", description=_ANIMAL, examples=["bearded dragon"])
    watts: Power | None = Field(
        None, description="the lamp's wattage, such as 75W", examples=["75W"]
    )
    dimmer: Percent | None = Field(
        None, description="how far up the dimmer is: 100% is full", examples=["90%"]
    )
    safe: Length | None = Field(
        None, description="the nearest distance that the lamp's label allows", examples=["8in"]
    )
    holder: Power | None = Field(
        None, description="the most watts marked on the lamp holder", examples=["100W"]
    )
    reach: YesNo | None = Field(
        None, description="can the animal touch the lamp: yes or no", examples=["no"]
    )
    wood: SurfaceTemperature | None = Field(
        None, description="the hottest wood near the lamp, if there is any", examples=["120F"]
    )


class WattsQuery(Query):
    """A first wattage for a lamp that has not been bought yet."""

    room: AirTemperature = Field(description="the air of the room, such as 70F", examples=["70F"])
    distance: Length = Field(description=_DISTANCE, examples=["10in"])
    lamp: LampShapeName = Field(
        "flood",
        description="the lamp's shape: wide dome, flood or narrow",
        examples=["flood"],
    )
    want: SurfaceTemperature | None = Field(None, description=_WANT, examples=["103F"])
    animal: AnimalName = Field("", description=_ANIMAL, examples=["bearded dragon"])
    holder: Power | None = Field(
        None, description="the most watts marked on the lamp holder", examples=["100W"]
    )
    enclosure: EnclosureSize | None = Field(None, description=_ENCLOSURE, examples=["48x24x24in"])
    material: MaterialName = Field("glass", description=_MATERIAL, examples=["wood"])
    lid: LidName = Field("full mesh", description=_LID, examples=["solid"])
    place: LampPlaceName = Field(
        "inside", description="the lamp is inside, or above a mesh lid", examples=["inside"]
    )


class AirQuery(Query):
    """Watts to hold the air, and where the warmth goes."""

    enclosure: EnclosureSize = Field(description=_ENCLOSURE, examples=["48x24x24in"])
    material: MaterialName = Field(description=_MATERIAL, examples=["wood"])
    lid: LidName = Field(description=_LID, examples=["solid"])
    room: AirTemperature = Field(description="the air of the room, such as 68F", examples=["68F"])
    want: AirTemperature | None = Field(None, description=_WANT, examples=["80F"])
    animal: AnimalName = Field("", description=_ANIMAL, examples=["bearded dragon"])
    watts: Power | None = Field(
        None, description="the basking lamp's wattage, to see if it is enough", examples=["75W"]
    )
    place: LampPlaceName = Field(
        "inside", description="the lamp is inside, or above a mesh lid", examples=["inside"]
    )

    def asks_of_an_animal(self) -> bool:
        """Say whether the wanted air is the animal's."""
        return self.want is None


class NightQuery(Query):
    """Whether the night needs heat, and how much."""

    room: AirTemperature = Field(
        description="the coldest the room gets at night, such as 58F", examples=["58F"]
    )
    animal: AnimalName = Field("", description=_ANIMAL, examples=["bearded dragon"])
    enclosure: EnclosureSize | None = Field(None, description=_ENCLOSURE, examples=["48x24x24in"])
    material: MaterialName = Field("glass", description=_MATERIAL, examples=["wood"])
    lid: LidName = Field("full mesh", description=_LID, examples=["solid"])
    place: LampPlaceName = Field(
        "inside", description="the heater is inside, or above a mesh lid", examples=["inside"]
    )
    state: StateNames = Field(frozenset(), description=STATE, examples=["young"])


class SurfaceQuery(Query):
    """What a surface really is, from what the infrared gun shows."""

    reading: SurfaceTemperature = Field(
        description="what the infrared gun shows, such as 98F", examples=["98F"]
    )
    material: SurfaceName = Field(
        description="what you shot at, such as slate, tile, wood, brick or metal",
        examples=["slate"],
    )
    air: AirTemperature | None = Field(
        None, description="the air around, which the surface mirrors", examples=["80F"]
    )
    setting: Setting | None = Field(
        None, description="the gun's emissivity setting in percent; most are 95%", examples=["95%"]
    )
    glass: YesNo = Field(
        "no", description="did you shoot through glass: yes or no", examples=["no"]
    )


class LampQuery(Query):
    """What a kind of heat source is good for."""

    kind: HeatSourceName = Field(
        "",
        description="the kind of lamp or heater; nothing lists them all",
        examples=["radiant panel"],
    )
    about: GivesName = Field(
        "", description="what you want to know of it: uv, light or night", examples=["uv"]
    )
