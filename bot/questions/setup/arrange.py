"""Which way the lamps should hang: each way worked out for a given box, one picked, and why.

Words: ``words/<language>/arrange.ftl``; what stands in the way is told as ``plan`` tells it.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from bot.command import Command
from bot.facts import Length, Name, Say, Says, Share, metres
from bot.layered import Brief, Care, Layered, Row, Table, Weight
from bot.preferences import Context
from bot.queries.plan import ArrangeQuery
from bot.questions.heat.shared import HEAT_CARE
from bot.questions.setup.arrange_picture import arrange_picture
from bot.questions.setup.plan_asked import PlanAssumed
from bot.questions.setup.plan_found import Found, NoPlan, plan_found
from bot.questions.setup.plan_refused import NotPlanned, tell_not_planned
from bot.questions.setup.ways import WAYS_SOURCES, ArrangedWay, WayMeets, Ways, way_meets
from bot.questions.shared import animal_name
from bot.questions.uv.shared import UV_CARE
from bot.questions.uv.tubes import NamedByTube, Tube, Whose, tube_told
from bot.questions.uv.without_figures import tell_without
from bot.reply import Picture
from calc.setup.light import LAMPS_APART_M
from calc.setup.set_up import SetUp

__all__ = ["ARRANGE", "Arrange", "arrange", "tell"]

_GUIDE = ("arranging-the-lamps", "uv-and-heat-together", "sun-and-shade")
_SOURCES = (*WAYS_SOURCES, "sun_patch_judgement", "uv_distance_rows", "plan_judgement")


@dataclass(frozen=True, slots=True)
class Arrange(NamedByTube):
    """Every way to hang the lamps, the one that is picked, and the set-up that it makes."""

    animal: Name
    tube: Tube
    long: Length
    top: Length
    ways: Ways
    meets: tuple[WayMeets, ...]
    apart: Length
    assumed: PlanAssumed
    set_up: SetUp
    sources: tuple[str, ...]

    @property
    def sun(self) -> Share | None:
        """Return the share of the platform where all three meet, by the way that is picked."""
        pairs = zip(self.ways.all, self.meets, strict=True)
        return next(meets.sun for way, meets in pairs if way.best)

    @property
    def whose(self) -> Whose:
        """Return whose readings the tube answers by, if any."""
        return self.tube.whose

    @property
    def strength(self) -> Share:
        """Return the strength on the label."""
        return self.tube.strength

    @property
    def count(self) -> int:
        """Return how many tubes there are."""
        return self.tube.count

    @property
    def fixture(self) -> Say:
        """Return the fixture by name."""
        return Say("tubes-fixture", self.tube)


Facts = Arrange | NoPlan


def arrange(query: ArrangeQuery, context: Context) -> Facts:
    """Work out every way to hang the lamps, or why nothing can hang in that box."""
    found = plan_found(query, context)
    if not isinstance(found, Found):
        return found
    plan, what = found.plan, found.what
    return Arrange(
        animal=animal_name(what.animal),
        tube=tube_told(plan.light.lamp, None, to_buy=what.new_tube),
        long=metres(plan.fit.length_m),
        top=metres(plan.light.platform_top_m),
        ways=found.ways,
        meets=tuple(way_meets(one, found.beside) for one in found.all_ways),
        apart=metres(LAMPS_APART_M),
        assumed=what.assumed,
        set_up=found.set_up,
        sources=(*what.wish.sources, *what.sources, *_SOURCES),
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
    way, ways = facts.ways.picked, facts.ways
    hide = () if way.has_shade else (say("do-hide"),)
    return Layered(
        command="arrange",
        title=say("title"),
        brief=Brief(
            head=Say.by("arrange-head", way.way, way),
            range=tuple(ways.meets),
            assumed=(say("assumed"),),
            steps=(Say.by("arrange-do", way.way, way), *hide),
        ),
        steps=(
            say.by("step", way.way),
            say("step-bar"),
            say("step-measure"),
        ),
        numbers=(Row(say("label-tube"), say("tube")), *_assumed(facts, say)),
        table=_compared(facts, say),
        why=(*ways.why, say("why-light"), say("why-gradient")),
        care=(
            Care(say("care-heat"), say("care-heat-short"), Weight.STEP),
            *(replace(one, weight=Weight.ALWAYS) for one in UV_CARE[:2]),
            *HEAT_CARE,
        ),
        values=(
            ("platform_in_range", way.place),
            ("patch_of_sun", facts.sun),
            ("heat_in_range", way.heat),
            ("uvi", facts.meets[ways.all.index(way)].strongest),
        ),
        guide=_GUIDE,
        sources=facts.sources,
        picture=lambda teller: Picture.later(arrange_picture, facts.ways, facts.set_up, teller),
        set_up=facts.set_up,
    )


def _compared(facts: Arrange, say: Says) -> Table:
    columns = (
        say("column-way"),
        say("column-heat"),
        say("column-sun"),
        say("column-light"),
        say("column-cool"),
        say("column-shade"),
        say("column-apart"),
    )
    return Table(columns, tuple(map(_row, facts.ways.all, facts.meets)))


def _row(way: ArrangedWay, meets: WayMeets) -> tuple[Say, ...]:
    return (
        Say.by("arrange-way", way.way, way),
        Say("arrange-cell-heat", way),
        Say("arrange-cell-sun", meets),
        Say("arrange-cell-light", meets),
        Say("arrange-cell-cool", meets),
        Say("arrange-cell-shade", way),
        Say("arrange-cell-apart", meets.touches),
    )


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
