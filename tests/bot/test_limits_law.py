"""No answer leads past a limit, and a figure past a limit is met with its hazard.

Random questions over all animals, in both units. The suite asks some of each;
``NOONSTONE_LAW_EXAMPLES=10000`` asks so many of each, but for the two that are slow to reckon, more
than 100,000 in all.
"""

import os
from collections.abc import Callable

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot.ask import ask
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.reply import Reply
from tests.bot.limits.figures import NAMES, Given, lengths, limits, options, temperatures
from tests.bot.limits.heat import (
    law_air,
    law_basking,
    law_check,
    law_night,
    law_surface,
    law_temps,
    law_watts,
)
from tests.bot.limits.uv import law_decline, law_distance, law_plan, law_section, law_tube, law_uvi

EXAMPLES = int(os.environ.get("NOONSTONE_LAW_EXAMPLES", "40"))
# Of these, which map or plan a whole box, a tenth.
SLOW = ("plan", "section")
ANYONE = Preferences()

NAME = st.sampled_from(NAMES)
WATTS = st.sampled_from(["25W", "50W", "75W", "100W", "150W", "250W", "500W"])
SIZES = st.sampled_from(
    ["24x18x18in", "36x18x18in", "48x24x24in", "90x45x45cm", "120x60x60cm", "180x90x90cm"]
)
BOX = {
    "enclosure": SIZES,
    "material": st.sampled_from(["glass", "wood", "pvc", "melamine"]),
    "lid": st.sampled_from(["solid", "part mesh", "full mesh"]),
}
TUBE = {
    "tube": st.sampled_from(["2%", "6%", "12%", "14%"]),
    "reflector": st.sampled_from(["polished", "plain"]),
    "screen": st.sampled_from(["none", "30%", "45%", "60%"]),
}
RANGES = st.builds(
    lambda low, wide: f"{low:.1f}-{low + wide:.1f}", st.floats(0.2, 12.0), st.floats(0.0, 6.0)
)


_LAWS: dict[str, tuple[st.SearchStrategy[Given], Callable[[Given, Reply], None]]] = {
    "temps": (
        options(
            {},
            {
                "animal": NAME,
                "basking": temperatures(13.5, 90.0),
                "cool": temperatures(5.5, 60.0),
                "warm": temperatures(5.5, 60.0),
                "night": temperatures(-9.0, 40.0),
                "lamp_on": st.sampled_from(["20 minutes", "3 hours"]),
            },
        ),
        law_temps,
    ),
    "check": (
        options(
            {"animal": NAME},
            {
                "basking": temperatures(13.5, 90.0),
                "cool": temperatures(5.5, 60.0),
                "warm": temperatures(5.5, 60.0),
                "night": temperatures(-9.0, 40.0),
                "distance": lengths(0.06, 1.4),
                "tube": TUBE["tube"],
            },
        ),
        law_check,
    ),
    "basking": (
        options(
            {
                "surface": temperatures(20.0, 75.0),
                "air": temperatures(6.0, 45.0),
                "distance": lengths(0.1, 0.9),
            },
            {"animal": NAME, "want": temperatures(20.0, 80.0), "watts": WATTS},
        ),
        law_basking,
    ),
    "watts": (
        options(
            {
                "room": temperatures(10.0, 40.0),
                "distance": lengths(0.1, 0.9),
                "lamp": st.just("flood"),
            },
            {"animal": NAME, "want": temperatures(20.0, 80.0)},
        ),
        law_watts,
    ),
    "air": (
        options(
            {**BOX, "room": temperatures(5.0, 45.0)},
            {"animal": NAME, "want": temperatures(15.0, 60.0), "watts": WATTS},
        ),
        law_air,
    ),
    "night": (options({"room": temperatures(-9.0, 44.0)}, {"animal": NAME, **BOX}), law_night),
    "surface": (
        options(
            {
                "reading": temperatures(10.0, 95.0),
                "material": st.sampled_from(["slate", "tile", "brick", "wood"]),
            },
            {},
        ),
        law_surface,
    ),
    "distance": (options(TUBE, {"animal": NAME, "uvi": RANGES}), law_distance),
    "uvi": (
        options({**TUBE, "distance": lengths(0.06, 1.4)}, {"animal": NAME, "uvi": RANGES}),
        law_uvi,
    ),
    "tube": (
        options(
            {"distance": lengths(0.06, 1.4), "screen": TUBE["screen"]},
            {"animal": NAME, "uvi": RANGES},
        ),
        law_tube,
    ),
    "section": (
        options(
            {**TUBE, "distance": lengths(0.06, 0.5), "enclosure": st.just("120x60x90cm")},
            {"animal": NAME, "uvi": RANGES},
        ),
        law_section,
    ),
    "decline": (
        options(
            {
                "readings": st.builds(
                    lambda one, share: f"2026-01-03 {one:.1f}, 2026-03-01 {one * share:.1f}",
                    st.floats(0.3, 15.0),
                    st.floats(0.7, 1.0),
                )
            },
            {"animal": NAME, "uvi": RANGES},
        ),
        law_decline,
    ),
    "plan": (
        options(
            {"animal": NAME, "enclosure": SIZES, "lid": BOX["lid"]},
            {
                "room": temperatures(12.0, 34.0),
                "night": temperatures(0.0, 30.0),
                "watts": WATTS,
                "uvi": RANGES,
            },
        ),
        law_plan,
    ),
}


@pytest.mark.parametrize("question", _LAWS)
def test_no_answer_leads_past_a_limit_and_what_is_past_one_is_met(question: str) -> None:
    strategy, law = _LAWS[question]

    most = max(EXAMPLES // 10, 40) if question in SLOW else EXAMPLES

    @settings(
        max_examples=most, database=None, suppress_health_check=list(HealthCheck), deadline=None
    )
    @given(strategy)
    def holds(given: Given) -> None:
        law(given, ask(Question(question, given), ANYONE))

    holds()


@pytest.mark.parametrize("name", NAMES)
def test_what_an_animal_needs_lies_within_its_limits(name: str) -> None:
    own, reply = limits({"animal": name}), ask(Question("needs", {"animal": name}), ANYONE)
    most = {
        "uvi": own.uvi_now,
        "basking_surface": own.surface_c,
        "warm_air": own.surface_c,
        "cool_air": own.caution_c,
        "night_floor": own.caution_c,
    }
    for told in reply.values:
        limit = most.get(told.name)
        if limit is not None:
            assert told.high <= limit.value
    assert reply.alarms == ()
