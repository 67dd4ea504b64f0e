"""Counts as a picture: every figure is written, every bar is as long as its figure says."""

from itertools import pairwise

import pytest
from matplotlib.axes import Axes
from matplotlib.colors import to_rgba
from matplotlib.figure import Figure
from matplotlib.patches import Rectangle
from matplotlib.text import Text

from bot.drawing import Course, Tally, TallyGroup, TallyRow
from bot.render.picture import MOST_BYTES, draw, figure_of

LONG = "a page whose title is so long that it takes three lines or more of such a narrow column"


def tally(weeks: int = 4, rows: int = 6, label: str = "distance", unfinished: bool = True) -> Tally:
    names = tuple(f"{n + 1} Apr" for n in range(weeks))
    times = tuple(n * 7 % 11 for n in range(weeks))
    bars = tuple(TallyRow(f"crested gecko {n}", rows - n, str(rows - n)) for n in range(rows))
    outlined = tuple(TallyRow(f"{label} {n}", n, f"{n} / 40", 40) for n in range(3))
    return Tally(
        "What was asked here",
        "Week by week",
        names,
        unfinished,
        tuple(Course(kind, times) for kind in ("Questions", "Animals", "Pages")),
        (
            *(TallyGroup(f"{kind}: 9", bars, shown="6 of 9 shown") for kind in ("Q", "A")),
            TallyGroup("P: 9", outlined[:1] * 4),
            TallyGroup("Hardly opened", outlined, "Filled: opened / outline: pointed to"),
        ),
        "A week: Monday to Sunday.",
    )


def words(figure: Figure) -> list[Text]:
    return [text for text in figure.findobj(Text) if isinstance(text, Text) and text.get_text()]


def columns_and_bars(figure: Figure) -> list[Axes]:
    """Return the places of courses and groups from above; the frame's mark comes first."""
    return figure.axes[1:]


def bars_of(axes: Axes) -> list[Rectangle]:
    return [patch for patch in axes.patches if isinstance(patch, Rectangle)]


@pytest.mark.parametrize("weeks", [1, 2, 3, 8, 13, 26, 52, 104])
@pytest.mark.parametrize("label", ["distance", LONG])
def test_any_number_of_weeks_and_names_fit_a_phone_and_a_message(weeks: int, label: str) -> None:
    figure = figure_of(tally(weeks, label=label))
    wide, tall = figure.canvas.get_width_height()
    assert wide == 1200
    assert 300 < tall < 2600
    assert len(draw(tally(weeks, label=label))) < MOST_BYTES


@pytest.mark.parametrize("weeks", [1, 3, 8, 52, 104])
@pytest.mark.parametrize("label", ["distance", LONG])
def test_no_words_lie_on_other_words_or_beyond_the_edge(weeks: int, label: str) -> None:
    figure = figure_of(tally(weeks, label=label))
    wide, tall = figure.canvas.get_width_height()
    boxes = [text.get_window_extent() for text in words(figure)]
    for box in boxes:
        assert box.x0 >= 0
        assert box.x1 <= wide
        assert box.y0 >= 0
        assert box.y1 <= tall
    # Level with each other: those on one line must not touch.
    lines = sorted(boxes, key=lambda box: (round(box.y0), box.x0))
    for left, right in pairwise(lines):
        if abs(left.y0 - right.y0) < 2:
            assert left.x1 <= right.x0


def test_a_bar_is_as_long_as_its_figure_and_an_outline_as_its_second_one() -> None:
    axes = columns_and_bars(figure_of(tally()))[-1]
    # Each row: its outline, then what is filled; nothing at all where that is 0.
    outlines = [bar for bar in bars_of(axes) if to_rgba(bar.get_facecolor())[3] == 0.0]
    filled = [bar for bar in bars_of(axes) if to_rgba(bar.get_facecolor())[3] > 0.0]
    assert [bar.get_width() for bar in outlines] == pytest.approx([outlines[0].get_width()] * 3)
    per_time = outlines[0].get_width() / 40
    assert [bar.get_width() / per_time for bar in filled] == pytest.approx([1, 2])


def test_a_column_is_as_high_as_its_figure() -> None:
    axes = columns_and_bars(figure_of(tally(weeks=4)))[0]
    heights = [bar.get_height() for bar in bars_of(axes)]
    assert [height / heights[0] for height in heights] == pytest.approx([1, 3 / 7, 10 / 7])
    assert [text.get_text() for text in axes.texts][::-1] == ["0", "7", "3", "10"]


@pytest.mark.parametrize("unfinished", [True, False])
def test_the_week_that_is_not_over_is_hatched(unfinished: bool) -> None:
    columns = bars_of(columns_and_bars(figure_of(tally(unfinished=unfinished)))[0])
    assert [bool(column.get_hatch()) for column in columns] == [False, False, unfinished]


def test_one_week_has_no_columns() -> None:
    told = {text.get_text() for text in words(figure_of(tally(weeks=1)))}
    assert "Questions" not in told
    assert "Q: 9" in told


def test_nothing_counted_at_all_in_a_group_is_drawn_as_nothing() -> None:
    none = Tally(
        "t",
        "",
        ("a", "b"),
        False,
        (Course("Q", (0, 0)),),
        (TallyGroup("Q: 0", (TallyRow("x", 0, "0"),)),),
    )
    assert [bars_of(axes) for axes in columns_and_bars(figure_of(none))] == [[], []]


def test_a_kind_has_its_own_fill_whatever_stands_beside_it() -> None:
    pages = TallyGroup("P: 9", (TallyRow("screens", 3, "3"),), fill=2)
    alone = Tally("t", "", ("a", "b"), False, (Course("P", (1, 2), fill=2),), (pages,))
    animals = TallyGroup("A: 9", (TallyRow("gecko", 3, "3"),), fill=1)
    beside = Tally("t", "", ("a",), False, (), (animals, pages))
    colours = [
        {bar.get_facecolor() for bar in bars_of(axes)}
        for drawing in (alone, beside)
        for axes in columns_and_bars(figure_of(drawing))
    ]
    assert colours[0] == colours[1] == colours[3] != colours[2]
