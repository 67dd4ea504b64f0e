"""A tube for a box: inside or over the mesh, and how high the platform puts the animal's back.

The distance from tube to back decides; in a box of a given height the platform sets it. What
cannot be reached says how high a box would have to be.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from enum import Enum

from calc.uv.lamp import Lamp
from calc.uv.placement import Placement, Spot, Verdict, place, spot
from calc.uv.screen import NoScreen, Screen
from calc.validity import OutsideModelError

__all__ = ["Hanging", "Mount", "hangings", "lowest_box"]

_TUBE_UNDER_LID_M = 0.05
"""Underside of a tube in its fixture below the lid it is screwed to."""
_TUBE_OVER_MESH_M = 0.02
"""Underside of a tube in its fixture above the mesh it lies on."""
_HEADROOM_M = 0.25
"""Least height that stays free over a platform, so that nothing hangs in the animal's face."""
_LIKED_SHARE = 0.3
"""Share of the height at which a platform is easy to build and to climb."""
_LOWEST_BOX_M, _HIGHEST_BOX_M = 0.15, 3.0
_HIGHEST_BACK_M = 0.5


class Mount(Enum):
    """Where the tube is."""

    INSIDE = "inside, under the lid"
    OVER_MESH = "over the mesh"


@dataclass(frozen=True, slots=True)
class Hanging:
    """One way to hang a tube in a box; heights [m] over the floor."""

    lamp: Lamp
    mount: Mount
    screen: Screen
    tube_m: float
    platform_m: float
    here: Spot
    placement: Placement

    @property
    def distance_m(self) -> float:
        """Tube to back [m]."""
        return self.here.distance_m


def hangings(
    lamps: Iterable[Lamp],
    mesh: Screen | None,
    height_m: float,
    back_m: float,
    low_uvi: float,
    high_uvi: float,
) -> tuple[Hanging, ...]:
    """List the ways in which a tube gives a UVI range in a box, the best first.

    platform = tube − back − distance, kept from the floor to 0.25 m under the lid

    Parameters
    ----------
    lamps : the tubes to choose from
    mesh : what a mesh lid takes, or None where the lid is closed; then the tube hangs inside
    height_m : inner height of the box [m], 0.15 to 3
    back_m : the animal's back over what it lies on [m], 0 to 0.5
    low_uvi : low end of the range [1], 0 or more
    high_uvi : high end of the range [1], from the low one to 20

    Returns
    -------
    tuple of Hanging
        Heights [m] and UVI; empty where none fits.

    Notes
    -----
    Best is what needs the least departure from the start distance, then a tube out of the
    animal's reach, then a platform at about a third of the height. A tube inside hangs 0.05 m
    under the lid, one on mesh 0.02 m over it.
    Source: uv_distance_rows; nearest_distance.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> best = hangings([Lamp(12.0, Fixture.POLISHED)], None, 0.6, 0.05, 3.0, 5.0)[0]
    >>> best.mount.name, round(best.platform_m, 2), round(best.distance_m, 2)
    ('INSIDE', 0.06, 0.44)
    """
    _check(height_m, back_m)
    found = []
    for lamp, mount, screen in _choices(lamps, mesh):
        placement = place(lamp, screen, low_uvi, high_uvi)
        near, start, far = placement.near, placement.start, placement.far
        if placement.verdict is not Verdict.FITS or not (near and start and far):
            continue
        tube_m = _tube_height(height_m, mount)
        most = max(height_m - _HEADROOM_M, 0.0)
        platform_m = min(max(tube_m - back_m - start.distance_m, 0.0), most)
        distance_m = tube_m - back_m - platform_m
        if near.distance_m <= distance_m <= far.distance_m:
            here = spot(lamp, distance_m, screen)
            found.append(Hanging(lamp, mount, screen, tube_m, platform_m, here, placement))

    def unease(way: Hanging) -> tuple[float, bool, float]:
        start = way.placement.start
        moved = abs(way.distance_m - start.distance_m) if start else 0.0
        in_reach = mesh is not None and way.mount is Mount.INSIDE
        return round(moved, 2), in_reach, abs(way.platform_m / height_m - _LIKED_SHARE)

    return tuple(sorted(found, key=unease))


def lowest_box(
    lamps: Iterable[Lamp], mesh: Screen | None, back_m: float, low_uvi: float, high_uvi: float
) -> float | None:
    """Return the least inner height in which one of the tubes gives a UVI range.

    height = near + back + tube under the lid, the least over all tubes

    Parameters
    ----------
    lamps : the tubes to choose from
    mesh : what a mesh lid takes, or None where the lid is closed
    back_m : the animal's back over what it lies on [m], 0 to 0.5
    low_uvi : low end of the range [1], 0 or more
    high_uvi : high end of the range [1], from the low one to 20

    Returns
    -------
    float or None
        Height [m]; None where no tube gives the range at any distance.

    Notes
    -----
    The animal then lies on the floor.
    Source: uv_distance_rows; nearest_distance.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> round(lowest_box([Lamp(6.0, Fixture.PLAIN)], None, 0.05, 3.0, 5.0), 2)
    0.3
    """
    _check(_HIGHEST_BOX_M, back_m)
    heights = []
    for lamp, mount, screen in _choices(lamps, mesh):
        placement = place(lamp, screen, low_uvi, high_uvi)
        if placement.verdict is Verdict.FITS and placement.near:
            below = _HIGHEST_BOX_M - _tube_height(_HIGHEST_BOX_M, mount)
            heights.append(placement.near.distance_m + back_m + below)
    return min(heights, default=None)


def _choices(lamps: Iterable[Lamp], mesh: Screen | None) -> Iterator[tuple[Lamp, Mount, Screen]]:
    for lamp in lamps:
        yield lamp, Mount.INSIDE, NoScreen()
        if mesh is not None:
            yield lamp, Mount.OVER_MESH, mesh


def _tube_height(height_m: float, mount: Mount) -> float:
    if mount is Mount.INSIDE:
        return height_m - _TUBE_UNDER_LID_M
    return height_m + _TUBE_OVER_MESH_M


def _check(height_m: float, back_m: float) -> None:
    if not _LOWEST_BOX_M <= height_m <= _HIGHEST_BOX_M:
        raise OutsideModelError("box height", height_m, _LOWEST_BOX_M, _HIGHEST_BOX_M, "m")
    if not 0.0 <= back_m <= _HIGHEST_BACK_M:
        raise OutsideModelError("back height", back_m, 0.0, _HIGHEST_BACK_M, "m")
