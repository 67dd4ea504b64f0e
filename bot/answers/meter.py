"""What a keeper's own readings say of the lamp, and where it should hang by them."""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.answers.curves import uvi_picture
from bot.answers.figures import (
    length,
    length_range_away,
    number,
    percent,
    uvi_estimate,
    uvi_range,
)
from bot.answers.length_asked import length_asked
from bot.answers.linking import page_links, source_lines
from bot.answers.no_figures import answer_without_figures
from bot.answers.past_limit import told_before
from bot.answers.placed import start_told
from bot.answers.readings import AGAIN, LampRead, fit_rows, fit_table
from bot.answers.readings_off import warning_told
from bot.answers.tube_length import length_known, length_steps, length_values
from bot.answers.uv_asked import engine_readings, fixture_of, screen_asked
from bot.answers.uv_danger import wish_under
from bot.answers.uv_parts import UV_CAUTIONS, Wish, lamp_name, screen_phrase, screen_row
from bot.answers.verdicts import move_step, verdict_word
from bot.drawing import Point, PointKind
from bot.language.errors import NotUnderstoodError
from bot.language.lamps import TubeStrength
from bot.language.quantities import Units
from bot.language.readings import PlacedReading
from bot.language.uv_lamps import UvLamp
from bot.preferences import Context
from bot.queries.options import kind_of
from bot.queries.uv_depth import MeterQuery
from bot.questions.shared import limits_for
from bot.questions.uv.danger import uv_alarms
from bot.questions.uv.readings import expected_shape
from bot.questions.uv.readings_off import off_of
from bot.questions.uv.tubes import all_together
from bot.reply import Picture, Reply, Row, Value
from calc.uncertainty import Estimate
from calc.uv.lamp import CLASS_STRENGTH_PERCENT, Fixture, Lamp, OwnPoint, of_length
from calc.uv.meter import MeterFit, Reading, screen_from_readings
from calc.uv.placement import PlaceCheck, Verdict, check_place, spot
from calc.uv.point import Shape
from calc.uv.screen import FlatScreen, NoScreen, Screen
from calc.uv.shapes import fit_lamp, lamp_by_readings
from calc.validity import OutsideModelError

__all__ = ["answer_meter"]

_GUIDE = ("how-to-take-a-reading", "reading-a-uv-meter", "measuring-the-distance")
_SOURCES = ("keitz1971", "student_posterior", "uv_meter_judgement", "nearest_distance")
_REFUSALS = {
    Verdict.TOO_WEAK: "this lamp is too weak for that range at any safe distance",
    Verdict.TOO_CLOSE: "this lamp would have to hang too close for comfort for that range",
    Verdict.OUT_OF_RANGE: "this lamp is too strong for that range at any distance I answer for",
    Verdict.BY_LENGTH: "where this lamp goes depends on how long it is, so measure that first",
}


@dataclass(frozen=True, slots=True)
class _Known:
    """The lamp by its readings, the screen by its readings or as given."""

    read: LampRead
    fit: MeterFit
    screen: Screen
    passes: Estimate | None

    @property
    def lamp(self) -> Lamp:
        return self.read.lamp


def answer_meter(query: MeterQuery, context: Context) -> Reply:
    """Answer with the lamp's own distances, the verdict at a place, and what looks odd."""
    kind = kind_of(query.tube, query.lamp)
    if none := answer_without_figures("meter", query, kind, context, query.readings):
        return none
    named = _named_lamp(query)
    known = _known(query, named)
    place_m = query.distance.low if query.distance else query.readings[0].distance.low
    there = spot(known.lamp, place_m, known.screen).uvi
    with told_before(warning_told(known.read.off)):
        wish = wish_under(query.animal, query.uvi, there, context)
    limits = None if known.read.cannot_be else limits_for(query.animal, context)
    check = check_place(known.lamp, known.screen, place_m, wish.low, wish.high, limits)
    units = context.units
    believed = None if known.read.cannot_be else check.here.uvi
    return Reply(
        command="meter",
        status="ok",
        title=f"Your lamp by your readings, for {wish.whom}",
        answer=known.read.told(_answer(query, check, wish, units)),
        values=_values(known, check),
        rows=(
            wish.row,
            *_length_rows(known.lamp, units),
            *fit_rows(known.fit, query.without or query.readings, units),
            *_screen_rows(known, check),
            *_class_rows(query, known.fit, named),
        ),
        table=fit_table(known.fit, query.without or query.readings, units),
        steps=(*_steps(known, check, wish, units), *length_steps(known.lamp, units)),
        cautions=UV_CAUTIONS[:2],
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*wish.sources, *_SOURCES)),
        picture=Picture.later(_picture, query, known, check, wish, units),
        alarms=uv_alarms(believed, query.animal, wish.high, context),
    )


