"""Readings of an enclosure: written down, taken away, shown with their trend, compared."""

from collections import defaultdict
from dataclasses import replace
from datetime import date, timedelta

from pydantic import ValidationError

from bot.answering import in_words
from bot.answers.figures import calendar_day, difference, length, number, percent
from bot.desk import Desk
from bot.keeping.asker import today
from bot.keeping.places import enclosure_asked
from bot.keeping.stands import standing_rows
from bot.keeping.words import day_of, measured_name, question_of, reading_told, setup_rows
from bot.kept.keeper import KEPT_AS, Enclosure, Reading, kept_quantity
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Units
from bot.language.uv_lamps import TUBES
from bot.preferences import FIRST, Context
from bot.queries.mine import CompareQuery, NamedQuery, ReadingQuery, UnreadQuery
from bot.questions.uv.decline import tell_fading
from bot.questions.uv.fading import fading
from bot.reply import Reply, Row, Table
from calc.animals import animal_name
from calc.quantities import Quantity
from calc.uv.dated import DatedReading, at_one_place
from calc.uv.decline import MOST_READINGS
from calc.uv.lamp import CLASS_STRENGTH_PERCENT, Fixture, Lamp, of_length, side_by_side
from calc.uv.lengths import DARK_ENDS_M, length_of_tube

__all__ = ["compare", "next_reading_day", "read", "show", "unread"]

_LEAST_UVI = 0.05
_MOST_ROWS = 20


async def read(query: ReadingQuery, context: Context, desk: Desk) -> Reply:
    """Write the readings of one day down."""
    kept = await enclosure_asked(desk, query.name, "mine reading")
    day = day_of(query.day, await today(desk), "day")
    readings = _readings(query, kept, day)
    replaced = await desk.store.enclosures.read(desk.keeper, kept.name, readings)
    rows = [
        Row(label=measured_name(r.of).capitalize(), text=reading_told(r, context.units))
        for r in readings
    ]
    rows += [
        Row(label="Replaced", text=f"{measured_name(r.of)}: {reading_told(r, context.units)}")
        for r in replaced or ()
    ]
    return Reply(
        command="mine reading",
        status="ok",
        title=f"Readings of “{kept.name}” on {calendar_day(day)}",
        answer=f"{len(readings)} reading{'' if len(readings) == 1 else 's'} written down.",
        rows=tuple(rows),
        steps=(
            f"See the history: mine show name:{kept.name}",
            f"Take them away again: mine unread name:{kept.name} day:{day}",
        ),
    )


def _readings(query: ReadingQuery, kept: Enclosure, day: date) -> tuple[Reading, ...]:
    typed: list[tuple[Quantity, float, float | None]] = []
    if query.uvi is not None:
        at = query.distance.low if query.distance else kept.setup.distance_m
        typed.append((Quantity.UVI, query.uvi, at))
    for of in (Quantity.BASKING_SURFACE, Quantity.WARM_AIR, Quantity.COOL_AIR, Quantity.NIGHT_AIR):
        measure = getattr(query, KEPT_AS[of])
        if measure is not None:
            typed.append((of, measure.low, None))
    if not typed:
        raise NotUnderstoodError(
            "no reading",
            "one at least: uvi, basking, warm, cool or night",
            f"mine reading name:{kept.name} uvi:4.2",
        )
    readings = []
    for of, value, at in typed:
        try:
            readings.append(Reading(day=day, of=of, value=value, distance_m=at))
        except ValidationError as error:
            example = "4.2" if of is Quantity.UVI else "103F"
            raise NotUnderstoodError(
                "a value that cannot be", f"a believable {measured_name(of)}", example, KEPT_AS[of]
            ) from error
    return tuple(readings)


async def unread(query: UnreadQuery, context: Context, desk: Desk) -> Reply:
    """Take the readings of a day away."""
    kept = await enclosure_asked(desk, query.name, "mine unread")
    day = day_of(query.day, await today(desk), "day")
    of = kept_quantity(query.of) if query.of else None
    gone = await desk.store.enclosures.unread(desk.keeper, kept.name, day, of)
    return Reply(
        command="mine unread",
        status="ok",
        title=f"Readings of “{kept.name}” on {calendar_day(day)}",
        answer=f"{gone} taken away." if gone else "There were none on that day.",
        steps=(f"See the history: mine show name:{kept.name}",),
    )


async def show(query: NamedQuery, context: Context, desk: Desk) -> Reply:
    """Show an enclosure: its set-up, its history, the trend of its UV, the next measuring day."""
    kept = await enclosure_asked(desk, query.name, "mine show")
    trend = _trend(kept, context)
    ask = question_of(kept.setup)
    steps = [f"Ask about it: {ask}"] if ask else []
    steps += trend.steps if trend else ()
    due = next_reading_day(kept, context)
    if due is not None:
        when = max(due, context.day + timedelta(days=1))
        steps.append(
            f"Be reminded of the next reading: remind me about:meter name:{kept.name} when:{when}"
        )
    days = len({r.day for r in kept.readings})
    answer = (
        f"{len(kept.readings)} readings on {days} days. {trend.answer}"
        if trend
        else f"{len(kept.readings)} readings on {days} days; no trend of the UV yet."
    )
    return Reply(
        command="mine show",
        status="ok",
        title=f"“{kept.name}”",
        answer=answer,
        values=trend.values if trend else (),
        rows=(
            *setup_rows(kept.setup, context.units),
            *standing_rows(kept, context),
            *(trend.rows if trend else ()),
        ),
        table=_history(kept, context.units),
        steps=tuple(steps)
        or (f"Write a reading down: mine reading name:{kept.name} uvi:4.2 basking:103F",),
        guide=trend.guide if trend else (),
        sources=trend.sources if trend else (),
        picture=trend.picture if trend else None,
        alarms=trend.alarms if trend else (),
    )


