"""What an animal can reach in the box: the platform's share in range, shade, and the heat.

No share is told without its doubt: each is worked out in 64 equally likely cases of what is not
known (``field_unknowns``), with one length, one lamp and one spread for all places of a case.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from math import log

import numpy as np
from numpy.typing import NDArray

from calc.judgement import LIKELY, SURE, Judged, judge_value
from calc.quantities import Quantity
from calc.uncertainty import Estimate
from calc.uv.field_unknowns import (
    DRAWS,
    FieldCases,
    Lengths,
    beside_m,
    cosine_power,
    field_cases,
    place_unknowns,
    with_lengths,
)
from calc.uv.ground import Ground, HeatPatch, Platform, check_within, ground_of
from calc.uv.lamp import FARTHEST_M, NEAREST_M
from calc.uv.placement import SAFE_MINIMUM_M, check_range
from calc.uv.section import Box, HungTube, each_field
from calc.validity import OutsideModelError

__all__ = [
    "CELLS",
    "LEAST_SHADE",
    "SHADE_UVI",
    "Glance",
    "Overlap",
    "Patches",
    "Place",
    "Shade",
    "glance",
    "patches",
]

SHADE_UVI = 0.5
"""Under this an animal is in the shade. Source: uv_shade."""

LEAST_SHADE = 0.05
"""Less of floor and platform [1] is no shade to go to. Source: shade_judgement."""

CELLS = 20
"""So many cells along each side of the platform."""

_TOGETHER, _APART = 0.5, 0.05
_TINY_UVI, _TINY_SHARE = 1e-12, 1e-9
# So many of the cases are nine in ten.
_HELD = DRAWS - round(0.1 * DRAWS)


class Overlap(Enum):
    """How the patch of heat and the patch of ultraviolet lie."""

    TOGETHER = "at least half of the heat patch is in the UVI range"
    PARTLY = "some of the heat patch is in the UVI range"
    APART = "hardly any of the heat patch is in the UVI range"


class Shade(Enum):
    """Whether there is shade to go to, by its chance."""

    THERE = "sure"
    PROBABLY = "likelier than seven in ten"
    CANNOT_TELL = "nobody can tell"
    PROBABLY_NONE = "none is likelier than seven in ten"
    NONE = "sure that there is none"


@dataclass(frozen=True, slots=True)
class Place:
    """A point an animal's back can reach [m], with its UVI [1]."""

    x_m: float
    y_m: float
    z_m: float
    uvi: Estimate


@dataclass(frozen=True, slots=True)
class Patches:
    """What the animal can reach; shares [1] are best values, nine in ten between their ends.

    ``in_range``: of the platform, what lies in the UVI range; ``chance_in_range``: how likely any
    place on it does. ``judged``: how the strongest place stands against the range.
    ``shade_share``: of floor and platform, what is under UVI 0.5; ``shade_chance``: how likely
    that is shade to go to. ``heat_in_range``: of the heat patch, what lies in the range.
    ``too_near``: the strongest place lies nearer to a tube than the safe minimum.
    """

    in_range: Estimate
    chance_in_range: float
    strongest: Place
    weakest: Place
    judged: Judged
    shade_share: Estimate
    shade_chance: float
    too_near: bool
    heat_in_range: Estimate | None

    @property
    def shade(self) -> Shade:
        """Whether there is shade to go to."""
        chance = self.shade_chance
        if chance >= LIKELY:
            return Shade.THERE if chance >= SURE else Shade.PROBABLY
        if chance <= 1.0 - LIKELY:
            return Shade.NONE if chance <= 1.0 - SURE else Shade.PROBABLY_NONE
        return Shade.CANNOT_TELL

    @property
    def overlap(self) -> Overlap | None:
        """How heat and ultraviolet lie; None without a heat lamp."""
        if self.heat_in_range is None:
            return None
        if self.heat_in_range.best >= _TOGETHER:
            return Overlap.TOGETHER
        return Overlap.PARTLY if self.heat_in_range.best > _APART else Overlap.APART