def _length_rows(lamp: Lamp, units: Units) -> tuple[Row, ...]:
    if isinstance(lamp.own, OwnPoint):
        return ()
    return (Row(label="Tube", text=length_known(lamp, units)),)


def _named_lamp(query: MeterQuery) -> Lamp:
    """Return the lamp as named; only its length and the comparison depend on the name."""
    lamp = Lamp(
        query.tube.percent if isinstance(query.tube, TubeStrength) else CLASS_STRENGTH_PERCENT,
        fixture_of(query.reflector) if query.reflector else Fixture.POLISHED,
    )
    return all_together(of_length(lamp, length_asked(query.length)), query)


def _known(query: MeterQuery, named: Lamp) -> _Known:
    screen = screen_asked(query.screen)
    shape = expected_shape(kind_of(query.tube, query.lamp))
    if query.without is None:
        given = engine_readings(query.readings, screen)
        fit = fit_lamp(given, named, shape)
        return _Known(_read(query, query.readings, given, fit, named), fit, screen, None)
    if not isinstance(screen, NoScreen):
        raise NotUnderstoodError(
            query.screen.text,
            "either the screen or readings without it, because those tell what it passes",
            f"screen:none without:{query.without[0].text}",
            "screen",
        )
    bare = engine_readings(query.without, NoScreen(), "without")
    screened = engine_readings(query.readings, NoScreen())
    try:
        passes = screen_from_readings(bare, screened, named)
    except OutsideModelError as error:
        raise NotUnderstoodError(
            query.without[0].text,
            "readings without the screen that are higher than those with it",
            "readings:3.3 at 12 in without:6.0 at 12 in",
            "without",
        ) from error
    fit = fit_lamp(bare, named, shape)
    read = _read(query, query.without, bare, fit, named)
    return _Known(read, fit, FlatScreen(passes.best), passes)


def _read(
    query: MeterQuery,
    readings: tuple[PlacedReading, ...],
    given: Sequence[Reading],
    fit: MeterFit,
    named: Lamp,
) -> LampRead:
    like = named if _is_of_class(query) else None
    lamp, kind = lamp_by_readings(given, named, fit), kind_of(query.tube, query.lamp)
    off = off_of(fit, given, readings, (named, lamp, like), kind)
    return LampRead(lamp, fit, readings, off).with_class(like)


def _answer(query: MeterQuery, check: PlaceCheck, wish: Wish, units: Units) -> str:
    placement = check.placement
    there = _there(query, check, units)
    if placement.ends is None:
        return f"By your readings, {_REFUSALS[placement.verdict]}. {there}."
    near, _, far = placement.ends
    return (
        f"By your readings, keep {length_range_away(near.distance_m, far.distance_m, units)} from "
        f"the tube to the animal's back for UVI {uvi_range(wish.low, wish.high)}; start at "
        f"{start_told(placement, units)}. {there}."
    )


def _there(query: MeterQuery, check: PlaceCheck, units: Units) -> str:
    which = "where it basks" if query.distance else "where you read first"
    return (
        f"At {length(check.here.distance_m, units)}, {which}, UVI "
        f"{uvi_estimate(check.here.uvi)}: {_against(check)}"
    )


def _against(check: PlaceCheck) -> str:
    wanted = uvi_range(check.placement.low_uvi, check.placement.high_uvi)
    return f"{verdict_word(check.judged)}, wanted {wanted}"


