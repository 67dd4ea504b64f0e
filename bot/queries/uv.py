"""The questions about the UV tube: how far, how strong there, which tube."""

from collections.abc import Mapping

from pydantic import Field

from bot.kept.group import NOTHING_OWN, Own
from bot.language.uv_lamps import UvLamp, find_uv_lamp
from bot.queries.options import (
    GAP,
    TUBES,
    Age,
    AnimalName,
    EnclosureLength,
    FixtureIfKnown,
    Length,
    Readings,
    ScreenIfKnown,
    ScreenOption,
    Tube,
    TubeCount,
    TubeLength,
    UviRange,
    UvLampKind,
    kind_of,
)
from bot.queries.query import Query
from bot.queries.states import STATE, StateNames

__all__ = ["ANIMAL", "LAMP", "SCREEN", "UVI", "DistanceQuery", "TubeQuery", "UviQuery"]

ANIMAL = "the animal, such as bearded dragon"
UVI = "the UV index you want instead of the animal's own range, such as 3-5"
_READINGS = "your own meter readings of this tube, through this screen: 4.2 at 12 in"
LAMP = "the kind of UV lamp, such as T5 HO tube, T8 or compact; of most I know no figures"
SCREEN = "what is between: none, 45% (blocked), passes 55%, or 18x16 0.011in"


class DistanceQuery(Query):
    """How far from the animal's back the tube should hang."""

    tube: Tube | None = Field(
        None,
        description="tube strength on the label: 12%, 6%; not needed with readings",
        examples=["12%"],
    )
    reflector: FixtureIfKnown | None = Field(
        None,
        description="behind the tube: polished, plain or not sure; not needed with readings",
        examples=["polished"],
    )
    screen: ScreenIfKnown | None = Field(
        None, description=f"{SCREEN}; mesh or not sure will do", examples=["none"]
    )
    animal: AnimalName = Field("", description=ANIMAL, examples=["bearded dragon"])
    uvi: UviRange | None = Field(None, description=UVI, examples=["3-5"])
    length: TubeLength | None = Field(
        None,
        description="length of the tube or the watts on it: 22in, 85cm, 39W",
        examples=["22in"],
    )
    age: Age | None = Field(
        None,
        description="how long the tube has been in use, such as 6 months",
        examples=["6 months"],
    )
    readings: Readings | None = Field(None, description=_READINGS, examples=["4.2 at 12 in"])
    enclosure: EnclosureLength | None = Field(
        None,
        description="the enclosure's length, where the tube's is not known: 4ft, 120cm",
        examples=["4ft"],
    )
    lamp: UvLampKind | None = Field(None, description=LAMP, examples=["T5 HO tube"])
    tubes: TubeCount = Field(1, description=TUBES, examples=["1"])
    gap: Length | None = Field(None, description=GAP, examples=["2in"])
    state: StateNames = Field(frozenset(), description=STATE, examples=["young"])

    @property
    def kind(self) -> UvLamp:
        """The kind of UV lamp that is meant."""
        return kind_of(self.tube, self.lamp)

    @classmethod
    def lacking(cls, given: Mapping[str, str], own: Own = NOTHING_OWN) -> tuple[str, ...]:
        """Return what is missing; readings through the screen hold tube, fixture and screen.

        A lamp of another kind than a T5 HO tube has no figures, whatever else is told of it.
        """
        wanted = ["tube", "reflector", "screen"]
        if "readings" in given or _names_another_kind(given):
            wanted = []
        elif own.lamp(given.get("tube", "")) is not None:
            wanted.remove("reflector")
        wanted += [option.name for option in cls.options() if option.required]
        return tuple(name for name in wanted if name not in given)


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
    enclosure: EnclosureLength | None = Field(
        None,
        description="the enclosure's length, or its whole size: 4ft, 120cm, 48x24x24in",
        examples=["4ft"],
    )
    length: TubeLength | None = Field(
        None, description="length of the tube, if that is fixed too", examples=["34in"]
    )
    readings: Readings | None = Field(None, description=_READINGS, examples=["4.2 at 12 in"])
    lamp: UvLampKind | None = Field(None, description=LAMP, examples=["T5 HO tube"])
    tubes: TubeCount = Field(1, description=TUBES, examples=["1"])
    gap: Length | None = Field(None, description=GAP, examples=["2in"])
    state: StateNames = Field(frozenset(), description=STATE, examples=["young"])


def _names_another_kind(given: Mapping[str, str]) -> bool:
    named = (find_uv_lamp(given.get(option, "")) for option in ("tube", "lamp"))
    return any(kind not in (None, UvLamp.T5_HO) for kind in named)
