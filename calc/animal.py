"""What is known of one animal: its targets, its body, what authorities ask, how it lives.

A target that is ``None`` is not known here. Body temperatures from the literature are kept apart
from surface targets: a basking surface is normally several kelvin above the body it warms.
"""

from dataclasses import dataclass
from enum import StrEnum

from calc.sources import Kind, source

__all__ = [
    "BACK_BOUNDS_M",
    "Animal",
    "Authority",
    "Awake",
    "BodyKind",
    "BodyTemperature",
    "Disagreement",
    "Group",
    "OwnLimits",
    "Particular",
    "State",
    "Subject",
    "Target",
    "Zone",
]

BACK_BOUNDS_M = (0.005, 0.5)
"""How high a back may be over what it lies on [m]."""


class Subject(StrEnum):
    """A thing that an animal wants; also what two sources may disagree about."""

    UVI = "uvi"
    ZONE = "zone"
    BASKING_SURFACE = "basking_surface"
    WARM_AIR = "warm_air"
    COOL_AIR = "cool_air"
    NIGHT_FLOOR = "night_floor"
    NIGHT_HEAT_OFF = "night_heat_off"
    LIGHT_HOURS = "light_hours"
    HOME_LATITUDE = "home_latitude"
    WATER = "water"
    WATER_DEPTH = "water_depth"
    GRADIENT = "gradient"


class Group(StrEnum):
    """What kind of animal it is, as far as its lamps and its box are concerned."""

    LIZARD = "lizard"
    SNAKE = "snake"
    TORTOISE = "tortoise"
    TURTLE = "turtle"
    AMPHIBIAN = "amphibian"


class Awake(StrEnum):
    """When an animal is awake."""

    DIURNAL = "diurnal"
    NOCTURNAL = "nocturnal"
    CREPUSCULAR = "crepuscular"
    CATHEMERAL = "cathemeral"


class Particular(StrEnum):
    """What is told of an animal beside its figures: of its kind, and of females with eggs."""

    KIND = "kind"
    BROOD = "brood"


class State(StrEnum):
    """What an animal is just now, beside its kind, as far as that may move a target."""

    YOUNG = "young"
    PALE = "pale"
    GRAVID = "gravid"
    FEMALE = "female"
    ILL = "ill"
    QUARANTINE = "quarantine"


class BodyKind(StrEnum):
    """How a body temperature came about."""

    FIELD = "field"
    CHOSEN = "chosen"
    BROODING = "brooding"
    DAILY_HIGH = "daily_high"
    CRITICAL_HIGH = "critical_high"
    CRITICAL_LOW = "critical_low"


@dataclass(frozen=True, slots=True)
class Target:
    """A range to aim for, with the aim inside it where one is known."""

    low: float
    best: float | None
    high: float
    source: str
    note: str = ""

    def __post_init__(self) -> None:
        if not self.low <= (self.low if self.best is None else self.best) <= self.high:
            raise ValueError(f"not in order: {self.low}, {self.best}, {self.high}")

    @property
    def kind(self) -> Kind:
        """How far the figure may be trusted."""
        return source(self.source).kind

    @property
    def is_unchecked(self) -> bool:
        """Whether it is from memory alone, so that nothing is sure that is judged by it."""
        return self.kind is Kind.MEMORY

    @property
    def aim(self) -> float:
        """The value to aim for: the known best, otherwise the middle."""
        return (self.low + self.high) / 2.0 if self.best is None else self.best


@dataclass(frozen=True, slots=True)
class Zone:
    """One of the four UV zones: the UV index of an animal's mean and highest exposure."""

    number: int
    description: str
    mean_uvi: tuple[float, float]
    maximum_uvi: tuple[float, float]
    source: str
    note: str = ""


@dataclass(frozen=True, slots=True)
class BodyTemperature:
    """A body temperature from the literature [degC]; never a target for a surface.

    ``critical``: the animal can no longer right itself, which is a target for nothing at all.
    ``is_relative``: measured on another animal than the one it stands with.
    """

    taxon: str
    low_c: float
    high_c: float
    what: BodyKind
    source: str
    is_relative: bool = False


@dataclass(frozen=True, slots=True)
class Authority:
    """What a law, a veterinary text or a welfare body asks for, in the unit of its subject.

    The range of a whole enclosure (``Subject.GRADIENT``) runs from its coolest place to its
    warmest.
    """

    about: Subject
    low: float
    high: float
    source: str


@dataclass(frozen=True, slots=True)
class Disagreement:
    """Another view of one target, in a sentence."""

    about: Subject
    text: str
    source: str


@dataclass(frozen=True, slots=True)
class OwnLimits:
    """What a group said that no animal of this kind may have [degC, UV index 1]; None: nothing."""

    surface_c: float | None = None
    coolest_air_c: float | None = None
    night_c: float | None = None
    uvi_now: float | None = None


@dataclass(frozen=True, slots=True)
class Animal:
    """One kept reptile or amphibian; ``None`` means not known here.

    ``basking`` is True for an animal that comes under a bright beam for its heat and False for
    one that wants gentle warmth. Below ``night_floor_c.low`` the night needs heat, above
    ``night_floor_c.high`` it does not, between them keepers differ. ``own_limits``, ``own_back_m``
    [m] and ``own_life`` (a ``calc.setup.lives.Life``) has only an animal that a group added;
    ``water_depth_m`` only one that a group set it for, beside the least depth in ``setup.space``.
    ``states`` are those that were told and that its targets heed.
    """

    slug: str
    name: str
    scientific: str
    basking: bool
    zone: Zone | None
    uvi: Target | None
    basking_surface_c: Target | None
    warm_air_c: Target | None
    cool_air_c: Target | None
    night_floor_c: Target | None
    night_heat_off_c: Target | None
    light_hours: Target | None
    home_latitude_deg: Target | None
    bodies: tuple[BodyTemperature, ...]
    disagreements: tuple[Disagreement, ...]
    group: Group | None = None
    awake: Awake | None = None
    water_c: Target | None = None
    adult_length_m: Target | None = None
    readings: tuple[Authority, ...] = ()
    particular: tuple[Particular, ...] = ()
    own_limits: OwnLimits | None = None
    own_back_m: float | None = None
    own_life: str | None = None
    water_depth_m: Target | None = None
    states: tuple[State, ...] = ()

    @property
    def is_of_water_alone(self) -> bool:
        """Whether it lives in water and nowhere else: no air and no spot of it is known."""
        dry = (self.basking_surface_c, self.warm_air_c, self.cool_air_c)
        return self.water_c is not None and dry == (None, None, None)

    @property
    def needs_no_basking(self) -> bool:
        """Whether it is known to want no basking spot at all."""
        return self.group is not None and not self.basking and self.basking_surface_c is None

    @property
    def is_of_the_night(self) -> bool:
        """Whether it is awake at night or in twilight, and rests by day."""
        return self.awake in (Awake.NOCTURNAL, Awake.CREPUSCULAR)

    def disagreements_about(self, *subjects: Subject) -> tuple[Disagreement, ...]:
        """Return the other views on any of these subjects."""
        return tuple(d for d in self.disagreements if d.about in subjects)
