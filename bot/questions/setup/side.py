"""A set-up as a drawing: the box from the front and from its warm end, made of one value alone."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from math import hypot

import numpy as np

from bot.drawing import Bar, Block, Dimension, End, Grid, Place, Shift, Side, Strip, Tone, ZoneKind
from bot.facts import Say
from bot.layered import Teller
from bot.questions.setup.drawn_animal import drawn_animal
from bot.questions.setup.shifted import Hung, shifts_of
from bot.questions.uv.curve_picture import behind_of
from calc.heat.enclosure import Lid
from calc.setup.set_up import SetUp, Stand, StandKind, Thing, ends_of
from calc.uv.patches import SHADE_UVI
from calc.uv.screen import NoScreen
from calc.uv.section import Box, Cut, section_map

__all__ = ["SideWords", "side_views", "zone_words"]

_ACROSS, _UP = 61, 41
_SHELF, _LOW, _PILLAR = 0.04, 0.12, 1.5
# A hide [m], long and high.
_HIDE_M, _HIDE_UP_M = 0.24, 0.12


@dataclass(frozen=True, slots=True)
class SideWords:
    """What is written into the drawing; ``stand`` is the name of what the animal basks on.

    ``over`` stands above the title, which has the sign of ``tone``.
    ``across`` names the view from the warm end, ``tubes`` the tubes seen from there; ``sun`` is
    where UV, heat and light meet, ``light`` a white lamp, ``zones`` the words for how strong it is.
    """

    length: Callable[[float], str]
    title: str
    subtitle: str
    tube: str
    tubes: str
    lamp: str
    lid: str
    stand: str
    across: str
    note: str
    over: str = ""
    tone: Tone = Tone.PLAIN
    sun: str = ""
    light: str = ""
    zones: tuple[str, ...] = ()
    ends: tuple[End, ...] = ()
    places: tuple[Place, ...] = ()


def zone_words(teller: Teller) -> tuple[str, ...]:
    """Return the words for how strong UV is, from the strongest to shade."""
    kinds = (ZoneKind.STRONGER, ZoneKind.RIGHT, ZoneKind.WEAKER, ZoneKind.SHADE)
    return tuple(teller.say(Say.by("uvcurve-zone", kind)) for kind in kinds)


def side_views(set_up: SetUp, words: SideWords) -> Side:
    """Return a lit set-up from the front, and below it from its warm end, across its stand.

    A lamp that would seem to hang under a tube is drawn where it is seen beside it, and only there.
    """
    # With tubes across, the box is turned: its y runs along the front.
    front, end = (1, 0) if set_up.is_turned else (0, 1)
    seen = _seen(set_up, words, front)
    _, stand, back_z = _lit(set_up)
    _, height = _tube_at(set_up, front)
    beside = _span(stand, front)[1] + 0.03 * seen.width_m
    x_m = _under(set_up, stand, front)
    return replace(
        seen,
        over=words.over,
        title=words.title,
        tone=words.tone,
        subtitle=words.subtitle,
        blocks=_blocks(stand, _span(stand, front), seen.height_m, words.stand),
        dimensions=(
            Dimension(x_m, height, x_m, back_z, words.length(height - back_z)),
            *_top(stand, beside, words),
        ),
        places=words.places,
        ends=words.ends,
        note=words.note,
        shifts=tuple(_shifts(set_up, words, front)),
        end=replace(_seen(set_up, words, end), title=words.across),
    )


def _shifts(set_up: SetUp, words: SideWords, axis: int) -> Iterator[Shift]:
    """Yield the first change as arrows from what is seen along an axis."""
    first, (_, stand, _) = set_up.first, _lit(set_up)
    if first is None:
        return
    drawn = {Thing.STAND: Hung(*_span(stand, axis), stand.place.top_m)}
    for bar in _tubes(set_up, words, axis):
        drawn[Thing.TUBE] = Hung(bar.x0, bar.x1, bar.y)
    lamp = _lamp(set_up, words, axis)
    if lamp is not None:
        drawn[Thing.HEAT_LAMP] = Hung(lamp.x, lamp.x, lamp.y)
    far_m = hypot(first.by_m[axis], first.by_m[2]) if first.by_m else 0.0
    yield from shifts_of(first, drawn, words.length(far_m) if far_m else "", axis)


def _hide(set_up: SetUp, wide: float, axis: int) -> Strip | None:
    """Return where a hide is wanted, as far as the box is wide."""
    if not set_up.hides:
        return None
    hide = set_up.hides[0]
    x_m, half = (hide.x_m, hide.y_m)[axis], _HIDE_M / 2.0
    middle = min(max(x_m, half), wide - half)
    return Strip(middle - half, middle + half, _HIDE_UP_M)


def _seen(set_up: SetUp, words: SideWords, axis: int) -> Side:
    """Return what is seen of a set-up along one axis of its box: x (0) or y (1)."""
    box, stand, back_z = _lit(set_up)
    middle = stand.place.middle_m
    figure, long_m = drawn_animal(set_up.animal)
    sun = set_up.sun
    reach = None if sun is None else (sun.x_m, sun.y_m)[axis]
    # Where the strip has a name, the stand has its own in the first view.
    name = "" if words.sun else words.stand
    sunny = words.sun if axis == (0 if set_up.is_turned else 1) else ""
    wide = box.length_m if axis == 0 else box.depth_m
    return Side(
        title="",
        subtitle="",
        width_m=wide,
        height_m=box.height_m,
        width_label=words.length(wide),
        height_label=words.length(box.height_m),
        lid=_lid(set_up, words),
        tubes=_tubes(set_up, words, axis),
        lights=_lights(set_up, words, axis),
        heat_lamp=_lamp(set_up, words, axis),
        blocks=_blocks(stand, _span(stand, axis), box.height_m, name),
        sun=None if reach is None else Strip(*reach, stand.place.top_m, sunny),
        back=Place(middle[axis], back_z, ""),
        animal=figure,
        animal_m=long_m,
        wanted_hide=_hide(set_up, wide, axis),
        grid=replace(
            _grid(set_up, box, *((Cut.SIDE, middle[1]) if axis == 0 else (Cut.END, middle[0]))),
            words=words.zones,
        ),
    )


def _tubes(set_up: SetUp, words: SideWords, axis: int) -> tuple[Bar, ...]:
    """Return the tubes: along their length one bar stands for all, from their ends each a dot."""
    if axis == 0:
        (first, last), height = ends_of(set_up.tubes[0]), set_up.tubes[0].z_m
        return (Bar(first, last, height, words.tube, behind_of(set_up.tubes[0].lamp)),)
    return tuple(
        Bar(one.y_m, one.y_m, one.z_m, "" if number else words.tubes, behind_of(one.lamp))
        for number, one in enumerate(set_up.tubes)
    )


def _lights(set_up: SetUp, words: SideWords, axis: int) -> tuple[Bar, ...]:
    """Return white lamps from their ends alone: along the tubes they hang behind them."""
    if axis == 0 or set_up.light is None:
        return ()
    return tuple(
        Bar(one.y_m, one.y_m, one.z_m, "" if number else words.light)
        for number, one in enumerate(set_up.light.lights)
    )


def _lamp(set_up: SetUp, words: SideWords, axis: int) -> Place | None:
    across = axis == 1
    seen = [lamp for lamp in set_up.lamps if set_up.is_before_a_tube(lamp) is across]
    if not seen:
        return None
    return Place((seen[0].x_m, seen[0].y_m)[axis], seen[0].z_m, words.lamp)


def _span(stand: Stand, axis: int) -> tuple[float, float]:
    place = stand.place
    return (place.x0_m, place.x1_m) if axis == 0 else (place.y0_m, place.y1_m)


def _tube_at(set_up: SetUp, axis: int) -> tuple[float, float]:
    tube = set_up.tubes[0]
    return (tube.x_m, tube.y_m)[axis], tube.z_m


def _under(set_up: SetUp, stand: Stand, axis: int) -> float:
    """Return where the way from tube to back is drawn: over the stand, under the tube."""
    middle, tube_m = stand.place.middle_m[axis], _tube_at(set_up, axis)[0]
    first, last = _span(stand, axis)
    return tube_m if axis == 1 and first <= tube_m <= last else middle


def _lit(set_up: SetUp) -> tuple[Box, Stand, float]:
    box, back_z = set_up.box, set_up.back_z_m
    # Only a box with tubes and a back on its stand is seen from its side.
    assert box is not None
    assert set_up.tubes
    assert back_z is not None
    return box, set_up.stands[0], back_z


def _has_mesh(set_up: SetUp) -> bool:
    """Say whether a lid of mesh, or a screen under the tube, is drawn."""
    if set_up.lid is not None:
        return set_up.lid is not Lid.SOLID
    return not isinstance(set_up.tubes[0].screen, NoScreen)


def _lid(set_up: SetUp, words: SideWords) -> str:
    return words.lid if _has_mesh(set_up) else ""


def _blocks(stand: Stand, span: tuple[float, float], high: float, name: str) -> tuple[Block, ...]:
    """Return what it basks on: a platform from the floor up, or a shelf; nothing on the floor."""
    top = stand.place.top_m
    if top <= 0.0:
        return ()
    # A platform much higher than wide would be a pillar: it is drawn as a shelf.
    pillar = top > _PILLAR * (span[1] - span[0])
    shelf = (pillar or stand.kind is not StandKind.PLATFORM) and top > _SHELF * high
    bottom = top - _SHELF * high if shelf else 0.0
    label = "" if shelf or top < _LOW * high else name
    return (Block(*span, bottom, top, label),)


def _top(stand: Stand, beside_m: float, words: SideWords) -> tuple[Dimension, ...]:
    top = stand.place.top_m
    if top <= 0.0:
        return ()
    return (Dimension(beside_m, 0.0, beside_m, top, words.length(top)),)


def _grid(set_up: SetUp, box: Box, cut: Cut, at_m: float) -> Grid:
    mapped = section_map(set_up.tubes, box, cut, at_m, _ACROSS, _UP)
    # Right at the tube the engine has no answer; the picture shows its strongest colour there.
    values = np.nan_to_num(mapped.uvi, nan=float(np.nanmax(mapped.uvi)))
    # Over a tube that hangs inside there is no UV to show.
    lit = mapped.z_m <= set_up.tubes[0].z_m
    low, high = set_up.uvi_wanted or (0.0, 0.0)
    levels = sorted({SHADE_UVI, 1.0, 2.0, 10.0, *(v for v in (low, high) if v > 0.0)})
    return Grid(
        x=tuple(float(x) for x in mapped.across_m),
        y=tuple(float(z) for z in mapped.z_m[lit]),
        values=tuple(tuple(float(v) for v in line) for line in values[lit]),
        levels=tuple(levels),
        wanted=(low, high) if 0.0 < low < high else None,
    )
