"""What each change would make of the cool end: one line a change, and the room as it was told."""

from bot.answers.figures import percent, temperature, temperature_range, watts
from bot.answers.heat_parts import box_row
from bot.answers.temps_words import step_text, what_to_do
from bot.answers.verdicts import verdict_word
from bot.language.quantities import Units
from bot.queries.heat import TempsQuery
from bot.questions.heat.shared import box_asked
from bot.reply import Row, Table
from calc.heat.basking import MOST_DIMMING
from calc.heat.enclosure import Lid
from calc.heat.judge import Judgement, Step
from calc.heat.mending import Mend, Surroundings
from calc.quantities import Quantity

__all__ = ["around_rows", "first_to_do", "mends_table", "step_lines", "surroundings_asked"]

_LIDS = {Lid.SOLID: "a closed lid", Lid.PART_MESH: "a lid part mesh", Lid.FULL_MESH: "a mesh lid"}


def surroundings_asked(query: TempsQuery) -> Surroundings | None:
    """Return the room, and as far as told the box and its lamp; None where no room was told."""
    if query.room is None:
        return None
    box = None
    if query.enclosure is not None:
        box = box_asked(query.enclosure, query.material, query.lid)
    room_c = (query.room.low + query.room.high) / 2.0
    return Surroundings(room_c, box, None if query.watts is None else query.watts.low)


def around_rows(query: TempsQuery, judgement: Judgement, units: Units) -> tuple[Row, ...]:
    """Return how the room and the box were taken, or that a room may be what is too hot."""
    rows = []
    if query.room is not None:
        rows.append(Row(label="Room", text=temperature(query.room.low, units)))
    elif (high_c := _too_warm_past(judgement)) is not None:
        told = f"not said: if it is {temperature(high_c, units)} or more, only a cooler room helps"
        rows.append(Row(label="Room", text=f"{told} (give room:)"))
    if query.enclosure is not None:
        unsaid = tuple(x for x in ("material", "lid") if x not in query.model_fields_set)
        rows.append(box_row(query.enclosure, query.material, query.lid, unsaid))
    return tuple(rows)


def _too_warm_past(judgement: Judgement) -> float | None:
    """Return the high end that the cool end is past [degC], or None."""
    for finding in judgement.findings:
        if finding.place is Quantity.COOL_AIR and finding.is_high and finding.target is not None:
            return finding.target.high
    return None


def mends_table(judgement: Judgement, units: Units) -> Table | None:
    """Return what each change would make of the cool end, or None where nothing was reckoned."""
    if not judgement.mends:
        return None
    rows = tuple(
        (
            _change(mend, units),
            temperature_range(mend.cool_c.low, mend.cool_c.high, units),
            verdict_word(mend.judged),
        )
        for mend in judgement.mends
    )
    return Table(columns=("Change", "Cool end then", "That is"), rows=rows)


def first_to_do(judgement: Judgement, units: Units) -> str:
    """Return the first step as the end of a sentence, with its figure where one was reckoned."""
    mend = _mend_of(judgement, judgement.first)
    return what_to_do(judgement.first) if mend is None else _do(mend, units)


def step_lines(judgement: Judgement, units: Units) -> tuple[str, ...]:
    """Return the steps, with their figures where they were reckoned."""
    return tuple(_line(judgement, step, units) for step in judgement.steps)


def _line(judgement: Judgement, step: Step, units: Units) -> str:
    mend = _mend_of(judgement, step)
    return step_text(step) if mend is None else step_text(step, _do(mend, units))


def _mend_of(judgement: Judgement, step: Step) -> Mend | None:
    return next((mend for mend in judgement.mends if mend.step is step), None)


def _do(mend: Mend, units: Units) -> str:
    """Return the change as the end of a sentence."""
    amount = mend.amount
    if amount is None:
        return what_to_do(mend.step)
    match mend.step:
        case Step.COOLER_ROOM:
            return f"cool the room to about {temperature(amount, units)} or less"
        case Step.WARMER_ROOM:
            return f"warm the room to about {temperature(amount, units)}"
        case Step.LESS_POWER if amount > 1.0:
            return f"use a {watts(amount)} lamp instead"
        case Step.LESS_POWER if amount < 1.0 - MOST_DIMMING:
            return f"use a lamp of about {percent(amount)} of the watts instead, and no dimmer"
        case Step.MORE_POWER:
            return f"use a {watts(amount)} lamp, if its holder is marked for it"
        case Step.SECOND_WEAKER_LAMP:
            return f"add a second heat lamp of {watts(amount)} nearer to the middle"
        case _:
            return what_to_do(mend.step)


def _change(mend: Mend, units: Units) -> str:
    """Return the change as a cell of the table."""
    amount = mend.amount
    match mend.step:
        case Step.MORE_AIR | Step.LESS_AIR if amount is not None:
            return _LIDS[Lid(amount)]
        case Step.MOVE_LAMP_INWARD:
            return "the lamp further inward"
        case Step.COOLER_ROOM | Step.WARMER_ROOM if amount is not None:
            return f"a room of {temperature(amount, units)}"
        case Step.SECOND_WEAKER_LAMP if amount is not None:
            return f"{watts(amount)} more in the middle"
        case Step.LESS_POWER | Step.MORE_POWER if amount is not None and amount > 1.0:
            return f"a {watts(amount)} lamp"
        case _:
            return f"{percent(amount or 0.0)} of the watts"
