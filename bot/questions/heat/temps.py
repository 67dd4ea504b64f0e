"""What readings say, and the one thing to do first. Words: ``words/<language>/temps.ftl``."""

from collections.abc import Iterator
from dataclasses import replace

from bot.command import Command
from bot.drawing import Tone
from bot.facts import Say, Says, Temp
from bot.layered import Brief, Care, Layered, Row, Teller, Weight
from bot.queries.heat import TempsQuery
from bot.questions.heat.heat_changes import heat_changes_table
from bot.questions.heat.readings import HeatReading, Stand, do_said, doubts_said, step_said
from bot.questions.heat.shared import HEAT_CARE, Untold
from bot.questions.heat.temps_facts import Temps, temps
from bot.questions.shared import body_rows
from bot.reply import Picture
from calc.heat.judge import Step
from calc.heat.readings import Doubtful

__all__ = ["TEMPS", "Temps", "tell", "temps"]

_GUIDE = ("measuring-temperatures", "warm-end-and-cool-end", "the-basking-spot", "the-cool-end")
_LAMP_CHANGES = {
    Step.LOWER_LAMP,
    Step.RAISE_LAMP,
    Step.MORE_POWER,
    Step.LESS_POWER,
    Step.MOVE_LAMP_INWARD,
    Step.SECOND_WEAKER_LAMP,
}
_CHANGES = _LAMP_CHANGES | {Step.MORE_AIR, Step.LESS_AIR, Step.COOLER_ROOM, Step.WARMER_ROOM}
_NIGHTS = {Step.HEAT_THE_NIGHT, Step.CONSIDER_NIGHT_HEAT, Step.COOLER_NIGHT}
# What is done beside or with a hot lamp or heater: the guard is told in the brief.
_NEAR_HEAT = _LAMP_CHANGES | {Step.HEAT_THE_NIGHT, Step.LESS_AIR}
# These end in reading again by themselves.
_READINGS = {
    Step.WAIT_AND_READ_AGAIN,
    Step.CHECK_THE_RANGE,
    Step.MEASURE_AGAIN,
    Step.LEAVE_AS_IT_IS,
}
_WRONG = {Stand.TOO_LOW, Stand.TOO_HIGH}


def tell(facts: Temps) -> Layered:
    """Tell the verdict first, then what to do in order."""
    say = Says("temps", facts)
    head, lines = _head(facts, say)
    return Layered(
        command="temps",
        title=say("title"),
        brief=Brief(
            head=head, range=lines, assumed=_assumed(facts, say), steps=_short_steps(facts, say)
        ),
        steps=tuple(_steps(facts, say)),
        numbers=tuple(_numbers(facts, say)),
        table=heat_changes_table(facts.changes),
        why=(*_verdicts(facts), *doubts_said(facts.doubts), *facts.others),
        care=_care(facts),
        values=tuple(_values(facts)),
        guide=_GUIDE,
        sources=facts.sources,
        picture=lambda teller: _picture(facts, head, teller),
        set_up=facts.set_up,
        undecided=any(reading.stand is Stand.CANNOT_TELL for reading in facts.readings),
    )


def _picture(facts: Temps, head: Say, teller: Teller) -> Picture:
    from bot.questions.heat.gauges import BoxHead, box_picture

    stands = {reading.stand for reading in facts.readings}
    tone = Tone.DOUBTFUL if facts.readings else Tone.PLAIN
    if not facts.contradict and Doubtful.NOT_YET_A_READING not in facts.doubts:
        if stands & _WRONG:
            tone = Tone.BAD
        elif stands == {Stand.RIGHT}:
            tone = Tone.GOOD
    first, *_ = _short_steps(facts, Says("temps", facts))
    over = BoxHead(Say("gauge-title", facts.gauges), head, tone, first)
    return Picture.later(box_picture, facts.gauges, facts.set_up, over, (), teller)


def _verdicts(facts: Temps) -> tuple[Say, ...]:
    """Return the verdict on each reading; none where they contradict each other."""
    readings = () if facts.contradict else facts.readings
    return tuple(Say("heat-verdict", reading) for reading in readings)


