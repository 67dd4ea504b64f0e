"""One table of distances for a group to pin: tubes and fixtures down, screens across."""

from dataclasses import dataclass

from bot.answers.animals import GROUPS_OWN
from bot.answers.figures import length, percent, uvi, uvi_range
from bot.answers.length_asked import length_asked
from bot.answers.linking import page_links, source_lines
from bot.answers.own import GROUP, lamp_told
from bot.answers.placed import NOT_PLACED, span_told
from bot.answers.tube_length import length_known, length_values
from bot.answers.uv_asked import own_lamp, screen_asked
from bot.answers.uv_parts import UV_CAUTIONS, Wish, fixture_name, wish_asked
from bot.drawing import Card, CardRow, Cell, Tone
from bot.language.quantities import Units
from bot.preferences import Context
from bot.queries.card import CardQuery
from bot.questions.uv.curves import shortened
from bot.reply import Picture, Reply, Row, Table, Value
from calc.uv.lamp import Fixture, Lamp, of_length
from calc.uv.lengths import DARK_ENDS_M
from calc.uv.placement import COMFORTABLE_MINIMUM_M, Placement, Spot, Verdict, place
from calc.uv.screen import FlatScreen, NoScreen, Screen, open_area

__all__ = ["answer_card"]

_GUIDE = ("measuring-the-distance", "screens", "reflectors", "reading-a-uv-meter")
_SOURCES = ("keitz1971", "uv_distance_rows", "nearest_distance")
_MOST_OWN = 6
_START = {
    False: "Start in the middle of the range; in doubt, a little farther.",
    True: "Start at the far end: the near one is for a short tube. Tell me the length and I know.",
}


@dataclass(frozen=True, slots=True)
class _Entry:
    """A lamp under one screen: where it goes, if it can."""

    lamp: Lamp
    screen: Screen
    placement: Placement
    # What the group calls a lamp of its own; empty for a class.
    name: str = ""


def answer_card(query: CardQuery, context: Context) -> Reply:
    """Answer with the distance of every lamp under every screen, or why there is none."""
    wish = wish_asked(query.animal, query.uvi, context)
    screens = tuple(dict.fromkeys(screen_asked(screen) for screen in query.screens))
    strengths = sorted({tube.percent for tube in query.tubes}, reverse=True)
    long = length_asked(query.length)
    lamps = [
        (of_length(Lamp(percent, fixture), long), "")
        for percent in strengths
        for fixture in Fixture
    ]
    own = context.own.lamps[:_MOST_OWN]
    lamps += [(own_lamp(kept), kept.name) for kept in own]
    entries = [
        [_Entry(lamp, screen, place(lamp, screen, wish.low, wish.high), name) for screen in screens]
        for lamp, name in lamps
    ]
    fitting = [entry.placement.ends for row in entries for entry in row if entry.placement.ends]
    units = context.units
    first = lamps[0][0]
    return Reply(
        command="card",
        status="ok",
        title=f"Tube distances for {wish.whom}",
        answer=_answer(len(fitting), len(lamps) * len(screens), wish),
        values=(
            *(value for row in entries for entry in row for value in _values(entry)),
            *length_values(first),
        ),
        rows=(
            wish.row,
            *_doubt(fitting),
            Row(label="Tube", text=f"T5 HO, {length_known(first, units)}"),
            *(Row(label=GROUP, text=f"{x.name}: {lamp_told(x, context)}") for x in own),
        ),
        table=_table(entries, screens, units),
        steps=(
            "Measure from the underside of the lit tube straight down to the animal's back.",
            _START[bool(first.may_be)],
            f"With a UV index meter, go by {uvi_range(wish.low, wish.high)} at back height.",
            "Measure again whenever tube, fixture, screen or platform change.",
        ),
        cautions=UV_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*wish.sources, *_SOURCES, *((GROUPS_OWN,) if own else ()))),
        picture=Picture.later(_picture, entries, screens, wish, fitting, units),
    )


def _answer(fits: int, asked: int, wish: Wish) -> str:
    wanted = f"UVI {uvi_range(wish.low, wish.high)}"
    if not fits:
        return f"None of these tubes gives {wanted} from a sensible distance: ask distance for one."
    return (
        f"{fits} of these {asked} set-ups can give {wanted}; the table says from where to where, "
        "tube to back."
    )


