"""The questions in the asker's own words: any question, and a whole set-up to check."""

from typing import Annotated

from pydantic import Field

from bot.language.there import There, read_there
from bot.queries.heat import Thermometers
from bot.queries.options import (
    Age,
    AirRange,
    AnimalName,
    Duration,
    FixtureOption,
    Hours,
    Length,
    ScreenOption,
    SurfaceRange,
    Text,
    Tube,
    TubeCount,
    TubeLength,
    UviRange,
    UvLampKind,
)
from bot.queries.query import Option, Query, reading
from bot.queries.states import StateNames

__all__ = ["AskQuery", "CheckQuery", "NextQuery"]

ThereNames = Annotated[frozenset[There], reading(read_there), Option()]


class CheckQuery(Query):
    """A whole set-up, told freely; an option says better what the words said wrongly."""

    setup: Text = Field(
        "",
        examples=["beardie, 12% in a shiny hood, no mesh, 16in to his back, basking 98, cool 75"],
    )
    animal: AnimalName = Field("", examples=["bearded dragon"])
    tube: Tube | None = Field(None, examples=["12%"])
    reflector: FixtureOption | None = Field(None, examples=["polished"])
    screen: ScreenOption | None = Field(None, examples=["none"])
    distance: Length | None = Field(None, examples=["16in"])
    length: TubeLength | None = Field(None, examples=["34in"])
    age: Age | None = Field(None, examples=["6 months"])
    meter: UviRange | None = Field(None, examples=["4.2"])
    basking: SurfaceRange | None = Field(None, examples=["98F"])
    cool: AirRange | None = Field(None, examples=["75F"])
    warm: AirRange | None = Field(None, examples=["83F"])
    night: AirRange | None = Field(None, examples=["64F"])
    water: AirRange | None = Field(None, examples=["78F"])
    lamp_on: Duration | None = Field(None, examples=["3 hours"])
    measured: Thermometers | None = Field(None, examples=["infrared gun and digital probe"])
    hours: Hours | None = Field(None, examples=["12 hours"])
    lamp: UvLampKind | None = Field(None, examples=["T5 HO tube"])
    tubes: TubeCount | None = Field(None, examples=["1"])
    gap: Length | None = Field(None, examples=["2in"])
    state: StateNames = Field(frozenset(), examples=["young"])


class NextQuery(CheckQuery):
    """A whole set-up, told freely, and what of a good one is there already."""

    there: ThereNames | None = Field(None, examples=["hides, uv meter"])


class AskQuery(Query):
    """Any question in the asker's own words."""

    question: Text = Field(
        examples=["how far should a 12% tube be with a polished reflector and no screen"]
    )
