"""The questions in the asker's own words: any question, and a whole set-up to check."""

from pydantic import Field

from bot.queries.heat import Thermometers
from bot.queries.options import (
    GAP,
    TUBES,
    Age,
    AirTemperature,
    AnimalName,
    Duration,
    FixtureOption,
    Hours,
    Length,
    ScreenOption,
    SurfaceTemperature,
    Text,
    Tube,
    TubeCount,
    TubeLength,
    UviRange,
    UvLampKind,
)
from bot.queries.query import Query
from bot.queries.states import STATE, StateNames
from bot.queries.uv import LAMP

__all__ = ["AskQuery", "CheckQuery"]

_ANIMAL = "the animal, such as bearded dragon"


class CheckQuery(Query):
    """A whole set-up, told freely; an option says better what the words said wrongly."""

    setup: Text = Field(
        "",
        description="your set-up in your own words, as you would tell a friend",
        examples=["beardie, 12% in a shiny hood, no mesh, 16in to his back, basking 98, cool 75"],
    )
    animal: AnimalName = Field("", description=_ANIMAL, examples=["bearded dragon"])
    tube: Tube | None = Field(None, description="tube strength on the label", examples=["12%"])
    reflector: FixtureOption | None = Field(
        None, description="the fixture behind the tube: polished or plain", examples=["polished"]
    )
    screen: ScreenOption | None = Field(
        None, description="what is between: none, 45% (blocked), passes 55%", examples=["none"]
    )
    distance: Length | None = Field(
        None, description="from the tube to the animal's back", examples=["16in"]
    )
    length: TubeLength | None = Field(None, description="length of the tube", examples=["34in"])
    age: Age | None = Field(
        None, description="how long the tube has been in use", examples=["6 months"]
    )
    meter: UviRange | None = Field(
        None, description="UV index that a meter shows at the animal's back", examples=["4.2"]
    )
    basking: SurfaceTemperature | None = Field(
        None, description="basking surface, by infrared gun", examples=["98F"]
    )
    cool: AirTemperature | None = Field(
        None, description="air at the cool end, by digital probe", examples=["75F"]
    )
    warm: AirTemperature | None = Field(
        None, description="air at the warm end, out of the beam", examples=["83F"]
    )
    night: AirTemperature | None = Field(
        None, description="the lowest at night in the enclosure or its room", examples=["64F"]
    )
    water: AirTemperature | None = Field(
        None, description="the water, where it swims, such as 78F", examples=["78F"]
    )
    lamp_on: Duration | None = Field(
        None, description="how long the lamp had been on when you read", examples=["3 hours"]
    )
    measured: Thermometers | None = Field(
        None,
        description="what you measured with: infrared gun, digital probe, dial or strip",
        examples=["infrared gun and digital probe"],
    )
    hours: Hours | None = Field(
        None, description="how long the lights are on each day", examples=["12 hours"]
    )
    lamp: UvLampKind | None = Field(None, description=LAMP, examples=["T5 HO tube"])
    tubes: TubeCount | None = Field(None, description=TUBES, examples=["1"])
    gap: Length | None = Field(None, description=GAP, examples=["2in"])
    state: StateNames = Field(frozenset(), description=STATE, examples=["young"])


class AskQuery(Query):
    """Any question in the asker's own words."""

    question: Text = Field(
        description="your question in your own words",
        examples=["how far should a 12% tube be with a polished reflector and no screen"],
    )
