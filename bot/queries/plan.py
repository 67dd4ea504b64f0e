"""The question that plans a set-up from what someone has or wants."""

from pydantic import Field

from bot.queries.heat import LampPlaceName, LampShapeName, LidName, MaterialName
from bot.queries.options import (
    GAP,
    TUBES,
    AirTemperature,
    AnimalName,
    EnclosureSize,
    FixtureOption,
    Length,
    Power,
    ScreenOption,
    Tube,
    TubeCount,
    TubeLength,
    UviRange,
)
from bot.queries.query import Query
from bot.queries.states import STATE, StateNames
from bot.queries.uv import ANIMAL, SCREEN, UVI

__all__ = ["PlanQuery"]


class PlanQuery(Query):
    """A complete starting set-up: what to buy, where it goes, what to measure first."""

    animal: AnimalName = Field("", description=ANIMAL, examples=["bearded dragon"])
    enclosure: EnclosureSize = Field(
        description="inside length, depth and height, such as 48x24x24in or 120x60x60cm",
        examples=["48x24x24in"],
    )
    lid: LidName = Field(
        description="the lid: solid, part mesh or full mesh", examples=["full mesh"]
    )
    material: MaterialName = Field(
        "glass", description="the walls: glass, wood, pvc or melamine", examples=["wood"]
    )
    room: AirTemperature | None = Field(
        None, description="the air of the room by day, such as 70F", examples=["70F"]
    )
    night: AirTemperature | None = Field(
        None, description="the coldest the room gets at night, such as 62F", examples=["62F"]
    )
    place: LampPlaceName | None = Field(
        None,
        description="the tube hangs inside, or above a mesh lid; else I choose",
        examples=["inside"],
    )
    screen: ScreenOption | None = Field(None, description=SCREEN, examples=["45%"])
    tube: Tube | None = Field(
        None, description="a tube you have, by the strength on its label: 12%", examples=["12%"]
    )
    reflector: FixtureOption | None = Field(
        None, description="the fixture that you have: polished or plain", examples=["polished"]
    )
    length: TubeLength | None = Field(
        None,
        description="length of the tube you have, or the watts on it: 34in, 39W",
        examples=["34in"],
    )
    lamp: LampShapeName = Field(
        "flood", description="the heat lamp's shape: wide dome, flood or narrow", examples=["flood"]
    )
    watts: Power | None = Field(
        None, description="wattage of a heat lamp you have, such as 75W", examples=["75W"]
    )
    back: Length | None = Field(
        None,
        description="height of the animal's back over what it lies on, such as 2in or 5cm",
        examples=["2in"],
    )
    uvi: UviRange | None = Field(None, description=UVI, examples=["3-5"])
    tubes: TubeCount = Field(1, description=TUBES, examples=["1"])
    gap: Length | None = Field(None, description=GAP, examples=["2in"])
    state: StateNames = Field(frozenset(), description=STATE, examples=["young"])
