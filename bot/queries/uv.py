"""The questions about the UV tube: how far, how strong there, which tube."""

from pydantic import Field

from bot.queries.options import (
    Age,
    AnimalName,
    FixtureOption,
    Length,
    Query,
    Readings,
    ScreenOption,
    Tube,
    UviRange,
)

__all__ = ["ANIMAL", "SCREEN", "UVI", "DistanceQuery", "TubeQuery", "UviQuery"]

ANIMAL = "the animal, such as bearded dragon"
UVI = "the UV index you want instead of the animal's own range, such as 3-5"
_READINGS = "your own meter readings of this tube, through this screen: 4.2 at 12 in"
SCREEN = "what is between: none, 45% (blocked), passes 55%, or 18x16 0.011in"


class DistanceQuery(Query):
    """How far from the animal's back the tube should hang."""

    tube: Tube = Field(description="tube strength on the label: 12%, 6%", examples=["12%"])
    reflector: FixtureOption = Field(
        description="the fixture behind the tube: polished or plain", examples=["polished"]
    )
    screen: ScreenOption = Field(description=SCREEN, examples=["none"])
    animal: AnimalName = Field("", description=ANIMAL, examples=["bearded dragon"])
    uvi: UviRange | None = Field(None, description=UVI, examples=["3-5"])
    length: Length | None = Field(
        None, description="length of the tube, such as 22in or 85cm", examples=["22in"]
    )
    age: Age | None = Field(
        None,
        description="how long the tube has been in use, such as 6 months",
        examples=["6 months"],
    )
    readings: Readings | None = Field(None, description=_READINGS, examples=["4.2 at 12 in"])


class UviQuery(DistanceQuery):
    """What UV index to expect at a distance, and which way to move."""

    distance: Length = Field(
        description="from the tube to the animal's back, such as 14in or 35cm", examples=["14in"]
    )


class TubeQuery(Query):
    """Which strengths and lengths suit a place that is fixed."""

    distance: Length = Field(
        description="from the tube to the animal's back, such as 14in or 35cm", examples=["14in"]
    )
    screen: ScreenOption = Field(description=SCREEN, examples=["none"])
    animal: AnimalName = Field("", description=ANIMAL, examples=["bearded dragon"])
    uvi: UviRange | None = Field(None, description=UVI, examples=["3-5"])
    enclosure: Length | None = Field(
        None, description="length of the enclosure, such as 4ft or 120cm", examples=["4ft"]
    )
    length: Length | None = Field(
        None, description="length of the tube, if that is fixed too", examples=["34in"]
    )
    readings: Readings | None = Field(None, description=_READINGS, examples=["4.2 at 12 in"])