def _values(known: _Known, check: PlaceCheck) -> tuple[Value, ...]:
    values = [
        Value.of("uvi", check.here.uvi, "1"),
        Value.of("place", Estimate.exact(check.here.distance_m), "m"),
        _lamp_value(known.fit),
        *length_values(known.lamp),
        Value.of("against_class", _about(known.fit.against_class, known.fit), "1"),
    ]
    if check.placement.ends:
        near, start, far = check.placement.ends
        spots = Estimate(near.distance_m, start.distance_m, far.distance_m)
        values.insert(0, Value.of("distance", spots, "m"))
    if known.passes is not None:
        values.append(Value.of("screen_transmission", known.passes, "1"))
    return tuple(values)


def _lamp_value(fit: MeterFit) -> Value:
    name = "lamp_strength_uvi_m2" if fit.shape is Shape.POINT else "lamp_constant_uvi_m"
    return Value.of(name, fit.estimate, "1")


def _about(best: float, fit: MeterFit) -> Estimate:
    factor = fit.estimate.high / fit.estimate.best
    return Estimate(best / factor, best, best * factor)


def _screen_rows(known: _Known, check: PlaceCheck) -> tuple[Row, ...]:
    if known.passes is None:
        return (screen_row(known.screen, check.here.screen_transmission),)
    low, best, high = (percent(v) for v in (known.passes.low, known.passes.best, known.passes.high))
    told = f"your own screen passes about {best} ({low} to {high}), by your readings"
    return (Row(label="Screen", text=told),)


def _is_of_class(query: MeterQuery) -> bool:
    """Say whether strength and fixture of a T5 HO tube were told, to set the lamp against."""
    kind = kind_of(query.tube, query.lamp)
    return query.tube is not None and query.reflector is not None and kind is UvLamp.T5_HO


def _class_rows(query: MeterQuery, fit: MeterFit, named: Lamp) -> tuple[Row, ...]:
    if not _is_of_class(query):
        return ()
    told = (
        f"about {percent(fit.against_class)} of what the class {lamp_name(named)} is taken to "
        "give; lamps of one class differ by a third, and an old or dusty one gives less. Where "
        "readings are weak it counts beside them"
    )
    return (Row(label="Against its class", text=told),)


def _steps(known: _Known, check: PlaceCheck, wish: Wish, units: Units) -> tuple[str, ...]:
    steps = []
    if check.placement.verdict in (Verdict.FITS, Verdict.BY_LENGTH):
        steps.append(move_step(check, units))
    else:
        steps.append("Ask tube for that distance, to see which class would suit.")
    steps = list(known.read.moves(tuple(steps)))
    first = known.read.first_steps
    if not first and (known.fit.set_aside is not None or known.fit.suspects):
        steps.append(AGAIN)
    steps.append(
        f"Read again after every change: {uvi_range(wish.low, wish.high)} is right. "
        "Write each reading down with its date, to see the tube fade."
    )
    return (*first, *steps)


def _picture(
    query: MeterQuery, known: _Known, check: PlaceCheck, wish: Wish, units: Units
) -> Picture:
    placement = check.placement
    near, start, far = placement.near, placement.start, placement.far
    fits = placement.verdict is Verdict.FITS
    # What was read without the screen lies off the curve of what comes through it.
    shown = query.readings
    points = tuple(
        Point(
            reading.distance.low,
            reading.value,
            reading.value,
            reading.value,
            number(reading.value, 0.01),
            PointKind.SET_ASIDE
            if not query.without and i == known.fit.set_aside
            else PointKind.READING,
        )
        for i, reading in enumerate(shown)
    )
    told = f"start: {start_told(placement, units)}" if start else ""
    return uvi_picture(
        title=f"Your lamp by your readings, for {wish.whom}",
        subtitle=f"{lamp_name(known.lamp)}, {screen_phrase(known.screen)}",
        lamp=known.lamp,
        screen=known.screen,
        wanted=(wish.low, wish.high),
        units=units,
        advised_m=(near.distance_m, far.distance_m) if fits and near and far else None,
        spots=((told, start, PointKind.START),) if fits and start else (),
        readings=points,
    )