def patches(
    tubes: Sequence[HungTube],
    box: Box,
    platform: Platform,
    back_m: float,
    low_uvi: float,
    high_uvi: float,
    heat: HeatPatch | None = None,
    cells: int = CELLS,
) -> Patches:
    """Judge the places an animal can reach against its UVI range.

    share = cells in range / all cells, in the best case and in 64 equally likely ones

    Parameters
    ----------
    tubes : one to four
    box : the enclosure [m]
    platform : the basking place [m], inside the box
    back_m : height of the animal's back over what it stands on [m], 0 to 0.5
    low_uvi : low end of the range [1], 0 or more
    high_uvi : high end of the range [1], to 20
    heat : the heat patch, if there is one
    cells : cells along each side of the platform [1], 4 or more

    Returns
    -------
    Patches
        Shares [1], places [m, UVI], shade and overlap.

    Notes
    -----
    A share is as fine as its cells; the floor under the platform does not count. The field is
    that of ``uvi_field``, the cases those of ``field_cases``. A range of a share is the narrowest
    that holds nine in ten cases; of cases that mostly have one share none can hold fewer.
    Source: line_source; uv_sideways_judgement; uv_shade; shade_judgement.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture, Lamp
    >>> from calc.uv.screen import NoScreen
    >>> tube = HungTube(Lamp(12.0, Fixture.POLISHED), 0.3, 0.2, 0.85, NoScreen())
    >>> found = patches(
    ...     [tube], Box(1.2, 0.6, 0.9), Platform(0.15, 0.45, 0.1, 0.4, 0.3), 0.05, 3.0, 5.0
    ... )
    >>> round(found.in_range.best, 2), found.shade.name
    (0.36, 'THERE')
    """
    check_range(low_uvi, high_uvi)
    check_within(box, platform, back_m)
    look = _Look.into(tubes, box, platform, back_m, heat, cells)
    ground, lengths = look.ground, look.lengths
    edges = look.uvi[0, ground.edges]
    strong, weak = (
        look.place(ground.edges.start + int(i), float(edges[i]))
        for i in (np.argmax(edges), np.argmin(edges))
    )
    in_range = look.shares(ground.platform, low_uvi, high_uvi)
    in_heat = None if heat is None else look.shares(ground.heat, low_uvi, high_uvi)
    shade = look.shares(ground.everywhere, 0.0, SHADE_UVI)
    return Patches(
        in_range=_estimate(in_range),
        chance_in_range=float(np.mean(in_range[1:])),
        strongest=strong,
        weakest=weak,
        judged=judge_value(Quantity.UVI, strong.uvi, low_uvi, high_uvi),
        shade_share=_estimate(shade),
        shade_chance=float(np.mean(shade[1:] >= LEAST_SHADE)),
        too_near=_nearest(lengths, ground) < SAFE_MINIMUM_M,
        heat_in_range=None if in_heat is None else _estimate(in_heat),
    )


@dataclass(frozen=True, slots=True)
class Glance:
    """What a look at few cells tells: enough to choose what is worked out in full [1]."""

    in_range: float
    chance_in_range: float
    chance_above: float
    shade_chance: float


def glance(
    tubes: Sequence[HungTube],
    box: Box,
    platform: Platform,
    back_m: float,
    low_uvi: float,
    high_uvi: float,
    cells: int,
) -> Glance:
    """Look at a box as ``patches`` does, without its places: for choosing among many.

    ``chance_above`` is how likely the strongest place is above the range.
    """
    look = _Look.into(tubes, box, platform, back_m, None, cells)
    ground = look.ground
    strongest = ground.edges.start + int(np.argmax(look.uvi[0, ground.edges]))
    above = look.logs(slice(strongest, strongest + 1)) > log(high_uvi)
    in_range = look.shares(ground.platform, low_uvi, high_uvi)
    shade = look.shares(ground.everywhere, 0.0, SHADE_UVI)[1:]
    return Glance(
        in_range=float(in_range[0]),
        chance_in_range=float(np.mean(in_range[1:])),
        chance_above=float(np.mean(above)),
        shade_chance=float(np.mean(shade >= LEAST_SHADE)),
    )


