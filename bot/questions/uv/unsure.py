"""What can be said of a tube while its fixture or its screen is not known: every case at once.

Words: ``unsure.ftl``.
"""

from dataclasses import dataclass
from enum import Enum, auto
from itertools import product

from bot.facts import Bound, Length, Say, Share, Uvi, metres, uvi
from bot.language import screens as typed
from bot.language.lamps import Fixture as TypedFixture
from bot.language.unsure import SomeMesh, Unsure
from bot.language.words import join_line
from bot.preferences import Context
from bot.queries.uv import DistanceQuery, UviQuery
from bot.questions.shared import limits_for
from bot.questions.uv.danger import uv_alarms
from bot.questions.uv.judged import mildest
from bot.questions.uv.lamp_asked import Wanted, lamp_asked, screen_asked, wanted_asked
from bot.questions.uv.shared import (
    Wish,
    WishedFor,
    between_told,
    wish_told,
)
from bot.questions.uv.tubes import (
    Tube,
    all_together,
    tube_told,
)
from bot.reply import Alarm
from bot.saved.group import NOTHING_OWN, Own
from calc.judgement import Verdict as Stands
from calc.uncertainty import Estimate
from calc.uv.lamp import Fixture, Lamp
from calc.uv.placement import (
    SAFE_MINIMUM_M,
    PlaceCheck,
    Placement,
    Verdict,
    check_place,
    feared,
    place,
    spot,
)
from calc.uv.screen import Screen

__all__ = ["UnsureWay", "Unsurely", "unsurely"]

# From a coarse mesh to a fine one; the middle one is the common insect screen.
_MESHES = (typed.Blocks(0.30, "30%"), typed.Blocks(0.45, "45%"), typed.Blocks(0.60, "60%"))
_NOTHING = typed.NoScreen("none")
# A start is rounded up by no more than this [m]: so much farther is where it is shown.
_SHOWN_AS_M = 0.0127


@dataclass(frozen=True, slots=True)
class _Case:
    """One way the set-up may be, with where the tube goes."""

    lamp: Lamp
    screen: Screen
    asked: typed.Screen
    placement: Placement


class Until(Enum):
    """What to do with a tube at a given place until more is known."""

    FIND_OUT = auto()
    LEAVE = auto()
    HANG = auto()


class Standing(Enum):
    """How a given place stands, as far as every way that it may be agrees."""

    ALIKE = auto()
    MAY_BE_ABOVE = auto()
    MAY_BE_BELOW = auto()
    BELOW_OR_ABOVE = auto()


@dataclass(frozen=True, slots=True)
class UnsureWay:
    """One way the set-up may be: where the tube goes then, or what it gives at a given place."""

    fixture: Fixture | None
    screen: Say
    span: Length | None
    verdict: Verdict
    there: Uvi | None
    judgement: Stands | None

    @property
    def judged(self) -> Say:
        """Return how it stands at a given place, or whether it fits anywhere, in a word or two."""
        if self.judgement is None:
            return Say.by("placed", self.verdict)
        return Say.by("verdict", self.judgement)


@dataclass(frozen=True, slots=True)
class Unsurely(WishedFor):
    """Every way a set-up may be, and ``start``, from where none of them is too strong.

    ``at`` is the place that was asked about; ``expect`` the UVI there, else that at the start;
    ``verdict`` the one that holds whichever way it is.
    """

    wish: Wish
    tube: Tube
    ways: tuple[UnsureWay, ...]
    start: Length | None
    ends: Length | None
    at: Length | None
    expect: Uvi | None
    standing: Standing | None
    verdict: Stands | None
    until: Until
    too_near: bool
    fixture_unknown: bool
    screen_unknown: bool
    some_mesh: bool
    again: str
    alarms: tuple[Alarm, ...]

    @property
    def differ(self) -> Share | None:
        """Return by how much tubes of its class differ in the group, where that is known."""
        return self.tube.group.differ if self.tube.group else None

    @property
    def least(self) -> Uvi | None:
        """Return the least UVI that it may be there."""
        return uvi(self.expect.low) if self.expect else None

    @property
    def most(self) -> Uvi | None:
        """Return the most UVI that it may be there."""
        return uvi(self.expect.high) if self.expect else None


def unsurely(query: DistanceQuery, context: Context) -> Unsurely:
    """Work out every way the set-up may be, and where none of them is too strong."""
    wanted = wanted_asked(query.animal, query.uvi, context)
    ends = wanted.low, wanted.high
    own = NOTHING_OWN if isinstance(query.behind, Unsure) else context.own
    ways = product(_reflectors(query), _screens(query))
    cases = [_case(query, *way, ends, own) for way in ways]
    at_m = query.distance.low if isinstance(query, UviQuery) else None
    start_m = _start_m(cases)
    place_m = start_m if at_m is None else at_m
    expect = None if place_m is None else _expected(cases, place_m)
    stands, verdict, checks = None, None, []
    if at_m is not None:
        limits = limits_for(query.animal, context)
        checks = [
            check_place(case.lamp, case.screen, at_m, *ends, limits, unchecked=wanted.unchecked)
            for case in cases
        ]
        stands, verdict = _standing(cases, at_m, wanted, checks)
    told: list[Stands | None] = [check.judged.verdict for check in checks]
    judged = told or [None] * len(cases)
    return Unsurely(
        wish=wish_told(wanted, context),
        tube=tube_told(cases[0].lamp, query.tube, query.lamp),
        ways=tuple(_way(*each, at_m) for each in zip(cases, judged, strict=True)),
        start=None if start_m is None else metres(start_m, bound=Bound.AT_LEAST),
        ends=_span(cases, start_m) if at_m is None else None,
        at=None if at_m is None else metres(at_m),
        expect=expect,
        standing=stands,
        verdict=verdict,
        until=_until(start_m, at_m),
        too_near=at_m is not None and at_m < SAFE_MINIMUM_M,
        fixture_unknown=isinstance(query.behind, Unsure),
        screen_unknown=isinstance(query.screen, Unsure),
        some_mesh=isinstance(query.screen, SomeMesh),
        again=_again(query),
        alarms=uv_alarms(_weakest(cases, at_m), query.animal, wanted.high, context),
    )


