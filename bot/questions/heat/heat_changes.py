"""What each change would make of the cool end: one line a change. Words: ``mend.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.facts import Power, Say, Share, Temp, degrees, share, watts
from bot.layered import Table
from bot.queries.heat import TempsQuery
from bot.questions.heat.shared import box_asked
from calc.heat.enclosure import Lid
from calc.heat.mending import HeatChange, Surroundings
from calc.heat.steps import Step
from calc.judgement import Verdict

__all__ = ["HeatChangeTold", "heat_change_told", "heat_changes_table", "surroundings_asked"]


@dataclass(frozen=True, slots=True)
class HeatChangeTold:
    """One change with its room, lamp, share of the watts or lid, and the cool end it leaves."""

    step: Step
    room: Temp | None
    lamp: Power | None
    part: Share | None
    lid: Lid | None
    cool: Temp
    verdict: Verdict


def surroundings_asked(query: TempsQuery) -> Surroundings | None:
    """Return the room, and as far as told the box and its lamp; None where no room was told."""
    if query.room is None:
        return None
    box = None
    if query.enclosure is not None:
        box = box_asked(query.enclosure, query.material, query.lid)
    room_c = query.room.middle
    return Surroundings(room_c, box, None if query.watts is None else query.watts.low)


def heat_change_told(change: HeatChange) -> HeatChangeTold:
    """Return a change as facts."""
    amount, step = change.amount, change.step
    room = lamp = part = lid = None
    if amount is not None:
        if step in (Step.COOLER_ROOM, Step.WARMER_ROOM):
            room = degrees(amount)
        elif step in (Step.MORE_AIR, Step.LESS_AIR):
            lid = Lid(amount)
        elif step is Step.SECOND_WEAKER_LAMP or amount > 1.0:
            lamp = watts(amount)
        else:
            part = share(amount)
    return HeatChangeTold(
        step, room, lamp, part, lid, degrees(change.cool_c), change.judged.verdict
    )


def heat_changes_table(changes: tuple[HeatChangeTold, ...]) -> Table | None:
    """Return what each change would make of the cool end, or None where nothing was worked out."""
    if not changes:
        return None
    columns = (Say("mend-column-change"), Say("mend-column-cool"), Say("mend-column-verdict"))
    return Table(columns, tuple(tuple(_cells(change)) for change in changes))


def _cells(change: HeatChangeTold) -> Iterator[Say]:
    yield Say("mend-change", change)
    yield Say("mend-cool", change)
    yield Say.by("verdict", change.verdict)
