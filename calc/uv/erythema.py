"""The erythemal action spectrum and the UV index: from a spectrum to one number.

Not here: how strong a lamp is (``lamp``) and how it spreads (``tube``).
"""

from enum import Enum

import numpy as np
from numpy.typing import ArrayLike, NDArray

from calc.validity import OutsideModelError

__all__ = [
    "UVI_PER_W_M2",
    "Variant",
    "erythemal_irradiance",
    "erythemal_weight",
    "uv_index",
    "uv_index_of_spectrum",
]

UVI_PER_W_M2 = 40.0
"""UV index per erythemal irradiance [m²/W], by definition. Source: cie_17_26_073."""

_FIRST_NM = 250.0
_FLAT_TO_NM = 298.0
_STEEP_TO_NM = 328.0
_LAST_NM = 400.0


class Variant(Enum):
    """The two printed forms of the action spectrum; the value is the constant of its UV-A arm.

    Source: webb2011 (several versions are in use, one is the standard); mckinlay_diffey1987.
    """

    STANDARD = 140.0
    OF_1987 = 139.0


def erythemal_weight(
    wavelength_nm: ArrayLike, variant: Variant = Variant.STANDARD
) -> NDArray[np.float64]:
    """Weigh a wavelength by how strongly it reddens human skin.

    1 to 298 nm; 10^(0.094 (298 - λ)) to 328 nm; 10^(0.015 (140 - λ)) to 400 nm; 0 above

    Parameters
    ----------
    wavelength_nm : wavelength [nm], from 250
    variant : the standard form (140) or the one of 1987 (139)

    Returns
    -------
    ndarray
        Weight [1], 0 to 1.

    Notes
    -----
    Not defined below 250 nm: raises OutsideModelError there.
    Source: iso_cie_17166, clause 3; webb2011.

    Examples
    --------
    >>> round(float(erythemal_weight(300.0)), 4)
    0.6486
    """
    wave = np.asarray(wavelength_nm, dtype=np.float64)
    if np.any(~(wave >= _FIRST_NM)):
        raise OutsideModelError("wavelength", float(np.min(wave)), _FIRST_NM, np.inf, "nm")
    steep = 10.0 ** (0.094 * (_FLAT_TO_NM - wave))
    shallow = 10.0 ** (0.015 * (variant.value - wave))
    return np.select(
        [wave <= _FLAT_TO_NM, wave <= _STEEP_TO_NM, wave <= _LAST_NM],
        [np.ones_like(wave), steep, shallow],
        0.0,
    )


def erythemal_irradiance(
    wavelength_nm: ArrayLike,
    spectral_w_m2_nm: ArrayLike,
    variant: Variant = Variant.STANDARD,
) -> float:
    """Integrate a sampled spectrum, weighted by the action spectrum, with the trapezoid rule.

    E_er = ∫ E_λ(λ) s_er(λ) dλ

    Parameters
    ----------
    wavelength_nm : rising wavelengths [nm], from 250
    spectral_w_m2_nm : spectral irradiance [W/m²/nm] at each of them, 0 or more
    variant : the form of the action spectrum

    Returns
    -------
    float
        Erythemal irradiance [W/m²].

    Notes
    -----
    Coarse samples (5 nm and more) are off by several per cent on the steep arm.
    Source: cie_17_26_073, note 1.

    Examples
    --------
    >>> round(erythemal_irradiance([290.0, 298.0], [0.01, 0.01]), 6)
    0.08
    """
    wave = np.asarray(wavelength_nm, dtype=np.float64)
    if wave.ndim != 1 or wave.size < 2 or np.any(np.diff(wave) <= 0):
        raise ValueError("a spectrum needs at least two rising wavelengths")
    weighted = np.asarray(spectral_w_m2_nm, dtype=np.float64) * erythemal_weight(wave, variant)
    return float(np.trapezoid(weighted, wave))


def uv_index(erythemal_w_m2: float) -> float:
    """Turn erythemal irradiance into the UV index.

    UVI = 40 E_er

    Parameters
    ----------
    erythemal_w_m2 : erythemal irradiance [W/m²], 0 or more

    Returns
    -------
    float
        UV index [1].

    Notes
    -----
    Defined for the sun on a level plane; used for lamps by the same arithmetic.
    Source: cie_17_26_073, note 1.

    Examples
    --------
    >>> uv_index(0.2)
    8.0
    """
    return UVI_PER_W_M2 * erythemal_w_m2


def uv_index_of_spectrum(
    wavelength_nm: ArrayLike,
    spectral_w_m2_nm: ArrayLike,
    variant: Variant = Variant.STANDARD,
) -> float:
    """Return the UV index [1] of a sampled spectrum [nm, W/m²/nm]."""
    return uv_index(erythemal_irradiance(wavelength_nm, spectral_w_m2_nm, variant))
