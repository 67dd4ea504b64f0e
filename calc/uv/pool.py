"""What many keepers' readings say of lamps: each group of them leans on the whole, that on us.

A value is the logarithm of a UV index that was read over the one that this program expects there.
Values of one keeper hang together (one meter, one habit), so a keeper counts once in each group.
"""

from collections.abc import Hashable, Mapping, Sequence
from dataclasses import dataclass
from math import log
from statistics import median
from typing import TypeVar

from calc.unknowns import NINE_IN_TEN, Whole
from calc.uv.lamp import Lamp
from calc.uv.lamp_unknowns import Cause, class_spread
from calc.uv.meter import METER_DOUBT, REPEATABILITY
from calc.uv.robust import huber_middle, spread_of

__all__ = [
    "ENOUGH_KEEPERS",
    "LEAST_SHOWN",
    "Lean",
    "Leant",
    "Prior",
    "Value",
    "Values",
    "lean",
    "partly_pooled",
    "prior_of_age",
    "prior_of_class",
    "spread_between",
]

_Key = TypeVar("_Key", bound=Hashable)

ENOUGH_KEEPERS = 8
"""From so many keepers on a group's figure takes the place of ours. Source: uv_pool_judgement.

Then what was read outweighs what was thought before by three to one (a variance of 0.016 of the
class before against 0.045/8 of the mean), three wrong keepers of eight move a robust middle by
less than the meter's own doubt, and the spread is known within about a third.
"""

LEAST_SHOWN = 3
"""Of fewer keepers no figure is shown: it would tell what one of them read."""

_KNOWN_AS_BY = 8.0
_METER = (log(METER_DOUBT.factor) / NINE_IN_TEN) ** 2 + REPEATABILITY**2
_OF_LAMP = (Cause.LAMP, Cause.FIXTURE, Cause.TEMPERATURE)
_OF_CLASS = (Cause.CLASS, Cause.RULES)


@dataclass(frozen=True, slots=True)
class Value:
    """ln(read/expected) [1] of one reading: by which keeper, under which lamp."""

    keeper: Hashable
    lamp: Hashable
    log: float


@dataclass(frozen=True, slots=True)
class Values:
    """Readings of one kind; ``of`` is one value a keeper, the median of the keeper's lamps."""

    of: tuple[float, ...]
    lamps: int
    readings: int

    @classmethod
    def by_keeper(cls, values: Sequence[Value]) -> "Values":
        """Return one value a keeper: the median over the keeper's lamps of each one's median."""
        of_lamp: dict[tuple[Hashable, Hashable], list[float]] = {}
        for value in values:
            of_lamp.setdefault((value.keeper, value.lamp), []).append(value.log)
        of_keeper: dict[Hashable, list[float]] = {}
        for (keeper, _), logs in of_lamp.items():
            of_keeper.setdefault(keeper, []).append(median(logs))
        return cls(tuple(map(median, of_keeper.values())), len(of_lamp), len(values))

    @property
    def keepers(self) -> int:
        """Return how many keepers there are."""
        return len(self.of)


@dataclass(frozen=True, slots=True)
class Prior:
    """What is thought before any reading: mean and variance [1] of the logarithm."""

    mean: float
    variance: float


@dataclass(frozen=True, slots=True)
class Lean:
    """A group's values, and how such groups lie about the whole: mean and variance [1]."""

    values: Values
    beside: Prior


@dataclass(frozen=True, slots=True)
class Leant:
    """What is known of a group: mean and variance of that mean [1], by its values and the whole.

    ``own`` is the share [1] of its own values in it.
    """

    mean: float
    variance: float
    own: float


def prior_of_class(lamp: Lamp) -> tuple[Prior, float]:
    """Return what the engine thinks of a class before any reading, and how far its lamps differ.

    mean and variance of ln C of the class, age apart; variance of ln of one lamp as it is read

    Parameters
    ----------
    lamp : strength and fixture count

    Returns
    -------
    tuple of Prior and float
        What all tubes of the class share [1], and the variance of one of them beside that [1].

    Notes
    -----
    Shared are the scatter of the distance rows and the length behind them; to one lamp belong its
    making, fixture and warmth, and the hand meter.
    Source: uv_distance_rows; uv_rules_length; uv_lamp_judgement; uv_meter_judgement.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> prior, of_lamp = prior_of_class(Lamp(12.0, Fixture.POLISHED))
    >>> round(prior.mean, 2), round(prior.variance, 3), round(of_lamp, 3)
    (-0.18, 0.017, 0.03)
    """
    whole = class_spread(lamp)
    of_class, of_lamp = _moments(whole, _OF_CLASS), _moments(whole, _OF_LAMP)
    return Prior(of_class.mean + of_lamp.mean, of_class.variance), of_lamp.variance + _METER


