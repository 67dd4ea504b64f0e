"""An enclosure cut open and to scale: what hangs where, how strong it is, where to measure."""

from typing import TYPE_CHECKING, Any

import numpy as np

from bot.drawing import Dimension, Grid, Side
from bot.render.picture import inks
from bot.render.picture.frame import MARGIN_IN, Frame, bare
from bot.render.picture.glyphs import (
    DOME_IN,
    SMALL,
    draw_animal,
    draw_block,
    draw_box,
    draw_heat_lamp,
    draw_tube,
)
from bot.render.picture.lettering import WIDTH_IN, halo, line_height_in, spread, width_in, wrapped

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.contour import ContourSet
    from matplotlib.figure import Figure

__all__ = ["draw_side"]


_ROOM_IN = WIDTH_IN - 2 * MARGIN_IN
# A box much higher than wide is held to this, and lower where two views go on one sheet.
_TALLEST_IN = {1: 4.6, 2: 3.6}
# Around the box: lamps and their names above, its length below, its height at the left.
_ABOVE_IN, _BELOW_IN, _LEFT_IN, _RIGHT_IN = 0.66, 0.34, 0.32, 0.08
_BADGE_IN = 0.13
_GAP_IN = 0.14
# A level's name keeps this far from walls and from other names.
_EDGE_IN = 0.15
_DOT: dict[str, Any] = {"boxstyle": "circle,pad=0.22", "edgecolor": inks.PAPER, "linewidth": 1.2}


def draw_side(side: Side) -> "Figure":
    """Return the enclosure as a figure, with its list of places below."""
    views = [side, side.end] if side.end else [side]
    scale = min(
        (_ROOM_IN - _LEFT_IN - _RIGHT_IN) / max(view.width_m for view in views),
        (_TALLEST_IN[len(views)] - _ABOVE_IN - _BELOW_IN) / side.height_m,
    )
    heights = [view.height_m * scale + _ABOVE_IN + _BELOW_IN for view in views]
    ends = _ends_in(side)
    places = [wrapped(place.text, _ROOM_IN - 0.36, SMALL) for place in side.places]
    listed_in = sum(len(lines) * line_height_in(SMALL) + 0.04 for lines in places)
    heads = wrapped(side.end.title, _ROOM_IN, SMALL, "bold") if side.end else []
    headed_in = len(heads) * line_height_in(SMALL) + (_GAP_IN if heads else 0.0)
    frame = Frame(side.title, side.subtitle, side.note, sum(heights) + ends + listed_in + headed_in)
    top = frame.body_top_in - heights[0]
    _view(frame, side, top, scale)
    _ends(frame, side, top)
    _list(frame, places, top - ends)
    if side.end:
        top -= ends + listed_in + _GAP_IN
        for number, line in enumerate(heads):
            at = top - number * line_height_in(SMALL)
            frame.text(MARGIN_IN, at, line, SMALL, inks.INK, weight="bold")
        _view(frame, side.end, frame.body_bottom_in, scale)
    return frame.figure


def _view(frame: Frame, side: Side, bottom_in: float, scale: float) -> None:
    """Draw one view of the box, its lowest words at a height of the sheet [in]."""
    spare = (_ROOM_IN - _LEFT_IN - _RIGHT_IN - side.width_m * scale) / 2.0
    tall = side.height_m * scale + _ABOVE_IN + _BELOW_IN
    axes = frame.axes(MARGIN_IN, bottom_in, _ROOM_IN, tall)
    bare(axes)
    axes.set_xlim(-(_LEFT_IN + spare) / scale, side.width_m + (_RIGHT_IN + spare) / scale)
    axes.set_ylim(-_BELOW_IN / scale, side.height_m + _ABOVE_IN / scale)
    if side.grid:
        _map(axes, side, side.grid, scale)
    draw_box(axes, side, scale)
    for block in side.blocks:
        draw_block(axes, block)
    if side.back:
        draw_animal(axes, side.back, 0.42 / scale)
    for tube in side.tubes:
        draw_tube(axes, tube)
    if side.heat_lamp:
        draw_heat_lamp(axes, side.heat_lamp, scale)
    _names(axes, side, scale)
    for dimension in side.dimensions:
        _dimension(axes, dimension)
    for number, place in enumerate(side.places, 1):
        _badge(axes, place.x, place.y, number)


def _map(axes: "Axes", side: Side, grid: Grid, scale: float) -> None:
    """Draw the map up to the lowest tube: above it there is only what holds it."""
    from matplotlib.colors import BoundaryNorm

    up_to = min((tube.y for tube in side.tubes), default=side.height_m)
    shown = [number for number, y in enumerate(grid.y) if y <= up_to]
    if len(shown) < 2:
        return
    heights = [grid.y[number] for number in shown]
    values = np.array(grid.values)[shown]
    # Closest to a tube there is no figure: it is the brightest there is.
    values = np.where(np.isnan(values), np.nanmax(values), values)
    colours = inks.sun_scale()
    edges = [*grid.levels, max(grid.levels[-1] * 1.5, float(np.max(values)) + 1e-9)]
    norm = BoundaryNorm([min(0.0, edges[0]), *edges] if edges[0] > 0.0 else edges, colours.N)
    axes.contourf(
        grid.x, heights, values, levels=norm.boundaries, cmap=colours, norm=norm, zorder=0.5
    )
    thin = [level for level in grid.levels if values.min() < level < values.max()]
    heavy = [level for level in grid.wanted or () if values.min() < level < values.max()]
    how: dict[str, Any] = {"colors": inks.INK, "zorder": 1.0}
    if heavy:
        axes.contour(grid.x, heights, values, levels=heavy, linewidths=2.6, **how)
    if not thin:
        return
    lines = axes.contour(grid.x, heights, values, levels=thin, linewidths=0.9, **how)
    _levels(axes, lines, side, scale)


