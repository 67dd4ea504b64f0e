"""A tube over a back: zones of one distance each, a ruler in both units, the curve beside it."""

from bot.drawing import Drop, PointKind
from bot.render.picture.animals import animal_shapes, back_of
from bot.render.picture.axes import ticks_of
from bot.render.picture.chart_words import point_shape
from bot.render.picture.drop_curve import curve
from bot.render.picture.geometry import Rect
from bot.render.picture.inks import TONE_SIGN, Ink
from bot.render.picture.lettering import SIZE, leading, width
from bot.render.picture.page import BIG, MARGIN, WIDE, Page
from bot.render.picture.placing import Label
from bot.render.picture.svg import Point, polyline, rect, stroke
from bot.render.picture.things import lamp, stone, tube_along
from bot.render.picture.uv_zones import name_zones, zone_grounds

__all__ = ["draw_drop"]

_TALL = 540.0
# What stands over the field: a tube in its fixture, or a small lamp with its holder.
_TUBE, _LAMP = 34.0, 60.0
_SCENE, _RULER = 388.0, 128.0
# Where the back is measured, from the left edge of the scene.
_BACK_X, _NOSE = 168.0, 0.36
_LEAST_LONG, _MOST_LONG_SHARE, _PLATFORM = 70.0, 0.86, 144.0
_LEAST_STONE, _LEAST_ARROW = 14.0, 12.0
_PILLAR, _SHELF = 1.5, 20.0
_KEEP = 12.0


def draw_drop(drop: Drop) -> Page:
    """Return the scene on its sheet, with what its marks mean below."""
    page = Page(drop.title, drop.subtitle, over=drop.over, sign=TONE_SIGN[drop.tone])
    page.y += _LAMP if drop.is_small else _TUBE
    top, foot = page.y, page.y + _TALL
    scene = Rect(MARGIN, top, MARGIN + _SCENE, foot)
    ruler = Rect(scene.x1, top, scene.x1 + _RULER, foot)
    side = Rect(ruler.x1, top, WIDE - MARGIN, foot)
    down = _Down(drop, top)
    zone_grounds(page, drop.zones, (scene, side), down.y)
    _lamp(page, drop, scene)
    _ruler(page, drop, ruler, down)
    at = _animal(page, drop, scene, down)
    _arrow(page, drop, at, scene, side)
    curve(page, drop, side, down.y)
    for each in (scene, side):
        page.draw(
            rect(each.x0, each.y0, each.x1 - each.x0, _TALL, stroke=Ink.WALL, stroke_width=2.5)
        )
    name_zones(page, drop.zones, scene, down.y)
    page.y = foot + 2.0 * leading(SIZE) + 12.0
    _marks(page, drop)
    page.finish(drop.note)
    return page


class _Down:
    """The distances below the lamp, down the sheet."""

    def __init__(self, drop: Drop, top: float) -> None:
        self._top, self.scale = top, _TALL / drop.down.high

    def y(self, distance_m: float) -> float:
        """Return how far down the sheet a distance lies."""
        return self._top + min(distance_m * self.scale, _TALL)


def _lamp(page: Page, drop: Drop, scene: Rect) -> None:
    if drop.is_small:
        shapes, where = lamp(scene.x0 + _BACK_X, scene.y0 - 8.0)
    else:
        shapes, where = tube_along(scene.x0 + 8.0, scene.x1 - 8.0, scene.y0, drop.behind)
    page.draw(*shapes)
    page.thing(where)


def _ruler(page: Page, drop: Drop, ruler: Rect, down: _Down) -> None:
    """Draw the first unit at the left edge, the second at the right, and what to keep between."""
    page.draw(rect(ruler.x0, ruler.y0, _RULER, _TALL, fill=Ink.CARD))
    middle = (ruler.x0 + ruler.x1) / 2.0
    if drop.keep is not None:
        first, last = down.y(drop.keep.low), down.y(drop.keep.high)
        tall = max(last - first, 3.0)
        page.draw(rect(middle - _KEEP / 2, first, _KEEP, tall, rx=4.0, fill=Ink.COOL))
        page.thing(Rect(middle - _KEEP / 2, first, middle + _KEEP / 2, first + tall))
    columns = ((ruler.x0, 1.0, "start"), (ruler.x1, -1.0, "end"))
    for scale, (edge, way, anchor) in zip(drop.down.scales, columns, strict=False):
        for tick in ticks_of(drop.down, scale, 8):
            y = down.y(tick.at)
            page.draw(stroke((edge, y), (edge + 12.0 * way, y), Ink.INK, 2.4))
            half = width(tick.lines[0], SIZE) / 2.0
            if ruler.y0 + 14.0 < y < ruler.y1 - 8.0 and half < _RULER / 4.0 - 10.0:
                page.text_where_free(
                    edge + 17.0 * way, y + 8.0, tick.lines[0], anchor=anchor, clear=1.0
                )
        page.text(edge + 17.0 * way, ruler.y1 + 26.0, scale.unit, ink=Ink.SOFT, anchor=anchor)


