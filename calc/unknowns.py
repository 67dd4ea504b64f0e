"""What is not known, as distributions: how it is known, how it spreads, and how all of it combines.

A figure depends on each unknown thing by a power: twice the lamp, twice the UVI; a constant read
through a screen has that screen once in its favour and once against. What hangs together is one
`Unknown`; its powers are added before anything is squared, so what cancels cancels.

A range holds nine cases in ten, everywhere: one in twenty lies below it, one in twenty above. Of a
share, which cannot be less than nothing nor more than all, it is the narrowest that does.
"""

from collections.abc import Hashable, Iterable
from dataclasses import dataclass, field
from enum import Enum, auto
from math import erf, exp, log, sqrt

from calc.shape.line import Real
from calc.uncertainty import Estimate

__all__ = [
    "NINE_IN_TEN",
    "Between",
    "Cases",
    "Effect",
    "Factor",
    "Known",
    "Spread",
    "Unknown",
    "Whole",
    "combine",
]

NINE_IN_TEN = 1.645
"""So many deviations to either side hold nine in ten of a normal distribution."""

_MOST_SKEW = 1.0
# What rounding leaves of shares that cancel.
_NO_POWER = 1e-9

Moments = tuple[float, float, float]
"""Mean, variance and third central moment of a logarithm."""


class Known(Enum):
    """How a thing is known."""

    TOLD = auto()
    INFERRED = auto()
    UNKNOWN = auto()


@dataclass(frozen=True, slots=True)
class Factor:
    """Log-normal about 1: nine in ten between 1/factor and factor [1]."""

    factor: float
    moments: Moments = field(init=False)

    def __post_init__(self) -> None:
        if not self.factor >= 1.0:
            raise ValueError(f"a doubt is a factor of 1 or more, not {self.factor}")
        _keep(self, (0.0, (log(self.factor) / NINE_IN_TEN) ** 2, 0.0))

    @property
    def ends(self) -> tuple[float, float]:
        """Between these factors [1] nine in ten lie."""
        return 1.0 / self.factor, self.factor


@dataclass(frozen=True, slots=True)
class Between:
    """Anywhere from ``least`` to ``most`` [1], every equal step of the logarithm alike."""

    least: float
    most: float
    moments: Moments = field(init=False)

    def __post_init__(self) -> None:
        if not 0.0 < self.least <= self.most:
            raise ValueError(f"factors above 0 in order, not {self.least} and {self.most}")
        less, more = log(self.least), log(self.most)
        _keep(self, ((less + more) / 2.0, (more - less) ** 2 / 12.0, 0.0))

    @property
    def ends(self) -> tuple[float, float]:
        """Between these factors [1] all lie."""
        return self.least, self.most


@dataclass(frozen=True, slots=True)
class Cases:
    """One of several things is the case: factors [1] on the figure, each with its weight."""

    cases: tuple[tuple[float, float], ...]
    moments: Moments = field(init=False)

    def __post_init__(self) -> None:
        if not self.cases or not all(factor > 0.0 < weight for factor, weight in self.cases):
            raise ValueError(f"factors and weights above 0, not {self.cases}")
        whole = sum(weight for _, weight in self.cases)
        logs = [(log(factor), weight / whole) for factor, weight in self.cases]
        raw = [sum(weight * value**power for value, weight in logs) for power in (1, 2, 3)]
        _keep(self, _central(*raw))

    @property
    def ends(self) -> tuple[float, float]:
        """Between these factors [1] all lie."""
        factors = [factor for factor, _ in self.cases]
        return min(factors), max(factors)


Spread = Factor | Between | Cases


@dataclass(frozen=True, slots=True)
class Unknown:
    """One thing that is not known exactly: what, how it is known, its spread, a source key.

    Name and ``about`` say which thing it is: two screens have one name and lie in two places.
    """

    name: str
    known: Known
    spread: Spread
    source: str
    about: Hashable = None


@dataclass(frozen=True, slots=True)
class Effect:
    """A figure goes as the power of an unknown: 1 with it, -1 against it, 0 not at all."""

    unknown: Unknown
    power: float = 1.0

    @property
    def ends(self) -> tuple[float, float]:
        """Between these factors [1] on the figure the unknown alone moves it."""
        low, high = sorted(end**self.power for end in self.unknown.spread.ends)
        return low, high


