"""What a lux meter or a phone's reading is worth."""

from enum import StrEnum

from calc.uncertainty import Doubt, Estimate, spread
from calc.validity import check

__all__ = ["LX_PER_FOOT_CANDLE", "LuxMeter", "lux_read"]

LX_PER_FOOT_CANDLE = 10.7639
"""One lumen on a square foot, by definition [lx]. Source: light_forms."""

_MOST_LX = 200_000.0


class LuxMeter(StrEnum):
    """What read the light."""

    METER = "meter"
    PHONE = "phone"


_FACTORS = {LuxMeter.METER: 1.2, LuxMeter.PHONE: 2.0}


def lux_read(lux: float, meter: LuxMeter) -> Estimate:
    """Return what a reading of light means.

    low and high by the instrument's factor: 1.2 for a lux meter, 2 for a phone

    Parameters
    ----------
    lux : as read [lx], 0 to 200 000
    meter : what it was read with

    Returns
    -------
    Estimate
        Illuminance [lx].

    Notes
    -----
    A phone has no diffuser and its own idea of white: it only puts two places in order. No meter
    of lux tells anything of UV.
    Source: lux_meters; light_judgement.

    Examples
    --------
    >>> lux_read(6000.0, LuxMeter.PHONE).high
    12000.0
    """
    check("illuminance", lux, 0.0, _MOST_LX, "lx")
    return spread(lux, [Doubt(meter.value, _FACTORS[meter], "lux_meters")])
