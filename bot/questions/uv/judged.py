"""How a UV index is judged, and what it asks to be moved: the same in every question."""

from collections.abc import Sequence

from calc.judgement import Judged, Move, as_read
from calc.limits import Limits
from calc.quantities import Quantity
from calc.uncertainty import Estimate
from calc.uv.danger import judge_uvi

__all__ = ["judged_uvi_read", "mildest", "wants_move"]


def wants_move(judged: Judged) -> bool:
    """Whether the tube is moved: nearer only where it is surely low, farther where likely high."""
    return judged.is_surely_below or judged.is_likely_above


def mildest(several: Sequence[Judged]) -> Judged | None:
    """Return the verdict that holds whichever case it is; None where the cases disagree."""
    found = sorted(several, key=lambda judged: abs(judged.verdict))
    if len({judged.verdict for judged in found}) == 1:
        return found[0]
    moves = {judged.move for judged in found}
    return None if len(moves) > 1 or Move.STAY in moves else found[0]


def judged_uvi_read(
    readings: tuple[float, ...], low: float, high: float, limits: Limits | None, *, unchecked: bool
) -> Judged:
    """Judge what a UV meter showed, from the lowest to the highest, with its own doubt."""
    lowest, highest = (as_read(Quantity.UVI, end) for end in (min(readings), max(readings)))
    middle = (lowest.best + highest.best) / 2.0
    return judge_uvi(
        Estimate(lowest.low, middle, highest.high), low, high, limits, unchecked=unchecked
    )
