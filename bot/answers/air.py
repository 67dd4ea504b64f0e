"""Watts to hold the air of an enclosure, and where the warmth goes."""

from dataclasses import dataclass

from bot.answers.figures import percent, temperature, temperature_range, watts, watts_range
from bot.answers.heat_parts import (
    AFTER_A_CHANGE,
    HEAT_CAUTIONS,
    WARM_THE_ROOM,
    box_row,
    kept_named,
    taken_text,
    target_text,
)
from bot.answers.heat_wanted import typed
from bot.answers.linking import page_links, source_lines
from bot.answers.past_limit import PastLimitError
from bot.dangers.past_limits import alarms_past
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Measure, Units
from bot.preferences import Context
from bot.queries.heat import AirQuery
from bot.questions.heat.shared import LAMP_PLACES, box_asked
from bot.questions.shared import limits_for
from bot.reply import Alarm, Reply, Row, Value
from calc.animals import Target
from calc.heat.basking import MOST_W
from calc.heat.box import MOST_RISE_K, Ends, HeatNeed, Spot, ends_held, watts_to_hold
from calc.heat.enclosure import Enclosure, Lid
from calc.heat.held import judge_held
from calc.heat.wattages import steps_sold
from calc.judgement import Judged, Verdict
from calc.limits import Limits, Met
from calc.uncertainty import Estimate
from calc.validity import OutsideModelError, check

__all__ = ["answer_air"]

_GUIDE = ("the-cool-end", "warm-end-and-cool-end", "fire-and-electrical-safety")
_SOURCES = ("enclosure_model", "ashrae_films", "en12524")
_LID_SOURCE = {Lid.SOLID: "ashrae_stack"}
_SHORT = "alone does not cover it"
_JUST = "may just cover it, so measure the cool end"
_WEAKER = (
    "Leave that lamp off. Take a weaker one, nearer to the basking spot, or let more air through "
    "the lid; then ask again with its watts."
)


@dataclass(frozen=True, slots=True)
class _Wish:
    """The range of air wanted [degC], how it is known, and its sources."""

    target: Target
    rows: tuple[Row, ...]
    sources: tuple[str, ...]

    @property
    def air_c(self) -> float:
        """The air that is worked towards [degC]."""
        return self.target.aim


@dataclass(frozen=True, slots=True)
class _Lamp:
    """The basking lamp in use: its watts, what of them ends up inside, the air they hold."""

    watts: float
    inside_w: float
    held: Ends

    @property
    def held_c(self) -> Estimate:
        """The air of the cool end, which has to stay cool [degC]."""
        return self.held.cool_c


def answer_air(query: AirQuery, context: Context) -> Reply:
    """Answer with the watts, the two ways the warmth leaves, and whether the lamp is enough."""
    units = context.units
    box = box_asked(query.enclosure, query.material, query.lid)
    limits = limits_for(query.animal, context)
    wish = _wish_asked(query, limits, context)
    need = watts_to_hold(box, wish.air_c, query.room.low, Spot.WARM_END)
    lamp = None if query.watts is None else _lamp(query, box)
    judged = None if lamp is None else judge_held(lamp.held_c, wish.target, limits)
    alarms = () if lamp is None else _overheats(lamp, judged, limits)
    return Reply(
        command="air",
        status="ok",
        title=f"Watts to hold {temperature(wish.air_c, units)} in the air",
        answer=_overheated(lamp, units)
        if lamp is not None and alarms
        else _answer(need, lamp, judged, wish, query.room.low, units),
        values=_values(need, lamp, box),
        rows=(
            box_row(query.enclosure, query.material, query.lid),
            *wish.rows,
            *_loss_rows(need),
            *_lamp_rows(lamp, query, units),
            Row(
                label="Why a range",
                text="floor, mesh, vents and draughts are assumed: take it give or take a third. "
                f"{_warm_end(need, units)}",
            ),
        ),
        steps=(_WEAKER,) if alarms else _steps(need, judged, box),
        alarms=alarms,
        cautions=HEAT_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*wish.sources, *_SOURCES, *_lid_and_lamp_sources(box, lamp))),
    )


