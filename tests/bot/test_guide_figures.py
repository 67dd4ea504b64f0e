"""What a guide page says in figures is what the engine and the animals' tables say.

Each claim is a phrase of the page with its figures filled in from their origin; and every
temperature on a page belongs to a claim or to a worked example, so that none goes unheld.
"""

import re
from collections.abc import Callable

import pytest

from bot import guide
from bot.ask import ask
from bot.language.quantities import Units
from bot.preferences import Preferences
from calc.animal import Target
from calc.animals import animals
from calc.heat.basking import MOST_DIMMING
from calc.heat.dimming import rerated_by_voltage
from calc.heat.enclosure import Enclosure, Lid, Material
from calc.heat.guards import WOOD_LIMIT_C
from calc.heat.thermometer import Surface, corrected_reading
from calc.shape.line import parallel_per_flux
from calc.timer import LONGEST_H, SHORTEST_H, flat_times, monthly_mean_hours
from calc.uncertainty import Estimate
from calc.uv.dose import dose_sed, safe_time
from calc.uv.lamp import Fixture, Lamp, uvi_at
from calc.uv.screen import FlatScreen, NoScreen
from tests.bot.english import (
    difference,
    length_range,
    number,
    temperature,
    temperature_range,
)

DRAGON = animals()["bearded-dragon"]
LONDON_DEG = 51.5
FT_M, IN_M = 0.3048, 0.0254
POLISHED, PLAIN = Lamp(12.0, Fixture.POLISHED), Lamp(12.0, Fixture.PLAIN)
BARE, COMMON_SCREEN = NoScreen(), FlatScreen(0.55)


def known(target: Target | None) -> Target:
    assert target is not None
    return target


def span(target: Target | None) -> str:
    return temperature_range(known(target).low, known(target).high, Units.IN)


def degrees(celsius: float) -> str:
    return temperature(celsius, Units.IN)


def of_fahrenheit(value: float) -> str:
    return degrees((value - 32.0) / 1.8)


def rise(fahrenheit: float) -> str:
    return difference(fahrenheit / 1.8, Units.IN)


def body_of_a_dragon() -> str:
    (body,) = (b for b in DRAGON.bodies if b.source == "black2017")
    return temperature_range(body.low_c, body.high_c, Units.IN)


def mean_day(latitude: float, month: int) -> str:
    return f"{number(monthly_mean_hours(latitude, 2025)[month - 1], 0.1)} hours"


def home_deg() -> float:
    return known(DRAGON.home_latitude_deg).aim


def dimmed(share: Callable[[float], float], volts: float) -> int:
    return round(100.0 * (1.0 - share(volts)))


CLAIMS: list[tuple[str, str]] = [
    ("the-basking-spot", f"{span(DRAGON.basking_surface_c)} on the surface"),
    ("the-basking-spot", f"best near {degrees(known(DRAGON.basking_surface_c).aim)}"),
    ("the-basking-spot", f"kept their bodies at about {body_of_a_dragon()}"),
    ("the-basking-spot", f"air at {of_fahrenheit(80)} and a surface at {of_fahrenheit(92)}"),
    ("the-basking-spot", f"the rise is only {rise(92 - 80)}"),
    ("the-basking-spot", f"want a rise of {rise(103 - 80)}"),
    ("the-basking-spot", f"near {degrees(WOOD_LIMIT_C)}, it is far too hot"),
    ("fire-and-electrical-safety", f"below {degrees(WOOD_LIMIT_C)}, and well below is better"),
    ("warm-end-and-cool-end", f"Basking surface: {span(DRAGON.basking_surface_c)}"),
    ("warm-end-and-cool-end", f"Aim for about {degrees(known(DRAGON.basking_surface_c).aim)}"),
    ("warm-end-and-cool-end", f"out of the beam: {span(DRAGON.warm_air_c)}"),
    ("warm-end-and-cool-end", f"Cool-end air: {span(DRAGON.cool_air_c)}"),
    ("the-cool-end", f"For a bearded dragon, {span(DRAGON.cool_air_c)} in the air"),
    ("nights", f"Room stays at {degrees(known(DRAGON.night_floor_c).high)} or more"),
    ("nights", f"Room falls below {degrees(known(DRAGON.night_floor_c).low)}"),
    ("nights", f"switch off at about {degrees(known(DRAGON.night_heat_off_c).aim)}"),
    (
        "day-length",
        f"{number(flat_times().hours)} hours on, {number(flat_times().hours)} hours off",
    ),
    ("day-length", f"from about {mean_day(home_deg(), 6)} in June"),
    ("day-length", f"to about {mean_day(home_deg(), 12)} in December"),
    ("day-length", f"from about {mean_day(LONDON_DEG, 12)} in December"),
    ("day-length", f"to about {mean_day(LONDON_DEG, 6)} in June"),
    ("day-length", f"between {number(SHORTEST_H)} and {number(LONGEST_H)} hours"),
    ("dimmers-and-wattage", f"by no more than about {MOST_DIMMING * 100:.0f} %"),
    (
        "dimmers-and-wattage",
        (
            "with 8 % less voltage the lamp uses about "
            f"{dimmed(lambda v: rerated_by_voltage(v).power, 0.92)} % less power, but the light "
            f"drops by about {dimmed(lambda v: rerated_by_voltage(v).light, 0.92)} %"
        ),
    ),
    ("uv-and-your-eyes", f"in about {number(safe_time(4.0).seconds / 60.0)} minutes"),
    (
        "uv-and-heat-together",
        f"For a 4 ft (122 cm) box that is roughly {length_range(2 * FT_M, 8 / 3 * FT_M, Units.IN)}",
    ),
    ("reading-a-uv-meter", f"UVI of {number(known(DRAGON.uvi).low)} to {known(DRAGON.uvi).high:g}"),
    ("reflectors", f"about {Fixture.PLAIN.factor * 100:.0f} % of what a polished one gives"),
]
# Temperatures that are only talked about: "38 °F or 38 °C", a tenth more than 92, two thermometers.
TALKED_ABOUT = {
    "how-to-ask": {"38"},
    "the-basking-spot": {"92", "103"},
    "measuring-temperatures": {"2", "8"},
    # What was read of others' studies, as bot/dangers tells it too.
    "too-hot-or-too-cold": {"99", "113", "104", "36", "50"},
}


