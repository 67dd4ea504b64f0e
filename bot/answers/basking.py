"""From one reading under the lamp to the wanted surface: move it, change it or dim it."""

from bot.answers.basking_change import Change, change_for
from bot.answers.basking_words import (
    FIRST_PUT_RIGHT,
    GUARD_WORDS,
    dimmer_row,
    dimming_row,
    lamp_rows,
    move_text,
)
from bot.answers.figures import difference, length, length_range, temperature, watts
from bot.answers.heat_parts import AFTER_A_CHANGE, HEAT_CAUTIONS, around
from bot.answers.heat_wanted import wanted_surface
from bot.answers.linking import page_links, source_lines
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Units
from bot.preferences import Context
from bot.queries.heat import BaskingQuery
from bot.reply import Alarm, Reply, Row, Table, Value
from calc.heat.basking import MOST_DIMMING, DimmerVerdict, surface_at
from calc.heat.guards import Guard
from calc.judgement import judge_value, with_doubt
from calc.quantities import Quantity

__all__ = ["answer_basking"]

_GUIDE = ("the-basking-spot", "dimmers-and-wattage", "fire-and-electrical-safety")
_SOURCES = ("rise_scaling", "common_practice", "holder_mark", "fire_service_lamps")
_GUN_K = 2.0
# What has to be put right, as hazards of the table; wood is among the figures that are told.
_HAZARDS = {
    Guard.ABOVE_HOLDER_MARK: "wrong_holder",
    Guard.LAMP_WITHIN_REACH: "no_guard",
}
_TURN_UP = (
    "First turn the dimmer up, a little at a time, and measure after each turn: what follows is "
    "for a lamp that is not enough at full power."
)


def answer_basking(query: BaskingQuery, context: Context) -> Reply:
    """Answer with the new distance, the lamps and the dimmer setting, each with its range."""
    wanted = wanted_surface(query.want, query.animal, context)
    units = context.units
    if query.dimmer == 0.0:
        raise NotUnderstoodError(
            "0%", "a dimmer that is on: turn it up first and measure again", "80%", "dimmer"
        )
    change = change_for(query, wanted)
    if change.is_stopped:
        return _stopped(change, context)
    rows = [
        Row(label="Rise over the air", text=_rises(change, units)),
        *wanted.rows,
        *([] if change.dimmer is None else [dimmer_row(change.dimmer, query.dimmer or 1.0)]),
        *([] if change.dimmer is None else dimming_row(change.dimmer)),
        Row(
            label="Why a range",
            text="heat loss grows as things get hotter, and the beam begins somewhere behind the "
            "lamp's face; the air beside the spot will change a little too",
        ),
    ]
    return Reply(
        command="basking",
        status="ok",
        title=f"From {temperature(change.reading.surface_c, units)} to "
        f"{temperature(wanted.aim_c, units)} on the basking surface",
        answer=" ".join((*_stops(change), *_turns_up(query, change), _answer(change, units))),
        values=_values(change),
        rows=tuple(rows),
        table=_table(change, units),
        steps=(*_turns_up(query, change), *_steps(change, units)),
        alarms=_alarms(change),
        cautions=HEAT_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines(
            (*wanted.sources, *_SOURCES, *(("lamp_rerating",) if change.dimmer else ()))
        ),
    )


def _stopped(change: Change, context: Context) -> Reply:
    """Return what has to be put right first; no move and no lamp is told before that."""
    units = context.units
    tripped = [guard for guard in change.guards if guard in FIRST_PUT_RIGHT]
    told = " ".join(GUARD_WORDS[guard] for guard in tripped)
    return Reply(
        command="basking",
        status="problem",
        title="Put this right before you change the basking spot",
        answer=f"{told} Then measure again and ask again: I tell no move before that.",
        values=(
            Value.of("basking_surface", around(change.reading.surface_c, _GUN_K), "degC"),
            change.wanted.value("basking_surface_wanted"),
        ),
        rows=(Row(label="Rise over the air", text=_rises(change, units)), *change.wanted.rows),
        steps=(
            *(FIRST_PUT_RIGHT[guard] for guard in tripped),
            (
                "Let the lamp run for two to three hours, measure the surface and the air beside "
                "it again, and ask basking again."
            ),
        ),
        alarms=_alarms(change),
        cautions=HEAT_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*change.wanted.sources, *_SOURCES, "babrauskas2007")),
    )


def _alarms(change: Change) -> tuple[Alarm, ...]:
    return tuple(Alarm(key=_HAZARDS[guard]) for guard in change.guards if guard in _HAZARDS)


