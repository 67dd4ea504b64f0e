"""What dimming does to an incandescent or halogen lamp besides its heat."""

from dataclasses import dataclass

from calc.uncertainty import Estimate
from calc.validity import check

__all__ = ["Rerated", "rerated_by_power", "rerated_by_voltage"]

_POWER, _LIGHT, _COLOUR = 1.6, 3.4, 0.42
_LIFE_LEAST, _LIFE_LIKELY, _LIFE_MOST = 12.0, 13.0, 16.0
_LOWEST_VOLTAGE, _HIGHEST_VOLTAGE = 0.3, 1.1


@dataclass(frozen=True, slots=True)
class Rerated:
    """A lamp at another voltage; every figure is a factor [1] on its full value."""

    voltage: float
    power: float
    light: float
    colour_temperature: float
    life: Estimate


def rerated_by_voltage(voltage: float) -> Rerated:
    """Return what a lamp gives at a share of its rated voltage.

    power V^1.6, light V^3.4, colour temperature V^0.42, life V^-13 (-12 to -16)

    Parameters
    ----------
    voltage : share of the rated voltage [1], 0.3 to 1.1

    Returns
    -------
    Rerated
        Factors [1].

    Notes
    -----
    For true filament lamps. Far below the rated voltage the exponents drift; halogen lamps run
    cooler than their cycle needs there. Raises OutsideModelError outside the range.
    Source: lamp_rerating.

    Examples
    --------
    >>> lamp = rerated_by_voltage(110 / 120)
    >>> round(lamp.light, 3), round(lamp.power, 3), round(lamp.colour_temperature, 3)
    (0.744, 0.87, 0.964)
    """
    check("share of rated voltage", voltage, _LOWEST_VOLTAGE, _HIGHEST_VOLTAGE)
    lives = [voltage**-exponent for exponent in (_LIFE_LEAST, _LIFE_LIKELY, _LIFE_MOST)]
    return Rerated(
        voltage=voltage,
        power=voltage**_POWER,
        light=voltage**_LIGHT,
        colour_temperature=voltage**_COLOUR,
        life=Estimate(min(lives), lives[1], max(lives)),
    )


def rerated_by_power(power: float) -> Rerated:
    """Return what a lamp gives when it is dimmed to a share of its power.

    V = P^(1/1.6), then as for the voltage

    Parameters
    ----------
    power : share of the rated power [1], 0.146 to 1.165, the ends of the voltage

    Returns
    -------
    Rerated
        Factors [1].

    Notes
    -----
    Source: lamp_rerating.

    Examples
    --------
    >>> round(rerated_by_power(0.8).light, 2)
    0.62
    """
    check("share of rated power", power, _LOWEST_VOLTAGE**_POWER, _HIGHEST_VOLTAGE**_POWER)
    voltage = power ** (1.0 / _POWER)
    # There and back again is not exact: the ends of the power stay the ends of the voltage.
    return rerated_by_voltage(min(max(voltage, _LOWEST_VOLTAGE), _HIGHEST_VOLTAGE))
