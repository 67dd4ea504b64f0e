"""Pictures: what is drawn is what the engine says, and every file is fit to be sent."""

import pickle
from io import BytesIO
from itertools import pairwise
from math import hypot

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image

from bot.ask import ask
from bot.commands import COMMANDS
from bot.drawing import Axis, Chart, Drawing, Grid, Line, Scale, Side, fingerprint
from bot.preferences import Preferences
from bot.questions.uv.curves import MOST_ALT, shortened
from bot.render.picture import MOST_BYTES, Theme, draw, page_of
from bot.render.picture.axes import even_ticks
from bot.render.picture.inks import Ink
from bot.render.picture.lettering import clean, width, wrapped
from bot.render.picture.spread import spread
from bot.reply import Picture, Reply
from tests.bot.svg_read import SVG, elements, floats, ink, root_of
from tests.some import some_of

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
# Answered by words alone.
QUESTIONS = ("about", "convert ", "guide", "help")
UNDRAWN = (*QUESTIONS, "next beardie, ")
LINES = [*(line for command in COMMANDS for line in command.examples), *REFUSED, *STRANGE]


def picture_of(line: str, preferences: Preferences | None = None) -> tuple[Reply, Picture, Drawing]:
    reply = ask(line, preferences or Preferences())
    assert reply.picture is not None
    assert reply.picture.drawing is not None
    return reply, reply.picture, reply.picture.drawing


ILLUSTRATED = [line for line in LINES if not line.startswith(UNDRAWN)]


def test_all_other_questions_bring_a_picture() -> None:
    assert [x for x in LINES if ask(x, Preferences()).picture is not None] == ILLUSTRATED


def opened(png: bytes) -> Image.Image:
    return Image.open(BytesIO(png))


@pytest.mark.parametrize("line", some_of(ILLUSTRATED, 3))
def test_a_picture_is_a_png_that_fits_a_phone_and_a_message(line: str) -> None:
    _, picture, drawing = picture_of(line)
    png = draw(drawing)
    image = opened(png)
    assert image.format == "PNG"
    assert image.width in (1200, 960)
    assert 300 < image.height < 2800
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


@given(st.floats(-50.0, 150.0), st.floats(0.5, 200.0))
def test_ticks_are_round_lie_inside_and_agree_with_their_scale(low: float, wide: float) -> None:
    fahrenheit = Scale("°F", 1.8, 32.0)
    ticks = even_ticks(low, low + wide, fahrenheit)
    assert 2 <= len(ticks) <= 9
    for tick in ticks:
        assert low - 1e-6 <= tick.at <= low + wide + 1e-6
        told = float(tick.lines[0].replace("\u2212", "-"))
        assert tick.at * 1.8 + 32.0 == pytest.approx(told, abs=1e-6 + 0.01 * wide)


def test_drawing_twice_gives_the_same_bytes() -> None:
    _, _, drawing = picture_of(DISTANCE)
    assert draw(drawing) == draw(drawing)


@given(st.lists(st.text(alphabet="ab c", min_size=1, max_size=12), max_size=12))
def test_wrapping_keeps_every_word_and_the_margin(words: list[str]) -> None:
    text = " ".join(words)
    lines = wrapped(text, 90.0, 22.0)
    assert "".join(lines).replace(" ", "") == text.replace(" ", "")
    assert all(width(line, 22.0) <= 90.0 for line in lines)


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


HOSTILE = (
    "<script>alert(1)</script>",
    "&lt;b&gt; & @ink@ {x} %s",
    "\x00\x07null",
    "\u202eright to left\u202c\u2066",
    "emoji \U0001f98e and 亀 and עברית",
    "a" * 300,
    "wide " * 60,
)


@pytest.mark.parametrize("name", HOSTILE)
def test_a_hostile_name_is_only_words(name: str) -> None:
    x = (0.1, 0.5)
    axis = Axis(name, 0.0, 1.0)
    drawing = Chart(name, name, axis, axis, (Line(name, x, x),), note=name)
    known = {"svg", "g", "path", "rect", "circle", "ellipse", "text", "title"}
    for theme in Theme:
        for element in root_of(drawing, theme).iter():
            assert element.tag.removeprefix(SVG) in known
            assert not {key for key in element.attrib if "href" in key or key.startswith("on")}
            assert "url(" not in str(element.attrib)
    assert draw(drawing).startswith(b"\x89PNG")


@given(st.text(max_size=40))
def test_clean_words_can_be_set_and_stay_clean(text: str) -> None:
    assert clean(clean(text)) == clean(text)
    assert width(clean(text), 22.0) >= 0.0


def test_a_page_chooses_its_own_inks_and_a_file_has_them() -> None:
    _, _, drawing = picture_of(DISTANCE)
    page, light, dark = (
        page_of(drawing).svg(theme) for theme in (Theme.PAGE, Theme.LIGHT, Theme.DARK)
    )
    assert "var(--p-uv)" in page
    assert "#" not in page.replace("#x", "")
    assert "var(" not in light
    assert draw(drawing, Theme.LIGHT) != draw(drawing, Theme.DARK)
    assert ink(Ink.PAPER) in light
    assert ink(Ink.PAPER) not in dark


@pytest.mark.slow
def test_no_word_is_smaller_than_11_px_at_360_px() -> None:
    for line in ILLUSTRATED:
        sizes = [float(t["font-size"]) for t in elements(picture_of(line)[2], "text")]
        assert min(sizes) * 360.0 / 720.0 >= 11.0


def test_an_arrow_is_as_long_as_the_distance_it_tells() -> None:
    _, _, drawing = picture_of(
        "section tube:12% reflector:polished screen:none distance:16in enclosure:48x24x24in "
        "animal:bearded dragon"
    )
    assert isinstance(drawing, Side)
    told = drawing.dimensions[0]
    box = next(
        floats(r, "width", "height")
        for r in elements(drawing, "rect")
        if r.get("fill") == ink(Ink.AIR)
    )
    scale = box[0] / drawing.width_m
    lines = page_of(drawing)._lines
    long = [hypot(b[0] - a[0], b[1] - a[1]) / scale for a, b in lines]
    assert min(abs(one - abs(told.y1 - told.y0)) for one in long) < 0.002


def test_by_a_dock_the_clock_stands_clear_of_the_probe() -> None:
    # The display of the probe ends about 0.07 m to the right of what it reads.
    _, _, drawing = picture_of("needs animal:slider turtle")
    assert isinstance(drawing, Side)
    where = {place.gauge.label: place.x for place in drawing.places if place.gauge}
    assert where["Hours of light"] - where["Warm end"] > 0.1


@pytest.mark.parametrize(
    ("line", "is_wet"),
    [
        ("check slider, water 70F, basking 90F", True),
        ("check royal python, basking surface 90F, cool side 78F", False),
    ],
)
def test_a_checked_animal_that_swims_is_drawn_over_its_water(line: str, is_wet: bool) -> None:
    _, _, drawing = picture_of(line)
    assert isinstance(drawing, Side)
    assert (drawing.water > 0.0) is is_wet
