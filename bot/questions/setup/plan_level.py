"""What a set-up gets beyond what it is planned with: a white light first, then a wider sun.

Words: ``words/<language>/level.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum

from bot.facts import Lumens, Say, Says, lumens
from calc.animal import Animal
from calc.light.bands import bands_of, life_of
from calc.setup.plan import Plan, Request
from calc.shape.flat import bar_per_flux
from calc.uncertainty import Estimate

__all__ = ["Level", "LevelTold", "level_bought", "level_step", "level_told"]

_OF_THE_BOX, _LONGEST_M = 0.75, 2.0


class Level(Enum):
    """How far a plan goes."""

    MINIMUM = "minimum"
    GOOD = "good"
    BETTER = "better"


@dataclass(frozen=True, slots=True)
class LevelTold:
    """A level with the lumens of a white bar; None where no bright spot is asked."""

    level: Level
    bar: Lumens | None


def level_told(name: str | None, found: Plan, request: Request) -> LevelTold | None:
    """Return what a level adds to a plan; None where none was named."""
    if name is None:
        return None
    level = Level(name)
    bar = None if level is Level.MINIMUM else _bar_lm(request.animal, found, request)
    return LevelTold(level, None if bar is None else lumens(bar))


def _bar_lm(animal: Animal, found: Plan, request: Request) -> Estimate | None:
    """Return the lumens [lm] from the edge of fair to fair on the back, level with the tube."""
    life = life_of(animal)
    bands = None if life is None else bands_of(life)
    if bands is None:
        return None
    long_m = min(_OF_THE_BOX * request.box.length_m, _LONGEST_M)
    each = float(bar_per_flux(found.light.distance_m, long_m))
    fair = bands.fair.spot_lx / each
    edge = (bands.dim.spot_lx * bands.fair.spot_lx) ** 0.5 / each
    return Estimate(edge, (edge * fair) ** 0.5, fair)


def level_bought(facts: LevelTold | None) -> Iterator[tuple[Say, Say]]:
    """Yield what is bought for a level, beside the rest."""
    if facts is None:
        return
    say = Says("level", facts)
    if facts.level is Level.MINIMUM:
        yield say("label-later"), say("later")
        return
    if facts.bar is not None:
        yield say("label-bar"), say("bar")
    if facts.level is Level.BETTER:
        yield say("label-better"), say("better")


def level_step(facts: LevelTold | None) -> Say | None:
    """Return what a level adds in few words, where it adds a light."""
    if facts is None or facts.bar is None:
        return None
    return Say("level-do", facts)
