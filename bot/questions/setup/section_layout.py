"""The enclosure of a map, laid out: what was told of it, and what was assumed.

Words: ``words/<language>/section.ftl``.
"""

from dataclasses import dataclass, replace
from enum import Enum, auto

from bot.facts import Bound, Length, Say, Says, metres
from bot.language.lamps import Fixture
from bot.language.quantities import Measure
from bot.language.screens import Screen
from bot.language.shown import shown
from bot.language.sizes import Size
from bot.language.units import Units, convert
from bot.language.uv_lamps import WARM
from bot.layered import Brief, Layered
from bot.preferences import Context
from bot.queries.options import OwnTube, names_a_class
from bot.queries.uv_depth import SectionQuery
from bot.questions.uv.lamp_asked import lamp_asked, screen_asked
from bot.questions.uv.length_asked import lit_length
from bot.questions.uv.readings import LampRead, read_lamp
from bot.questions.uv.readings_refused import check_believed
from bot.questions.uv.tubes import all_together
from bot.refusal import RefusedError
from bot.saved.group import Own
from calc.setup.room import Room
from calc.uv.choice import tube_length_for
from calc.uv.ground import HeatPatch, Platform
from calc.uv.lamp import SHORTEST_LIT_M, Lamp, OwnPoint, of_length, side_by_side
from calc.uv.lengths import DARK_ENDS_M, length_for_box
from calc.uv.screen import Screen as EngineScreen
from calc.uv.section import Box, HungTube
from calc.uv.tube import STANDARD_T5_HO

__all__ = ["Layout", "layout", "screen_of"]

_BACK_M = 0.05
_PLATFORM_M = 0.30
_PATCH_M = 0.20
_TUBES_APART_M = 0.10
_LEAST_M = 0.02
_SHORTEST_M = STANDARD_T5_HO[0].face_to_face_m
_AT_THE_WALL = "start:0in"
_TYPED = {Units.IN: ("in", 0.5), Units.CM: ("cm", 1.0)}


class Taken(Enum):
    """What of the enclosure was assumed."""

    BACK = auto()
    START = auto()
    OVER = auto()
    LENGTH = auto()
    PLATFORM = auto()
    HEAT = auto()
    PATCH = auto()
    ACROSS = auto()


@dataclass(frozen=True, slots=True)
class SectionTaken:
    """A length that was assumed."""

    what: Taken
    long: Length


@dataclass(frozen=True, slots=True)
class Layout:
    """The enclosure with its light; ``taken`` is what was assumed, ``read`` the lamp as told."""

    room: Room
    taken: tuple[SectionTaken, ...]
    read: LampRead


class NoFit(Enum):
    """What does not fit into the enclosure."""

    BACK = auto()
    PLATFORM = auto()
    HEAT = auto()
    PATCH = auto()
    DISTANCE = auto()
    START = auto()
    LENGTH = auto()
    BOX = auto()
    ACROSS = auto()


@dataclass(frozen=True, slots=True)
class SectionNoFit:
    """What was told and does not fit, and the ``least`` and ``most`` that would.

    ``tube_long`` is how long the tube is, where that is why.
    """

    why: NoFit
    read: str
    least: Length
    most: Length
    tube_long: Length | None
    example: str


def layout(
    query: SectionQuery, wanted: tuple[float, float], context: Context, *, basks: bool = True
) -> Layout:
    """Lay out the enclosure: lamps at the lid, the platform at the given distance below.

    The platform reaches over half the depth, in its middle, from the warm end. A small lamp hangs
    over its middle, a tube begins at the warm end. Who does not bask has no heat lamp, unless one
    was told.
    """
    size = query.enclosure
    box = Box(size.length_m, size.depth_m, size.height_m)
    taken: list[SectionTaken] = []

    def given(measure: Measure | None, otherwise_m: float, what: Taken) -> float:
        if measure is not None:
            return measure.low
        taken.append(SectionTaken(what, metres(otherwise_m)))
        return otherwise_m

    _check_inside(query, box)
    back = given(query.back, _BACK_M, Taken.BACK)
    room = box.height_m - back
    top = room - query.distance.low
    if top < 0.0:
        example = f"distance:{_typed(room, context.units)}" if room > _LEAST_M else "back:2in"
        raise _refused(NoFit.DISTANCE, query.distance, room, example, "distance")
    read = _read(query, box, taken, context.own)
    small, long = isinstance(read.lamp.own, OwnPoint), read.lamp.lit_length_m + DARK_ENDS_M
    wide = given(query.platform, min(_PLATFORM_M, box.length_m / 3.0), Taken.PLATFORM)
    platform = Platform(0.0, wide, box.depth_m / 4.0, 3.0 * box.depth_m / 4.0, top)
    over = max(0.0, (wide - long) / 2.0)
    start = given(query.start, over if small else 0.0, Taken.OVER if small else Taken.START)
    _check_start(query, start, long, box)
    under = start + long / 2.0 if query.kind in WARM else wide / 2.0
    warmed = None
    if basks or query.heat or query.patch:
        heat_x = given(query.heat, under, Taken.HEAT)
        patch = given(query.patch, _PATCH_M, Taken.PATCH)
        warmed = HeatPatch(heat_x, box.depth_m / 2.0, patch / 2.0)
    across = given(query.across, box.depth_m / 2.0, Taken.ACROSS)
    tubes = _tubes(query, box, start + long / 2.0, across, read.lamp)
    return Layout(Room(box, tubes, platform, back, *wanted, warmed), tuple(taken), read)


