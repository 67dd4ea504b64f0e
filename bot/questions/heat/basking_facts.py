"""What is known of a change under a basking lamp, as facts for messages."""

from dataclasses import dataclass
from enum import Enum, auto

from bot.facts import (
    Diff,
    Length,
    Power,
    Share,
    Temp,
    degrees,
    kelvins,
    metres,
    share,
    watts,
)
from bot.preferences import Context
from bot.queries.heat import BaskingQuery
from bot.questions.heat.basking_change import Change, change_for
from bot.questions.heat.basking_refused import Missing, refused
from bot.questions.heat.warmth import SurfaceAim, WantedHeat, surface_wanted
from bot.reply import Alarm
from calc.heat.basking import MOST_DIMMING, DimmerChange, DimmerVerdict, WattageStep, surface_at
from calc.heat.dimming import rerated_by_power
from calc.heat.guards import Guard
from calc.judgement import Verdict, judge_reading, judge_value
from calc.quantities import Quantity

__all__ = ["Act", "Basking", "Dimming", "LampChoice", "basking"]

_GUN_K = 2.0
_SOURCES = ("rise_scaling", "common_practice", "holder_mark", "fire_service_lamps")
# What has to be put right, as hazards of the table; wood is among the figures that are told.
_HAZARDS = {
    Guard.ABOVE_HOLDER_MARK: "wrong_holder",
    Guard.LAMP_WITHIN_REACH: "no_guard",
}
# Between these the lamp is dimmed at all, and what that does to its light is told.
_LEAST_DIMMED, _MOST_DIMMED = 0.2, 0.99


class Act(Enum):
    """What is done about the surface."""

    LEAVE = auto()
    INSIDE = auto()
    RAISE = auto()
    LOWER = auto()
    SMALLER = auto()
    STRONGER = auto()


@dataclass(frozen=True, slots=True)
class LampChoice:
    """A lamp that is sold, from how far it is meant, and the surface to expect."""

    size: Power
    away: Length
    expected: Temp
    beyond: bool
    verdict: Verdict


@dataclass(frozen=True, slots=True)
class Dimming:
    """A dimmer's new setting, and what it does to the light where the lamp is dimmed."""

    verdict: DimmerVerdict
    setting: Share
    present: Share
    most: Share
    smaller: Power | None
    dimmed: bool
    power: Share
    light: Share
    colour: Share


@dataclass(frozen=True, slots=True)
class Basking:
    """What could be done about a basking spot; ``other`` is the lamp to fit in its place."""

    surface: Temp
    aim: SurfaceAim
    aimed: Temp
    rise: Diff
    rise_wanted: Diff
    stopped: bool
    act: Act
    cooling: bool
    turn_up: bool
    distance: Length
    move: Length | None
    may_move: bool
    at_start: Temp | None
    power: Power | None
    other: Power | None
    beyond: bool
    away: Length
    lamps: tuple[LampChoice, ...]
    fits: bool
    dimming: Dimming | None
    guards: tuple[Guard, ...]
    alarms: tuple[Alarm, ...]
    sources: tuple[str, ...]

    @property
    def moved(self) -> Length | None:
        """Return the new distance, where the lamp may be moved."""
        return self.move if self.may_move else None


def basking(query: BaskingQuery, context: Context) -> Basking:
    """Work out the new distance, the lamps and the dimmer setting, each with its range."""
    wanted = surface_wanted("basking", query.want, query.animal, context)
    if query.dimmer == 0.0:
        raise refused(Missing.DIMMER_ON, "0%")
    change = change_for(query, wanted)
    reading, move = change.reading, change.move
    other = _other(change)
    lamps = () if change.is_right else change.lamps
    return Basking(
        surface=degrees(
            reading.surface_c, (reading.surface_c - _GUN_K, reading.surface_c + _GUN_K)
        ),
        aim=wanted.told,
        aimed=wanted.told.aim,
        rise=kelvins(reading.rise_k),
        rise_wanted=kelvins(wanted.aim_c - reading.air_c),
        stopped=change.is_stopped,
        act=_act(change),
        cooling=change.is_cooling,
        turn_up=_turns_up(query, change),
        distance=metres(reading.distance_m),
        move=None if move is None else metres(move),
        may_move=change.may_move and not change.is_right,
        at_start=None if move is None else degrees(surface_at(reading, move.high).best),
        power=None if change.watts is None else watts(change.watts),
        other=None if other is None else watts(other.watts),
        beyond=_beyond(change, other),
        away=metres(change.lamp_distance_m),
        lamps=tuple(_choice(lamp, change) for lamp in lamps),
        fits=bool(change.fitting),
        dimming=None if change.dimmer is None else _dimming(change.dimmer, query.dimmer or 1.0),
        guards=change.guards,
        alarms=tuple(Alarm(key=_HAZARDS[g]) for g in change.guards if g in _HAZARDS),
        sources=_sources(change, wanted),
    )


def _sources(change: Change, wanted: WantedHeat) -> tuple[str, ...]:
    if change.is_stopped:
        return (*wanted.sources, *_SOURCES, "babrauskas2007")
    return (*wanted.sources, *_SOURCES, *(("lamp_rerating",) if change.dimmer else ()))


def _act(change: Change) -> Act:
    if change.is_right:
        return Act.LEAVE
    reading, wanted, move = change.reading, change.wanted, change.move
    if move is None or not change.may_move:
        return Act.SMALLER if change.is_cooling else Act.STRONGER
    ends = wanted.low_c, wanted.high_c
    if judge_reading(Quantity.BASKING_SURFACE, reading.surface_c, *ends).is_fine:
        return Act.INSIDE
    return Act.RAISE if move.best > reading.distance_m else Act.LOWER


def _turns_up(query: BaskingQuery, change: Change) -> bool:
    """Say whether a dimmed lamp has heat to spare before any move."""
    dimmed = query.dimmer is not None and query.dimmer < 1.0 - MOST_DIMMING
    return dimmed and not (change.is_right or change.is_cooling)


def _other(change: Change) -> WattageStep | None:
    aim_c = change.wanted.aim_c
    return min(change.lamps, key=lambda lamp: abs(lamp.surface_c.best - aim_c), default=None)


def _beyond(change: Change, lamp: WattageStep | None) -> bool:
    return lamp is not None and change.holder_w is not None and lamp.watts > change.holder_w


def _choice(lamp: WattageStep, change: Change) -> LampChoice:
    low, high = change.wanted.low_c, change.wanted.high_c
    return LampChoice(
        size=watts(lamp.watts),
        away=metres(change.lamp_distance_m),
        expected=degrees(lamp.surface_c),
        beyond=_beyond(change, lamp),
        verdict=judge_value(Quantity.BASKING_SURFACE, lamp.surface_c, low, high).verdict,
    )


def _dimming(dimmer: DimmerChange, present: float) -> Dimming:
    best = dimmer.setting.best
    dimmed = _LEAST_DIMMED <= best <= _MOST_DIMMED
    lamp = rerated_by_power(best if dimmed else 1.0)
    return Dimming(
        verdict=dimmer.verdict,
        setting=share(dimmer.setting),
        present=share(present),
        most=share(MOST_DIMMING),
        smaller=watts(dimmer.smaller_w) if dimmer.smaller_w else None,
        dimmed=dimmed,
        power=share(lamp.power),
        light=share(lamp.light),
        colour=share(lamp.colour_temperature),
    )
