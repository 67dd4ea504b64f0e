"""Shapes in inks, written out as SVG for one theme: only our own elements, words only as text.

A word from a person becomes the text of an element and never part of markup, an id or a colour.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from xml.etree import ElementTree

from bot.render.picture.inks import Ink, Theme, shown

__all__ = [
    "FONT",
    "Point",
    "Shape",
    "arrow_head",
    "circle",
    "group",
    "path",
    "polygon",
    "polyline",
    "rect",
    "stroke",
    "svg",
    "text",
]

FONT = "Noon Figtree"
Point = tuple[float, float]
_Told = float | Ink | str


@dataclass(slots=True)
class Shape:
    """An element: its attributes, words where it is text, shapes where it is a group."""

    tag: str
    told: dict[str, _Told]
    words: str = ""
    inside: list["Shape"] = field(default_factory=list)


def path(d: str, **told: _Told) -> Shape:
    """Return a path; ``d`` is made of numbers by our own code."""
    return Shape("path", {"d": d, **told})


def polyline(points: Sequence[Point], **told: _Told) -> Shape:
    """Return straight lines through points, as a path."""
    return path("M" + "L".join(f"{x:.1f} {y:.1f}" for x, y in points), **told)


def polygon(points: Sequence[Point], **told: _Told) -> Shape:
    """Return a closed figure with straight sides, as a path."""
    return path("M" + "L".join(f"{x:.1f} {y:.1f}" for x, y in points) + "z", **told)


def arrow_head(tip: Point, way: Point, long: float, ink: Ink) -> Shape:
    """Return the head of an arrow that goes a way, a vector of length 1."""
    (x, y), (ux, uy), half = tip, way, long / 2.0
    left = (x - ux * long - uy * half, y - uy * long + ux * half)
    right = (x - ux * long + uy * half, y - uy * long - ux * half)
    return polygon([tip, left, right], fill=ink)


def stroke(start: Point, end: Point, ink: Ink, wide: float, **told: _Told) -> Shape:
    """Return a straight line of a width."""
    return polyline((start, end), stroke=ink, stroke_width=wide, **told)


def rect(x: float, y: float, wide: float, tall: float, **told: _Told) -> Shape:
    """Return a rectangle by its top left corner."""
    return Shape("rect", {"x": x, "y": y, "width": wide, "height": tall, **told})


def circle(x: float, y: float, r: float, **told: _Told) -> Shape:
    """Return a circle."""
    return Shape("circle", {"cx": x, "cy": y, "r": r, **told})


def text(x: float, y: float, words: str, **told: _Told) -> Shape:
    """Return a line of words by the place of its foot."""
    return Shape("text", {"x": x, "y": y, **told}, words)


def group(shapes: Iterable[Shape], x: float, y: float, scale: float = 1.0) -> Shape:
    """Return shapes moved to a place and scaled."""
    move = f"translate({x:.1f} {y:.1f})" + (f" scale({scale:.3f})" if scale != 1.0 else "")
    return Shape("g", {"transform": move}, inside=list(shapes))


def svg(
    shapes: Iterable[Shape], wide: float, tall: float, *, theme: Theme, title: str, ident: str
) -> str:
    """Return shapes as an SVG document; in a page its ground is the page's own."""
    top = ElementTree.Element(
        "svg",
        {
            "xmlns": "http://www.w3.org/2000/svg",
            "viewBox": f"0 0 {wide:g} {tall:g}",
            "width": f"{wide:g}",
            "height": f"{tall:g}",
            "role": "img",
            "aria-labelledby": f"{ident}-title",
            "font-family": f"{FONT}, sans-serif",
            "fill": "none",
        },
    )
    if theme is Theme.PAGE:
        top.set("class", "noon-picture")
    ElementTree.SubElement(top, "title", {"id": f"{ident}-title"}).text = title
    if theme is not Theme.PAGE:
        _add(top, rect(0.0, 0.0, wide, tall, fill=Ink.PAPER), theme)
    for shape in shapes:
        _add(top, shape, theme)
    return ElementTree.tostring(top, encoding="unicode")


def _add(under: ElementTree.Element, shape: Shape, theme: Theme) -> None:
    told = {name.replace("_", "-"): _written(value, theme) for name, value in shape.told.items()}
    element = ElementTree.SubElement(under, shape.tag, told)
    if shape.words:
        element.text = shape.words
    for inner in shape.inside:
        _add(element, inner, theme)


def _written(value: _Told, theme: Theme) -> str:
    if isinstance(value, Ink):
        return shown(value, theme)
    return (
        value if isinstance(value, str) else f"{value:.4g}" if abs(value) < 1.0 else f"{value:.1f}"
    )
