"""An enclosure cut open and to scale: what hangs where, how strong it is, where to measure."""

from dataclasses import dataclass

from bot.drawing import Block, Place, Side
from bot.render.picture.animals import animal_shapes, back_of
from bot.render.picture.blocks import lines_within, named_stone
from bot.render.picture.geometry import Rect
from bot.render.picture.hung import above, light_z, name_hung
from bot.render.picture.inks import TONE_SIGN, Ink
from bot.render.picture.lettering import SIZE, leading, width, wrapped
from bot.render.picture.levels import levels, zone_words
from bot.render.picture.measured import ends_of, measured
from bot.render.picture.page import BIG, MARGIN, WIDE, Page
from bot.render.picture.places import called_out, listed, numbered
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
_MOST_LONG_SHARE, _HARDLY_FITS, _MOST_STRETCHED = 0.62, 0.94, 1.6
_PATCH = 64.0
# Two views beside each other, and a list beside the second, where there is room [units].
_BETWEEN, _LEAST_LIST = 36.0, 250.0
# A small view still has names over it that are so wide.
_LEAST_BAND = 290.0
# What is lower than this has its numbers below it.
_SHALLOW = 150.0


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
    whole = _Band(MARGIN, WIDE - MARGIN)
    if side.end is None:
        _view(page, side, scale, whole)
        _ends(page, side)
        listed(page, side, plates(page, side))
    elif sum(view.width_m for view in views) * scale + _BETWEEN <= _ROOM:
        _beside(page, side, side.end, scale)
    else:
        _view(page, side, scale, whole)
        _ends(page, side)
        _across(page, side, side.end, scale)
    page.finish(side.note)
    return page


@dataclass(frozen=True, slots=True)
class _Band:
    """A part of the sheet from its left to its right end [units]."""

    x0: float
    x1: float


def _beside(page: Page, side: Side, end: Side, scale: float) -> None:
    """Draw two narrow views beside each other, from the same height on."""
    spare = (_ROOM - (side.width_m + end.width_m) * scale) / 4.0
    middle = MARGIN + 8.0 + 2.0 * spare + side.width_m * scale
    bands = _Band(MARGIN, middle - 8.0), _Band(middle + 8.0, WIDE - MARGIN)
    over = max(above(view, scale, b.x1 - b.x0) for view, b in zip((side, end), bands, strict=True))
    top = page.y
    _view(page, side, scale, bands[0], over)
    page.y, foot = top, page.y
    _view(page, end, scale, bands[1], over)
    lines = wrapped(end.title, bands[1].x1 - bands[1].x0, SIZE, bold=True)
    for line in lines:
        page.text((bands[1].x0 + bands[1].x1) / 2.0, page.y + 8.0, line, bold=True, anchor="middle")
        page.y += leading(SIZE)
    page.y = max(page.y, foot)
    _ends(page, side)
    listed(page, side)


def _across(page: Page, side: Side, end: Side, scale: float) -> None:
    """Draw the view from the end, and the list beside it where there is room for that."""
    wide = max(end.width_m * scale + 14.0, _LEAST_BAND)
    left = MARGIN + wide + _BETWEEN
    if not side.placeless and not any(place.text for place in side.places):
        left = WIDE
    if WIDE - MARGIN - left < _LEAST_LIST:
        listed(page, side)
        page.y += 12.0
        page.paragraph(end.title, size=BIG, bold=True)
        _view(page, end, scale, _Band(MARGIN, WIDE - MARGIN))
        return
    page.y += 12.0
    page.paragraph(end.title, size=BIG, bold=True)
    top = page.y
    _view(page, end, scale, _Band(MARGIN, left - _BETWEEN / 2.0))
    page.y, foot = top + above(end, scale, left - _BETWEEN / 2.0 - MARGIN) - 6.0, page.y
    listed(page, side, Rect(left, page.y, WIDE - MARGIN, foot))
    page.y = max(page.y, foot)


