"""The set-up that a plan and the ways to hang the lamps start from, or why there is none."""

from bot.language.screens import Pane
from bot.preferences import Context
from bot.queries.options import kind_of
from bot.queries.plan import PlanQuery
from bot.questions.setup.plan_asked import PlanAsked, asked
from bot.questions.setup.plan_refused import NotPlanned, not_planned
from bot.questions.uv.without_figures import OtherLamp, ThroughPane, without_figures
from calc.setup.changes import Refusal, plan_setup
from calc.setup.plan import Plan

__all__ = ["NoPlan", "plan_found"]

NoPlan = NotPlanned | ThroughPane | OtherLamp


def plan_found(query: PlanQuery, context: Context) -> tuple[Plan, PlanAsked] | NoPlan:
    """Return the set-up that fits with what it was made from, or why none can be told."""
    if none := without_figures(query, kind_of(query.tube, None), context):
        return none
    assert not isinstance(query.screen, Pane)
    what = asked(query, context)
    found = plan_setup(what.request)
    if isinstance(found, Refusal):
        return not_planned(found, what, query.screen, context.own)
    return found, what
