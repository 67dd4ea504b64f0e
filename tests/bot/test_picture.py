"""Pictures: what is drawn is what the engine says, and every file is fit to be sent."""

import pickle
from io import BytesIO
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image

from bot.ask import ask
from bot.commands import COMMANDS
from bot.drawing import Chart, Drawing, Grid, Scale, Side, fingerprint
from bot.language.quantities import Units
from bot.preferences import Preferences
from bot.questions.uv.curves import MOST_ALT, shortened
from bot.render.picture import MOST_BYTES, draw, figure_of
from bot.render.picture.axes import Shown
from bot.render.picture.lettering import spread, width_in, wrapped
from bot.reply import Picture, Reply
from calc.uv.lamp import Fixture, Lamp, of_length, uvi_at
from calc.uv.lamp_unknowns import uvi_estimate
from calc.uv.lengths import length_of_tube
from calc.uv.screen import FlatScreen

INCH = 0.0254
DISTANCE = "distance tube:12% reflector:plain screen:blocks 45% animal:bearded dragon"
REFUSED = (
    "distance tube:6% reflector:plain screen:45% animal:bearded dragon",
    "distance tube:2% reflector:plain screen:45% animal:bearded dragon",
    "distance tube:14% reflector:polished screen:none uvi:0.05-0.1",
)
# Far from what people ask, and where labels, levels and axes have little room.
STRANGE = (
    "section tube:1% reflector:plain screen:blocks 95% distance:50in enclosure:48x24x60in uvi:3-5",
    "temps basking:150C cool:-10C warm:60C night:50C animal:bearded dragon",
    "hours latitude:90N",
    "uvi distance:3m tube:14% reflector:polished screen:none uvi:0.1-0.2",
    "uvi distance:2in tube:1% reflector:plain screen:95% uvi:9-10",
    "tube distance:3m screen:none uvi:0.01-0.02",
    "card uvi:0.5-1 tubes:1%;20%;3%;4% screens:none;95%;18x16 0.011in;passes 1%",
    "decline readings:2001-01-03 5.2, 2024-01-04 0.3 animal:bearded dragon",
    "meter readings:0.05 at 3m uvi:3-5",
    "meter readings:4 at 12in, 4.1 at 12in, 4.2 at 12in, 4 at 12in, 3.9 at 12in uvi:3-5",
)
LINES = [*(line for command in COMMANDS for line in command.examples), *REFUSED, *STRANGE]


def picture_of(line: str, preferences: Preferences | None = None) -> tuple[Reply, Picture, Drawing]:
    reply = ask(line, preferences or Preferences())
    assert reply.picture is not None
    assert reply.picture.drawing is not None
    return reply, reply.picture, reply.picture.drawing


ILLUSTRATED = [line for line in LINES if ask(line, Preferences()).picture is not None]


def chart_of(line: str) -> Chart:
    _, _, drawing = picture_of(line)
    assert isinstance(drawing, Chart)
    return drawing


def opened(png: bytes) -> Image.Image:
    return Image.open(BytesIO(png))


@pytest.mark.parametrize("line", ILLUSTRATED)
def test_a_picture_is_a_png_that_fits_a_phone_and_a_message(line: str) -> None:
    _, picture, drawing = picture_of(line)
    png = draw(drawing)
    image = opened(png)
    assert image.format == "PNG"
    assert image.width == 1200
    assert 300 < image.height < 2400
    assert len(png) < MOST_BYTES
    assert image.info == {}
    assert 60 < len(picture.alt) <= MOST_ALT


@pytest.mark.parametrize("line", STRANGE)
def test_strange_questions_have_a_picture_too(line: str) -> None:
    assert line in ILLUSTRATED


def test_a_map_without_a_single_contour_is_drawn() -> None:
    dark = Grid((0.0, 1.0), (0.0, 1.0), ((0.0, 0.0), (0.0, 0.1)), (0.5, 1.0), wanted=(3.0, 5.0))
    assert draw(Side("dark", "", 1.0, 1.0, "", "", grid=dark)).startswith(b"\x89PNG")


@pytest.mark.parametrize("line", ILLUSTRATED)
def test_a_drawing_can_travel_and_be_found_again(line: str) -> None:
    _, _, drawing = picture_of(line)
    travelled = pickle.loads(pickle.dumps(drawing))
    assert fingerprint(travelled) == fingerprint(drawing)
    assert fingerprint(picture_of(line)[2]) == fingerprint(drawing)
    assert len(pickle.dumps(drawing)) < 200_000
    hash(drawing)


def test_different_drawings_have_different_fingerprints() -> None:
    # Two examples may ask the same question, one of them in free words.
    drawings = {picture_of(line)[2] for line in ILLUSTRATED}
    assert len(drawings) > len(ILLUSTRATED) / 2
    assert len({fingerprint(drawing) for drawing in drawings}) == len(drawings)


def test_the_drawing_is_not_part_of_the_json() -> None:
    reply, picture, _ = picture_of(DISTANCE)
    assert reply.model_dump()["picture"] == {"alt": picture.alt}
    assert Reply.model_validate_json(reply.model_dump_json()).picture == Picture(alt=picture.alt)