def _reflectors(query: DistanceQuery) -> tuple[TypedFixture | None, ...]:
    found = query.behind
    return tuple(TypedFixture) if isinstance(found, Unsure) else (found,)


def _screens(query: DistanceQuery) -> tuple[typed.Screen, ...]:
    match query.screen:
        case SomeMesh():
            return _MESHES
        case Unsure() | None | typed.Pane():
            return (_NOTHING, *_MESHES)
        case screen:
            return (screen,)


def _case(
    query: DistanceQuery,
    reflector: TypedFixture | None,
    screen: typed.Screen,
    wanted: tuple[float, float],
    own: Own,
) -> _Case:
    # Of a fixture that nobody knows the class is not known, which a group may have read.
    one = lamp_asked(query.tube, reflector, query.length, query.age, query.enclosure, own=own)
    lamp = all_together(one, query)
    between = screen_asked(screen)
    return _Case(lamp, between, screen, place(lamp, between, *wanted))


def _way(case: _Case, judgement: Stands | None, at_m: float | None) -> UnsureWay:
    span = None
    if case.placement.ends:
        near, start, far = (each.distance_m for each in case.placement.ends)
        span = metres(start, (near, far), Bound.INWARD)
    return UnsureWay(
        fixture=None if case.lamp.own else case.lamp.fixture,
        screen=Say("between-name", between_told(case.asked, case.screen)),
        span=span,
        verdict=case.placement.verdict,
        there=None if at_m is None else uvi(spot(case.lamp, at_m, case.screen).uvi),
        judgement=judgement,
    )


def _start_m(cases: list[_Case]) -> float | None:
    """Return the start of the strongest way, where it fits: there none is too strong."""
    if any(case.placement.verdict is Verdict.OUT_OF_RANGE for case in cases):
        return None
    starts = [ends[1].distance_m for case in cases if (ends := case.placement.ends)]
    starts += [mild_m for case in cases if (mild_m := case.placement.mild_m) is not None]
    return max(starts, default=None)


def _span(cases: list[_Case], start_m: float | None) -> Length | None:
    if start_m is None:
        return None
    fitting = [ends for case in cases if (ends := case.placement.ends)]
    low = min((e[0].distance_m for e in fitting), default=start_m)
    return metres(start_m, (low, max((start_m, *(e[2].distance_m for e in fitting)))))


def _expected(cases: list[_Case], distance_m: float) -> Uvi:
    low, high = _ends(cases, distance_m)
    return uvi((low * high) ** 0.5, (low, high))


def _ends(cases: list[_Case], distance_m: float) -> tuple[float, float]:
    found = [spot(case.lamp, distance_m, case.screen).uvi for case in cases]
    return min(e.low for e in found), max(e.high for e in found)


def _standing(
    cases: list[_Case], at_m: float, wanted: Wanted, checks: list[PlaceCheck]
) -> tuple[Standing, Stands | None]:
    one = mildest([check.judged for check in checks])
    long = any(check.may_be_above for check in checks)
    if one and not (long and one.is_fine):
        return Standing.ALIKE, one.verdict
    if long or any(check.judged.is_likely_above for check in checks):
        return Standing.MAY_BE_ABOVE, None
    strong = _ends(cases, at_m)[1] > wanted.high
    return Standing.BELOW_OR_ABOVE if strong else Standing.MAY_BE_BELOW, None


def _until(start_m: float | None, at_m: float | None) -> Until:
    if start_m is None:
        return Until.FIND_OUT
    stays = at_m is not None and 0.0 <= at_m - start_m < _SHOWN_AS_M
    return Until.LEAVE if stays else Until.HANG


def _weakest(cases: list[_Case], at_m: float | None) -> Estimate | None:
    """Return the UV index of the weakest way at a place that is not too near by itself."""
    if at_m is None or at_m < SAFE_MINIMUM_M:
        return None
    found = (feared(case.lamp, spot(case.lamp, at_m, case.screen), case.screen) for case in cases)
    return min(found, key=lambda estimate: estimate.best)


def _again(query: DistanceQuery) -> str:
    """Return what to ask once the rest is known, as it is typed."""
    given = {
        "tube": query.tube.text if query.tube else "",
        "reflector": "polished" if isinstance(query.behind, Unsure) else query.behind,
        "screen": "45%" if isinstance(query.screen, Unsure) else query.screen and query.screen.text,
        "animal": query.animal,
        "tubes": str(query.tubes) if query.tubes > 1 else "",
    }
    return join_line("distance", {name: str(text) for name, text in given.items() if text})
