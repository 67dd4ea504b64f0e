"""Counts as a picture: every figure is written, every bar is as long as its figure says."""

import pytest

from bot.drawing import Course, Tally, TallyGroup, TallyRow
from bot.render.picture import MOST_BYTES, draw, page_of
from bot.render.picture.inks import Ink
from tests.bot.svg_read import elements, floats, ink, words

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


FILLS = {ink(which) for which in (Ink.COOL, Ink.SUN, Ink.SOFT, Ink.HEAT)}


def bars(drawing: Tally) -> list[dict[str, str]]:
    """The filled bars, from above; a column has an edge and a bar has none."""
    return [r for r in elements(drawing, "rect") if r.get("fill") in FILLS and "stroke" not in r]


def columns(drawing: Tally) -> list[dict[str, str]]:
    return [r for r in elements(drawing, "rect") if r.get("stroke") in FILLS and "fill" in r]


@pytest.mark.parametrize("weeks", [1, 2, 3, 8, 13, 26, 52, 104])
@pytest.mark.parametrize("label", ["distance", LONG])
def test_any_number_of_weeks_and_names_fit_a_phone_and_a_message(weeks: int, label: str) -> None:
    assert 180 < page_of(tally(weeks, label=label)).y < 1900
    assert len(draw(tally(weeks, label=label))) < MOST_BYTES


def test_a_bar_is_as_long_as_its_figure_and_an_outline_as_its_second_one() -> None:
    drawing = tally()
    outlined = [floats(r, "width")[0] for r in elements(drawing, "rect") if "stroke-dasharray" in r]
    last = outlined[-3:]
    assert last == pytest.approx([last[0]] * 3)
    per_time = last[0] / 40
    filled = [floats(bar, "width")[0] / per_time for bar in bars(drawing)]
    assert filled[-2:] == pytest.approx([1, 2], rel=0.02)


def test_a_column_is_as_high_as_its_figure() -> None:
    heights = [floats(column, "height")[0] for column in columns(tally(weeks=4))[:3]]
    assert [height / heights[0] for height in heights] == pytest.approx(
        [1, 3 / 7, 10 / 7], rel=0.02
    )


@pytest.mark.parametrize("unfinished", [True, False])
def test_the_week_that_is_not_over_is_not_filled(unfinished: bool) -> None:
    first = columns(tally(unfinished=unfinished))[:3]
    assert [column["fill"] == ink(Ink.PAPER) for column in first] == [False, False, unfinished]


def test_one_week_has_no_columns() -> None:
    told = words(tally(weeks=1))
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
    assert not bars(none)
    assert not columns(none)


def test_a_kind_has_its_own_fill_whatever_stands_beside_it() -> None:
    pages = TallyGroup("P: 9", (TallyRow("screens", 3, "3"),), fill=2)
    alone = Tally("t", "", ("a", "b"), False, (Course("P", (1, 2), fill=2),), (pages,))
    animals = TallyGroup("A: 9", (TallyRow("gecko", 3, "3"),), fill=1)
    beside = Tally("t", "", ("a",), False, (), (animals, pages))
    [bar] = bars(alone)
    assert {column["fill"] for column in columns(alone)} == {bar["fill"]}
    gecko, screens = bars(beside)
    assert screens["fill"] == bar["fill"] != gecko["fill"]
