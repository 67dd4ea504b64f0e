"""A whole set-up judged, as facts: its parts, what to do in order, what is not known."""

from dataclasses import dataclass, replace

from bot.dangers.first_change import first_change
from bot.language.arranged import lamp_beside_in
from bot.language.hearing import FactName
from bot.language.lamps import Fixture
from bot.language.light_lamps import white_lamps_heard
from bot.layered import Row
from bot.preferences import Context
from bot.queries.setup import CheckQuery
from bot.questions.general.care_for import CareFor
from bot.questions.setup.check_heat import HEATED, heat_parts
from bot.questions.setup.check_limits import NO_UV, lamp_alarms, limit_alarms
from bot.questions.setup.check_parts import Missing, Part, Piece, Todo, in_order
from bot.questions.setup.check_safety import safety_parts
from bot.questions.setup.check_set_up import checked_set_up
from bot.questions.setup.check_sun import sun_part
from bot.questions.setup.check_uv import uv_part
from bot.questions.setup.check_whom import Named, Whom, whom_asked
from bot.questions.setup.read import read_rows
from bot.questions.setup.told import SetUpTold, told_by
from bot.questions.setup.way_up import Stage, WayUp, stage_of, way_up
from bot.questions.setup.white import WhiteTold
from bot.reply import Alarm
from calc.judgement import Verdict
from calc.setup.set_up import SetUp, Sign

__all__ = ["Checked", "NothingTold", "check"]

_OF_A_HEAT_LAMP = (FactName.LAMP_DISTANCE, FactName.WATTS)
_OF_A_TUBE = (
    *(FactName.TUBE, FactName.UV_LAMP, FactName.UVI, FactName.UVI_AT, FactName.REFLECTOR),
    *(FactName.DISTANCE, FactName.DISTANCE_BACK, FactName.DISTANCE_PERCH, FactName.DISTANCE_FLOOR),
)


@dataclass(frozen=True, slots=True)
class NothingTold:
    """Words that tell nothing of a set-up."""

    words: str | None


@dataclass(frozen=True, slots=True)
class Checked:
    """A set-up, judged part by part; ``todo`` is what to do, the most urgent first.

    ``up`` is the way up, where nothing is wrong, open or to be read. ``has_white``: a white
    lamp was told, judged or not. ``of_heat``: a heat lamp was told, and nothing of a tube.
    ``care`` is for a sheet, where the animal is known and nothing cannot wait; ``reflector``
    is what was told to be behind the tube.
    """

    whom: Whom
    parts: tuple[Part, ...]
    todo: tuple[Todo, ...]
    read: tuple[Row, ...]
    told: bool
    alarms: tuple[Alarm, ...]
    set_up: SetUp
    up: WayUp | None
    has_white: bool
    of_heat: bool
    care: CareFor | None
    reflector: Fixture | None

    @property
    def stage(self) -> Stage:
        """Return how far the set-up has come."""
        danger = bool(self.alarms) or any(one.cannot_wait for one in self.todo)
        return stage_of(self.parts, danger=danger, known=self.whom.is_known)

    @property
    def white(self) -> WhiteTold | None:
        """Return how bright white lamps make it, where that was worked out."""
        return next((part.white for part in self.parts if part.white), None)

    @property
    def missing(self) -> tuple[Missing, ...]:
        """Return what nobody told, once, in the order of the parts."""
        in_turn = _in_turn(self.parts, of_heat=self.of_heat)
        return tuple(dict.fromkeys(one for part in in_turn for one in part.missing))

    @property
    def wrong(self) -> Part | None:
        """Return the part that is changed first, else one that is probably off, if any is."""
        first = self.todo[0] if self.todo else None
        if first is not None and not first.is_reading:
            of_first = (p for p in self.parts if p.head is not None and first in p.todo)
            return next(of_first, None)
        headed = [part for part in self.parts if part.head is not None]
        changed = (part for part in headed if part.sign is Sign.CHANGE)
        return next(changed, next(filter(_is_probably_off, headed), None))

    @property
    def warmed(self) -> bool:
        """Say whether the lamp is changed, so that all it warms is read again."""
        return any(part.sign is Sign.CHANGE and part.piece in HEATED for part in self.parts)

    @property
    def is_shut(self) -> bool:
        """Say whether a pane keeps all UV out."""
        return any(alarm.key == NO_UV for alarm in self.alarms)

    @property
    def lit(self) -> bool:
        """Say whether what is changed first is the UV."""
        return self.wrong is not None and self.wrong.piece is Piece.UV


def _tells_of_heat_alone(told: SetUpTold) -> bool:
    heated = any(told.all(name) for name in _OF_A_HEAT_LAMP)
    return heated and not any(told.all(name) for name in _OF_A_TUBE)


def _in_turn(parts: tuple[Part, ...], *, of_heat: bool) -> tuple[Part, ...]:
    """Return the parts as they are asked for: the warmth first where a heat lamp was told."""
    return tuple(sorted(parts, key=lambda part: of_heat and part.piece not in HEATED))


def _is_probably_off(part: Part) -> bool:
    """Say whether a reading is off, as far as its range and a thermometer can tell."""
    judged = part.spot.judged if part.spot is not None else None
    return judged is not None and judged.verdict in (Verdict.PROBABLY_LOW, Verdict.PROBABLY_HIGH)


def check(query: CheckQuery, context: Context) -> Checked | NothingTold:
    """Judge each part of a set-up, and work out what to do first."""
    told = told_by(query.setup, query, context.own)
    if not (told.facts or told.unclear):
        return NothingTold(query.setup.strip() or None)
    whom = whom_asked(told, context)
    animal = whom.kept
    uv = uv_part(told, whom, context)
    hang, white = lamp_beside_in(query.setup), white_lamps_heard(query.setup)
    parts = (
        *safety_parts(told, uv, whom),
        uv,
        *heat_parts(told, animal, context.own),
        *sun_part(told, animal, hang, uv, white),
    )
    alarms = (
        *limit_alarms(told, animal),
        *(alarm for part in parts for alarm in part.alarms),
        *lamp_alarms(told),
    )
    of_heat = _tells_of_heat_alone(told)
    todo = in_order(_in_turn(parts, of_heat=of_heat))
    fine = whom.is_known and not (alarms or todo) and all(p.sign is Sign.FINE for p in parts)
    found = checked_set_up(told, animal, parts, todo)
    return Checked(
        whom=whom,
        parts=parts,
        todo=todo,
        read=read_rows(told),
        told=bool(told.facts),
        alarms=alarms,
        has_white=bool(white),
        of_heat=of_heat,
        set_up=replace(found, first=first_change(alarms, found.first)),
        up=way_up(told, animal, parts, query.setup) if fine else None,
        care=CareFor(animal, context.own, context.day, is_read=True)
        if whom.named is Named.ONE and not alarms
        else None,
        reflector=told.reflector.value if told.reflector else None,
    )
