"""The one next step of a set-up: danger first, then what is wrong or open, then the way up.

Words: ``words/<language>/next.ftl``, and those of ``check.ftl`` for what comes before it.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import Enum, auto

from bot.command import Command
from bot.facts import Diff, Name, Power, Say, Says, Uvi, kelvins, uvi, watts
from bot.language.hearing import FactName
from bot.language.there import There, there_in
from bot.layered import Brief, Care, Layered, Row, Weight
from bot.preferences import Context
from bot.queries.setup import CheckQuery, NextQuery
from bot.questions.heat.shared import HEAT_CARE
from bot.questions.setup.check import Checked, NothingTold, check
from bot.questions.setup.check import tell as tell_check
from bot.questions.setup.check_cases import every_way
from bot.questions.setup.check_parts import Missing, Piece, find_out
from bot.questions.setup.told import SetUpTold, told_by
from bot.questions.uv.shared import EYES_CARE, SHADE_CARE
from calc.animal import Animal
from calc.heat.enclosure import Enclosure
from calc.setup.ladder import LevelUp, Rise, bar_rise_k, next_level
from calc.setup.set_up import Sign
from calc.uncertainty import Estimate
from calc.uv.danger import judge_uvi
from calc.uv.lamp import side_by_side
from calc.uv.placement import spot
from calc.validity import OutsideModelError

__all__ = ["NEXT", "NextStep", "next_step", "tell"]

_GUIDE = ("up-from-the-minimum", "light-and-colour", "sun-and-shade")
# Without these nothing is built on a set-up.
_BASE = (Piece.SAFETY, Piece.UV, Piece.BASKING, Piece.COOL, Piece.HOURS, Piece.NIGHT, Piece.WATER)
_GAP_M = 0.15
_STEPS = {
    There.HIDES: LevelUp.HIDES,
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
class NextStep:
    """The one next step, what was worked out with it, and the check that it rests on."""

    animal: Name
    stage: Stage
    step: LevelUp
    checked: Checked
    missing: Missing | None
    warms: NextRise | None
    pair: NextTwo | None
    bar_left_out: bool
    uv_left_out: bool

    @property
    def is_worked_out(self) -> bool:
        """Say whether it was worked out what a bar adds to the cool end."""
        return self.warms is not None


def next_step(query: NextQuery, context: Context) -> NextStep | NothingTold:
    """Find the lowest step that is not met: of danger and the bare minimum, then of the way up."""
    names = {name: getattr(query, name) for name in CheckQuery.model_fields}
    checked = check(CheckQuery.model_construct(**names), context)
    if isinstance(checked, NothingTold):
        return checked
    told = told_by(query.setup, query, context.own.names)
    animal = checked.whom.kept
    rise, two = _rise(told, animal), _two(told, animal)
    there = {_STEPS[one] for one in there_in(query.setup) | (query.there or frozenset())}
    if told.all(FactName.UVI) or told.all(FactName.UVI_AT):
        there.add(LevelUp.METER)
    bar_fits = rise is None or rise.leaves_in_range
    more_uv = two is not None and two[1]
    return NextStep(
        animal=checked.whom.animal,
        stage=_stage(checked),
        step=next_level(animal, there, more_uv_fits=more_uv, bar_fits=bar_fits),
        checked=checked,
        missing=next(iter(_open(checked)), None),
        warms=None if rise is None else NextRise(watts(rise.watts), kelvins(rise.by_k)),
        pair=None if two is None else NextTwo(uvi(two[0])),
        bar_left_out=not bar_fits,
        uv_left_out=two is not None and not two[1],
    )


def _stage(checked: Checked) -> Stage:
    if checked.alarms or any(one.cannot_wait for one in checked.todo):
        return Stage.DANGER
    if any(part.sign is Sign.CHANGE for part in checked.parts):
        return Stage.WRONG
    return Stage.OPEN if not checked.whom.is_known or any(_unsure(checked)) else Stage.UP


def _unsure(checked: Checked) -> Iterator[Piece]:
    for part in checked.parts:
        if part.piece in _BASE and part.sign is Sign.CANNOT_TELL:
            yield part.piece


def _open(checked: Checked) -> Iterator[Missing]:
    """Yield what nobody told of the parts that all rests on."""
    for part in checked.parts:
        if part.piece in _BASE:
            yield from part.missing


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


def tell(facts: NextStep | NothingTold) -> Layered:
    """Tell the one next step; before the way up, what the check says."""
    if isinstance(facts, NothingTold):
        return _nothing_told(facts)
    say = Says("next", facts)
    if facts.stage is not Stage.UP:
        return _before_it(facts, say)
    step = facts.step
    worked = tuple(_worked(facts))
    return Layered(
        command="next",
        title=say("title"),
        brief=Brief(
            head=say.by("head", step),
            range=(say.by("adds", step), *worked),
            steps=(say.by("do", step),),
        ),
        steps=(say.by("step", step), say.by("measure", step)),
        numbers=(
            Row(say("label-fine"), say("fine")),
            Row(say("label-harm"), say.by("harm", step)),
            Row(say("label-there"), say("there")),
        ),
        why=(say.by("why", step), *_left_out(facts, say), say("why-one")),
        care=tuple(_care(facts, say)),
        values=(
            ("cool_end_rise", facts.warms.rise if facts.warms else None),
            ("uvi_of_two", facts.pair.two if facts.pair else None),
        ),
        guide=_GUIDE,
        sources=("ladder_judgement", "light_bands", "enclosure_model", "line_source"),
        set_up=facts.checked.set_up,
    )


def _worked(facts: NextStep) -> Iterator[Say]:
    if facts.step is LevelUp.WHITE_LIGHT and facts.warms is not None:
        yield Say("next-rise", facts.warms)
    if facts.step is LevelUp.WIDE_UV and facts.pair is not None:
        yield Say("next-two", facts.pair)


def _left_out(facts: NextStep, say: Says) -> Iterator[Say]:
    if facts.bar_left_out and facts.warms is not None:
        yield Say("next-bar-out", facts.warms)
    if facts.uv_left_out and facts.pair is not None:
        yield Say("next-uv-out", facts.pair)


def _care(facts: NextStep, say: Says) -> Iterator[Care]:
    if facts.step is LevelUp.WHITE_LIGHT:
        yield Care(say("care-led"), say("care-led-short"), Weight.STEP)
    elif facts.step is LevelUp.WIDE_UV:
        yield replace(SHADE_CARE, weight=Weight.STEP)
    yield replace(EYES_CARE, weight=Weight.ALWAYS)
    yield from HEAT_CARE


def _before_it(facts: NextStep, say: Says) -> Layered:
    """Return what the check says, opened by why the way up waits."""
    checked = tell_check(facts.checked)
    brief = checked.brief
    missing = facts.missing
    steps = brief.steps
    if facts.stage is Stage.OPEN and missing is not None and not steps:
        steps = (find_out(missing).short,)
    return replace(
        checked,
        command="next",
        title=say("title"),
        brief=replace(brief, range=(say.by("wait", facts.stage), *brief.range), steps=steps),
        why=(*checked.why, say("why-order")),
        guide=(*_GUIDE[:1], *checked.guide),
        sources=(*checked.sources, "ladder_judgement"),
    )


def _nothing_told(facts: NothingTold) -> Layered:
    say = Says("next", facts)
    return Layered(
        command="next",
        status="problem",
        title=say("title"),
        brief=Brief(head=say("nothing"), range=(say("nothing-needs"),), steps=(say("nothing-do"),)),
        steps=(say("nothing-do"),),
        guide=_GUIDE[:1],
    )


NEXT = Command(
    name="next",
    query=NextQuery,
    facts=next_step,
    tell=tell,
    examples=(
        (
            "next beardie, 34in 12% tube, shiny hood, no mesh, 18in to its back, meter reads uvi "
            "4.0, basking 103F, cool 79F, night 68F, lights 12 hours there:hides"
        ),
        "next leopard gecko, 6% tube over the mesh, warm side 32C, cool side 24C, nights 20C",
    ),
    guide=("up-from-the-minimum",),
    positional="setup",
)
