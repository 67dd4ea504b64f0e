"""Pinned: pictures as they were when a person last looked at them; no proof of anything.

Small and grey, compared with a tolerance, so that a new version of the drawing library does not
trip this but a label that has wandered off does. After a wanted change, look at the pictures, then
run this file as a script to renew the pins.
"""

import sys
from io import BytesIO
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray
from PIL import Image

from bot.drawing import (
    Axis,
    Bar,
    Block,
    Card,
    CardRow,
    Cell,
    Chart,
    Course,
    Dimension,
    Drawing,
    End,
    Gauge,
    Grid,
    Line,
    Mark,
    Place,
    Point,
    PointKind,
    Range,
    Scale,
    Sheet,
    Side,
    Stroke,
    Tally,
    TallyGroup,
    TallyRow,
    Ticks,
    Tone,
)
from bot.render.picture import draw

FOLDER = Path(__file__).parent / "pinned"
WIDTH = 240
# Grey levels of 255: a shift of the letters by a pixel stays below, a lost label does not.
MOST_APART = 4.0

_X = tuple(0.1 + 0.05 * n for n in range(15))
_Y = tuple(1.0 / x for x in _X)
_LENGTHS = (Scale("in", 39.37), Scale("cm", 100.0))
_AXIS = tuple(n / 8 for n in range(9))

MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")
PINNED: dict[str, Drawing] = {
    "chart": Chart(
        "A curve with its doubt",
        "two lines, a band, two spans, a mark and three points",
        Axis("Distance", 0.1, 0.8, _LENGTHS),
        Axis("UV index (UVI)", 0.0, 8.0),
        (
            Line("heavy", _X, _Y, tuple(0.7 * y for y in _Y), tuple(1.4 * y for y in _Y)),
            Line("dashed", _X, tuple(0.5 * y for y in _Y), stroke=Stroke.DASHED),
        ),
        (Range(2.0, 3.0, "wanted"),),
        (Range(0.1, 0.2, "too near", Tone.BAD), Range(0.33, 0.5, "keep this")),
        (Mark(0.6, "a mark"),),
        (
            Point(0.4, 2.5, 1.8, 3.5, "start", PointKind.START),
            Point(0.5, 2.1, 2.1, 2.1, "read"),
            Point(0.7, 5.0, 5.0, 5.0, "set aside", PointKind.SET_ASIDE),
        ),
        "A note below.",
    ),
    "dates": Chart(
        "A trend over dates",
        "",
        Axis("Day", 739_000.0, 739_400.0, ticks=Ticks.DATES, months=MONTHS),
        Axis("UV index (UVI)", 0.0, 6.0),
        (Line("", (739_000.0, 739_400.0), (5.0, 2.0), stepped=True),),
    ),
    "side": Side(
        "An enclosure",
        "to scale",
        1.2,
        0.6,
        "4 ft (122 cm)",
        "2 ft (61 cm)",
        "mesh",
        (Bar(0.1, 0.7, 0.62, "tube"),),
        Place(0.3, 0.63, "heat lamp"),
        (Block(0.1, 0.5, 0.0, 0.2, "platform"),),
        Place(0.3, 0.24, ""),
        (Dimension(0.45, 0.24, 0.45, 0.62, "15 in (38 cm)"),),
        Grid(
            tuple(1.2 * x for x in _AXIS),
            tuple(0.58 * y for y in _AXIS),
            tuple(tuple(6.0 * y * (1.0 - 0.9 * x) for x in _AXIS) for y in _AXIS),
            (0.5, 1.0, 2.0, 4.0),
            (1.0, 2.0),
        ),
        (Place(0.2, 0.2, "the surface"), Place(1.0, 0.1, "the air")),
        (End("Warm end", "warm", True), End("Cool end", "cool", False)),
        "A note.",
    ),
    "sheet": Sheet(
        "Thermometers",
        "against what is wanted",
        Axis("Temperature", 15.0, 50.0, (Scale("°F", 1.8, 32.0), Scale("°C"))),
        (
            Gauge(
                "Right",
                "on the stone",
                (35.0, 43.0),
                "wanted",
                (37.0, 38.0),
                "reads",
                "right",
                Tone.GOOD,
            ),
            Gauge("Off the sheet", "", (20.0, 25.0), "", (60.0, 60.0), "", "too warm", Tone.BAD),
            Gauge("Not read", "", None, "not known", None, "", "not given"),
        ),
    ),
    "card": Card(
        "A table",
        "to pin",
        "corner",
        ("one", "two"),
        (
            CardRow(
                "a row",
                (Cell("10 to 14 in", "25 to 36 cm", Tone.GOOD), Cell("too close", "", Tone.BAD)),
            ),
            CardRow("another", (Cell("plain"), Cell("with care", "", Tone.DOUBTFUL))),
        ),
        ("A note.",),
    ),
    "tally": Tally(
        "What was counted",
        "week by week",
        ("20 Apr", "27 Apr", "4 May"),
        True,
        (Course("Apples", (3, 0, 2)), Course("Pears", (1, 4, 1), fill=1)),
        (
            TallyGroup(
                "Apples: 5",
                (TallyRow("a name that is far too long for one line of a bar", 4, "4"),),
                shown="1 of 2 shown",
            ),
            TallyGroup(
                "Pears: 6",
                (TallyRow("green", 1, "1 / 9", 9), TallyRow("none", 0, "0 / 5", 5)),
                "Filled / outline",
                fill=1,
            ),
        ),
        "A note.",
    ),
}


def small(png: bytes | Path) -> Image.Image:
    image = Image.open(BytesIO(png) if isinstance(png, bytes) else png).convert("L")
    return image.resize((WIDTH, image.height * WIDTH // image.width), Image.Resampling.BOX)


def grey(image: Image.Image) -> NDArray[np.float64]:
    return np.asarray(image, dtype=np.float64)


def apart(one: Image.Image, other: Image.Image) -> float:
    if one.size != other.size:
        return 255.0
    return float(np.sqrt(np.mean((grey(one) - grey(other)) ** 2)))


@pytest.mark.parametrize("name", PINNED)
def test_unchanged_picture(name: str) -> None:
    assert apart(small(draw(PINNED[name])), Image.open(FOLDER / f"{name}.png")) < MOST_APART


def test_a_lost_label_would_be_noticed() -> None:
    chart = PINNED["chart"]
    assert isinstance(chart, Chart)
    bare = Chart(chart.title, chart.subtitle, chart.x, chart.y, chart.lines, note=chart.note)
    assert apart(small(draw(bare)), Image.open(FOLDER / "chart.png")) > 2 * MOST_APART


if __name__ == "__main__":
    for pinned, drawing in PINNED.items():
        small(draw(drawing)).save(FOLDER / f"{pinned}.png", optimize=True)
    sys.exit(0)