@pytest.mark.parametrize(("slug", "claim"), CLAIMS, ids=lambda text: text[:48])
def test_a_figure_of_the_guide_is_that_of_the_engine(slug: str, claim: str) -> None:
    body = re.sub(r"\*\*|\s+", lambda m: "" if m[0] == "**" else " ", guide.page(slug).body)
    assert claim in body


@pytest.mark.parametrize("page", guide.pages(), ids=lambda page: page.slug)
def test_no_temperature_of_the_guide_goes_unheld(page: guide.Page) -> None:
    held = " ".join(claim for slug, claim in CLAIMS if slug == page.slug)
    for figure in re.findall(r"(\d+(?:\.\d+)?)(?: to (\d+(?:\.\d+)?))? °[FC]", page.body):
        for value in filter(None, figure):
            held_here = re.search(rf"(?<![\d.]){re.escape(value)}(?![\d.])", held)
            inside_example = value in TALKED_ABOUT.get(page.slug, ())
            celsius_of = {of_fahrenheit(float(x)) for x in TALKED_ABOUT.get(page.slug, ())}
            celsius_of |= {rise(float(x)) for x in TALKED_ABOUT.get(page.slug, ())}
            also = any(f"({value} °C)" in text for text in celsius_of)
            assert held_here or inside_example or also, f"{value} in {page.slug}"


def test_a_gun_reads_slate_and_sand_too_low_by_as_much_as_told() -> None:
    off_k = 0.0
    for surface in (Surface.SLATE, Surface.SAND):
        for shown in (38.0, 43.0):
            found = corrected_reading(shown, surface, 27.0)
            assert isinstance(found, Estimate)
            off_k = max(off_k, found.high - shown)
    body = guide.page("measuring-temperatures").body
    told = re.search(r"reads low, by up to (\d+) °F \((\d+(?:\.\d)?) °C\)", body)
    assert told is not None
    assert float(told[1]) / 1.8 == pytest.approx(off_k, abs=0.6)


def test_under_its_end_a_tube_gives_half_to_two_thirds() -> None:
    assert "about half to two thirds" in guide.page("sun-and-shade").body
    for distance in (0.25, 0.30, 0.40):
        middle, end = (float(parallel_per_flux(distance, 0.519, z)) for z in (0.0, 0.519 / 2))
        assert 0.5 < end / middle < 0.69


def test_a_third_closer_is_nearly_twice_as_strong() -> None:
    assert "a third closer gives nearly twice" in guide.page("measuring-the-distance").body
    lamp = Lamp(12.0, Fixture.POLISHED)
    for distance in (0.36, 0.41, 0.46):
        more = uvi_at(lamp, distance * 2 / 3, NoScreen()) / uvi_at(lamp, distance, NoScreen())
        assert 1.7 < more < 2.05


def test_wood_with_a_glass_front_saves_a_quarter_against_glass() -> None:
    assert "saves roughly a quarter" in guide.page("the-cool-end").body
    wood, glass = (
        Enclosure(1.2, 0.6, 0.6, material, Lid.SOLID).conductance_w_k()
        for material in (Material.WOOD, Material.GLASS)
    )
    assert 1.0 - wood / glass == pytest.approx(0.25, abs=0.03)


def test_an_hour_at_a_uv_index_of_4_is_the_dose_of_the_glossary() -> None:
    (term,) = (term for term in guide.glossary() if term.name == "SED")
    assert f"is about {number(dose_sed(4.0, 1.0), 0.1)} SED" in term.meaning


DISTANCES = [
    ("measuring-the-distance", "12 %, polished reflector", "12% polished none"),
    ("measuring-the-distance", "12 %, plain fixture", "12% plain none"),
    ("measuring-the-distance", "6 %, polished reflector", "6% polished none"),
    ("measuring-the-distance", "6 %, plain fixture", "6% plain none"),
    ("reflectors", "polished reflector", "12% polished none"),
    ("reflectors", "plain fixture", "12% plain none"),
    ("screens", "polished reflector, nothing between", "12% polished none"),
    ("screens", "polished reflector, screen that blocks 45 %", "12% polished 45%"),
    ("screens", "plain fixture, screen that blocks 45 %", "12% plain 45%"),
]


@pytest.mark.parametrize(("slug", "named", "lamp"), DISTANCES)
def test_distances_are_those_of_the_answer_as_it_says_them(
    slug: str, named: str, lamp: str
) -> None:
    tube, reflector, screen = lamp.split()
    line = f"distance tube:{tube} reflector:{reflector} screen:{screen} animal:bearded dragon"
    brief = " ".join(line.text for line in ask(line, Preferences()).brief)
    start = re.search(r"[\d.]+ in \(\d+ cm\)", brief)
    span = re.search(r"[\d.]+ to [\d.]+ in \(\d+ to \d+ cm\)", brief)
    assert start
    assert span
    assert f"- {named}: {span[0]}, start at {start[0]}\n" in guide.page(slug).body + "\n"


def test_no_other_distances_stand_on_a_page() -> None:
    for page in guide.pages():
        rows = [row for row in DISTANCES if row[0] == page.slug]
        assert page.body.count(", start at ") == len(rows)
        assert "16 to 20 in" not in page.body
