"""An enclosure cut open and to scale: what hangs where, how strong it is, where to measure."""

from bot.drawing import Block, Dimension, Place, Side
from bot.render.picture.animals import animal_shapes
from bot.render.picture.blocks import lines_within, named_stone
from bot.render.picture.geometry import Rect
from bot.render.picture.hung import above, light_z, name_hung
from bot.render.picture.inks import TONE_SIGN, Ink
from bot.render.picture.lettering import SIZE, leading, width, wrapped
from bot.render.picture.levels import levels
from bot.render.picture.page import BIG, MARGIN, WIDE, Page
from bot.render.picture.places import listed, numbered
from bot.render.picture.placing import Label
from bot.render.picture.plates import plates
from bot.render.picture.scaled import Scaled
from bot.render.picture.shifts import draw_shifts, name_flows, name_shifts
from bot.render.picture.svg import Point, rect
from bot.render.picture.things import (
    beam,
    floor,
    hide,
    lamp,
    light_across,
    light_along,
    sun_strip,
    tube_across,
    tube_along,
    walls,
    water,
)
from bot.render.picture.tools import tool_shapes
from bot.render.picture.zones import Field, zone_shapes

__all__ = ["draw_side"]

_ROOM = WIDE - 2 * MARGIN - 16.0
# A box much higher than wide is held to this, and lower where two views go on one sheet.
_TALLEST = {1: 440.0, 2: 330.0}
_LEAST_BACK, _LEAST_LONG = 9.0, 60.0
_MOST_LONG_SHARE, _HARDLY_FITS = 0.62, 0.94
_PATCH, _LEAST_ARROW = 64.0, 12.0


def draw_side(side: Side) -> Page:
    """Return the enclosure on its sheet, with its list of places below."""
    page = Page(
        side.title,
        side.subtitle,
        numbers_taken=len(side.places),
        over=side.over,
        sign=TONE_SIGN[side.tone],
    )
    views = [side, side.end] if side.end else [side]
    scale = min(
        _ROOM / max(view.width_m for view in views),
        _TALLEST[len(views)] / side.height_m,
    )
    _view(page, side, scale)
    _ends(page, side)
    plates(page, side)
    listed(page, side)
    if side.end:
        page.y += 12.0
        page.paragraph(side.end.title, size=BIG, bold=True)
        _view(page, side.end, scale)
    page.finish(side.note)
    return page


def _view(page: Page, side: Side, scale: float) -> None:
    """Draw one view of the box from ``y`` on."""
    page.y += above(side, scale)
    left = MARGIN + 8.0 + (_ROOM - side.width_m * scale) / 2.0
    box = Scaled(side, left, page.y, scale)
    edge = box.rect
    page.draw(rect(edge.x0, edge.y0, edge.x1 - edge.x0, edge.y1 - edge.y0, fill=Ink.AIR))
    field = _zones(page, side, box)
    _inside(page, side, box)
    page.draw(floor(edge), *walls(edge, mesh_lid=bool(side.lid)))
    for wall in (
        Rect(edge.x0 - 3, edge.y0 - 4, edge.x0 + 3, edge.y1),
        Rect(edge.x1 - 3, edge.y0 - 4, edge.x1 + 3, edge.y1),
        Rect(edge.x0 - 3, edge.y0 - 10, edge.x1 + 3, edge.y0 + 3),
        Rect(edge.x0 - 5, edge.y1 - 2, edge.x1 + 5, edge.y1 + 16),
    ):
        page.thing(wall)
    arrows = [_ends_of(dimension, box) for dimension in side.dimensions]
    moved = draw_shifts(page, side.shifts, box, arrows)
    flows = [((box.x(f.x0), box.y(f.y0)), (box.x(f.x1), box.y(f.y1))) for f in side.flows]
    for flow in flows:
        page.shift(*flow)
    drawn = _tools(page, side, box)
    inside = Rect(edge.x0 + 6, edge.y0 + 5, edge.x1 - 6, edge.y1 - 4)
    for dimension in side.dimensions:
        _measured(page, dimension, box, inside)
    for number, place in enumerate(side.places, 1):
        at = drawn.get(place) or (box.x(place.x), box.y(place.y))
        numbered(page, number, place.tone, at, edge, arrows, tooled=place in drawn)
    name_hung(page, side, box)
    name_shifts(page, side.shifts, moved, inside)
    name_flows(page, side.flows, flows, inside)
    _block_names(page, side, box, inside)
    if field is not None and side.grid is not None:
        levels(page, side.grid, field, inside)
    page.y = edge.y1 + 20.0
    if not side.width_label:
        return
    size = f"{side.width_label} × {side.height_label}"
    middle = (edge.x0 + edge.x1) / 2.0
    half = width(size, SIZE) / 2.0
    middle = min(max(middle, MARGIN + half), WIDE - MARGIN - half)
    page.text(middle, page.y + 24.0, size, ink=Ink.SOFT, anchor="middle")
    page.y += 40.0


