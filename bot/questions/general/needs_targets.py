"""What an animal needs, target by target, with who says each."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum

from bot.facts import Figure, Hours, Say, Temp, Uvi, hours, uvi
from bot.questions.animals import wanted_of
from bot.questions.heat.shared import aimed, has_best
from bot.questions.shared import known_by
from bot.saved.group import Own
from calc.animal import Animal, Group, Subject, Target

__all__ = ["Need", "OneNeed", "has_air", "known_targets", "targets_of", "uvi_wanted"]


class Need(Enum):
    """A target of an animal, in the order of the answer; the value is its name in JSON."""

    UVI = "uvi"
    BASKING_SURFACE = "basking_surface"
    WARM_AIR = "warm_air"
    COOL_AIR = "cool_air"
    NIGHT_FLOOR = "night_floor"
    NIGHT_HEAT_OFF = "night_heat_off"
    WATER = "water"
    LIGHT_HOURS = "light"


@dataclass(frozen=True, slots=True)
class OneNeed:
    """One target; the figure of its kind is there where it is known, and none where it is not."""

    need: Need
    basks: bool
    uvi: Uvi | None
    warmth: Temp | None
    light: Hours | None
    has_best: bool
    known: Say | None
    source: str | None
    is_unchecked: bool

    @property
    def figure(self) -> Figure | None:
        """Return the target, of whatever kind."""
        return self.uvi or self.warmth or self.light


def uvi_wanted(animal: Animal) -> Uvi | None:
    """Return the UV index that an animal is given."""
    target = animal.uvi
    return None if target is None else uvi(target.aim, (target.low, target.high))


def targets_of(animal: Animal, own: Own) -> Iterator[OneNeed]:
    """Yield every target that an animal has or may have."""
    for need in Need:
        target = wanted_of(animal, Subject[need.name])
        if target is None and (need is Need.NIGHT_HEAT_OFF or not _applies(animal, need)):
            continue
        known = None
        if target is not None:
            known = known_by(animal, Subject[need.name], target, own)
        ends = None if target is None else (target.low, target.high)
        yield OneNeed(
            need=need,
            basks=bool(animal.basking),
            uvi=uvi_wanted(animal) if need is Need.UVI else None,
            warmth=aimed(target) if target and need not in (Need.UVI, Need.LIGHT_HOURS) else None,
            light=hours(target.aim, ends) if target and need is Need.LIGHT_HOURS else None,
            has_best=target is not None and has_best(target),
            known=known,
            source=None if target is None else target.source,
            is_unchecked=target is not None and target.is_unchecked,
        )


def _applies(animal: Animal, need: Need) -> bool:
    """Tell whether a need may be unknown of this animal, rather than not there."""
    if need is Need.WATER:
        return animal.group is Group.TURTLE
    # What lives in water alone has no air.
    if need in (Need.WARM_AIR, Need.COOL_AIR, Need.NIGHT_FLOOR, Need.UVI):
        return has_air(animal)
    return need is not Need.BASKING_SURFACE or animal.basking or animal.group is None


def has_air(animal: Animal) -> bool:
    """Say whether an animal has air to live in."""
    return not animal.is_of_water_alone


def known_targets(animal: Animal) -> Iterator[Target]:
    """Yield every target of an animal that is known."""
    for need in Need:
        target = wanted_of(animal, Subject[need.name])
        if target is not None:
            yield target