def _levels(axes: "Axes", lines: "ContourSet", side: Side, scale: float) -> None:
    """Name the levels where there is room: not in a corner, on each other or on a distance."""
    taken = [
        ((d.x0 + d.x1) / 2.0 + width_in(d.label, SMALL, "bold") / 2.0 / scale, (d.y0 + d.y1) / 2.0)
        for d in side.dimensions
    ]
    apart = [width_in(d.label, SMALL, "bold") / 2.0 / scale for d in side.dimensions]
    edge, tall = _EDGE_IN / scale, line_height_in(SMALL) / scale
    labels = axes.clabel(
        lines,
        fmt=lambda level: f"{level:g}",
        fontsize=10.0,
        colors=inks.INK,
        zorder=1.5,
        inline=False,
    )
    for label in labels:
        x, y = label.get_position()
        inside = edge < x < side.width_m - edge and edge < y < side.height_m - edge
        free = all(
            abs(x - left) > wide + edge or abs(y - low) > tall
            for (left, low), wide in zip(taken, apart, strict=True)
        )
        if inside and free:
            label.set_path_effects(halo())
            taken.append((x, y))
            apart.append(edge)
        else:
            label.remove()


def _names(axes: "Axes", side: Side, scale: float) -> None:
    """Write what hangs there above the box, each name clear of the others, with a line to it."""
    named = [(t.label, t.x0 + 0.7 * (t.x1 - t.x0), t.y) for t in side.tubes if t.label]
    if side.heat_lamp and side.heat_lamp.text:
        lamp = side.heat_lamp
        named.append((lamp.text, lamp.x, lamp.y + DOME_IN / scale))
    wide = [(width_in(text, SMALL) + 0.12) / scale for text, _, _ in named]
    places = spread([x for _, x, _ in named], wide, *axes.get_xlim())
    for (text, x, y), place in zip(named, places, strict=True):
        axes.annotate(
            text,
            (x, y),
            xytext=(place, side.height_m + (_ABOVE_IN - 0.2) / scale),
            ha="center",
            va="bottom",
            fontsize=SMALL,
            arrowprops={"arrowstyle": "-", "color": inks.INK, "shrinkA": 0, "shrinkB": 3},
            path_effects=halo(),
            zorder=6,
        )


def _dimension(axes: "Axes", dimension: Dimension) -> None:
    axes.annotate(
        "",
        (dimension.x1, dimension.y1),
        xytext=(dimension.x0, dimension.y0),
        arrowprops={
            "arrowstyle": "<|-|>",
            "color": inks.INK,
            "linewidth": 1.8,
            "shrinkA": 0,
            "shrinkB": 0,
            "mutation_scale": 12,
            "path_effects": halo(),
        },
        zorder=6,
    )
    level = abs(dimension.x1 - dimension.x0) > abs(dimension.y1 - dimension.y0)
    axes.annotate(
        dimension.label,
        ((dimension.x0 + dimension.x1) / 2, (dimension.y0 + dimension.y1) / 2),
        xytext=(0, 5) if level else (7, 0),
        textcoords="offset points",
        ha="center" if level else "left",
        va="bottom" if level else "center",
        fontsize=SMALL,
        weight="bold",
        path_effects=halo(),
        zorder=7,
    )


def _badge(axes: "Axes", x: float, y: float, number: int) -> None:
    axes.text(
        x,
        y,
        str(number),
        ha="center",
        va="center",
        fontsize=SMALL,
        weight="bold",
        color=inks.PAPER,
        bbox=_DOT | {"facecolor": inks.BLUE},
        zorder=8,
    )


def _end_lines(side: Side) -> list[list[str]]:
    return [wrapped(end.text, _ROOM_IN / 2 - 0.1, SMALL) for end in side.ends]


def _ends_in(side: Side) -> float:
    if not side.ends:
        return 0.0
    return (1 + max(len(lines) for lines in _end_lines(side))) * line_height_in(SMALL) + 0.08


def _ends(frame: Frame, side: Side, top_in: float) -> None:
    for end, lines in zip(side.ends, _end_lines(side), strict=True):
        x = MARGIN_IN if end.on_the_left else WIDTH_IN - MARGIN_IN
        align = "left" if end.on_the_left else "right"
        frame.text(x, top_in, end.name, SMALL, inks.INK, weight="bold", ha=align)
        for number, line in enumerate(lines, 1):
            at = top_in - number * line_height_in(SMALL)
            frame.text(x, at, line, SMALL, inks.INK, ha=align)


def _list(frame: Frame, places: list[list[str]], top_in: float) -> None:
    for number, lines in enumerate(places, 1):
        middle = top_in - 0.5 * line_height_in(SMALL) + 0.02
        frame.text(
            MARGIN_IN + _BADGE_IN,
            middle,
            str(number),
            SMALL,
            inks.PAPER,
            ha="center",
            va="center",
            weight="bold",
            bbox=_DOT | {"facecolor": inks.BLUE},
        )
        for line in lines:
            frame.text(MARGIN_IN + 0.36, top_in, line, SMALL, inks.INK)
            top_in -= line_height_in(SMALL)
        top_in -= 0.04
