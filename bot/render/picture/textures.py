"""Textures as plain lines, cut where they end: a pattern costs the rasteriser ten times as much."""

from math import floor

from bot.render.picture.geometry import Rect
from bot.render.picture.inks import Ink
from bot.render.picture.svg import Shape, path

__all__ = ["slanted"]


def slanted(box: Rect, ink: Ink = Ink.UV, *, crossed: bool = False) -> Shape:
    """Return slanted lines in a rectangle: what is too strong, or crossed what is too near."""
    step, tall, parts = 15.6, box.y1 - box.y0, []
    for way in (1, -1) if crossed else (1,):
        start = floor((box.x0 - (tall if way > 0 else 0.0)) / step) * step
        while start < box.x1 + (0.0 if way > 0 else tall):
            if way > 0:
                first, last = max(box.x0 - start, 0.0), min(box.x1 - start, tall)
            else:
                first, last = max(start - box.x1, 0.0), min(start - box.x0, tall)
            if last > first:
                a, b = (start + way * first, box.y0 + first), (start + way * last, box.y0 + last)
                parts.append(f"M{a[0]:.0f} {a[1]:.0f}L{b[0]:.0f} {b[1]:.0f}")
            start += step
    return path("".join(parts) or "M0 0", stroke=ink, stroke_width=1.8, stroke_opacity=0.42)
