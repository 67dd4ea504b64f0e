"""What a group keeps: its settings, and its own figures for lamps, screens and animals."""

from dataclasses import dataclass
from datetime import date, datetime
from enum import StrEnum
from hashlib import sha256
from itertools import pairwise
from typing import Annotated, Any, Self

from pydantic import AfterValidator, Field, PrivateAttr, model_validator
from pydantic_core import PydanticCustomError

from bot.language.quantities import Units
from bot.language.tongue import Tongue
from bot.saved.bounds import OwnSubject, bounds_of, check_bounds, limit_bounds
from bot.saved.own_lamps import OwnLamp
from bot.saved.pool import GroupClass, GroupFading
from bot.saved.values import (
    Kept,
    Line,
    Name,
    OwnBack,
    OwnLife,
    ScientificName,
    Zone,
    name_key,
    name_of,
    url_of,
)
from calc.animal import Subject
from calc.animals import animals, own_name, own_slug

__all__ = [
    "LIMITS_IN_ORDER",
    "MOST_ANIMALS",
    "MOST_CHANNELS",
    "MOST_LAMPS",
    "MOST_SCREENS",
    "MOST_TARGETS",
    "NOTHING_OWN",
    "UVI_ABOVE_ZERO",
    "AnimalSlug",
    "By",
    "Figure",
    "GuideUrl",
    "Own",
    "OwnAnimal",
    "OwnLamp",
    "OwnRange",
    "OwnScreen",
    "OwnSubject",
    "OwnTarget",
    "ServerSettings",
    "Shown",
    "bounds_of",
    "limit_bounds",
]

MOST_LAMPS = MOST_SCREENS = MOST_ANIMALS = 50
MOST_TARGETS = 200
MOST_CHANNELS = 500
_LEAST_UVI = 0.1
UVI_ABOVE_ZERO = "uvi_above_zero"
"""The kind of the error where a UV index to aim for is none."""
LIMITS_IN_ORDER = "limits_in_order"
"""The kind of the error where a limit of the night is over one of the day."""


class Shown(StrEnum):
    """Who sees the answers of a channel."""

    PRIVATE = "private"
    PUBLIC = "public"


def _listed(text: str) -> str:
    if text not in animals():
        raise ValueError("no animal of this name is known here")
    return text


def _slug(text: str) -> str:
    own = own_name(text)
    return _listed(text) if own is None else own_slug(name_of(own))


AnimalSlug = Annotated[str, AfterValidator(_slug)]
_ListedSlug = Annotated[str, AfterValidator(_listed)]
GuideUrl = Annotated[str, AfterValidator(url_of)]


class ServerSettings(Kept):
    """How a group wants to be answered; None leaves it to the asker."""

    units: Units | None = None
    animal: AnimalSlug | None = None
    guide_url: GuideUrl | None = None
    zone: Zone | None = None
    language: Tongue | None = None
    vets: Line | None = None
    helpers: int | None = Field(default=None, ge=0, lt=2**63)
    helper_role: int | None = Field(default=None, ge=0, lt=2**63)


class OwnScreen(Kept):
    """A screen of the group's own: the share [1] that it passes."""

    name: Name
    passes: float = Field(gt=0.0, le=1.0)
    set_on: date


class OwnTarget(Kept):
    """A target of the group's own for an animal: UVI [1], temperatures [degC], [m] or hours [h]."""

    animal: _ListedSlug
    subject: OwnSubject
    low: float
    best: float | None = None
    high: float
    set_on: date

    @model_validator(mode="after")
    def _in_order_and_in_bounds(self) -> Self:
        check_bounds(self.subject, self.low, self.best, self.high)
        return self


class OwnRange(Kept):
    """From where to where: UVI [1], temperatures [degC], a depth [m] or hours [h]."""

    low: float
    high: float


def _limit(name: str) -> Any:
    least, most = limit_bounds(name)
    return Field(default=None, ge=least, le=most)


