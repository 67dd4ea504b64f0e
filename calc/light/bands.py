"""Dim, fair and bright: words for a basking place's light, by how an animal lives.

All of it is our own judgement after the outdoors. Nobody has published how many lux any of these
animals needs, so no band is a need and none makes a verdict.
"""

from dataclasses import dataclass
from enum import Enum, StrEnum, auto

from calc.animal import Animal, Awake
from calc.uncertainty import Estimate

__all__ = ["Band", "Bands", "Brightness", "LightLife", "bands_of", "brightness_of", "life_of"]


class LightLife(StrEnum):
    """How an animal lives with light."""

    SUN = "sun"
    PART_SUN = "part_sun"
    FOREST = "forest"
    NIGHT = "night"


class Brightness(Enum):
    """How bright a basking place is, in a word."""

    DIM = auto()
    FAIR = auto()
    BRIGHT = auto()


@dataclass(frozen=True, slots=True)
class Band:
    """A level for planning [lx]: the basking place, the lit half, the retreat at most."""

    spot_lx: float
    half_lx: float
    retreat_lx: float


@dataclass(frozen=True, slots=True)
class Bands:
    """The three levels of one way of life."""

    dim: Band
    fair: Band
    bright: Band


_BANDS = {
    LightLife.SUN: Bands(
        Band(3000.0, 500.0, 100.0), Band(10_000.0, 2000.0, 100.0), Band(30_000.0, 5000.0, 100.0)
    ),
    LightLife.PART_SUN: Bands(
        Band(1500.0, 400.0, 50.0), Band(5000.0, 1000.0, 50.0), Band(15_000.0, 2000.0, 50.0)
    ),
    LightLife.FOREST: Bands(
        Band(500.0, 200.0, 20.0), Band(2000.0, 500.0, 20.0), Band(7000.0, 1000.0, 20.0)
    ),
}
_SUN_ZONE = 3


def life_of(animal: Animal) -> LightLife | None:
    """Return how an animal lives with light; None where that is not known here.

    Source: light_bands.

    Examples
    --------
    >>> from calc.animals import animals
    >>> life_of(animals()["bearded-dragon"]).name
    'SUN'
    """
    if animal.awake is None:
        return None
    if animal.awake is not Awake.DIURNAL:
        return LightLife.NIGHT
    if animal.zone is None:
        return None
    if animal.zone.number >= _SUN_ZONE:
        return LightLife.SUN
    return LightLife.PART_SUN if animal.zone.number > 1 else LightLife.FOREST


def bands_of(life: LightLife) -> Bands | None:
    """Return the levels of a way of life; None for who is awake at night: no bright spot is asked.

    Source: light_bands.

    Examples
    --------
    >>> bands_of(LightLife.SUN).fair.spot_lx
    10000.0
    """
    return _BANDS.get(life)


def brightness_of(lux: Estimate, bands: Bands) -> tuple[Brightness, Brightness]:
    """Return how bright a basking place is at least and at most, as the doubt leaves it.

    Parts lie half way between the levels, as factors.

    Source: light_bands.

    Examples
    --------
    >>> found = brightness_of(Estimate(8000.0, 10_000.0, 12_500.0), bands_of(LightLife.SUN))
    >>> [one.name for one in found]
    ['FAIR', 'FAIR']
    """
    ends = (bands.dim.spot_lx * bands.fair.spot_lx) ** 0.5
    begins = (bands.fair.spot_lx * bands.bright.spot_lx) ** 0.5

    def word(value: float) -> Brightness:
        if value < ends:
            return Brightness.DIM
        return Brightness.FAIR if value < begins else Brightness.BRIGHT

    return word(lux.low), word(lux.high)
