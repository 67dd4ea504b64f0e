"""Where the UV goes in an enclosure: the map, the platform, the shade and the heat.

Words: ``words/<language>/section.ftl``.
"""

from dataclasses import replace

from bot.command import Command
from bot.language.screens import Pane
from bot.language.unsure import Unsure
from bot.language.words import join_line
from bot.layered import Layered
from bot.preferences import Context
from bot.queries.typed import typed
from bot.queries.uv import UviQuery
from bot.queries.uv_depth import SectionQuery
from bot.questions.setup.section_facts import Section, section_of
from bot.questions.setup.section_told import tell_section
from bot.questions.uv.unsure import Unsurely, unsurely
from bot.questions.uv.unsure_told import tell_unsurely
from bot.questions.uv.without_figures import (
    OtherLamp,
    ThroughPane,
    tell_without,
    without_figures,
)

__all__ = ["SECTION", "section", "tell"]

Facts = Section | Unsurely | ThroughPane | OtherLamp
# What a place right under the tube tells of as well.
_BELOW = (
    "distance",
    "tube",
    "reflector",
    "screen",
    "animal",
    "uvi",
    "length",
    "lamp",
    "tubes",
    "gap",
)


def section(query: SectionQuery, context: Context) -> Facts:
    """Work out where the UV goes; of a tube that is not known, what each case gives below it."""
    at_m = query.distance.low if query.readings else None
    if none := without_figures(query, query.kind, context, query.readings, at_m):
        return none
    unsure = isinstance(query.reflector, Unsure) or isinstance(query.screen, Unsure)
    if unsure and query.readings is None:
        below = UviQuery(**{name: getattr(query, name) for name in _BELOW})
        return replace(unsurely(below, context), again=_again(query))
    return section_of(query, context)


def _again(query: SectionQuery) -> str:
    """Return what to ask once the rest is known, as it is typed."""
    assert query.tube is not None
    assert query.screen is not None
    assert not isinstance(query.screen, Pane)
    unsure = isinstance(query.reflector, Unsure), isinstance(query.screen, Unsure)
    given = {
        "tube": query.tube.text,
        "reflector": "polished" if unsure[0] else str(query.reflector),
        "screen": "45%" if unsure[1] else query.screen.text,
        "distance": typed(query.distance),
        "enclosure": typed(query.enclosure),
        "animal": query.animal,
        "tubes": str(query.tubes) if query.tubes > 1 else "",
        "light": typed(query.light),
    }
    return join_line("section", {name: text for name, text in given.items() if text})


def tell(facts: Facts) -> Layered:
    """Tell the map, or why there is none yet."""
    match facts:
        case Section():
            return tell_section(facts)
        case Unsurely():
            return tell_unsurely("section", facts)
        case _:
            return tell_without("section", facts)


SECTION = Command(
    name="section",
    query=SectionQuery,
    facts=section,
    tell=tell,
    examples=(
        (
            "section tube:12% reflector:polished screen:none distance:16in "
            "enclosure:48x24x24in animal:bearded dragon"
        ),
        (
            "section tube:6% reflector:plain screen:passes 60% distance:25cm "
            "enclosure:90x45x45 cm uvi:1-2 length:55cm platform:25cm heat:15cm"
        ),
    ),
    guide=("sun-and-shade", "uv-and-heat-together"),
)
