"""What stands and hangs in an enclosure, as signs: the box, a platform, an animal, lamps."""

from typing import TYPE_CHECKING, Any

import numpy as np

from bot.drawing import Bar, Block, Place, Side
from bot.render.picture import inks
from bot.render.picture.lettering import halo

if TYPE_CHECKING:
    from matplotlib.axes import Axes

__all__ = [
    "DOME_IN",
    "SMALL",
    "draw_animal",
    "draw_block",
    "draw_box",
    "draw_heat_lamp",
    "draw_tube",
]

SMALL = 10.5
DOME_IN = 0.22
"""The height [in] of the sign of a heat lamp."""


def draw_box(axes: "Axes", side: Side, scale: float) -> None:
    """Draw the enclosure, its lid where it has one, and its size."""
    from matplotlib.patches import Rectangle

    wide, high = side.width_m, side.height_m
    axes.add_patch(
        Rectangle((0, 0), wide, high, fill=False, edgecolor=inks.INK, linewidth=2.4, zorder=3)
    )
    if side.lid:
        thick = 0.06 / scale
        lid = Rectangle(
            (0, high),
            wide,
            thick,
            facecolor=inks.PAPER,
            edgecolor=inks.INK,
            hatch="xxxx",
            linewidth=1.0,
            zorder=3,
        )
        axes.add_patch(lid)
    small: dict[str, Any] = {"fontsize": SMALL, "color": inks.MUTED}
    axes.text(wide / 2, -0.1 / scale, side.width_label, ha="center", va="top", **small)
    axes.text(
        -0.1 / scale, high / 2, side.height_label, ha="right", va="center", rotation=90, **small
    )


def draw_block(axes: "Axes", block: Block) -> None:
    """Draw something solid with its name."""
    from matplotlib.patches import Rectangle

    axes.add_patch(
        Rectangle(
            (block.x0, block.y0),
            block.x1 - block.x0,
            block.y1 - block.y0,
            facecolor="#C9BFAE",
            edgecolor=inks.INK,
            hatch="..",
            linewidth=1.4,
            zorder=2,
        )
    )
    if block.label:
        axes.text(
            (block.x0 + block.x1) / 2,
            (block.y0 + block.y1) / 2,
            block.label,
            ha="center",
            va="center",
            fontsize=SMALL,
            path_effects=halo(),
            zorder=6,
        )


def draw_animal(axes: "Axes", back: Place, long_m: float) -> None:
    """Draw a reptile lying flat, the top of its back at the place itself."""
    from matplotlib.patches import Polygon

    # A lizard seen from its side, head to the left; 1 long, its back at height 0.
    shape = np.array(
        [
            (-0.5, -0.1), (-0.42, -0.02), (-0.3, -0.03), (-0.2, 0.0), (0.0, 0.0), (0.14, -0.03),
            (0.3, -0.1), (0.62, -0.17), (0.3, -0.16), (0.18, -0.16), (0.2, -0.21), (0.1, -0.21),
            (0.06, -0.17), (-0.18, -0.17), (-0.2, -0.21), (-0.3, -0.21), (-0.28, -0.14),
            (-0.42, -0.13),
        ]
    )  # fmt: skip
    at = np.array([back.x, back.y])
    axes.add_patch(
        Polygon(
            at + shape * long_m, facecolor=inks.INK, edgecolor=inks.PAPER, linewidth=1.2, zorder=4
        )
    )
    if back.text:
        axes.annotate(
            back.text,
            (back.x, back.y),
            xytext=(0.62 * long_m + back.x, back.y),
            fontsize=SMALL,
            va="bottom",
            path_effects=halo(),
            zorder=6,
        )


def draw_tube(axes: "Axes", tube: Bar) -> None:
    """Draw a tube, from its side or from its end."""
    if tube.x1 > tube.x0:
        ends = [tube.x0, tube.x1]
        axes.plot(ends, [tube.y] * 2, color=inks.INK, linewidth=9, solid_capstyle="butt", zorder=4)
        axes.plot(
            ends, [tube.y] * 2, color="#FFF3C4", linewidth=5.4, solid_capstyle="butt", zorder=5
        )
    else:
        axes.plot(
            [tube.x0], [tube.y], marker="o", markersize=11, markerfacecolor="#FFF3C4",
            markeredgecolor=inks.INK, markeredgewidth=2.0, zorder=5,
        )  # fmt: skip


def draw_heat_lamp(axes: "Axes", lamp: Place, scale: float) -> None:
    """Draw a lamp's dome, its opening at the place itself."""
    from matplotlib.patches import Polygon

    wide, high = 0.3 / scale, DOME_IN / scale
    shape = [(-0.5 * wide, 0), (-0.2 * wide, high), (0.2 * wide, high), (0.5 * wide, 0)]
    dome = [(lamp.x + x, lamp.y + y) for x, y in shape]
    axes.add_patch(
        Polygon(dome, facecolor=inks.RUST, edgecolor=inks.INK, linewidth=1.6, zorder=5.5)
    )
