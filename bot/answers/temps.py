"""What a keeper's readings say, and the one thing to do first."""

from typing import Any

from bot.answers.animals import doubtful_rows
from bot.answers.figures import temperature
from bot.answers.heat_parts import (
    AFTER_A_CHANGE,
    HEAT_CAUTIONS,
    Kept,
    body_rows,
    check_unit,
    kept_named,
    target_text,
)
from bot.answers.linking import page_links, source_lines
from bot.answers.temps_mends import (
    around_rows,
    first_to_do,
    mends_table,
    step_lines,
    surroundings_asked,
)
from bot.answers.temps_picture import temps_picture
from bot.answers.temps_words import (
    doubt_text,
    finding_clause,
    missing_text,
    place_name,
)
from bot.language.quantities import Measure, Units
from bot.language.shown import shown
from bot.preferences import Context
from bot.queries.heat import TempsQuery
from bot.reply import Picture, Reply, Row, Value
from calc.animals import Subject
from calc.heat.judge import Judgement, Step, judge
from calc.heat.readings import Doubtful, Finding, Instrument, Readings
from calc.judgement import with_doubt
from calc.limits import Due, Met, limits_of, passed, soonest
from calc.quantities import Quantity
from calc.setup.measured import measured_set_up
from calc.uncertainty import Estimate

__all__ = ["answer_temps"]

_GUIDE = ("measuring-temperatures", "warm-end-and-cool-end", "the-basking-spot", "the-cool-end")
_HOUR_S = 3600.0
_INSTRUMENTS = {
    "infrared gun": Instrument.INFRARED_GUN,
    "digital probe": Instrument.DIGITAL_PROBE,
    "dial or strip": Instrument.DIAL_OR_STRIP,
}
_NAMES = {
    Quantity.BASKING_SURFACE: "basking_surface",
    Quantity.COOL_AIR: "cool_air",
    Quantity.WARM_AIR: "warm_air",
    Quantity.NIGHT_AIR: "night_low",
}
_CHANGES = {
    Step.LOWER_LAMP,
    Step.RAISE_LAMP,
    Step.MORE_POWER,
    Step.LESS_POWER,
    Step.MOVE_LAMP_INWARD,
    Step.SECOND_WEAKER_LAMP,
    Step.MORE_AIR,
    Step.LESS_AIR,
    Step.COOLER_ROOM,
    Step.WARMER_ROOM,
}
_NIGHTS = {Step.HEAT_THE_NIGHT, Step.CONSIDER_NIGHT_HEAT, Step.COOLER_NIGHT}
# These end in reading again by themselves.
_READINGS = {Step.WAIT_AND_READ_AGAIN, Step.MEASURE_AGAIN, Step.LEAVE_AS_IT_IS}
_AFTER_A_NIGHT = "Measure the lowest of the night again the next morning."
_OPEN = (
    "Leave what is right as it is. Ask a keeper or reptile vet you trust about the reading for "
    "which I know no target, before you change it or rely on it."
)
_READ_AND_ASK = "Then measure again, with the lamp on for 2 to 3 hours, and ask again."
# A box with its lamp on is never so cold: the unit was mistaken.
_COLDEST_SURFACE_C, _COLDEST_AIR_C = 13.0, 5.0


def answer_temps(query: TempsQuery, context: Context) -> Reply:
    """Answer with the verdict on each reading, and what to do in order."""
    check_unit(query.basking, _COLDEST_SURFACE_C, "basking")
    check_unit(query.cool, _COLDEST_AIR_C, "cool")
    check_unit(query.warm, _COLDEST_AIR_C, "warm")
    night_c, units = _value(query.night), context.units
    kept = kept_named(query.animal, context)
    readings = Readings(
        _value(query.basking),
        _value(query.cool),
        _value(query.warm),
        night_c,
        None if query.lamp_on is None else query.lamp_on.low / _HOUR_S,
        frozenset(_INSTRUMENTS[name] for name in query.measured),
    )
    judgement = judge(readings, kept.animal, surroundings_asked(query))
    set_up = measured_set_up(judgement.findings, kept.animal, judgement.first)
    return Reply(
        command="temps",
        status="ok",
        title=f"Temperatures for {kept.whom}",
        answer=_answer(judgement, kept, units),
        values=tuple(v for finding in judgement.findings for v in _values(finding)),
        rows=(
            *_rows(judgement, units),
            *around_rows(query, judgement, units),
            *_unit_rows(query, kept),
            *_others(judgement, kept, units),
        ),
        table=mends_table(judgement, units),
        steps=_steps(judgement, units),
        cautions=HEAT_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines(_sources(judgement, kept)),
        picture=Picture.later(temps_picture, set_up, kept, units),
        set_up=set_up,
    )


def _value(measure: Measure | None) -> float | None:
    return None if measure is None else (measure.low + measure.high) / 2.0


