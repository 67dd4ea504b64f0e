"""One patch of sun: where ultraviolet, heat and light meet on the basking place, and shade of all.

Heat reaches as far as its patch. Light is that of the heat lamp, a white flood that is half as
bright at the edge of what it warms, and where white lamps were told also theirs, where it is fair
by our own words.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import atan, degrees

import numpy as np
from numpy.typing import NDArray

from calc.light.bands import Bands
from calc.light.illuminance import HungLight, Light, lux_field
from calc.light.kinds import light_kind
from calc.setup.lights import LightThere, fair_from_lx, hung_beside, light_there
from calc.setup.room import Room
from calc.uncertainty import Estimate
from calc.uv.ground import Ground, ground_of
from calc.uv.patches import CELLS, SHADE_UVI, Patches
from calc.uv.screen import NoScreen
from calc.uv.section import uvi_field

__all__ = ["SunPatch", "met_by_light", "sun_patch"]

_LIT, _DARK = 0.5, 1.0 / 20.0
_ANY_LM = 1000.0
_NARROWEST_DEG, _WIDEST_DEG = 5.0, 160.0


@dataclass(frozen=True, slots=True)
class _Layer:
    """The light of some lamps over the ground [lx], its brightest on the platform, what is lit."""

    light: NDArray[np.float64]
    brightest: float
    enough: float

    @classmethod
    def of(
        cls,
        lights: Sequence[HungLight],
        at: tuple[NDArray[np.float64], ...],
        enough: float | None,
        place: slice,
    ) -> "_Layer":
        light = lux_field(lights, *at)
        brightest = float(np.max(light[place], initial=0.0))
        return cls(light, brightest, _LIT * brightest if enough is None else enough)

    def lit(self, factor: float) -> NDArray[np.bool_]:
        """Return where it is bright enough, the light being so much of what it is taken for [1]."""
        return (self.light * factor >= self.enough) & (self.brightest > 0.0)

    @property
    def dark(self) -> NDArray[np.bool_]:
        """Where it is a twentieth as bright as the brightest, or less."""
        return self.light <= _DARK * self.brightest


@dataclass(frozen=True, slots=True)
class SunPatch:
    """Shares [1]: of the platform, where UV, heat and light meet; of all, shade of all three.

    ``uv_and_heat`` leaves the light out; without a heat lamp there is none of either. ``x_m`` and
    ``y_m`` are from where to where [m] the places reach at which all three meet, None where none.
    """

    all_three: Estimate
    uv_and_heat: Estimate
    shade: Estimate
    x_m: tuple[float, float] | None = None
    y_m: tuple[float, float] | None = None


def sun_patch(
    room: Room, met: Patches, white: LightThere | None = None, fair_lx: float | None = None
) -> SunPatch:
    """Return the share of a basking place that is one patch of sun, and of what is shade.

    share = cells in the UVI range, within the heat patch and lit / all cells; shade: UVI under
    0.5, outside the heat patch, a twentieth as bright as the brightest

    Parameters
    ----------
    room : box, tubes, platform, range and heat patch
    met : what is met there, for how far all UV may be off
    white : white lamps in their places, beside the heat lamp's own light
    fair_lx : what counts as lit by white lamps [lx]; else half as bright as their brightest

    Returns
    -------
    SunPatch
        Shares [1]; low and high with all UV and white light as weak, or as strong, as may be.

    Notes
    -----
    Hides and plants are not here, so shade is what the open box has of it.
    Source: line_source; light_forms; sun_patch_judgement.

    Examples
    --------
    >>> from calc.uv.ground import HeatPatch, Platform
    >>> from calc.uv.lamp import Fixture, Lamp
    >>> from calc.uv.section import Box, HungTube
    >>> tube = HungTube(Lamp(12.0, Fixture.POLISHED), 0.4, 0.3, 0.8, NoScreen())
    >>> place, heat = Platform(0.2, 0.5, 0.15, 0.45, 0.3), HeatPatch(0.35, 0.3, 0.1)
    >>> room = Room(Box(1.2, 0.6, 0.9), (tube,), place, 0.05, 3.0, 5.0, heat)
    >>> found = sun_patch(room, room.met())
    >>> 0.0 < found.all_three.best <= found.uv_and_heat.best
    True
    """
    ground = ground_of(room.box, room.platform, room.back_m, room.heat, CELLS)
    at = ground.x_m, ground.y_m, ground.z_m
    uvi = uvi_field(room.tubes, *at)
    layers = [_Layer.of(_of_heat_lamp(room), at, None, ground.platform)]
    if white is not None:
        layers += [_Layer.of(white.lights, at, fair_lx, ground.platform)]
    warm = _warm(room, ground)
    strongest = met.strongest.uvi
    place, everywhere = ground.platform, ground.everywhere
    lit = [
        np.any([layers[0].lit(1.0), *(one.lit(factor) for one in layers[1:])], axis=0)
        for factor in _dims(white)
    ]
    dark = np.all([one.dark for one in layers], axis=0)

    def shares(of: slice, others: Sequence[NDArray[np.bool_]], low: float, high: float) -> Estimate:
        factors = (strongest.low, strongest.best, strongest.high)
        found = [
            float(np.mean((uvi[of] * f >= low) & (uvi[of] * f <= high) & other[of]))
            for other in others
            for f in (factor / strongest.best for factor in factors)
        ]
        return Estimate(min(found), found[1], max(found))

    wanted = room.low_uvi, room.high_uvi
    met_here = (uvi >= wanted[0]) & (uvi <= wanted[1]) & warm & lit[0]
    on, old = met_here[place], room.platform
    half_x, half_y = (
        (b - a) / (2.0 * CELLS) for a, b in ((old.x0_m, old.x1_m), (old.y0_m, old.y1_m))
    )
    return SunPatch(
        all_three=shares(place, [warm & one for one in lit], *wanted),
        uv_and_heat=shares(place, [warm], *wanted),
        shade=shares(everywhere, [~warm & dark], 0.0, SHADE_UVI),
        x_m=_reach(ground.x_m[place][on], half_x),
        y_m=_reach(ground.y_m[place][on], half_y),
    )


def met_by_light(
    room: Room, met: Patches, lights: Sequence[Light], bands: Bands | None
) -> tuple[SunPatch | None, LightThere | None]:
    """Return where UV, heat and light meet, and what white lamps give; each None without a lamp.

    The white lamps hang beside the tubes; ``bands`` are the levels of the animal's way of life.
    Source: sun_patch_judgement; light_bands.
    """
    white = light_there(room, hung_beside(room, lights), bands) if lights else None
    sun = None if room.heat is None else sun_patch(room, met, white, fair_from_lx(bands))
    return sun, white


def _dims(white: LightThere | None) -> tuple[float, ...]:
    """Return by which factors white light may be off [1], the best value first."""
    if white is None or not white.spot_lx.best > 0.0:
        return (1.0,)
    return 1.0, white.spot_lx.low / white.spot_lx.best, white.spot_lx.high / white.spot_lx.best


def _reach(middles_m: NDArray[np.float64], half_m: float) -> tuple[float, float] | None:
    """Return from where to where cells of this half width reach [m]; None without any."""
    if not middles_m.size:
        return None
    return float(np.min(middles_m)) - half_m, float(np.max(middles_m)) + half_m


def _warm(room: Room, ground: Ground) -> NDArray[np.bool_]:
    heat = room.heat
    if heat is None:
        return np.zeros(ground.x_m.shape, dtype=np.bool_)
    away = np.hypot(ground.x_m - heat.x_m, ground.y_m - heat.y_m)
    return np.asarray(away <= heat.radius_m)


def _of_heat_lamp(room: Room) -> tuple[HungLight, ...]:
    """Return the heat lamp as a flood, level with the tubes and over its patch."""
    heat = room.heat
    if heat is None:
        return ()
    z_m = room.tubes[0].z_m
    beam = 2.0 * degrees(atan(heat.radius_m / max(z_m - room.back_z_m, 0.05)))
    beam = min(max(beam, _NARROWEST_DEG), _WIDEST_DEG)
    kind = light_kind("halogen-flood")
    flood = Light(kind, Estimate.exact(_ANY_LM), by_watts=True, beam_deg=beam)
    return (HungLight(flood, heat.x_m, heat.y_m, z_m, NoScreen()),)
