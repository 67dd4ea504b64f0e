"""How a tube fades by dated readings, when it leaves the wanted range, when to read again."""

from collections.abc import Sequence
from datetime import timedelta
from math import inf

from bot.answers.decline_age import by_age
from bot.answers.decline_odd import day_told, odd_first, odd_told
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
from calc.judgement import Judged, Move
from calc.uncertainty import Estimate
from calc.uv.danger import judge_uvi
from calc.uv.dated import DatedReading
from calc.uv.decline import READ_AGAIN_DAYS, Decline, Trend, decline_of, trend_at

__all__ = ["answer_dated", "answer_decline"]

_GUIDE = ("when-a-lamp-is-worn-out", "how-to-take-a-reading")
_READ = ("student_posterior", "uv_meter_judgement", "uv_read_again", "adamse_britz1992", "burn_in")
_DAY_H = 24.0
_CURVE_DAYS = 41
_NOTE = "Line: straight on a logarithm through your readings, nothing else assumed."
_HEADROOM = 1.3


def answer_decline(query: DeclineQuery, context: Context) -> Reply:
    """Answer from dated readings, or without them by what is common practice."""
    if query.readings:
        _refuse_tomorrow(query.readings, context)
        seen = [DatedReading(float(r.day.toordinal()), r.value) for r in query.readings]
        return answer_dated(seen, query.animal, query.uvi, context)
    return by_age(query.lamp, query.age.low if query.age else None, context)


def _refuse_tomorrow(readings: Sequence[TypedReading], context: Context) -> None:
    """Refuse a day that is not here yet; somewhere it may be a day later than in Greenwich."""
    last = readings[-1]
    today = context.day
    if last.day > today + timedelta(days=1):
        raise NotUnderstoodError(
            last.text,
            f"readings of days that have been, and today is {calendar_day(today)}",
            f"readings:{today} {number(last.value, 0.01)}",
            "readings",
        )


def answer_dated(
    seen: Sequence[DatedReading],
    animal: str,
    wanted: tuple[float, float] | None,
    context: Context,
) -> Reply:
    """Answer from readings at one place, the oldest first."""
    wish = wish_asked(animal, wanted, context)
    if wish.low <= 0.0:
        raise NotUnderstoodError(
            uvi_range(wish.low, wish.high), "a range that does not start at 0", "uvi:1-2", "uvi"
        )
    found = decline_of(seen, wish.low, float(context.day.toordinal()))
    return Reply(
        command="decline",
        status="ok",
        title=f"How the tube fades, for {wish.whom}",
        answer=odd_first(found, seen, _answer(found, wish)),
        values=_values(found),
        rows=(
            *(Row(label="Odd", text=odd_told(finding, seen)) for finding in found.found[2:]),
            *_now_rows(found),
            wish.row,
            Row(label="Change", text=_change(found)),
            *_date_rows(found, wish),
            Row(
                label="Read again",
                text=f"{_again(found)}, at the same place, after 30 minutes alight",
            ),
        ),
        table=Table(
            columns=("Day", "UVI read"),
            rows=tuple((day_told(r.day), number(r.uvi, 0.01)) for r in seen),
        ),
        steps=_steps(found, wish),
        cautions=UV_CAUTIONS[:2],
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*wish.sources, *_READ)),
        picture=Picture.later(_picture, seen, found, wish),
        alarms=uv_alarms(found.now, animal, wish.high, context),
    )


def _answer(found: Decline, wish: Wish) -> str:
    if not _is_above(found, wish):
        return _trend_told(found, wish)
    return (
        f"It is above the wanted {uvi_range(wish.low, wish.high)} where you read: UVI "
        f"{uvi_estimate(found.now)}. Hang it farther away first. {_trend_told(found, wish)}"
    )


def _judged(found: Decline, wish: Wish) -> Judged:
    """Return how the place stood on the last day read."""
    return judge_uvi(found.now, wish.low, wish.high)


def _is_above(found: Decline, wish: Wish) -> bool:
    return _judged(found, wish).is_likely_above


def _trend_told(found: Decline, wish: Wish) -> str:
    if _judged(found, wish).move is Move.UP:
        return (
            f"It is already below: UVI {uvi_estimate(found.now)} where "
            f"{uvi_range(wish.low, wish.high)} is wanted. Hang it nearer if that is safe, or "
            "replace it."
        )
    if found.trend is Trend.FALLING and found.month_factor:
        month = percent(1.0 - found.month_factor.best)
        return f"The tube is fading by about {month} a month. {_leaving(found, wish)}"
    if found.trend is Trend.STEADY:
        return (
            "No fading can be told from these readings: the change is no more than readings "
            f"repeat to. {_old(found)}Read again {_again(found)}."
        )
    return (
        f"These readings are too few to tell when the tube is worn out: {_change(found)}. "
        f"{_old(found)}Read again {_again(found)}: three or more on different days make a trend."
    )


