"""What the facts of an answer are made of: figures in SI, names, and messages to be said.

A figure knows what it is (a length, a temperature), never a unit system, a digit or a language.
"""

from dataclasses import dataclass
from datetime import datetime
from enum import Enum, StrEnum, auto
from typing import Annotated, Any

from calc.uncertainty import Estimate

__all__ = [
    "Angle",
    "Bound",
    "Diff",
    "Digits",
    "Figure",
    "Hours",
    "Kind",
    "Length",
    "Lumens",
    "Lux",
    "Moment",
    "Name",
    "Number",
    "Power",
    "Say",
    "Says",
    "Share",
    "Temp",
    "Uvi",
    "angle",
    "degrees",
    "hours",
    "kelvins",
    "lumens",
    "lux",
    "metres",
    "plain_number",
    "share",
    "uvi",
    "watts",
]


class Kind(StrEnum):
    """What a figure measures; the value is the key of how it is shown."""

    LENGTH = "length"
    TEMPERATURE = "temperature"
    DIFFERENCE = "difference"
    POWER = "power"
    UVI = "uvi"
    SHARE = "share"
    TIME = "time"
    ANGLE = "angle"
    NUMBER = "number"
    LUX = "lux"
    LUMENS = "lumens"

    @property
    def unit(self) -> str:
        """Return the unit of the values in JSON."""
        return _UNITS[self]


_UNITS = {
    Kind.LENGTH: "m",
    Kind.TEMPERATURE: "degC",
    Kind.DIFFERENCE: "K",
    Kind.POWER: "W",
    Kind.UVI: "1",
    Kind.SHARE: "1",
    Kind.TIME: "h",
    Kind.ANGLE: "degree",
    Kind.NUMBER: "1",
    Kind.LUX: "lx",
    Kind.LUMENS: "lm",
}


class Bound(Enum):
    """Which way a figure may be rounded, so that no rounding leads past a limit."""

    NEAREST = auto()
    AT_LEAST = auto()
    AT_MOST = auto()
    INWARD = auto()
    START = auto()


@dataclass(frozen=True, slots=True)
class Figure:
    """A value [SI] with the ends of its range; both ends are the value where there is none."""

    kind: Kind
    best: float
    low: float
    high: float
    bound: Bound = Bound.NEAREST


# What a field of the facts is: the tests read it, so that { LENGTH($room) } cannot be written.
Length = Annotated[Figure, Kind.LENGTH]
Temp = Annotated[Figure, Kind.TEMPERATURE]
Diff = Annotated[Figure, Kind.DIFFERENCE]
Power = Annotated[Figure, Kind.POWER]
Uvi = Annotated[Figure, Kind.UVI]
Share = Annotated[Figure, Kind.SHARE]
Hours = Annotated[Figure, Kind.TIME]
Angle = Annotated[Figure, Kind.ANGLE]
Number = Annotated[Figure, Kind.NUMBER]
Lux = Annotated[Figure, Kind.LUX]
Lumens = Annotated[Figure, Kind.LUMENS]


def _figure(kind: Kind, best: float | Estimate, ends: tuple[float, float] | None) -> Figure:
    if isinstance(best, Estimate):
        return Figure(kind, best.best, best.low, best.high)
    low, high = ends or (best, best)
    return Figure(kind, best, low, high)


def metres(
    best: float | Estimate,
    ends: tuple[float, float] | None = None,
    bound: Bound = Bound.NEAREST,
) -> Length:
    """Return a length [m]."""
    made = _figure(Kind.LENGTH, best, ends)
    return made if bound is Bound.NEAREST else Figure(*_parts(made), bound)


def _parts(figure: Figure) -> tuple[Kind, float, float, float]:
    return figure.kind, figure.best, figure.low, figure.high


def degrees(best: float | Estimate, ends: tuple[float, float] | None = None) -> Temp:
    """Return a temperature [degC]."""
    return _figure(Kind.TEMPERATURE, best, ends)


def kelvins(best: float | Estimate, ends: tuple[float, float] | None = None) -> Diff:
    """Return a difference of temperatures [K]."""
    return _figure(Kind.DIFFERENCE, best, ends)


def watts(best: float | Estimate, ends: tuple[float, float] | None = None) -> Power:
    """Return a power [W]."""
    return _figure(Kind.POWER, best, ends)


def uvi(best: float | Estimate, ends: tuple[float, float] | None = None) -> Uvi:
    """Return a UV index."""
    return _figure(Kind.UVI, best, ends)


def share(best: float | Estimate, ends: tuple[float, float] | None = None) -> Share:
    """Return a fraction of one."""
    return _figure(Kind.SHARE, best, ends)


def hours(best: float | Estimate, ends: tuple[float, float] | None = None) -> Hours:
    """Return a time [h]."""
    return _figure(Kind.TIME, best, ends)


def angle(best: float | Estimate, ends: tuple[float, float] | None = None) -> Angle:
    """Return an angle [degree], such as a latitude."""
    return _figure(Kind.ANGLE, best, ends)


def plain_number(best: float | Estimate, ends: tuple[float, float] | None = None) -> Number:
    """Return a number without a unit, such as how many times as much."""
    return _figure(Kind.NUMBER, best, ends)


def lux(best: float | Estimate, ends: tuple[float, float] | None = None) -> Lux:
    """Return an illuminance [lx]."""
    return _figure(Kind.LUX, best, ends)


def lumens(best: float | Estimate, ends: tuple[float, float] | None = None) -> Lumens:
    """Return a flux of light [lm]."""
    return _figure(Kind.LUMENS, best, ends)


@dataclass(frozen=True, slots=True)
class Digits:
    """A plain number with as many decimals as it is told with at most."""

    value: float
    decimals: int


@dataclass(frozen=True, slots=True)
class Name:
    """A thing with a name in every language, such as ``animal-corn-snake``.

    ``own`` is the name that a group gave to a thing of its own: it is said as it is.
    """

    key: str
    own: str = ""


@dataclass(frozen=True, slots=True)
class Moment:
    """A moment that a clock shows in ``zone``; a front may show it on the reader's own clock."""

    at: datetime
    zone: str


@dataclass(frozen=True, slots=True)
class Say:
    """A message to be said, with the facts that it may use."""

    id: str
    facts: Any = None

    @classmethod
    def by(cls, family: str, member: Enum, facts: Any = None) -> "Say":
        """Return the message of a family for a member of an enum."""
        return cls(f"{family}-{member.name.lower()}", facts)

    @classmethod
    def of(cls, family: str, *keys: str, facts: Any = None) -> "Say":
        """Return the message of a family for keys of the data, such as an animal's."""
        return cls("-".join((family, *keys)), facts)


class Says:
    """Makes the messages of one question about its facts: ``Says("night", facts)("title")``."""

    __slots__ = ("_facts", "_question")

    def __init__(self, question: str, facts: Any) -> None:
        self._question, self._facts = question, facts

    def __call__(self, what: str) -> Say:
        """Return a message of the question."""
        return Say(f"{self._question}-{what}", self._facts)

    def by(self, family: str, member: Enum) -> Say:
        """Return the message of a family for a member of an enum, such as ``head-too_warm``."""
        return Say.by(f"{self._question}-{family}", member, self._facts)
