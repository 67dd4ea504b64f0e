"""A set-up as a drawing: the box from the front and from its warm end, made of one value alone."""

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from bot.drawing import Bar, Block, Dimension, End, Grid, Place, Side, Strip
from bot.questions.setup.drawn_animal import drawn_animal
from calc.heat.enclosure import Lid
from calc.setup.set_up import HeatLamp, SetUp, Stand, StandKind, ends_of
from calc.uv.patches import SHADE_UVI
from calc.uv.screen import NoScreen
from calc.uv.section import Box, Cut, section_map

__all__ = ["SideWords", "side_views", "stand_blocks"]

_ACROSS, _UP = 61, 41
_SHELF, _LOW, _PILLAR = 0.04, 0.12, 1.5


@dataclass(frozen=True, slots=True)
class SideWords:
    """What is written into the drawing; ``stand`` is the name of what the animal basks on.

    ``across`` names the view from the warm end, ``tubes`` the tubes seen from there; ``sun`` is
    where UV, heat and light meet.
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
    sun: str = ""
    ends: tuple[End, ...] = ()
    places: tuple[Place, ...] = ()


def side_views(set_up: SetUp, words: SideWords) -> Side:
    """Return a lit set-up from the front, and below it across the middle of its stand.

    A lamp that would seem to hang under a tube is drawn where it is seen beside it, and only there.
    """
    box, stand, back_z = _lit(set_up)
    x_m, y_m = stand.place.middle_m
    figure, long_m = drawn_animal(set_up.animal)
    tube = set_up.tubes[0]
    (first, last), height = ends_of(tube), tube.z_m
    beside = stand.place.x1_m + 0.03 * box.length_m
    seen = tuple(lamp for lamp in set_up.lamps if not set_up.is_before_a_tube(lamp))
    return Side(
        title=words.title,
        subtitle=words.subtitle,
        width_m=box.length_m,
        height_m=box.height_m,
        width_label=words.length(box.length_m),
        height_label=words.length(box.height_m),
        lid=_lid(set_up, words),
        tubes=(Bar(first, last, height, words.tube),),
        heat_lamp=_lamp(seen, words, lambda lamp: lamp.x_m),
        blocks=stand_blocks(stand, box, words.stand),
        sun=_sun(set_up, set_up.sun.x_m if set_up.sun else None),
        back=Place(x_m, back_z, ""),
        animal=figure,
        animal_m=long_m,
        dimensions=(
            Dimension(x_m, height, x_m, back_z, words.length(height - back_z)),
            *_top(stand, beside, words),
        ),
        grid=_grid(set_up, box, Cut.SIDE, y_m),
        places=words.places,
        ends=words.ends,
        note=words.note,
        end=_from_the_end(set_up, words),
    )


def _from_the_end(set_up: SetUp, words: SideWords) -> Side:
    box, stand, back_z = _lit(set_up)
    x_m, y_m = stand.place.middle_m
    figure, long_m = drawn_animal(set_up.animal)
    before = tuple(lamp for lamp in set_up.lamps if set_up.is_before_a_tube(lamp))
    # Where the strip has a name, the stand has its own in the view above.
    name = "" if words.sun else words.stand
    return Side(
        title=words.across,
        subtitle="",
        width_m=box.depth_m,
        height_m=box.height_m,
        width_label=words.length(box.depth_m),
        height_label=words.length(box.height_m),
        lid=_lid(set_up, words),
        tubes=tuple(
            Bar(one.y_m, one.y_m, one.z_m, "" if number else words.tubes)
            for number, one in enumerate(set_up.tubes)
        ),
        heat_lamp=_lamp(before, words, lambda lamp: lamp.y_m),
        blocks=_blocks(stand, (stand.place.y0_m, stand.place.y1_m), box, name),
        sun=_sun(set_up, set_up.sun.y_m if set_up.sun else None, words.sun),
        back=Place(y_m, back_z, ""),
        animal=figure,
        animal_m=long_m,
        grid=_grid(set_up, box, Cut.END, x_m),
    )


def stand_blocks(stand: Stand, box: Box, name: str) -> tuple[Block, ...]:
    """Return what an animal basks on as it is seen from the front; nothing on the floor."""
    return _blocks(stand, (stand.place.x0_m, stand.place.x1_m), box, name)


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


def _lamp(
    lamps: tuple[HeatLamp, ...], words: SideWords, where: Callable[[HeatLamp], float]
) -> Place | None:
    return Place(where(lamps[0]), lamps[0].z_m, words.lamp) if lamps else None


def _blocks(stand: Stand, span: tuple[float, float], box: Box, name: str) -> tuple[Block, ...]:
    """Return what it basks on: a platform from the floor up, or a shelf; nothing on the floor."""
    top, high = stand.place.top_m, box.height_m
    if top <= 0.0:
        return ()
    # A platform much higher than wide would be a pillar: it is drawn as a shelf.
    pillar = top > _PILLAR * (span[1] - span[0])
    shelf = (pillar or stand.kind is not StandKind.PLATFORM) and top > _SHELF * high
    bottom = top - _SHELF * high if shelf else 0.0
    label = "" if shelf or top < _LOW * high else name
    return (Block(*span, bottom, top, label),)


def _sun(set_up: SetUp, reach: tuple[float, float] | None, label: str = "") -> Strip | None:
    """Return the strip of the stand where UV, heat and light meet."""
    return None if reach is None else Strip(*reach, set_up.stands[0].place.top_m, label)


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
