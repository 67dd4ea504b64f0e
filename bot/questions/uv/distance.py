"""How far from the animal's back the tube should hang, or why it cannot. Words: ``distance.ftl``.

The answers are in three kinds: a range, one for every length that the tube may have, or none.
"""

from typing import TYPE_CHECKING

from bot.command import Command
from bot.layered import Layered
from bot.preferences import Context
from bot.queries.options import names_a_class
from bot.queries.uv import DistanceQuery
from bot.questions.uv.asked_uv import Asked, told_surely
from bot.questions.uv.distance_facts import (
    ByLength,
    NoPlace,
    Placed,
    by_length,
    no_place,
    placed,
)
from bot.questions.uv.distance_told import tell_by_length, tell_no_place, tell_placed
from bot.questions.uv.lamp_asked import classes_of, lamp_asked, screen_asked, wanted_asked
from bot.questions.uv.readings import off_before, read_lamp
from bot.questions.uv.shared import wish_told
from bot.questions.uv.tubes import all_together
from bot.questions.uv.without_figures import (
    OtherLamp,
    ThroughPane,
    tell_without,
    without_figures,
)
from calc.uv.placement import Verdict, place

if TYPE_CHECKING:
    from bot.questions.uv.unsure import Unsurely

    Facts = Placed | ByLength | NoPlace | Unsurely | ThroughPane | OtherLamp

__all__ = ["DISTANCE", "distance", "tell"]


def distance(query: DistanceQuery, context: Context) -> "Facts":
    """Work out where the tube goes."""
    if none := without_figures(query, query.kind, context, query.readings):
        return none
    told = told_surely(query)
    if told is None:
        from bot.questions.uv.unsure import unsurely

        return unsurely(query, context)
    screen = screen_asked(told.screen)
    one = lamp_asked(
        query.tube, told.reflector, query.length, query.age, query.enclosure, own=context.own
    )
    named = all_together(one, query)
    is_named = bool(told.reflector) and names_a_class(query.tube, query.lamp)
    read = read_lamp(named, query.readings, screen, query.kind, is_named=is_named)
    wanted = wanted_asked(query.animal, query.uvi, context, *off_before(read.off))
    placement = place(read.lamp, screen, wanted.low, wanted.high)
    wish, groups = wish_told(wanted, context), classes_of(context.own)
    asked = Asked.of(query, told, read, screen, wish, placement, groups)
    if placement.ends:
        return placed(asked, *placement.ends)
    return by_length(asked) if placement.verdict is Verdict.BY_LENGTH else no_place(asked)


def tell(facts: "Facts") -> Layered:
    """Tell the range and where to start, then how to measure."""
    match facts:
        case Placed():
            return tell_placed(facts)
        case ByLength():
            return tell_by_length(facts)
        case NoPlace():
            return tell_no_place(facts)
        case ThroughPane() | OtherLamp():
            return tell_without("distance", facts)
        case _:
            from bot.questions.uv.unsure_told import tell_unsurely

            return tell_unsurely("distance", facts)


DISTANCE = Command(
    name="distance",
    query=DistanceQuery,
    facts=distance,
    tell=tell,
    examples=(
        "distance tube:12% reflector:polished screen:none animal:bearded dragon",
        "distance tube:12% reflector:plain screen:blocks 45% animal:bearded dragon",
        "distance tube:6% reflector:polished screen:18x16 0.011in uvi:1-2 length:85cm",
    ),
    guide=("measuring-the-distance", "screens", "reflectors"),
)
