"""What each change would make of the cool end: one line a change. Words: ``mend.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.facts import Power, Say, Share, Temp, degrees, share, watts
from bot.layered import Table
from bot.queries.heat import TempsQuery
from bot.questions.heat.shared import box_asked
from calc.heat.enclosure import Lid
from calc.heat.mending import Mend, Surroundings
from calc.heat.steps import Step
from calc.judgement import Verdict

__all__ = ["MendTold", "mend_told", "mends_table", "surroundings_asked"]


@dataclass(frozen=True, slots=True)
class MendTold:
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
    room_c = (query.room.low + query.room.high) / 2.0
    return Surroundings(room_c, box, None if query.watts is None else query.watts.low)


def mend_told(mend: Mend) -> MendTold:
    """Return a change as facts."""
    amount, step = mend.amount, mend.step
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
    return MendTold(step, room, lamp, part, lid, degrees(mend.cool_c), mend.judged.verdict)


def mends_table(mends: tuple[MendTold, ...]) -> Table | None:
    """Return what each change would make of the cool end, or None where nothing was worked out."""
    if not mends:
        return None
    columns = (Say("mend-column-change"), Say("mend-column-cool"), Say("mend-column-verdict"))
    return Table(columns, tuple(tuple(_cells(mend)) for mend in mends))


def _cells(mend: MendTold) -> Iterator[Say]:
    yield Say("mend-change", mend)
    yield Say("mend-cool", mend)
    yield Say.by("verdict", mend.verdict)
