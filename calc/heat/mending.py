"""What each change would make of the cool end, reckoned from the keeper's own reading.

The reading and the room tell how much heat the box holds; every change is then tried in the box.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

from calc.animal import Animal
from calc.heat.box import (
    MODEL_DOUBT,
    MOST_RISE_K,
    Spot,
    likely_cool_end,
    second_heater,
    watts_to_hold,
)
from calc.heat.enclosure import Enclosure, Lid
from calc.heat.readings import Finding
from calc.heat.steps import Step
from calc.heat.wattages import next_smaller, next_step_up, steps_sold
from calc.judgement import Judged, judge_value
from calc.limits import Met, limits_of, passed
from calc.quantities import Quantity
from calc.uncertainty import Estimate
from calc.validity import OutsideModelError

__all__ = ["HeatChange", "Surroundings", "heat_changes"]

_LEAST_RISE_K = 0.5
_COOLEST_ROOM_C, _WARMEST_ROOM_C = 16.0, 30.0
# A box loses by walls as its rise, by air as its rise to 1.5: unknown, it lies between.
_LOSS_POWER = 1.25
_LIDS = (Lid.SOLID, Lid.PART_MESH, Lid.FULL_MESH)


@dataclass(frozen=True, slots=True)
class Surroundings:
    """The room by day [degC], and as far as told the box and the watts of its lamp [W]."""

    room_c: float
    enclosure: Enclosure | None = None
    watts: float | None = None


@dataclass(frozen=True, slots=True)
class HeatChange:
    """One change, and the cool end that it would leave [degC].

    ``amount``: a room [degC], a lamp [W], a share of the power [1] where no watts were told, the
    share of the lid that is mesh [1].
    """

    step: Step
    cool_c: Estimate
    judged: Judged
    amount: float | None = None

    @property
    def mends(self) -> bool:
        """Whether the cool end is right by this alone."""
        return self.judged.is_fine


@dataclass(frozen=True, slots=True)
class _Now:
    """The cool end as it was read, and the box with the heat that would hold it there."""

    cool_c: float
    low_c: float
    high_c: float
    is_high: bool
    around: Surroundings
    held: tuple[Enclosure, float] | None = None

    @property
    def rise_k(self) -> float:
        return self.cool_c - self.around.room_c

    def power_for(self, cool_c: float) -> float:
        """Return the power that holds another cool end, as a factor on the present one."""
        room = self.around.room_c
        if self.held is None:
            return float(((cool_c - room) / self.rise_k) ** _LOSS_POWER)
        box, heat_w = self.held
        return watts_to_hold(box, cool_c, room, Spot.WARM_END).total_w.best / heat_w

    def by_power(self, factor: float) -> float:
        """Return the cool end [degC] at another power."""
        room = self.around.room_c
        if self.held is None:
            return room + self.rise_k * float(factor ** (1.0 / _LOSS_POWER))
        box, heat_w = self.held
        return likely_cool_end(box, factor * heat_w, room, Spot.WARM_END)


_Tried = tuple[Step, float, float | None]


def heat_changes(cool: Finding, animal: Animal, around: Surroundings) -> tuple[HeatChange, ...]:
    """Return what each change would make of a cool end that is too warm or too cool.

    the heat by watts_to_hold(reading, room); the cool end after a change as by ends_held; its range
    from 1/1.35 to 1.35 of the change

    Parameters
    ----------
    cool : the reading at the cool end and its verdict
    animal : whose limits no change may pass
    around : the room, and as far as told the box and its lamp

    Returns
    -------
    tuple of HeatChange
        The simplest first; empty where nothing is off, or the readings say nothing of the box.

    Notes
    -----
    Without the box only changes of power and of the room are reckoned, with heat that goes as
    the rise to the power 1.25. A change that may pass a limit is left out.
    Source: enclosure_model; doorway_exchange; lamp_steps; common_practice for the dimming.

    Examples
    --------
    >>> from calc.animals import animals
    >>> from calc.heat.readings import finding_for
    >>> dragon = animals()["bearded-dragon"]
    >>> warm = finding_for(Quantity.COOL_AIR, 31.0, dragon)
    >>> [change.step.name for change in heat_changes(warm, dragon, Surroundings(29.0))]
    ['COOLER_ROOM']
    """
    judged = cool.judged
    if judged is None or not (cool.is_low or cool.is_high):
        return ()
    low, high = judged.low, judged.high
    now = _Now(cool.reading_c, low, high, cool.is_high, around)
    too_hot = now.is_high and around.room_c >= high
    # No lamp and no lid makes a box cooler than its room.
    if too_hot or not _LEAST_RISE_K <= now.rise_k <= MOST_RISE_K:
        return tuple(_kept(now, _room(now), animal))
    try:
        box = around.enclosure
        if box is not None:
            need = watts_to_hold(box, now.cool_c, around.room_c, Spot.WARM_END)
            now = replace(now, held=(box, need.total_w.best))
        tries = _COOLER if now.is_high else _WARMER
        return tuple(_kept(now, (one for way in tries for one in way(now)), animal))
    except OutsideModelError:
        return ()


def _kept(now: _Now, tried: Iterator[_Tried], animal: Animal) -> Iterator[HeatChange]:
    """Return the changes with their range and verdict, none that may pass a limit."""
    limits = limits_of(animal)
    for step, cool_c, amount in tried:
        change = cool_c - now.cool_c
        far = now.cool_c + change * MODEL_DOUBT.factor
        low, high = sorted((now.cool_c + change / MODEL_DOUBT.factor, far))
        found = Estimate(low, cool_c, high)
        if not passed(limits, Met(coolest_air_c=far)):
            judged = judge_value(Quantity.COOL_AIR, found, now.low_c, now.high_c)
            yield HeatChange(step, found, judged, amount)


def _room(now: _Now) -> Iterator[_Tried]:
    """Another room moves the whole box with it, about degree by degree."""
    rise = max(now.rise_k, 0.0)
    room = (now.high_c if now.is_high else now.low_c) - rise
    step = Step.COOLER_ROOM if now.is_high else Step.WARMER_ROOM
    if _COOLEST_ROOM_C <= room <= _WARMEST_ROOM_C:
        yield step, room + rise, room


def _less_power(now: _Now) -> Iterator[_Tried]:
    """The lamp sold that is weak enough; the share of the power where no watts were told."""
    enough, watts = now.power_for(now.high_c), now.around.watts
    if watts is None:
        yield Step.LESS_POWER, now.high_c, enough
        return
    smaller = max((step for step in steps_sold() if step <= enough * watts), default=None)
    lamp = next_smaller(watts) if smaller is None else smaller
    if lamp is not None:
        yield Step.LESS_POWER, now.by_power(lamp / watts), lamp


def _more_power(now: _Now) -> Iterator[_Tried]:
    watts = now.around.watts
    lamp = None if watts is None else next_step_up(watts * now.power_for(now.low_c))
    if watts is not None and lamp is not None:
        yield Step.MORE_POWER, now.by_power(lamp / watts), lamp


def _lids(now: _Now, step: Step, lids: tuple[Lid, ...]) -> Iterator[_Tried]:
    """Of the other lids the first that is enough, or the last."""
    if now.held is None:
        return
    box, heat_w = now.held
    tried: _Tried | None = None
    for lid in lids[lids.index(box.lid) + 1 :]:
        other = replace(box, lid=lid)
        cool = likely_cool_end(other, heat_w, now.around.room_c, Spot.WARM_END)
        tried = (step, cool, lid.value)
        if now.low_c <= cool <= now.high_c:
            break
    if tried is not None:
        yield tried


def _more_air(now: _Now) -> Iterator[_Tried]:
    yield from _lids(now, Step.MORE_AIR, _LIDS)


def _less_air(now: _Now) -> Iterator[_Tried]:
    yield from _lids(now, Step.LESS_AIR, _LIDS[::-1])


def _inward(now: _Now) -> Iterator[_Tried]:
    if now.held is not None:
        held = likely_cool_end(*now.held, now.around.room_c, Spot.INWARD)
        yield Step.MOVE_LAMP_INWARD, held, None


def _second(now: _Now) -> Iterator[_Tried]:
    """The lamp sold that lifts the cool end to its range; if none weaker does, the next weaker."""
    if now.held is None:
        return
    (box, heat), room = now.held, now.around.room_c
    more = second_heater(box, now.low_c, room, heat, Spot.WARM_END)
    first = now.around.watts or heat
    lamp = next_step_up(more)
    if lamp is None or lamp >= first:
        lamp = next_smaller(first)
    if lamp is not None:
        held = likely_cool_end(box, heat, room, Spot.WARM_END, lamp)
        yield Step.SECOND_WEAKER_LAMP, held, lamp


_COOLER: tuple[Callable[[_Now], Iterator[_Tried]], ...] = (_less_power, _more_air, _room)
_WARMER: tuple[Callable[[_Now], Iterator[_Tried]], ...] = (
    _inward,
    _second,
    _less_air,
    _more_power,
    _room,
)
