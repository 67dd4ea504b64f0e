"""The UV of a set-up: by the keeper's meter where there is one, else by tube and distance.

What was not said is not guessed: every usual fixture and screen is tried, and there is a verdict
only where all of them agree.
"""

from collections.abc import Iterator

from bot.answers.check_beyond import beyond_part
from bot.answers.check_cases import Case, every_case, every_way, length_said
from bot.answers.check_parts import Mark, Part, Todo, Urgency
from bot.answers.check_uv_lamps import (
    behind_pane,
    for_the_meter,
    hung,
    of_other_lamp,
    wanted_told,
    without_tube,
)
from bot.answers.check_uv_moves import more_room, moves, tube_moved
from bot.answers.figures import length, uvi, uvi_estimate, uvi_range
from bot.answers.heat_parts import Kept
from bot.answers.setup_told import Said, Told
from bot.answers.tube_length import length_sources, length_values
from bot.answers.verdicts import (
    judged_uvi_read,
    mark_of,
    mildest,
    verdict_word,
    wants_move,
)
from bot.language.hearing import FactName
from bot.language.quantities import Measure, Units
from bot.language.readings import PlacedReading
from bot.reply import Value
from calc.animals import Target
from calc.judgement import Judged
from calc.limits import Limits, limits_of
from calc.quantities import Quantity
from calc.setup.set_up import Spot
from calc.uncertainty import Estimate
from calc.uv.placement import (
    COMFORTABLE_MINIMUM_M,
    SAFE_MINIMUM_M,
    spot,
)
from calc.validity import OutsideModelError, check

__all__ = ["uv_part"]

_NAME = "UV"
_NEAREST_M, _FARTHEST_M = 0.05, 3.0
_YEAR_S = 31_557_600.0
_HOW = {
    FactName.TUBE: "the strength printed on the tube",
    FactName.REFLECTOR: "whether the fixture behind the tube is like a mirror when the tube is off "
    "and cold (polished), or white or plastic (plain)",
    FactName.SCREEN: "what is between tube and animal: nothing, or a mesh and how much it blocks",
    FactName.TUBE_LENGTH: "how long the tube is, or the watts printed on it",
    FactName.DISTANCE_BACK: (
        "the distance from the underside of the tube to the animal's back, with a tape measure"
    ),
}
_DISTANCES = (
    FactName.DISTANCE_BACK,
    FactName.DISTANCE,
    FactName.DISTANCE_PERCH,
)


def uv_part(told: Told, kept: Kept, units: Units) -> Part:
    """Judge the UV of a set-up for an animal."""
    wanted = kept.animal.uvi
    if wanted is None:
        return _unjudged(told, kept, units)
    limits = limits_of(kept.animal)
    meter = told.one(FactName.UVI, tuple)
    if meter is not None:
        return _by_meter(meter.value, wanted, limits)
    placed = [x.value for x in told.all(FactName.UVI_AT) if isinstance(x.value, PlacedReading)]
    if len(placed) == 1:
        return _by_meter((placed[0].value,), wanted, limits)
    if placed:
        return for_the_meter(wanted)
    if told.lacks("uvb") and told.tube is None:
        return without_tube(wanted)
    if told.pane is not None:
        return behind_pane(told.pane.value, wanted)
    if told.uv_lamp is not None:
        return of_other_lamp(told.uv_lamp, wanted, units)
    distance = _distance(told)
    if told.tube is None or distance is None:
        return _untold(told, wanted, distance)
    name, said = distance
    try:
        check("tube distance", said.value.low, _NEAREST_M, _FARTHEST_M, "m")
        check("tube distance", said.value.high, _NEAREST_M, _FARTHEST_M, "m")
        return _by_distance(told, name, said, wanted, limits, units)
    except OutsideModelError as error:
        # Another figure of the tube may be meant, and then its name is in the sentence.
        example = "distance:16in" if error.name.endswith("distance") else "tube:12%"
        return beyond_part(_NAME, error, example, units)


def _unjudged(told: Told, kept: Kept, units: Units) -> Part:
    """Tell the UV for an animal whose range is not known: near is too near, no more is judged."""
    unknown = f"the UV index {kept.whom} should have is not known here"
    read = told.one(FactName.UVI, tuple)
    if read is not None:
        low, high = read.value[0], read.value[-1]
        value = Value(name="uvi", low=low, best=(low + high) / 2.0, high=high, unit="1")
        why = f"your meter shows {uvi(value.best)}; {unknown}"
        return Part(_NAME, Mark.CANNOT_TELL, why, values=(value,))
    distance = _distance(told)
    has_way = told.pane is None and told.uv_lamp is None and told.tube is not None
    if distance is None or not has_way:
        return Part(_NAME, Mark.CANNOT_TELL, unknown, missing=_missing(told, distance))
    name, said = distance
    middle_m = (said.value.low + said.value.high) / 2.0
    if not _NEAREST_M <= middle_m <= _FARTHEST_M:
        return Part(_NAME, Mark.CANNOT_TELL, unknown)
    spots = [spot(lamp, middle_m, between).uvi for _, _, lamp, between in every_way(told)]
    low, high = min(x.low for x in spots), max(x.high for x in spots)
    best = spots[0].best if len(spots) == 1 else (low * high) ** 0.5
    value = Value(name="uvi", low=low, best=best, high=high, unit="1")
    why = f"about UVI {uvi(low)} to {uvi(high)} at {length(middle_m, units)}; {unknown}"
    near = middle_m < COMFORTABLE_MINIMUM_M
    todo = (more_room(middle_m, units),) if near else ()
    mark = Mark.CHANGE if near else Mark.CANNOT_TELL
    sources = ("keitz1971", "uv_distance_rows")
    return Part(_NAME, mark, why, todo, _missing(told, (name, said)), (value,), sources)


