"""What is not known of a lamp's UVI, cause by cause, each with how it is known and its source.

None of it is a correction: no ageing or warm-up curve is assumed, because none with a source was
found. The best value is a tube of the shortest standard length, just burnt in, in good order; what
is not known mostly lies below that. The size of a doubt without a source is our judgement, and its
source says so.
"""

from enum import StrEnum, auto
from functools import cache
from math import exp, sqrt

import numpy as np

from calc.uncertainty import Estimate
from calc.unknowns import (
    NINE_IN_TEN,
    Between,
    Cases,
    Effect,
    Factor,
    Known,
    Spread,
    Unknown,
    Whole,
    combine,
)
from calc.uv.class_fit import ASSUMED_LIT_M, class_of_length
from calc.uv.lamp import (
    FITTED_STRENGTHS_PERCENT,
    NEAREST_M,
    AgeBand,
    Fixture,
    Lamp,
    OwnConstant,
    OwnPoint,
    age_band,
    other_lengths,
    uvi_at,
)
from calc.uv.lengths import LengthKnown
from calc.uv.screen import NoScreen, Screen
from calc.uv.tube import STANDARD_T5_HO

__all__ = [
    "LENGTH_WEIGHTS",
    "Cause",
    "class_spread",
    "length_effect",
    "length_weights",
    "own_estimate",
    "screen_effects",
    "unknowns_of",
    "uvi_estimate",
]

LENGTH_WEIGHTS = (0.3, 0.3, 0.3, 0.1)
"""How often a tube of which no length is told is each of the standard ones, the shortest first.

An assumption, no count was found; it is also taken for the tubes behind the distance rows.
Source: uv_rules_length.
"""

_TAPE_M = 0.01
_WEIGHT_OF = dict(zip((tube.lit_length_m for tube in STANDARD_T5_HO), LENGTH_WEIGHTS, strict=True))
# So much likelier than otherwise is the length that suits a box. Source: uv_rules_length.
_INFERRED = 4.0


class Cause(StrEnum):
    """Why a UVI may be off."""

    LAMP = auto()
    CLASS = auto()
    RULES = auto()
    LABEL = auto()
    FIXTURE = auto()
    AGE = auto()
    TEMPERATURE = auto()
    TAPE = auto()
    SCREEN = auto()
    READINGS = auto()
    SPREAD = auto()
    LENGTH = auto()
    GROUP = auto()


_LAMP = Effect(Unknown(Cause.LAMP, Known.UNKNOWN, Factor(1.25), "uv_lamp_judgement"))
_LABEL = Effect(Unknown(Cause.LABEL, Known.UNKNOWN, Factor(1.15), "uv_class_strengths"))
_FIXTURE = Effect(Unknown(Cause.FIXTURE, Known.TOLD, Between(0.94, 1.07), "iaeel1993"))
_TEMPERATURE = Effect(Unknown(Cause.TEMPERATURE, Known.UNKNOWN, Between(0.95, 1.05), "nlpip2002"))
# Over the output after 100 hours, the steepest fall behind it.
_AGES: dict[AgeBand, tuple[Known, Spread, str]] = {
    AgeBand.UNKNOWN: (Known.UNKNOWN, Between(0.6, 1.1), "sunbed_end_of_life"),
    AgeBand.BURNING_IN: (Known.TOLD, Between(1.0, 1.3), "sunbed_end_of_life"),
    AgeBand.SETTLED: (Known.TOLD, Between(0.8, 1.0), "adamse_britz1992"),
    AgeBand.AGEING: (Known.TOLD, Between(0.65, 0.9), "sunbed_end_of_life"),
    AgeBand.OLD: (Known.TOLD, Between(0.4, 0.85), "mcginley1998"),
}


def unknowns_of(lamp: Lamp, distance_m: float, screen: Screen) -> Whole:
    """Combine why the UVI of a lamp at a place may be off.

    A lamp with its own constant keeps what its readings left open, the tape and the screen; a
    screen that lies in both the readings and the use drops out.

    Parameters
    ----------
    lamp : the tube
    distance_m : tube to back [m], 0.05 to 3
    screen : what lies between

    Returns
    -------
    Whole
        Spread of the true UVI over ``uvi_at`` [1].

    Notes
    -----
    Sizes without a source are our judgement and say so in their source.
    Source: uv_lamp_judgement; uv_class_strengths; uv_rules_length; uv_distance_rows; iaeel1993;
    nlpip2002; tape_measure; uv_screen_judgement; sunbed_end_of_life; mcginley1998;
    adamse_britz1992; t5_lengths.

    Examples
    --------
    >>> whole = unknowns_of(Lamp(12.0, Fixture.POLISHED), 0.3, NoScreen())
    >>> print(*(effect.unknown.name for effect in whole.effects), sep=", ")
    tape, lamp, class, rules, fixture, temperature, age
    """
    place = (
        _tape(lamp, distance_m, screen),
        *_length(lamp, distance_m, screen),
        *screen_effects(screen),
    )
    if lamp.own is not None:
        return combine((*place, *_of_own(lamp.own, distance_m)))
    return combine((*place, *class_spread(lamp).effects))


