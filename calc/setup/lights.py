"""White lamps in a set-up: where they hang, and how bright they make its basking place.

How bright is said in words of our own, dim, fair and bright: no need, and never a verdict.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

import numpy as np

from calc.light.bands import Bands
from calc.light.illuminance import HungLight, Light, lux_at, lux_field, total_lux
from calc.light.kinds import Emits
from calc.setup.room import Room
from calc.uncertainty import Estimate
from calc.uv.ground import ground_of
from calc.uv.patches import CELLS

__all__ = ["OF_THE_BOX", "LightThere", "fair_from_lx", "hung_beside", "light_there"]

OF_THE_BOX = 0.75
"""So much of the box [1] a white bar lies over where its length was not told.

Source: light_judgement.
"""

_AIMED = (Emits.BEAM, Emits.ROUND)
_COOL_ALONG = 0.93
# So far from middle to middle fixtures go side by side; white lamps warm no tube.
_GAP_M = 0.10
# Nobody looks up from right under a lamp: nearer than this no light is worked out.
_NEAREST_M = 0.05


@dataclass(frozen=True, slots=True)
class LightThere:
    """Light of white lamps: at the middle of the basking place and at the cool end's floor [lx].

    ``fair`` is the share of the basking place that is fair or brighter [1], by what ``bands`` say;
    None where no level is known.
    """

    lights: tuple[HungLight, ...]
    spot_lx: Estimate
    cool_lx: Estimate
    fair: Estimate | None


def fair_from_lx(bands: Bands | None) -> float | None:
    """Return from where on a basking place is fair [lx]: half way from dim, as a factor.

    Source: light_bands.
    """
    return None if bands is None else (bands.dim.spot_lx * bands.fair.spot_lx) ** 0.5


def hung_beside(room: Room, lights: Iterable[Light]) -> tuple[HungLight, ...]:
    """Hang white lamps level with the tubes, on their other side from the heat lamp.

    Parameters
    ----------
    room : box, tubes and platform
    lights : lamps, one for each that hangs

    Returns
    -------
    tuple of HungLight
        Bars, panels and tubes from the warm end wall, what has a beam over the basking place's
        middle; what is between tube and back is between these too.

    Notes
    -----
    With tubes across, the lamps lie across too.
    Source: plan_judgement.
    """
    tube = room.tubes[0]
    first_m, last_m = (f(one.y_m for one in room.tubes) for f in (min, max))
    behind = room.heat is None or room.heat.y_m >= (first_m + last_m) / 2.0
    edge_m, way = (first_m, -1.0) if behind else (last_m, 1.0)
    x_m, _ = room.platform.middle_m
    hung = []
    for number, light in enumerate(lights, 1):
        y_m = min(max(edge_m + way * number * _GAP_M, 0.0), room.box.depth_m)
        lit = replace(light, length_m=min(light.length_m, room.box.length_m))
        middle_m = x_m if light.kind.emits in _AIMED else lit.length_m / 2.0
        hung.append(HungLight(lit, middle_m, y_m, tube.z_m, tube.screen))
    return tuple(hung)


def light_there(room: Room, lights: Sequence[HungLight], bands: Bands | None) -> LightThere:
    """Work out how bright white lamps make a set-up.

    E as ``lux_field``; share = cells from half way between dim and fair on / all cells

    Parameters
    ----------
    room : box and platform
    lights : lamps in their places, one or more
    bands : levels of the animal's way of life, where they are known

    Returns
    -------
    LightThere
        Light [lx] and share [1], each with its doubt.

    Notes
    -----
    The light of a heat lamp comes on top of it. Straight from the lamps; what walls send back is a
    doubt, which counts twice at the cool end.
    Source: light_forms; light_judgement; light_bands.

    Examples
    --------
    >>> from calc.light.kinds import light_kind
    >>> from calc.uv.ground import Platform
    >>> from calc.uv.lamp import Fixture, Lamp
    >>> from calc.uv.screen import NoScreen
    >>> from calc.uv.section import Box, HungTube
    >>> tube = HungTube(Lamp(12.0, Fixture.POLISHED), 0.4, 0.3, 0.8, NoScreen())
    >>> place = Platform(0.2, 0.5, 0.15, 0.45, 0.3)
    >>> room = Room(Box(1.2, 0.6, 0.9), (tube,), place, 0.05, 3.0, 5.0)
    >>> bar = Light(light_kind("led-bar"), Estimate.exact(4000.0), False, length_m=0.85)
    >>> round(light_there(room, hung_beside(room, [bar]), None).spot_lx.best, -2)
    3800.0
    """
    (x_m, y_m), z_m = room.platform.middle_m, room.back_z_m
    spot = total_lux([_lux(hung, x_m, y_m, z_m) for hung in lights])
    factors = (spot.low / spot.best, 1.0, spot.high / spot.best) if spot.best > 0.0 else (1.0,) * 3
    cool_m = _COOL_ALONG * room.box.length_m, room.box.depth_m / 2.0, room.back_m
    cool = float(lux_field(lights, *cool_m))
    fair_lx, fair = fair_from_lx(bands), None
    if fair_lx is not None:
        ground = ground_of(room.box, room.platform, room.back_m, None, CELLS)
        on = ground.platform
        light = lux_field(lights, ground.x_m[on], ground.y_m[on], ground.z_m[on])
        fair = Estimate(*(float(np.mean(light * factor >= fair_lx)) for factor in factors))
    low, _, high = factors
    return LightThere(tuple(lights), spot, Estimate(cool * low**2, cool, cool * high**2), fair)


def _lux(hung: HungLight, x_m: float, y_m: float, z_m: float) -> Estimate:
    return lux_at(hung, x_m, y_m, min(z_m, hung.z_m - _NEAREST_M))
