"""What warms a planned set-up by day and by night, as facts."""

from dataclasses import dataclass
from enum import Enum, auto

from bot.facts import Length, Power, Say, Temp, degrees, metres, watts
from bot.questions.heat.shared import aimed
from bot.questions.setup.plan_asked import PlanAsked
from bot.questions.shared import known_by
from bot.saved.group import Own
from calc.animal import Animal, Subject
from calc.heat.enclosure import LampPlace
from calc.heat.first_wattage import LampShape
from calc.heat.night import NightDecision
from calc.judgement import Judged, Move
from calc.setup.set_up import StandKind
from calc.setup.warmth import HeatKind, WarmthPlan

__all__ = ["Air", "DayHeat", "NightPlanned", "PlanHeat", "heat_planned"]


class DayHeat(Enum):
    """What warms by day."""

    ONE_SIZE = auto()
    TWO_SIZES = auto()
    YOURS = auto()
    GENTLE = auto()
    ROOM = auto()


class Air(Enum):
    """How the air by the lamp stands to the cool end; None of its range is known: ``UNKNOWN``."""

    UNKNOWN = auto()
    FINE = auto()
    COOL = auto()
    MAYBE_COOL = auto()
    MAYBE_WARM = auto()


class NightPlanned(Enum):
    """What the night asks for, as far as it was told."""

    UNTOLD = auto()
    UNTOLD_UNKNOWN = auto()
    NOTHING = auto()
    TOO_WARM = auto()
    UNKNOWN = auto()
    HEAT = auto()
    KEEPERS_DIFFER = auto()
    WATER = auto()


@dataclass(frozen=True, slots=True)
class PlanHeat:
    """Lamp and heaters of the day and of the night."""

    day: DayHeat
    shape: LampShape
    place: LampPlace
    worked_out: Power | None
    sizes: Power | None
    span: Power | None
    lamp_away: Length | None
    extra: Power | None
    most: Power | None
    extra_surely: bool
    held: Temp | None
    air: Air
    night: NightPlanned
    room_night: Temp | None
    floor: Temp | None
    floor_known: Say | None
    off: Temp | None
    need: Power | None
    one: Power | None
    stand: StandKind
    open: bool

    @property
    def heats_night(self) -> bool:
        """Say whether the night surely asks for heat."""
        return self.night is NightPlanned.HEAT


def heat_planned(warmth: WarmthPlan, what: PlanAsked, own: Own) -> PlanHeat:
    """Return what warms by day and by night as facts."""
    animal, night, first = what.animal, warmth.night, warmth.first
    floor, is_open = what.animal.night_floor_c, what.request.box.is_open
    # The air of a cage that is mesh all round is the room's, whatever hangs in it.
    emitter = None if is_open else warmth.emitter
    short = None if is_open else warmth.short_w
    about = Subject.NIGHT_FLOOR
    return PlanHeat(
        day=_day(warmth),
        shape=what.request.shape,
        place=warmth.lamp_place,
        worked_out=None if warmth.watts is None else watts(warmth.watts),
        sizes=_sizes(warmth),
        span=watts(first.steps_w[0], (first.steps_w[0], first.steps_w[-1])) if first else None,
        lamp_away=None if warmth.lamp_distance_m is None else metres(warmth.lamp_distance_m),
        extra=None if warmth.extra_w is None or is_open else watts(warmth.extra_w),
        most=None if short is None else watts(short.high),
        extra_surely=warmth.air is not None and warmth.air.verdict.wants_change,
        held=None if warmth.held_c is None else degrees(warmth.held_c),
        air=_air(warmth.air),
        night=_night(warmth, animal),
        room_night=None if night is None else degrees(what.request.night_c or 0.0),
        floor=None if floor is None else aimed(floor),
        floor_known=None if floor is None else known_by(animal, about, floor, own),
        off=None if night is None or night.heat_off_c is None else degrees(night.heat_off_c),
        need=None if emitter is None else watts(emitter.power_w),
        one=None if emitter is None or emitter.step_w is None else watts(emitter.step_w),
        stand=what.stand,
        open=is_open,
    )


def _day(warmth: WarmthPlan) -> DayHeat:
    if warmth.watts is None or warmth.lamp_distance_m is None:
        room = warmth.kind is HeatKind.ROOM_IS_NEARLY_ENOUGH
        return DayHeat.ROOM if room else DayHeat.GENTLE
    if warmth.first is None:
        return DayHeat.YOURS
    return DayHeat.TWO_SIZES if len(warmth.first.buy_w) > 1 else DayHeat.ONE_SIZE


def _sizes(warmth: WarmthPlan) -> Power | None:
    """Return the watts of the lamp to hang: its two sizes are the ends."""
    if warmth.watts is None or warmth.lamp_distance_m is None:
        return None
    buy = (warmth.watts.best,) if warmth.first is None else warmth.first.buy_w
    return watts(min(buy), (min(buy), max(buy)))


def _air(judged: Judged | None) -> Air:
    if judged is None:
        return Air.UNKNOWN
    if judged.is_fine:
        return Air.FINE
    if judged.verdict.wants_change and judged.move is Move.UP:
        return Air.COOL
    return Air.MAYBE_COOL if judged.value.best < judged.low else Air.MAYBE_WARM


_NIGHTS = {
    NightDecision.NOTHING: NightPlanned.NOTHING,
    NightDecision.TOO_WARM: NightPlanned.TOO_WARM,
    NightDecision.FLOOR_UNKNOWN: NightPlanned.UNKNOWN,
    NightDecision.WATER: NightPlanned.WATER,
    NightDecision.WATER_TOO_COLD: NightPlanned.WATER,
    NightDecision.HEAT: NightPlanned.HEAT,
    NightDecision.KEEPERS_DIFFER: NightPlanned.KEEPERS_DIFFER,
}


def _night(warmth: WarmthPlan, animal: Animal) -> NightPlanned:
    if warmth.night is not None:
        return _NIGHTS[warmth.night.decision]
    if animal.night_floor_c is None and animal.water_c is not None:
        return NightPlanned.WATER
    known = animal.night_floor_c is not None
    return NightPlanned.UNTOLD if known else NightPlanned.UNTOLD_UNKNOWN
