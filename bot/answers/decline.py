"""How a tube fades by dated readings, when it leaves the wanted range, when to read again."""

from collections.abc import Sequence
from datetime import UTC, date, datetime, timedelta

from bot.answers.decline_age import by_age
from bot.answers.figures import (
    calendar_day,
    number,
    percent,
    uvi,
    uvi_estimate,
    uvi_range,
    uvi_wanted,
)
from bot.answers.linking import page_links, source_lines
from bot.answers.uv_danger import uv_alarms
from bot.answers.uv_parts import UV_CAUTIONS, Wish, wish_asked
from bot.drawing import Axis, Chart, Line, Mark, Point, PointKind, Range, Ticks
from bot.language.errors import NotUnderstoodError
from bot.language.readings import DatedReading as TypedReading
from bot.preferences import Context
from bot.queries.uv_depth import DeclineQuery
from bot.reply import Picture, Reply, Row, Table, Value
from calc.uncertainty import Estimate
from calc.uv.decline import (
    DatedReading,
    Decline,
    Trend,
    decline_of,
    trend_at,
)

__all__ = ["answer_decline"]

_GUIDE = ("when-a-lamp-is-worn-out", "how-to-take-a-reading")
_READ = ("birge1932", "uv_meter_judgement", "uv_read_again", "adamse_britz1992", "burn_in")
_DAY_H = 24.0
_CURVE_DAYS = 41
_NOTE = "Line: straight on a logarithm through your readings, nothing else assumed."
_HEADROOM = 1.3


def answer_decline(query: DeclineQuery, context: Context) -> Reply:
    """Answer from dated readings, or without them by what is common practice."""
    if query.readings:
        wish = wish_asked(query.animal, query.uvi, context)
        reply, now = _by_readings(query.readings, wish, context)
        alarms = uv_alarms(now, query.animal, wish.high, context)
        return reply.model_copy(update={"alarms": alarms})
    return by_age(query.lamp, query.age.low if query.age else None, context)


def _refuse_tomorrow(readings: Sequence[TypedReading]) -> None:
    """Refuse a day that is not here yet; somewhere it may be a day later than in Greenwich."""
    last = readings[-1]
    today = datetime.now(UTC).date()
    if last.day > today + timedelta(days=1):
        raise NotUnderstoodError(
            last.text,
            f"readings of days that have been, and today is {calendar_day(today)}",
            f"readings:{today} {number(last.value, 0.01)}",
            "readings",
        )


def _by_readings(
    readings: Sequence[TypedReading], wish: Wish, context: Context
) -> tuple[Reply, Estimate]:
    """Return the reply, and the UV index of the last day that was read."""
    _refuse_tomorrow(readings)
    if wish.low <= 0.0:
        raise NotUnderstoodError(
            uvi_range(wish.low, wish.high), "a range that does not start at 0", "uvi:1-2", "uvi"
        )
    seen = [DatedReading(float(r.day.toordinal()), r.value) for r in readings]
    found = decline_of(seen, wish.low)
    reply = Reply(
        command="decline",
        status="ok",
        title=f"How the tube fades, for {wish.whom}",
        answer=_answer(found, wish),
        values=_values(found),
        rows=(
            Row(
                label="Now",
                text=f"UVI {uvi_estimate(found.now)} on {_day(found.last_day)}, the day last read",
            ),
            wish.row,
            Row(label="Change", text=_change(found)),
            *_date_rows(found, wish),
            Row(
                label="Read again",
                text=f"on {_day(found.read_again_day)}, or now if that is past, at the same place, "
                "after 30 minutes alight",
            ),
        ),
        table=Table(
            columns=("Day", "UVI read"),
            rows=tuple((calendar_day(r.day), number(r.value, 0.01)) for r in readings),
        ),
        steps=_steps(found, wish),
        cautions=UV_CAUTIONS[:2],
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*wish.sources, *_READ)),
        picture=Picture.later(_picture, seen, found, wish),
    )
    return reply, found.now


def _answer(found: Decline, wish: Wish) -> str:
    if not _is_above(found, wish):
        return _trend_told(found, wish)
    return (
        f"It is above the wanted {uvi_range(wish.low, wish.high)} where you read: UVI "
        f"{uvi_estimate(found.now)}. Hang it farther away first. {_trend_told(found, wish)}"
    )


def _is_above(found: Decline, wish: Wish) -> bool:
    return found.now.best > wish.high


def _trend_told(found: Decline, wish: Wish) -> str:
    month = found.month_factor
    if found.below_already:
        return (
            f"It is already below: UVI {uvi_estimate(found.now)} where "
            f"{uvi_range(wish.low, wish.high)} is wanted. Hang it nearer if that is safe, or "
            "replace it."
        )
    if found.trend is Trend.FALLING and month:
        falls = (
            f"It leaves the wanted {uvi_range(wish.low, wish.high)} about "
            f"{_day(found.falls_below_day)}{_between(found)}."
            if found.falls_below_day
            else f"It stays above UVI {uvi_wanted(wish.low)} until {_day(found.horizon_day)} "
            "at least; farther ahead these readings say nothing."
        )
        return f"The tube is fading by about {percent(1.0 - month.best)} a month. {falls}"
    if found.trend is Trend.STEADY:
        return (
            "No fading can be told from these readings: the change is no more than readings "
            f"repeat to. Read again on {_day(found.read_again_day)}."
        )
    if found.trend is Trend.RISING:
        return (
            "The readings rise, which a tube past its first 100 hours does not do: the place, the "
            "meter or the tube was not the same each time."
        )
    return (
        f"These readings are too few to tell when the tube is worn out: {_change(found)}. Read "
        f"again on {_day(found.read_again_day)}: three or more on different days make a trend."
    )


