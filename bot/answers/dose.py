"""A day under the tube beside a day of sun, and how long people may stay in its light."""

from math import floor

from bot.answers.figures import (
    hours,
    length,
    month_name,
    number,
    percent,
    uvi_estimate,
    uvi_range,
    uvi_wanted,
)
from bot.answers.length_asked import lit_length
from bot.answers.linking import page_links, source_lines
from bot.answers.uv_parts import UV_CAUTIONS
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Units
from bot.preferences import Context
from bot.queries.uv_depth import DoseQuery
from bot.reply import Reply, Row, Value
from calc.uncertainty import Estimate
from calc.uv.dose import SUN_DOUBTS, SunDay, dose_sed, safe_time, sun_day
from calc.uv.tube import STANDARD_T5_HO, line_shape

__all__ = ["answer_dose"]

_GUIDE = ("uv-and-your-eyes", "sun-and-shade", "reading-a-uv-meter")
_SOURCES = ("cie125", "cie_17_26_073", "directive_2006_25", "acgih1992")
_STEPS = (
    (
        "Let the animal choose: shade it can go to matters more than any dose, and nobody knows "
        "the dose a reptile needs."
    ),
    "Switch the tube off while you work inside; sleeves and glasses that stop UV if not.",
)
_CAUTIONS = (
    "Never look into the lit tube: the time above is not for that.",
    UV_CAUTIONS[1],
    (
        "The limit is for healthy grown people at work, not for children or for skin or eyes that "
        "react to light."
    ),
)
_DAY_H = 24.0
_MINUTE_S = 60.0
_HOUR_S = 3600.0
_ARM_M = 0.60
_WHOLE_SED = 3.0
_WHOLE_MINUTES, _HALF_A_DAY_MIN = 100.0, 720.0
_SHARE_TO = 2.0
# A midday sun that people know from a summer, to tell a dose by where no place is named.
_STRONG_UVI = 10.0
# A noon sun weaker than this is no measure of anything.
_LEAST_NOON_UVI = 0.5


def answer_dose(query: DoseQuery, context: Context) -> Reply:
    """Answer with the day's dose, the sun's, and the time that people have."""
    alight = query.hours.low / _HOUR_S
    _check(query, alight)
    low, high = query.uvi
    lamp = Estimate(
        dose_sed(low, alight), dose_sed((low + high) / 2, alight), dose_sed(high, alight)
    )
    sun = None
    if query.latitude is not None and query.month is not None:
        sun = sun_day(query.latitude, query.month)
    return Reply(
        command="dose",
        status="ok",
        title="The day's UV dose, and yours",
        answer=_answer(query, lamp, sun, alight),
        values=_values(query, lamp, sun),
        rows=(
            Row(label="Under the tube", text=_under(query, lamp, alight)),
            *_sun_rows(query, lamp, sun),
            Row(label="You, at that spot", text=_people(high)),
            *_arm_rows(query, context.units),
            Row(
                label="What is assumed",
                text="the tube gives nothing under 290 nm; its true spectrum may allow you "
                "several times as long, and a lamp with shorter waves allows less"
                + _length_taken(query),
            ),
        ),
        steps=_STEPS,
        cautions=_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines(_sources(query, sun)),
    )


def _sources(query: DoseQuery, sun: SunDay | None) -> tuple[str, ...]:
    shown = ("cooper1969", "klein1977", *(d.source for d in SUN_DOUBTS)) if sun else ()
    return (*_SOURCES, *shown, *(("keitz1971",) if query.distance else ()))


def _check(query: DoseQuery, alight: float) -> None:
    if not 0.0 < alight <= _DAY_H:
        raise NotUnderstoodError(
            query.hours.text, "hours of a day, above 0 and up to 24", "hours:10", "hours"
        )
    if not 0.0 < query.uvi[0] <= query.uvi[1] <= 20.0:
        low, high = query.uvi
        raise NotUnderstoodError(
            uvi_wanted(low) if low == high else uvi_range(low, high),
            "a UV index above 0 and up to 20",
            "uvi:4",
            "uvi",
        )
    if (query.latitude is None) is not (query.month is None):
        name, example = ("month", "June") if query.month is None else ("latitude", "27S")
        raise NotUnderstoodError("", f"the {name} too, to compare with the sun", example, name)


def _answer(query: DoseQuery, lamp: Estimate, sun: SunDay | None, alight: float) -> str:
    told = (
        f"An animal that stayed in it for all {hours(alight)} would take "
        f"{_range(lamp)} standard erythema doses (SED)."
    )
    if sun is None:
        same = f"{_minutes(_of_noon(lamp, Estimate.exact(_STRONG_UVI)))} of midday sun at UVI"
        return f"{told} That is {same} {number(_STRONG_UVI)}. {_people(query.uvi[1])}"
    month = month_name(query.month or 1)
    if sun.noon_uvi.best < _LEAST_NOON_UVI:
        told += f" The sun gives next to nothing there in {month}."
    else:
        told += (
            f" That is {_minutes(_of_noon(lamp, sun.noon_uvi))} of midday sun there in {month}, or "
            f"{_share(_over(lamp, sun.dose))} a clear day in the open from dawn to dusk."
        )
    return f"{told} {_people(query.uvi[1])}"


def _over(lamp: Estimate, sun: Estimate) -> Estimate:
    return Estimate(lamp.low / sun.high, lamp.best / sun.best, lamp.high / sun.low)