def _view(page: Page, side: Side, scale: float, band: _Band, over: float | None = None) -> None:
    """Draw one view of the box from ``y`` on in the middle of a part of the sheet."""
    page.y += above(side, scale, band.x1 - band.x0) if over is None else over
    left = (band.x0 + band.x1 - side.width_m * scale) / 2.0
    box = Scaled(side, left, page.y, scale)
    edge = box.rect
    page.draw(rect(edge.x0, edge.y0, edge.x1 - edge.x0, edge.y1 - edge.y0, fill=Ink.AIR))
    field = _zones(page, side, box)
    _inside(page, side, box)
    page.draw(floor(edge), *walls(edge, mesh_lid=bool(side.lid)))
    _walled(page, edge)
    arrows = [ends_of(dimension, box) for dimension in side.dimensions]
    moved = draw_shifts(page, side.shifts, box, arrows)
    flows = [((box.x(f.x0), box.y(f.y0)), (box.x(f.x1), box.y(f.y1))) for f in side.flows]
    for flow in flows:
        page.shift(*flow)
    drawn = _tools(page, side, box)
    inside = Rect(edge.x0 + 6, edge.y0 + 5, edge.x1 - 6, edge.y1 - 4)
    for dimension in side.dimensions:
        measured(page, dimension, box, inside, (band.x0, band.x1))
    shallow = edge.y1 - edge.y0 < _SHALLOW
    page.y = edge.y1 + 20.0
    if shallow:
        called_out(page, side, box)
    for number, place in enumerate(side.places if not shallow else (), 1):
        at = drawn.get(place) or (box.x(place.x), box.y(place.y))
        numbered(page, number, place.tone, at, edge, arrows, tooled=place in drawn)
    name_hung(page, side, box, (band.x0, band.x1))
    name_shifts(page, side.shifts, moved, inside)
    name_flows(page, side.flows, flows, inside)
    _block_names(page, side, box, inside)
    if field is not None and side.grid is not None:
        zone_words(page, side.grid, field, inside)
        levels(page, side.grid, field, inside)
    if side.width_label:
        _size(page, side, edge, band)


def _walled(page: Page, edge: Rect) -> None:
    """Keep words off the walls, the lid and the ground of a box."""
    page.thing(Rect(edge.x0 - 3, edge.y0 - 4, edge.x0 + 3, edge.y1))
    page.thing(Rect(edge.x1 - 3, edge.y0 - 4, edge.x1 + 3, edge.y1))
    page.thing(Rect(edge.x0 - 3, edge.y0 - 10, edge.x1 + 3, edge.y0 + 3))
    page.thing(Rect(edge.x0 - 5, edge.y1 - 2, edge.x1 + 5, edge.y1 + 16))


def _size(page: Page, side: Side, edge: Rect, band: _Band) -> None:
    """Write how large a box is below it."""
    size = f"{side.width_label} × {side.height_label}"
    lines = [size] if width(size, SIZE) <= band.x1 - band.x0 else size.split(" × ")
    for line in lines:
        half = width(line, SIZE) / 2.0
        middle = min(max((edge.x0 + edge.x1) / 2.0, band.x0 + half), band.x1 - half)
        page.text(middle, page.y + 24.0, line, ink=Ink.SOFT, anchor="middle")
        page.y += leading(SIZE)
    page.y += 11.0


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
            shapes, where = tube_along(first, last, box.y(tube.y), tube.behind)
        else:
            shapes, where = tube_across(box.x(tube.x0), box.y(tube.y), tube.behind)
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
    # A back that is told higher than such an animal's is not drawn on a dwarf.
    least = max(_LEAST_LONG, tall / _MOST_STRETCHED / back_of(side.animal, 1.0))
    long = min(max(side.animal_m * box.scale, least), room * share)
    first = min(max(box.x(back.x) - 0.36 * long, box.rect.x0 + 6.0), box.rect.x1 - 6.0 - long)
    shape, where = animal_shapes(side.animal, first, top + tall, long, tall)
    page.draw(shape)
    page.thing(where)


def _block_names(page: Page, side: Side, box: Scaled, inside: Rect) -> None:
    """Write beside a block the name that does not fit into it."""
    for block in side.blocks:
        where = _block(block, box)
        if block.label and not lines_within(block.label, where):
            at = (where.x0 + where.x1) / 2.0, where.y1 - 6.0
            label = Label((block.label,), at, SIZE, away=20.0)
            # Without room it is left out: what it is can be seen.
            if page.has_place(label, inside):
                page.place([label], inside, Ink.AIR)


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
