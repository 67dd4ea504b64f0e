"""What a lamp's class tells beside its readings: something where they are weak, else nothing."""

from dataclasses import replace
from math import exp, log, sqrt

from calc.uncertainty import Doubt
from calc.uv.evidence import NINE_IN_TEN
from calc.uv.lamp import Lamp, OwnConstant, lamp_constant
from calc.uv.lamp_unknowns import class_spread
from calc.uv.meter import METER_DOUBT

__all__ = ["lamp_with_class", "with_class"]


def lamp_with_class(lamp: Lamp, named: Lamp) -> Lamp:
    """Return a lamp by its readings, at each of its lengths, together with what its class gives."""
    if not isinstance(lamp.own, OwnConstant):
        return lamp
    others = tuple(
        lamp_with_class(other, replace(named, lit_length_m=other.lit_length_m))
        for other in lamp.may_be
    )
    return replace(lamp, own=with_class(lamp.own, named), may_be=others)


def with_class(own: OwnConstant, named: Lamp) -> OwnConstant:
    """Weigh what weak readings leave open of a lamp's constant together with its class.

    ln C = ln C₁ + s (ln C₂ - ln C₁), s = x/(x + v₂ max(1, z²)); x the variance of the readings
    beyond that of a careful one, v₂ that of the class, z how many deviations lie between them

    Parameters
    ----------
    own : constant [UVI m] by the readings alone
    named : the lamp as named: strength, fixture, length and age count

    Returns
    -------
    OwnConstant
        Constant [UVI m] with its doubt, never wider than before.

    Notes
    -----
    A careful reading outdoes the class and stays as it is, whatever lamp was named. A lamp unlike
    its class is believed by its readings. What they were taken through stays.
    Source: uv_lamp_judgement; student_posterior; uv_meter_judgement.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> named = Lamp(12.0, Fixture.POLISHED)
    >>> weak = OwnConstant(1.2, Doubt("readings", 1.5, "uv_meter_judgement"))
    >>> found = with_class(weak, named)
    >>> 1.2 < found.constant_uvi_m < lamp_constant(named), found.doubt.factor < 1.5
    (True, True)
    """
    variance = _variance(own.doubt.factor)
    open_yet = variance - _CAREFUL
    if open_yet <= 0.0:
        return own
    spread = class_spread(named)
    before = log(lamp_constant(replace(named, own=None, age_s=None))) + spread.mean
    read = log(own.constant_uvi_m)
    apart = (read - before) ** 2 / (variance + spread.variance)
    share = open_yet / (open_yet + spread.variance * max(1.0, apart))
    left = _CAREFUL + open_yet * (1.0 - share)
    doubt = Doubt(own.doubt.name, exp(NINE_IN_TEN * sqrt(left)), own.doubt.source)
    return replace(own, constant_uvi_m=exp(read + share * (before - read)), doubt=doubt)


def _variance(factor: float) -> float:
    return (log(factor) / NINE_IN_TEN) ** 2


# One reading of a UVI of 2 or more, with what its meter may be off.
_CAREFUL = _variance(1.10) + _variance(METER_DOUBT.factor)
