"""Which tube suits a place that is fixed: strengths at a distance, a length for an enclosure."""

import numpy as np

from bot.answers.curves import (
    curve_of,
    length_axis,
    shortened,
    shown_distances,
    too_near,
    uvi_axis,
)
from bot.answers.figures import length, uvi_estimate, uvi_range
from bot.answers.linking import page_links, source_lines
from bot.answers.no_figures import answer_without_figures
from bot.answers.readings import read_lamp
from bot.answers.tube_length import (
    check_fits,
    enclosure_rows,
    length_choice,
    length_rows,
    length_told,
    no_tube_fits,
    without_tube_steps,
)
from bot.answers.uv_parts import (
    UV_CAUTIONS,
    Wish,
    fixture_name,
    lit_length,
    screen_asked,
    screen_phrase,
    screen_row,
    wish_asked,
)
from bot.drawing import Chart, Mark, Range, Stroke
from bot.language.quantities import Units
from bot.language.uv_lamps import UvLamp
from bot.preferences import Context
from bot.queries.uv import TubeQuery
from bot.reply import Picture, Reply, Row, Table, Value
from calc.uncertainty import Estimate
from calc.uv.choice import SuitRow, TubeChoice, suits
from calc.uv.doubts import uvi_estimate as estimate_at
from calc.uv.lamp import Fixture, Lamp
from calc.uv.placement import COMFORTABLE_MINIMUM_M, Standing, spot, standing_of
from calc.uv.screen import Screen

__all__ = ["answer_tube"]

_GUIDE = ("uv-and-heat-together", "screens", "measuring-the-distance")
_SOURCES = ("keitz1971", "uv_distance_rows", "uv_class_strengths")
_VERDICTS = {
    Standing.BELOW: "too weak here",
    Standing.WITHIN: "suits",
    Standing.ABOVE: "too strong here",
}
_FITTED = (6.0, 12.0)
_STROKES = {Fixture.POLISHED: Stroke.SOLID, Fixture.PLAIN: Stroke.DASHED}
_CURVE_POINTS = 41


def answer_tube(query: TubeQuery, context: Context) -> Reply:
    """Answer with a table of strengths, a pick, and a length for the enclosure."""
    if none := answer_without_figures("tube", query, UvLamp.T5_HO, context):
        return none
    wish = wish_asked(query.animal, query.uvi, context)
    screen = screen_asked(query.screen)
    units = context.units
    check_fits(query.length, query.enclosure, units)
    choice = length_choice(query.enclosure)
    lit_m = _lit_length(query, choice)
    rows = suits(query.distance.low, screen, wish.low, wish.high, lit_m)
    read = read_lamp(Lamp(12.0, Fixture.POLISHED, lit_m), query.readings, screen, is_named=False)
    own = estimate_at(read.lamp, query.distance.low, screen) if query.readings else None
    too_close = query.distance.low < COMFORTABLE_MINIMUM_M
    none_fits = no_tube_fits(query.enclosure) and query.length is None
    picks = () if too_close else _picks(rows, wish)
    first = _answer(picks, wish, query.distance.low, own, units)
    return Reply(
        command="tube",
        status="problem" if too_close or none_fits else "ok",
        title=f"Which tube for {wish.whom}",
        answer=read.told(
            first if query.length else length_told(first, choice, query.enclosure, units),
            by_readings=first.startswith("Keep"),
        ),
        values=_values(rows, choice, own),
        rows=(
            wish.row,
            *_place_rows(query, screen, lit_m, units),
            *enclosure_rows(query.enclosure, query.distance.low, units),
            *length_rows(choice, units),
            *read.set_aside_rows(units),
        ),
        table=_table(rows, own, wish, too_close),
        steps=(
            *read.first_steps,
            *(without_tube_steps(units) if none_fits else ()),
            *_steps(picks, wish, query.distance.low, units),
        ),
        cautions=UV_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*wish.sources, *_SOURCES, *_more_sources(query))),
        picture=Picture.later(
            _picture, rows, picks, query.distance.low, screen, lit_m, wish, units
        ),
    )


def _lit_length(query: TubeQuery, choice: TubeChoice | None) -> float:
    if query.length is None and choice and choice.tube:
        return choice.tube.lit_length_m
    return lit_length(query.length)


def _place_rows(query: TubeQuery, screen: Screen, lit_m: float, units: Units) -> tuple[Row, ...]:
    here = spot(Lamp(12.0, Fixture.POLISHED, lit_m), query.distance.low, screen)
    told = (
        f"{length(query.distance.low, units)} from tube to back, {screen_phrase(screen)}, "
        f"lit part {length(lit_m, units)}"
    )
    return Row(label="Place", text=told), screen_row(screen, here.screen_transmission)


def _more_sources(query: TubeQuery) -> tuple[str, ...]:
    of_length = ("half_to_two_thirds", "t5_lengths") if query.enclosure else ()
    return (*of_length, *(("birge1932", "uv_meter_judgement") if query.readings else ()))


