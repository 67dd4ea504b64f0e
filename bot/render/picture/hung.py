"""What hangs in a box or over it: how high it reaches, and its names above the box."""

from dataclasses import dataclass

from bot.drawing import Bar, Side
from bot.render.picture.inks import Ink
from bot.render.picture.lettering import SIZE, leading, width, wrapped
from bot.render.picture.page import MARGIN, WIDE, Page
from bot.render.picture.scaled import Scaled
from bot.render.picture.shifts import room_above, shifted
from bot.render.picture.spread import spread
from bot.render.picture.svg import stroke

__all__ = ["above", "light_z", "name_hung"]

_ROOM = WIDE - 2 * MARGIN
# How high a tube in its fixture and a lamp with its holder stand over their undersides.
_TUBE, _LAMP = 28.0, 52.0
# How much lower a white lamp is than a tube in its fixture.
_FLAT = 13.0
# How high a white lamp is drawn over the underside of a tube before it, and over the lid.
_OVER_TUBE, _ON_LID = 32.0, 12.0


def above(side: Side, scale: float, room: float = _ROOM) -> float:
    """Return how much names and what stands over the lid take above the box [units].

    The names share the ``room``, which is so wide.
    """
    tops = [tube.y * scale + _TUBE for tube in side.tubes]
    tops += [light_z(side, light, scale) * scale + _TUBE for light in side.lights]
    if side.heat_lamp:
        tops.append(side.heat_lamp.y * scale + _LAMP)
    tops += [room_above(shift, scale) for shift in side.shifts]
    # A back may be higher than its box.
    tops += [side.back.y * scale] if side.back else []
    over = max(0.0, *(top - side.height_m * scale for top in tops), 12.0 if side.lid else 0.0)
    lines = (len(name.lines) for name in _named(side, scale, room))
    return over + max(lines, default=0) * leading(SIZE) + 26.0


@dataclass(frozen=True, slots=True)
class _Name:
    """What hangs at a place [m], the top of it so far over that [units], as lines of words.

    The line from them goes on by ``reach`` [units].
    """

    lines: list[str]
    x_m: float
    y_m: float
    over: float
    ink: Ink
    reach: float = 0.0


def _named(side: Side, scale: float, room: float) -> list[_Name]:
    """Return what hangs there and has a name, the names sharing a room."""
    tubes, lights = ([bar for bar in bars if bar.label] for bars in (side.tubes, side.lights))
    lamps = [side.heat_lamp] if side.heat_lamp and side.heat_lamp.text else []
    each = room / max(len(tubes) + len(lamps) + len(lights), 1) - 16.0

    def lines(words: str) -> list[str]:
        return wrapped(words, each, SIZE, bold=True)

    return [
        *(
            _Name(lines(t.label), t.x0 + 0.7 * (t.x1 - t.x0), t.y, _TUBE - 2.0, Ink.UV)
            for t in tubes
        ),
        *(_Name(lines(hung.text), hung.x, hung.y, _LAMP, Ink.HEAT) for hung in lamps),
        *(
            _Name(lines(light.label), *_light_at(side, light, scale), _TUBE - 2.0, Ink.SOFT, _FLAT)
            for light in lights
        ),
    ]


def light_z(side: Side, light: Bar, scale: float) -> float:
    """Return how high [m] a white lamp is drawn: seen along, over the tube that it hangs behind."""
    if light.x1 <= light.x0 or not side.tubes:
        return light.y
    over = light.y + _OVER_TUBE / scale
    on_lid = side.height_m + _ON_LID / scale
    return on_lid if on_lid - 2.0 * _TUBE / scale < over < on_lid else over


def _light_at(side: Side, light: Bar, scale: float) -> tuple[float, float]:
    return (light.x0 + light.x1) / 2.0, light_z(side, light, scale)


def name_hung(
    page: Page, side: Side, box: Scaled, ends: tuple[float, float] = (MARGIN, WIDE - MARGIN)
) -> None:
    """Write what hangs there above the box, between two ends, each name with a line to it."""
    named = _named(side, box.scale, ends[1] - ends[0])
    if not named:
        return
    at = [(box.x(name.x_m), box.y(name.y_m) - name.over) for name in named]
    tips = [shifted(shift, box)[1][1] for shift in side.shifts]
    backs = [box.y(side.back.y)] if side.back else []
    top = min([box.rect.y0 - 14.0, *tips, *backs, *(y for _, y in at)]) - 14.0
    wide = [max(width(line, SIZE, bold=True) for line in name.lines) + 16.0 for name in named]
    places = spread([x for x, _ in at], wide, *ends)
    for name, (x, y), place in zip(named, at, places, strict=True):
        first = top - (len(name.lines) - 1) * leading(SIZE)
        page.lines(place, first, name.lines, bold=True, ink=name.ink, anchor="middle")
        page.draw(stroke((place, top + 8.0), (x, max(y, top + 12.0) + name.reach), name.ink, 2.2))
