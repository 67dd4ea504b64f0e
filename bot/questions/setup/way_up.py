"""The next worthwhile step of a set-up in which nothing is wrong or open, worked out for it.

Words: ``words/<language>/next.ftl``.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from enum import Enum, auto

from bot.facts import Diff, Figure, Power, Say, Says, Share, Uvi, kelvins, share, uvi, watts
from bot.language.hearing import FactName
from bot.language.there import There, there_in
from bot.layered import Care, Weight
from bot.questions.setup.check_cases import every_way
from bot.questions.setup.check_parts import Missing, Part, Piece
from bot.questions.setup.check_sun import usual_room
from bot.questions.setup.told import SetUpTold
from bot.questions.uv.shared import SHADE_CARE
from calc.animal import Animal
from calc.heat.enclosure import Enclosure
from calc.setup.arrangement import in_a_row, two_heat_lamps
from calc.setup.ladder import LevelUp, Rise, bar_rise_k, next_level
from calc.setup.room import Room
from calc.setup.set_up import Sign
from calc.setup.sun_patch import met_by_light
from calc.uncertainty import Estimate
from calc.uv.danger import judge_uvi
from calc.uv.lamp import side_by_side
from calc.uv.placement import spot
from calc.validity import OutsideModelError

__all__ = [
    "WAY_UP_SOURCES",
    "Stage",
    "WayUp",
    "left_out",
    "open_in",
    "stage_of",
    "way_up",
    "way_up_care",
    "worked_out",
]

WAY_UP_SOURCES = ("ladder_judgement", "light_bands", "enclosure_model", "line_source")
"""What a step up rests on."""

# Without these nothing is built on a set-up.
_BASE = (Piece.SAFETY, Piece.UV, Piece.BASKING, Piece.COOL, Piece.HOURS, Piece.NIGHT, Piece.WATER)
_GAP_M = 0.15
_STEPS = {
    There.HIDES: LevelUp.HIDES,
    There.TOGETHER: LevelUp.TOGETHER,
    There.METER: LevelUp.METER,
    There.WHITE_LIGHT: LevelUp.WHITE_LIGHT,
    There.WIDE_UV: LevelUp.WIDE_UV,
    There.TWO_HEAT_LAMPS: LevelUp.TWO_HEAT_LAMPS,
    There.SEASONS: LevelUp.SEASONS,
    There.PLANTS: LevelUp.PLANTS,
}


class Stage(Enum):
    """How far a set-up has come."""

    DANGER = auto()
    WRONG = auto()
    OPEN = auto()
    UP = auto()


@dataclass(frozen=True, slots=True)
class NextRise:
    """What a white bar adds to the cool end."""

    power: Power
    rise: Diff


@dataclass(frozen=True, slots=True)
class NextTwo:
    """The UV index right below two tubes where one hangs now."""

    two: Uvi


@dataclass(frozen=True, slots=True)
class NextPatch:
    """The share of the platform where UV, heat and light meet: now, and after the step."""

    now: Share
    then: Share


@dataclass(frozen=True, slots=True)
class WayUp:
    """The next step up, what was worked out with it, and what was left out for a limit.

    ``patch``: for the steps that move or widen the patch of sun, where its room is told.
    """

    step: LevelUp
    warms: NextRise | None
    pair: NextTwo | None
    patch: NextPatch | None
    bar_left_out: bool
    uv_left_out: bool

    @property
    def is_worked_out(self) -> bool:
        """Say whether it was worked out what a bar adds to the cool end."""
        return self.warms is not None

    @property
    def values(self) -> tuple[tuple[str, Figure | None], ...]:
        """Return the figures by name."""
        return (
            ("cool_end_rise", self.warms.rise if self.warms else None),
            ("uvi_of_two", self.pair.two if self.pair else None),
            ("patch_of_sun", self.patch.then if self.patch else None),
        )


def stage_of(parts: Iterable[Part], *, danger: bool, known: bool) -> Stage:
    """Return how far a set-up has come; ``known``: whose it is."""
    parts = tuple(parts)
    if danger:
        return Stage.DANGER
    if any(part.sign is Sign.CHANGE for part in parts):
        return Stage.WRONG
    unsure = any(part.piece in _BASE and part.sign is Sign.CANNOT_TELL for part in parts)
    return Stage.OPEN if unsure or not known else Stage.UP


def open_in(parts: Iterable[Part]) -> Iterator[Missing]:
    """Yield what nobody told of the parts that all rests on."""
    for part in parts:
        if part.piece in _BASE:
            yield from part.missing


def way_up(
    told: SetUpTold,
    animal: Animal,
    parts: Iterable[Part],
    words: str,
    there: frozenset[There] = frozenset(),
) -> WayUp:
    """Find the lowest step that is not met; ``words`` and ``there`` tell what is there already."""
    rise, two = _rise(told, animal), _two(told, animal)
    met = {_STEPS[one] for one in there_in(words) | there}
    if told.all(FactName.UVI) or told.all(FactName.UVI_AT):
        met.add(LevelUp.METER)
    if not any(part.piece is Piece.SUN and part.sign is Sign.CANNOT_TELL for part in parts):
        met.add(LevelUp.TOGETHER)
    bar_fits = rise is None or rise.leaves_in_range
    more_uv = two is not None and two[1]
    step = next_level(animal, met, more_uv_fits=more_uv, bar_fits=bar_fits)
    return WayUp(
        step=step,
        patch=_patch(step, told, animal),
        warms=None if rise is None else NextRise(watts(rise.watts), kelvins(rise.by_k)),
        pair=None if two is None else NextTwo(uvi(two[0])),
        bar_left_out=not bar_fits,
        uv_left_out=two is not None and not two[1],
    )


def _patch(step: LevelUp, told: SetUpTold, animal: Animal) -> NextPatch | None:
    """Return the patch of sun before and after a step that changes it, where its room is told."""
    if step not in (LevelUp.TOGETHER, LevelUp.TWO_HEAT_LAMPS):
        return None
    beside = usual_room(told, animal)
    if beside is None:
        return None
    rooms = {
        LevelUp.TOGETHER: (in_a_row(beside), beside),
        LevelUp.TWO_HEAT_LAMPS: (beside, two_heat_lamps(beside)),
    }
    now, then = (None if room is None else _all_three(room) for room in rooms[step])
    return None if now is None or then is None else NextPatch(now, then)


def _all_three(room: Room) -> Share | None:
    met = room.met()
    sun = None if met.judged.is_likely_above else met_by_light(room, met, (), None)[0]
    return None if sun is None else share(sun.all_three)


def _rise(told: SetUpTold, animal: Animal) -> Rise | None:
    """Return what a white bar would warm the cool end by, where box, room and cool end are told."""
    size, room = told.size, told.measure(FactName.ROOM)
    cool = told.measure(FactName.COOL)
    if size is None or room is None or cool is None:
        return None
    try:
        box = Enclosure(size.value.length_m, size.value.depth_m, size.value.height_m)
        return bar_rise_k(box, room.value.low, cool.value.low, animal)
    except OutsideModelError:
        return None


def _two(told: SetUpTold, animal: Animal) -> tuple[Estimate, bool] | None:
    """Return the UVI below two such tubes beside each other, and whether it stays in range."""
    away = told.measure(FactName.DISTANCE_BACK) or told.measure(FactName.DISTANCE)
    if told.tube is None or away is None or animal.uvi is None or told.tubes > 1:
        return None
    found = []
    try:
        for _, _, lamp, between in every_way(told):
            found.append(spot(side_by_side(lamp, 2, _GAP_M), away.value.low, between).uvi)
    except OutsideModelError:
        return None
    most = Estimate(
        min(one.low for one in found),
        max(one.best for one in found),
        max(one.high for one in found),
    )
    judged = judge_uvi(most, animal.uvi.low, animal.uvi.high, unchecked=animal.uvi.is_unchecked)
    return most, not judged.is_likely_above


def worked_out(found: WayUp) -> Iterator[Say]:
    """Yield what was worked out for the step."""
    if found.step is LevelUp.WHITE_LIGHT and found.warms is not None:
        yield Say("next-rise", found.warms)
    if found.step is LevelUp.WIDE_UV and found.pair is not None:
        yield Say("next-two", found.pair)
    if found.patch is not None:
        yield Say("next-patch", found.patch)


def left_out(found: WayUp) -> Iterator[Say]:
    """Yield which steps were left out, and for which limit."""
    if found.bar_left_out and found.warms is not None:
        yield Say("next-bar-out", found.warms)
    if found.uv_left_out and found.pair is not None:
        yield Say("next-uv-out", found.pair)


def way_up_care(found: WayUp) -> Iterator[Care]:
    """Yield the caution that a step wants."""
    say = Says("next", found)
    if found.step is LevelUp.WHITE_LIGHT:
        yield Care(say("care-led"), say("care-led-short"), Weight.STEP)
    elif found.step is LevelUp.WIDE_UV:
        yield replace(SHADE_CARE, weight=Weight.STEP)
