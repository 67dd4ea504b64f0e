"""What a set-up gets beyond what it is planned with: a white light first, then a wider sun.

Words: ``words/<language>/level.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import Enum

from bot.facts import Lumens, Say, Says, lumens
from calc.light.illuminance import Light
from calc.light.kinds import LightKind, light_kind
from calc.setup.ladder import bar_most_w
from calc.setup.lights import OF_THE_BOX, fair_from_lx, hung_beside, light_there
from calc.setup.plan import Plan, Request
from calc.uncertainty import Estimate

__all__ = ["Level", "LevelTold", "level_bought", "level_lights", "level_step", "level_told"]

_LONGEST_M = 2.0
_ANY_LM = 1000.0
# Less is no light to buy a bar for, and more is several. Source: light_judgement.
_LEAST_LM, _MOST_LM = 500.0, 6000.0
_SURELY = 0.95


class Level(Enum):
    """How far a plan goes."""

    MINIMUM = "minimum"
    GOOD = "good"
    BETTER = "better"


@dataclass(frozen=True, slots=True)
class LevelTold:
    """A level with the lumens of a white bar; None where no bright spot is asked, or none fits.

    ``held``: it could be brighter, but the cool end bears no more; ``too_warm``: it bears none.
    """

    level: Level
    bar: Lumens | None
    held: bool
    too_warm: bool


def level_lights(name: str | None, found: Plan, request: Request) -> tuple[Light, ...]:
    """Return the white bar of a level, from the edge of fair to fair on the back; else none."""
    bands = request.bands
    if name is None or Level(name) is Level.MINIMUM or bands is None:
        return ()
    kind, each_lm = light_kind("led-bar"), Estimate.exact(_ANY_LM)
    long_m = min(OF_THE_BOX * request.box.length_m, _LONGEST_M)
    any_bar = Light(kind, each_lm, by_watts=False, length_m=long_m)
    room = found.places.room
    there = light_there(room, hung_beside(room, (any_bar,)), None)
    each = there.spot_lx.best / _ANY_LM
    edge, fair = (fair_from_lx(bands) or 0.0) / each, bands.fair.spot_lx / each
    borne = _SURELY * _most_lm(kind, found, request)
    if borne < _LEAST_LM:
        return ()
    ends = (min(lm, borne, _MOST_LM) for lm in (edge, (edge * fair) ** 0.5, fair))
    return (replace(any_bar, flux_lm=Estimate(*ends)),)


def _most_lm(kind: LightKind, found: Plan, request: Request) -> float:
    """Return the lumens of a bar that leave the cool end in its range [lm]."""
    assert kind.lm_per_w is not None
    held, room_c = found.warmth.held_c, request.room_c
    # What is advised fits the warmest that the cool end may be with the heat lamp on.
    cool_c = room_c if held is None else held.high
    return bar_most_w(request.box, room_c, cool_c, request.animal) * kind.lm_per_w.best


def level_told(name: str | None, request: Request, *, owned: bool) -> LevelTold | None:
    """Return what a level adds to a plan; None where none was named.

    ``owned``: the white lights are those that were told, so no bar is bought.
    """
    if name is None:
        return None
    level, lights = Level(name), request.lights
    bar = None if owned or not lights else lights[0].flux_lm
    asked = level is not Level.MINIMUM and request.bands is not None and not owned
    return LevelTold(
        level,
        None if bar is None else lumens(bar),
        held=bar is not None and bar.best == bar.high < _MOST_LM,
        too_warm=asked and bar is None,
    )


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
    elif facts.too_warm:
        yield say("label-bar"), say("no-bar")
    if facts.level is Level.BETTER:
        yield say("label-better"), say("better")


def level_step(facts: LevelTold | None) -> Say | None:
    """Return what a level adds in few words, where it adds a light."""
    if facts is None or facts.bar is None:
        return None
    return Say("level-do", facts)
