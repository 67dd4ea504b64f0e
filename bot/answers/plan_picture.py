"""The side view of a plan: the enclosure to scale with tube, lamp, platform and back in place."""

import numpy as np

from bot.answers.curves import shortened
from bot.answers.figures import (
    length,
    number,
    temperature_range,
    uvi,
    uvi_estimate,
    uvi_range,
    watts,
)
from bot.answers.plan_asked import Asked
from bot.answers.uv_parts import lamp_name, screen_phrase
from bot.drawing import Bar, Block, Dimension, End, Grid, Place, Side
from bot.language.quantities import Units
from bot.reply import Picture
from calc.heat.enclosure import Lid
from calc.setup.plan import Setup
from calc.uv.lamp import Lamp
from calc.uv.patches import SHADE_UVI
from calc.uv.section import Box, Cut, section_map

__all__ = ["plan_picture"]

_ACROSS, _UP = 61, 41
_SHELF = 0.04


def plan_picture(found: Setup, what: Asked, units: Units) -> Picture:
    """Return the enclosure seen from the front, cut under the tube."""
    box, light, places = what.request.box, found.light, found.places
    platform, middle, back_z = (
        places.platform,
        places.tube.x_m,
        light.platform_top_m + what.back.best,
    )
    tube = Bar(0.0, found.fit.length_m, light.tube_z_m, _tube_name(light.lamp))
    beside = platform.x1_m + 0.03 * box.length_m
    distance, top = length(light.distance_m, units), length(light.platform_top_m, units)
    from_wall = length(middle, units)
    drawing = Side(
        title=f"The set-up for {what.whom}",
        subtitle=f"{lamp_name(light.lamp)}, {screen_phrase(light.hanging.screen)}",
        width_m=box.length_m,
        height_m=box.height_m,
        width_label=length(box.length_m, units),
        height_label=length(box.height_m, units),
        lid="" if box.lid is Lid.SOLID else "mesh",
        tubes=(tube,),
        heat_lamp=_lamp(found),
        blocks=(_block(found, what),),
        back=Place(middle, back_z, ""),
        dimensions=(
            Dimension(middle, light.tube_z_m, middle, back_z, distance),
            Dimension(beside, 0.0, beside, platform.top_m, top),
        ),
        grid=_grid(found, what),
        places=_places(found, what, units),
        ends=_ends(found, what),
        note=f"The middle of tube and {what.place_name} is {from_wall} from the warm end wall. "
        "Hides are not in the picture.",
    )
    alt = (
        f"Side view to scale: {drawing.title}, {drawing.subtitle}.",
        f"From the warm end, on the left, the tube reaches {length(found.fit.length_m, units)}.",
        f"The {what.place_name}: top {top} over the floor, middle {from_wall} from the warm end.",
        f"From tube to back {distance}: UVI {uvi_estimate(light.uvi)}.",
        *(f"{end.name}: {end.text}." for end in drawing.ends),
    )
    return Picture(alt=shortened(alt), drawing=drawing)


def _tube_name(lamp: Lamp) -> str:
    return "UV tube" if lamp.own else f"UV tube, {number(lamp.strength_percent, 0.1)} %"


def _block(found: Setup, what: Asked) -> Block:
    """Return what it basks on: a platform from the floor up, or a shelf."""
    platform, high = found.places.platform, what.request.box.height_m
    shelf = what.place_name != "platform" and platform.top_m > _SHELF * high
    bottom = platform.top_m - _SHELF * high if shelf else 0.0
    label = "" if shelf or platform.top_m < 0.12 * high else what.place_name
    return Block(platform.x0_m, platform.x1_m, bottom, platform.top_m, label)


def _lamp(found: Setup) -> Place | None:
    warmth = found.warmth
    if warmth.watts is None or warmth.lamp_distance_m is None:
        return None
    sizes = (warmth.watts.best,) if warmth.first is None else sorted(warmth.first.buy_w)
    told = " or ".join(watts(size) for size in sizes)
    z = found.light.platform_top_m + warmth.lamp_distance_m
    return Place(found.places.heat.x_m, z, f"heat lamp, {told}")


def _places(found: Setup, what: Asked, units: Units) -> tuple[Place, ...]:
    platform, box = found.places.platform, what.request.box
    wide, top = platform.x1_m - platform.x0_m, platform.top_m
    wanted = uvi_range(what.wish.low, what.wish.high)
    meter = f"UV index meter at back height: {wanted}"
    told = [Place(platform.x1_m - 0.15 * wide, top + what.back.best, meter)]
    surface, air = what.animal.basking_surface_c, what.animal.cool_air_c or what.animal.warm_air_c
    if surface is not None:
        span = temperature_range(surface.low, surface.high, units)
        at = platform.x0_m + 0.12 * wide
        told.append(Place(at, top, f"Infrared gun where it basks: {span}"))
    if air is not None:
        span = temperature_range(air.low, air.high, units)
        told.append(Place(0.93 * box.length_m, 0.12 * box.height_m, f"Probe in the shade: {span}"))
    return tuple(told)


def _ends(found: Setup, what: Asked) -> tuple[End, ...]:
    heat = "" if found.warmth.watts is None else " and heat"
    wanted = f"UVI {uvi_range(what.wish.low, what.wish.high)}{heat}"
    weakest = f"down to UVI {uvi(found.places.met.weakest.uvi.best)}, and a hide"
    return End("warm end", wanted, True), End("cool end", weakest, False)


def _grid(found: Setup, what: Asked) -> Grid:
    request, tube = what.request, found.places.tube
    box = Box(request.box.length_m, request.box.depth_m, request.box.height_m)
    mapped = section_map([tube], box, Cut.SIDE, tube.y_m, _ACROSS, _UP)
    # Right at the tube the engine has no answer; the picture shows its strongest colour there.
    values = np.nan_to_num(mapped.uvi, nan=float(np.nanmax(mapped.uvi)))
    # Over a tube that hangs inside there is no UV to show.
    lit = mapped.z_m <= tube.z_m
    low, high = what.wish.low, what.wish.high
    levels = sorted({SHADE_UVI, 1.0, 2.0, 10.0, *(v for v in (low, high) if v > 0.0)})
    return Grid(
        x=tuple(float(x) for x in mapped.across_m),
        y=tuple(float(z) for z in mapped.z_m[lit]),
        values=tuple(tuple(float(v) for v in line) for line in values[lit]),
        levels=tuple(levels),
        wanted=(low, high) if 0.0 < low < high else None,
    )
