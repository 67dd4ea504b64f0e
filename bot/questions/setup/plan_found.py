"""The set-up that a plan and the ways to hang the lamps start from, or why there is none."""

from dataclasses import dataclass, replace

from bot.language.screens import Pane
from bot.preferences import Context
from bot.queries.options import kind_of
from bot.queries.plan import PlanQuery
from bot.questions.heat.shared import LAMP_PLACES
from bot.questions.setup.plan_asked import PlanAsked, asked
from bot.questions.setup.plan_level import level_lights
from bot.questions.setup.plan_refused import NotPlanned, not_planned
from bot.questions.setup.ways import Ways, ways_told
from bot.questions.uv.without_figures import OtherLamp, ThroughPane, without_figures
from calc.setup.arrangement import Arranged, Arrangement, arranged, picked
from calc.setup.changes import Refusal, plan_setup
from calc.setup.plan import Plan
from calc.setup.planned import arranged_set_up
from calc.setup.set_up import SetUp

__all__ = ["Found", "NoPlan", "plan_found"]

_SIDES = (Arrangement.INSIDE, Arrangement.ABOVE_MESH)
_PLACES = {place: name for name, place in LAMP_PLACES.items()}

NoPlan = NotPlanned | ThroughPane | OtherLamp


@dataclass(frozen=True, slots=True)
class Found:
    """A plan, what it was made from, the ways to hang its lamps, and the one that is picked.

    ``beside`` is the plan with the tube along the box, from which the ways were worked out.
    """

    plan: Plan
    what: PlanAsked
    ways: Ways
    best: Arranged
    beside: Plan
    all_ways: tuple[Arranged, ...]
    set_up: SetUp


def plan_found(query: PlanQuery, context: Context) -> Found | NoPlan:
    """Return the set-up that fits with what it was made from, or why none can be told.

    Where the other side of the mesh is the better way and nobody said which, it is taken.
    """
    if none := without_figures(query, kind_of(query.tube, None), context, along_tube=True):
        return none
    assert not isinstance(query.screen, Pane)
    what = asked(query, context)
    found = plan_setup(what.request)
    if isinstance(found, Refusal):
        return not_planned(found, what, query.screen, context.own)
    what = _lit(what, found)
    ways = arranged(found, what.request)
    best = picked(ways)
    if best.plan is not None and best.way in _SIDES and _side_untold(query):
        place = _PLACES[best.plan.light.hanging.place]
        what = _lit(asked(query.model_copy(update={"place": place}), context), best.plan)
        ways = arranged(best.plan, what.request, found)
        found = best.plan
        best = picked(tuple(one for one in ways if one.way not in _SIDES))
    plan = best.plan if best.plan is not None and best.way not in _SIDES else found
    set_up = arranged_set_up(best, what.set_up(plan))
    return Found(plan, what, ways_told(ways, best), best, found, ways, set_up)


def _lit(what: PlanAsked, found: Plan) -> PlanAsked:
    """Return what was asked with the white bar of its level, where no white lamp was told."""
    if what.has_light:
        return what
    lights = level_lights(what.level, found, what.request)
    return replace(what, request=replace(what.request, lights=lights))


def _side_untold(query: PlanQuery) -> bool:
    """Say whether nobody said on which side of the mesh the tube hangs."""
    return query.place is None and query.screen is None
