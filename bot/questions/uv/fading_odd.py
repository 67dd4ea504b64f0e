"""What no tube does among dated readings, as facts."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from enum import Enum, auto

from bot.facts import Uvi, uvi
from calc.uv.dated import DatedReading, Finding, Odd

__all__ = ["OddKind", "OddTold", "odd_told"]

_POINT = 10.0


class OddKind(Enum):
    """What is odd among readings."""

    APART = auto()
    TEN_TIMES = auto()
    A_TENTH = auto()
    SAME_DAY = auto()
    STRAY = auto()
    RISE = auto()
    FADE = auto()


@dataclass(frozen=True, slots=True)
class OddTold:
    """One finding: the reading it names and the last one, and what was perhaps ``meant``."""

    kind: OddKind
    one: Uvi
    other: Uvi
    meant: Uvi
    day: date
    days: int
    left_out: bool


_KINDS = {
    Odd.SAME_DAY: OddKind.SAME_DAY,
    Odd.STRAY: OddKind.STRAY,
    Odd.RISE: OddKind.RISE,
    Odd.FADE: OddKind.FADE,
}


def odd_told(finding: Finding, ordered: Sequence[DatedReading]) -> OddTold:
    """Return one finding as facts; ``ordered`` are all readings by their days."""
    first, last = ordered[finding.at[0]], ordered[finding.at[-1]]
    many = finding.factor > 1.0
    meant = first.uvi / _POINT if many else first.uvi * _POINT
    return OddTold(
        kind=_KINDS.get(finding.odd) or _tenfold(finding),
        one=uvi(first.uvi),
        other=uvi(last.uvi),
        meant=uvi(meant),
        day=date.fromordinal(round(first.day)),
        days=round(last.day - first.day),
        left_out=finding.set_aside,
    )


def _tenfold(finding: Finding) -> OddKind:
    if len(finding.at) > 1:
        return OddKind.APART
    return OddKind.TEN_TIMES if finding.factor > 1.0 else OddKind.A_TENTH