def _animal(page: Page, drop: Drop, scene: Rect, down: _Down) -> Point:
    """Draw the animal with its back where it is told, on a stone, and return that place."""
    wide = scene.x1 - scene.x0
    long = min(max(drop.animal_m * down.scale, _LEAST_LONG), wide * _MOST_LONG_SHARE)
    tall = back_of(drop.animal, long)
    back = min(down.y(drop.back_m), scene.y1 - 6.0)
    x = scene.x0 + _BACK_X
    nose = min(max(x - _NOSE * long, scene.x0 + 8.0), scene.x1 - 8.0 - long)
    feet = back + tall
    if scene.y1 - feet >= _LEAST_STONE:
        half = min(_PLATFORM, long) / 2.0
        middle = nose + _NOSE * long
        # What would be a pillar is a shelf.
        foot = scene.y1 if scene.y1 - feet <= _PILLAR * 2.0 * half else feet + _SHELF
        block = Rect(max(middle - half, scene.x0 + 4.0), feet, middle + half, foot)
        page.draw(*stone(block))
        page.thing(block)
    if feet > scene.y1 + 2.0:
        # Where the back is at the foot of the scene there is no room for who has it.
        return x, back
    shape, where = animal_shapes(drop.animal, nose, feet, long, tall)
    page.draw(shape)
    page.thing(where)
    return x, back


def _arrow(page: Page, drop: Drop, at: Point, scene: Rect, side: Rect) -> None:
    """Draw how far the back is from the lamp, with its figure, and that height to the curve."""
    x, back = at
    for ends in (((x, back), (scene.x1, back)), ((side.x0, back), (side.x1, back))):
        page.draw(polyline(ends, stroke=Ink.INK, stroke_width=2.4, stroke_dasharray="2 6"))
        page.line(*ends)
    if back - scene.y0 >= _LEAST_ARROW:
        page.arrow((x, scene.y0), (x, back))
    told, _, other = drop.away.partition(" (")
    lines = (told, f"({other}") if other else (told,)
    wide = max(width(told, BIG, bold=True), width(lines[-1], SIZE)) + 28.0
    tall = 14.0 + leading(BIG) + (leading(SIZE) if other else 0.0)
    middle = (scene.y0 + back) / 2.0
    for down in (0.0, -40.0, 40.0, -90.0, 90.0, -140.0, 140.0):
        for left in (x - 18.0 - wide, x + 18.0):
            top = min(max(middle + down - tall / 2.0, scene.y0 + 10.0), scene.y1 - tall - 8.0)
            box = Rect(left, top, left + wide, top + tall)
            if page.is_free(box, 2.0) and box.lies_in(scene.grown(-6.0)):
                _plate(page, box, lines)
                return
    inside = scene.grown(-8.0)
    page.place([Label((drop.away,), (x, middle), SIZE, bold=True)], inside, Ink.AIR)


def _plate(page: Page, box: Rect, lines: tuple[str, ...]) -> None:
    page.draw(
        rect(
            box.x0, box.y0, box.x1 - box.x0, box.y1 - box.y0, rx=10.0, fill=Ink.CARD,
            stroke=Ink.LINE, stroke_width=1.5,
        )
    )  # fmt: skip
    page.text(box.x0 + 14.0, box.y0 + 8.0 + BIG, lines[0], size=BIG, bold=True)
    for line in lines[1:]:
        page.text(box.x0 + 14.0, box.y0 + 8.0 + BIG + leading(SIZE), line)


def _marks(page: Page, drop: Drop) -> None:
    """Say what the points of the curve are, and what the bar on the ruler is."""
    x, left = MARGIN + 17.0, MARGIN + 46.0
    if drop.keep is not None:
        page.draw(rect(x - _KEEP / 2, page.y + 2.0, _KEEP, 26.0, rx=4.0, fill=Ink.COOL))
        page.paragraph(drop.keep.label, x=left, room=WIDE - MARGIN - left)
        page.y += 6.0
    for point in drop.points:
        if point.kind in (PointKind.START, PointKind.HERE) and point.label:
            page.draw(point_shape(point.kind, x, page.y + 15.0))
            page.paragraph(point.label, x=left, room=WIDE - MARGIN - left)
            page.y += 6.0
