"""The questions about the UV tube: how far, how strong there, which tube."""

from collections.abc import Mapping
from typing import TYPE_CHECKING

from pydantic import Field

from bot.language.lamps import Fixture
from bot.language.unsure import Unsure
from bot.language.uv_lamps import UvLamp, find_uv_lamp
from bot.queries.options import (
    Age,
    AnimalName,
    EnclosureLength,
    FixtureIfKnown,
    Length,
    OwnTube,
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
from bot.queries.states import StateNames
from bot.saved.group import NOTHING_OWN, Own

__all__ = ["DistanceQuery", "LampQuery", "TubeQuery", "UviQuery", "lacking_of_lamp"]


class LampQuery(Query):
    """A question about a UV lamp of any kind: each has these options, where they suit it."""

    if TYPE_CHECKING:
        tube: Tube | None
        lamp: UvLampKind | None

    @property
    def kind(self) -> UvLamp:
        """The kind of UV lamp that is meant."""
        return kind_of(self.tube, self.lamp)

    @classmethod
    def lacking(cls, given: Mapping[str, str], own: Own = NOTHING_OWN) -> tuple[str, ...]:
        """Return what is missing of the lamp and of what is needed beside it."""
        wanted = [*lacking_of_lamp(given, own), *(o.name for o in cls.options() if o.required)]
        return tuple(name for name in wanted if name not in given)


class DistanceQuery(LampQuery):
    """How far from the animal's back the tube should hang."""

    tube: Tube | None = Field(None, examples=["12%"])
    reflector: FixtureIfKnown | None = Field(None, examples=["polished"])
    screen: ScreenIfKnown | None = Field(None, examples=["none"])
    animal: AnimalName = Field("", examples=["bearded dragon"])
    uvi: UviRange | None = Field(None, examples=["3-5"])
    length: TubeLength | None = Field(None, examples=["22in"])
    age: Age | None = Field(None, examples=["6 months"])
    readings: Readings | None = Field(None, examples=["4.2 at 12 in"])
    enclosure: EnclosureLength | None = Field(None, examples=["4ft"])
    lamp: UvLampKind | None = Field(None, examples=["T5 HO tube"])
    tubes: TubeCount = Field(1, examples=["1"])
    gap: Length | None = Field(None, examples=["2in"])
    state: StateNames = Field(frozenset(), examples=["young"])

    @property
    def behind(self) -> Fixture | Unsure | None:
        """What is behind the tube; the readings of a group's own lamp hold that already."""
        return None if isinstance(self.tube, OwnTube) else self.reflector


class UviQuery(DistanceQuery):
    """What UV index to expect at a distance, and which way to move."""

    distance: Length = Field(examples=["14in"])


class TubeQuery(Query):
    """Which strengths and lengths suit a place; without a distance, where each strength hangs."""

    distance: Length | None = Field(None, examples=["14in"])
    screen: ScreenOption | None = Field(None, examples=["none"])
    animal: AnimalName = Field("", examples=["bearded dragon"])
    uvi: UviRange | None = Field(None, examples=["3-5"])
    enclosure: EnclosureLength | None = Field(None, examples=["4ft"])
    length: TubeLength | None = Field(None, examples=["34in"])
    readings: Readings | None = Field(None, examples=["4.2 at 12 in"])
    lamp: UvLampKind | None = Field(None, examples=["T5 HO tube"])
    tubes: TubeCount = Field(1, examples=["1"])
    gap: Length | None = Field(None, examples=["2in"])
    state: StateNames = Field(frozenset(), examples=["young"])

    @classmethod
    def lacking(cls, given: Mapping[str, str], _own: Own = NOTHING_OWN) -> tuple[str, ...]:
        """Return what is missing: at a place that is fixed, what is between."""
        fixed = [name for name in ("distance", "screen") if name not in given]
        return tuple(fixed) if "distance" in given or "readings" in given else ()


def lacking_of_lamp(given: Mapping[str, str], own: Own) -> tuple[str, ...]:
    """Return what must be told of a lamp; readings through the screen hold all of it.

    A lamp of another kind than a T5 HO tube has no figures, whatever else is told of it.
    """
    if "readings" in given or _names_another_kind(given):
        return ()
    if own.lamp(given.get("tube", "")) is not None:
        return "tube", "screen"
    return "tube", "reflector", "screen"


def _names_another_kind(given: Mapping[str, str]) -> bool:
    named = (find_uv_lamp(given.get(option, "")) for option in ("tube", "lamp"))
    return any(kind not in (None, UvLamp.T5_HO) for kind in named)