def _of_noon(lamp: Estimate, noon_uvi: Estimate) -> Estimate:
    """Return for how long [min] the noon sun gives the dose of the lamp's day [SED]."""
    hour = (dose_sed(uvi, 1.0) for uvi in (noon_uvi.low, noon_uvi.best, noon_uvi.high))
    in_hours = _over(lamp, Estimate(*hour))
    return Estimate(*(60.0 * end for end in (in_hours.low, in_hours.best, in_hours.high)))


def _minutes(estimate: Estimate) -> str:
    if estimate.low >= _HALF_A_DAY_MIN:
        return "more than 12 hours"
    step = 5.0 if estimate.low >= _WHOLE_MINUTES else 1.0 if estimate.low >= 1.0 else 0.1
    if estimate.low == estimate.high:
        return f"about {number(estimate.best, step)} minutes"
    span = f"{number(estimate.low, step)} to {number(estimate.high, step)}"
    return f"about {number(estimate.best, step)} minutes ({span})"


def _share(estimate: Estimate) -> str:
    """Return how much of a whole it is: a share up to twice as much, beyond that how often."""
    if estimate.best <= _SHARE_TO:
        span = f"{percent(estimate.low)} to {percent(estimate.high)}"
        return f"about {percent(estimate.best)} ({span}) of"
    span = f"{number(estimate.low)} to {number(estimate.high)}"
    return f"about {number(estimate.best)} times ({span})"


def _range(estimate: Estimate) -> str:
    step = 1.0 if estimate.low >= _WHOLE_SED else 0.01
    if estimate.low == estimate.high:
        return number(estimate.best, step)
    return f"{number(estimate.low, step)} to {number(estimate.high, step)}"


def _under(query: DoseQuery, lamp: Estimate, alight: float) -> str:
    low, high = query.uvi
    at = uvi_wanted(low) if low == high else uvi_range(low, high)
    return (
        f"UVI {at} for {hours(alight)}: {_range(lamp)} SED, the most it can be; an animal that "
        "comes and goes takes less. 1 SED is 100 J/m² as human skin reddens"
    )


def _sun_rows(query: DoseQuery, lamp: Estimate, sun: SunDay | None) -> tuple[Row, ...]:
    if sun is None or query.latitude is None or query.month is None:
        return ()
    side = "S" if query.latitude < 0 else "N"
    where = f"{number(abs(query.latitude), 0.1)}° {side}, {month_name(query.month)}"
    return (
        Row(
            label="The sun there",
            text=f"{where}, clear sky at sea level: UVI {uvi_estimate(sun.noon_uvi)} at noon, "
            f"{_range(sun.dose)} SED from "
            f"dawn to dusk, {hours(sun.strong_hours)} over UVI 3; cloud takes much of it away",
        ),
    )


def _people(at_uvi: float) -> str:
    allowed = safe_time(at_uvi)
    if allowed.whole_day:
        return f"At UVI {uvi_wanted(at_uvi)} people stay under the limit for work all of 8 h."
    # Rounded down: nobody is told to stay longer than the limit.
    minutes = floor(allowed.seconds / _MINUTE_S)
    shown = hours(minutes / 60.0) if minutes >= 60.0 else f"{minutes} min"
    return (
        f"At UVI {uvi_wanted(at_uvi)} people's skin and eyes reach the limit for a day at work "
        f"(30 J/m²) after about {shown} at the strictest."
    )


def _arm_rows(query: DoseQuery, units: Units) -> tuple[Row, ...]:
    if query.distance is None:
        return ()
    at_arm = _at_arm(query)
    return (
        Row(
            label="You, at arm's length",
            text=f"{length(_ARM_M, units)} from the tube it is about UVI {number(at_arm, 0.1)}. "
            f"{_people(at_arm)}",
        ),
    )


def _length_taken(query: DoseQuery) -> str:
    if query.distance is None or query.length is not None:
        return ""
    return "; no length was given, so arm's length counts for the standard tube that gives most"


def _at_arm(query: DoseQuery) -> float:
    """Return the UVI at arm's length from the tube, by its shape alone.

    Without a length it is the most that any standard tube gives there, because people ask.
    """
    near = query.distance.low if query.distance else _ARM_M
    lit = [lit_length(query.length)] if query.length else [t.lit_length_m for t in STANDARD_T5_HO]
    return query.uvi[1] * max(line_shape(_ARM_M, long) / line_shape(near, long) for long in lit)


def _values(query: DoseQuery, lamp: Estimate, sun: SunDay | None) -> tuple[Value, ...]:
    allowed = safe_time(query.uvi[1]).seconds / _HOUR_S
    values = [
        Value.of("dose_sed", lamp, "1"),
        Value.of("people_hours_at_spot", Estimate(allowed, allowed, max(allowed, 8.0)), "h"),
    ]
    if query.distance:
        at_arm = _at_arm(query)
        arm = safe_time(at_arm).seconds / _HOUR_S
        values.append(Value.of("uvi_at_arm", Estimate.exact(at_arm), "1"))
        values.append(Value.of("people_hours_at_arm", Estimate(arm, arm, max(arm, 8.0)), "h"))
    if sun:
        values.append(Value.of("sun_noon_uvi", sun.noon_uvi, "1"))
        values.append(Value.of("sun_dose_sed", sun.dose, "1"))
    return tuple(values)
