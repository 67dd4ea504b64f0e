"""The enclosure of a section question, laid out: what was given, and what was taken for it."""

from dataclasses import dataclass

from bot.answers.figures import length, length_typed
from bot.answers.length_asked import lit_length
from bot.answers.tube_length import shortest_told
from bot.answers.uv_asked import lamp_asked, screen_asked
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Measure, Units, convert
from bot.queries.options import OwnTube
from bot.queries.uv_depth import SectionQuery
from calc.setup.room import Room
from calc.uv.choice import tube_length_for
from calc.uv.ground import HeatPatch, Platform
from calc.uv.lamp import of_length
from calc.uv.lengths import DARK_ENDS_M, length_for_box
from calc.uv.section import Box, HungTube
from calc.uv.tube import STANDARD_T5_HO

__all__ = ["Layout", "layout"]

_BACK_M = 0.05
_PLATFORM_M = 0.30
_PATCH_M = 0.20
_TUBES_APART_M = 0.10
_LEAST_M = 0.02


@dataclass(frozen=True, slots=True)
class Layout:
    """The enclosure with its light; ``taken`` is what was assumed."""

    room: Room
    taken: tuple[str, ...]


def layout(query: SectionQuery, wanted: tuple[float, float], units: Units) -> Layout:
    """Lay out the enclosure: tubes at the lid, the platform at the given distance below."""
    size = query.enclosure
    box = Box(size.length_m, size.depth_m, size.height_m)
    taken: list[str] = []

    def given(measure: Measure | None, otherwise_m: float, what: str) -> float:
        if measure is not None:
            return measure.low
        taken.append(f"{what} {length(otherwise_m, units)}")
        return otherwise_m

    _check_inside(query, box, units)
    back = given(query.back, _BACK_M, "the animal's back over what it stands on:")
    room = box.height_m - back
    top = room - query.distance.low
    if top < 0.0:
        raise NotUnderstoodError(
            query.distance.text,
            "a distance that fits under the lid: this enclosure has room for at most "
            f"{length(room, units)}",
            f"distance:{length_typed(room, units)}" if room > _LEAST_M else "back:2in",
            "distance",
        )
    start = given(query.start, 0.0, "the tube begins from the warm end wall:")
    long = _tube_length(query, box, units, taken)
    _check_start(query, start, long, box, units)
    wide = given(query.platform, min(_PLATFORM_M, box.length_m / 3.0), "the platform's length:")
    platform = Platform(0.0, wide, box.depth_m / 4.0, 3.0 * box.depth_m / 4.0, top)
    heat_x = given(query.heat, wide / 2.0, "the heat lamp's middle from the warm end wall:")
    patch = given(query.patch, _PATCH_M, "the warmed patch's width:")
    taken.append("the platform reaches over half the depth, in the middle, from the warm end")
    taken.append("the tubes hang level with the lid, along its length (across it I cannot tell)")
    across = given(query.across, box.depth_m / 2.0, "the tubes' middle from the back wall:")
    tubes = _tubes(query, box, start + long / 2.0, across, long - DARK_ENDS_M)
    warmed = HeatPatch(heat_x, box.depth_m / 2.0, patch / 2.0)
    return Layout(Room(box, tubes, platform, back, *wanted, warmed), tuple(taken))


def _check_inside(query: SectionQuery, box: Box, units: Units) -> None:
    """Refuse what was given for the platform, the back or the heat lamp and is not in the box."""
    for name, given, least, most, example in (
        ("back", query.back, 0.0, box.height_m, "back:2in"),
        ("platform", query.platform, _LEAST_M, box.length_m, "platform:12in"),
        ("heat", query.heat, 0.0, box.length_m, "heat:8in"),
        ("patch", query.patch, _LEAST_M, 2.0 * box.length_m, "patch:8in"),
    ):
        if given is not None and not least <= given.low <= most:
            told = f"from {length(least, units)} " if least else ""
            raise NotUnderstoodError(
                given.text,
                f"a length {told}up to {length(most, units)}, so that it is in the enclosure",
                example,
                name,
            )


def _check_start(query: SectionQuery, start: float, long: float, box: Box, units: Units) -> None:
    if start + long <= box.length_m + 1e-9:
        return
    if query.start and not query.length and long <= box.length_m:
        raise NotUnderstoodError(
            query.start.text,
            f"a start that leaves room for a tube {length(long, units)} long (at most "
            f"{length(box.length_m - long, units)}), or a shorter tube",
            "length:22in",
            "start",
        )
    shortest = STANDARD_T5_HO[0].face_to_face_m
    fits = shortest <= box.length_m and not isinstance(query.tube, OwnTube)
    raise NotUnderstoodError(
        query.length.text if query.length else query.enclosure.text,
        f"a tube and a start that fit into {length(box.length_m, units)}",
        "start:0in length:22in" if fits else "start:0in enclosure:48x24x24in",
        "length",
    )


def _tube_length(query: SectionQuery, box: Box, units: Units, taken: list[str]) -> float:
    if isinstance(query.tube, OwnTube):
        return query.tube.lamp.lit_length_m + DARK_ENDS_M
    if query.length is not None:
        return lit_length(query.length) + DARK_ENDS_M
    choice = tube_length_for(box.length_m)
    tube = choice.tube or choice.shorter or choice.longer
    if tube is None:
        raise NotUnderstoodError(
            query.enclosure.text,
            f"a longer enclosure, or the length of your own tube, because {shortest_told(units)} "
            "long",
            "enclosure:36x18x18in",
            "enclosure",
        )
    taken.append(f"the tube's length: {length(tube.face_to_face_m, units)}, by the enclosure's")
    return tube.face_to_face_m


def _tubes(
    query: SectionQuery, box: Box, x_m: float, across_m: float, lit_m: float
) -> tuple[HungTube, ...]:
    lamp = lamp_asked(query.tube, query.reflector, query.length, None)
    if query.length is None and not isinstance(query.tube, OwnTube):
        lamp = of_length(lamp, length_for_box(lit_m, box.length_m))
    screen, count = screen_asked(query.screen), query.tubes
    apart_m = query.gap.low if query.gap else _TUBES_APART_M
    sides = [across_m + apart_m * (i - (count - 1) / 2.0) for i in range(count)]
    if query.across and not (sides[0] >= 0.0 and sides[-1] <= box.depth_m):
        raise NotUnderstoodError(
            query.across.text,
            "a place for the tubes inside the depth of the enclosure, from the back wall",
            f"across:{convert(box.depth_m / 2.0, 'm', 'cm'):.0f}cm",
            "across",
        )
    return tuple(HungTube(lamp, x_m, y, box.height_m, screen) for y in sides)
