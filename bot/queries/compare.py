"""The question about two set-ups under a UV tube."""

from collections.abc import Mapping

from pydantic import Field

from bot.queries.options import (
    Age,
    AnimalName,
    FixtureOption,
    Length,
    OwnTube,
    ScreenOption,
    Tube,
    TubeLength,
    UviRange,
)
from bot.queries.query import Query
from bot.queries.states import StateNames
from bot.queries.uv import UviQuery, lacking_of_lamp
from bot.saved.group import NOTHING_OWN, Own

__all__ = ["CompareQuery"]

_OF_ONE = ("distance", "tube", "reflector", "screen", "length", "age")


class CompareQuery(Query):
    """One set-up, and what is different in the other."""

    distance: Length = Field(examples=["14in"])
    tube: Tube | None = Field(None, examples=["12%"])
    reflector: FixtureOption | None = Field(None, examples=["polished"])
    screen: ScreenOption | None = Field(None, examples=["none"])
    with_tube: Tube | None = Field(None, examples=["6%"])
    with_reflector: FixtureOption | None = Field(None, examples=["plain"])
    with_screen: ScreenOption | None = Field(None, examples=["45%"])
    with_distance: Length | None = Field(None, examples=["10in"])
    animal: AnimalName = Field("", examples=["bearded dragon"])
    uvi: UviRange | None = Field(None, examples=["3-5"])
    length: TubeLength | None = Field(None, examples=["22in"])
    age: Age | None = Field(None, examples=["new"])
    with_length: TubeLength | None = Field(None, examples=["34in"])
    with_age: Age | None = Field(None, examples=["12 months"])
    state: StateNames = Field(frozenset(), examples=["young"])

    @classmethod
    def lacking(cls, given: Mapping[str, str], own: Own = NOTHING_OWN) -> tuple[str, ...]:
        """Return what is missing of the first set-up; the second is as the first."""
        wanted = (*lacking_of_lamp(given, own), "distance")
        return tuple(name for name in wanted if name not in given)

    @property
    def other_told(self) -> bool:
        """Say whether anything is told of the second."""
        return any(getattr(self, f"with_{name}") is not None for name in _OF_ONE)

    @property
    def both(self) -> tuple[UviQuery, UviQuery]:
        """Return what is asked of each alone."""
        alike = {"animal": self.animal, "uvi": self.uvi, "state": self.state}
        one = {name: getattr(self, name) for name in _OF_ONE}
        told = {name: getattr(self, f"with_{name}") for name in _OF_ONE}
        other = one | {name: value for name, value in told.items() if value is not None}
        if isinstance(self.with_tube, OwnTube):
            # Its readings hold its fixture, its length and its age.
            other |= {"reflector": self.with_reflector, "length": None, "age": None}
        return UviQuery.model_validate(one | alike), UviQuery.model_validate(other | alike)
