"""In what way an animal lives, as far as its lamps and its box are concerned."""

from enum import StrEnum

from calc.animal import Animal, Group
from calc.setup.bodies import body_for
from calc.setup.set_up import StandKind

__all__ = ["Life", "lives_of", "stand_for"]

_BRANCHES_M = 1.0
_GIANT_M = {Group.SNAKE: 2.5, Group.TORTOISE: 0.6}
_GIANT_ELSE_M = 1.2


class Life(StrEnum):
    """A way of life that changes where something is measured, or what it needs beside lamps."""

    WATER = "water"
    CLIMBS = "climbs"
    DIGS = "digs"
    NIGHT = "night"
    GIANT = "giant"


def lives_of(animal: Animal) -> tuple[Life, ...]:
    """Return the ways in which an animal lives.

    in water, or in water alone; climbs: is given places 1 m high or more; digs; awake at night;
    a giant: grows to 1.2 m, a snake to 2.5 m, a tortoise's shell to 0.6 m

    Parameters
    ----------
    animal : whose body and length are looked at

    Returns
    -------
    tuple of Life

    Notes
    -----
    Heights, lengths and what digs are from memory; what is a giant is our judgement.
    Source: back_heights; keepers_memory.

    Examples
    --------
    >>> from calc.animals import animals
    >>> [life.value for life in lives_of(animals()["green-iguana"])]
    ['climbs', 'giant']
    """
    body, long = body_for(animal), animal.adult_length_m
    swims = animal.is_of_water_alone or (body is not None and body.in_water)
    least = _GIANT_M.get(animal.group or Group.LIZARD, _GIANT_ELSE_M)
    found = {
        Life.WATER: swims,
        Life.CLIMBS: body is not None and body.highest_platform_m >= _BRANCHES_M and not swims,
        Life.DIGS: body is not None and body.digs,
        Life.NIGHT: animal.is_of_the_night,
        Life.GIANT: long is not None and long.high >= least,
    }
    return tuple(life for life, is_so in found.items() if is_so or life == animal.own_life)


def stand_for(animal: Animal) -> StandKind:
    """Return what an animal basks on: a dock in water, a branch where it climbs.

    Source: back_heights.
    """
    body = body_for(animal)
    if (body is not None and body.in_water) or animal.own_life == Life.WATER:
        return StandKind.DOCK
    tall = body is not None and body.highest_platform_m >= _BRANCHES_M
    climbs = tall or animal.own_life == Life.CLIMBS
    return StandKind.BRANCH if climbs else StandKind.PLATFORM
