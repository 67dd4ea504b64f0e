"""What no tube does among dated readings, in words that come before any figure."""

from collections.abc import Sequence
from datetime import date

from bot.answers.figures import calendar_day, number
from calc.uv.dated import DatedReading, Finding, Odd
from calc.uv.decline import Decline

__all__ = ["day_told", "odd_first", "odd_told"]

_AGAIN = "Read it again today, at the same place, before you change anything."
_POINT = 10.0


def day_told(day: float) -> str:
    """Return a day, counted as dates are, in words."""
    return calendar_day(date.fromordinal(round(day)))


def odd_first(found: Decline, ordered: Sequence[DatedReading], answer: str) -> str:
    """Return an answer behind what must be known first; alone where nothing follows from it."""
    if not found.found:
        return answer
    told = " ".join(odd_told(finding, ordered) for finding in found.found[:2])
    return f"{told} {_AGAIN}" if found.is_unsound else f"{told} {answer}"


def odd_told(finding: Finding, ordered: Sequence[DatedReading]) -> str:
    """Return one finding in words; ``ordered`` are all readings by their days."""
    first, last = ordered[finding.at[0]], ordered[finding.at[-1]]
    one, other = (f"UVI {number(r.uvi, 0.01)}" for r in (first, last))
    days = round(last.day - first.day)
    if finding.odd is Odd.TENFOLD:
        if len(finding.at) > 1:
            return f"{one} and {other} are about ten times apart: did one lose its point?"
        meant = first.uvi / _POINT if finding.factor > 1.0 else first.uvi * _POINT
        way = "ten times" if finding.factor > 1.0 else "a tenth of"
        return (
            f"{one} on {day_told(first.day)} is about {way} the others: was it "
            f"{number(meant, 0.01)}?{_aside(finding)}"
        )
    if finding.odd is Odd.SAME_DAY:
        return f"You read both {one} and {other} on {day_told(first.day)}: one of them is off."
    if finding.odd is Odd.STRAY:
        return f"{one} on {day_told(first.day)} does not fit the others.{_aside(finding)}"
    if finding.odd is Odd.RISE:
        return (
            f"The readings rise, from {one} to {other} in {days} days, which a tube past its first "
            "100 hours does not do: the place, the meter or the tube was not the same each time."
        )
    return (
        f"From {one} to {other} in {days} days is faster than a tube fades: is the sensor or the "
        "tube dirty, or was the place or the meter another? Read the same once more, it is failing."
    )


def _aside(finding: Finding) -> str:
    return " I left it out." if finding.set_aside else ""
