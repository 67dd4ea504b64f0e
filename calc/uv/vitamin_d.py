"""The action spectrum of previtamin D3: how much of an erythemal dose can make vitamin D.

For people and by an international table; nobody has measured one for reptile skin.
"""

from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from calc.tables import read_table
from calc.uv.erythema import erythemal_irradiance

__all__ = ["vitamin_d_per_erythema", "vitamin_d_weight"]


@cache
def _table() -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    read = read_table("calc/data/vitamin_d.toml")
    weights = np.array(read["weights"])
    return read["first_nm"] + np.arange(weights.size, dtype=np.float64), weights


def vitamin_d_weight(wavelength_nm: ArrayLike) -> NDArray[np.float64]:
    """Weigh a wavelength by how strongly it makes previtamin D3.

    the table, straight between its rows; 0 outside 252 to 330 nm

    Parameters
    ----------
    wavelength_nm : wavelength [nm], any

    Returns
    -------
    ndarray
        Weight [1], 0 to 1.

    Notes
    -----
    The table is contested (Webb et al. 2022); no better standard is agreed.
    Source: cie174, table 1.

    Examples
    --------
    >>> vitamin_d_weight([298.0, 310.0, 340.0]).tolist()
    [1.0, 0.22, 0.0]
    """
    return np.interp(np.asarray(wavelength_nm, dtype=np.float64), *_table(), left=0.0, right=0.0)


def vitamin_d_per_erythema(wavelength_nm: ArrayLike, spectral_w_m2_nm: ArrayLike) -> float:
    """Set a spectrum's vitamin D irradiance against its erythemal one.

    ∫ E_λ s_D dλ / ∫ E_λ s_er dλ, trapezoid

    Parameters
    ----------
    wavelength_nm : rising wavelengths [nm], from 250
    spectral_w_m2_nm : spectral irradiance [W/m²/nm] at each of them, 0 or more, not all 0

    Returns
    -------
    float
        Ratio [1]; about 2 for a high sun, under 1 for a low one.

    Notes
    -----
    As ``vitamin_d_weight``.
    Source: cie174, table 1; iso_cie_17166, clause 3.

    Examples
    --------
    >>> round(vitamin_d_per_erythema([305.0, 305.1], [1.0, 1.0]), 2)
    2.9
    """
    wave = np.asarray(wavelength_nm, dtype=np.float64)
    light = np.asarray(spectral_w_m2_nm, dtype=np.float64)
    made = float(np.trapezoid(light * vitamin_d_weight(wave), wave))
    return made / erythemal_irradiance(wave, light)
