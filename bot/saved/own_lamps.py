"""A lamp of a group's own: a tube by its constant, a small one by how its UV falls."""

from datetime import date
from typing import Self

from pydantic import Field, model_validator

from bot.language.uv_lamps import TUBES, UvLamp
from bot.saved.values import Kept, Name

__all__ = ["OwnLamp", "OwnPoint"]

# As far behind its face as the engine looks for the point that a small lamp shines from [m].
_FARTHEST_BEHIND_M = 0.30
_MOST_VARIANCE, _ROUNDED = 1e6, 1e-6


class OwnPoint(Kept):
    """How the UV of a small lamp falls by its readings: strength [UVI m²], depth [m].

    ``around_m`` is the middle of the readings; the variances are those of ``PointSource``.
    """

    strength_uvi_m2: float = Field(gt=0.0, lt=100.0)
    behind_m: float = Field(ge=0.0, le=_FARTHEST_BEHIND_M)
    around_m: float = Field(ge=0.05, le=3.0)
    variance: float = Field(ge=0.0, le=_MOST_VARIANCE)
    depth_variance_m2: float = Field(ge=0.0, le=_MOST_VARIANCE)
    covariance_m: float

    @model_validator(mode="after")
    def _varies_as_readings_do(self) -> Self:
        most = self.variance * self.depth_variance_m2
        if self.covariance_m**2 > most * (1.0 + _ROUNDED):
            raise ValueError("the covariance is at most the root of both variances' product")
        return self


class OwnLamp(Kept):
    """A lamp of the group's own, from meter readings.

    A tube has its constant [UVI m] and its lit length [m], a small lamp its ``point``.
    """

    name: Name
    kind: UvLamp = UvLamp.T5_HO
    constant_uvi_m: float | None = Field(default=None, gt=0.01, lt=20.0)
    doubt_factor: float = Field(ge=1.0, le=3.0)
    readings: int = Field(ge=1, le=50)
    lit_length_m: float | None = Field(default=None, ge=0.1, le=1.6)
    point: OwnPoint | None = None
    set_on: date

    @model_validator(mode="after")
    def _as_its_kind_falls(self) -> Self:
        of_tube = self.constant_uvi_m is not None and self.lit_length_m is not None
        of_neither = self.constant_uvi_m is None and self.lit_length_m is None
        if self.kind is UvLamp.UNKNOWN:
            raise ValueError("a lamp that everybody asks with is of a kind that is known")
        if self.kind in TUBES and (not of_tube or self.point is not None):
            raise ValueError("a tube has a constant and a lit length, and no point")
        if self.kind not in TUBES and (not of_neither or self.point is None):
            raise ValueError("a small lamp has a point, and neither constant nor lit length")
        return self