def _answer(judgement: Judgement, kept: Kept, units: Units) -> str:
    first = first_to_do(judgement, units)
    if not judgement.findings:
        return f"Give me a reading and I can help. First, {first}."
    if Step.CHECK_PROBE_PLACES in judgement.steps:
        return f"These readings contradict each other: {_read(judgement, units)}. First, {first}."
    clauses = "; ".join(finding_clause(finding, units) for finding in judgement.findings)
    told = f"For {kept.whom} {clauses}."
    if Doubtful.NOT_YET_A_READING in judgement.doubts:
        told = f"It is too soon to judge, but so far {clauses}."
    if _leaves_open(judgement):
        return f"{told} What I know a target for is right; ask a keeper or reptile vet of the rest."
    if judgement.first is Step.LEAVE_AS_IT_IS:
        return f"{told} Well done: {first}."
    return f"{told} First, {first}."


def _leaves_open(judgement: Judgement) -> bool:
    """Whether nothing is wrong, and a reading was given for which no target is known."""
    unknown = any(finding.judged is None for finding in judgement.findings)
    return unknown and judgement.first is Step.LEAVE_AS_IT_IS


def _read(judgement: Judgement, units: Units) -> str:
    return ", ".join(
        f"{place_name(finding.place).lower()} {temperature(finding.reading_c, units)}"
        for finding in judgement.findings
    )


def _estimate(finding: Finding) -> Estimate:
    return with_doubt(finding.place, finding.reading_c)


def _values(finding: Finding) -> tuple[Value, ...]:
    name = _NAMES[finding.place]
    read = Value.of(name, _estimate(finding), "degC")
    target = finding.target
    if target is None:
        return (read,)
    wanted = Value(
        name=f"{name}_wanted", low=target.low, best=target.aim, high=target.high, unit="degC"
    )
    return read, wanted


def _rows(judgement: Judgement, units: Units) -> tuple[Row, ...]:
    rows = []
    for finding in judgement.findings:
        shown = temperature(finding.reading_c, units)
        if finding.target is None:
            told = f"{shown}; the target is not known here, ask a keeper or reptile vet you trust"
        elif finding.place is Quantity.NIGHT_AIR:
            told = f"{shown}; heat is wanted below {target_text(finding.target, units)}"
        else:
            told = f"{shown}; wanted {target_text(finding.target, units)}"
        rows.append(Row(label=place_name(finding.place), text=told))
    if judgement.doubts:
        rows.append(Row(label="Doubtful", text=doubt_text(judgement.doubts)))
    if judgement.missing:
        rows.append(Row(label="Still to measure", text=missing_text(judgement.missing)))
    return tuple(rows)


def _unit_rows(query: TempsQuery, kept: Kept) -> tuple[Row, ...]:
    """Return that °F may have been meant, where a number passes a limit in °C and none in °F."""
    limits = limits_of(kept.animal)
    read = {"surface_c": query.basking, "warm_air_c": query.warm, "coolest_air_c": query.cool}
    for field, measure in read.items():
        if measure is None or measure.unit != "degC":
            continue
        in_c: dict[str, Any] = {field: measure.high}
        in_f: dict[str, Any] = {field: (measure.high - 32.0) / 1.8}
        past, past_f = passed(limits, Met(**in_c)), passed(limits, Met(**in_f))
        if soonest(past) is Due.NOW and not past_f:
            told = (
                f"{shown(measure.text)} is far too hot in °C: if your thermometer shows °F, ask "
                "again with F"
            )
            return (Row(label="Mistaken unit?", text=told),)
    return ()


def _others(judgement: Judgement, kept: Kept, units: Units) -> tuple[Row, ...]:
    if not judgement.findings:
        return ()
    subjects = (Subject.BASKING_SURFACE, Subject.COOL_AIR, Subject.WARM_AIR, Subject.NIGHT_FLOOR)
    others = doubtful_rows(kept.animal, *subjects)
    return (
        *(Row(label="Others say", text=text) for text in others),
        *body_rows(kept.animal, units),
    )


def _steps(judgement: Judgement, units: Units) -> tuple[str, ...]:
    if _leaves_open(judgement):
        return (_OPEN, _READ_AND_ASK)
    told = step_lines(judgement, units)
    if not _CHANGES.isdisjoint(judgement.steps):
        return (*told, f"One change at a time. {AFTER_A_CHANGE}")
    if judgement.steps[-1] in _NIGHTS:
        return (*told, _AFTER_A_NIGHT)
    return told if judgement.steps[-1] in _READINGS else (*told, _READ_AND_ASK)


def _sources(judgement: Judgement, kept: Kept) -> tuple[str, ...]:
    targets = [finding.target.source for finding in judgement.findings if finding.target]
    subjects = (Subject.BASKING_SURFACE, Subject.COOL_AIR, Subject.WARM_AIR, Subject.NIGHT_FLOOR)
    others = [d.source for d in kept.animal.disagreements_about(*subjects)]
    if not targets:
        return ("common_practice",)
    bodies = [body.source for body in kept.animal.bodies]
    reckoned = ("enclosure_model", "lamp_steps") if judgement.mends else ()
    return (*targets, "common_practice", *reckoned, *others, *bodies)
