"""Between what ends a target or a limit of a group's own may lie."""

from typing import Annotated

from pydantic import AfterValidator
from pydantic_core import PydanticCustomError

from calc.animal import Subject

__all__ = ["OwnSubject", "bounds_of", "check_bounds", "limit_bounds"]

_BOUNDS: dict[Subject, tuple[float, float]] = {
    Subject.UVI: (0.0, 20.0),
    Subject.BASKING_SURFACE: (10.0, 70.0),
    Subject.WARM_AIR: (5.0, 50.0),
    Subject.COOL_AIR: (5.0, 45.0),
    Subject.NIGHT_FLOOR: (-5.0, 40.0),
    Subject.NIGHT_HEAT_OFF: (-5.0, 40.0),
    Subject.WATER: (2.0, 40.0),
    Subject.WATER_DEPTH: (0.01, 3.0),
    Subject.LIGHT_HOURS: (0.0, 24.0),
}
_LIMIT_BOUNDS = {
    "surface_limit_c": (15.0, 65.0),
    "coolest_limit_c": (10.0, 38.0),
    "night_limit_c": (2.0, 30.0),
    "uvi_limit": (0.0, 11.0),
}


def _of_own(subject: Subject) -> Subject:
    if subject not in _BOUNDS:
        raise PydanticCustomError("enum", "one of: {subjects}", {"subjects": ", ".join(_BOUNDS)})
    return subject


OwnSubject = Annotated[Subject, AfterValidator(_of_own)]
"""What a group may have a target of its own for."""


def bounds_of(subject: Subject) -> tuple[float, float]:
    """Return the least and the most that a target may be."""
    return _BOUNDS[subject]


def limit_bounds(name: str) -> tuple[float, float]:
    """Return the least and the most that a limit of a group's own animal may be, by its field."""
    return _LIMIT_BOUNDS[name]


def check_bounds(subject: Subject, low: float, best: float | None, high: float) -> None:
    """Raise ValueError where low, best and high are not in order and within the bounds."""
    least, most = bounds_of(subject)
    if not least <= low <= (low if best is None else best) <= high <= most:
        raise ValueError(f"low, best and high are in order, from {least:g} to {most:g}")
