"""A reading that a keeper gave to a group: what was read under which lamp, no text, no person."""

from datetime import date
from typing import Literal, Self

from pydantic import Field, model_validator

from bot.language.uv_lamps import UvLamp
from bot.saved.kept_screens import KeptScreen
from bot.saved.values import Kept, Name

__all__ = [
    "MOST_GIVEN",
    "MOST_GIVEN_EVERYWHERE",
    "MOST_POOLED",
    "GivenReading",
    "GroupClass",
    "GroupFading",
    "PooledReading",
    "Shared",
]

MOST_GIVEN = 40
"""So many readings one keeper may give to one group."""

MOST_GIVEN_EVERYWHERE = 5 * MOST_GIVEN
"""So many readings one keeper may give to all groups together."""

MOST_POOLED = 600
"""So many readings a group keeps."""

_MOST_AGE_DAYS = 36_525


class PooledReading(Kept):
    """A UV index [1] read on a day, at a distance [m], under a lamp as far as it was told.

    ``own_lamp`` is the name of a lamp of the group's own; of others their class is kept. ``screen``
    None: nothing is between.
    """

    day: date
    lamp: UvLamp = UvLamp.T5_HO
    own_lamp: Name | None = None
    percent: float | None = Field(default=None, ge=1.0, le=20.0)
    reflector: Literal["polished", "plain"] | None = None
    screen: KeptScreen | None = None
    tube_length_m: float | None = Field(default=None, ge=0.1, le=2.0)
    age_days: int | None = Field(default=None, ge=0, le=_MOST_AGE_DAYS)
    distance_m: float = Field(ge=0.05, le=3.0)
    uvi: float = Field(ge=0.05, le=100.0)

    @model_validator(mode="after")
    def _a_class_or_a_lamp_of_the_group(self) -> Self:
        told = self.percent, self.reflector, self.tube_length_m
        if self.own_lamp is not None and any(x is not None for x in told):
            raise ValueError("a lamp of the group's own holds its class")
        of_class = self.own_lamp is None and self.lamp is UvLamp.T5_HO
        if of_class and any(x is None for x in told):
            raise ValueError("a T5 HO tube has a strength, a fixture and a length")
        if self.screen is not None and self.screen.pane:
            raise ValueError("through a pane nothing is read")
        return self


class Shared(Kept):
    """A reading of a group with its number; keeper and box are counted anew within the group.

    Neither tells who or what that is: they say which readings come from one hand or one lamp.
    """

    number: int
    keeper: int
    box: int | None
    reading: PooledReading


class GivenReading(Kept):
    """A reading in a keeper's own file: to which group it was given, and from which enclosure."""

    group: int = Field(ge=0, lt=2**63)
    enclosure: Name | None = None
    reading: PooledReading


class GroupClass(Kept):
    """What a group's readings say of a class of tube beside this program's figure.

    The constant is e^``shift`` of it, with the variance of that and of a lamp's own logarithm [1].
    """

    percent: float
    reflector: Literal["polished", "plain"]
    shift: float = Field(ge=-3.0, le=3.0)
    shift_variance: float = Field(ge=0.0, le=1.0)
    lamp_variance: float = Field(ge=0.0, le=4.0)
    keepers: int
    readings: int
    newest: date


class GroupFading(Kept):
    """By what factor [1] the UV of a group's T5 HO tubes changes in 30 days, nine in ten between.

    ``lamps`` is how many were read on two days or more.
    """

    low: float
    month: float
    high: float
    lamps: int
    keepers: int
    newest: date
