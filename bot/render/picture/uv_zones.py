"""How strong UV is along a field: a fill and a texture for each zone, and its word."""

from collections.abc import Callable, Iterator, Sequence
from math import ceil

from bot.drawing import Zone, ZoneKind
from bot.render.picture.geometry import Rect
from bot.render.picture.inks import Ink
from bot.render.picture.lettering import SIZE, width
from bot.render.picture.page import Page
from bot.render.picture.svg import Shape, path, rect, stroke
from bot.render.picture.textures import slanted

__all__ = ["name_zones", "zone_grounds"]

_FILLS = {
    ZoneKind.TOO_NEAR: Ink.UV_STRONG,
    ZoneKind.STRONGER: Ink.UV_STRONG,
    ZoneKind.RIGHT: Ink.UV_RIGHT,
    ZoneKind.WEAKER: Ink.UV_WEAK,
    ZoneKind.SHADE: Ink.SHADE,
}
_STEP = 18.0
_PLATE, _PAD = 40.0, 14.0


def zone_grounds(
    page: Page, zones: Sequence[Zone], fields: Sequence[Rect], y: Callable[[float], float]
) -> None:
    """Draw every zone across the fields, and heavy edges round what is right."""
    for zone in zones:
        top, foot = sorted((y(zone.low), y(zone.high)))
        for field in fields:
            page.draw(*_ground(zone.kind, Rect(field.x0, top, field.x1, foot)))
    for zone in zones:
        for end in (y(zone.low), y(zone.high)) if zone.kind is ZoneKind.RIGHT else ():
            for field in fields:
                if field.y0 + 2.0 < end < field.y1 - 2.0:
                    page.draw(stroke((field.x0, end), (field.x1, end), Ink.UV, 3.2))


def _ground(kind: ZoneKind, box: Rect) -> Iterator[Shape]:
    if box.y1 - box.y0 < 0.5:
        return
    yield rect(box.x0, box.y0, box.x1 - box.x0, box.y1 - box.y0, fill=_FILLS[kind])
    if kind is ZoneKind.WEAKER:
        yield _dots(box)
    elif kind is not ZoneKind.RIGHT:
        yield slanted(box, crossed=kind is ZoneKind.TOO_NEAR)


def _dots(box: Rect) -> Shape:
    xs = [box.x0 + 9.0 + _STEP * n for n in range(int((box.x1 - box.x0 - 12.0) / _STEP) + 1)]
    first = ceil((box.y0 + 5.0) / _STEP)
    ys = [_STEP * n for n in range(first, int((box.y1 - 5.0) / _STEP) + 1)]
    d = "".join(f"M{x:.0f} {y:.0f}h0" for y in ys for x in xs)
    return path(
        d or "M0 0", stroke=Ink.UV, stroke_width=2.7, stroke_linecap="round", stroke_opacity=0.5
    )


def name_zones(page: Page, zones: Sequence[Zone], field: Rect, y: Callable[[float], float]) -> None:
    """Write the word of each zone on a plate at its right edge, where there is room for it."""
    for zone in zones:
        _name(page, zone, field, *sorted((y(zone.low), y(zone.high))))


def _name(page: Page, zone: Zone, scene: Rect, top: float, foot: float) -> None:
    wide = width(zone.word, SIZE, bold=True) + 2 * _PAD
    room = foot - top - _PLATE - 8.0
    if room < 0.0:
        return
    for right in (scene.x1 - 8.0, scene.x0 + 12.0 + wide, (scene.x0 + scene.x1 + wide) / 2.0):
        for share in (0.5, 0.25, 0.75, 0.0, 1.0):
            at = top + 4.0 + share * room
            box = Rect(right - wide, at, right, at + _PLATE)
            if page.is_free(box, 2.0):
                page.draw(
                    rect(
                        box.x0, at, wide, _PLATE, rx=10.0, fill=Ink.CARD, stroke=Ink.LINE,
                        stroke_width=1.5,
                    )
                )  # fmt: skip
                page.text(box.x0 + _PAD, at + 28.0, zone.word, bold=True)
                return
