"""Whether the night needs heat, and how to give it."""

from bot.answers.animals import doubtful_rows
from bot.answers.figures import temperature, watts, watts_range
from bot.answers.heat_parts import (
    HEAT_CAUTIONS,
    LAMP_PLACES,
    WARM_THE_ROOM,
    Kept,
    around,
    box_asked,
    box_row,
    kept_named,
    target_text,
)
from bot.answers.linking import page_links, source_lines
from bot.language.quantities import Units
from bot.preferences import Context
from bot.queries.heat import NightQuery
from bot.reply import Reply, Row, Value
from calc.animals import Subject
from calc.heat.enclosure import LampPlace
from calc.heat.night import Emitter, NightDecision, NightPlan, emitter_for, night_plan
from calc.heat.wattages import Family, steps_sold
from calc.limits import Met, limits_of, passed

__all__ = ["answer_night"]

_GUIDE = ("nights", "heat-sources", "day-length")
_ROOM_DOUBT_K = 1.0
_HEATED = (NightDecision.HEAT, NightDecision.KEEPERS_DIFFER)
_NO_NIGHT_LAMPS = (
    "No red, blue or purple night lamps: animals see their light. The night should be dark."
)
# Below it the balance of a box is not reckoned, and the animal must not stay there anyway.
_COLDEST_RECKONED_C = 0.0
_COOL_IT = (
    "Cool the room today: shade the window, let night air in, move the box to a cooler room. An "
    "animal that gapes or lies limp is too hot: call a reptile vet at once."
)
_MOVE_OUT = (
    "First move the animal to a warmer room: this one is too cold for a heater in the enclosure "
    "to be relied on (our judgement, no source)."
)
_WHERE = {
    LampPlace.INSIDE: "inside",
    LampPlace.ABOVE_MESH: "above the mesh, where a third or more of it is lost",
}
_GOOD_DROP = "A cooler, dark night is good: it is how nights are, and it gives rest."


def answer_night(query: NightQuery, context: Context) -> Reply:
    """Answer with the decision, and with thermostat and watts where heat is needed."""
    units, room_c = context.units, query.room.low
    kept = kept_named(query.animal, context)
    plan = night_plan(kept.animal, room_c)
    heats = plan.decision in _HEATED
    # Where the floor is not known somebody may heat all the same, and must know how.
    is_left = not heats and plan.decision is not NightDecision.FLOOR_UNKNOWN
    emitter = None
    if heats and query.enclosure is not None and room_c >= _COLDEST_RECKONED_C:
        box = box_asked(query.enclosure, query.material, query.lid)
        emitter = emitter_for(box, plan, room_c, LAMP_PLACES[query.place])
    return Reply(
        command="night",
        status="ok",
        title=f"The night of {kept.whom} in a room of {temperature(room_c, units)}",
        answer=_answer(plan, kept, room_c, units),
        values=_values(plan, emitter, room_c),
        rows=_rows(query, plan, kept, emitter, units),
        steps=(*_moves_out(kept, room_c), *_steps(plan, emitter, units)),
        cautions=(_NO_NIGHT_LAMPS, *(HEAT_CAUTIONS[2:] if is_left else HEAT_CAUTIONS)),
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines(_sources(plan, kept, emitter)),
    )


def _moves_out(kept: Kept, room_c: float) -> tuple[str, ...]:
    return (_MOVE_OUT,) if passed(limits_of(kept.animal), Met(night_c=room_c)) else ()


def _answer(plan: NightPlan, kept: Kept, room_c: float, units: Units) -> str:
    room = temperature(room_c, units)
    match plan.decision:
        case NightDecision.NOTHING:
            return (
                f"Nothing to do: {kept.whom} is fine in a room that falls to {room}. Switch "
                f"everything off at night. {_GOOD_DROP}"
            )
        case NightDecision.HEAT:
            return (
                f"Yes, give some heat without light: {room} is colder than {kept.whom} should "
                "have. Use an emitter that gives no light, on a simple on/off thermostat"
                f"{_off_clause(plan, units)}."
            )
        case NightDecision.KEEPERS_DIFFER:
            return (
                f"Keepers differ about {room} for {kept.whom}: a healthy adult is usually fine, a "
                "young or ill animal wants it warmer. If you heat, use heat without light, on a "
                f"thermostat{_off_clause(plan, units)}."
            )
        case NightDecision.TOO_WARM:
            return (
                f"No heat, and rather less: {room} at night is warmer than the cool end of "
                f"{kept.whom} should be by day. Let the night get cooler. {_GOOD_DROP}"
            )
        case NightDecision.FLOOR_UNKNOWN:
            return (
                f"How cool a night {kept.whom} stands is not known here: ask an experienced "
                "keeper or a reptile vet. A dark night that is cooler than the day is good; any "
                "heat must come without light and from a thermostat."
            )