def next_reading_day(kept: Enclosure, context: Context) -> date | None:
    """Return the day, today or later, on which the UV should be read again by the trend so far."""
    trend = _trend(kept, context)
    value = next((v for v in trend.values if v.name == "read_again_in"), None) if trend else None
    return None if value is None else context.day + timedelta(hours=value.best)


def _uvi_read(kept: Enclosure) -> list[Reading]:
    """Return the newest UV readings that say something of a lamp, the oldest first.

    Those of a small lamp are not reckoned from one distance to another by the law of a tube: the
    ones at the last distance count.
    """
    uvi = [r for r in kept.readings if r.of is Quantity.UVI and r.value >= _LEAST_UVI]
    newest = sorted(uvi, key=lambda r: r.day)[-MOST_READINGS:]
    if kept.setup.lamp in (None, *TUBES):
        return newest
    return [r for r in newest if r.distance_m == newest[-1].distance_m]


def _trend(kept: Enclosure, context: Context) -> Reply | None:
    """Return what the UV readings show where the last was taken, if the wanted range is known."""
    read = _uvi_read(kept)
    if not read:
        return None
    at = read[-1].distance_m
    seen = tuple(DatedReading(float(r.day.toordinal()), r.value, r.distance_m) for r in read)
    if at is not None:
        seen = at_one_place(seen, _lamp_of(kept), at)
    animal = animal_name(kept.setup.animal) if kept.setup.animal else ""
    try:
        found = fading(seen, animal, None, context)
    except NotUnderstoodError:
        # No range is wanted: no animal is told, or none is known for it.
        return None
    # As the rest of the answer is.
    trend = in_words(tell_fading(found), replace(context, language=FIRST))
    elsewhere = sum(new.moved > 0.0 for new in seen)
    if at is None or not elsewhere:
        return trend
    told = f"{length(at, context.units)}, where you read last; {elsewhere} read elsewhere"
    return trend.model_copy(update={"rows": (*trend.rows, Row(label="Reckoned to", text=told))})


def _lamp_of(kept: Enclosure) -> Lamp:
    """Return a tube as long as the set-up's; its strength does not count in a trend."""
    setup, lamp = kept.setup, Lamp(CLASS_STRENGTH_PERCENT, Fixture.POLISHED)
    lit_m = None if setup.tube_length_m is None else setup.tube_length_m - DARK_ENDS_M
    lamp = of_length(lamp, length_of_tube(lit_m, box_m=setup.length_m))
    return side_by_side(lamp, setup.tubes or 1, setup.gap_m or 0.0)


def _history(kept: Enclosure, units: Units) -> Table | None:
    by_day: dict[date, dict[Quantity, Reading]] = defaultdict(dict)
    for reading in kept.readings:
        by_day[reading.day][reading.of] = reading
    kinds = [of for of in KEPT_AS if any(of in day for day in by_day.values())]
    if not by_day:
        return None
    newest = sorted(by_day, reverse=True)[:_MOST_ROWS]
    return Table(
        columns=("Day", *(measured_name(of) for of in kinds)),
        rows=tuple(
            (
                str(day),
                *(
                    reading_told(by_day[day][of], units) if of in by_day[day] else "–"
                    for of in kinds
                ),
            )
            for day in newest
        ),
    )


async def compare(query: CompareQuery, context: Context, desk: Desk) -> Reply:
    """Compare two days of an enclosure, the first and the last where none are named."""
    kept = await enclosure_asked(desk, query.name, "mine compare")
    days = sorted({r.day for r in kept.readings})
    if len(days) < 2:
        raise NotUnderstoodError(
            f"{len(days)} day{'' if len(days) == 1 else 's'} with readings",
            "two days with readings",
            f"mine reading name:{kept.name} uvi:4.2",
        )
    now = await today(desk)
    first = day_of(query.first, now, "first") if query.first else days[0]
    second = day_of(query.second, now, "second") if query.second else days[-1]
    for day, option in ((first, "first"), (second, "second")):
        if day not in days:
            known = ", ".join(map(str, days[-10:]))
            raise NotUnderstoodError(
                str(day), f"a day with readings ({known})", str(days[0]), option
            )
    one, other = ({r.of: r for r in kept.readings if r.day == day} for day in (first, second))
    both = [of for of in KEPT_AS if of in one and of in other]
    return Reply(
        command="mine compare",
        status="ok",
        title=f"“{kept.name}”: {calendar_day(first)} and {calendar_day(second)}",
        answer=f"{len(both)} kinds of reading were taken on both days."
        if both
        else "No kind of reading was taken on both days.",
        table=Table(
            columns=("What", str(first), str(second), "Change"),
            rows=tuple(
                (
                    measured_name(of),
                    reading_told(one[of], context.units),
                    reading_told(other[of], context.units),
                    _change(one[of], other[of], context.units),
                )
                for of in both
            ),
        )
        if both
        else None,
        steps=(f"See the whole history: mine show name:{kept.name}",),
    )


def _change(one: Reading, other: Reading, units: Units) -> str:
    change = other.value - one.value
    if one.of is not Quantity.UVI:
        return f"{'+' if change >= 0 else '−'}{difference(abs(change), units)}"
    if one.value <= 0.0:
        return f"+{number(change, 0.01)}"
    return f"{'+' if change >= 0 else '−'}{percent(abs(change) / one.value)}"