def _zones(page: Page, side: Side, box: Scaled) -> Field | None:
    """Draw the field up to the lowest tube: above it there is only what holds it."""
    grid = side.grid
    if grid is None or len(grid.y) < 2:
        return None
    field = Field.of(grid, box.x, box.y, box.rect)
    page.draw(*zone_shapes(field, grid.wanted, grid.levels))
    return field


def _tools(page: Page, side: Side, box: Scaled) -> dict[Place, Point]:
    """Draw what is read with at each place, where there is room for it, and return where."""
    edge = box.rect.grown(-5.0)
    drawn: dict[Place, Point] = {}
    for place in side.places:
        at = box.x(place.x), box.y(place.y)
        for way in (1.0, -1.0) if place.tool else ():
            assert place.tool is not None
            shapes, (spot, *beside) = tool_shapes(place.tool, at, way)
            if all(where.lies_in(edge) and page.is_free(where, 3.0) for where in beside):
                page.draw(*shapes)
                for where in (spot, *beside):
                    page.thing(where)
                last = (spot, *beside)[-1]
                drawn[place] = (last.x0 + last.x1) / 2.0, min(last.y0 + 20.0, last.y1)
                break
    return drawn


def _inside(page: Page, side: Side, box: Scaled) -> None:
    if side.water:
        page.draw(*water(box.rect, box.y(side.water)))
    for one, there in ((side.hide, True), (side.wanted_hide, False)):
        if one:
            first, last = box.x(one.x0), box.x(one.x1)
            page.draw(*hide(first, last, box.y(one.y), box.rect.y1, there=there))
            if there:
                page.thing(Rect(first, box.y(one.y), last, box.rect.y1))
    for block in side.blocks:
        name = block.label or (side.sun.label if side.sun else "")
        named_stone(page, name, _block(block, box))
    if side.sun:
        first, last = box.x(side.sun.x0), box.x(side.sun.x1)
        page.draw(*sun_strip(first, last, box.y(side.sun.y)))
    if side.heat_lamp:
        x, y = box.x(side.heat_lamp.x), box.y(side.heat_lamp.y)
        foot = box.y(side.back.y) if side.back else box.rect.y1
        half = min(_PATCH, x - box.rect.x0 - 3.0, box.rect.x1 - 3.0 - x)
        page.draw(beam(x, y, max(foot, y + 10.0), max(half, 18.0)))
    if side.back:
        _animal(page, side, side.back, box)
    for tube in side.tubes:
        if tube.x1 > tube.x0:
            first, last = max(box.x(tube.x0), box.rect.x0 + 2.0), box.x(tube.x1)
            shapes, where = tube_along(first, last, box.y(tube.y))
        else:
            shapes, where = tube_across(box.x(tube.x0), box.y(tube.y))
        page.draw(*shapes)
        page.thing(where)
    for light in side.lights:
        y, first, last = box.y(light_z(side, light, box.scale)), box.x(light.x0), box.x(light.x1)
        shapes, where = light_along(first, last, y) if last > first else light_across(first, y)
        page.draw(*shapes)
        page.thing(where)
    if side.heat_lamp:
        inside = side.heat_lamp.y < side.height_m - 0.12
        top, x = box.rect.y0 if inside else None, box.x(side.heat_lamp.x)
        shapes, where = lamp(x, box.y(side.heat_lamp.y), top)
        if top is not None:
            page.line((x, top), (x, where.y0))
        page.draw(*shapes)
        page.thing(where)


