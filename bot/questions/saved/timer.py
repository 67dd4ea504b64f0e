"""One timer plan for all enclosures: when the lamps of each go on and off.

Words: ``words/<language>/timer.ftl``.
"""

from dataclasses import dataclass
from datetime import time

from bot.command import Command
from bot.desk import Desk
from bot.facts import Hours, Name, Say, Says, hours
from bot.layered import Brief, Layered, Table
from bot.preferences import Context
from bot.queries.mine import TimerQuery
from bot.questions.saved.enclosures import no_such
from bot.questions.saved.standing import animal_of
from bot.questions.saved.unable import unable
from bot.questions.shared import animal_name
from bot.saved.keeper import Enclosure
from calc.timer import flat_times

__all__ = ["MINE_TIMER", "TimerLine", "TimerPlan", "tell_timer", "timer"]

_USUAL_H = 12.0
_DAY_MIN = 24 * 60
# Lamps that go on at another hour burn at night.
_MORNING = range(4, 13)


@dataclass(frozen=True, slots=True)
class TimerLine:
    """When the lamps of an enclosure are on; ``lit`` is None where its animal has no figure."""

    name: str
    animal: Name | None
    uv: bool
    warm: bool
    on: time
    off: time
    lit: Hours
    known: bool


@dataclass(frozen=True, slots=True)
class TimerPlan:
    """The lines of all enclosures; one timer does for all where their hours are the same."""

    lines: tuple[TimerLine, ...]

    @property
    def count(self) -> int:
        """Return how many enclosures there are."""
        return len(self.lines)

    @property
    def same(self) -> bool:
        """Say whether all have the same hours."""
        return len({(line.on, line.off) for line in self.lines}) == 1

    @property
    def unknown(self) -> int:
        """Return for how many no hours of their animal are known."""
        return sum(not line.known for line in self.lines)

    @property
    def on(self) -> time:
        """Return when the first goes on."""
        return min(line.on for line in self.lines)

    @property
    def off(self) -> time:
        """Return when the last goes off."""
        return max(line.off for line in self.lines)

    @property
    def lit(self) -> Hours:
        """Return how long the first is on."""
        return self.lines[0].lit


async def timer(query: TimerQuery, context: Context, desk: Desk) -> TimerPlan:
    """Plan the hours of all enclosures around one noon, alike where their animals allow it."""
    kept = await desk.store.enclosures.all(desk.keeper)
    if not kept:
        raise no_such("", (), "mine timer")
    wanted = [_wanted(box, context) for box in kept]
    told = [ends for ends in wanted if ends is not None]
    low = max((low for low, _ in told), default=_USUAL_H)
    high = min((high for _, high in told), default=_USUAL_H)
    shared = _nearest(low, high) if low <= high else None
    on = query.on or flat_times().on
    if on.hour not in _MORNING:
        raise unable("mine timer", Say("timer-night"), example="mine timer on:8:00", option="on")
    first = shared or max((_nearest(*ends) for ends in told), default=_USUAL_H)
    middle = 60 * on.hour + on.minute + 30.0 * first
    return TimerPlan(
        tuple(
            _line(box, ends, shared, middle, context)
            for box, ends in zip(kept, wanted, strict=True)
        )
    )


def _wanted(box: Enclosure, context: Context) -> tuple[float, float] | None:
    animal = animal_of(box.setup.animal, context)
    target = None if animal is None else animal.light_hours
    return None if target is None else (target.low, target.high)


def _nearest(low: float, high: float) -> float:
    return min(max(_USUAL_H, low), high)


def _line(
    box: Enclosure,
    wanted: tuple[float, float] | None,
    shared: float | None,
    middle: float,
    context: Context,
) -> TimerLine:
    animal = animal_of(box.setup.animal, context)
    long_h = _USUAL_H if wanted is None else _nearest(*wanted)
    long_h = shared or long_h
    return TimerLine(
        name=box.name,
        animal=None if animal is None else animal_name(animal),
        uv=box.setup.lamp is not None or box.setup.tube_percent is not None,
        warm=animal is not None and bool(animal.basking),
        on=_clock(middle - 30.0 * long_h),
        off=_clock(middle + 30.0 * long_h),
        lit=hours(long_h),
        known=wanted is not None,
    )


def _clock(minutes: float) -> time:
    whole = round(minutes / 5.0) * 5 % _DAY_MIN
    return time(whole // 60, whole % 60)


def tell_timer(facts: TimerPlan) -> Layered:
    """Tell whether one timer does for all, then the times of each."""
    say = Says("timer", facts)
    return Layered(
        command="mine timer",
        title=say("title"),
        brief=Brief(
            head=say("same" if facts.same else "differ"),
            range=(say("times"), *([say("unknown")] if facts.unknown else [])),
            steps=(say("do"),),
        ),
        steps=(say("step-lamps"), say("step-season")),
        table=Table(
            (say("column-box"), say("column-on"), say("column-off"), say("column-lamps")),
            tuple(map(_cells, facts.lines)),
        ),
        why=(say("why"),),
        guide=("day-length", "thermostats-and-timers"),
    )


def _cells(line: TimerLine) -> tuple[Say, ...]:
    say = Says("timer", line)
    return say("box"), say("on"), say("off"), say("lamps")


MINE_TIMER = Command(
    name="mine timer",
    query=TimerQuery,
    stored=timer,
    tell=tell_timer,
    examples=("mine timer", "mine timer on:8:00"),
    guide=("day-length",),
)
