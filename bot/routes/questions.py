"""How each question that free words may mean is asked."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from bot.queries.day import HoursQuery
from bot.queries.general import ConvertQuery
from bot.queries.heat import (
    AirQuery,
    BaskingQuery,
    LampQuery,
    NightQuery,
    SurfaceQuery,
    TempsQuery,
    WattsQuery,
)
from bot.queries.needs import NeedsQuery
from bot.queries.plan import PlanQuery
from bot.queries.query import Query
from bot.queries.setup import CheckQuery
from bot.queries.uv import DistanceQuery, TubeQuery, UviQuery
from bot.queries.uv_depth import DeclineQuery, MeterQuery

__all__ = ["QUESTIONS", "Question"]


@dataclass(frozen=True, slots=True)
class Question:
    """One question: its model and its guide page.

    ``least`` are options without which it has nothing to answer though none is required.
    """

    query: type[Query]
    page: str
    least: Mapping[str, str] = field(default_factory=dict)


_TOLD = "12% tube, no mesh, 16in to its back, basking 98F, cool 75F"
_TUBE = {"tube": "12%", "reflector": "polished", "screen": "none"}

QUESTIONS: Mapping[str, Question] = {
    "air": Question(AirQuery, "the-cool-end"),
    "basking": Question(BaskingQuery, "the-basking-spot"),
    "check": Question(CheckQuery, "how-to-ask", {"setup": _TOLD}),
    "convert": Question(ConvertQuery, "how-to-ask"),
    "decline": Question(
        DeclineQuery,
        "when-a-lamp-is-worn-out",
        {"age": "8 months"},
    ),
    "distance": Question(
        DistanceQuery,
        "measuring-the-distance",
        _TUBE,
    ),
    "hours": Question(HoursQuery, "day-length"),
    "lamp": Question(LampQuery, "basking-lamps"),
    "meter": Question(MeterQuery, "how-to-take-a-reading"),
    "needs": Question(NeedsQuery, "planning-a-set-up"),
    "night": Question(NightQuery, "nights"),
    "plan": Question(
        PlanQuery,
        "planning-a-set-up",
        {"enclosure": "48x24x24in", "lid": "full mesh"},
    ),
    "surface": Question(SurfaceQuery, "measuring-temperatures"),
    "temps": Question(
        TempsQuery,
        "measuring-temperatures",
        {"basking": "98F", "cool": "75F"},
    ),
    "tube": Question(TubeQuery, "uv-and-heat-together"),
    "uvi": Question(UviQuery, "reading-a-uv-meter", _TUBE),
    "watts": Question(WattsQuery, "dimmers-and-wattage"),
}
