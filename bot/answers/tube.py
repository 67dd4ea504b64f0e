"""Which tube suits a place that is fixed: strengths at a distance, a length for an enclosure."""

from dataclasses import dataclass

from bot.answers.figures import length, uvi_estimate, uvi_range
from bot.answers.length_asked import length_asked
from bot.answers.linking import page_links, source_lines
from bot.answers.no_figures import answer_without_figures
from bot.answers.readings import LampRead, read_lamp
from bot.answers.tube_length import (
    check_fits,
    enclosure_rows,
    length_choice,
    length_known,
    length_rows,
    length_steps,
    length_told,
    length_values,
    no_tube_fits,
    without_tube_steps,
)
from bot.answers.tube_picture import tube_picture
from bot.answers.uv_asked import screen_asked
from bot.answers.uv_parts import (
    UV_CAUTIONS,
    Wish,
    fixture_name,
    screen_phrase,
    screen_row,
    wish_asked,
)
from bot.answers.verdicts import verdict_word
from bot.language.quantities import Units
from bot.language.uv_lamps import UvLamp
from bot.preferences import Context
from bot.queries.uv import TubeQuery
from bot.questions.shared import limits_for
from bot.questions.uv.readings import enough_read
from bot.questions.uv.tubes import all_together
from bot.reply import Picture, Reply, Row, Table, Value
from calc.judgement import Judged
from calc.limits import Limits
from calc.uncertainty import Estimate
from calc.uv.choice import SuitRow, TubeChoice, suits
from calc.uv.danger import judge_uvi
from calc.uv.lamp import Fixture, Lamp, of_length
from calc.uv.lamp_unknowns import uvi_estimate as estimate_at
from calc.uv.lengths import LengthKnown, TubeLength
from calc.uv.placement import COMFORTABLE_MINIMUM_M, spot
from calc.uv.screen import Screen

__all__ = ["answer_tube"]

_GUIDE = ("uv-and-heat-together", "screens", "measuring-the-distance")
_SOURCES = ("keitz1971", "uv_distance_rows", "uv_class_strengths")
_FITTED = (6.0, 12.0)


def answer_tube(query: TubeQuery, context: Context) -> Reply:
    """Answer with a table of strengths, a pick, and a length for the enclosure."""
    if none := answer_without_figures("tube", query, UvLamp.T5_HO, context):
        return none
    wish = wish_asked(query.animal, query.uvi, context)
    screen = screen_asked(query.screen)
    units, there_m = context.units, query.distance.low
    check_fits(query.length, query.enclosure, units)
    choice = length_choice(query.enclosure)
    long = _length(query, choice)
    lamp = all_together(of_length(Lamp(12.0, Fixture.POLISHED), long), query)
    limits = limits_for(query.animal, context)
    rows = suits(there_m, screen, wish.low, wish.high, long, lamp.count, lamp.gap_m, limits)
    read = _read(query, lamp, screen)
    own = _Own.of(read.lamp, there_m, screen, wish, limits) if read.fit else None
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
        values=(*_values(rows, choice, own), *length_values(lamp)),
        rows=(
            wish.row,
            *_place_rows(query, screen, lamp, units),
            *enclosure_rows(query.enclosure, query.distance.low, units),
            *length_rows(choice, units),
            *read.set_aside_rows(units),
        ),
        table=_table(rows, own, wish, too_close, units),
        steps=(
            *read.first_steps,
            *(without_tube_steps(units) if none_fits else ()),
            *length_steps(lamp, units),
            *_steps(picks, wish, query.distance.low, units),
        ),
        cautions=UV_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*wish.sources, *_SOURCES, *_more_sources(query))),
        picture=Picture.later(tube_picture, rows, picks, there_m, screen, lamp, wish, units),
    )


def _read(query: TubeQuery, lamp: Lamp, screen: Screen) -> LampRead:
    """Return the asker's own lamp, where the readings are enough for its kind."""
    kind = query.lamp or UvLamp.T5_HO
    readings = query.readings if enough_read(query.readings, kind) else None
    return read_lamp(lamp, readings, screen, kind, is_named=False)


@dataclass(frozen=True, slots=True)
class _Own:
    """What the asker's own lamp gives at the place, with all doubts, and how that is judged."""

    uvi: Estimate
    judged: Judged

    @classmethod
    def of(
        cls, lamp: Lamp, distance_m: float, screen: Screen, wish: Wish, limits: Limits
    ) -> "_Own":
        uvi = estimate_at(lamp, distance_m, screen)
        return cls(uvi, judge_uvi(uvi, wish.low, wish.high, limits, distance_m))


