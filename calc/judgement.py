"""One judgement for every question: a figure with its doubt, a wanted range, and a verdict.

No words here, and no animal: whoever judges a UV index, a surface or an air asks this. What is
past a limit of life is worse than any verdict on a range; the caller says so by ``past_limit``.
"""

from dataclasses import dataclass
from enum import Enum, IntEnum, auto
from math import erf, exp, inf, log, sqrt

from calc.quantities import Quantity, QuantityRow, row_of
from calc.uncertainty import Estimate
from calc.validity import check

__all__ = [
    "CANNOT_TELL_BELOW",
    "LIKELY",
    "SURE",
    "Judged",
    "Move",
    "Verdict",
    "as_read",
    "judge_reading",
    "judge_value",
    "with_doubt",
]

SURE = 0.95
"""A figure is low (or high) without more ado where that is at least as likely as this [1]."""

LIKELY = 0.70
"""From here on [1] it is probably so; below, nobody can tell. Source: judgement_thresholds."""

CANNOT_TELL_BELOW = 0.25
"""A best value inside the range says nothing where it holds with less than this chance [1]."""

_EVEN = 0.5
_NINE_IN_TEN = 1.645
# No distribution is narrower: the exact value of a definition is judged like a careful one.
_NARROWEST = 1e-9


class Verdict(IntEnum):
    """How a figure stands against what is wanted, from far too low to dangerous."""

    FAR_TOO_LOW = -3
    LOW = -2
    PROBABLY_LOW = -1
    FINE = 0
    CANNOT_TELL = 1
    PROBABLY_HIGH = 2
    HIGH = 3
    DANGEROUS = 4

    @property
    def wants_change(self) -> bool:
        """Whether something is to be changed on this verdict alone."""
        return self in (Verdict.FAR_TOO_LOW, Verdict.LOW, Verdict.HIGH, Verdict.DANGEROUS)


_AT_MOST_PROBABLY = {
    Verdict.FAR_TOO_LOW: Verdict.PROBABLY_LOW,
    Verdict.LOW: Verdict.PROBABLY_LOW,
    Verdict.HIGH: Verdict.PROBABLY_HIGH,
}


class Move(Enum):
    """Which way the figure has to go."""

    UP = auto()
    STAY = auto()
    DOWN = auto()


@dataclass(frozen=True, slots=True)
class Judged:
    """A verdict with what it rests on.

    ``below``, ``inside`` and ``above`` are chances [1] that sum to 1; ``off_by`` is how far the
    best value lies outside the range: in the quantity's unit, or as a factor of at least 1 where
    doubt is a factor (1 inside).
    """

    quantity: Quantity
    value: Estimate
    low: float
    high: float
    verdict: Verdict
    below: float
    inside: float
    above: float
    off_by: float

    @property
    def is_fine(self) -> bool:
        """Whether it is what is wanted."""
        return self.verdict is Verdict.FINE

    @property
    def is_sure(self) -> bool:
        """Whether it is in one of the three places, below, inside or above, almost surely."""
        return max(self.below, self.inside, self.above) >= SURE

    @property
    def is_surely_below(self) -> bool:
        """Whether it is below the range almost surely, whoever the range is from."""
        return self.below >= SURE

    @property
    def is_surely_off(self) -> bool:
        """Whether it is below or above the range almost surely, whoever the range is from."""
        return max(self.below, self.above) >= SURE

    @property
    def is_likely_above(self) -> bool:
        """Whether it is likelier above the range than not: what can harm does not wait."""
        too_much = self.verdict is Verdict.DANGEROUS and self.move is Move.DOWN
        return too_much or self.above > _EVEN

    @property
    def move(self) -> Move:
        """Which way the figure has to go; it stays where nothing has to change."""
        if self.verdict is Verdict.DANGEROUS and self.value.best < self.low:
            return Move.UP
        if self.verdict in (Verdict.FAR_TOO_LOW, Verdict.LOW, Verdict.PROBABLY_LOW):
            return Move.UP
        if self.verdict in (Verdict.PROBABLY_HIGH, Verdict.HIGH, Verdict.DANGEROUS):
            return Move.DOWN
        return Move.STAY


def as_read(quantity: Quantity, reading: float) -> Estimate:
    """Return a reading with the doubt of its usual instrument.

    low, high = reading ∓ doubt, or reading e^∓doubt where doubt is a factor

    Parameters
    ----------
    quantity : what was read
    reading : in the quantity's unit [degC, K, h or 1], inside its bounds

    Returns
    -------
    Estimate
        The reading with its range, nine in ten, in the same unit.

    Notes
    -----
    A fault common to all readings of an instrument is in it; a slip of the hand is not.
    Source: uv_meter_judgement; thermometer_judgement; timer_judgement.

    Examples
    --------
    >>> as_read(Quantity.COOL_AIR, 24.0)
    Estimate(low=22.5, best=24.0, high=25.5)
    """
    row = row_of(quantity)
    check(quantity.value, reading, row.lowest, row.highest, "")
    return with_doubt(quantity, reading)


