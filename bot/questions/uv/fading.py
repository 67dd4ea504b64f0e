"""How a tube fades by dated readings, as facts. Words: ``words/<language>/decline.ftl``."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from enum import Enum, auto
from math import inf

from bot.facts import Figure, Hours, Number, Say, Share, Uvi, hours, plain_number, share, uvi
from bot.preferences import Context
from bot.questions.uv.danger import uv_alarms
from bot.questions.uv.dated_asked import wanted_above_nothing
from bot.questions.uv.fading_odd import OddTold, odd_told
from bot.questions.uv.group_fading import GroupPace, group_pace
from bot.questions.uv.shared import Wish, WishedFor, wish_told
from bot.reply import Alarm
from calc.judgement import Move, Verdict
from calc.uv.danger import judge_uvi
from calc.uv.dated import DatedReading
from calc.uv.decline import READ_AGAIN_DAYS, Decline, Trend, decline_of

__all__ = ["Change", "DatedRead", "Fading", "Leaves", "Stands", "Window", "fading"]

_READ = ("student_posterior", "uv_meter_judgement", "uv_read_again", "adamse_britz1992", "burn_in")
_DAY_H = 24.0


class Stands(Enum):
    """What readings show first; ``UNSOUND``: something that no tube does, so nothing is said."""

    UNSOUND = auto()
    ABOVE = auto()
    BELOW = auto()
    FADING = auto()
    STEADY = auto()
    FEW = auto()


class Leaves(Enum):
    """When a fading tube leaves the range, seen from today."""

    ALREADY = auto()
    MAYBE = auto()
    UNKNOWN_TODAY = auto()
    ON = auto()
    STAYS = auto()


class Window(Enum):
    """Between which days that may be."""

    DAYS = auto()
    NOW_TO = auto()
    NOW = auto()
    EARLIEST = auto()


class Change(Enum):
    """Whether the last reading tells of a change since the first."""

    ONE_DAY = auto()
    REAL = auto()
    NOISE = auto()


@dataclass(frozen=True, slots=True)
class DatedRead:
    """One reading of the list."""

    day: date
    read: Uvi


@dataclass(frozen=True, slots=True)
class Fading(WishedFor):
    """A tube at one place by its dated readings; ``trend`` is what they show beside the range.

    ``again`` is the day of the next reading, None where that is today; ``old_days`` how long ago
    the last one was, where that is too long. ``seen`` and ``found`` are the engine's own.
    """

    wish: Wish
    stands: Stands
    trend: Stands
    leaves: Leaves | None
    window: Window | None
    now: Uvi
    today: Uvi | None
    read_today: bool
    first_day: date
    last_day: date
    low: Uvi
    falls: date | None
    earliest: date | None
    latest: date | None
    horizon: date
    month: Share | None
    month_factor: Number | None
    change: Change
    changed: Share
    less: bool
    days: int
    old_days: int | None
    again: date | None
    odd: tuple[OddTold, ...]
    below_already: bool
    rising: bool
    changed_to: Number
    again_in: Hours
    falls_in: Hours | None
    alarms: tuple[Alarm, ...]
    seen: tuple[DatedReading, ...]
    found: Decline
    judgement: Verdict
    pace: GroupPace | None = None

    @property
    def judged(self) -> Say:
        """Return how the last reading stands, in a word or two."""
        return Say.by("verdict", self.judgement)

    @property
    def says_age(self) -> bool:
        """Say whether it matters that the last reading is old."""
        return self.old_days is not None and self.leaves in (None, Leaves.UNKNOWN_TODAY)

    @property
    def sources(self) -> tuple[str, ...]:
        """Return where the figures come from."""
        return (*self.wish.sources, *_READ, *(("group_readings",) if self.pace else ()))

    @property
    def values(self) -> tuple[tuple[str, Figure | None], ...]:
        """Return the figures by their names in JSON."""
        return (
            ("uvi", self.now),
            ("changed", self.changed_to),
            ("read_again_in", self.again_in),
            ("uvi_today", self.today),
            ("month_factor", self.month_factor),
            ("falls_below_in", self.falls_in),
        )


def fading(
    seen: Sequence[DatedReading],
    animal: str,
    asked: tuple[float, float] | None,
    context: Context,
) -> Fading:
    """Work out the trend of readings at one place, the oldest first."""
    wanted = wanted_above_nothing(animal, asked, context)
    found = decline_of(seen, wanted.low, float(context.day.toordinal()))
    judged = judge_uvi(found.now, wanted.low, wanted.high, unchecked=wanted.unchecked)
    trend = Stands.BELOW if judged.move is Move.UP else _trend(found)
    stands = Stands.ABOVE if judged.is_likely_above else trend
    month, again, last = found.month_factor, found.read_again_day, found.last_day
    old = round(found.today_day - last)
    return Fading(
        wish=wish_told(wanted, context),
        stands=Stands.UNSOUND if found.is_unsound else stands,
        trend=trend,
        leaves=_leaves(found) if trend is Stands.FADING else None,
        window=_window(found) if found.falls_below_day is not None else None,
        now=uvi(found.now),
        today=None if found.today is None else uvi(found.today),
        read_today=last == found.today_day,
        first_day=_day(found.first_day),
        last_day=_day(last),
        low=uvi(wanted.low),
        falls=_day_or_none(found.falls_below_day),
        earliest=_day_or_none(found.earliest_day),
        latest=_day_or_none(found.latest_day),
        horizon=_day(found.horizon_day),
        month=share(1.0 - month.best) if month and trend is Stands.FADING else None,
        month_factor=None if month is None else plain_number(month),
        change=_change(found),
        changed=share(abs(found.changed - 1.0)),
        less=found.changed <= 1.0,
        days=round(last - found.first_day),
        old_days=old if old > READ_AGAIN_DAYS[1] else None,
        again=None if again <= found.today_day else _day(again),
        odd=tuple(odd_told(finding, seen) for finding in found.found),
        below_already=found.below_already,
        rising=found.trend is Trend.RISING,
        changed_to=plain_number(found.changed),
        again_in=_hours_from(found, (again, again, again)),
        falls_in=_falls_in(found),
        alarms=uv_alarms(found.now, animal, wanted.high, context),
        seen=tuple(seen),
        found=found,
        judgement=judged.verdict,
        pace=_pace(found, wanted.low, context),
    )


def _pace(found: Decline, low_uvi: float, context: Context) -> GroupPace | None:
    """Return what the group's tubes lose, where the asker's own readings do not tell it yet."""
    if found.trend is not Trend.TOO_FEW or found.is_unsound:
        return None
    return group_pace(context.own, (_day(found.last_day), found.now.best), low_uvi)


def _day(day: float) -> date:
    return date.fromordinal(round(day))


def _day_or_none(day: float | None) -> date | None:
    return None if day is None else _day(day)


def _trend(found: Decline) -> Stands:
    if found.trend is Trend.FALLING and found.month_factor:
        return Stands.FADING
    return Stands.STEADY if found.trend is Trend.STEADY else Stands.FEW


def _leaves(found: Decline) -> Leaves:
    falls = found.falls_below_day
    if falls is not None and falls <= found.today_day:
        return Leaves.ALREADY if found.below_already else Leaves.MAYBE
    if found.today is None:
        return Leaves.UNKNOWN_TODAY
    return Leaves.STAYS if falls is None else Leaves.ON


def _window(found: Decline) -> Window:
    now = found.earliest_day is None or found.earliest_day <= found.today_day
    if found.latest_day:
        return Window.NOW_TO if now else Window.DAYS
    return Window.NOW if now else Window.EARLIEST


def _change(found: Decline) -> Change:
    if found.last_day == found.first_day:
        return Change.ONE_DAY
    return Change.REAL if found.change_is_real else Change.NOISE


def _falls_in(found: Decline) -> Hours | None:
    falls = found.falls_below_day
    if falls is None:
        return None
    first = found.earliest_day if found.earliest_day is not None else found.last_day
    # A late end that nobody can tell is open.
    last = found.latest_day if found.latest_day is not None else inf
    return _hours_from(found, (min(first, falls), falls, max(last, falls)))


def _hours_from(found: Decline, days: tuple[float, float, float]) -> Hours:
    """Return days as hours from today, below 0 where they are past."""
    low, best, high = (_DAY_H * (day - found.today_day) for day in days)
    return hours(best, (low, high))
