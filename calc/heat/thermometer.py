"""Reading an infrared thermometer: what it shows is not yet what the surface is."""

from dataclasses import dataclass
from enum import Enum, StrEnum, auto

from calc.heat.air import KELVIN, Real
from calc.heat.tables import table
from calc.uncertainty import Estimate
from calc.validity import check

__all__ = [
    "LEAST_SETTING",
    "USUAL_SETTING",
    "Emissivity",
    "Surface",
    "Unreadable",
    "corrected_reading",
    "emissivity_of",
    "reading_shown",
    "surface_behind",
]

USUAL_SETTING = 0.95
"""What fixed thermometers are set to. Source: ir_thermography."""

LEAST_SETTING = 0.5
_COLDEST_C, _HOTTEST_C = -20.0, 150.0


class Surface(StrEnum):
    """What is shot at; keys of ``data/heat/surfaces.toml``."""

    SLATE = "slate"
    TILE = "tile"
    WOOD = "wood"
    BRICK = "brick"
    CONCRETE = "concrete"
    GRANITE = "granite"
    SAND = "sand"
    SOIL = "soil"
    PAINTED = "painted"
    PLASTIC = "plastic"
    GLASS = "glass"
    METAL = "metal"


class Unreadable(Enum):
    """Why no correction can be made."""

    BARE_METAL = auto()
    THROUGH_GLASS = auto()


@dataclass(frozen=True, slots=True)
class Emissivity:
    """What share of a black body's radiation a surface gives off [1], and where that is from."""

    name: str
    share: Estimate
    source: str


def emissivity_of(surface: Surface) -> Emissivity:
    """Return the long-wave emissivity of a kind of surface [1].

    Source: emissivity_a to emissivity_e; slate_conflict.
    """
    row = table("surfaces")[surface.value]
    return Emissivity(row["name"], Estimate(*row["emissivity"]), row["source"])


def surface_behind(
    shown_c: Real, setting: Real | float, emissivity: Real | float, reflected_c: Real
) -> Real:
    """Return the true temperature of a surface from what the thermometer shows.

    T = ((s Ti⁴ + (ε - s) Tr⁴) / ε)^(1/4), in kelvin

    Parameters
    ----------
    shown_c : what the thermometer shows [degC], -20 to 150
    setting : emissivity that it is set to [1], 0.5 to 1
    emissivity : true emissivity [1], 0.5 to 1
    reflected_c : temperature of what the surface mirrors [degC]

    Returns
    -------
    float or ndarray
        True temperature [degC].

    Notes
    -----
    For a thermometer that allows for reflection at its own setting, as calibrated ones do. The
    fourth power stands for the band of 8 to 14 µm: good to 0.3 K down to 0.67 and up to 50 °C
    shown. What is mirrored
    is the hot lamp, not the room, if shot from beside it. Below 0.5 nonsense: refused.
    Source: ir_thermography.

    Examples
    --------
    >>> round(surface_behind(40.0, 0.95, 0.85, 22.0), 2)
    41.92
    """
    for name, share in (("thermometer setting", setting), ("emissivity", emissivity)):
        check(name, share, LEAST_SETTING, 1.0)
    seen, mirrored = (shown_c + KELVIN) ** 4, (reflected_c + KELVIN) ** 4
    true_c: Real = ((setting * seen + (emissivity - setting) * mirrored) / emissivity) ** 0.25
    return true_c - KELVIN


def reading_shown(
    true_c: Real, setting: Real | float, emissivity: Real | float, reflected_c: Real
) -> Real:
    """Return what a thermometer shows for a surface; the other way round of ``surface_behind``.

    Ti = ((ε T⁴ + (s - ε) Tr⁴) / s)^(1/4), in kelvin

    Parameters
    ----------
    true_c : true temperature [degC], -20 to 150
    setting, emissivity : as set, as is [1], 0.5 to 1
    reflected_c : temperature of what the surface mirrors [degC]

    Returns
    -------
    float or ndarray
        Temperature shown [degC].

    Notes
    -----
    Source: ir_thermography.

    Examples
    --------
    >>> round(reading_shown(45.0, 0.95, 0.85, 25.0), 2)
    43.07
    """
    return surface_behind(true_c, emissivity, setting, reflected_c)


def corrected_reading(
    shown_c: float,
    surface: Surface,
    reflected_c: float,
    setting: float = USUAL_SETTING,
    through_glass: bool = False,
) -> Estimate | Unreadable:
    """Return the true temperature of a kind of surface, or why it cannot be told.

    the correction of ``surface_behind`` over the range of the material's emissivity

    Parameters
    ----------
    shown_c : what the thermometer shows [degC], -20 to 150
    surface : what was shot at
    reflected_c : temperature of what it mirrors, the air where nothing better is known [degC]
    setting : emissivity that the thermometer is set to [1], 0.5 to 1
    through_glass : shot through a pane, which shows the pane and nothing behind it

    Returns
    -------
    Estimate or Unreadable
        True temperature [degC].

    Notes
    -----
    The range holds the material only, not the thermometer's own 1 to 2 K.
    Source: ir_thermography; emissivity_a to emissivity_e; slate_conflict.

    Examples
    --------
    >>> corrected_reading(40.0, Surface.METAL, 22.0)
    <Unreadable.BARE_METAL: 1>
    """
    for name, value in (("reading", shown_c), ("mirrored temperature", reflected_c)):
        check(name, value, _COLDEST_C, _HOTTEST_C, "degC")
    if through_glass:
        return Unreadable.THROUGH_GLASS
    share = emissivity_of(surface).share
    if share.low < LEAST_SETTING:
        return Unreadable.BARE_METAL
    ends = [
        float(surface_behind(shown_c, setting, emissivity, reflected_c))
        for emissivity in (share.low, share.best, share.high)
    ]
    return Estimate(min(ends), ends[1], max(ends))