def with_doubt(quantity: Quantity, reading: float) -> Estimate:
    """Return a reading with the doubt of its usual instrument, however far beyond its bounds."""
    row = row_of(quantity)
    if row.dimension.is_ratio:
        factor = exp(row.doubt)
        return Estimate(reading / factor, reading, reading * factor)
    return Estimate(reading - row.doubt, reading, reading + row.doubt)


def judge_reading(quantity: Quantity, reading: float, low: float, high: float) -> Judged:
    """Judge what an instrument shows against a wanted range: ``judge_value`` with its doubt."""
    return judge_value(quantity, with_doubt(quantity, reading), low, high)


def judge_value(
    quantity: Quantity,
    value: Estimate,
    low: float,
    high: float,
    *,
    past_limit: bool = False,
    unchecked: bool = False,
) -> Judged:
    """Judge a figure with its doubt against a wanted range.

    P(x < low - s), P(x > high + s) with x two half normals that meet at the best value, their
    median (of its logarithm where doubt is a factor); half widths are 1.645 deviations, s is what
    display and rounding cannot tell apart

    Parameters
    ----------
    quantity : what it is
    value : the figure with its nine-in-ten range, in the quantity's unit
    low, high : the wanted range [the quantity's unit], low at most high; an open end is infinite
    past_limit : whether it is past a limit of life: then it is dangerous, whatever the range
    unchecked : whether the range is from memory alone: then it is at most probably low or high

    Returns
    -------
    Judged
        Verdict and chances [1].

    Notes
    -----
    An end that was rounded for a sentence is fine when it comes back. A best value inside is
    fine unless the doubt is so wide that the range holds it less than one time in four. 'Low'
    alone needs 19 in 20, 'probably' 7 in 10.
    Source: judgement_thresholds.

    Examples
    --------
    >>> cool = as_read(Quantity.COOL_AIR, 23.9)
    >>> judge_value(Quantity.COOL_AIR, cool, 25.0, 27.8).verdict
    <Verdict.PROBABLY_LOW: -1>
    >>> judge_value(Quantity.UVI, Estimate(2.0, 3.0, 4.2), 3.0, 5.0).verdict
    <Verdict.FINE: 0>
    """
    if low > high:
        raise ValueError(f"not in order: {low}, {high}")
    row = row_of(quantity)
    ratio = row.dimension.is_ratio
    lowest, highest = _ends(low, high, row)
    below = _chance_below(value, lowest, ratio=ratio)
    above = 1.0 - _chance_below(value, highest, ratio=ratio)
    inside = max(0.0, 1.0 - below - above)
    off_by = _off_by(value.best, low, high, ratio=ratio)
    far = (log(off_by) if ratio else off_by) >= row.far
    verdict = _verdict(value.best, (lowest, highest), (below, inside, above), far=far)
    if unchecked:
        verdict = _AT_MOST_PROBABLY.get(verdict, verdict)
    if past_limit:
        verdict = Verdict.DANGEROUS
    return Judged(quantity, value, low, high, verdict, below, inside, above, off_by)


def _verdict(
    best: float, ends: tuple[float, float], chances: tuple[float, float, float], *, far: bool
) -> Verdict:
    below, inside, above = chances
    if best < ends[0]:
        if below >= SURE:
            return Verdict.FAR_TOO_LOW if far else Verdict.LOW
        return Verdict.PROBABLY_LOW if below >= LIKELY else Verdict.CANNOT_TELL
    if best > ends[1]:
        if above >= SURE:
            return Verdict.HIGH
        return Verdict.PROBABLY_HIGH if above >= LIKELY else Verdict.CANNOT_TELL
    return Verdict.FINE if inside >= CANNOT_TELL_BELOW else Verdict.CANNOT_TELL


def _ends(low: float, high: float, row: QuantityRow) -> tuple[float, float]:
    """Return the range as it is judged: what display and rounding cannot tell apart is inside."""
    half = row.step / 2.0
    if row.dimension.is_ratio:
        factor = exp(row.slack)
        return min(low - half, low / factor), max(high + half, high * factor)
    half = max(half, row.slack)
    return low - half, high + half


def _off_by(best: float, low: float, high: float, *, ratio: bool) -> float:
    if low <= best <= high:
        return 1.0 if ratio else 0.0
    if not ratio:
        return max(low - best, best - high)
    return max(low / best if best > 0.0 else inf, best / high if high > 0.0 else inf)


def _chance_below(value: Estimate, end: float, *, ratio: bool) -> float:
    """Return the chance [1] that the value lies below an end."""
    best, lower, upper = value.best, value.low, value.high
    if ratio:
        if end <= 0.0 or best <= 0.0:
            return 0.0 if end <= best else 1.0
        best, end = log(best), log(end)
        lower = log(lower) if lower > 0.0 else best
        upper = log(upper)
    side = best - lower if end < best else upper - best
    deviation = max(side / _NINE_IN_TEN, _NARROWEST)
    return 0.5 * (1.0 + erf((end - best) / deviation / sqrt(2.0)))