def _stops(change: Change) -> tuple[str, ...]:
    """Return what has to be put right before anything else."""
    return tuple(GUARD_WORDS[guard] for guard in change.guards)


def _turns_up(query: BaskingQuery, change: Change) -> tuple[str, ...]:
    """Return what comes before any move where a dimmed lamp has heat to spare."""
    dimmed = query.dimmer is not None and query.dimmer < 1.0 - MOST_DIMMING
    return (_TURN_UP,) if dimmed and not (change.is_right or change.is_cooling) else ()


def _answer(change: Change, units: Units) -> str:
    reading, wanted, move = change.reading, change.wanted, change.move
    aim = temperature(wanted.aim_c, units)
    if change.is_right:
        return (
            f"Leave the lamp where it is: {temperature(reading.surface_c, units)} is as close to "
            f"{aim} as an infrared gun can tell."
        )
    if move is not None and change.may_move:
        told = move_text(reading.distance_m, move, units)
        read = with_doubt(Quantity.BASKING_SURFACE, reading.surface_c)
        judged = judge_value(Quantity.BASKING_SURFACE, read, wanted.low_c, wanted.high_c)
        if judged.is_fine:
            return (
                f"The surface is inside the wanted range. If you want it nearer to {aim}: {told}."
            )
        return f"{told[0].upper()}{told[1:]}."
    if change.is_cooling:
        return f"Use {_other_lamp(change, 'smaller')}: moving this one cannot bring {aim}."
    return (
        f"Moving this lamp cannot bring {aim} safely. Use {_other_lamp(change, 'stronger')}, no "
        f"nearer than {length(change.lamp_distance_m, units)}."
    )


def _other_lamp(change: Change, way: str) -> str:
    if not change.lamps:
        return f"a {way} lamp"
    fitting = min(change.lamps, key=lambda lamp: abs(lamp.surface_c.best - change.wanted.aim_c))
    named = f"a lamp of about {watts(fitting.watts)}"
    beyond = change.holder_w is not None and fitting.watts > change.holder_w
    return f"{named} in a holder that is marked for it" if beyond else named


def _rises(change: Change, units: Units) -> str:
    now, then = change.reading.rise_k, change.wanted.aim_c - change.reading.air_c
    return (
        f"now {difference(now, units)}, wanted {difference(then, units)}: the lamp makes the "
        "rise, the room makes the rest, so I scale the rise and not the thermometer's number"
    )


def _values(change: Change) -> tuple[Value, ...]:
    found = [
        Value.of("basking_surface", around(change.reading.surface_c, _GUN_K), "degC"),
        change.wanted.value("basking_surface_wanted"),
    ]
    if change.move is not None:
        found.append(Value.of("lamp_distance", change.move, "m"))
    if change.watts is not None:
        found.append(Value.of("lamp_power", change.watts, "W"))
    if change.dimmer is not None:
        found.append(Value.of("dimmer_setting", change.dimmer.setting, "1"))
    return tuple(found)


def _table(change: Change, units: Units) -> Table | None:
    if change.is_right:
        return None
    rows = list(
        lamp_rows(change.lamps, change.lamp_distance_m, change.holder_w, change.wanted, units)
    )
    if change.move is not None and change.may_move:
        start = surface_at(change.reading, change.move.high)
        spot = f"this lamp at {length(change.move.high, units)}"
        rows.insert(0, (spot, temperature(start.best, units), "the careful start"))
    if not rows:
        return None
    return Table(columns=("Change", "Surface to expect", "So"), rows=tuple(rows))


def _steps(change: Change, units: Units) -> tuple[str, ...]:
    if change.is_right:
        return ("Read it again when the season or the room changes.",)
    steps = []
    if change.move is not None and change.may_move:
        span = length_range(change.move.low, change.move.high, units)
        label = "" if change.is_cooling else " First look on its label for the least distance."
        steps.append(
            f"Set the lamp at {length(change.move.high, units)}, measured from its face to the "
            f"surface, and go on within {span}.{label}"
        )
    if change.dimmer is not None and change.dimmer.verdict is DimmerVerdict.WITHIN:
        steps.append("Or leave the lamp in its place and turn the dimmer. Do one, not both.")
    elif change.fitting:
        one = "Or change the lamp, as in the table. Do one, not both."
        steps.append(one if steps else "Change the lamp, as in the table.")
    if not steps:
        steps.append(
            f"Fit {_other_lamp(change, 'smaller' if change.is_cooling else 'stronger')}, and hang "
            f"it no nearer than {length(change.lamp_distance_m, units)} or what its label says."
        )
    return (*steps, AFTER_A_CHANGE)
