"""Readings of a group's keepers under T5 HO tubes: what they say of classes, and of fading."""

from collections import defaultdict
from collections.abc import Callable, Hashable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from math import exp, log, pi, sqrt
from statistics import median
from typing import TypeVar

from calc.uncertainty import Estimate
from calc.unknowns import NINE_IN_TEN
from calc.uv.lamp import AgeBand, Fixture, Lamp, age_band, uvi_at
from calc.uv.lamp_unknowns import screen_effects
from calc.uv.pool import (
    Lean,
    Leant,
    Prior,
    Value,
    Values,
    partly_pooled,
    prior_of_age,
    prior_of_class,
    spread_between,
)
from calc.uv.robust import far_from, middle_slope, spread_of
from calc.uv.screen import FlatScreen, NoScreen, Screen

__all__ = [
    "ENOUGH_FADED",
    "Faded",
    "PoolRead",
    "Pooled",
    "by_age",
    "by_class",
    "by_fixture",
    "by_screen",
    "faded",
    "far_reads",
    "ratio_of",
]

ENOUGH_FADED = 5
"""From so many keepers on a group's fading is told beside an age. Source: uv_pool_judgement."""

_LEAST_DAYS = 14.0
_SAME_START_DAYS = 45.0
_MONTH_DAYS = 30.0
_DAY_S = 86_400.0
_PLACED_M, _PASSED = 0.01, 0.05
# How far strengths, fixtures and screens lie apart, beside what all tubes share: ln f / 1.645.
_BESIDE = (log(1.15) / NINE_IN_TEN) ** 2


@dataclass(frozen=True, slots=True)
class PoolRead:
    """A UVI [1] that a keeper read on a day [d] at a distance [m] under a T5 HO tube.

    ``box`` tells the keeper's enclosures apart, None where it was not told.
    """

    keeper: Hashable
    box: Hashable
    day: float
    lamp: Lamp
    screen: Screen
    distance_m: float
    uvi: float

    @property
    def is_bare(self) -> bool:
        """Whether nothing was between."""
        return isinstance(self.screen, NoScreen)

    @property
    def tube(self) -> tuple[Hashable, ...]:
        """What tells one tube of a keeper from another, its age apart."""
        lamp = self.lamp
        return self.box, lamp.strength_percent, lamp.fixture, round(lamp.lit_length_m, 2)

    @property
    def value(self) -> Value:
        """ln(read/expected) [1], as of a tube of its age."""
        return Value(self.keeper, self.tube, ratio_of(self) - prior_of_age(self.lamp).mean)


@dataclass(frozen=True, slots=True)
class Pooled:
    """A kind of reading: its values, their own middle and spread [1], and what is known with all.

    ``leant`` is ln(read/expected) [1], ``spread`` one deviation of the values about their median.
    """

    values: Values
    leant: Leant
    lamp_variance: float

    @property
    def middle(self) -> float:
        """The median over the keepers [1], as a factor."""
        return exp(median(self.values.of))

    @property
    def spread(self) -> float:
        """One deviation of the values by their own median alone [1]."""
        return spread_of(self.values.of)

    @property
    def estimate(self) -> Estimate:
        """What such tubes give over what is expected [1], of their mean nine in ten."""
        half = NINE_IN_TEN * sqrt(self.leant.variance)
        return Estimate(*(exp(self.leant.mean + k * half) for k in (-1.0, 0.0, 1.0)))

    @property
    def of_one(self) -> Estimate:
        """What one such tube gives over what is expected [1], nine in ten."""
        half = NINE_IN_TEN * sqrt(self.leant.variance + self.lamp_variance)
        return Estimate(*(exp(self.leant.mean + k * half) for k in (-1.0, 0.0, 1.0)))


@dataclass(frozen=True, slots=True)
class Faded:
    """By what factor [1] the UV of tubes changes in 30 days, nine in ten.

    ``month`` is of one tube, ``middle`` of what is in the middle of all.
    """

    month: Estimate
    middle: Estimate
    tubes: int
    keepers: int


def ratio_of(read: PoolRead) -> float:
    """Return ln of a UVI read over that of its class at its best [1]."""
    plain = replace(read.lamp, own=None, may_be=())
    return log(read.uvi / float(uvi_at(plain, read.distance_m, read.screen)))


_Key = TypeVar("_Key", bound=Hashable)


def by_class(reads: Sequence[PoolRead]) -> dict[tuple[float, Fixture], Pooled]:
    """Return what bare readings say of each class, by its strength [%] and fixture."""
    bare = [read for read in reads if read.is_bare]
    return _pooled(bare, lambda r: (r.lamp.strength_percent, r.lamp.fixture))


def by_fixture(reads: Sequence[PoolRead]) -> dict[Fixture, Pooled]:
    """Return what bare readings say of each fixture."""
    return _pooled([read for read in reads if read.is_bare], lambda r: r.lamp.fixture)


def by_screen(reads: Sequence[PoolRead]) -> dict[Screen, Pooled]:
    """Return what readings through each kind of screen say, flat ones by steps of 5 % passed."""
    return _pooled(reads, lambda r: screen_kind(r.screen))


def screen_kind(screen: Screen) -> Screen:
    """Return a screen, a flat one with its share [1] rounded, so that like ones are one."""
    if isinstance(screen, FlatScreen):
        return FlatScreen(max(_PASSED, _PASSED * round(screen.transmission / _PASSED)))
    return screen


def by_age(reads: Sequence[PoolRead]) -> dict[AgeBand, Pooled]:
    """Return what bare readings say of each age that was told, over a tube at its best."""
    told = [r for r in reads if r.is_bare and age_band(r.lamp.age_s) is not AgeBand.UNKNOWN]
    found = _pooled(told, lambda r: age_band(r.lamp.age_s), aged=True)
    return {band: found[band] for band in AgeBand if band in found}