def _leaving(found: Decline, wish: Wish) -> str:
    """Return when a fading tube leaves the range, seen from today."""
    wanted = uvi_range(wish.low, wish.high)
    falls = found.falls_below_day
    if falls is not None and falls <= found.today_day:
        stands = "is already" if found.below_already else "may already be"
        return (
            f"By that it {stands} below the wanted {wanted}, since about {day_told(falls)}: read "
            "it again today."
        )
    if found.today is None:
        return f"{_old(found)}They say nothing of today: read again today."
    if falls is not None:
        return f"It leaves the wanted {wanted} about {day_told(falls)}{_between(found)}."
    return (
        f"It stays above UVI {uvi_wanted(wish.low)} until {day_told(found.horizon_day)} at least; "
        "farther ahead these readings say nothing."
    )


def _old(found: Decline) -> str:
    days = round(found.today_day - found.last_day)
    return f"The last reading is {days} days old. " if days > READ_AGAIN_DAYS[1] else ""


def _again(found: Decline) -> str:
    if found.read_again_day <= found.today_day:
        return "today"
    return f"on {day_told(found.read_again_day)}"


def _between(found: Decline) -> str:
    earliest = found.earliest_day
    first = "now" if earliest is None or earliest <= found.today_day else day_told(earliest)
    if found.latest_day:
        return f" (between {first} and {day_told(found.latest_day)})"
    return " (it may be so now)" if first == "now" else f" ({first} at the earliest)"


def _now_rows(found: Decline) -> tuple[Row, ...]:
    then = f"UVI {uvi_estimate(found.now)} on {day_told(found.last_day)}"
    if found.is_unsound:
        then = f"UVI {uvi(found.now.best)} read on {day_told(found.last_day)}"
    if found.last_day == found.today_day:
        return (Row(label="Now", text=f"{then}, which is today"),)
    rows = [Row(label="Last read", text=then)]
    if found.today is not None:
        rows.append(Row(label="Today", text=f"about UVI {uvi_estimate(found.today)} by the trend"))
    return tuple(rows)


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
                text=f"about {day_told(found.falls_below_day)}{_between(found)}",
            )
        )
    return tuple(rows)


def _values(found: Decline) -> tuple[Value, ...]:
    values = [
        Value.of("uvi", found.now, "1"),
        Value.of("changed", Estimate.exact(found.changed), "1"),
        Value.of("read_again_in", _hours_from(found, (found.read_again_day,) * 3), "h"),
    ]
    if found.today is not None:
        values.append(Value.of("uvi_today", found.today, "1"))
    if found.month_factor:
        values.append(Value.of("month_factor", found.month_factor, "1"))
    if found.falls_below_day is not None:
        falls = found.falls_below_day
        first = found.earliest_day if found.earliest_day is not None else found.last_day
        # A late end that nobody can tell is open.
        last = found.latest_day if found.latest_day is not None else inf
        days = (min(first, falls), falls, max(last, falls))
        values.append(Value.of("falls_below_in", _hours_from(found, days), "h"))
    return tuple(values)


def _hours_from(found: Decline, days: tuple[float, float, float]) -> Estimate:
    """Return days as hours from today, below 0 where they are past."""
    return Estimate(*(_DAY_H * (day - found.today_day) for day in days))


def _steps(found: Decline, wish: Wish) -> tuple[str, ...]:
    steps = []
    if found.found:
        steps.append("Wipe the sensor, and the tube while it is cold and unplugged; then read.")
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


def _picture(seen: Sequence[DatedReading], found: Decline, wish: Wish) -> Picture:
    ends = [d for d in (found.falls_below_day, found.latest_day, found.read_again_day) if d]
    first, last = found.first_day - 5.0, max(found.last_day, *ends) + 10.0
    days = [first + (last - first) * i / (_CURVE_DAYS - 1) for i in range(_CURVE_DAYS)]
    trend = trend_at(seen, days)
    lines: tuple[Line, ...] = ()
    if trend:
        low, best, high = (tuple(getattr(e, n) for e in trend) for n in ("low", "best", "high"))
        lines = (Line("", tuple(days), best, low, high),)
    mark = Mark(found.read_again_day, f"read again: {day_told(found.read_again_day)}")
    if found.falls_below_day and found.falls_below_day > found.last_day:
        told = f"below UVI {uvi_wanted(wish.low)}: {day_told(found.falls_below_day)}"
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
    told = ", ".join(f"UVI {number(r.uvi, 0.01)} on {day_told(r.day)}" for r in seen[:20])
    now = uvi(found.now.best)
    alt = f"Chart of UV index against the day: {told}. Now about {now}. {_answer(found, wish)}"
    return Picture(alt=alt[:1024], drawing=drawing)
