"""The verdicts in words, the same in every answer, and what a UV index asks to be moved."""

from bot.answers.figures import length, length_away
from bot.answers.placed import start_told
from bot.language.quantities import Units
from bot.questions.uv.judged import wants_move
from calc.judgement import Judged, Verdict
from calc.uv.placement import COMFORTABLE_MINIMUM_M, PlaceCheck

__all__ = [
    "move_step",
    "until_measured",
    "verdict_word",
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


def verdict_word(judged: Judged) -> str:
    """Return a verdict as every answer says it."""
    return _WORDS[judged.verdict]


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
