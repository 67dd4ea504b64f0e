"""The two views of a section answer: the enclosure to scale with the maps of UVI in it."""

import numpy as np

from bot.answers.figures import length, uvi_estimate, uvi_range
from bot.answers.section_layout import Layout
from bot.answers.uv_parts import Wish, lamp_name, screen_phrase
from bot.drawing import Bar, Block, Dimension, End, Grid, Place, Side
from bot.language.quantities import Units
from bot.reply import Picture
from calc.uv.patches import SHADE_UVI, Patches
from calc.uv.screen import NoScreen
from calc.uv.section import Cut, section_map

__all__ = ["section_picture"]

_ACROSS, _UP = 61, 41


def section_picture(room: Layout, found: Patches, wish: Wish, alt: str, units: Units) -> Picture:
    """Return the enclosure seen from the front, and below it from its end."""
    box, platform, tube = room.box, room.platform, room.tubes[0]
    first = tube.x_m - room.tube_length_m / 2.0
    middle = room.basking_x_m
    label = lamp_name(tube.lamp)
    drawing = Side(
        title=f"Where the UV goes, for {wish.whom}",
        subtitle=f"{_counted(len(room.tubes))}{label}, {screen_phrase(tube.screen)}",
        width_m=box.length_m,
        height_m=box.height_m,
        width_label=length(box.length_m, units),
        height_label=length(box.height_m, units),
        lid="" if isinstance(tube.screen, NoScreen) else "screen",
        tubes=(Bar(first, first + room.tube_length_m, tube.z_m, f"UV tube {label}"),),
        heat_lamp=Place(room.heat.x_m, box.height_m, "heat lamp"),
        blocks=(Block(platform.x0_m, platform.x1_m, 0.0, platform.top_m, "platform"),)
        if platform.top_m > 0.0
        else (),
        back=Place(middle, room.back_z_m, ""),
        dimensions=(
            Dimension(
                middle, tube.z_m, middle, room.back_z_m, length(tube.z_m - room.back_z_m, units)
            ),
        ),
        grid=_grid(room, wish, Cut.SIDE, box.depth_m / 2.0),
        places=tuple(
            Place(place.x_m, place.z_m, f"{name}: UVI {uvi_estimate(place.uvi)}")
            for name, place in (("strongest", found.strongest), ("weakest", found.weakest))
        ),
        ends=(
            End("warm end", f"UVI {uvi_range(wish.low, wish.high)} to bask in", True),
            End("cool end", f"shade, under UVI {SHADE_UVI}", False),
        ),
        note="The maps are those of a level back; above, under the middle of the depth; hides are "
        "not in them.",
        end=_end(room, wish, units),
    )
    return Picture(alt=alt, drawing=drawing)


def _counted(tubes: int) -> str:
    return "" if tubes == 1 else f"{tubes} tubes, each "


def _end(room: Layout, wish: Wish, units: Units) -> Side:
    """Return the box seen from its warm end, cut across the middle of the platform."""
    box, platform = room.box, room.platform
    middle = (platform.y0_m + platform.y1_m) / 2.0
    return Side(
        title=f"Seen from the warm end, cut {length(room.basking_x_m, units)} from it",
        subtitle="",
        width_m=box.depth_m,
        height_m=box.height_m,
        width_label=length(box.depth_m, units),
        height_label=length(box.height_m, units),
        lid="" if isinstance(room.tubes[0].screen, NoScreen) else "screen",
        tubes=tuple(
            Bar(tube.y_m, tube.y_m, tube.z_m, _counted_short(len(room.tubes)) if not n else "")
            for n, tube in enumerate(room.tubes)
        ),
        blocks=(Block(platform.y0_m, platform.y1_m, 0.0, platform.top_m, "platform"),)
        if platform.top_m > 0.0
        else (),
        back=Place(middle, room.back_z_m, ""),
        grid=_grid(room, wish, Cut.END, room.basking_x_m),
    )


def _counted_short(tubes: int) -> str:
    return "UV tube" if tubes == 1 else f"{tubes} UV tubes"


def _grid(room: Layout, wish: Wish, cut: Cut, at_m: float) -> Grid:
    found = section_map(room.tubes, room.box, cut, at_m, _ACROSS, _UP)
    # Right at the tube the engine has no answer; the picture shows its strongest colour there.
    strongest = float(np.nanmax(found.uvi))
    values = np.nan_to_num(found.uvi, nan=strongest)
    levels = sorted({SHADE_UVI, 1.0, 2.0, 10.0, *(v for v in (wish.low, wish.high) if v > 0.0)})
    return Grid(
        x=tuple(float(x) for x in found.across_m),
        y=tuple(float(z) for z in found.z_m),
        values=tuple(tuple(float(v) for v in line) for line in values),
        levels=tuple(levels),
        wanted=(wish.low, wish.high) if 0.0 < wish.low < wish.high else None,
    )