def _off_clause(plan: NightPlan, units: Units) -> str:
    if plan.heat_off_c is None:
        return ""
    return f" that turns off at about {temperature(plan.heat_off_c, units)}"


def _rows(
    query: NightQuery, plan: NightPlan, kept: Kept, emitter: Emitter | None, units: Units
) -> tuple[Row, ...]:
    rows = []
    if plan.floor_c is not None:
        rows.append(Row(label="Heat is needed below", text=target_text(plan.floor_c, units)))
    if plan.decision in _HEATED and plan.heat_off_c is not None:
        how = (
            "common practice, no source"
            if plan.heat_off_source == "common_practice"
            else "our own rule: a little above the floor"
        )
        rows.append(
            Row(label="Thermostat off at", text=f"{temperature(plan.heat_off_c, units)} ({how})")
        )
    if query.enclosure is not None:
        unsaid = tuple(x for x in ("material", "lid") if x not in query.model_fields_set)
        rows.append(box_row(query.enclosure, query.material, query.lid, unsaid))
    if emitter is not None:
        rows.append(Row(label="Emitter", text=_emitter_text(emitter)))
    others = doubtful_rows(kept.animal, Subject.NIGHT_FLOOR, Subject.NIGHT_HEAT_OFF)
    return (*rows, *(Row(label="Others say", text=text) for text in others))


def _emitter_text(emitter: Emitter) -> str:
    need, where = emitter.power_w, _WHERE[emitter.place]
    span = watts_range(need.low, need.high)
    told = f"{where}, about {watts(need.best)} ({span}) in the coldest hour"
    if emitter.step_w is None and need.high > 2.0 * steps_sold(Family.DARK_EMITTER)[-1]:
        return f"{told}. {WARM_THE_ROOM}"
    if emitter.step_w is None:
        return f"{told}, more than one emitter gives: share it between two, or close the lid more"
    return f"{told}, so one of {watts(emitter.step_w)}; the thermostat takes off what is too much"


def _steps(plan: NightPlan, emitter: Emitter | None, units: Units) -> tuple[str, ...]:
    measure = (
        "Leave a thermometer that keeps the lowest reading beside the enclosure for a night: the "
        "coldest hour is just before sunrise, and most people guess wrong."
    )
    if plan.decision not in _HEATED:
        return (*((_COOL_IT,) if plan.decision is NightDecision.TOO_WARM else ()), measure)
    watts_step = (
        "Ask again with enclosure, material and lid to learn the watts."
        if emitter is None
        else f"Its watts: {_emitter_text(emitter).removesuffix('.')}."
    )
    return (
        "Use a ceramic emitter or a radiant panel: heat without any light, guarded, out of reach.",
        watts_step,
        (
            f"Plug it into an on/off thermostat{_off_clause(plan, units)}; put its probe in the "
            "air at the animal's height, not right under the heater."
        ),
        "Read the lowest temperature the next morning, and again after any change.",
        measure,
    )


def _values(plan: NightPlan, emitter: Emitter | None, room_c: float) -> tuple[Value, ...]:
    found = [Value.of("room_low", around(room_c, _ROOM_DOUBT_K), "degC")]
    if plan.floor_c is not None:
        floor = plan.floor_c
        found.append(
            Value(name="night_floor", low=floor.low, best=floor.aim, high=floor.high, unit="degC")
        )
    if plan.heat_off_c is not None:
        found.append(Value.of("thermostat_off", around(plan.heat_off_c, _ROOM_DOUBT_K), "degC"))
    if emitter is not None:
        found.append(Value.of("emitter_power", emitter.power_w, "W"))
    return tuple(found)


def _sources(plan: NightPlan, kept: Kept, emitter: Emitter | None) -> tuple[str, ...]:
    keys = ["common_practice"]
    if plan.floor_c is not None:
        keys.append(plan.floor_c.source)
    if plan.heat_off_source is not None:
        keys.append(plan.heat_off_source)
    if emitter is not None:
        keys += ["enclosure_model", "lamp_steps"]
    others = kept.animal.disagreements_about(Subject.NIGHT_FLOOR, Subject.NIGHT_HEAT_OFF)
    return (*keys, *(d.source for d in others))
