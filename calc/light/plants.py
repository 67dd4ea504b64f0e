"""What plants make of the light: photons for them, a day's sum, and classes, all of it rough."""

from enum import Enum, auto

from calc.uncertainty import Estimate
from calc.validity import check

__all__ = ["PlantLight", "day_sum", "plant_class", "plant_photons"]

_LOW, _MEDIUM, _HIGH = 3.0, 6.0, 12.0
_S_PER_H, _UMOL_PER_MOL = 3600.0, 1e6
_MOST_LX, _MOST_UMOL = 120_000.0, 3000.0


class PlantLight(Enum):
    """Which plants grow well in a day's sum of light."""

    HARDLY_ANY = auto()
    LOW = auto()
    MEDIUM = auto()
    HIGH = auto()


def plant_photons(lux: Estimate, lx_per_umol: Estimate) -> Estimate:
    """Photons that plants can use in a light.

    PPFD = E / r

    Parameters
    ----------
    lux : illuminance [lx], 0 to 120 000
    lx_per_umol : lux of one umol/m²/s of this light, r, above 0

    Returns
    -------
    Estimate
        PPFD [umol/m²/s].

    Notes
    -----
    Not of red and blue lamps, whose lux says nothing.
    Source: lux_per_umol.

    Examples
    --------
    >>> plant_photons(Estimate.exact(5540.0), Estimate.exact(55.4)).best
    100.0
    """
    check("illuminance", lux.high, 0.0, unit="lx")
    check("illuminance", lux.best, 0.0, _MOST_LX, "lx")
    check("lux for plants", lx_per_umol.low, 0.0, unit="lx", is_open_low=True)
    return Estimate(
        lux.low / lx_per_umol.high, lux.best / lx_per_umol.best, lux.high / lx_per_umol.low
    )


def day_sum(ppfd: float, hours_h: float) -> float:
    """Photons for plants in a day: the daily light integral.

    DLI = PPFD · 3600 · hours / 10⁶

    Parameters
    ----------
    ppfd : photons for plants [umol/m²/s], 0 to 3000
    hours_h : hours of light a day [h], 0 to 24

    Returns
    -------
    float
        Day's sum [mol/m²/d].

    Notes
    -----
    Source: dli_definition.

    Examples
    --------
    >>> round(day_sum(100.0, 12.0), 2)
    4.32
    """
    check("plant photons", ppfd, 0.0, _MOST_UMOL, "umol/m²/s")
    check("hours of light", hours_h, 0.0, 24.0, "h")
    return ppfd * _S_PER_H * hours_h / _UMOL_PER_MOL


def plant_class(dli: float) -> PlantLight:
    """Return which plants grow well in a day's sum [mol/m²/d].

    Source: plant_light_sums.

    Examples
    --------
    >>> plant_class(4.3).name
    'LOW'
    """
    if dli < _LOW:
        return PlantLight.HARDLY_ANY
    if dli < _MEDIUM:
        return PlantLight.LOW
    return PlantLight.MEDIUM if dli < _HIGH else PlantLight.HIGH
