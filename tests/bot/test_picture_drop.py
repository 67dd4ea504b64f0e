"""A lamp over a back: the curve, the zones and the arrow are the engine's and the answer's."""

import numpy as np
import pytest

from bot.drawing import Drop, ZoneKind
from bot.language.quantities import Units
from bot.preferences import Preferences
from bot.render.picture import page_of
from calc.uv.lamp import Fixture, Lamp, of_length, uvi_at
from calc.uv.lamp_unknowns import uvi_estimate
from calc.uv.lengths import length_of_tube
from calc.uv.screen import FlatScreen
from tests.bot.svg_read import elements, floats
from tests.bot.test_picture import DISTANCE, INCH, REFUSED, picture_of


def drop_of(line: str, preferences: Preferences | None = None) -> Drop:
    _, _, drawing = picture_of(line, preferences)
    assert isinstance(drawing, Drop)
    return drawing


def test_the_curve_is_the_engines() -> None:
    line = drop_of(DISTANCE).line
    lamp = of_length(Lamp(12.0, Fixture.PLAIN), length_of_tube())
    screen = FlatScreen(0.55)
    assert line.y == pytest.approx(uvi_at(lamp, np.array(line.x), screen), rel=1e-12)
    for x, low, high in zip(line.x, line.low, line.high, strict=True):
        estimate = uvi_estimate(lamp, x, screen)
        assert (low, high) == (estimate.low, estimate.high)


def test_what_is_marked_is_what_is_answered() -> None:
    reply, _, _ = picture_of(DISTANCE)
    drop = drop_of(DISTANCE)
    distance = reply.values[0]
    [start] = drop.points
    assert drop.keep is not None
    assert (drop.keep.low, start.x, drop.keep.high) == (distance.low, distance.best, distance.high)
    assert drop.back_m == start.x
    uvi = next(v for v in reply.values if v.name == "uvi_start")
    assert (start.low, start.y, start.high) == (uvi.low, uvi.best, uvi.high)
    assert (drop.wanted.low, drop.wanted.high) == (3.0, 5.0)
    assert drop.title.replace("\u00a0", " ") == reply.brief[0].text


@pytest.mark.parametrize("line", [DISTANCE, *REFUSED])
def test_the_zones_say_what_the_curve_does(line: str) -> None:
    drop = drop_of(line)
    assert [zone.low for zone in drop.zones] == [0.0, *(z.high for z in drop.zones[:-1])]
    for zone in drop.zones:
        middle = (zone.low + zone.high) / 2.0
        uvi = float(np.interp(middle, drop.line.x, drop.line.y))
        kind = zone.kind
        assert (kind is ZoneKind.STRONGER) == (uvi > drop.wanted.high) or middle < 0.2
        assert (kind is ZoneKind.WEAKER) == (uvi < drop.wanted.low) or middle < 0.2
        assert (kind is ZoneKind.TOO_NEAR) == (middle < 0.2)


@pytest.mark.parametrize("units", Units)
def test_the_arrow_and_the_start_are_drawn_to_scale(units: Units) -> None:
    drop = drop_of(DISTANCE, Preferences(forced_units=units))
    page = page_of(drop)
    dots = [floats(c, "cx", "cy") for c in elements(drop, "circle") if c["r"] == "12.0"]
    [y] = [y for x, y in dots if x > 540.0]
    arrow = next(line for line in page._lines if line[0][0] == line[1][0])
    (_, top), (_, back) = arrow
    assert back == pytest.approx(y, abs=0.1)
    # The ruler's last figure of the asker's unit, by the height of its middle.
    told = [(float(t), (b.y0 + b.y1) / 2.0) for t, b in page.words if t.isdigit() and b.x0 < 480]
    figure, at = max(told)
    unit_m = INCH if units is Units.IN else 0.01
    assert (back - top) / (at - top) * figure * unit_m == pytest.approx(drop.back_m, abs=0.012)


@pytest.mark.parametrize("units", Units)
@pytest.mark.parametrize("animal", ["White's tree frog", "corn snake", "bearded dragon"])
@pytest.mark.parametrize("tube", ["6%", "12%"])
def test_the_arrow_says_the_distance_of_the_answer(units: Units, animal: str, tube: str) -> None:
    line = f"distance tube:{tube} reflector:plain screen:none animal:{animal}"
    reply, _, _ = picture_of(line, Preferences(forced_units=units))
    drop = drop_of(line, Preferences(forced_units=units))
    assert drop.away in " ".join(told.text for told in reply.brief)


@pytest.mark.parametrize("units", Units)
def test_the_ruler_has_both_units_the_askers_first(units: Units) -> None:
    words = page_of(drop_of(DISTANCE, Preferences(forced_units=units))).words
    places = {told: box.x0 for told, box in words if told in ("in", "cm")}
    assert min(places, key=lambda told: places[told]) == units.value


def test_no_word_of_a_point_covers_another_point() -> None:
    seen = "5.6 at 30cm, 4.3 at 36cm, 3.4 at 42cm, 9.9 at 36cm"
    drop = drop_of(f"meter readings:{seen} animal:bearded dragon")
    page = page_of(drop)
    dots = [floats(c, "cx", "cy") for c in elements(drop, "circle") if c["r"] == "9.0"]
    assert len(dots) == 3
    boxes = [box for _, box in page.words]
    for x, y in dots:
        assert not any(b.x0 < x < b.x1 and b.y0 < y < b.y1 for b in boxes)
