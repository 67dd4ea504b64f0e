"""How far the UVI of a lamp may be off, cause by cause, each with its source.

Doubts are factors, never corrections: no ageing or warm-up curve is assumed, because none with
a source was found. The size of a doubt without a source is our judgement, and its source says so.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum

from calc.uncertainty import Doubt, Estimate, combined_factor
from calc.uv.lamp import (
    FITTED_STRENGTHS_PERCENT,
    NEAREST_M,
    AgeBand,
    Lamp,
    age_band,
    other_lengths,
    uvi_at,
)
from calc.uv.screen import FlatScreen, NoScreen, Screen, Weave

__all__ = ["Cause", "LampDoubts", "doubts_for", "screen_doubts", "uvi_by_length", "uvi_estimate"]

_TAPE_M = 0.01


class Cause(StrEnum):
    """Why a UVI may be off."""

    LAMP = "lamp"
    LABEL = "label"
    FIXTURE = "fixture"
    AGE = "age"
    BURN_IN = "burn-in"
    TEMPERATURE = "temperature"
    TAPE = "tape"
    SCREEN = "screen"
    READINGS = "readings"
    SPREAD = "spread"
    LENGTH = "length"


@dataclass(frozen=True, slots=True)
class LampDoubts:
    """The doubts of a UVI: those that go both ways, those that only lower or only raise it."""

    both: tuple[Doubt, ...]
    lower: tuple[Doubt, ...] = ()
    upper: tuple[Doubt, ...] = ()

    def __iter__(self) -> Iterator[Doubt]:
        yield from (*self.both, *self.lower, *self.upper)

    def around(self, best: float) -> Estimate:
        """Widen a best value, to each side by the doubts that lie there."""
        down = combined_factor((*self.both, *self.lower))
        up = combined_factor((*self.both, *self.upper))
        return Estimate(best / down, best, best * up)


_LAMP_DOUBT = Doubt(Cause.LAMP, 1.3, "uv_lamp_judgement")
_LABEL_DOUBT = Doubt(Cause.LABEL, 1.15, "uv_class_strengths")
_FIXTURE_DOUBT = Doubt(Cause.FIXTURE, 1.15, "uv_lamp_judgement")
_TEMPERATURE_DOUBT = Doubt(Cause.TEMPERATURE, 1.1, "nlpip2002")
_FLAT_SCREEN_DOUBT = Doubt(Cause.SCREEN, 1.1, "uv_screen_judgement")
_WEAVE_DOUBT = Doubt(Cause.SCREEN, 1.15, "uv_screen_judgement")
_AGE_LOWERS = {
    AgeBand.UNKNOWN: (Doubt(Cause.AGE, 1.43, "sunbed_end_of_life"),),
    AgeBand.BURNING_IN: (),
    AgeBand.SETTLED: (Doubt(Cause.AGE, 1.15, "adamse_britz1992"),),
    AgeBand.AGEING: (Doubt(Cause.AGE, 1.43, "sunbed_end_of_life"),),
    AgeBand.OLD: (Doubt(Cause.AGE, 2.0, "mcginley1998"),),
}
_AGE_RAISES = {
    AgeBand.UNKNOWN: (Doubt(Cause.BURN_IN, 1.15, "burn_in"),),
    AgeBand.BURNING_IN: (Doubt(Cause.BURN_IN, 1.3, "sunbed_end_of_life"),),
}


def doubts_for(lamp: Lamp, distance_m: float, screen: Screen) -> LampDoubts:
    """List why the UVI of a lamp at a place may be off, and by how much.

    Age only lowers a UVI and a lamp not burnt in only raises it, so the list has sides; no
    ageing curve is assumed. A lamp with its own constant keeps the doubts of its readings, the
    tape and the screen alone. An unknown length reaches to the longest tube that may be there.

    Parameters
    ----------
    lamp : the tube
    distance_m : tube to back [m], 0.05 to 3
    screen : what lies between

    Returns
    -------
    LampDoubts
        Doubts, each a factor [1].

    Notes
    -----
    Sizes without a source are our judgement and say so in their source.
    Source: uv_lamp_judgement; uv_class_strengths; nlpip2002; tape_measure;
    uv_screen_judgement; sunbed_end_of_life; mcginley1998; adamse_britz1992; burn_in; t5_lengths.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> names = [d.name for d in doubts_for(Lamp(12.0, Fixture.PLAIN), 0.3, NoScreen())]
    >>> print(*names, sep=", ")
    lamp, fixture, temperature, tape, age, burn-in
    """
    place = (_tape_doubt(lamp, distance_m, screen), *screen_doubts(screen))
    less, more = _length_doubts(lamp, distance_m, screen)
    if lamp.own is not None:
        return LampDoubts((lamp.own.doubt_at(distance_m), *place), less, more)
    labels = () if lamp.strength_percent in FITTED_STRENGTHS_PERCENT else (_LABEL_DOUBT,)
    band = age_band(lamp.age_s)
    return LampDoubts(
        both=(_LAMP_DOUBT, *labels, _FIXTURE_DOUBT, _TEMPERATURE_DOUBT, *place),
        lower=(*less, *_AGE_LOWERS.get(band, ())),
        upper=(*more, *_AGE_RAISES.get(band, ())),
    )


def uvi_by_length(lamp: Lamp, distance_m: float, screen: Screen) -> Estimate:
    """Return the UVI [1] at a distance [m], its range by the length of the tube alone."""
    best = uvi_at(lamp, distance_m, screen)
    found = [uvi_at(other, distance_m, screen) for other in other_lengths(lamp)]
    return Estimate(min([best, *found]), best, max([best, *found]))


def _length_doubts(
    lamp: Lamp, distance_m: float, screen: Screen
) -> tuple[tuple[Doubt, ...], tuple[Doubt, ...]]:
    """Return how much less and how much more a tube of another length may give."""
    if not lamp.may_be:
        return (), ()
    found = uvi_by_length(lamp, distance_m, screen)
    return _length_doubt(found.best / found.low), _length_doubt(found.high / found.best)


def _length_doubt(factor: float) -> tuple[Doubt, ...]:
    return (Doubt(Cause.LENGTH, factor, "t5_lengths"),) if factor > 1.0 else ()


def _tape_doubt(lamp: Lamp, distance_m: float, screen: Screen) -> Doubt:
    nearer = max(distance_m - _TAPE_M, NEAREST_M)
    factor = uvi_at(lamp, nearer, screen) / uvi_at(lamp, distance_m, screen)
    return Doubt(Cause.TAPE, max(1.0, factor), "tape_measure")


def screen_doubts(screen: Screen) -> tuple[Doubt, ...]:
    """Return the doubt of what a screen passes; none without a screen."""
    match screen:
        case NoScreen():
            return ()
        case FlatScreen():
            return (_FLAT_SCREEN_DOUBT,)
        case Weave():
            return (_WEAVE_DOUBT,)


def uvi_estimate(lamp: Lamp, distance_m: float, screen: Screen) -> Estimate:
    """Return the UVI [1] at a distance [m] with its range, as ``uvi_at`` and ``doubts_for``."""
    return doubts_for(lamp, distance_m, screen).around(uvi_at(lamp, distance_m, screen))