@dataclass(frozen=True, slots=True)
class _Look:
    """The UVI [1] of each length over the ground, the power of the spread there, and the cases.

    ``each``: the UVI of each length (first axis) and tube.
    """

    lengths: Lengths
    ground: Ground
    each: NDArray[np.float64]
    uvi: NDArray[np.float64]
    power: NDArray[np.float64]
    cases: FieldCases

    @classmethod
    def into(
        cls,
        tubes: Sequence[HungTube],
        box: Box,
        platform: Platform,
        back_m: float,
        heat: HeatPatch | None,
        cells: int,
    ) -> "_Look":
        ground, lengths = ground_of(box, platform, back_m, heat, cells), with_lengths(tubes)
        every = [tube for case in lengths for tube in case]
        each = each_field(every, ground.x_m, ground.y_m, ground.z_m)
        each = each.reshape(len(lengths), len(tubes), -1)
        uvi = each.sum(axis=1)
        if np.any(np.isnan(uvi)):
            low, high = NEAREST_M, FARTHEST_M
            raise OutsideModelError("distance from a tube to the back", 0.0, low, high, "m")
        most = np.argmax(each[0], axis=0)
        z_m = np.array([tube.z_m for tube in tubes])[most]
        beside = np.stack([beside_m(tube, ground.x_m, ground.y_m) for tube in tubes])
        power = cosine_power(z_m - ground.z_m, np.take_along_axis(beside, most[None], axis=0)[0])
        cases = field_cases(tubes, platform.top_m + back_m, lengths)
        return cls(lengths, ground, each, np.maximum(uvi, _TINY_UVI), power, cases)

    def place(self, at: int, uvi: float) -> Place:
        """Return a place with its UVI [1] and the doubt of that."""
        ground = self.ground
        x, y, z = (float(axis[at]) for axis in (ground.x_m, ground.y_m, ground.z_m))
        whole = place_unknowns(self.lengths[0], x, y, z, self.lengths, self.each[:, :, at])
        return Place(x, y, z, whole.around(uvi))

    def logs(self, part: slice) -> NDArray[np.float64]:
        """Return ln UVI, a row for each case."""
        return self.cases.logs(np.log(self.uvi[:, part]), self.power[part])

    def shares(self, part: slice, low_uvi: float, high_uvi: float) -> NDArray[np.float64]:
        """Return the share [1] between two UVI, at its best value and then in each case."""
        best, logs = self.uvi[0, part], self.logs(part)
        low, high = log(max(low_uvi, _TINY_UVI)), log(high_uvi)
        inside = np.mean((best >= low_uvi) & (best <= high_uvi))
        return np.concatenate(([inside], np.mean((logs >= low) & (logs <= high), axis=1)))


def _estimate(shares: NDArray[np.float64]) -> Estimate:
    """Return the best share with the narrowest range that holds nine in ten of the cases."""
    best, cases = float(shares[0]), np.sort(shares[1:])
    widths = cases[_HELD - 1 :] - cases[: DRAWS - _HELD + 1]
    narrowest = np.flatnonzero(widths <= widths.min() + _TINY_SHARE)
    first = int(narrowest[narrowest.size // 2])
    ends = (best, float(cases[first]), float(cases[first + _HELD - 1]))
    return Estimate(min(ends), best, max(ends))


def _nearest(lengths: Lengths, ground: Ground) -> float:
    """Return the shortest way [m] from a reachable back to the lit part of a tube."""
    x, y, z = (axis[ground.edges] for axis in (ground.x_m, ground.y_m, ground.z_m))
    ways = []
    for tube in (tube for case in lengths for tube in case):
        beyond = np.maximum(np.abs(x - tube.x_m) - tube.lamp.lit_length_m / 2.0, 0.0)
        squared = beyond**2 + (y - tube.y_m) ** 2 + (z - tube.z_m) ** 2
        ways.append(float(np.sqrt(squared.min())))
    return min(ways)
