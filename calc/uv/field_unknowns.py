"""What is not known of the UVI beside a tube: that of the lamp, and how a reflector spreads it."""

from collections.abc import Sequence
from math import hypot, log, sqrt

from calc.unknowns import Effect, Factor, Known, Unknown, Whole, combine
from calc.uv.lamp import FARTHEST_M, NEAREST_M
from calc.uv.lamp_unknowns import Cause, unknowns_of
from calc.uv.section import HungTube, uvi_field

__all__ = ["field_unknowns", "place_unknowns"]

_SIDEWAYS = Unknown(Cause.SPREAD, Known.UNKNOWN, Factor(1.3), "uv_sideways_judgement")
# A place level with a tube counts as this far below it, and a back as this far at least.
_LEVEL_M, _NEAR_M = 0.02, 0.15


def place_unknowns(tubes: Sequence[HungTube], x_m: float, y_m: float, z_m: float) -> Whole:
    """Combine why the UVI at a place may be off: of the tube that gives most there, and its angle.

    the sideways doubt goes as the power ln cos a/ln cos 45°, a the angle off straight below

    Parameters
    ----------
    tubes : one to four
    x_m : place along the enclosure [m]
    y_m : place across it [m]
    z_m : height of the back [m]

    Returns
    -------
    Whole
        Spread of the true UVI over ``uvi_field`` [1].

    Notes
    -----
    Several tubes are taken as alike: if one gives a quarter less, so do all.
    Source: uv_sideways_judgement.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture, Lamp
    >>> from calc.uv.screen import NoScreen
    >>> tube = HungTube(Lamp(12.0, Fixture.POLISHED), 0.3, 0.2, 0.6, NoScreen())
    >>> below, beside = (place_unknowns([tube], 0.3, y, 0.2) for y in (0.2, 0.6))
    >>> beside.deviation > below.deviation
    True
    """
    tube = max(tubes, key=lambda one: float(uvi_field([one], x_m, y_m, z_m)))
    below, beside = max(tube.z_m - z_m, _LEVEL_M), abs(y_m - tube.y_m)
    away = min(max(hypot(below, beside), NEAREST_M), FARTHEST_M)
    power = log(below / hypot(below, beside)) / log(sqrt(0.5))
    effects = unknowns_of(tube.lamp, away, tube.screen).effects
    return combine((*effects, Effect(_SIDEWAYS, power)))


def field_unknowns(tubes: Sequence[HungTube], back_z_m: float) -> Whole:
    """Return the widest spread of any tube, for a back at a height [m], aslant at 45°."""
    found = []
    for tube in tubes:
        below = min(max(tube.z_m - back_z_m, _NEAR_M), FARTHEST_M)
        found.append(unknowns_of(tube.lamp, below, tube.screen))
    widest = max(found, key=lambda whole: whole.variance)
    return combine((*widest.effects, Effect(_SIDEWAYS)))