@dataclass(frozen=True, slots=True)
class Whole:
    """All doubts of a figure together: mean, variance and third moment of its logarithm.

    The logarithm is that of the true figure over its best value.
    """

    effects: tuple[Effect, ...]
    mean: float
    variance: float
    third: float

    @property
    def sources(self) -> tuple[str, ...]:
        """The source keys of what is not known, each once."""
        return tuple(dict.fromkeys(effect.unknown.source for effect in self.effects))

    @property
    def deviation(self) -> float:
        """One standard deviation of the logarithm [1]."""
        return sqrt(self.variance)

    def at(self, chance: float) -> float:
        """Return the factor [1] on the best value that is not passed with a chance [1]."""
        return exp(self.log_at(_z_of(chance)))

    def log_at(self, deviate: Real) -> Real:
        """Return the logarithm [1] of the factor at a normal deviate [1], a float or an array."""
        bent = deviate + (deviate * deviate - 1.0) * self._bend
        return self.mean + self.deviation * bent

    def chance_below(self, factor: float) -> float:
        """Return the chance [1] that the true figure over the best one is below a factor [1]."""
        if factor <= 0.0:
            return 0.0
        off = log(factor) - self.mean
        if self.variance <= 0.0:
            return 1.0 if off > 0.0 else 0.0
        bend, w = self._bend, off / self.deviation
        if abs(bend) > 1e-9:
            root = max(0.0, 1.0 + 4.0 * bend * (bend + w))
            w = (sqrt(root) - 1.0) / (2.0 * bend)
        return 0.5 * (1.0 + erf(w / sqrt(2.0)))

    def around(self, best: float) -> Estimate:
        """Return a best value of 0 or more with its range, nine in ten."""
        low, high = (best * self.at(chance) for chance in (0.05, 0.95))
        return Estimate(min(low, best), best, max(high, best))

    @property
    def _bend(self) -> float:
        if self.variance <= 0.0:
            return 0.0
        skew = self.third / self.deviation**3
        return max(-_MOST_SKEW, min(_MOST_SKEW, skew)) / 6.0


def combine(effects: Iterable[Effect]) -> Whole:
    """Combine what is not known into the spread of one figure.

    moments of ln: mean Σ a m, variance Σ a² v, third Σ a³ t, a the sum of an unknown's powers;
    quantile exp(mean + s (z + (z² - 1) skew/6))

    Parameters
    ----------
    effects : unknowns with the powers by which the figure goes; of one thing they add up

    Returns
    -------
    Whole
        Spread of the logarithm [1].

    Notes
    -----
    Different unknowns are independent. The range is as wide as 3.29 deviations whatever the
    skew, so taking one doubt away never widens it; it is close to nine in ten while no single
    doubt with two far cases outweighs the rest.
    Source: jcgm100, clause 5.1, applied to logarithms; cornish_fisher1938.

    Examples
    --------
    >>> screen = Unknown("screen", Known.TOLD, Factor(1.15), "uv_screen_judgement")
    >>> lamp = Unknown("lamp", Known.TOLD, Factor(1.3), "uv_lamp_judgement")
    >>> round(combine([Effect(lamp), Effect(screen)]).at(0.95), 2)
    1.35
    >>> combine([Effect(screen), Effect(screen, -1.0)]).variance
    0.0
    """
    of_thing: dict[tuple[str, Hashable], Effect] = {}
    for effect in effects:
        thing = effect.unknown.name, effect.unknown.about
        before = of_thing.get(thing)
        power = before.power + effect.power if before else effect.power
        of_thing[thing] = Effect(effect.unknown, power)
    kept = tuple(effect for effect in of_thing.values() if abs(effect.power) > _NO_POWER)
    mean = variance = third = 0.0
    for effect in kept:
        m, v, t = effect.unknown.spread.moments
        mean += effect.power * m
        variance += effect.power * effect.power * v
        third += effect.power**3 * t
    return Whole(kept, mean, variance, third)


def _keep(spread: object, moments: Moments) -> None:
    """Work out the moments of a spread once, when it is made."""
    object.__setattr__(spread, "moments", moments)


def _central(first: float, second: float, third: float) -> Moments:
    variance = max(0.0, second - first * first)
    return first, variance, third - 3.0 * first * second + 2.0 * first**3


def _z_of(chance: float) -> float:
    """Return the normal deviate of a chance [1]; the two ends of a range are written down."""
    ends = {0.05: -NINE_IN_TEN, 0.95: NINE_IN_TEN}
    if chance in ends:
        return ends[chance]
    from statistics import NormalDist

    return float(NormalDist().inv_cdf(chance))
