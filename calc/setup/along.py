"""Where tube, platform and heat lamp go along and across the enclosure, so that both meet."""

from dataclasses import dataclass, replace
from enum import Enum, auto
from functools import cached_property

from calc.heat.enclosure import Enclosure
from calc.setup.light import LAMPS_APART_M, LightPlan
from calc.setup.room import Room
from calc.uv.choice import tube_length_for
from calc.uv.ground import HeatPatch, Platform
from calc.uv.lamp import Lamp, side_by_side
from calc.uv.patches import Patches
from calc.uv.screen import Screen
from calc.uv.section import Box, HungTube
from calc.uv.tube import STANDARD_T5_HO
from calc.validity import check

__all__ = [
    "DARK_ENDS_M",
    "MOST_COVERED",
    "Along",
    "Lies",
    "TubeFit",
    "along",
    "fit_lying",
    "laid_out",
    "tube_in",
]

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


class Lies(Enum):
    """How a tube lies in a box."""

    FROM_WARM_END = auto()
    WHOLE_LENGTH = auto()
    ACROSS = auto()


@dataclass(frozen=True)
class Along:
    """The places of everything [m] and what the animal meets there, worked out when it is asked.

    With a tube across, the box of the room is turned: its x is from the back wall, its y from the
    warm end.
    """

    room: Room
    heat: HeatPatch

    @property
    def tubes(self) -> tuple[HungTube, ...]:
        """The tubes, the hindmost first."""
        return self.room.tubes

    @property
    def platform(self) -> Platform:
        """The basking place."""
        return self.room.platform

    @property
    def tube(self) -> HungTube:
        """The tube, or the hindmost of several."""
        return self.tubes[0]

    @cached_property
    def met(self) -> Patches:
        """What the animal meets."""
        return self.room.met()


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


def fit_lying(lies: Lies, box: Enclosure, owned_m: float | None = None) -> TubeFit | None:
    """Return the tube that lies so in a box, or the one that is owned; None where none does.

    Parameters
    ----------
    lies : from the warm end over half to two thirds, over the whole length, or across
    box : the enclosure
    owned_m : length of a tube that is owned [m], 0.13 or more, caps included

    Returns
    -------
    TubeFit or None
        The longest standard tube of the whole length or of the depth; one across leaves the box
        as free as if it covered none of it. Source: half_to_two_thirds; t5_lengths.

    Examples
    --------
    >>> [fit_lying(lies, Enclosure(1.2, 0.6, 0.6)).length_m for lies in Lies]
    [0.849, 1.149, 0.549]
    """
    if lies is Lies.FROM_WARM_END:
        return tube_in(box.length_m, owned_m)
    space_m = box.length_m if lies is Lies.WHOLE_LENGTH else box.depth_m
    fitting = [tube for tube in STANDARD_T5_HO if tube.face_to_face_m <= space_m]
    longest = max(fitting, key=lambda tube: tube.face_to_face_m, default=None)
    covers = 1.0 if lies is Lies.WHOLE_LENGTH else 0.0
    if owned_m is not None:
        fits = lies is Lies.ACROSS and owned_m <= space_m
        return TubeFit(owned_m, None, covers) if fits else None
    return None if longest is None else TubeFit(longest.face_to_face_m, longest.power_w, covers)


def along(
    box: Enclosure,
    fit: TubeFit,
    light: LightPlan,
    back_m: float,
    low_uvi: float,
    high_uvi: float,
    lies: Lies = Lies.FROM_WARM_END,
) -> Along:
    """Lay out tube, platform and heat lamp, and tell what the animal meets.

    Parameters
    ----------
    box : the enclosure
    fit : the tube's length
    light : the tube in its height
    back_m : height of the back over what it lies on [m]
    low_uvi, high_uvi : the range wanted [1]
    lies : how the tube lies

    Returns
    -------
    Along
        The tube starts at the warm end wall; heat lamp and tube hang side by side over the
        middle of the platform, the tube behind. One over the whole length or across leaves the
        platform where it is; across, the tube is nearer to the warm end than the heat lamp.

    Notes
    -----
    Source: half_to_two_thirds; plan_judgement; line_source.
    """
    usual = fit if lies is Lies.FROM_WARM_END else tube_in(box.length_m) or fit
    tubes, platform, heat = laid_out(
        box, usual.length_m, light.lamp, light.hanging.screen, light.tube_z_m, light.platform_top_m
    )
    room = Room(
        Box(box.length_m, box.depth_m, box.height_m),
        tubes,
        platform,
        back_m,
        low_uvi,
        high_uvi,
        heat,
    )
    if lies is Lies.WHOLE_LENGTH:
        middle = tuple(replace(tube, x_m=box.length_m / 2.0) for tube in tubes)
        room = replace(room, tubes=middle)
    elif lies is Lies.ACROSS:
        room = _turned(room)
    assert room.heat is not None
    return Along(room, room.heat)


def _turned(room: Room) -> Room:
    """Return the same box with its tubes across: over the same platform, the heat lamp beside."""
    box, old, heat = room.box, room.platform, room.heat
    assert heat is not None
    middle_m, apart_m = old.middle_m[0], heat.y_m - room.tubes[-1].y_m
    by_m = middle_m - apart_m / 2.0 - room.tubes[-1].y_m
    return replace(
        room,
        box=Box(box.depth_m, box.length_m, box.height_m),
        tubes=tuple(
            replace(tube, x_m=box.depth_m / 2.0, y_m=max(tube.y_m + by_m, 0.0))
            for tube in room.tubes
        ),
        platform=Platform(old.y0_m, old.y1_m, old.x0_m, old.x1_m, old.top_m),
        heat=HeatPatch(box.depth_m / 2.0, middle_m + apart_m / 2.0, heat.radius_m),
    )


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
