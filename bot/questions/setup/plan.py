"""A whole set-up from what someone has: what to buy, where it goes, what to measure first.

Words: ``words/<language>/plan.ftl``.
"""

from bot.command import Command
from bot.language.screens import Pane
from bot.layered import Layered
from bot.preferences import Context
from bot.queries.plan import PlanQuery
from bot.questions.setup.plan_facts import Planned, planned
from bot.questions.setup.plan_found import Found, NoPlan, plan_found
from bot.questions.setup.plan_refused import NotPlanned, tell_not_planned
from bot.questions.setup.plan_told import tell_planned
from bot.questions.uv.without_figures import tell_without

__all__ = ["PLAN", "plan", "tell"]

Facts = Planned | NoPlan


def plan(query: PlanQuery, context: Context) -> Facts:
    """Work out a set-up to buy and build, or why not in that box and what would help."""
    found = plan_found(query, context)
    if not isinstance(found, Found):
        return found
    assert not isinstance(query.screen, Pane)
    return planned(found, query.screen, context.own, context.day)


def tell(facts: Facts) -> Layered:
    """Tell the set-up, or why there is none."""
    match facts:
        case Planned():
            return tell_planned(facts)
        case NotPlanned():
            return tell_not_planned(facts)
        case _:
            return tell_without("plan", facts)


PLAN = Command(
    name="plan",
    query=PlanQuery,
    facts=plan,
    tell=tell,
    examples=(
        "plan animal:bearded dragon enclosure:48x24x24in lid:full mesh room:70F night:62F",
        (
            "plan animal:leopard gecko enclosure:90x45x45cm lid:solid material:wood room:21C "
            "night:15C"
        ),
        "plan animal:corn snake enclosure:36x18x18in lid:full mesh tube:6% watts:40W",
    ),
    guide=("planning-a-set-up", "uv-and-heat-together"),
    form=True,
)