def _values(entry: _Entry) -> tuple[Value, ...]:
    if entry.placement.ends is None:
        return ()
    near, start, far = entry.placement.ends
    return (
        Value(
            name=f"distance_{_lamp_key(entry)}_{_screen_key(entry.screen)}",
            low=near.distance_m,
            best=start.distance_m,
            high=far.distance_m,
            unit="m",
        ),
    )


def _screen_key(screen: Screen) -> str:
    match screen:
        case NoScreen():
            return "bare"
        case FlatScreen(passed):
            return f"blocks_{round(100 * (1.0 - passed))}"
        case _:
            return f"mesh_{round(100 * open_area(screen))}_open"


def _screen_head(screen: Screen) -> str:
    match screen:
        case NoScreen():
            return "nothing between"
        case FlatScreen(passed):
            return f"screen blocks {percent(1.0 - passed)}"
        case _:
            return f"mesh, {percent(open_area(screen))} open"


def _lamp_key(entry: _Entry) -> str:
    if entry.name:
        return "own_" + "_".join(entry.name.lower().split())
    return f"{entry.lamp.strength_percent:g}_{entry.lamp.fixture.name.lower()}"


def _lamp_head(entry: _Entry, units: Units) -> str:
    lamp = entry.lamp
    name = entry.name or f"{lamp.strength_percent:g} %, {fixture_name(lamp.fixture)}"
    return f"{name}, {_long(lamp, units)}"


def _short_head(entry: _Entry) -> str:
    lamp = entry.lamp
    return entry.name or f"{lamp.strength_percent:g} %, {lamp.fixture.name.lower()}"


def _long(lamp: Lamp, units: Units) -> str:
    """Return which length a row of the table is for."""
    return "any length" if lamp.may_be else length(lamp.lit_length_m + DARK_ENDS_M, units)


def _doubt(fitting: list[tuple[Spot, Spot, Spot]]) -> tuple[Row, ...]:
    if not fitting:
        return ()
    return (Row(label="How sure", text=f"{_sure(fitting)}. A UV index meter tells."),)


def _sure(fitting: list[tuple[Spot, Spot, Spot]]) -> str:
    starts = [start.uvi for _, start, _ in fitting]
    low, high = min(e.low for e in starts), max(e.high for e in starts)
    return f"in the middle of a range the UVI may be {uvi(low)} to {uvi(high)}, for lamps differ"


def _table(entries: list[list[_Entry]], screens: tuple[Screen, ...], units: Units) -> Table:
    def told(entry: _Entry) -> str:
        return span_told(entry.placement, units)

    return Table(
        columns=("Tube and fixture", *map(_screen_head, screens)),
        rows=tuple((_lamp_head(row[0], units), *map(told, row)) for row in entries),
    )


def _picture(
    entries: list[list[_Entry]],
    screens: tuple[Screen, ...],
    wish: Wish,
    fitting: list[tuple[Spot, Spot, Spot]],
    units: Units,
) -> Picture:
    def cell(entry: _Entry) -> Cell:
        verdict = entry.placement.verdict
        if entry.placement.ends is None:
            tone = Tone.DOUBTFUL if verdict is Verdict.BY_LENGTH else Tone.BAD
            return Cell(*NOT_PLACED[verdict], tone)
        first, _, second = span_told(entry.placement, units).partition(" (")
        return Cell(first, second.rstrip(")"), Tone.GOOD)

    first = entries[0][0].lamp
    drawing = Card(
        title=f"Tube distances for {wish.whom}",
        subtitle=f"For UVI {uvi_range(wish.low, wish.high)}, from the lit tube to the back",
        corner=f"T5 HO tube, {_long(first, units)}",
        columns=tuple(map(_screen_head, screens)),
        rows=tuple(CardRow(_short_head(r[0]), tuple(map(cell, r))) for r in entries),
        notes=(
            _START[bool(first.may_be)],
            f"Never nearer than {length(COMFORTABLE_MINIMUM_M, units)}. Measure after any change.",
            *((f"How sure: {_sure(fitting)}.",) if fitting else ()),
        ),
    )
    table = _table(entries, screens, units)
    told = (
        f"{row[0]}: "
        + "; ".join(f"{c}, {t}" for c, t in zip(table.columns[1:], row[1:], strict=True))
        + "."
        for row in table.rows
    )
    return Picture(
        alt=shortened([f"Table: {drawing.title}. {drawing.subtitle}.", *told]), drawing=drawing
    )