def prior_of_age(lamp: Lamp) -> Prior:
    """Return what the age of a tube does to its UV by what is known of ageing, as ln [1]."""
    return _moments(class_spread(lamp), (Cause.AGE,))


def _moments(whole: Whole, causes: Sequence[Cause]) -> Prior:
    found = [e.unknown.spread.moments for e in whole.effects if e.unknown.name in causes]
    return Prior(sum(mean for mean, _, _ in found), sum(variance for _, variance, _ in found))


def spread_between(groups: Sequence[Sequence[float]], before: float) -> float:
    """Return the variance between values of one group, few of them leaning on what was thought.

    s² = (ν₀ s₀² + ν s_r²)/(ν₀ + ν), s_r = 1.4826 median abs(x - middle of its group), ν₀ = 8

    Parameters
    ----------
    groups : the values [1] of each group
    before : variance s₀² that was thought before [1]

    Returns
    -------
    float
        Variance [1].

    Notes
    -----
    As a scaled inverse chi-squared posterior with a robust spread in place of the usual one; a
    group of one tells nothing.
    Source: student_posterior; amc1989_robust; uv_pool_judgement.

    Examples
    --------
    >>> spread_between([[0.1]], 0.04)
    0.04
    >>> round(spread_between([[-0.1, 0.0, 0.1] * 8], 0.04), 3)
    0.027
    """
    left = [v - median(of) for of in groups if len(of) > 1 for v in of]
    free = len(left) - sum(len(of) > 1 for of in groups)
    if free <= 0:
        return before
    # The middle of each group lies in its own values, which takes as much off as in the usual one.
    read = spread_of(left) ** 2 * len(left) / free
    return (_KNOWN_AS_BY * before + free * read) / (_KNOWN_AS_BY + free)


def lean(mean: float, variance: float, on: Prior) -> Leant:
    """Weigh a mean of readings together with what it leans on.

    1/V = 1/v + 1/v₀, m = V (x/v + m₀/v₀)

    Parameters
    ----------
    mean : of the readings [1]
    variance : of that mean [1], above 0
    on : what was thought before; a variance of 0 leaves nothing to the readings

    Returns
    -------
    Leant
        Posterior of a normal mean with known variances.

    Notes
    -----
    Source: gelman2013.

    Examples
    --------
    >>> found = lean(0.2, 0.01, Prior(0.0, 0.03))
    >>> round(found.mean, 3), round(found.variance, 4), round(found.own, 2)
    (0.15, 0.0075, 0.75)
    """
    own = on.variance / (on.variance + variance)
    return Leant(on.mean + own * (mean - on.mean), own * variance, own)


def partly_pooled(
    groups: Mapping[_Key, Lean], before: Prior, spread: float
) -> tuple[Leant, dict[_Key, Leant]]:
    """Pool groups partly: the whole leans on what was thought, each group on the whole.

    x_g robust middle of n_g values, v_g = s²/n_g; whole: weights 1/(v_g + τ_g²) beside the prior;
    group: w = τ²/(τ² + v), m = w x + (1 - w) M, V = w v + (1 - w)² V_M

    Parameters
    ----------
    groups : each with its values and how far such a group lies from the whole
    before : what is thought of the whole
    spread : variance s² between the values of one group [1], above 0

    Returns
    -------
    tuple of Leant and dict
        The whole, and each group by its key.

    Notes
    -----
    The two-level normal model with known variances.
    Source: gelman2013; huber1964.

    Examples
    --------
    >>> few = Lean(Values((0.3,), 1, 1), Prior(0.0, 0.01))
    >>> many = Lean(Values((0.0,) * 20, 20, 20), Prior(0.0, 0.01))
    >>> whole, each = partly_pooled({"few": few, "many": many}, Prior(0.0, 0.02), 0.04)
    >>> round(each["few"].mean, 2), round(each["many"].mean, 2)
    (0.09, 0.01)
    """
    precision, sum_of = 1.0 / before.variance, before.mean / before.variance
    read = {}
    for key, group in groups.items():
        values = group.values.of
        middle = huber_middle(values, spread**0.5)
        read[key] = middle, spread / len(values)
        weight = 1.0 / (read[key][1] + group.beside.variance)
        precision += weight
        sum_of += weight * (middle - group.beside.mean)
    whole = Leant(sum_of / precision, 1.0 / precision, 1.0 - 1.0 / (before.variance * precision))
    each = {}
    for key, group in groups.items():
        on = Prior(whole.mean + group.beside.mean, group.beside.variance)
        alone = lean(*read[key], on)
        variance = alone.variance + (1.0 - alone.own) ** 2 * whole.variance
        each[key] = Leant(alone.mean, variance, alone.own)
    return whole, each
