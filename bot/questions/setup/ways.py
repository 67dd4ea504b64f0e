"""The ways to hang the lamps of a plan, compared: how much of heat and place gets UV, and shade.

Words: ``words/<language>/arrange.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.facts import Length, Say, Share, Uvi, metres, share, uvi
from bot.questions.setup.read import joined
from calc.setup.apart import Apart, AtLid, Kept, apart, at_lid
from calc.setup.arrangement import Arranged, Arrangement
from calc.setup.plan import Plan
from calc.uv.patches import Shade

__all__ = [
    "WAYS_SOURCES",
    "ArrangedWay",
    "LampApart",
    "WayApart",
    "WayMeets",
    "Ways",
    "way_meets",
    "ways_told",
]

WAYS_SOURCES = ("arrangement_judgement", "line_source", "nearest_distance")
"""What the comparison rests on."""


@dataclass(frozen=True, slots=True)
class LampApart:
    """How far the heat lamp is from tube, back and lid."""

    to_tube: Length
    to_back: Length
    to_lid: Length
    at: AtLid


@dataclass(frozen=True, slots=True)
class WayApart:
    """What touches what; ``at`` says where the tube is by the lid."""

    kept: Kept
    to_back: Length
    to_lid: Length
    at: AtLid
    heat_lamp: LampApart | None

    @property
    def beside(self) -> Say | None:
        """Return the distances of the heat lamp, where there is one."""
        lamp = self.heat_lamp
        return None if lamp is None else Say("arrange-lamp-apart", lamp)


@dataclass(frozen=True, slots=True)
class WayMeets:
    """What else one way makes meet, for a table of all.

    ``sun`` is the share of the platform where UV, heat and light meet; ``cool`` leads from the
    middle of the warm spot to the cool end wall.
    """

    safe: bool
    sun: Share | None
    strongest: Uvi
    weakest: Uvi
    cool: Length | None
    touches: WayApart


@dataclass(frozen=True, slots=True)
class ArrangedWay:
    """One way to hang the lamps; ``heat`` is the share of the warm patch in the UV range."""

    way: Arrangement
    place: Share
    heat: Share | None
    shade: Shade
    safe: bool
    best: bool

    @property
    def has_shade(self) -> bool:
        """Say whether there is likely shade to go to."""
        return self.shade in (Shade.THERE, Shade.PROBABLY)

    @property
    def name(self) -> Say:
        """Return its name in the middle of a sentence."""
        return Say.by("arrange-short", self.way)


@dataclass(frozen=True, slots=True)
class Ways:
    """Every way, and the one that is picked."""

    all: tuple[ArrangedWay, ...]
    picked: ArrangedWay

    @property
    def row(self) -> ArrangedWay | None:
        """Return the lamps in a row, where the box has room for that."""
        return self._of(Arrangement.IN_A_ROW)

    def _of(self, way: Arrangement) -> ArrangedWay | None:
        return next((one for one in self.all if one.way is way), None)

    @property
    def compared(self) -> Say:
        """Return all of them in one line."""
        return joined(tuple(Say("arrange-compared", one) for one in self.all))

    @property
    def meets(self) -> Iterator[Say]:
        """Yield what the picked way makes meet, and what a row would."""
        way, row = self.picked, self.row
        yield Say("arrange-meets" if way.heat is not None else "arrange-place", way)
        if row is not None and row.heat is not None and not row.best:
            yield Say("arrange-row", row)

    @property
    def why(self) -> Iterator[Say]:
        """Yield why this one is picked."""
        yield Say.by("arrange-why", self.picked.way, self.picked)
        yield Say("arrange-why-picked")
        two = self._of(Arrangement.TWO_HEAT_LAMPS)
        if two is not None:
            yield Say("arrange-why-one_lamp", two)


def ways_told(ways: tuple[Arranged, ...], best: Arranged) -> Ways:
    """Return the ways to hang the lamps of a plan as facts."""
    told = tuple(_told(one, best=one is best) for one in ways)
    return Ways(told, next(one for one in told if one.best))


def _told(one: Arranged, *, best: bool) -> ArrangedWay:
    met = one.met
    return ArrangedWay(
        way=one.way,
        place=share(met.in_range),
        heat=None if met.heat_in_range is None else share(met.heat_in_range),
        shade=met.shade,
        safe=one.is_safe,
        best=best,
    )


def way_meets(one: Arranged, found: Plan) -> WayMeets:
    """Return what else a way makes meet; ``found`` is the plan unless it has one of its own."""
    far, met, sun = apart(one, found), one.met, one.sun
    return WayMeets(
        safe=one.is_safe,
        sun=None if sun is None else share(sun.all_three),
        strongest=uvi(met.strongest.uvi),
        weakest=uvi(met.weakest.uvi),
        cool=None if far.warm_to_cool_m is None else metres(far.warm_to_cool_m),
        touches=_apart_told(far),
    )


def _apart_told(far: Apart) -> WayApart:
    over_m = far.tube_over_lid_m
    return WayApart(
        kept=far.kept,
        to_back=metres(far.tube_to_back_m),
        to_lid=metres(abs(over_m)),
        at=at_lid(over_m),
        heat_lamp=_lamp_told(far),
    )


def _lamp_told(far: Apart) -> LampApart | None:
    tube_m, back_m, over_m = far.tube_to_lamp_m, far.lamp_to_back_m, far.lamp_over_lid_m
    if tube_m is None or back_m is None or over_m is None:
        return None
    return LampApart(metres(tube_m), metres(back_m), metres(abs(over_m)), at_lid(over_m))
