"""Arrows of what is moved: from where it hangs or stands, as far as it goes, to scale."""

from collections.abc import Sequence
from math import hypot

from bot.drawing import Flow, Moved, Shift
from bot.render.picture.geometry import Rect, enters
from bot.render.picture.inks import Ink
from bot.render.picture.lettering import SIZE, wrapped
from bot.render.picture.page import Page
from bot.render.picture.placing import Label
from bot.render.picture.scaled import Scaled
from bot.render.picture.svg import Point

__all__ = ["draw_shifts", "name_flows", "name_shifts", "room_above", "shifted"]

Arrow = tuple[Point, Point]
# An arrow of which only the way is known, and the least that is drawn [units].
_ANY, _LEAST = 34.0, 12.0
# How far a thing reaches over, under and beside the place that it is moved from [units].
# How far beside its thing an arrow up or down may stand, the nearest first [units].
_ASIDE = (0.0, 26.0, 52.0, 78.0, -26.0, -52.0, 104.0, 130.0)
_REACH = {
    Moved.TUBE: (32.0, 4.0, 6.0),
    Moved.LAMP: (56.0, 15.0, 38.0),
    Moved.STAND: (6.0, 6.0, 8.0),
}


def shifted(shift: Shift, box: Scaled) -> Arrow:
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


def draw_shifts(
    page: Page, shifts: tuple[Shift, ...], box: Scaled, measured: Sequence[Arrow] = ()
) -> list[Arrow | None]:
    """Draw the arrow of each thing that is moved, one up or down where it is free beside it.

    It keeps off what is ``measured``.
    """
    arrows = [_free(page, shifted(shift, box), box.rect, measured) for shift in shifts]
    for arrow in arrows:
        if arrow is not None:
            page.shift(*arrow)
    return arrows


def _free(page: Page, arrow: Arrow, edge: Rect, measured: Sequence[Arrow]) -> Arrow | None:
    """Return an arrow where it is free; None where words would lie under it."""
    (x, y0), (end, y1) = arrow
    for aside in _ASIDE if end == x else ():
        at = Rect(x + aside - 12.0, min(y0, y1), x + aside + 12.0, max(y0, y1))
        clear = page.is_free(at, 3.0) and not any(enters(*line, at) for line in measured)
        if clear and edge.x0 + 6.0 <= at.x0 and at.x1 <= edge.x1 - 6.0:
            return (x + aside, y0), (x + aside, y1)
    at = Rect(min(x, end) - 12.0, min(y0, y1), max(x, end) + 12.0, max(y0, y1))
    return None if any(at.meets(box) for _, box in page.words) else arrow


def name_flows(page: Page, flows: Sequence[Flow], arrows: Sequence[Arrow], inside: Rect) -> None:
    """Write how much warmth leaves beside each arrow."""
    for flow, ((x0, y0), _) in zip(flows, arrows, strict=True):
        lines = tuple(wrapped(flow.label, 200.0, SIZE, bold=True))
        label = Label(lines, (x0, y0), SIZE, bold=True, away=10.0, liked=(-1.0, 1.0))
        page.place([label], inside, Ink.AIR, Ink.HEAT)


def name_shifts(
    page: Page, shifts: tuple[Shift, ...], arrows: list[Arrow | None], inside: Rect
) -> None:
    """Write how far what is moved goes, once where several things go together."""
    told: set[str] = set()
    for shift, arrow in zip(shifts, arrows, strict=True):
        if arrow is not None and shift.label and shift.label not in told:
            told.add(shift.label)
            (x0, y0), (x1, y1) = arrow
            middle = (x0 + x1) / 2.0, (y0 + y1) / 2.0
            words = Label((shift.label,), middle, SIZE, bold=True, away=14.0)
            page.place([words], inside, Ink.AIR, Ink.HEAT)
