"""How bright lamps make a spot: lumens, shape and distance, with every doubt by its name.

The laws of the shapes are those of ``calc.shape``, which ultraviolet goes by too. Lamps add.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from math import sqrt

import numpy as np
from numpy.typing import ArrayLike, NDArray

from calc.light.kinds import Emits, LightKind
from calc.shape.beam import all_round_per_flux, beam_per_flux
from calc.shape.flat import bar_per_flux, panel_per_flux
from calc.shape.line import parallel_per_flux
from calc.uncertainty import Doubt, Estimate, spread
from calc.uv.screen import FlatScreen, NoScreen, Weave, ray_transmission
from calc.validity import check

__all__ = [
    "BRIGHTEST_LX",
    "GLASS_PASSES",
    "Cause",
    "HungLight",
    "Light",
    "flux_of",
    "light_doubts",
    "lux_at",
    "lux_field",
    "total_lux",
]

BRIGHTEST_LX = 120_000.0
"""Nothing brighter than the sun is worked out [lx]. Source: light_judgement."""

GLASS_PASSES = 0.9
"""What clear glass or acrylic lets through of the light, not of the UV. Source: light_judgement."""

_LEAST_LM, _MOST_LM = 20.0, 60_000.0
_LEAST_W, _MOST_W = 1.0, 1000.0
_NEAREST_M, _FARTHEST_M = 0.05, 3.0
_REFLECTOR = 1.5
_LABEL, _AGE, _WALLS, _TAPE = 1.10, 1.15, 1.15, 1.06
_BEAM_SHAPE, _BEAM_ANGLE, _BEAM_UNTOLD, _GAIN, _IN_A_DOME = 1.35, 1.2, 1.6, 1.3, 1.6


class Cause(StrEnum):
    """Why a brightness may be off."""

    LABEL = "label"
    WATTS = "watts"
    AGE = "age"
    WALLS = "walls"
    TAPE = "tape"
    BEAM = "beam"
    BEAM_UNTOLD = "beam_untold"
    REFLECTOR = "reflector"
    DOME = "dome"


@dataclass(frozen=True, slots=True)
class Light:
    """A lamp as a source of light: lumens [lm], and length, width [m] or beam [degree] as it has.

    ``by_watts``: the lumens were worked out of its watts. ``has_reflector`` is of a tube; None is
    not told. ``beam_deg`` is None where it was not told.
    """

    kind: LightKind
    flux_lm: Estimate
    by_watts: bool
    length_m: float = 0.0
    width_m: float = 0.0
    beam_deg: float | None = None
    has_reflector: bool | None = False


@dataclass(frozen=True, slots=True)
class HungLight:
    """A lamp in its place [m], as a tube hangs: middle along, across and up, and what is below."""

    light: Light
    x_m: float
    y_m: float
    z_m: float
    screen: NoScreen | FlatScreen | Weave


def flux_of(kind: LightKind, lumens: float | None, watts_w: float | None) -> Estimate | None:
    """Return the lumens of a lamp: those of its label, or of its watts and kind.

    F = lumens, or watts times the lm/W of the kind

    Parameters
    ----------
    kind : what kind of lamp it is
    lumens : lumens on the label [lm], 20 to 60 000, or None
    watts_w : watts it takes, not what it replaces [W], 1 to 1000, or None

    Returns
    -------
    Estimate or None
        Lumens [lm]; None where neither tells them.

    Notes
    -----
    Source: the kind's own; light_judgement.

    Examples
    --------
    >>> from calc.light.kinds import light_kind
    >>> flux_of(light_kind("led-bar"), None, 20.0).best
    2100.0
    """
    if lumens is not None:
        check("lumens", lumens, _LEAST_LM, _MOST_LM, "lm")
        return spread(lumens, [Doubt(Cause.LABEL, _LABEL, "light_judgement")])
    if watts_w is None or kind.lm_per_w is None:
        return None
    check("lamp watts", watts_w, _LEAST_W, _MOST_W, "W")
    each = kind.lm_per_w
    return Estimate(watts_w * each.low, watts_w * each.best, watts_w * each.high)


def light_doubts(light: Light) -> tuple[Doubt, ...]:
    """Return why a lamp's brightness may be off, each cause with its factor."""
    flux = light.flux_lm
    of_flux = Doubt(
        Cause.WATTS if light.by_watts else Cause.LABEL,
        sqrt(flux.high / flux.low),
        light.kind.source if light.by_watts else "light_judgement",
    )
    named = [(Cause.AGE, _AGE), (Cause.WALLS, _WALLS), (Cause.TAPE, _TAPE)]
    match light.kind.emits:
        case Emits.BEAM:
            named.append((Cause.BEAM, _BEAM_SHAPE))
            told = light.beam_deg is not None
            named.append((Cause.BEAM, _BEAM_ANGLE) if told else (Cause.BEAM_UNTOLD, _BEAM_UNTOLD))
        case Emits.TUBE:
            if light.has_reflector is not False:
                named.append((Cause.REFLECTOR, _GAIN))
        case Emits.ROUND:
            named.append((Cause.DOME, _IN_A_DOME))
        case _:
            pass
    return (of_flux, *(Doubt(cause, factor, "light_judgement") for cause, factor in named))


