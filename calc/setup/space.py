"""Whether an enclosure's floor is enough for one adult, by public code or our own rule."""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

from calc.tables import read_table
from calc.validity import check

__all__ = ["SmallestFloor", "smallest_floor", "too_small_by"]


@dataclass(frozen=True, slots=True)
class SmallestFloor:
    """The smallest floor for one adult [m2], and where that is from.

    Of a turtle it is one of water, which is ``water_m`` [m] deep at least.
    """

    floor_m2: float
    source: str
    water_m: float | None = None

    @property
    def sides_m(self) -> tuple[float, float]:
        """A floor of that size twice as long as it is deep [m]."""
        depth_m = (self.floor_m2 / 2.0) ** 0.5
        return 2.0 * depth_m, depth_m


def smallest_floor(slug: str) -> SmallestFloor | None:
    """Return the smallest floor for an animal, or None where none is known here.

    >>> smallest_floor("bearded-dragon").floor_m2
    0.375
    """
    return _floors().get(slug)


def too_small_by(slug: str, length_m: float, depth_m: float) -> SmallestFloor | None:
    """Return the floor that an enclosure falls short of, or None where it does not.

    length depth < smallest floor

    Parameters
    ----------
    slug : the animal
    length_m, depth_m : inner sides of the floor [m], 0.05 to 20

    Returns
    -------
    SmallestFloor or None
        What is asked for [m2].

    Notes
    -----
    For an adult; height, water and a second animal are not looked at. A floor that is enough by
    this is not yet a good one.
    Source: nsw2013; austria_snakes2004; leopard_gecko_leaflet; tvt_tortoise; eu2010_63;
    enclosure_judgement.

    Examples
    --------
    >>> too_small_by("argentine-tegu", 1.22, 0.61).floor_m2
    2.2
    >>> too_small_by("bearded-dragon", 1.22, 0.61) is None
    True
    """
    check("length of the floor", length_m, 0.05, 20.0, "m")
    check("depth of the floor", depth_m, 0.05, 20.0, "m")
    floor = smallest_floor(slug)
    return floor if floor is not None and length_m * depth_m < floor.floor_m2 else None


@cache
def _floors() -> Mapping[str, SmallestFloor]:
    rows = read_table("calc/data/enclosures.toml")
    return {slug: SmallestFloor(**row) for slug, row in rows.items()}
