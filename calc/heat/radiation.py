"""Long-wave radiation between a grey surface and what it sees."""

from calc.heat.air import KELVIN, Real

__all__ = ["STEFAN_BOLTZMANN", "net_exchange", "radiation_coefficient"]

STEFAN_BOLTZMANN = 5.670374419e-8
"""W/m²K⁴. Source: codata."""


def net_exchange(emissivity: Real | float, surface_c: Real, surroundings_c: Real) -> Real:
    """Return the radiation that a grey surface loses to its surroundings.

    q = ε σ (Ts⁴ - Tsur⁴)

    Parameters
    ----------
    emissivity : long-wave emissivity [1], 0 to 1
    surface_c, surroundings_c : temperatures [degC], above absolute zero

    Returns
    -------
    float or ndarray
        Net loss [W/m²], negative where the surroundings are hotter.

    Notes
    -----
    For a small surface in large surroundings of one temperature.
    Source: codata; bergman2011, chapter 1.

    Examples
    --------
    >>> round(net_exchange(0.95, 40.0, 22.0), 1)
    109.2
    """
    hot, cold = surface_c + KELVIN, surroundings_c + KELVIN
    return emissivity * STEFAN_BOLTZMANN * (hot**4 - cold**4)


def radiation_coefficient(emissivity: Real | float, surface_c: Real, surroundings_c: Real) -> Real:
    """Return the radiation lost per area and kelvin.

    h_r = ε σ (Ts + Tsur) (Ts² + Tsur²)

    Parameters
    ----------
    emissivity : long-wave emissivity [1], 0 to 1
    surface_c, surroundings_c : temperatures [degC]

    Returns
    -------
    float or ndarray
        Radiation coefficient [W/m²K].

    Notes
    -----
    Exact, not a linear fit; it depends on both temperatures.
    Source: codata.

    Examples
    --------
    >>> round(radiation_coefficient(0.95, 40.0, 22.0), 3)
    6.068
    """
    hot, cold = surface_c + KELVIN, surroundings_c + KELVIN
    return emissivity * STEFAN_BOLTZMANN * (hot + cold) * (hot**2 + cold**2)
