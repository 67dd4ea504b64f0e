"""The verdicts in words, the same in every answer, and what a UV index asks to be moved."""

from collections.abc import Sequence

from bot.answers.check_parts import Mark
from bot.answers.figures import length, length_away
from bot.answers.placed import start_told
from bot.language.quantities import Units
from calc.judgement import Judged, Move, Verdict, as_read
from calc.limits import Limits
from calc.quantities import Quantity
from calc.setup.set_up import Sign, sign_of
from calc.uncertainty import Estimate
from calc.uv.danger import judge_uvi
from calc.uv.placement import COMFORTABLE_MINIMUM_M, PlaceCheck

__all__ = [
    "judged_uvi_read",
    "mark_of",
    "mildest",
    "move_step",
    "until_measured",
    "verdict_word",
    "wants_move",
]

_WORDS = {
    Verdict.FAR_TOO_LOW: "far too low",
    Verdict.LOW: "low",
    Verdict.PROBABLY_LOW: "probably low",
    Verdict.FINE: "fine",
    Verdict.CANNOT_TELL: "cannot tell",
    Verdict.PROBABLY_HIGH: "probably high",
    Verdict.HIGH: "high",
    Verdict.DANGEROUS: "dangerous",
}


_MARKS = {Sign.FINE: Mark.FINE, Sign.CHANGE: Mark.CHANGE, Sign.CANNOT_TELL: Mark.CANNOT_TELL}


def verdict_word(judged: Judged) -> str:
    """Return a verdict as every answer says it."""
    return _WORDS[judged.verdict]


def mark_of(judged: Judged | None) -> Mark:
    """Return what a part of a set-up is marked with: a change only where something is sure."""
    return _MARKS[sign_of(judged.verdict if judged else None)]


def wants_move(judged: Judged) -> bool:
    """Whether the tube is moved: nearer only where it is surely low, farther where likely high."""
    return judged.verdict.wants_change or judged.is_likely_above


def mildest(several: Sequence[Judged]) -> Judged | None:
    """Return the verdict that holds whichever case it is; None where the cases disagree."""
    found = sorted(several, key=lambda judged: abs(judged.verdict))
    if len({judged.verdict for judged in found}) == 1:
        return found[0]
    moves = {judged.move for judged in found}
    return None if len(moves) > 1 or Move.STAY in moves else found[0]


def judged_uvi_read(
    readings: tuple[float, ...], low: float, high: float, limits: Limits | None
) -> Judged:
    """Judge what a UV meter showed, from the lowest to the highest, with its own doubt."""
    lowest, highest = (as_read(Quantity.UVI, end) for end in (min(readings), max(readings)))
    middle = (lowest.best + highest.best) / 2.0
    return judge_uvi(Estimate(lowest.low, middle, highest.high), low, high, limits)


def until_measured(check: PlaceCheck, units: Units) -> str:
    """Return what to do with a tube whose length decides where it hangs."""
    told, mild_m = "Measure how long the tube is, from end to end", check.placement.mild_m
    assert mild_m is not None
    too_strong = check.may_be_above or check.judged.is_likely_above
    if too_strong and check.here.distance_m < mild_m:
        return (
            f"{told}. Until then hang it {length_away(mild_m, units)} from the animal's back, "
            "where even the longest gives no more than is wanted."
        )
    return f"{told}: no one distance is right for every length."


def move_step(check: PlaceCheck, units: Units) -> str:
    """Return whether the tube is moved: farther in doubt, nearer only where it is surely low."""
    if check.placement.mild_m is not None:
        return until_measured(check, units)
    start, judged = start_told(check.placement, units), check.judged
    move = check.move_to_start_m or 0.0
    if check.may_be_above and move > 0.0:
        return (
            f"Until you know how long the tube is, hang it {length(move, units)} farther from the "
            f"animal's back, at {start}."
        )
    too_near = check.here.distance_m < COMFORTABLE_MINIMUM_M
    if judged.is_fine and not too_near:
        return f"Leave it. The middle of the range would be at {start}."
    if not (too_near or wants_move(judged)):
        return f"Leave it until a UV index meter has told: {start} would be the middle."
    way = "farther from" if move > 0 else "nearer to"
    return (
        f"Move the tube {length(abs(move), units)} {way} the animal's back, to {start}; "
        "raising or lowering the platform does the same."
    )
