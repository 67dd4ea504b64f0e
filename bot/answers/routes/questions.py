"""What each question that free words may mean is for, in plain words, and how it is asked."""

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
from bot.queries.options import Query
from bot.queries.plan import PlanQuery
from bot.queries.setup import CheckQuery
from bot.queries.uv import DistanceQuery, TubeQuery, UviQuery
from bot.queries.uv_depth import DeclineQuery, MeterQuery

__all__ = ["QUESTIONS", "Question"]


@dataclass(frozen=True, slots=True)
class Question:
    """One question: its model, what it is for, its guide page.

    ``least`` are options without which it has nothing to answer though none is required.
    """

    query: type[Query]
    purpose: str
    page: str
    least: Mapping[str, str] = field(default_factory=dict)


_TOLD = "12% tube, no mesh, 16in to its back, basking 98F, cool 75F"
_TUBE = {"tube": "12%", "reflector": "polished", "screen": "none"}

QUESTIONS: Mapping[str, Question] = {
    "air": Question(AirQuery, "How many watts warm the whole box", "the-cool-end"),
    "basking": Question(
        BaskingQuery, "How to get the basking spot hotter or cooler", "the-basking-spot"
    ),
    "check": Question(CheckQuery, "Have a whole set-up checked", "how-to-ask", {"setup": _TOLD}),
    "convert": Question(ConvertQuery, "Inches to cm, °F to °C", "how-to-ask"),
    "decline": Question(
        DeclineQuery,
        "Whether a tube is too old",
        "when-a-lamp-is-worn-out",
        {"age": "8 months"},
    ),
    "distance": Question(
        DistanceQuery,
        "How far away the UV tube should be",
        "measuring-the-distance",
        _TUBE,
    ),
    "hours": Question(HoursQuery, "How many hours of light a day", "day-length"),
    "lamp": Question(LampQuery, "What a kind of lamp is good for", "basking-lamps"),
    "meter": Question(MeterQuery, "What your UV meter readings say", "how-to-take-a-reading"),
    "needs": Question(NeedsQuery, "What your animal needs, UV and warmth", "planning-a-set-up"),
    "night": Question(NightQuery, "Whether the night is too cold", "nights"),
    "plan": Question(
        PlanQuery,
        "Plan a whole set-up",
        "planning-a-set-up",
        {"enclosure": "48x24x24in", "lid": "full mesh"},
    ),
    "surface": Question(
        SurfaceQuery, "What a surface really is when a gun reads it", "measuring-temperatures"
    ),
    "temps": Question(
        TempsQuery,
        "What your temperatures mean",
        "measuring-temperatures",
        {"basking": "98F", "cool": "75F"},
    ),
    "tube": Question(TubeQuery, "Which tube fits a fixed place", "uv-and-heat-together"),
    "uvi": Question(UviQuery, "How strong the UV is at a distance", "reading-a-uv-meter", _TUBE),
    "watts": Question(WattsQuery, "What wattage the basking lamp needs", "dimmers-and-wattage"),
}
