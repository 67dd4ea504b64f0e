"""Readings of heat and the steps that mend them, as facts. Words: ``words/<language>/heat.ftl``."""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import Enum, auto

from bot.facts import Diff, Power, Say, Share, Temp, degrees, kelvins, share, watts
from bot.language.quantities import Measure
from bot.questions.heat.shared import aimed, has_best
from bot.questions.shared import known_by
from bot.saved.group import Own
from calc.animal import Animal, Subject, Target
from calc.heat.basking import MOST_DIMMING
from calc.heat.mending import HeatChange
from calc.heat.ranges import End, judged_end
from calc.heat.readings import Doubtful, Finding
from calc.heat.steps import Step
from calc.judgement import Verdict, with_doubt
from calc.quantities import Quantity

__all__ = [
    "HeatAim",
    "HeatReading",
    "HeatStep",
    "Place",
    "Ranged",
    "Stand",
    "do_said",
    "doubts_said",
    "missing_said",
    "ranged",
    "reading_told",
    "step_said",
    "step_told",
]

# Beyond these [degC] no reading is believed, and both ends are left to whoever judges them.
_BELIEVED_C = (-10.0, 150.0)
# Less than this [K] is not told as a figure: it would be rounded to none.
_A_TOUCH_K = 0.28


class Place(Enum):
    """Where a temperature is read."""

    BASKING_SURFACE = auto()
    COOL_AIR = auto()
    WARM_AIR = auto()
    NIGHT_AIR = auto()
    WATER = auto()


class Stand(Enum):
    """How a reading stands against what its animal needs."""

    RIGHT = auto()
    TOO_LOW = auto()
    TOO_HIGH = auto()
    PROBABLY_LOW = auto()
    PROBABLY_HIGH = auto()
    CANNOT_TELL = auto()
    KEEPERS_DIFFER = auto()
    NO_TARGET = auto()
    NO_NEED = auto()


_SUBJECTS = {
    Quantity.BASKING_SURFACE: Subject.BASKING_SURFACE,
    Quantity.COOL_AIR: Subject.COOL_AIR,
    Quantity.WARM_AIR: Subject.WARM_AIR,
    Quantity.NIGHT_AIR: Subject.NIGHT_FLOOR,
    Quantity.WATER: Subject.WATER,
}
_UNSURE = {
    Verdict.PROBABLY_LOW: Stand.PROBABLY_LOW,
    Verdict.PROBABLY_HIGH: Stand.PROBABLY_HIGH,
}


@dataclass(frozen=True, slots=True)
class HeatReading:
    """One reading: how it stands, how far it is off, and what to aim for; None: not known.

    ``span`` is what was read where that was a range, and ``at`` the end of it that is judged.
    ``unchecked``: off for sure by a range from memory, so that the thermometer is not the doubt.
    """

    place: Place
    read: Temp
    span: Temp | None
    at: End
    stand: Stand
    off: Diff
    touch: bool
    unchecked: bool
    wanted: Temp | None
    aim: Say | None


@dataclass(frozen=True, slots=True)
class HeatAim:
    """What to aim for, and how that is known."""

    wanted: Temp
    has_best: bool
    known: Say


@dataclass(frozen=True, slots=True)
class HeatStep:
    """One step, with the room, the lamp or the share of its watts where they were worked out."""

    step: Step
    room: Temp | None = None
    lamp: Power | None = None
    part: Share | None = None


@dataclass(frozen=True, slots=True)
class Ranged:
    """A reading as it was told: the value to judge, both ends of a range, and which is judged."""

    reading_c: float
    span: Temp | None
    at: End


def ranged(place: Quantity, measure: Measure, animal: Animal) -> Ranged:
    """Return what a reading is judged by, where it may be a range."""
    ends = (measure.low, measure.high)
    if not _BELIEVED_C[0] <= measure.low <= measure.high <= _BELIEVED_C[1]:
        return Ranged(sum(ends) / 2.0, None, End.WHOLE)
    reading_c, at = judged_end(place, *ends, animal)
    span = None if measure.low == measure.high else degrees(sum(ends) / 2.0, ends)
    return Ranged(reading_c, span, at)


def reading_told(
    finding: Finding, animal: Animal, own: Own, told: Ranged | None = None
) -> HeatReading:
    """Return a finding as facts; ``told`` is how it was read."""
    target, judged = finding.target, finding.judged
    off_k = judged.off_by if judged else 0.0
    return HeatReading(
        place=Place[finding.place.name],
        read=degrees(with_doubt(finding.place, finding.reading_c)),
        span=told.span if told else None,
        at=told.at if told else End.WHOLE,
        stand=_stand(finding, animal),
        off=kelvins(off_k),
        touch=off_k < _A_TOUCH_K,
        unchecked=finding.is_unchecked,
        wanted=None if target is None else aimed(target),
        aim=None if target is None else _aim(finding.place, target, animal, own),
    )


def _aim(place: Quantity, target: Target, animal: Animal, own: Own) -> Say:
    known = known_by(animal, _SUBJECTS[place], target, own)
    return Say("heat-aim", HeatAim(aimed(target), has_best(target), known))


def _stand(finding: Finding, animal: Animal) -> Stand:
    judged = finding.judged
    if judged is None:
        spot = finding.place is Quantity.BASKING_SURFACE
        return Stand.NO_NEED if spot and animal.needs_no_basking else Stand.NO_TARGET
    if finding.keepers_differ:
        return Stand.KEEPERS_DIFFER
    if finding.is_fine:
        return Stand.RIGHT
    if finding.is_unsure:
        return _UNSURE.get(judged.verdict, Stand.CANNOT_TELL)
    return Stand.TOO_LOW if finding.is_low else Stand.TOO_HIGH


def step_told(step: Step, changes: Iterable[HeatChange] = ()) -> HeatStep:
    """Return a step, with its figure where it was worked out."""
    amount = next((change.amount for change in changes if change.step is step), None)
    if amount is None:
        return HeatStep(step)
    if step in (Step.COOLER_ROOM, Step.WARMER_ROOM):
        return HeatStep(step, room=degrees(amount))
    if step in (Step.MORE_POWER, Step.SECOND_WEAKER_LAMP):
        return HeatStep(step, lamp=watts(amount))
    if step is Step.LESS_POWER and amount > 1.0:
        return HeatStep(step, lamp=watts(amount))
    # A little less is a matter for the dimmer, and told without a figure.
    if step is Step.LESS_POWER and amount < 1.0 - MOST_DIMMING:
        return HeatStep(step, part=share(amount))
    return HeatStep(step)


def do_said(told: HeatStep) -> Say:
    """Return the step alone, short enough for a brief."""
    return Say.by("heat-do", told.step, told)


def step_said(told: HeatStep) -> Say:
    """Return the step with its reason."""
    return Say.by("heat-step", told.step, told)


@dataclass(frozen=True, slots=True)
class _Missing:
    place: Place


@dataclass(frozen=True, slots=True)
class _Doubt:
    doubt: Doubtful


def missing_said(places: Iterable[Quantity]) -> tuple[Say, ...]:
    """Return what is still to be measured, and with what."""
    return tuple(_missing(_Missing(Place[place.name])) for place in places)


def _missing(told: _Missing) -> Say:
    return Say.by("heat-missing", told.place)


def doubts_said(doubts: Iterable[Doubtful]) -> tuple[Say, ...]:
    """Return what speaks against the readings."""
    return tuple(_doubt(_Doubt(doubt)) for doubt in doubts)


def _doubt(told: _Doubt) -> Say:
    return Say.by("heat-doubt", told.doubt)
