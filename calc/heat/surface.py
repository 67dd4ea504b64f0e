"""The heat balance of a basking surface: what it absorbs, it gives to air, walls and ground.

Sound for comparing one lamp setting with another. As a forecast from watts and distance it is
only as good as the beam it is given, which is poor; see ``first_wattage``.
"""

from dataclasses import dataclass

from calc.heat.air import HOTTEST_C, Real
from calc.heat.convection import Correlation, film_coefficient, level_plate_length
from calc.heat.radiation import net_exchange
from calc.roots import rising_root
from calc.validity import check

__all__ = ["HOTTEST_RISE_K", "Slab", "heat_lost", "steady_surface"]

HOTTEST_RISE_K = 120.0
_SMALLEST_M, _LARGEST_M = 0.05, 0.40


@dataclass(frozen=True, slots=True)
class Slab:
    """A square, level basking stone.

    ``below_w_m2k`` is what it loses through its underside, ``side_m`` its edge (0.05 to 0.40,
    where the air over it stays laminar and the balance has no jump).
    """

    side_m: float = 0.20
    emissivity: float = 0.95
    below_w_m2k: float = 0.0

    def __post_init__(self) -> None:
        check("slab side", self.side_m, _SMALLEST_M, _LARGEST_M, "m")
        check("emissivity", self.emissivity, 0.0, 1.0)
        check("loss below", self.below_w_m2k, 0.0, 20.0, "W/m2K")


def heat_lost(slab: Slab, surface_c: Real, air_c: Real, surroundings_c: Real) -> Real:
    """Return the heat that a warm slab gives away, which is what it must absorb to stay so warm.

    q = h_c (Ts - Ta) + ε σ (Ts⁴ - Tsur⁴) + u (Ts - Ta)

    Parameters
    ----------
    slab : size, emissivity and loss below
    surface_c : surface [degC], at or above the air
    air_c, surroundings_c : air over it and what it sees [degC], film between 0 and 100

    Returns
    -------
    float or ndarray
        Heat lost [W/m²].

    Notes
    -----
    One-dimensional: the slab is equally warm all over. A spot smaller than the slab also loses
    heat sideways. Raises OutsideModelError where the film leaves 0 to 100 °C.
    Source: mcadams1985; codata; cengel_board for the balance.

    Examples
    --------
    >>> round(float(heat_lost(Slab(), 40.0, 22.0, 22.0)), 1)
    218.5
    """
    length_m = level_plate_length(slab.side_m, slab.side_m)
    film = film_coefficient(surface_c, air_c, length_m, Correlation.HOT_SIDE_UP)
    convected = (film + slab.below_w_m2k) * (surface_c - air_c)
    radiated = net_exchange(slab.emissivity, surface_c, surroundings_c)
    return convected + radiated


def steady_surface(
    slab: Slab, absorbed_w_m2: float, air_c: float, surroundings_c: float | None = None
) -> float:
    """Return the temperature at which a slab gives away all that it absorbs.

    heat_lost(Ts) = absorbed, solved for Ts

    Parameters
    ----------
    slab : size, emissivity and loss below
    absorbed_w_m2 : heat absorbed [W/m²], 0 or more
    air_c : air over it [degC], 0 to 60
    surroundings_c : what it sees [degC]; the air where not given

    Returns
    -------
    float
        Surface temperature [degC], at most 120 K over the air.

    Notes
    -----
    Hours after switching on, when nothing changes any more. Raises OutsideModelError where the
    surface would have to be hotter than the model, or colder than the air.
    Source: cengel_board, worked solution of this balance.

    Examples
    --------
    >>> round(steady_surface(Slab(), 218.5, 22.0), 1)
    40.0
    """
    seen_c = air_c if surroundings_c is None else surroundings_c

    def unbalanced(surface_c: float) -> float:
        return float(heat_lost(slab, surface_c, air_c, seen_c)) - absorbed_w_m2

    hottest_c = min(air_c + HOTTEST_RISE_K, 2.0 * HOTTEST_C - air_c)
    least, most = (float(heat_lost(slab, end, air_c, seen_c)) for end in (air_c, hottest_c))
    check("absorbed heat", absorbed_w_m2, least, most, "W/m2")
    return rising_root(unbalanced, air_c, hottest_c)
