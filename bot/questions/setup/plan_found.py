"""The set-up that a plan and the ways to hang the lamps start from, or why there is none."""

from dataclasses import dataclass

from bot.language.screens import Pane
from bot.preferences import Context
from bot.queries.options import kind_of
from bot.queries.plan import PlanQuery
from bot.questions.heat.shared import LAMP_PLACES
from bot.questions.setup.plan_asked import PlanAsked, asked
from bot.questions.setup.plan_refused import NotPlanned, not_planned
from bot.questions.setup.ways import Ways, ways_told
from bot.questions.uv.without_figures import OtherLamp, ThroughPane, without_figures
from calc.setup.arrangement import Arranged, arranged, picked
from calc.setup.changes import Refusal, plan_setup
from calc.setup.plan import Plan

__all__ = ["Found", "NoPlan", "plan_found"]

_PLACES = {place: name for name, place in LAMP_PLACES.items()}

NoPlan = NotPlanned | ThroughPane | OtherLamp


@dataclass(frozen=True, slots=True)
class Found:
    """A plan, what it was made from, the ways to hang its lamps, and the one that is picked."""

    plan: Plan
    what: PlanAsked
    ways: Ways
    best: Arranged


def plan_found(query: PlanQuery, context: Context) -> Found | NoPlan:
    """Return the set-up that fits with what it was made from, or why none can be told.

    Where the other side of the mesh is the better way and nobody said which, it is taken.
    """
    if none := without_figures(query, kind_of(query.tube, None), context):
        return none
    assert not isinstance(query.screen, Pane)
    what = asked(query, context)
    found = plan_setup(what.request)
    if isinstance(found, Refusal):
        return not_planned(found, what, query.screen, context.own)
    ways = arranged(found, what.request)
    best = picked(ways)
    if best.plan is not None and query.place is None and query.screen is None:
        place = _PLACES[best.plan.light.hanging.place]
        what = asked(query.model_copy(update={"place": place}), context)
        found = best.plan
        ways = arranged(found, what.request)
        best = ways[0]
    return Found(found, what, ways_told(ways, best, found), best)
