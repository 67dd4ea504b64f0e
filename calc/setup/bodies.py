"""How high an animal's back is, and how high a basking place it can be given."""

from dataclasses import dataclass
from functools import cache

from calc.animal import BACK_BOUNDS_M, Animal
from calc.tables import read_table
from calc.uncertainty import Estimate
from calc.validity import check

__all__ = ["Body", "body_for", "body_of", "check_back"]


# The highest place for an animal of a group's own [m]: a branch, else a low platform.
_OWN_BRANCH_M, _OWN_PLATFORM_M = 1.0, 0.3


@dataclass(frozen=True, slots=True)
class Body:
    """An adult's back over what it lies on [m], and the highest basking place to give it [m].

    Source: back_heights.
    """

    back_m: Estimate
    highest_platform_m: float
    in_water: bool
    digs: bool = False


def check_back(back_m: float) -> None:
    """Refuse a back that is no animal's [m]."""
    check("height of the back", back_m, *BACK_BOUNDS_M, "m")


def body_of(slug: str) -> Body | None:
    """Return the body of an animal of the list by its slug, or None where it is not known."""
    return _bodies().get(slug)


def body_for(animal: Animal) -> Body | None:
    """Return the body of an animal, one that a group added included; None: not known.

    A back as the group told it; where it climbs, swims or digs by what was told of its life.
    """
    if animal.own_back_m is None:
        return body_of(animal.slug)
    climbs = animal.own_life == "climbs"
    return Body(
        Estimate.exact(animal.own_back_m),
        _OWN_BRANCH_M if climbs else _OWN_PLATFORM_M,
        animal.own_life == "water",
        animal.own_life == "digs",
    )


@cache
def _bodies() -> dict[str, Body]:
    told = read_table("calc/data/bodies.toml")
    rows = {slug: row for slug, row in told.items() if isinstance(row, dict)}
    return {
        slug: Body(
            Estimate(*row["back"]),
            row["highest_platform"],
            row.get("in_water", False),
            row.get("digs", False),
        )
        for slug, row in rows.items()
    }
