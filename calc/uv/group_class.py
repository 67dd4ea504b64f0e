"""What the readings of a group's keepers say of a class of tube, as a lamp carries it."""

from dataclasses import dataclass
from math import exp, sqrt

from calc.unknowns import NINE_IN_TEN

__all__ = ["GroupClass", "group_class"]

_LEAST, _MOST = 0.05, 20.0


@dataclass(frozen=True, slots=True)
class GroupClass:
    """The constant of a class is ``factor`` [1] of this program's, age apart.

    ``spread`` [1] is how far one lamp may be off, nine in ten; its high end is never less than this
    program's own figure. ``keepers`` read it, the last on the day ``newest``, as an ordinal.
    """

    factor: float
    spread: float
    keepers: int
    newest: int

    def __post_init__(self) -> None:
        if not (_LEAST <= self.factor <= _MOST and self.factor * self.spread >= 1.0 - 1e-9):
            raise ValueError(f"no class of a group: {self.factor}, {self.spread}")


def group_class(
    shift: float, shift_variance: float, lamp_variance: float, keepers: int, newest: int
) -> GroupClass:
    """Return what a group's readings say of a class, wide enough to hold what was thought before.

    factor e^m; spread max(exp(1.645 sqrt(V + s^2)), e^-m)

    Parameters
    ----------
    shift : m, ln of the group's constant over this program's [1], -3 to 3
    shift_variance : V, of that [1], 0 or more
    lamp_variance : s^2, of one lamp beside that [1], 0 or more
    keepers : how many read it [1]
    newest : the day of the last reading [d]

    Returns
    -------
    GroupClass
        Factor and spread [1].

    Notes
    -----
    However weak the tubes of a group are read, one in twenty is taken to be as strong as this
    program's figure, which is that of a new one: a meter that reads low hangs no tube too near.
    Source: uv_pool_judgement.

    Examples
    --------
    >>> found = group_class(-0.1, 0.003, 0.03, 9, 740_000)
    >>> round(found.factor, 2), round(found.spread, 2)
    (0.9, 1.35)
    >>> round(group_class(-0.7, 0.0, 0.03, 9, 740_000).spread, 2)
    2.01
    """
    factor = exp(shift)
    spread = exp(NINE_IN_TEN * sqrt(shift_variance + lamp_variance))
    return GroupClass(factor, max(spread, 1.0 / factor), keepers, newest)
