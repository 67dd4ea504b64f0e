"""The question that plans a set-up from what someone has or wants."""

from functools import partial
from typing import Annotated

from pydantic import Field

from bot.language.choices import LEVELS, read_choice
from bot.queries.heat import BoxQuery, LampPlaceName, LampShapeName, LidName, MaterialName
from bot.queries.options import (
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
    WhiteLamps,
)
from bot.queries.query import Option, reading
from bot.queries.states import StateNames

__all__ = ["ArrangeQuery", "PlanQuery"]

LevelName = Annotated[
    str, reading(partial(read_choice, names=LEVELS)), Option(choices=tuple(LEVELS))
]


class PlanQuery(BoxQuery):
    """A complete starting set-up: what to buy, where it goes, what to measure first."""

    animal: AnimalName = Field("", examples=["bearded dragon"])
    enclosure: EnclosureSize = Field(examples=["48x24x24in"])
    lid: LidName = Field("full mesh", examples=["full mesh"])
    material: MaterialName = Field("glass", examples=["wood"])
    room: AirTemperature | None = Field(None, examples=["70F"])
    night: AirTemperature | None = Field(None, examples=["62F"])
    place: LampPlaceName | None = Field(None, examples=["inside"])
    screen: ScreenOption | None = Field(None, examples=["45%"])
    tube: Tube | None = Field(None, examples=["12%"])
    reflector: FixtureOption | None = Field(None, examples=["polished"])
    length: TubeLength | None = Field(None, examples=["34in"])
    lamp: LampShapeName = Field("flood", examples=["flood"])
    watts: Power | None = Field(None, examples=["75W"])
    back: Length | None = Field(None, examples=["2in"])
    uvi: UviRange | None = Field(None, examples=["3-5"])
    tubes: TubeCount = Field(1, examples=["1"])
    gap: Length | None = Field(None, examples=["2in"])
    state: StateNames = Field(frozenset(), examples=["young"])
    level: LevelName | None = Field(None, examples=["good"])
    light: WhiteLamps = Field((), examples=["24W led bar"])


class ArrangeQuery(PlanQuery):
    """The same set-up, with every way to hang its lamps beside each other."""
