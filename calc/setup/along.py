"""Where tube, platform and heat lamp go along and across the enclosure, so that both meet."""

from dataclasses import dataclass

from calc.heat.enclosure import Enclosure
from calc.setup.light import LightPlan
from calc.setup.set_up import LAMPS_APART_M
from calc.uv.choice import tube_length_for
from calc.uv.ground import HeatPatch, Platform
from calc.uv.lamp import Lamp, side_by_side
from calc.uv.patches import Patches, patches
from calc.uv.screen import Screen
from calc.uv.section import Box, HungTube
from calc.uv.tube import STANDARD_T5_HO
from calc.validity import check

__all__ = ["DARK_ENDS_M", "MOST_COVERED", "Along", "TubeFit", "along", "laid_out", "tube_in"]

# To a tenth of a millimetre: the difference of two floats is not quite the caps.
DARK_ENDS_M = round(STANDARD_T5_HO[0].face_to_face_m - STANDARD_T5_HO[0].lit_length_m, 4)
"""What the caps of a tube take from its lit length. Source: t5_lengths."""

MOST_COVERED = 1.15 * 2.0 / 3.0
"""A tube that covers more leaves no end for shade and cool. Source: plan_judgement."""

# The caps, and the least light that the model of a tube knows.
_SHORTEST_OWNED_M = round(DARK_ENDS_M + 0.1, 4)
_PATCH_RADIUS_M = 0.10
_SHORTEST_PLATFORM_M, _LONGEST_PLATFORM_M, _DEEPEST_PLATFORM_M = 0.20, 0.60, 0.40


@dataclass(frozen=True, slots=True)
class TubeFit:
    """A tube's length [m], its power [W] where it is a standard one, and the share it covers."""

    length_m: float
    power_w: float | None
    covers: float

    @property
    def lit_m(self) -> float:
        """The part that shines [m]."""
        return self.length_m - DARK_ENDS_M


@dataclass(frozen=True, slots=True)
class Along:
    """The places of everything [m] and what the animal meets there."""

    tubes: tuple[HungTube, ...]
    platform: Platform
    heat: HeatPatch
    met: Patches

    @property
    def tube(self) -> HungTube:
        """The tube, or the hindmost of several."""
        return self.tubes[0]


def tube_in(length_m: float, owned_m: float | None = None) -> TubeFit | None:
    """Return the tube for an enclosure, or the one that is owned; None where none is short enough.

    Parameters
    ----------
    length_m : inside length of the enclosure [m], 0.3 to 4
    owned_m : length of a tube that is owned [m], 0.13 or more, caps included

    Returns
    -------
    TubeFit or None
        Half to two thirds of the length where a standard tube allows it, else the nearest that
        fits in. Source: half_to_two_thirds; t5_lengths.

    Examples
    --------
    >>> tube_in(1.2).length_m, tube_in(0.5)
    (0.849, None)
    """
    if owned_m is not None:
        check("length of the tube", owned_m, _SHORTEST_OWNED_M, unit="m")
        return None if owned_m > length_m else TubeFit(owned_m, None, owned_m / length_m)
    choice = tube_length_for(length_m)
    tube = choice.tube or choice.longer or choice.shorter
    if tube is None or tube.face_to_face_m > length_m:
        return None
    return TubeFit(tube.face_to_face_m, tube.power_w, tube.face_to_face_m / length_m)


def along(
    box: Enclosure, fit: TubeFit, light: LightPlan, back_m: float, low_uvi: float, high_uvi: float
) -> Along:
    """Lay out tube, platform and heat lamp, and tell what the animal meets.

    Parameters
    ----------
    box : the enclosure
    fit : the tube's length
    light : the tube in its height
    back_m : height of the back over what it lies on [m]
    low_uvi, high_uvi : the range wanted [1]

    Returns
    -------
    Along
        The tube starts at the warm end wall; heat lamp and tube hang side by side over the
        middle of the platform, the tube behind.

    Notes
    -----
    Source: half_to_two_thirds; plan_judgement; line_source.
    """
    tubes, platform, heat = laid_out(
        box, fit.length_m, light.lamp, light.hanging.screen, light.tube_z_m, light.platform_top_m
    )
    room = Box(box.length_m, box.depth_m, box.height_m)
    met = patches(tubes, room, platform, back_m, low_uvi, high_uvi, heat)
    return Along(tubes, platform, heat, met)


def laid_out(
    box: Enclosure | Box, long_m: float, lamp: Lamp, screen: Screen, tube_z_m: float, top_m: float
) -> tuple[tuple[HungTube, ...], Platform, HeatPatch]:
    """Return tubes, platform and heat patch in the usual places.

    Parameters
    ----------
    box : the enclosure
    long_m : length of the tube, caps included [m], no longer than the box
    lamp : the tube, or several side by side
    screen : what is below it
    tube_z_m : height of the tube over the floor [m]
    top_m : top of the platform over the floor [m]

    Returns
    -------
    tuple
        Tubes from the warm end wall, platform under their middle, the patch beside them.

    Notes
    -----
    Source: plan_judgement.
    """
    middle = long_m / 2.0
    wide = max(box.length_m / 4.0, min(_SHORTEST_PLATFORM_M, box.length_m / 3.0))
    wide = min(wide, 2.0 * middle, _LONGEST_PLATFORM_M)
    deep = min(box.depth_m / 2.0, _DEEPEST_PLATFORM_M)
    across, apart = box.depth_m / 2.0, min(LAMPS_APART_M, box.depth_m / 3.0)
    platform = Platform(
        middle - wide / 2.0,
        middle + wide / 2.0,
        across - deep / 2.0,
        across + deep / 2.0,
        top_m,
    )
    tubes = _hung(lamp, screen, middle, across - apart / 2.0, tube_z_m)
    heat = HeatPatch(middle, across + apart / 2.0, min(_PATCH_RADIUS_M, box.depth_m / 4.0))
    return tubes, platform, heat


def _hung(
    lamp: Lamp, screen: Screen, x_m: float, front_y_m: float, z_m: float
) -> tuple[HungTube, ...]:
    """Return the tubes one behind the other, the foremost in its place, none beyond the back wall.

    Tubes whose gap was not told hang in one fixture, all in one place.
    """
    one = side_by_side(lamp, 1, 0.0)
    gap_m = min(lamp.gap_m, front_y_m / max(1, lamp.count - 1))
    behind = (gap_m * number for number in range(lamp.count - 1, -1, -1))
    return tuple(HungTube(one, x_m, front_y_m - by, z_m, screen) for by in behind)