def test_the_curve_is_the_engines() -> None:
    [line] = chart_of(DISTANCE).lines
    lamp = of_length(Lamp(12.0, Fixture.PLAIN), length_of_tube())
    screen = FlatScreen(0.55)
    assert line.y == pytest.approx(uvi_at(lamp, np.array(line.x), screen), rel=1e-12)
    for x, low, high in zip(line.x, line.low, line.high, strict=True):
        estimate = uvi_estimate(lamp, x, screen)
        assert (low, high) == (estimate.low, estimate.high)


def test_what_is_marked_is_what_is_answered() -> None:
    reply, _, _ = picture_of(DISTANCE)
    chart = chart_of(DISTANCE)
    distance = reply.values[0]
    advised = next(span for span in chart.spans if span.label.startswith("keep"))
    [start] = chart.points
    assert (advised.low, start.x, advised.high) == (distance.low, distance.best, distance.high)
    uvi = next(v for v in reply.values if v.name == "uvi_start")
    assert (start.low, start.y, start.high) == (uvi.low, uvi.best, uvi.high)
    assert [(band.low, band.high) for band in chart.bands] == [(3.0, 5.0)]


@pytest.mark.parametrize(("units", "per_metre"), [(Units.IN, 1.0 / INCH), (Units.CM, 100.0)])
def test_the_lines_on_the_figure_are_the_chart_in_the_askers_unit(
    units: Units, per_metre: float
) -> None:
    _, _, drawing = picture_of(DISTANCE, Preferences(forced_units=units))
    assert isinstance(drawing, Chart)
    [axes] = (a for a in figure_of(drawing).axes if a.get_xlabel())
    [line] = drawing.lines
    drawn = next(found for found in axes.get_lines() if found.get_linewidth() == 3.0)
    assert np.asarray(drawn.get_xdata()) == pytest.approx(np.array(line.x) * per_metre)
    assert np.asarray(drawn.get_ydata()) == pytest.approx(np.array(line.y))


def test_both_units_stand_on_the_axes() -> None:
    [below] = (a for a in figure_of(picture_of(DISTANCE)[2]).axes if a.get_xlabel())
    [above] = below.child_axes
    assert below.get_xlabel().endswith("(in)")
    assert above.get_xlabel() == "cm"
    assert below.get_xlim()[1] * INCH == pytest.approx(chart_of(DISTANCE).x.high)


@given(st.floats(-50.0, 150.0))
def test_a_second_scale_agrees_with_the_first(celsius: float) -> None:
    fahrenheit, kelvin = Scale("°F", 1.8, 32.0), Scale("K", 1.0, 273.15)
    there, back = Shown(fahrenheit).to(kelvin)
    shown = Shown(fahrenheit).one(celsius)
    assert float(np.asarray(there(shown))) == pytest.approx(celsius + 273.15)
    assert float(np.asarray(back(there(shown)))) == pytest.approx(shown)


def test_drawing_twice_gives_the_same_bytes() -> None:
    _, _, drawing = picture_of(DISTANCE)
    assert draw(drawing) == draw(drawing)


def test_a_picture_does_not_depend_on_the_style_of_this_computer() -> None:
    import matplotlib as mpl

    _, _, drawing = picture_of(DISTANCE)
    assert draw(drawing)
    assert mpl.rcParams["text.parse_math"] is False
    assert mpl.rcParams["font.family"] == ["DejaVu Sans"]


@given(st.lists(st.text(alphabet="ab c", min_size=1, max_size=12), max_size=12))
def test_wrapping_keeps_every_word_and_the_margin(words: list[str]) -> None:
    text = " ".join(words)
    lines = wrapped(text, 1.0, 10.0)
    assert " ".join(lines).split() == text.split()
    assert all(width_in(line, 10.0) <= 1.0 for line in lines if " " in line)


@given(
    st.lists(st.tuples(st.floats(-2.0, 3.0), st.floats(0.01, 0.3)), min_size=1, max_size=8),
)
def test_labels_keep_clear_of_each_other_and_in_bounds(wishes: list[tuple[float, float]]) -> None:
    wished, sizes = [w for w, _ in wishes], [s for _, s in wishes]
    placed = spread(wished, sizes, 0.0, 1.0)
    squeeze = min(1.0, 1.0 / sum(sizes))
    edges = sorted(
        (p - s * squeeze / 2, p + s * squeeze / 2) for p, s in zip(placed, sizes, strict=True)
    )
    assert edges[0][0] >= -1e-9
    assert edges[-1][1] <= 1.0 + 1e-9
    assert all(right[0] >= left[1] - 1e-9 for left, right in pairwise(edges))


def test_a_description_that_is_too_long_ends_after_a_whole_sentence() -> None:
    sentences = [f"Sentence number {n} says nothing much." for n in range(100)]
    text = shortened(sentences)
    assert len(text) <= MOST_ALT
    assert text.endswith("much.")


def test_no_word_of_a_point_covers_another_point() -> None:
    seen = "5.6 at 30cm, 4.3 at 36cm, 3.4 at 42cm, 9.9 at 36cm"
    chart = chart_of(f"meter readings:{seen} animal:bearded dragon")
    figure = figure_of(chart)
    figure.canvas.draw()
    [axes] = (a for a in figure.axes if a.get_xlabel())
    words = [text for text in axes.texts if text.get_text() in {p.label for p in chart.points}]
    assert len(words) == len(chart.points)
    for point in chart.points:
        at = axes.transData.transform((point.x * 100.0, point.y))
        assert not [t.get_text() for t in words if t.get_window_extent().contains(*at)]
