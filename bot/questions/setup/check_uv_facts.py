"""The UV of a set-up as facts: what is wanted, what was read or worked out, what is missing."""

from dataclasses import dataclass
from enum import Enum, auto

from bot.facts import Bound, Length, Name, Say, Uvi, metres, uvi
from bot.language.hearing import FactName
from bot.language.quantities import Measure
from bot.language.uv_lamps import UvLamp
from bot.queries.options import OwnTube
from bot.questions.setup.check_cases import length_said
from bot.questions.setup.check_parts import Missing
from bot.questions.setup.told import Said, SetUpTold
from bot.questions.shared import known_by
from bot.saved.group import Own
from calc.animal import Animal, Subject
from calc.judgement import Verdict
from calc.uv.placement import COMFORTABLE_MINIMUM_M

__all__ = [
    "From",
    "UvBare",
    "UvMeter",
    "UvUnjudged",
    "UvWish",
    "UvWorked",
    "missing_of",
    "uv_wish",
]


class From(Enum):
    """From where a distance was told."""

    BACK = auto()
    PERCH = auto()
    UNSAID = auto()


@dataclass(frozen=True, slots=True)
class UvWish:
    """The UV index that is wanted, and how that is known; ``unchecked``: from memory alone."""

    wanted: Uvi
    known: Say
    source: str
    unchecked: bool

    @property
    def ends(self) -> tuple[float, float]:
        """Return both ends of the range."""
        return self.wanted.low, self.wanted.high


@dataclass(frozen=True, slots=True)
class UvMeter:
    """A UV index that a meter shows, judged."""

    uvi: Uvi
    wanted: Uvi
    known: Say
    verdict: Verdict
    above: bool


@dataclass(frozen=True, slots=True)
class UvWorked:
    """A UV index worked out of tube and distance, for every case that was not ruled out.

    ``verdict`` is None where the cases disagree; ``one`` where there is only one of them; ``near``
    where the tube is too close whatever its UV; ``longer`` where it would be too strong if it
    is a longer one.
    """

    uvi: Uvi
    one: bool
    at: Length
    told_from: From
    tubes: int
    across: bool
    aged: bool
    near: bool
    longer: bool
    wanted: Uvi
    known: Say
    verdict: Verdict | None
    above: bool


@dataclass(frozen=True, slots=True)
class UvUnjudged:
    """A UV index of an animal whose range is not known."""

    animal: Name
    uvi: Uvi | None
    at: Length | None


@dataclass(frozen=True, slots=True)
class UvBare:
    """A lamp that has no figures."""

    kind: UvLamp
    wanted: Uvi
    known: Say
    nearest: Length
    source: str

    @classmethod
    def of(cls, wish: UvWish, kind: UvLamp) -> "UvBare":
        """Return a lamp of a kind that has no figures."""
        nearest = metres(COMFORTABLE_MINIMUM_M, bound=Bound.AT_LEAST)
        return cls(kind, wish.wanted, wish.known, nearest, wish.source)


def uv_wish(animal: Animal, own: Own) -> UvWish | None:
    """Return what is wanted for an animal, if that is known."""
    target = animal.uvi
    if target is None:
        return None
    known = known_by(animal, Subject.UVI, target, own)
    return UvWish(
        uvi(target.low, (target.low, target.high)), known, target.source, target.is_unchecked
    )


def missing_of(
    told: SetUpTold, distance: tuple[FactName, Said[Measure]] | None
) -> tuple[Missing, ...]:
    """Return what nobody told of the tube, what tells most first."""
    # The readings of a group's own lamp hold what is behind it and how long it is.
    is_own = told.tube is not None and isinstance(told.tube.value, OwnTube)
    lacks = {
        Missing.TUBE: told.tube is None,
        Missing.DISTANCE: distance is None,
        Missing.REFLECTOR: told.reflector is None and not is_own,
        Missing.SCREEN: told.screen is None,
        Missing.TUBE_LENGTH: bool(
            told.tube and not is_own and distance and length_said(told).others_m
        ),
    }
    return tuple(missing for missing, is_so in lacks.items() if is_so)