def _warm_end(need: HeatNeed, units: Units) -> str:
    warm = temperature(need.warm_c, units)
    return f"It is for the cool end, with the heat at the warm end, which comes to about {warm}"


def _overheats(lamp: _Lamp, judged: Judged | None, limits: Limits) -> tuple[Alarm, ...]:
    """Return the hazard of the air that a lamp holds by itself, where it passes a limit."""
    if judged is None or judged.verdict is not Verdict.DANGEROUS:
        return ()
    return alarms_past(limits, Met(coolest_air_c=lamp.held_c.best))


def _overheated(lamp: _Lamp, units: Units) -> str:
    held = temperature(lamp.held_c.best, units)
    return (
        f"Do not use your {watts(lamp.watts)} lamp in this box: it holds the air at about {held}, "
        "and nothing in it stays cool enough."
    )


def _check_it_stays_cool(want: Measure, limits: Limits, query: AirQuery, context: Context) -> None:
    """Refuse to work towards air in which nothing can cool down."""
    caution = limits.caution_c
    if caution is None or want.high <= caution.value:
        return
    most = temperature(caution.value, context.units)
    is_named = bool(query.animal.strip() or context.default_animal)
    kept = kept_named(query.animal, context) if is_named else None
    cool = None if kept is None else kept.animal.cool_air_c
    whom = "nearly any animal I know" if kept is None else kept.whom
    usual = "" if cool is None else f" {target_text(cool, context.units)} is right, and"
    raise PastLimitError(
        want.text,
        f"air in which {whom} can cool down:{usual} {most} at the cool end is too hot",
        "want:78F" if cool is None else f"want:{typed(cool)}",
        "want",
        (Alarm(key="too_hot_wish", words=want.text),),
    )


def _wish_asked(query: AirQuery, limits: Limits, context: Context) -> _Wish:
    if query.want is not None:
        _check_it_stays_cool(query.want, limits, query, context)
        asked = Target(query.want.low, None, query.want.high, "common_practice")
        told = f"{temperature(asked.aim, context.units)}, as you gave it"
        return _Wish(asked, (Row(label="Wanted air", text=told),), ())
    kept = kept_named(query.animal, context)
    target = kept.animal.cool_air_c
    if target is None:
        raise NotUnderstoodError(
            kept.animal.name,
            "a wanted air temperature, because none is known here for that animal",
            "want:78F",
            "animal",
        )
    told = f"{target_text(target, context.units)} at the cool end for {kept.whom}"
    return _Wish(target, (Row(label="Wanted air", text=told),), (target.source,))


def _lamp(query: AirQuery, box: Enclosure) -> _Lamp:
    assert query.watts is not None
    check("lamp power", query.watts.low, 0.0, MOST_W, "W", is_open_low=True)
    inside = query.watts.low * LAMP_PLACES[query.place].value
    try:
        held = ends_held(box, inside, query.room.low, Spot.WARM_END)
    except OutsideModelError:
        # Hotter than is answered, and hotter than any animal may have it.
        most = Estimate.exact(query.room.low + MOST_RISE_K)
        held = Ends(most, most)
    return _Lamp(query.watts.low, inside, held)


def _answer(
    need: HeatNeed,
    lamp: _Lamp | None,
    judged: Judged | None,
    wish: _Wish,
    room_c: float,
    units: Units,
) -> str:
    total, wanted = need.total_w, temperature(wish.air_c, units)
    if total.best == 0.0:
        return (
            f"None: the room is {temperature(room_c, units)} already, so the air cannot get as "
            f"cool as {wanted} without a cooler room."
        )
    span = watts_range(total.low, total.high)
    told = f"It takes about {watts(total.best)} ({span}) inside to hold {wanted} in the air"
    if lamp is None:
        return f"{told}, all lamps counted."
    return f"{told}; your {watts(lamp.watts)} lamp {_covers(judged)}."


