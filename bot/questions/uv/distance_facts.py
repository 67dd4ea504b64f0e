"""The facts of the distance: a range, one for every length of the tube, or why there is none."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import Enum, auto

from bot.facts import Bound, Figure, Length, Name, Say, Share, Uvi, metres, share, uvi
from bot.questions.uv.asked_uv import Asked, At, at_spot
from bot.questions.uv.instead import Other, instead_of, stronger_over_screen, weaker_ones
from bot.questions.uv.shared import doubts_told, passing_estimate, settled_by
from bot.questions.uv.tubes import Whose, length_sources
from calc.uv.lamp import other_lengths, uvi_at
from calc.uv.lamp_unknowns import unknowns_of
from calc.uv.lengths import DARK_ENDS_M
from calc.uv.placement import (
    COMFORTABLE_MINIMUM_M,
    FARTHEST_PLACE_M,
    SAFE_MINIMUM_M,
    Placement,
    Reason,
    Spot,
    Verdict,
    place,
)
from calc.uv.start import Advice

__all__ = [
    "Advised",
    "ByLength",
    "NoPlace",
    "OfLength",
    "Placed",
    "by_length",
    "no_place",
    "placed",
]

_SOURCES = ("keitz1971", "uv_distance_rows")
_AN_INCH_M = 0.0254


class Advised(Enum):
    """What is said of a range: start here, start here and measure, or take a weaker tube."""

    HANG = auto()
    MEASURE = auto()
    WEAKER = auto()


@dataclass(frozen=True, slots=True)
class Placed:
    """Where a tube goes; ``held_for_length``: the start is safe for the longest it may be."""

    asked: Asked
    says: Advised
    start: Length
    span: Length
    expected: tuple[At, ...]
    held_for_length: bool
    held_near: bool
    held_far: bool
    nearest: Length
    farthest: Length
    passes: Share | None
    better: tuple[Other, ...]
    stronger: tuple[Other, ...]
    why: tuple[Say, ...]
    sources: tuple[str, ...]

    @property
    def animal(self) -> Name | None:
        """Return whose tube it is, where the range is an animal's."""
        return self.asked.wish.animal

    @property
    def wanted(self) -> Uvi:
        """Return the UVI to aim at."""
        return self.asked.wish.wanted

    @property
    def short_only(self) -> bool:
        """Say whether the near end is for a short tube alone, as its length is not known."""
        return self.asked.tube.any_length and self.asked.tube.whose is Whose.CLASS

    @property
    def own_meter(self) -> bool:
        """Say whether the asker has a meter."""
        return self.asked.read.fit is not None


@dataclass(frozen=True, slots=True)
class OfLength:
    """A tube of one length, and where it goes; ``verdict`` says why it has no place."""

    long: Length
    begin: Length | None
    away: Length | None
    verdict: Verdict
    good: bool


@dataclass(frozen=True, slots=True)
class ByLength:
    """Every length that the tube may have, the shortest first."""

    asked: Asked
    each: tuple[OfLength, ...]
    weaker: tuple[Other, ...]
    blocked: float
    sources: tuple[str, ...]

    @property
    def animal(self) -> Name | None:
        """Return whose tube it is, where the range is an animal's."""
        return self.asked.wish.animal

    @property
    def first(self) -> OfLength | None:
        """Return the shortest that has a good place, if there is one."""
        return next((one for one in self.each if one.good), None)


@dataclass(frozen=True, slots=True)
class NoPlace:
    """Why a tube has no place; ``more`` is what an animal that lifts itself by an inch gets."""

    asked: Asked
    verdict: Verdict
    safe: Length
    safe_uvi: Uvi
    farthest: Length
    would: Length
    inch: Length
    more: Share
    more_uvi: Uvi
    instead: tuple[Other, ...]
    sources: tuple[str, ...]

    @property
    def animal(self) -> Name | None:
        """Return whose tube it is, where the range is an animal's."""
        return self.asked.wish.animal

    @property
    def wanted(self) -> Uvi:
        """Return the UVI to aim at."""
        return self.asked.wish.wanted


