"""When a UV lamp is replaced by its age alone: common practice, for some kinds not even that.

A lamp with dated readings is answered from those, whatever its kind.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, auto

from bot.facts import Hours, Number, Say, hours, plain_number
from bot.language.uv_lamps import UvLamp
from bot.questions.uv.group_fading import GroupPace, group_pace
from bot.saved.group import NOTHING_OWN, Own
from calc.uv.decline import READ_AGAIN_DAYS, REPLACE_AFTER_DAYS, REPLACE_OTHERS_AFTER_DAYS
from calc.uv.lamp import AgeBand, age_band

__all__ = ["Aged", "ByAge", "OtherAge", "by_age"]

_UNREAD = ("sunbed_end_of_life", "mcginley1998", "burn_in")
_DAY_S, _DAY_H, _HOUR_S = 86_400.0, 24.0, 3_600.0
_MONTH_DAYS = 30.44


class Aged(Enum):
    """How a lamp stands by its age; ``UNKNOWN``: nobody says when such a lamp is worn out."""

    UNTOLD = auto()
    NEW = auto()
    SETTLED = auto()
    AGEING = auto()
    OLD = auto()
    UNKNOWN = auto()


@dataclass(frozen=True, slots=True)
class OtherAge:
    """At how many months lamps of a kind are replaced."""

    kind: UvLamp
    soon: int
    late: int
    one: bool


@dataclass(frozen=True, slots=True)
class ByAge:
    """A lamp without readings."""

    kind: UvLamp
    aged: Aged
    soon: int
    late: int
    one: bool
    age: Hours | None
    months: Number | None
    replace_after: Hours | None
    again_months: int
    others: tuple[Say, ...]
    pace: GroupPace | None = None

    @property
    def sources(self) -> tuple[str, ...]:
        """Return where the ages come from."""
        tube = self.kind is UvLamp.T5_HO
        group = ("group_readings",) if self.pace else ()
        return ("uv_replace_ages" if tube else "uv_replace_ages_others", *_UNREAD, *group)


def by_age(kind: UvLamp, age_s: float | None, own: Own = NOTHING_OWN) -> ByAge:
    """Work out what is common practice for that kind of lamp, and what the group's tubes lose."""
    tube = kind is UvLamp.T5_HO
    ages = REPLACE_AFTER_DAYS if tube else REPLACE_OTHERS_AFTER_DAYS.get(kind.value)
    soon, late = _months(ages or (0.0, 0.0))
    ends = None if ages is None else (ages[0] * _DAY_H, ages[1] * _DAY_H)
    return ByAge(
        kind=kind,
        aged=_aged(ages, age_s),
        soon=soon,
        late=late,
        one=soon == late,
        age=None if age_s is None else hours(age_s / _HOUR_S),
        months=None if age_s is None else plain_number(_halves(age_s / _DAY_S / _MONTH_DAYS)),
        replace_after=None if ends is None else hours(ends[1], ends),
        again_months=round(READ_AGAIN_DAYS[1] / _MONTH_DAYS),
        others=tuple(_others()) if tube else (),
        pace=group_pace(own) if tube else None,
    )


def _halves(value: float) -> float:
    return round(2.0 * value) / 2.0


def _months(ages: tuple[float, float]) -> tuple[int, int]:
    return round(ages[0] / _MONTH_DAYS), round(ages[1] / _MONTH_DAYS)


def _aged(ages: tuple[float, float] | None, age_s: float | None) -> Aged:
    if ages is None:
        return Aged.UNKNOWN
    if age_s is None:
        return Aged.UNTOLD
    if age_band(age_s) is AgeBand.BURNING_IN:
        return Aged.NEW
    days = age_s / _DAY_S
    if days > ages[1]:
        return Aged.OLD
    return Aged.SETTLED if days <= ages[0] else Aged.AGEING


def _others() -> Iterator[Say]:
    for name, ages in REPLACE_OTHERS_AFTER_DAYS.items():
        soon, late = _months(ages)
        yield Say("decline-other-age", OtherAge(UvLamp(name), soon, late, soon == late))
