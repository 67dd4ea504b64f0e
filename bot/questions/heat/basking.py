"""From one reading under the lamp to the surface to aim for. Words: ``basking.ftl``."""

from collections.abc import Iterator

from bot.command import Command
from bot.facts import Say, Says
from bot.layered import Brief, Care, Layered, Row, Table, Weight
from bot.queries.heat import BaskingQuery
from bot.questions.heat.basking_facts import Act, Basking, Dimming, LampChoice, basking
from bot.questions.heat.guards import FIRST_PUT_RIGHT, Tripped, guard_care, tripped
from bot.questions.heat.pictured import pictured
from bot.questions.heat.seen import Pictured, Seen
from bot.questions.heat.shared import AFTER_A_CHANGE, HEAT_CARE
from bot.questions.heat.warmth import aim_doubts, aim_rows
from calc.heat.basking import DimmerVerdict
from calc.heat.guards import Guard
from calc.judgement import Verdict
from calc.quantities import Quantity

__all__ = ["BASKING", "tell"]

_VERDICTS = {
    Act.LEAVE: Verdict.FINE,
    Act.INSIDE: Verdict.FINE,
    Act.RAISE: Verdict.HIGH,
    Act.SMALLER: Verdict.HIGH,
    Act.LOWER: Verdict.LOW,
    Act.STRONGER: Verdict.LOW,
}
_GUIDE = ("the-basking-spot", "dimmers-and-wattage", "fire-and-electrical-safety")


def tell(facts: Basking) -> Layered:
    """Tell what has to be put right, or else the move, the lamp or the dimmer."""
    return _stopped(facts) if facts.stopped else _told(facts)


def _stopped(facts: Basking) -> Layered:
    say = Says("basking", facts)
    first = [tripped(guard) for guard in facts.guards if guard in FIRST_PUT_RIGHT]
    stops = [_stop(one) for one in first]
    return Layered(
        command="basking",
        status="problem",
        title=say("stopped-title"),
        brief=Brief(
            head=stops[0],
            range=(*stops[1:], say("stopped-range")),
            steps=(_first(first[0]), say("do-again")),
        ),
        steps=(*(_first(one) for one in first), say("step-again")),
        numbers=(Row(say("label-rise"), say("rise-told")), *aim_rows(facts.aim)),
        why=facts.aim.others,
        care=HEAT_CARE,
        values=(("basking_surface", facts.surface), ("basking_surface_wanted", facts.aimed)),
        guide=_GUIDE,
        sources=facts.sources,
        alarms=facts.alarms,
    )


def _stop(facts: Tripped) -> Say:
    return Say.by("guard-stop", facts.guard, facts)


def _first(facts: Tripped) -> Say:
    return Say.by("guard-first", facts.guard, facts)


def _told(facts: Basking) -> Layered:
    say = Says("basking", facts)
    lowers = (facts.act is Act.LOWER, facts.act is Act.STRONGER)
    near = (Care(Say("basking-care-label"), Say("basking-care-label-short"), Weight.STEP),)
    return Layered(
        command="basking",
        title=say("title"),
        brief=_brief(facts, say),
        steps=tuple(_steps(facts, say)),
        numbers=tuple(_numbers(facts, say)),
        table=_table(facts, say),
        why=(say("why-rise"), say("why-range"), *facts.aim.others),
        care=(*guard_care(facts.guards), *(near if any(lowers) else ()), *HEAT_CARE),
        values=(
            ("basking_surface", facts.surface),
            ("basking_surface_wanted", facts.aimed),
            ("lamp_distance", facts.move),
            ("lamp_power", facts.power),
            ("dimmer_setting", facts.dimming.setting if facts.dimming else None),
        ),
        guide=_GUIDE,
        sources=facts.sources,
        alarms=facts.alarms,
        picture=pictured(_seen(facts, _brief(facts, say).head)),
    )


def _seen(facts: Basking, head: Say) -> Pictured:
    say = Says("basking", facts)
    moved = facts.moved
    place = Seen(
        Quantity.BASKING_SURFACE,
        Say("gauge-place-basking_surface"),
        say("picture-aim"),
        say("picture-read"),
        _VERDICTS[facts.act],
        ends=(facts.aimed.low, facts.aimed.high),
        met=(facts.surface.low, facts.surface.high),
    )
    by_m = 0.0
    if moved is not None and facts.act in (Act.RAISE, Act.LOWER):
        by_m = moved.high - facts.distance.best
    return Pictured(say("title"), head, (place,), facts.aim.animal, facts.distance, by_m)


def _brief(facts: Basking, say: Says) -> Brief:
    heads = [_stop(tripped(Guard.NEARER_THAN_SAFE_DISTANCE))] if facts.guards else []
    if facts.turn_up:
        heads.append(say("turn-up"))
    heads += [say.by("head", facts.act), say.by("range", facts.act)]
    return Brief(
        head=heads[0],
        range=tuple(heads[1:]),
        assumed=tuple(aim_doubts(facts.aim)),
        steps=tuple(_first_steps(facts, say)),
    )


def _first_steps(facts: Basking, say: Says) -> Iterator[Say]:
    if facts.act is Act.LEAVE:
        yield say("do-leave")
        return
    if facts.moved is None:
        yield say("do-hang")
    yield say("do-measure")


def _steps(facts: Basking, say: Says) -> Iterator[Say]:
    if facts.turn_up:
        yield say("step-turn-up")
    if facts.act is Act.LEAVE:
        yield say("step-leave")
        return
    within = facts.dimming is not None and facts.dimming.verdict is DimmerVerdict.WITHIN
    if facts.moved is not None:
        yield say("step-set")
    if within:
        yield say("step-dim")
    elif facts.fits:
        yield say("step-or-change" if facts.moved else "step-change")
    elif facts.moved is None:
        yield say("step-fit")
    yield AFTER_A_CHANGE


def _numbers(facts: Basking, say: Says) -> Iterator[Row]:
    if facts.moved is not None:
        yield Row(say("label-move"), say("move-told"))
    elif facts.act is not Act.LEAVE:
        yield Row(say("label-other"), say("other-told"))
    yield Row(say("label-rise"), say("rise-told"))
    yield from aim_rows(facts.aim)
    if facts.dimming is not None:
        yield _dimmer_row(facts.dimming)
        if facts.dimming.dimmed:
            yield Row(Say("basking-label-dimming"), Say("basking-dimming-told", facts.dimming))


def _dimmer_row(facts: Dimming) -> Row:
    return Row(Say("basking-label-dimmer"), Say.by("basking-dimmer", facts.verdict, facts))


def _table(facts: Basking, say: Says) -> Table | None:
    rows = [*map(_lamp_row, facts.lamps)]
    if facts.moved is not None:
        rows.insert(0, (say("cell-move"), say("cell-at-start"), say("cell-start")))
    if not rows:
        return None
    columns = (say("column-change"), say("column-surface"), say("column-so"))
    return Table(columns, tuple(rows))


def _lamp_row(facts: LampChoice) -> tuple[Say, Say, Say]:
    judged = Say.by("verdict", facts.verdict)
    so = Say("basking-cell-beyond") if facts.beyond else judged
    return Say("basking-cell-lamp", facts), Say("basking-cell-expected", facts), so


BASKING = Command(
    name="basking",
    query=BaskingQuery,
    facts=basking,
    tell=tell,
    examples=(
        "basking surface:92F air:80F distance:10in want:103F",
        "basking surface:44C air:27C distance:25cm watts:75W animal:bearded dragon",
    ),
    guide=("the-basking-spot", "dimmers-and-wattage"),
)