def _covers(judged: Judged | None) -> str:
    """Return whether a lamp holds the air that is wanted."""
    if judged is None or judged.is_fine:
        return "covers it: measure the cool end to be sure"
    if judged.verdict.wants_change:
        return "gives more than that, so watch the cool end" if _is_warm(judged) else _SHORT
    return "may give more than that: measure the cool end" if _is_warm(judged) else _JUST


def _is_warm(judged: Judged) -> bool:
    return judged.value.best > judged.high


def _loss_rows(need: HeatNeed) -> tuple[Row, ...]:
    total = need.walls_w + need.air_w
    if total == 0.0:
        return ()
    told = (
        f"about {watts(need.walls_w)} ({percent(need.walls_w / total)}) through walls, floor and "
        f"lid, {watts(need.air_w)} ({percent(need.air_w / total)}) with the air that leaves"
    )
    return (Row(label="Where it goes", text=told),)


def _lamp_rows(lamp: _Lamp | None, query: AirQuery, units: Units) -> tuple[Row, ...]:
    if lamp is None:
        return ()
    share = "all of it" if lamp.inside_w == lamp.watts else f"about {watts(lamp.inside_w)} of it"
    unsaid = () if "place" in query.model_fields_set else ("place:above if it is above the mesh",)
    told = f"{watts(lamp.watts)}, {query.place}{taken_text(*unsaid)}: {share} warms the inside"
    span = temperature_range(lamp.held_c.low, lamp.held_c.high, units)
    told += f"; by itself it holds about {temperature(lamp.held_c.best, units)}, within {span}"
    told += f", at the cool end and {temperature(lamp.held.warm_c.best, units)} at the warm one"
    return (Row(label="Basking lamp", text=told),)


def _values(need: HeatNeed, lamp: _Lamp | None, box: Enclosure) -> tuple[Value, ...]:
    factor = 1.0 if need.total_w.best == 0.0 else need.total_w.high / need.total_w.best
    parts = (("through_walls", need.walls_w), ("with_air", need.air_w))
    found = [Value.of("power", need.total_w, "W")]
    found += [
        Value(name=name, low=part / factor, best=part, high=part * factor, unit="W")
        for name, part in parts
    ]
    if lamp is not None:
        found.append(Value.of("air_held", lamp.held_c, "degC"))
        found.append(Value.of("warm_air_held", lamp.held.warm_c, "degC"))
    return tuple(found)


def _steps(need: HeatNeed, judged: Judged | None, box: Enclosure) -> tuple[str, ...]:
    if need.total_w.best == 0.0:
        return (
            "Cool the room, or let more of its air through; no lamp can help here.",
            "Then read the cool end again in the hottest hour of the day.",
        )
    if need.total_w.best > steps_sold()[-1]:
        return (WARM_THE_ROOM, *_after(need, judged, box))
    return _after(need, judged, box)


def _after(need: HeatNeed, judged: Judged | None, box: Enclosure) -> tuple[str, ...]:
    short = judged is None or (not judged.is_fine and judged.value.best < judged.low)
    steps = [
        "Set the basking spot first, with one lamp. Its heat counts towards these watts.",
        "Then read the cool end after two to three hours.",
    ]
    if short:
        steps.append(
            "Still too cool? Add a second, weaker heat lamp near the middle, or a radiant panel "
            "on a thermostat; do not just fit a much stronger basking lamp."
        )
    if box.lid is not Lid.SOLID and need.air_w > 0.3 * need.walls_w:
        steps.append(
            "Much leaves through the mesh: close a part of it, away from the lamps, with "
            "something that cannot burn."
        )
    return (*steps, AFTER_A_CHANGE)


def _lid_and_lamp_sources(box: Enclosure, lamp: _Lamp | None) -> tuple[str, ...]:
    lid = _LID_SOURCE.get(box.lid, "epstein1988")
    return (lid,) if lamp is None else (lid, "lamp_split")
