"""A value with its low and high, and how independent doubts combine.

Doubts of this trade are factors (a lamp gives a third more or a quarter less), so they are
log-normal. A range holds nine cases in ten everywhere (``unknowns`` says how): ``factor`` 1.3 is
one from best/1.3 to best*1.3. What hangs together, or lies to one side, belongs in ``unknowns``.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from math import exp, log, sqrt

__all__ = ["Doubt", "Estimate", "combined_factor", "spread"]


@dataclass(frozen=True, slots=True)
class Estimate:
    """A best value between a low and a high one, all in the same unit."""

    low: float
    best: float
    high: float

    def __post_init__(self) -> None:
        if not self.low <= self.best <= self.high:
            raise ValueError(f"not in order: {self.low} <= {self.best} <= {self.high}")

    @classmethod
    def exact(cls, value: float) -> "Estimate":
        """Return an estimate without doubt, for definitions and conversions only."""
        return cls(value, value, value)


@dataclass(frozen=True, slots=True)
class Doubt:
    """One named reason why a figure may be off by a factor.

    ``source`` is a key of the bibliography.
    """

    name: str
    factor: float
    source: str

    def __post_init__(self) -> None:
        if not self.factor >= 1.0:
            raise ValueError(f"a doubt is a factor of 1 or more, not {self.factor}")


def combined_factor(doubts: Iterable[Doubt]) -> float:
    """Combine independent log-normal doubts into one factor.

    exp(sqrt(sum(ln(f)^2)))

    Parameters
    ----------
    doubts : iterable of Doubt, each factor [1] at least 1

    Returns
    -------
    float
        Combined factor [1], at least 1.

    Notes
    -----
    Fails where doubts hang together (one cause behind two of them): then it is too small.
    Source: jcgm100, clause 5.1, applied to logarithms.

    Examples
    --------
    >>> combined_factor([])
    1.0
    >>> round(combined_factor([Doubt("lamp", 1.3, "memory"), Doubt("tape", 1.1, "memory")]), 3)
    1.322
    """
    return exp(sqrt(sum(log(doubt.factor) ** 2 for doubt in doubts)))


def spread(best: float, doubts: Iterable[Doubt]) -> Estimate:
    """Widen a best value of 0 or more by the combined factor of its doubts."""
    factor = combined_factor(doubts)
    return Estimate(best / factor, best, best * factor)