def placed(asked: Asked, near: Spot, start: Spot, far: Spot) -> Placed:
    """Return where a tube goes."""
    lamp, screen, read = asked.lamp, asked.screen, asked.read
    reasons = asked.placement.reasons
    whole = unknowns_of(lamp, start.distance_m, screen)
    settled = settled_by(whole, contradict=read.contradicts)
    ends = near.distance_m, far.distance_m
    starts = metres(start.distance_m, ends, Bound.START)
    says = _says(asked)
    told = share(passing_estimate(start, screen)) if asked.screen_told else None
    return Placed(
        asked=asked,
        says=says,
        start=starts,
        span=metres(start.distance_m, ends, Bound.INWARD),
        expected=(
            at_spot(near, metres(near.distance_m, bound=Bound.AT_LEAST)),
            at_spot(start, starts),
            at_spot(far, metres(far.distance_m, bound=Bound.AT_MOST)),
        ),
        held_for_length=Reason.START_HELD_FOR_LENGTH in reasons,
        held_near=Reason.NEAR_END_HELD_FOR_COMFORT in reasons,
        held_far=Reason.FAR_END_HELD_AT_LIMIT in reasons,
        nearest=metres(COMFORTABLE_MINIMUM_M),
        farthest=metres(FARTHEST_PLACE_M),
        passes=told,
        better=weaker_ones(lamp, screen, asked.wanted, asked.groups)
        if says is Advised.WEAKER
        else (),
        stronger=stronger_over_screen(lamp, screen, asked.placement, asked.wanted, asked.groups),
        why=doubts_told(whole, settled),
        sources=(*asked.wish.sources, *_SOURCES, *length_sources(asked.tube), *whole.sources),
    )


def _says(asked: Asked) -> Advised:
    """Return what can honestly be said; readings in doubt are told by themselves."""
    if asked.read.cannot_be:
        return Advised.HANG
    advice = asked.placement.advice
    if advice is Advice.WEAKER_TUBE:
        return Advised.WEAKER
    return Advised.MEASURE if advice is Advice.MEASURE else Advised.HANG


def by_length(asked: Asked) -> ByLength:
    """Return where a tube goes at every length that it may have."""
    each = tuple(_of_lengths(asked))
    weaker = weaker_ones(asked.lamp, asked.screen, asked.wanted, asked.groups)
    return ByLength(
        asked=asked,
        each=each,
        weaker=() if any(one.good for one in each) else weaker,
        blocked=asked.placement.at_safe_minimum.screen_transmission,
        sources=(*asked.wish.sources, *_SOURCES, *length_sources(asked.tube)),
    )


def _of_lengths(asked: Asked) -> Iterator[OfLength]:
    lamp = asked.lamp
    every = (replace(lamp, may_be=()), *other_lengths(lamp))
    for one in sorted(every, key=lambda each: each.lit_length_m):
        placement = place(one, asked.screen, *asked.wanted)
        far = placement.advice is Advice.WEAKER_TUBE
        yield OfLength(
            long=metres(one.lit_length_m + DARK_ENDS_M),
            begin=_figure(placement, Bound.START),
            away=_figure(placement, Bound.INWARD),
            verdict=placement.verdict,
            good=placement.ends is not None and not far,
        )


def _figure(placement: Placement, bound: Bound) -> Figure | None:
    if placement.ends is None:
        return None
    near, start, far = (spot.distance_m for spot in placement.ends)
    return metres(start, (near, far), bound)


def no_place(asked: Asked) -> NoPlace:
    """Return why a tube has no place, and what to use instead."""
    lamp, screen, placement = asked.lamp, asked.screen, asked.placement
    start_m = placement.start.distance_m if placement.start else SAFE_MINIMUM_M
    nearer_m = max(start_m - _AN_INCH_M, SAFE_MINIMUM_M / 2)
    nearer_uvi = uvi_at(lamp, nearer_m, screen)
    return NoPlace(
        asked=asked,
        verdict=placement.verdict,
        safe=metres(SAFE_MINIMUM_M),
        safe_uvi=uvi(placement.at_safe_minimum.uvi),
        farthest=metres(FARTHEST_PLACE_M),
        would=metres(start_m),
        inch=metres(_AN_INCH_M),
        more=share(nearer_uvi / uvi_at(lamp, start_m, screen) - 1.0),
        more_uvi=uvi(nearer_uvi),
        instead=instead_of(lamp, screen, asked.wanted, asked.groups),
        sources=(*asked.wish.sources, *_SOURCES, "nearest_distance"),
    )