def _by_meter(read: tuple[float, ...], wanted: Target, limits: Limits) -> Part:
    ends = wanted.low, wanted.high
    judged = judged_uvi_read(read, *ends, limits)
    middle = judged.value.best
    values = (Value(name="uvi", low=read[0], best=middle, high=read[-1], unit="1"),)
    why = f"your meter shows {uvi(middle)}: {verdict_word(judged)}, {wanted_told(wanted)}"
    mark, here = mark_of(judged), Spot(Quantity.UVI, None, ends, judged.value, judged)
    if not wants_move(judged):
        return Part(_NAME, mark, why, values=values, sources=(wanted.source,), spot=here)
    way = "farther from" if judged.is_likely_above else "nearer to"
    urgency = Urgency.TOO_MUCH_UV if judged.is_likely_above else Urgency.TOO_LITTLE_UV
    text = (
        f"Move the tube {way} the animal's back, or the platform, until the meter shows "
        f"{uvi_range(wanted.low, wanted.high)}."
    )
    todo = (Todo(urgency, text, tube_moved(up=judged.is_likely_above)),)
    return Part(_NAME, mark, why, todo, values=values, sources=(wanted.source,), spot=here)


def _distance(told: Told) -> tuple[FactName, Said[Measure]] | None:
    for name in _DISTANCES:
        said = told.measure(name)
        if said is not None:
            return name, said
    return None


def _missing(told: Told, distance: tuple[FactName, Said[Measure]] | None) -> tuple[str, ...]:
    lacking = []
    if told.tube is None:
        lacking.append(FactName.TUBE)
    if distance is None:
        lacking.append(FactName.DISTANCE_BACK)
    if told.reflector is None:
        lacking.append(FactName.REFLECTOR)
    if told.screen is None:
        lacking.append(FactName.SCREEN)
    if told.tube and distance and length_said(told).others_m:
        lacking.append(FactName.TUBE_LENGTH)
    return tuple(_HOW[name] for name in lacking)


def _untold(told: Told, wanted: Target, distance: tuple[FactName, Said[Measure]] | None) -> Part:
    missing = _missing(told, distance)
    text = f"Find out {missing[0]}."
    return Part(
        _NAME,
        Mark.CANNOT_TELL,
        f"too little is known of the tube; {wanted_told(wanted)}",
        (Todo(Urgency.MEASURE, text),),
        missing,
        sources=(wanted.source,),
    )


def _by_distance(
    told: Told,
    name: FactName,
    said: Said[Measure],
    wanted: Target,
    limits: Limits,
    units: Units,
) -> Part:
    middle_m = (said.value.low + said.value.high) / 2.0
    cases = tuple(every_case(told, middle_m, wanted, limits))
    judged = mildest([case.check.judged for case in cases])
    here = cases[0].check.here
    low = min(case.check.here.uvi.low for case in cases)
    high = max(case.check.here.uvi.high for case in cases)
    best = here.uvi.best if len(cases) == 1 else (low * high) ** 0.5
    uvi_here, ends = Estimate(low, best, high), (wanted.low, wanted.high)
    values = (
        Value.of("uvi", uvi_here, "1"),
        *length_values(cases[0].lamp),
    )
    sources = (wanted.source, "keitz1971", "uv_distance_rows", *length_sources(cases[0].lamp))
    missing = _missing(told, (name, said))
    find_out = tuple(Todo(Urgency.MEASURE, f"Find out {what}.") for what in missing[:1])
    at = f"at {length(middle_m, units)}{_to(name)}{hung(told)}"
    if judged is None:
        why = (
            f"UVI {uvi(low)} to {uvi(high)} {at}, which depends on what was not said; "
            f"{wanted_told(wanted)}"
        )
        spot_here = Spot(Quantity.UVI, None, ends, uvi_here, is_read=False)
        return Part(
            _NAME, Mark.CANNOT_TELL, why, find_out, missing, values, sources, spot=spot_here
        )
    told_uvi = uvi_estimate(here.uvi) if len(cases) == 1 else f"{uvi(low)} to {uvi(high)}"
    why = f"about UVI {told_uvi} {at}: {verdict_word(judged)}, {wanted_told(wanted)}{_age(told)}"
    may_be_above = any(case.check.may_be_above for case in cases)
    mark = Mark.CHANGE if _too_near(middle_m) else mark_of(judged)
    if may_be_above and mark is Mark.FINE:
        mark = Mark.CANNOT_TELL
    todo = (*_todo(cases, judged, middle_m, name, units), *(find_out if may_be_above else ()))
    spot_here = Spot(Quantity.UVI, None, ends, uvi_here, judged, is_read=False)
    return Part(_NAME, mark, why, todo, missing, values, sources, spot=spot_here)


def _to(name: FactName) -> str:
    return {
        FactName.DISTANCE_BACK: " from the back",
        FactName.DISTANCE_PERCH: " from the perch, so a little more at the back",
    }.get(name, ", taken as to the back")


def _age(told: Told) -> str:
    age = told.measure(FactName.AGE)
    if age is None or age.value.low <= _YEAR_S:
        return ""
    return "; the tube is older than a year, so only a meter tells"


def _too_near(distance_m: float) -> bool:
    return distance_m < SAFE_MINIMUM_M


def _todo(
    cases: tuple[Case, ...], judged: Judged, distance_m: float, name: FactName, units: Units
) -> Iterator[Todo]:
    if _too_near(distance_m):
        yield more_room(distance_m, units)
    elif wants_move(judged):
        yield from moves(cases, judged, units)
    if name is not FactName.DISTANCE_BACK:
        yield Todo(
            Urgency.MEASURE,
            "Measure again from the underside of the tube to the animal's back, where it basks.",
        )