def _picture(
    rows: tuple[SuitRow, ...],
    picks: tuple[SuitRow, ...],
    distance_m: float,
    screen: Screen,
    lit_m: float,
    wish: Wish,
    units: Units,
) -> Picture:
    """Return every class's curve, and the doubt of the one that is picked."""
    near, far = shown_distances((distance_m,))
    over = np.linspace(near, far, _CURVE_POINTS)
    pick = picks[0] if picks else None
    lines = tuple(
        curve_of(
            Lamp(row.strength_percent, row.fixture, lit_m),
            screen,
            over,
            f"{row.strength_percent:.0f} % {row.fixture.name.lower()}",
            _STROKES[row.fixture] if row is not pick else Stroke.MAIN,
            doubt=row is pick,
        )
        for row in rows
    )
    told = ", ".join(
        f"{row.strength_percent:.0f} % in a {fixture_name(row.fixture)} {uvi_estimate(row.uvi)}, "
        f"{_VERDICTS[row.standing]}"
        for row in rows
    )
    drawing = Chart(
        title=f"Which tube for {wish.whom}",
        subtitle=f"{length(distance_m, units)} from tube to back, {screen_phrase(screen)}",
        x=length_axis("From the tube to the animal's back", near, far, units),
        y=uvi_axis(2.0 * wish.high),
        lines=lines,
        bands=(Range(wish.low, wish.high, f"wanted {uvi_range(wish.low, wish.high)}"),),
        spans=(too_near(near),),
        marks=(Mark(distance_m, length(distance_m, units)),),
        note="Dashed: plain fixture. Heavy line with its doubt in blue: the tube to take."
        if pick
        else "Dashed: plain fixture. None of these suits the place.",
    )
    alt = (
        f"Chart: {drawing.title}, {drawing.subtitle}.",
        f"UVI falls with distance for every tube; wanted is {uvi_range(wish.low, wish.high)}.",
        f"At that place: {told}.",
    )
    return Picture(alt=shortened(alt), drawing=drawing)


def _table(rows: tuple[SuitRow, ...], own: Estimate | None, wish: Wish, too_close: bool) -> Table:
    told = [
        (
            f"{row.strength_percent:.0f} %",
            fixture_name(row.fixture),
            uvi_estimate(row.uvi),
            "too near" if too_close else _VERDICTS[row.standing],
        )
        for row in rows
    ]
    if own:
        verdict = "too near" if too_close else _verdict(own, wish)
        told.insert(0, ("your own lamp", "as you read it", uvi_estimate(own), verdict))
    return Table(columns=("Tube", "Fixture", "UVI there", "Verdict"), rows=tuple(told))


def _verdict(own: Estimate, wish: Wish) -> str:
    return _VERDICTS[standing_of(own.best, wish.low, wish.high)]


def _picks(rows: tuple[SuitRow, ...], wish: Wish) -> tuple[SuitRow, ...]:
    """Return what suits: the fitted classes first, then the nearest to the middle."""
    middle = (wish.low + wish.high) / 2.0
    within = (row for row in rows if row.standing is Standing.WITHIN)
    return tuple(
        sorted(
            within,
            key=lambda r: (r.strength_percent not in _FITTED, abs(r.uvi.best - middle)),
        )
    )


def _answer(
    picks: tuple[SuitRow, ...],
    wish: Wish,
    distance_m: float,
    own: Estimate | None,
    units: Units,
) -> str:
    if distance_m < COMFORTABLE_MINIMUM_M:
        return (
            f"Take none at {length(distance_m, units)}: that is too near for any tube, because an "
            "animal that lifts itself gets far more UV and can touch the fixture. Make it at least "
            f"{length(COMFORTABLE_MINIMUM_M, units)}, then ask again."
        )
    if own and standing_of(own.best, wish.low, wish.high) is Standing.WITHIN:
        return (
            f"Keep your own lamp: by your readings it gives about UVI {uvi_estimate(own)} at "
            f"{length(distance_m, units)}, wanted {uvi_range(wish.low, wish.high)}."
        )
    if picks:
        best = picks[0]
        return (
            f"Take a T5 HO, {best.strength_percent:.0f} % in a {fixture_name(best.fixture)}: "
            f"about UVI {uvi_estimate(best.uvi)} at {length(distance_m, units)}, "
            f"wanted {uvi_range(wish.low, wish.high)}."
        )
    return (
        f"No usual tube gives UVI {uvi_range(wish.low, wish.high)} at "
        f"{length(distance_m, units)}: change the distance or the screen."
    )


def _values(
    rows: tuple[SuitRow, ...], choice: TubeChoice | None, own: Estimate | None
) -> tuple[Value, ...]:
    values = [Value.of("uvi_own_lamp", own, "1")] if own else []
    values += [
        Value.of(f"uvi_{row.strength_percent:.0f}_{row.fixture.name.lower()}", row.uvi, "1")
        for row in rows
    ]
    if choice and choice.tube:
        wanted = Estimate(
            min(choice.wanted_low_m, choice.tube.face_to_face_m),
            choice.tube.face_to_face_m,
            max(choice.wanted_high_m, choice.tube.face_to_face_m),
        )
        values.append(Value.of("tube_length", wanted, "m"))
    return tuple(values)


def _steps(
    picks: tuple[SuitRow, ...], wish: Wish, distance_m: float, units: Units
) -> tuple[str, ...]:
    steps = []
    if distance_m < COMFORTABLE_MINIMUM_M:
        steps.append(
            "Hang the tube higher or lower the platform, until it is at least "
            f"{length(COMFORTABLE_MINIMUM_M, units)} from the animal's back."
        )
    if not picks:
        steps.append(
            "Ask distance with a 12 % and a 6 % tube to see where each would have to hang."
        )
    steps += [
        "Measure from the underside of the lit tube to the animal's back where it basks.",
        (
            "Check with a UV index meter at back height: "
            f"{uvi_range(wish.low, wish.high)} is right. Measure again after every change."
        ),
    ]
    return tuple(steps)