def lux_field(
    lights: Sequence[HungLight], x_m: ArrayLike, y_m: ArrayLike, z_m: ArrayLike
) -> NDArray[np.float64]:
    """Illuminance on level spots, of lamps that hang above them; no doubt, best values.

    E = sum over lamps of F · out · reflector · screen · shape

    Parameters
    ----------
    lights : lamps in their places
    x_m : along the enclosure [m]
    y_m : across it [m]
    z_m : height [m]; above a lamp there is none of its light

    Returns
    -------
    ndarray
        Illuminance [lx].

    Notes
    -----
    Straight from the lamps: what walls send back is a doubt. A reflector makes 1.5 of a bare tube.
    A screen acts as on the ray from the middle of the lamp.
    Source: inverse_square; light_forms; line_source; beam_shapes; light_judgement.

    Examples
    --------
    >>> from calc.light.kinds import light_kind
    >>> bar = Light(light_kind("led-bar"), Estimate.exact(2000.0), False, length_m=0.55)
    >>> place = HungLight(bar, 0.3, 0.3, 0.5, NoScreen())
    >>> round(float(lux_field([place], 0.3, 0.3, 0.2)), -2)
    4800.0
    """
    x, y, z = (np.asarray(v, dtype=np.float64) for v in (x_m, y_m, z_m))
    total = np.zeros(np.broadcast_shapes(x.shape, y.shape, z.shape))
    for hung in lights:
        below = hung.z_m - z
        height = np.maximum(below, _NEAREST_M)
        level = hung.light.flux_lm.best * _per_lumen(hung.light, height, x - hung.x_m, y - hung.y_m)
        passed = ray_transmission(hung.screen, (x - hung.x_m) / height, (y - hung.y_m) / height)
        total = total + np.where(below > 0.0, level * passed, 0.0)
    return np.asarray(total)


def _per_lumen(
    light: Light,
    height: NDArray[np.float64],
    along: NDArray[np.float64],
    aside: NDArray[np.float64],
) -> NDArray[np.float64]:
    away = np.hypot(along, aside)
    match light.kind.emits:
        case Emits.TUBE:
            distance = np.hypot(height, aside)
            gain = 1.0 if light.has_reflector is False else _REFLECTOR
            bare = parallel_per_flux(distance, light.length_m, along)
            return np.asarray(gain * bare * height / distance)
        case Emits.BAR:
            return bar_per_flux(height, light.length_m, along, aside, light.beam_deg or 120.0)
        case Emits.PANEL:
            return panel_per_flux(height, light.length_m, light.width_m, along, aside)
        case Emits.ROUND:
            return all_round_per_flux(height, away)
        case Emits.BEAM:
            beam = light.beam_deg or light.kind.beam_deg
            assert beam is not None
            return light.kind.out * beam_per_flux(height, away, beam)


def lux_at(hung: HungLight, x_m: float, y_m: float, z_m: float) -> Estimate:
    """Illuminance of one lamp on a level spot, with its doubt.

    E as ``lux_field``; low and high by the combined factor of ``light_doubts``

    Parameters
    ----------
    hung : the lamp in its place
    x_m : along the enclosure [m]
    y_m : across it [m]
    z_m : height of the spot [m], 0.05 to 3 below the lamp

    Returns
    -------
    Estimate
        Illuminance [lx].

    Notes
    -----
    More than the sun gives is refused.
    Source: light_forms; light_judgement.

    Examples
    --------
    >>> from calc.light.kinds import light_kind
    >>> tube = Light(light_kind("white-tube"), Estimate.exact(1750.0), False, length_m=0.549)
    >>> round(lux_at(HungLight(tube, 0.0, 0.0, 0.3, NoScreen()), 0.0, 0.0, 0.0).best, -1)
    1330.0
    """
    check("distance", hung.z_m - z_m, _NEAREST_M, _FARTHEST_M, "m")
    best = float(lux_field([hung], x_m, y_m, z_m))
    check("illuminance", best, 0.0, BRIGHTEST_LX, "lx")
    return spread(best, light_doubts(hung.light))


def total_lux(each: Sequence[Estimate]) -> Estimate:
    """Add the light of several lamps; their doubts are taken to be each lamp's own.

    best = sum; low and high by the root of the summed squares of what each may be off

    Parameters
    ----------
    each : the light of one lamp each [lx]

    Returns
    -------
    Estimate
        Illuminance [lx].

    Notes
    -----
    Of several lamps of one kind the doubts hang together; then this is too sure.
    Source: jcgm100.

    Examples
    --------
    >>> total_lux([Estimate(8.0, 10.0, 12.5), Estimate(8.0, 10.0, 12.5)]).best
    20.0
    """
    best = sum(one.best for one in each)
    down = sqrt(sum((one.best - one.low) ** 2 for one in each))
    up = sqrt(sum((one.high - one.best) ** 2 for one in each))
    return Estimate(max(0.0, best - down), best, best + up)