def _pooled(
    reads: Sequence[PoolRead], key: Callable[[PoolRead], _Key], *, aged: bool = False
) -> dict[_Key, Pooled]:
    """Pool readings by a key, each group leaning on all and all on the engine's class."""
    if not reads:
        return {}
    groups: dict[_Key, list[PoolRead]] = defaultdict(list)
    for read in reads:
        groups[key(read)].append(read)
    ages = [prior_of_age(read.lamp) for read in reads]
    age_variance = sum(age.variance for age in ages) / len(ages)
    before, of_lamp = prior_of_class(reads[0].lamp)
    values = {k: Values.by_keeper([_value(r, aged=aged) for r in of]) for k, of in groups.items()}
    spread = spread_between([v.of for v in values.values()], of_lamp + age_variance)
    leans = {k: Lean(values[k], _beside(groups[k], aged=aged)) for k in groups}
    _, each = partly_pooled(leans, before, spread)
    lamp_variance = max(spread - age_variance, of_lamp / 2.0)
    return {k: Pooled(values[k], each[k], lamp_variance) for k in groups}


def _value(read: PoolRead, *, aged: bool) -> Value:
    value = read.value
    return replace(value, log=ratio_of(read)) if aged else value


def _beside(of: Sequence[PoolRead], *, aged: bool) -> Prior:
    return prior_of_age(of[0].lamp) if aged else Prior(0.0, _BESIDE)


def faded(reads: Sequence[PoolRead]) -> Faded | None:
    """Find how tubes fade by readings that one keeper repeated under one tube at one place.

    of a tube the median slope of ln UVI over all pairs of days, of a keeper the median of the
    tubes, of the group the median of the keepers; nine in ten within 1.645 s √(π/2n) of that, of
    one tube within 1.645 s √(1 + π/2n)

    Parameters
    ----------
    reads : readings of T5 HO tubes

    Returns
    -------
    Faded or None
        Factor [1] in 30 days; None where nobody repeated a reading two weeks later or more.

    Notes
    -----
    Distance and screen are the same within 1 cm and 5 %; the first 100 hours do not count, and a
    tube whose age tells of another start is another tube. With fewer than three keepers the spread
    is not known, and both ends are the middle.
    Source: sen1968; amc1989_robust.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture, Lamp
    >>> tube = Lamp(12.0, Fixture.POLISHED)
    >>> found = [PoolRead(1, None, d, tube, NoScreen(), 0.4, u) for d, u in ((0, 4.0), (60, 3.6))]
    >>> round(faded(found).month.best, 3)
    0.949
    """
    slopes: dict[Hashable, list[float]] = defaultdict(list)
    tubes = 0
    for keeper, of in _repeated(reads):
        slope = middle_slope([r.day for r in of], [log(r.uvi) for r in of])
        if slope is not None:
            slopes[keeper].append(slope)
            tubes += 1
    each = [median(of) * _MONTH_DAYS for of in slopes.values()]
    if not each:
        return None
    middle, of_middle = median(each), pi / (2.0 * len(each))
    reach = NINE_IN_TEN * spread_of(each) if len(each) > 2 else 0.0
    month, known = (
        Estimate(*(exp(middle + k * reach * sqrt(share)) for k in (-1.0, 0.0, 1.0)))
        for share in (1.0 + of_middle, of_middle)
    )
    return Faded(month, known, tubes, len(each))


def _repeated(reads: Sequence[PoolRead]) -> Iterator[tuple[Hashable, list[PoolRead]]]:
    """Yield readings of one tube at one place over two weeks or more, with their keeper."""
    places: dict[Hashable, list[PoolRead]] = defaultdict(list)
    for read in sorted(reads, key=lambda r: r.day):
        if age_band(read.lamp.age_s) is not AgeBand.BURNING_IN:
            at = round(read.distance_m / _PLACED_M)
            places[read.keeper, read.tube, screen_kind(read.screen), at].append(read)
    for of in places.values():
        series: list[list[PoolRead]] = []
        for read in of:
            mine = next((s for s in series if _is_one_tube(s[-1], read)), None)
            if mine is None:
                series.append([read])
            else:
                mine.append(read)
        for found in series:
            if found[-1].day - found[0].day >= _LEAST_DAYS:
                yield found[0].keeper, found


def _is_one_tube(one: PoolRead, other: PoolRead) -> bool:
    if one.lamp.age_s is None or other.lamp.age_s is None:
        return one.lamp.age_s is other.lamp.age_s
    starts = [read.day - (read.lamp.age_s or 0.0) / _DAY_S for read in (one, other)]
    return abs(starts[0] - starts[1]) <= _SAME_START_DAYS


def far_reads(reads: Mapping[int, PoolRead]) -> frozenset[int]:
    """Return the numbers of readings over three deviations from what is expected of their kind.

    Of a kind with readings of others it is what those say; of one alone what is thought before.
    """
    found = set()
    pooled = _pooled(list(reads.values()), _kind)
    for number, read in reads.items():
        kind = pooled[_kind(read)]
        age, screens = prior_of_age(read.lamp), screen_effects(read.screen)
        more = sum(effect.unknown.spread.moments[1] for effect in screens)
        variance = kind.lamp_variance + kind.leant.variance + age.variance + more
        if far_from(read.value.log, kind.leant.mean, variance):
            found.add(number)
    return frozenset(found)


def _kind(read: PoolRead) -> Hashable:
    return read.lamp.strength_percent, read.lamp.fixture, read.is_bare
