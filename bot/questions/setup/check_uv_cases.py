"""The UV of a set-up where what was not said decides: a verdict for each way it may be.

The first of these ways to part the cases is taken in which each part has one verdict: by what is
behind the tube, by whether there is mesh, by how much it blocks, then by two of them. Of many parts
only the strongest and the weakest are told.
"""

from collections.abc import Callable, Hashable, Sequence
from dataclasses import dataclass
from enum import Enum, auto
from math import sqrt

from bot.facts import Say, Uvi, uvi
from bot.language.lamps import Fixture
from bot.language.screens import Blocks, NoScreen
from bot.questions.setup.check_cases import Case
from bot.questions.uv.judged import mildest
from calc.judgement import Verdict

__all__ = ["UvByCase", "UvCase", "by_case"]

_MOST_TOLD = 3


class Where(Enum):
    """A way in which a set-up may be."""

    MIRROR = auto()
    WHITE = auto()
    OPEN = auto()
    MESH = auto()
    LIGHT_MESH = auto()
    USUAL_MESH = auto()
    DENSE_MESH = auto()


class Split(Enum):
    """What nobody said, and what decides."""

    BEHIND = auto()
    BETWEEN = auto()
    BOTH = auto()


@dataclass(frozen=True, slots=True)
class UvCase:
    """The verdict for the way in which the set-up may be."""

    where: tuple[Say, ...]
    uvi: Uvi
    verdict: Verdict


@dataclass(frozen=True, slots=True)
class UvByCase:
    """What decides, and the verdicts, the strongest first."""

    split: Split
    cases: tuple[UvCase, ...]

    @property
    def told(self) -> tuple[Say, ...]:
        """Return a sentence for each way."""
        return tuple(Say("check-case", case) for case in self.cases)


_Way = tuple[Where, ...]
_MESHES = {0.30: Where.LIGHT_MESH, 0.45: Where.USUAL_MESH, 0.60: Where.DENSE_MESH}


def _behind(case: Case) -> _Way:
    return (Where.MIRROR if case.fixture is Fixture.POLISHED else Where.WHITE,)


def _between(case: Case) -> _Way:
    return (Where.OPEN if isinstance(case.screen, NoScreen) else Where.MESH,)


def _of_mesh(case: Case) -> _Way:
    screen = case.screen
    known = _MESHES.get(round(screen.fraction, 2)) if isinstance(screen, Blocks) else None
    return (known,) if known else _between(case)


_SPLITS: tuple[tuple[Split, Callable[[Case], _Way]], ...] = (
    (Split.BEHIND, _behind),
    (Split.BETWEEN, _between),
    (Split.BETWEEN, _of_mesh),
    (Split.BOTH, lambda case: (*_between(case), *_behind(case))),
    (Split.BOTH, lambda case: (*_of_mesh(case), *_behind(case))),
)


def by_case(cases: Sequence[Case]) -> UvByCase | None:
    """Return the verdict for each way the set-up may be; None where they are not told apart."""
    for split, way in _SPLITS:
        parts = _parted(cases, way)
        found = [case for where, some in parts if (case := _told(where, some)) is not None]
        if len(found) == len(parts) > 1:
            told = found if len(found) <= _MOST_TOLD else [found[0], found[-1]]
            return UvByCase(split, tuple(told))
    return None


def _parted(cases: Sequence[Case], way: Callable[[Case], _Way]) -> list[tuple[_Way, list[Case]]]:
    """Return the cases by their way, the strongest first."""
    parts: dict[Hashable, tuple[_Way, list[Case]]] = {}
    for case in cases:
        parts.setdefault(way(case), (way(case), []))[1].append(case)
    return sorted(parts.values(), key=lambda part: -max(c.check.here.uvi.best for c in part[1]))


def _told(where: _Way, cases: list[Case]) -> UvCase | None:
    """Return the verdict for a way, if all cases agree, with the middle of their UV indices."""
    judged = mildest([case.check.judged for case in cases])
    if judged is None:
        return None
    found = [case.check.here.uvi for case in cases]
    middle = sqrt(min(one.best for one in found) * max(one.best for one in found))
    ends = (min(one.low for one in found), max(one.high for one in found))
    return UvCase(tuple(map(_said, where)), uvi(middle, ends), judged.verdict)


def _said(where: Where) -> Say:
    return Say.by("check-where", where)
