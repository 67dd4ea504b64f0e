"""The way up from the bare minimum: which step comes next for a set-up that is all right.

One at a time: what an animal can lean on first (shade, readings), then light, then more room in
the sun. A step is left out where it would lead past what the animal should have.
"""

from collections.abc import Collection
from dataclasses import dataclass
from enum import Enum, auto

from calc.animal import Animal, Awake
from calc.heat.box import Spot, ends_held, watts_to_hold
from calc.heat.enclosure import Enclosure
from calc.light.bands import LightLife, life_of

__all__ = ["LevelUp", "Rise", "bar_most_w", "bar_rise_k", "next_level"]

_BAR_W = 25.0
_LARGE_M = 0.35
_MOST_RISE_K = 1.0
# More is no question of a lamp for light.
_MOST_HELD_K = 15.0


class LevelUp(Enum):
    """A step up, in the order in which they are worth their trouble."""

    HIDES = auto()
    TOGETHER = auto()
    METER = auto()
    WHITE_LIGHT = auto()
    WIDE_UV = auto()
    TWO_HEAT_LAMPS = auto()
    SEASONS = auto()
    PLANTS = auto()
    NOTHING = auto()


@dataclass(frozen=True, slots=True)
class Rise:
    """What a white bar would warm the cool end by [K], and whether that leaves it in range."""

    watts: float
    by_k: float
    leaves_in_range: bool


def bar_rise_k(
    box: Enclosure, room_c: float, cool_c: float, animal: Animal, watts: float = _BAR_W
) -> Rise:
    """Return what a white bar adds to the air of the cool end.

    rise = air held by its watts alone - room

    Parameters
    ----------
    box : the enclosure
    room_c : air of the room [degC], 10 to 35
    cool_c : air of the cool end now [degC]
    animal : whose range of the cool end it is held against
    watts : what the bar takes [W], 1 to 1000

    Returns
    -------
    Rise
        Rise [K]; in range where that is known and the cool end stays within it.

    Notes
    -----
    All of its watts end as heat inside; beside another lamp it is a little less.
    Source: enclosure_model; ladder_judgement.

    Examples
    --------
    >>> from calc.animals import animals
    >>> box = Enclosure(1.2, 0.6, 0.6)
    >>> rise = bar_rise_k(box, 21.0, 25.0, animals()["bearded-dragon"])
    >>> 0.5 < rise.by_k < 5.0
    True
    """
    by_k = ends_held(box, watts, room_c, Spot.MIDDLE).cool_c.best - room_c
    target = animal.cool_air_c
    fits = by_k <= _MOST_RISE_K if target is None else cool_c + by_k <= target.high
    return Rise(watts, by_k, fits)


def bar_most_w(box: Enclosure, room_c: float, cool_c: float, animal: Animal) -> float:
    """Return the most watts of white light that leave the cool end in its range.

    P at which the rise of ``bar_rise_k`` is what the range leaves; where none is known, 1 K

    Parameters
    ----------
    box : the enclosure
    room_c : air of the room [degC], 10 to 35
    cool_c : air of the cool end without it [degC]
    animal : whose range of the cool end it is held against

    Returns
    -------
    float
        Watts [W], 0 where the cool end is at the top of its range.

    Notes
    -----
    Source: enclosure_model; ladder_judgement.

    Examples
    --------
    >>> from calc.animals import animals
    >>> box, dragon = Enclosure(1.2, 0.6, 0.6), animals()["bearded-dragon"]
    >>> most_w = bar_most_w(box, 21.0, 25.0, dragon)
    >>> bar_rise_k(box, 21.0, 25.0, dragon, most_w * 0.99).leaves_in_range
    True
    """
    target = animal.cool_air_c
    room_k = _MOST_RISE_K if target is None else min(target.high - cool_c, _MOST_HELD_K)
    if room_k <= 0.0:
        return 0.0
    return watts_to_hold(box, room_c + room_k, room_c, Spot.MIDDLE).total_w.best


def next_level(
    animal: Animal,
    there: Collection[LevelUp],
    *,
    more_uv_fits: bool = True,
    bar_fits: bool = True,
) -> LevelUp:
    """Return the next step up for a set-up in which nothing is open.

    Source: ladder_judgement.

    Examples
    --------
    >>> from calc.animals import animals
    >>> dragon = animals()["bearded-dragon"]
    >>> there = (LevelUp.HIDES, LevelUp.TOGETHER, LevelUp.METER)
    >>> next_level(dragon, ()).name, next_level(dragon, there).name
    ('HIDES', 'WHITE_LIGHT')
    """
    left_out = {
        LevelUp.HIDES: animal.is_of_water_alone,
        LevelUp.TOGETHER: animal.uvi is None or not animal.basking,
        LevelUp.METER: animal.uvi is None,
        LevelUp.WHITE_LIGHT: not bar_fits or life_of(animal) in (None, LightLife.NIGHT),
        LevelUp.WIDE_UV: not more_uv_fits or life_of(animal) is not LightLife.SUN,
        LevelUp.TWO_HEAT_LAMPS: not animal.basking or not _is_large(animal),
        LevelUp.SEASONS: animal.home_latitude_deg is None or animal.is_of_water_alone,
        LevelUp.PLANTS: animal.is_of_water_alone or animal.awake is Awake.NOCTURNAL,
    }
    return next(
        step
        for step in LevelUp
        if step is LevelUp.NOTHING or not (step in there or left_out.get(step, False))
    )


def _is_large(animal: Animal) -> bool:
    long = animal.adult_length_m
    return long is not None and long.high >= _LARGE_M
