"""Which way the lamps should hang: each way worked out for a given box, one picked, and why.

Words: ``words/<language>/arrange.ftl``; what stands in the way is told as ``plan`` tells it.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from bot.command import Command
from bot.facts import Length, Name, Say, Says, Share, Uvi, metres, share, uvi
from bot.layered import Brief, Care, Layered, Row, Table, Weight
from bot.preferences import Context
from bot.queries.plan import ArrangeQuery
from bot.questions.heat.shared import HEAT_CARE
from bot.questions.setup.plan_asked import PlanAssumed
from bot.questions.setup.plan_found import NoPlan, plan_found
from bot.questions.setup.plan_refused import NotPlanned, tell_not_planned
from bot.questions.shared import animal_name
from bot.questions.uv.shared import UV_CARE
from bot.questions.uv.tubes import NamedByTube, Tube, tube_told
from bot.questions.uv.without_figures import tell_without
from calc.setup.arrangement import Arranged, Arrangement, arranged, picked
from calc.setup.set_up import SetUp
from calc.uv.patches import Shade

__all__ = ["ARRANGE", "Arrange", "arrange", "tell"]

_GUIDE = ("arranging-the-lamps", "uv-and-heat-together", "sun-and-shade")
_SOURCES = ("arrangement_judgement", "line_source", "uv_distance_rows", "plan_judgement")


@dataclass(frozen=True, slots=True)
class ArrangedWay:
    """One way to hang the lamps; ``heat`` is the share of the warm patch in the UV range."""

    way: Arrangement
    place: Share
    heat: Share | None
    shade: Shade
    strongest: Uvi
    safe: bool
    best: bool


@dataclass(frozen=True, slots=True)
class Arrange(NamedByTube):
    """Every way, the one that is picked, and the set-up of the plan that they start from."""

    animal: Name
    tube: Tube
    long: Length
    top: Length
    ways: tuple[ArrangedWay, ...]
    picked: ArrangedWay
    row: ArrangedWay | None
    assumed: PlanAssumed
    set_up: SetUp
    sources: tuple[str, ...]


Facts = Arrange | NoPlan


def arrange(query: ArrangeQuery, context: Context) -> Facts:
    """Work out every way to hang the lamps, or why nothing can hang in that box."""
    planned = plan_found(query, context)
    if not isinstance(planned, tuple):
        return planned
    found, what = planned
    ways = arranged(found, what.request)
    best = picked(ways)
    told = tuple(_told(one, best=one is best) for one in ways)
    return Arrange(
        animal=animal_name(what.animal),
        tube=tube_told(found.light.lamp, None, to_buy=what.new_tube),
        long=metres(found.fit.length_m),
        top=metres(found.light.platform_top_m),
        ways=told,
        picked=next(one for one in told if one.best),
        row=next((one for one in told if one.way is Arrangement.IN_A_ROW), None),
        assumed=what.assumed,
        set_up=what.set_up(found),
        sources=(*what.wish.sources, *what.sources, *_SOURCES),
    )


def _told(one: Arranged, *, best: bool) -> ArrangedWay:
    met = one.met
    return ArrangedWay(
        way=one.way,
        place=share(met.in_range),
        heat=None if met.heat_in_range is None else share(met.heat_in_range),
        shade=met.shade,
        strongest=uvi(met.strongest.uvi),
        safe=one.is_safe,
        best=best,
    )


def tell(facts: Facts) -> Layered:
    """Tell the way that is picked, the others beside it, and why."""
    match facts:
        case Arrange():
            return _arranged_told(facts)
        case NotPlanned():
            return replace(tell_not_planned(facts), command="arrange")
        case _:
            return replace(tell_without("plan", facts), command="arrange")


def _arranged_told(facts: Arrange) -> Layered:
    say = Says("arrange", facts)
    way = facts.picked
    shaded = way.shade in (Shade.THERE, Shade.PROBABLY)
    return Layered(
        command="arrange",
        title=say("title"),
        brief=Brief(
            head=Say.by("arrange-head", way.way, way),
            range=tuple(_range(facts)),
            assumed=(say("assumed"),),
            steps=(Say.by("arrange-do", way.way, way), *(() if shaded else (say("do-hide"),))),
        ),
        steps=(
            Say.by("arrange-step", way.way, way),
            say("step-bar"),
            say("step-measure"),
        ),
        numbers=(Row(say("label-tube"), say("tube")), *_assumed(facts, say)),
        table=Table(
            (say("column-way"), say("column-place"), say("column-heat"), say("column-shade")),
            tuple(map(_row, facts.ways)),
        ),
        why=(Say.by("arrange-why", way.way, way), say("why-picked"), say("why-light")),
        care=(
            Care(say("care-heat"), say("care-heat-short"), Weight.STEP),
            *(replace(one, weight=Weight.ALWAYS) for one in UV_CARE[:2]),
            *HEAT_CARE,
        ),
        values=(
            ("platform_in_range", way.place),
            ("heat_in_range", way.heat),
            ("uvi", way.strongest),
        ),
        guide=_GUIDE,
        sources=facts.sources,
        set_up=facts.set_up,
    )


def _row(way: ArrangedWay) -> tuple[Say, ...]:
    say = Says("arrange", way)
    named = Say.by("arrange-way", way.way, way)
    return named, say("cell-place"), say("cell-heat"), say("cell-shade")


def _range(facts: Arrange) -> Iterator[Say]:
    way, row = facts.picked, facts.row
    yield Say("arrange-meets" if way.heat is not None else "arrange-place", way)
    if row is not None and row.heat is not None and not row.best:
        yield Say("arrange-row", row)


def _assumed(facts: Arrange, say: Says) -> Iterator[Row]:
    if facts.assumed.told:
        yield Row(say("label-assumed"), say("all-assumed"))


ARRANGE = Command(
    name="arrange",
    query=ArrangeQuery,
    facts=arrange,
    tell=tell,
    examples=(
        "arrange animal:bearded dragon enclosure:48x24x24in lid:full mesh room:70F",
        "arrange animal:leopard gecko enclosure:90x45x45cm lid:solid material:wood room:21C",
    ),
    guide=("arranging-the-lamps", "uv-and-heat-together"),
)
