"""Brightness as facts: lux, the sky beside it, the lamp, and what plants make of it."""

from dataclasses import dataclass
from enum import Enum, auto

from bot.facts import Angle, Hours, Length, Lumens, Lux, Name, Number, Say, Share
from calc.light.bands import Bands, Brightness, LightLife, brightness_of
from calc.light.plants import PlantLight
from calc.uncertainty import Estimate

__all__ = [
    "Asked",
    "Bright",
    "BrightLamp",
    "BrightLife",
    "BrightLit",
    "BrightPlants",
    "BrightSky",
    "BrightWords",
    "LampTaken",
    "Without",
    "WithoutLux",
    "bright_words",
]


class Asked(Enum):
    """What the brightness was worked out from."""

    LAMP = auto()
    METER = auto()
    PHONE = auto()


class BrightWords(Enum):
    """How bright a basking place is, in words, as the doubt leaves it."""

    DIM = auto()
    DIM_OR_FAIR = auto()
    FAIR = auto()
    FAIR_OR_BRIGHT = auto()
    BRIGHT = auto()
    CANNOT_TELL = auto()
    NO_BAND = auto()


_WORDS = {
    (Brightness.DIM, Brightness.DIM): BrightWords.DIM,
    (Brightness.DIM, Brightness.FAIR): BrightWords.DIM_OR_FAIR,
    (Brightness.FAIR, Brightness.FAIR): BrightWords.FAIR,
    (Brightness.FAIR, Brightness.BRIGHT): BrightWords.FAIR_OR_BRIGHT,
    (Brightness.BRIGHT, Brightness.BRIGHT): BrightWords.BRIGHT,
}


def bright_words(spot_lx: Estimate, bands: Bands | None) -> BrightWords:
    """Return how bright a basking place of so much light [lx] is, in words."""
    if bands is None:
        return BrightWords.NO_BAND
    return _WORDS.get(brightness_of(spot_lx, bands), BrightWords.CANNOT_TELL)


@dataclass(frozen=True, slots=True)
class BrightLife:
    """How an animal lives with light, and our own levels for its basking place."""

    animal: Name
    life: LightLife
    fair: Lux
    bright: Lux
    half: Lux
    retreat: Lux


@dataclass(frozen=True, slots=True)
class BrightSky:
    """The sky to compare with; ``noon`` where a latitude and a month were told."""

    sun: Lux
    shade: Lux
    overcast: Lux
    room: Lux
    of_sun: Share
    of_shade: Number
    noon: Angle | None
    month: Say | None


@dataclass(frozen=True, slots=True)
class BrightLamp:
    """Lamps of one kind that give light; ``gives`` is what they give of it at the place."""

    lamp: Name
    count: int
    flux: Lumens
    by_watts: bool
    distance: Length
    assumed: tuple[Say, ...]
    gives: Lux


@dataclass(frozen=True, slots=True)
class BrightLit:
    """All lamps together; ``cool`` is the light at the cool end, straight from them.

    ``left_out`` are the kinds whose lumens nobody told, or of which lux tell nothing.
    """

    lamps: tuple[BrightLamp, ...]
    left_out: tuple[Name, ...]
    has_doubtful_uv: bool
    has_led: bool
    doubts: tuple[Say, ...]
    by_watts: bool
    along: Length
    across: Length
    cool: Lux | None
    is_behind_glass: bool


@dataclass(frozen=True, slots=True)
class BrightPlants:
    """What plants make of the light in a day; ``told`` says whether the hours were."""

    photons: Number
    day: Number
    hours: Hours
    told: bool
    least: PlantLight
    most: PlantLight


@dataclass(frozen=True, slots=True)
class Bright:
    """How bright a basking place is."""

    spot: Lux
    asked: Asked
    words: BrightWords
    life: BrightLife | None
    animal: Name | None
    is_of_the_night: bool
    sky: BrightSky
    lit: BrightLit | None
    plants: BrightPlants
    retreat: Lux
    for_fair: Lumens | None
    is_pale: bool
    sources: tuple[str, ...]


class Without(Enum):
    """Why there is no brightness."""

    NOTHING_TOLD = auto()
    TOO_NEAR = auto()
    COLOURED = auto()
    NO_LUMENS = auto()
    HOW_MANY = auto()
    HOW_MANY_NIGHT = auto()


@dataclass(frozen=True, slots=True)
class WithoutLux:
    """No brightness, why, and what helps: lumens for a fair place, or the sky to compare with.

    ``nearest`` is how near a lamp for heat may hang, where one hangs nearer.
    """

    why: Without
    animal: Name | None
    life: BrightLife | None
    sky: BrightSky
    lamp: Name | None
    fair_flux: Lumens | None
    bright_flux: Lumens | None
    distance: Length | None
    nearest: Length | None
    assumed: tuple[Say, ...]
    sources: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class LampTaken:
    """A length or an angle that was assumed of a lamp."""

    long: Length
    beam: Angle