def _between(found: Decline) -> str:
    first = _day(found.earliest_day) if found.earliest_day else "now"
    last = f"and {_day(found.latest_day)}" if found.latest_day else "and a day I cannot tell"
    return f" (between {first} {last})"


def _change(found: Decline) -> str:
    turned = found.changed - 1.0
    if found.last_day == found.first_day:
        return "only one day was read, so nothing can be said of a change"
    way = "more" if turned > 0 else "less"
    real = "more than readings repeat to" if found.change_is_real else "no more than they repeat to"
    return (
        f"the last reading is {percent(abs(turned))} {way} than the first, "
        f"{round(found.last_day - found.first_day)} days before: {real}"
    )


def _date_rows(found: Decline, wish: Wish) -> tuple[Row, ...]:
    month = found.month_factor
    if month is None:
        return ()
    rows = [
        Row(
            label="In a month",
            text=f"UVI times {number(month.best, 0.01)} "
            f"({number(month.low, 0.01)} to {number(month.high, 0.01)})",
        )
    ]
    if found.falls_below_day and not found.below_already:
        rows.append(
            Row(
                label=f"Below UVI {uvi_wanted(wish.low)}",
                text=f"about {_day(found.falls_below_day)}{_between(found)}",
            )
        )
    return tuple(rows)


def _values(found: Decline) -> tuple[Value, ...]:
    values = [
        Value.of("uvi", found.now, "1"),
        Value.of("changed", Estimate.exact(found.changed), "1"),
        Value.of("read_again_in", _hours_from(found, (found.read_again_day,) * 3), "h"),
    ]
    if found.month_factor:
        values.append(Value.of("month_factor", found.month_factor, "1"))
    if found.falls_below_day and found.earliest_day and found.latest_day:
        days = (found.earliest_day, found.falls_below_day, found.latest_day)
        if days[0] <= days[1] <= days[2]:
            values.append(Value.of("falls_below_in", _hours_from(found, days), "h"))
    return tuple(values)


def _hours_from(found: Decline, days: tuple[float, float, float]) -> Estimate:
    return Estimate(*(_DAY_H * (day - found.last_day) for day in days))


def _steps(found: Decline, wish: Wish) -> tuple[str, ...]:
    steps = []
    if found.below_already:
        steps.append(
            "Read once more to be sure. Then ask distance with readings: to see whether nearer is "
            "still safe, or fit a new tube."
        )
    if _is_above(found, wish):
        steps.append("Ask distance with readings: to see how far away it should hang.")
    if found.trend is Trend.RISING:
        steps.append("Measure the place again, and note it, so that every reading is taken there.")
    steps.append(
        "Take every reading at one marked place, under the middle of the tube, sensor facing it, "
        "30 minutes after switching on, other lamps off."
    )
    steps.append(
        f"A new tube: wait for its first 100 hours, then read, and start a new list. "
        f"{uvi_range(wish.low, wish.high)} is right."
    )
    return tuple(steps)


def _picture(seen: list[DatedReading], found: Decline, wish: Wish) -> Picture:
    ends = [d for d in (found.falls_below_day, found.latest_day, found.read_again_day) if d]
    first, last = found.first_day - 5.0, max(found.last_day, *ends) + 10.0
    days = [first + (last - first) * i / (_CURVE_DAYS - 1) for i in range(_CURVE_DAYS)]
    trend = trend_at(seen, days)
    lines: tuple[Line, ...] = ()
    if trend:
        low, best, high = (tuple(getattr(e, n) for e in trend) for n in ("low", "best", "high"))
        lines = (Line("", tuple(days), best, low, high),)
    mark = Mark(found.read_again_day, f"read again: {_day(found.read_again_day)}")
    if found.falls_below_day and found.falls_below_day > found.last_day:
        told = f"below UVI {uvi_wanted(wish.low)}: {_day(found.falls_below_day)}"
        mark = Mark(found.falls_below_day, told)
    top = _HEADROOM * max(wish.high, *(r.uvi for r in seen))
    drawing = Chart(
        title=f"How the tube fades, for {wish.whom}",
        subtitle="UV index at one place",
        x=Axis("Day", first, last, ticks=Ticks.DATES),
        y=Axis("UV index (UVI)", 0.0, top),
        lines=lines,
        bands=(Range(wish.low, wish.high, f"wanted {uvi_range(wish.low, wish.high)}"),),
        marks=(mark,),
        points=tuple(
            Point(r.day, r.uvi, r.uvi, r.uvi, number(r.uvi, 0.01), PointKind.READING) for r in seen
        ),
        note=_NOTE if lines else "No line: these readings do not tell a trend yet.",
    )
    told = ", ".join(f"UVI {number(r.uvi, 0.01)} on {_day(r.day)}" for r in seen[:20])
    now = uvi(found.now.best)
    alt = f"Chart of UV index against the day: {told}. Now about {now}. {_answer(found, wish)}"
    return Picture(alt=alt[:1024], drawing=drawing)


def _day(day: float | None) -> str:
    return calendar_day(date.fromordinal(round(day or 0.0)))
