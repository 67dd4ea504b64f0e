"""What is read with, drawn at its place: the ring, the bead or the dome is the place itself."""

from collections.abc import Callable

from bot.drawing import Tool
from bot.render.picture.geometry import Rect
from bot.render.picture.inks import Ink
from bot.render.picture.svg import Point, Shape, circle, path, rect

__all__ = ["tool_shapes"]

_Drawn = tuple[list[Shape], list[Rect]]


def tool_shapes(tool: Tool, place: Point, way: float) -> _Drawn:
    """Return a tool read with at a place, to its right (``way`` 1) or left (-1), and where it is.

    Its first rectangle is the place itself, the others what stands beside it.
    """
    return _DRAWN[tool](*place, way)


def _gun(x: float, y: float, way: float) -> _Drawn:
    """Return an infrared gun that looks down at a ring."""
    muzzle_x, muzzle_y = x + 30.0 * way, y - 46.0
    sight = f"M{muzzle_x:.1f} {muzzle_y:.1f}L{x:.1f} {y:.1f}"
    body = (
        "M0-11H44c8 0 12 5 12 11 0 5-3 8-7 9l8 27c1 5-2 8-7 8H37c-4 0-6-2-7-6l-7-27H4c-3 0-4-2-4-4z"
    )
    turned = f"translate({muzzle_x:.1f} {muzzle_y:.1f}) scale({way:.0f} 1) rotate(-40)"
    return [
        path(sight, stroke=Ink.HEAT, stroke_width=3.0, stroke_dasharray="2 7",
             stroke_linecap="round"),
        circle(x, y, 6.0, fill=Ink.PAPER, stroke=Ink.HEAT, stroke_width=3.2),
        Shape("g", {"transform": turned}, inside=[
            path(body, fill=Ink.WHITE, stroke=Ink.EDGE, stroke_width=2.8,
                 stroke_linejoin="round"),
            rect(-6.0, -8.0, 8.0, 16.0, rx=2.0, fill=Ink.EDGE),
            rect(33.0, -7.0, 16.0, 12.0, rx=3.0, fill=Ink.LAMP_LIGHT, stroke=Ink.EDGE,
                 stroke_width=1.8),
        ]),
    ], [
        Rect(x - 9.0, y - 9.0, x + 9.0, y + 9.0),
        Rect(min(x + 20 * way, x + 96 * way), y - 96.0, max(x + 20 * way, x + 96 * way), y - 40.0),
    ]  # fmt: skip


def _probe(x: float, y: float, way: float) -> _Drawn:
    """Return a probe: its bead is the place, its display stands above and beside it."""
    bx, by = x + 34.0 * way, y - 58.0
    cable = (
        f"M{bx:.1f} {by + 17:.1f}C{bx:.1f} {by + 46:.1f} {x + 24 * way:.1f} {y - 2:.1f} "
        f"{x + 6 * way:.1f} {y:.1f}"
    )
    return [
        path(cable, stroke=Ink.INK, stroke_width=3.0),
        rect(x - 9.0, y - 5.0, 18.0, 10.0, rx=5.0, fill=Ink.METAL, stroke=Ink.INK,
             stroke_width=2.4),
        *_display(bx, by, 46.0, 34.0, "h7m4 0h7"),
    ], [
        Rect(x - 10.0, y - 6.0, x + 10.0, y + 6.0),
        Rect(min(x, bx - 24.0), by - 18.0, max(x, bx + 24.0), y - 6.0),
    ]  # fmt: skip


def _night(x: float, y: float, way: float) -> _Drawn:
    """Return a thermometer that keeps the lowest, and a moon beside it."""
    mx = x - 50.0 * way
    moon = (
        f"M{mx + 6:.1f} {y - 16:.1f}A17 17 0 1 0 {mx + 15:.1f} {y + 7:.1f} "
        f"14 14 0 0 1 {mx + 6:.1f} {y - 16:.1f}z"
    )
    arrow = (
        f"M{x - 11:.1f} {y - 8:.1f}v10m-5-5l5 6 5-6M{x - 17:.1f} {y + 8:.1f}h12"
        f"M{x + 2:.1f} {y:.1f}h6m4 0h6"
    )
    return [
        path(moon, fill=Ink.COOL_PALE, stroke=Ink.COOL, stroke_width=3.0, stroke_linejoin="round"),
        *_display(x, y, 58.0, 40.0, ""),
        path(arrow, stroke=Ink.SCREEN_INK, stroke_width=3.0, stroke_linecap="round",
             stroke_linejoin="round"),
    ], [
        Rect(x - 30.0, y - 21.0, x + 30.0, y + 21.0),
        Rect(min(x, mx - 20.0), y - 21.0, max(x, mx + 20.0), y + 21.0),
    ]  # fmt: skip


def _display(x: float, y: float, wide: float, tall: float, digits: str) -> list[Shape]:
    told = f"M{x - 9:.1f} {y:.1f}{digits}" if digits else ""
    return [
        rect(x - wide / 2, y - tall / 2, wide, tall, rx=7.0, fill=Ink.WHITE, stroke=Ink.EDGE,
             stroke_width=2.6),
        rect(x - wide / 2 + 6.0, y - tall / 2 + 6.0, wide - 12.0, tall - 12.0, rx=3.0,
             fill=Ink.SCREEN, stroke=Ink.SCREEN_INK, stroke_width=1.5),
        *([path(told, stroke=Ink.SCREEN_INK, stroke_width=4.0)] if told else []),
    ]  # fmt: skip


def _meter(x: float, y: float, way: float) -> _Drawn:
    """Return a UV meter held upright, the dome on its top level with the place beside it."""
    mx = x + 26.0 * way
    dome = f"M{mx - 8:.1f} {y:.1f}a8 9 0 0 1 16 0z"
    return [
        path(dome, fill=Ink.GLOW, stroke=Ink.UV, stroke_width=2.6),
        rect(mx - 17.0, y, 34.0, 56.0, rx=7.0, fill=Ink.WHITE, stroke=Ink.EDGE, stroke_width=2.6),
        rect(mx - 11.0, y + 8.0, 22.0, 17.0, rx=3.0, fill=Ink.GLOW, stroke=Ink.UV_ON_TOOL,
             stroke_width=1.6),
        path(f"M{mx - 6:.1f} {y + 17:.1f}h5m3 0h5", stroke=Ink.UV_ON_TOOL, stroke_width=3.6),
        circle(mx, y + 40.0, 5.5, fill=Ink.UV_ON_TOOL),
        circle(x, y, 4.0, fill=Ink.UV),
    ], [
        Rect(x - 5.0, y - 5.0, x + 5.0, y + 5.0),
        Rect(mx - 19.0, y - 10.0, mx + 19.0, y + 58.0),
    ]  # fmt: skip


def _clock(x: float, y: float, way: float) -> _Drawn:
    hands = f"M{x:.1f} {y - 12:.1f}V{y:.1f}l{8 * way:.1f} 6"
    return [
        circle(x, y, 19.0, fill=Ink.WHITE, stroke=Ink.EDGE, stroke_width=3.0),
        path(hands, stroke=Ink.EDGE, stroke_width=3.0, stroke_linecap="round",
             stroke_linejoin="round"),
    ], [Rect(x - 21.0, y - 21.0, x + 21.0, y + 21.0)]  # fmt: skip


_DRAWN: dict[Tool, Callable[[float, float, float], _Drawn]] = {
    Tool.INFRARED_GUN: _gun,
    Tool.PROBE: _probe,
    Tool.UV_METER: _meter,
    Tool.NIGHT: _night,
    Tool.CLOCK: _clock,
}