def class_spread(lamp: Lamp) -> Whole:
    """Return what is not known of a lamp's constant by its class, the same at every distance."""
    if lamp.group is not None:
        return _of_group(lamp.group.spread, age_band(lamp.age_s))
    fitted = lamp.strength_percent in FITTED_STRENGTHS_PERCENT
    return _of_class(lamp.fixture, age_band(lamp.age_s), fitted=fitted)


def uvi_estimate(lamp: Lamp, distance_m: float, screen: Screen) -> Estimate:
    """Return the UVI [1] at a distance [m] with its range, as ``uvi_at`` and ``unknowns_of``."""
    return unknowns_of(lamp, distance_m, screen).around(uvi_at(lamp, distance_m, screen))


def own_estimate(own: OwnConstant | OwnPoint) -> Estimate:
    """Return a tube's own constant [UVI m] or a small lamp's strength [UVI m²] with its range."""
    if isinstance(own, OwnPoint):
        whole = combine(_of_own(own, own.source.around_m))
        return whole.around(own.source.strength_uvi_m2)
    return combine(_of_own(own, NEAREST_M)).around(own.constant_uvi_m)


def screen_effects(screen: Screen, power: float = 1.0) -> tuple[Effect, ...]:
    """Return what is not known of the share that a screen passes; nothing without a screen.

    Source: uv_screen_judgement.
    """
    if isinstance(screen, NoScreen):
        return ()
    told = Unknown(Cause.SCREEN, Known.TOLD, Factor(1.15), "uv_screen_judgement", screen)
    return (Effect(told, power),)


def _of_own(own: OwnConstant | OwnPoint, distance_m: float) -> tuple[Effect, ...]:
    """What is not known of a lamp that was read, also through a screen."""
    doubt = own.doubt_at(distance_m)
    read = Effect(Unknown(Cause.READINGS, Known.TOLD, Factor(doubt.factor), doubt.source))
    through = (screen_effects(screen, -share) for screen, share in own.through)
    return (read, *(effect for effects in through for effect in effects))


@cache
def _of_class(fixture: Fixture, band: AgeBand, *, fitted: bool) -> Whole:
    known, spread, source = _AGES[band]
    return combine(
        (
            _LAMP,
            *_of_rows(fixture),
            *(() if fitted else (_LABEL,)),
            _FIXTURE,
            _TEMPERATURE,
            Effect(Unknown(Cause.AGE, known, spread, source)),
        )
    )


@cache
def _of_group(spread: float, band: AgeBand) -> Whole:
    known, age, source = _AGES[band]
    read = Unknown(Cause.GROUP, Known.TOLD, Factor(spread), "group_readings")
    return combine((Effect(read), Effect(Unknown(Cause.AGE, known, age, source))))


def _of_rows(fixture: Fixture) -> tuple[Effect, ...]:
    """What the distance rows leave open: their scatter, and the length of the tubes behind them."""
    plain = float(fixture is Fixture.PLAIN)
    fitted = np.array((1.0, plain, 0.0))
    variance = float(fitted @ class_of_length(ASSUMED_LIT_M).covariance @ fitted)
    scatter = Factor(exp(NINE_IN_TEN * sqrt(variance)))

    def constant(lit_m: float) -> float:
        found = class_of_length(lit_m)
        return float(found.constant_uvi_m * found.plain**plain)

    here = constant(ASSUMED_LIT_M)
    cases = Cases(tuple((constant(lit_m) / here, often) for lit_m, often in _WEIGHT_OF.items()))
    return (
        Effect(Unknown(Cause.CLASS, Known.INFERRED, scatter, "uv_distance_rows")),
        Effect(Unknown(Cause.RULES, Known.UNKNOWN, cases, "uv_rules_length")),
    )


def _length(lamp: Lamp, distance_m: float, screen: Screen) -> tuple[Effect, ...]:
    """What another length would give; by readings each length has its own constant."""
    if not lamp.may_be:
        return ()
    first, *others = (uvi_at(one, distance_m, screen) for one in (lamp, *other_lengths(lamp)))
    factors = (1.0, *(uvi / first for uvi in others))
    return (length_effect(lamp, tuple(zip(factors, length_weights(lamp), strict=True))),)


def length_weights(lamp: Lamp) -> tuple[float, ...]:
    """Return the weight [1] of the length a lamp is taken to have, then of each it may have.

    Source: uv_rules_length.
    """
    likely = lamp.length_known is LengthKnown.FROM_BOX
    first = _weight(lamp) * (_INFERRED if likely else 1.0)
    return (first, *(_weight(other) for other in lamp.may_be))


def length_effect(lamp: Lamp, cases: tuple[tuple[float, float], ...]) -> Effect:
    """Return what the untold length does to a figure: the factors [1] with their weights."""
    likely = lamp.length_known is LengthKnown.FROM_BOX
    known = Known.INFERRED if likely else Known.UNKNOWN
    return Effect(Unknown(Cause.LENGTH, known, Cases(cases), "uv_rules_length"))


def _weight(lamp: Lamp) -> float:
    return _WEIGHT_OF.get(lamp.lit_length_m, max(LENGTH_WEIGHTS))


def _tape(lamp: Lamp, distance_m: float, screen: Screen) -> Effect:
    nearer = max(distance_m - _TAPE_M, NEAREST_M)
    factor = uvi_at(lamp, nearer, screen) / uvi_at(lamp, distance_m, screen)
    return Effect(Unknown(Cause.TAPE, Known.TOLD, Factor(max(1.0, factor)), "tape_measure"))
