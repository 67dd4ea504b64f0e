"""Arrows of what is moved: from where it hangs or stands, as far as it goes, to scale."""

from math import hypot

from bot.drawing import Moved, Shift
from bot.render.picture.geometry import Rect
from bot.render.picture.inks import Ink
from bot.render.picture.lettering import SIZE
from bot.render.picture.page import Page
from bot.render.picture.placing import Label
from bot.render.picture.scaled import Scaled
from bot.render.picture.svg import Point

__all__ = ["draw_shifts", "name_shifts", "room_above", "shifted"]

# An arrow of which only the way is known, and the least that is drawn [units].
_ANY, _LEAST = 34.0, 12.0
# How far a thing reaches over, under and beside the place that it is moved from [units].
_REACH = {
    Moved.TUBE: (32.0, 4.0, 6.0),
    Moved.LAMP: (56.0, 15.0, 38.0),
    Moved.STAND: (6.0, 6.0, 8.0),
}


def shifted(shift: Shift, box: Scaled) -> tuple[Point, Point]:
    """Return where the arrow of what is moved begins and ends."""
    far = hypot(shift.along, shift.up) or 1.0
    right, up = shift.along / far, shift.up / far
    long = max(far * box.scale, _LEAST) if shift.is_measured else _ANY
    over, under, beside = _REACH[shift.what]
    x, y = box.x(shift.x), box.y(shift.y)
    x += beside * right
    y -= over * up if up > 0.0 else under * up
    end = x + long * right, y - long * up
    edge = box.rect
    return (x, y), (min(max(end[0], edge.x0 + 6.0), edge.x1 - 6.0), min(end[1], edge.y1 - 4.0))


def room_above(shift: Shift, scale: float) -> float:
    """Return how high an arrow reaches over the floor [units]."""
    if shift.up <= 0.0:
        return 0.0
    long = max(shift.up * scale, _LEAST) if shift.is_measured else _ANY
    return shift.y * scale + _REACH[shift.what][0] + long


def draw_shifts(page: Page, shifts: tuple[Shift, ...], box: Scaled) -> None:
    """Draw the arrow of each thing that is moved."""
    for shift in shifts:
        page.shift(*shifted(shift, box))


def name_shifts(page: Page, shifts: tuple[Shift, ...], box: Scaled, inside: Rect) -> None:
    """Write how far what is moved goes, once where several things go together."""
    told: set[str] = set()
    for shift in shifts:
        if shift.label and shift.label not in told:
            told.add(shift.label)
            (x0, y0), (x1, y1) = shifted(shift, box)
            middle = (x0 + x1) / 2.0, (y0 + y1) / 2.0
            words = Label((shift.label,), middle, SIZE, bold=True, away=14.0)
            page.place([words], inside, Ink.AIR, Ink.HEAT)