def _head(facts: Temps, say: Says) -> tuple[Say, tuple[Say, ...]]:
    """Return the answer, and one line for each reading that it does not tell."""
    readings = facts.readings
    if not readings:
        return say("nothing-read"), ()
    if facts.contradict:
        return say("contradict"), (say("read"),)
    lines = tuple(Say("heat-line", reading) for reading in readings)
    if Doubtful.NOT_YET_A_READING in facts.doubts:
        return say("too-soon"), lines
    if facts.leaves_open:
        return say("open"), lines
    if len(readings) > 1 and all(reading.stand is Stand.RIGHT for reading in readings):
        return say("all-right"), lines
    worst = next((r for r in readings if r.stand in _WRONG), None)
    worst = worst or next((r for r in readings if r.stand is not Stand.RIGHT), readings[0])
    rest = [r for r in readings if r is not worst and r.stand is not Stand.RIGHT]
    right = (say("right"),) if worst.stand is not Stand.RIGHT and facts.right else ()
    return _verdict_of(worst), (*(Say("heat-line", reading) for reading in rest), *right)


def _verdict_of(reading: HeatReading) -> Say:
    return Say.by("temps-head", reading.stand, reading)


def _assumed(facts: Temps, say: Says) -> tuple[Say, ...]:
    unit = () if facts.mistaken is None else (say("mistaken-short"),)
    assumed = facts.changes and facts.box and facts.box.untold is not Untold.NOTHING
    box = (Say("box-assumed", facts.box),) if assumed else ()
    on = (say("lamp-time"),) if Doubtful.LAMP_TIME_NOT_SAID in facts.doubts else ()
    memory = (Say("memory-short"),) if facts.unchecked else ()
    return (*unit, *box, *on, *memory)


def _short_steps(facts: Temps, say: Says) -> tuple[Say, ...]:
    if facts.leaves_open:
        return (say("do-open"),)
    after = (say("do-after"),) if facts.first in _CHANGES else ()
    return (do_said(facts.steps[0]), *after)


def _steps(facts: Temps, say: Says) -> Iterator[Say]:
    if facts.leaves_open:
        yield from (say("step-open"), say("step-read-and-ask"))
        return
    yield from map(step_said, facts.steps)
    last = facts.steps[-1].step
    if any(each.step in _CHANGES for each in facts.steps):
        yield say("step-one-change")
    elif last in _NIGHTS:
        yield say("step-after-a-night")
    elif last not in _READINGS:
        yield say("step-read-and-ask")


def _numbers(facts: Temps, say: Says) -> Iterator[Row]:
    for reading in facts.readings:
        unjudged, judged = Say("heat-row-unjudged", reading), Say("heat-row", reading)
        yield Row(Say("heat-place", reading), unjudged if facts.contradict else judged)
    if facts.missing:
        yield Row(say("label-missing"), say("missing"))
    if facts.room is not None:
        yield Row(say("label-room"), say("room"))
    elif facts.warm_past is not None:
        yield Row(say("label-room"), say("room-untold"))
    if facts.box is not None:
        yield Row(Say("box-label"), Say("box-told", facts.box))
    if facts.mistaken is not None:
        yield Row(say("label-mistaken"), say("mistaken"))
    yield from body_rows(facts.bodies)


def _care(facts: Temps) -> tuple[Care, ...]:
    """Return the cautions of heat; the guard stands in the brief where heat is worked at."""
    if facts.first in _NEAR_HEAT:
        return HEAT_CARE
    return (replace(HEAT_CARE[0], weight=Weight.ALWAYS), *HEAT_CARE[1:])


def _values(facts: Temps) -> Iterator[tuple[str, Temp | None]]:
    for (name, wanted), reading in zip(facts.names, facts.readings, strict=True):
        yield from ((name, reading.read), (wanted, reading.wanted))


TEMPS = Command(
    name="temps",
    query=TempsQuery,
    facts=temps,
    tell=tell,
    examples=(
        "temps basking:98F cool:75F animal:bearded dragon",
        "temps basking:39C cool:29C warm:31C lamp_on:3 hours animal:bearded dragon",
        "temps basking:31C cool:24C measured:infrared gun and probe animal:corn snake",
    ),
    guide=("measuring-temperatures", "warm-end-and-cool-end", "the-cool-end"),
)