def _length(query: TubeQuery, choice: TubeChoice | None) -> TubeLength:
    """Return the length that was told; else the one to buy for the enclosure; else any."""
    if query.length is None and choice and choice.tube:
        return TubeLength(choice.tube.lit_length_m, LengthKnown.FROM_BOX)
    return length_asked(query.length, query.enclosure)


def _place_rows(query: TubeQuery, screen: Screen, lamp: Lamp, units: Units) -> tuple[Row, ...]:
    here = spot(lamp, query.distance.low, screen)
    told = f"{length(query.distance.low, units)} from tube to back, {screen_phrase(screen)}"
    told += f"; {lamp.count} of each side by side, whose UV adds" if lamp.count > 1 else ""
    return (
        Row(label="Place", text=told),
        Row(label="Tube", text=length_known(lamp, units)),
        screen_row(screen, here.screen_transmission),
    )


def _more_sources(query: TubeQuery) -> tuple[str, ...]:
    of_length = ("half_to_two_thirds", "t5_lengths") if query.enclosure else ()
    return (*of_length, *(("student_posterior", "uv_meter_judgement") if query.readings else ()))


def _table(
    rows: tuple[SuitRow, ...], own: _Own | None, wish: Wish, too_close: bool, units: Units
) -> Table:
    told = [
        (
            f"{row.strength_percent:.0f} %",
            fixture_name(row.fixture),
            uvi_estimate(row.uvi),
            "too near" if too_close else _told(row, units),
        )
        for row in rows
    ]
    if own:
        verdict = "too near" if too_close else verdict_word(own.judged)
        told.insert(0, ("your own lamp", "as you read it", uvi_estimate(own.uvi), verdict))
    return Table(columns=("Tube", "Fixture", "UVI there", "Verdict"), rows=tuple(told))


def _told(row: SuitRow, units: Units) -> str:
    word = verdict_word(row.judged)
    if not row.judged.is_fine or row.longest is None:
        return word
    return f"{word} up to {length(row.longest.face_to_face_m, units)} long"


def _picks(rows: tuple[SuitRow, ...], wish: Wish) -> tuple[SuitRow, ...]:
    """Return what suits: the fitted classes, then any length, then the nearest to the middle."""
    middle = (wish.low + wish.high) / 2.0
    within = (row for row in rows if row.judged.is_fine)
    return tuple(
        sorted(
            within,
            key=lambda r: (
                r.strength_percent not in _FITTED,
                r.longest is not None,
                abs(r.uvi.best - middle),
            ),
        )
    )


def _answer(
    picks: tuple[SuitRow, ...],
    wish: Wish,
    distance_m: float,
    own: _Own | None,
    units: Units,
) -> str:
    if distance_m < COMFORTABLE_MINIMUM_M:
        return (
            f"Take none at {length(distance_m, units)}: that is too near for any tube, because an "
            "animal that lifts itself gets far more UV and can touch the fixture. Make it at least "
            f"{length(COMFORTABLE_MINIMUM_M, units)}, then ask again."
        )
    if own and own.judged.is_fine:
        return (
            f"Keep your own lamp: by your readings it gives about UVI {uvi_estimate(own.uvi)} at "
            f"{length(distance_m, units)}, wanted {uvi_range(wish.low, wish.high)}."
        )
    if picks:
        best = picks[0]
        return (
            f"Take a T5 HO, {best.strength_percent:.0f} % in a {fixture_name(best.fixture)}"
            f"{_no_longer(best, units)}: about UVI {uvi_estimate(best.uvi)} at "
            f"{length(distance_m, units)}, wanted {uvi_range(wish.low, wish.high)}."
        )
    return (
        f"No usual tube gives UVI {uvi_range(wish.low, wish.high)} at "
        f"{length(distance_m, units)}: change the distance or the screen."
    )


def _no_longer(row: SuitRow, units: Units) -> str:
    if row.longest is None:
        return ""
    return f", no longer than {length(row.longest.face_to_face_m, units)}"


def _values(
    rows: tuple[SuitRow, ...], choice: TubeChoice | None, own: _Own | None
) -> tuple[Value, ...]:
    values = [Value.of("uvi_own_lamp", own.uvi, "1")] if own else []
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