def _typed(value_m: float, units: Units) -> str:
    """Return a length as one types it, rounded down."""
    sign, step = _TYPED[units]
    return f"{convert(value_m, 'm', sign) // step * step:g}{sign}"


def _check_inside(query: SectionQuery, box: Box) -> None:
    """Refuse what was given for the platform, the back or the heat lamp and is not in the box."""
    for why, given, least, most, example in (
        (NoFit.BACK, query.back, 0.0, box.height_m, "back:2in"),
        (NoFit.PLATFORM, query.platform, _LEAST_M, box.length_m, "platform:12in"),
        (NoFit.HEAT, query.heat, 0.0, box.length_m, "heat:8in"),
        (NoFit.PATCH, query.patch, _LEAST_M, 2.0 * box.length_m, "patch:8in"),
    ):
        if given is not None and not least <= given.low <= most:
            raise _refused(why, given, most, example, why.name.lower())


def _check_start(query: SectionQuery, start: float, long: float, box: Box) -> None:
    if start + long <= box.length_m + 1e-9:
        return
    if query.start and not query.length and long <= box.length_m:
        most = box.length_m - long
        raise _refused(NoFit.START, query.start, most, "length:22in", "start", long)
    fits = box.length_m >= _SHORTEST_M and not isinstance(query.tube, OwnTube)
    example = f"{_AT_THE_WALL} {'length:22in' if fits else 'enclosure:48x24x24in'}"
    read = query.length or query.enclosure
    raise _refused(NoFit.LENGTH, read, box.length_m, example, "length", long)


def _tube_length(query: SectionQuery, box: Box, taken: list[SectionTaken]) -> float:
    if query.length is not None:
        return lit_length(query.length) + DARK_ENDS_M
    choice = tube_length_for(box.length_m)
    tube = choice.tube or choice.shorter or choice.longer
    if tube is None:
        most, example = box.length_m, "enclosure:36x18x18in"
        raise _refused(NoFit.BOX, query.enclosure, most, example, "enclosure", _SHORTEST_M)
    taken.append(SectionTaken(Taken.LENGTH, metres(tube.face_to_face_m)))
    return tube.face_to_face_m


def _read(query: SectionQuery, box: Box, taken: list[SectionTaken], own: Own) -> LampRead:
    """Return the lamp, by its readings where there are any; a small one has hardly a length."""
    reflector = query.reflector if isinstance(query.reflector, Fixture) else None
    lamp = lamp_asked(query.tube, reflector, query.length, None, own=own)
    assumed = list[SectionTaken]()
    if query.length is None and not isinstance(query.tube, OwnTube):
        lit_m = _tube_length(query, box, assumed) - DARK_ENDS_M
        lamp = of_length(lamp, length_for_box(lit_m, box.length_m))
    is_named = bool(reflector) and names_a_class(query.tube, query.lamp)
    many, screen = all_together(lamp, query), screen_of(query)
    read = read_lamp(many, query.readings, screen, query.kind, is_named=is_named)
    check_believed(read, "section")
    if isinstance(read.lamp.own, OwnPoint):
        return replace(read, lamp=replace(read.lamp, lit_length_m=SHORTEST_LIT_M))
    taken += assumed
    return read


def screen_of(query: SectionQuery) -> EngineScreen:
    """Return the screen of the engine; one that was not told is in the readings already."""
    return screen_asked(query.screen if isinstance(query.screen, Screen) else None)


def _tubes(
    query: SectionQuery, box: Box, x_m: float, across_m: float, lamp: Lamp
) -> tuple[HungTube, ...]:
    # The readings of small lamps hold all that were lit, and one kept by its name is one.
    count = 1 if isinstance(lamp.own, OwnPoint) else query.tubes
    lamp, screen = side_by_side(lamp, 1, 0.0), screen_of(query)
    apart_m = query.gap.low if query.gap else _TUBES_APART_M
    sides = [across_m + apart_m * (i - (count - 1) / 2.0) for i in range(count)]
    if query.across and not (sides[0] >= 0.0 and sides[-1] <= box.depth_m):
        example = f"across:{convert(box.depth_m / 2.0, 'm', 'cm'):.0f}cm"
        raise _refused(NoFit.ACROSS, query.across, box.depth_m, example, "across")
    return tuple(HungTube(lamp, x_m, y, box.height_m, screen) for y in sides)


def _refused(
    why: NoFit,
    read: Measure | Size,
    most_m: float,
    example: str,
    option: str,
    long_m: float | None = None,
) -> RefusedError:
    facts = SectionNoFit(
        why=why,
        read=shown(read.text),
        least=metres(_LEAST_M, bound=Bound.AT_LEAST),
        most=metres(most_m, bound=Bound.AT_MOST),
        tube_long=None if long_m is None else metres(long_m),
        example=example,
    )
    return RefusedError(facts, _tell_no_fit, option)


def _tell_no_fit(facts: SectionNoFit) -> Layered:
    say = Says("section", facts)
    return Layered(
        command="section",
        status="problem",
        title=say("no-title"),
        brief=Brief(
            head=say("no-head"),
            range=(Say.by("section-no", facts.why, facts),),
            steps=(say("do-again"),),
        ),
        steps=(say("do-again"),),
        guide=("sun-and-shade",),
    )
