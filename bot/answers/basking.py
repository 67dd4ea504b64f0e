"""From one reading under the lamp to the wanted surface: move it, change it or dim it."""

from dataclasses import dataclass

from bot.answers.basking_words import (
    GUARD_WORDS,
    dimmer_row,
    dimming_row,
    lamp_rows,
    move_text,
)
from bot.answers.figures import difference, length, length_range, temperature, watts
from bot.answers.heat_parts import (
    AFTER_A_CHANGE,
    HEAT_CAUTIONS,
    WantedHeat,
    around,
    wanted_surface,
)
from bot.answers.linking import page_links, source_lines
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Units
from bot.preferences import Context
from bot.queries.heat import BaskingQuery
from bot.reply import Reply, Row, Table, Value
from calc.heat.basking import (
    SMALLEST_RISE_K,
    DimmerChange,
    DimmerVerdict,
    Reading,
    WattageStep,
    dimmer_for,
    distance_for,
    surface_at,
    wattage_steps,
    watts_for,
)
from calc.heat.guards import Guard, guards
from calc.uncertainty import Estimate
from calc.validity import OutsideModelError

__all__ = ["answer_basking"]

_GUIDE = ("the-basking-spot", "dimmers-and-wattage", "fire-and-electrical-safety")
_SOURCES = ("rise_scaling", "common_practice", "holder_mark", "fire_service_lamps")
# A gun is good to about 2 K: nearer to the aim than this there is nothing to gain.
_CLOSE_ENOUGH_K = 1.0
_GUN_K = 2.0


@dataclass(frozen=True, slots=True)
class _Change:
    """What could be done: a move, other lamps, a dimmer setting; and what trips a guard.

    ``lamps`` are for ``lamp_distance_m``: the present distance, or the least that is safe.
    """

    reading: Reading
    wanted: WantedHeat
    move: Estimate | None
    watts: Estimate | None
    lamps: tuple[WattageStep, ...]
    lamp_distance_m: float
    holder_w: float | None
    dimmer: DimmerChange | None
    guards: tuple[Guard, ...]

    @property
    def is_right(self) -> bool:
        """Whether the surface is as wanted already."""
        return abs(self.reading.surface_c - self.wanted.aim_c) <= _CLOSE_ENOUGH_K

    @property
    def may_move(self) -> bool:
        """Whether the lamp can be moved without coming nearer than its label allows."""
        return self.move is not None and Guard.NEARER_THAN_SAFE_DISTANCE not in self.guards

    @property
    def is_cooling(self) -> bool:
        """Whether the surface has to become cooler."""
        return self.wanted.aim_c < self.reading.surface_c


def answer_basking(query: BaskingQuery, context: Context) -> Reply:
    """Answer with the new distance, the lamps and the dimmer setting, each with its range."""
    wanted, units = wanted_surface(query.want, query.animal, context), context.units
    change = _worked_out(query, wanted)
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
        answer=" ".join((*_stops(change), _answer(change, units))),
        values=_values(change),
        rows=tuple(rows),
        table=_table(change, units),
        steps=_steps(change, units),
        cautions=HEAT_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines(
            (*wanted.sources, *_SOURCES, *(("lamp_rerating",) if change.dimmer else ()))
        ),
    )


def _worked_out(query: BaskingQuery, wanted: WantedHeat) -> _Change:
    if query.surface.low - query.air.low < SMALLEST_RISE_K:
        raise NotUnderstoodError(
            query.air.text,
            "air that is cooler than the surface under the lamp (check that the lamp is on and "
            "the air probe out of its beam)",
            "surface:92F air:80F",
            "air",
        )
    reading = Reading(query.surface.low, query.air.low, query.distance.low)
    reading.wanted_rise_k(wanted.aim_c)
    move = _move(reading, wanted)
    setting = 1.0 if query.dimmer is None else query.dimmer
    full = None if query.watts is None else query.watts.low
    now = None if full is None else full * setting
    safe = None if query.safe is None else query.safe.low
    holder = None if query.holder is None else query.holder.low
    away = max(reading.distance_m, safe or 0.0)
    cooling = wanted.aim_c < reading.surface_c
    dims = query.dimmer is not None or (full is not None and cooling)
    return _Change(
        reading,
        wanted,
        move,
        None if now is None else watts_for(reading, now, wanted.aim_c, away),
        () if now is None else wattage_steps(reading, now, wanted.aim_c, away),
        away,
        holder,
        dimmer_for(reading, wanted.aim_c, setting, full) if dims else None,
        guards(
            distance_m=reading.distance_m if move is None else move.high,
            safe_distance_m=safe,
            watts=full,
            holder_mark_w=holder,
            wood_surface_c=None if query.wood is None else query.wood.low,
            within_reach=query.reach == "yes",
        ),
    )


def _move(reading: Reading, wanted: WantedHeat) -> Estimate | None:
    """Return the new distance, or None where none that the model knows would do."""
    try:
        return distance_for(reading, wanted.aim_c)
    except OutsideModelError:
        return None


def _stops(change: _Change) -> tuple[str, ...]:
    """Return what has to be put right before anything else."""
    return tuple(GUARD_WORDS[guard] for guard in change.guards)


def _answer(change: _Change, units: Units) -> str:
    reading, wanted, move = change.reading, change.wanted, change.move
    aim = temperature(wanted.aim_c, units)
    if change.is_right:
        return (
            f"Leave the lamp where it is: {temperature(reading.surface_c, units)} is as close to "
            f"{aim} as an infrared gun can tell."
        )
    if move is not None and change.may_move:
        told = move_text(reading.distance_m, move, units)
        if wanted.low_c <= reading.surface_c <= wanted.high_c:
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


def _other_lamp(change: _Change, way: str) -> str:
    if not change.lamps:
        return f"a {way} lamp"
    fitting = min(change.lamps, key=lambda lamp: abs(lamp.surface_c.best - change.wanted.aim_c))
    named = f"a lamp of about {watts(fitting.watts)}"
    beyond = change.holder_w is not None and fitting.watts > change.holder_w
    return f"{named} in a holder that is marked for it" if beyond else named


def _rises(change: _Change, units: Units) -> str:
    now, then = change.reading.rise_k, change.wanted.aim_c - change.reading.air_c
    return (
        f"now {difference(now, units)}, wanted {difference(then, units)}: the lamp makes the "
        "rise, the room makes the rest, so I scale the rise and not the thermometer's number"
    )


def _values(change: _Change) -> tuple[Value, ...]:
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


def _table(change: _Change, units: Units) -> Table | None:
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


def _steps(change: _Change, units: Units) -> tuple[str, ...]:
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
    elif change.lamps:
        one = "Or change the lamp, as in the table. Do one, not both."
        steps.append(one if steps else "Change the lamp, as in the table.")
    return (*steps, AFTER_A_CHANGE)
