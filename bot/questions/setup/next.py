"""The one next step of a set-up: danger first, then what is wrong or open, then the way up.

Words: ``words/<language>/next.ftl``, and those of ``check.ftl`` for what comes before it.
"""

from dataclasses import dataclass, replace

from bot.command import Command
from bot.facts import Name, Says
from bot.layered import Brief, Layered, Row, Weight
from bot.preferences import Context
from bot.queries.setup import CheckQuery, NextQuery
from bot.questions.heat.shared import HEAT_CARE
from bot.questions.setup.check import tell as tell_check
from bot.questions.setup.check_facts import Checked, NothingTold, check
from bot.questions.setup.check_parts import Missing, find_out
from bot.questions.setup.told import told_by
from bot.questions.setup.way_up import (
    WAY_UP_SOURCES,
    Stage,
    WayUp,
    left_out,
    open_in,
    way_up,
    way_up_care,
    worked_out,
)
from bot.questions.uv.shared import EYES_CARE

__all__ = ["NEXT", "NextStep", "next_step", "tell"]

_GUIDE = ("up-from-the-minimum", "light-and-colour", "sun-and-shade")


@dataclass(frozen=True, slots=True)
class NextStep:
    """The one next step, what was worked out with it, and the check that it rests on."""

    animal: Name
    stage: Stage
    up: WayUp
    checked: Checked
    missing: Missing | None

    @property
    def is_worked_out(self) -> bool:
        """Say whether it was worked out what a bar adds to the cool end."""
        return self.up.is_worked_out


def next_step(query: NextQuery, context: Context) -> NextStep | NothingTold:
    """Find the lowest step that is not met: of danger and the bare minimum, then of the way up."""
    names = {name: getattr(query, name) for name in CheckQuery.model_fields}
    checked = check(CheckQuery.model_construct(**names), context)
    if isinstance(checked, NothingTold):
        return checked
    told = told_by(query.setup, query, context.own)
    there = query.there or frozenset()
    return NextStep(
        animal=checked.whom.animal,
        stage=checked.stage,
        up=way_up(told, checked.whom.kept, checked.parts, query.setup, there),
        checked=checked,
        missing=next(open_in(checked.parts), None),
    )


def tell(facts: NextStep | NothingTold) -> Layered:
    """Tell the one next step; before the way up, what the check says."""
    if isinstance(facts, NothingTold):
        return _nothing_told(facts)
    say = Says("next", facts)
    if facts.stage is not Stage.UP:
        return _before_it(facts, say)
    up, step = facts.up, facts.up.step
    return Layered(
        command="next",
        title=say("title"),
        brief=Brief(
            head=say.by("head", step),
            range=(say.by("adds", step), *worked_out(up)),
            steps=(say.by("do", step),),
        ),
        steps=(say.by("step", step), say.by("measure", step)),
        numbers=(
            Row(say("label-fine"), say("fine")),
            Row(say("label-harm"), say.by("harm", step)),
            Row(say("label-there"), say("there")),
        ),
        why=(say.by("why", step), *left_out(up), say("why-one")),
        care=(*way_up_care(up), replace(EYES_CARE, weight=Weight.ALWAYS), *HEAT_CARE),
        values=up.values,
        guide=_GUIDE,
        sources=WAY_UP_SOURCES,
        set_up=facts.checked.set_up,
    )


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