class OwnAnimal(Kept):
    """An animal that the group added: what it wants, and what it may not have; None: not told.

    No limit may be milder than the mildest of any animal here.
    """

    name: Name
    scientific: ScientificName = ""
    wants: dict[OwnSubject, OwnRange] = Field(default_factory=dict)
    surface_limit_c: float | None = _limit("surface_limit_c")
    coolest_limit_c: float | None = _limit("coolest_limit_c")
    night_limit_c: float | None = _limit("night_limit_c")
    uvi_limit: float | None = Field(default=None, gt=0.0, le=limit_bounds("uvi_limit")[1])
    set_on: date
    back_m: OwnBack | None = None
    life: OwnLife | None = None

    @model_validator(mode="after")
    def _ranges_in_bounds(self) -> Self:
        for subject, span in self.wants.items():
            check_bounds(subject, span.low, None, span.high)
        uvi = self.wants.get(Subject.UVI)
        if uvi is not None and uvi.high < _LEAST_UVI:
            raise PydanticCustomError(
                UVI_ABOVE_ZERO,
                "a UV index to aim for is above 0; leave it out where none is wanted",
            )
        rising = (self.night_limit_c, self.coolest_limit_c, self.surface_limit_c)
        told = [limit for limit in rising if limit is not None]
        if any(lower >= higher for lower, higher in pairwise(told)):
            raise PydanticCustomError(
                LIMITS_IN_ORDER,
                "a limit of the night is below that of the coolest place, and both "
                "are below that of the surface",
            )
        return self


Figure = OwnLamp | OwnScreen | OwnTarget | OwnAnimal


class Own(Kept):
    """All of a group's own figures, as the answers consult them.

    ``classes`` and ``fading`` are what its keepers' readings say, once they say enough.
    They are compared by their version, a short text made once of all they hold: they are part of
    the key of every answer that is kept.
    """

    _version: str = PrivateAttr("")

    lamps: tuple[OwnLamp, ...] = ()
    screens: tuple[OwnScreen, ...] = ()
    targets: tuple[OwnTarget, ...] = ()
    animals: tuple[OwnAnimal, ...] = ()
    classes: tuple[GroupClass, ...] = ()
    fading: GroupFading | None = None

    @property
    def version(self) -> str:
        """A text that is the same for the same figures."""
        if not self._version:
            self._version = sha256(self.model_dump_json().encode()).hexdigest()
        return self._version

    def __eq__(self, other: object) -> bool:
        return self is other or (isinstance(other, Own) and self.version == other.version)

    def __hash__(self) -> int:
        return hash(self.version)

    @property
    def names(self) -> tuple[str, ...]:
        """The names of the group's own animals."""
        return tuple(x.name for x in self.animals)

    def animal(self, name: str) -> OwnAnimal | None:
        """Return the group's own animal of this name."""
        return next((x for x in self.animals if name_key(x.name) == name_key(name)), None)

    def knows(self, slug: str) -> bool:
        """Say whether an animal of this slug is known here, to all or to this group."""
        own = own_name(slug)
        return own is None or self.animal(own) is not None

    def lamp(self, name: str) -> OwnLamp | None:
        """Return the group's lamp of this name."""
        return next((x for x in self.lamps if name_key(x.name) == name_key(name)), None)

    def screen(self, name: str) -> OwnScreen | None:
        """Return the group's screen of this name."""
        return next((x for x in self.screens if name_key(x.name) == name_key(name)), None)

    def class_of(self, percent: float, reflector: str) -> GroupClass | None:
        """Return what the group's readings say of a class of tube, once they say enough."""
        for found in self.classes:
            if found.percent == percent and found.reflector == reflector:
                return found
        return None

    def targets_of(self, animal: str) -> tuple[OwnTarget, ...]:
        """Return the group's targets for the animal of this slug."""
        return tuple(x for x in self.targets if x.animal == animal)


NOTHING_OWN = Own.model_construct()


@dataclass(frozen=True, slots=True)
class By:
    """The moderator who changes something, and when."""

    who: int
    at: datetime