def _block(block: Block, box: Scaled) -> Rect:
    return Rect(box.x(block.x0), box.y(block.y1), box.x(block.x1), box.y(block.y0))


def _animal(page: Page, side: Side, back: Place, box: Scaled) -> None:
    """Draw the animal with its back at the place itself; its feet where it lies."""
    under = [b.y1 for b in side.blocks if b.x0 <= back.x <= b.x1 and b.y1 < back.y]
    lies = max(under, default=0.0)
    tall = max((back.y - lies) * box.scale, _LEAST_BACK)
    top, room = box.y(back.y), box.rect.x1 - box.rect.x0
    # One that hardly fits is not squeezed as well.
    share = _HARDLY_FITS if back.y > 0.8 * side.height_m else _MOST_LONG_SHARE
    long = min(max(side.animal_m * box.scale, _LEAST_LONG), room * share)
    first = min(max(box.x(back.x) - 0.36 * long, box.rect.x0 + 6.0), box.rect.x1 - 6.0 - long)
    shape, where = animal_shapes(side.animal, first, top + tall, long, tall)
    page.draw(shape)
    page.thing(where)


def _ends_of(dimension: Dimension, box: Scaled) -> tuple[Point, Point]:
    return (
        (box.x(dimension.x0), box.y(dimension.y0)),
        (box.x(dimension.x1), box.y(dimension.y1)),
    )


def _measured(page: Page, dimension: Dimension, box: Scaled, inside: Rect) -> None:
    start, end = _ends_of(dimension, box)
    if abs(end[0] - start[0]) + abs(end[1] - start[1]) < _LEAST_ARROW:
        return
    page.arrow(start, end)
    level = abs(end[0] - start[0]) > abs(end[1] - start[1])
    middle = (start[0] + end[0]) / 2.0, (start[1] + end[1]) / 2.0
    lines = tuple(dimension.label.split(" (", 1))
    words = (lines[0], f"({lines[1]}") if len(lines) == 2 and not level else (dimension.label,)
    label = Label(
        words, middle, BIG, bold=True, away=10.0, liked=(0.0, -1.0) if level else (1.0, 0.0)
    )
    page.place([label], inside, Ink.AIR)


def _block_names(page: Page, side: Side, box: Scaled, inside: Rect) -> None:
    """Write beside a block the name that does not fit into it."""
    for block in side.blocks:
        where = _block(block, box)
        if block.label and not lines_within(block.label, where):
            at = (where.x0 + where.x1) / 2.0, where.y1 - 6.0
            page.place([Label((block.label,), at, SIZE, away=20.0)], inside, Ink.AIR)


def _ends(page: Page, side: Side) -> None:
    if not side.ends:
        return
    room = (WIDE - 2 * MARGIN) / 2.0 - 12.0
    top, lowest = page.y, page.y
    for end in side.ends:
        anchor, x = ("start", MARGIN) if end.on_the_left else ("end", WIDE - MARGIN)
        ink = Ink.HEAT if end.on_the_left else Ink.COOL
        page.text(x, top + 22.0, end.name, size=BIG, bold=True, ink=ink, anchor=anchor)
        lines = wrapped(end.text, room, SIZE)
        page.lines(x, top + 24.0 + leading(SIZE), lines, anchor=anchor)
        lowest = max(lowest, top + 34.0 + len(lines) * leading(SIZE))
    page.y = lowest + 6.0
