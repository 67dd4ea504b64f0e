"""A case as its keeper and the helpers see it. Words: ``words/<language>/cases.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from bot.facts import Length, Say, Says, Share, Temp, degrees, metres, share
from bot.layered import Brief, Layered, Row, Table
from bot.preferences import Context
from bot.questions.saved.boxes import last_alarms
from bot.questions.saved.reading import ReadOnce, What, read_once, read_said, what_said
from bot.questions.saved.setup import setup_rows
from bot.questions.saved.sheet import CareSheet, sheet_of, sheet_picture
from bot.reply import Alarm
from bot.saved.cases import REST, Advice, Advised, Case
from bot.saved.keeper import KEPT_AS, Reading

__all__ = ["AdviceTold", "CaseSeen", "advice_told", "case_seen", "tell_case"]


@dataclass(frozen=True, slots=True)
class AdviceTold:
    """What was advised: the figure of its kind is there; ``day`` is when, ``to_do``: not done."""

    what: Advised
    at: Length | None
    percent: Share | None
    temp: Temp | None
    place: What | None
    day: date
    to_do: bool

    @property
    def said(self) -> Say:
        """Return it as an order."""
        return Say.by("cases-advice", self.what, self)

    @property
    def where(self) -> Say | None:
        """Return the place that it is about."""
        return None if self.place is None else Say.by("home-what", self.place)


def advice_told(one: Advice, *, to_do: bool) -> AdviceTold:
    """Return an advice as facts."""
    value = one.value
    return AdviceTold(
        what=one.what,
        at=metres(value) if value is not None and one.what is Advised.HANG else None,
        percent=share(value / 100.0) if value is not None and one.what is Advised.TUBE else None,
        temp=degrees(value) if value is not None and one.what is Advised.BRING else None,
        place=What[one.of.name] if one.of is not None else None,
        day=one.day,
        to_do=to_do,
    )


@dataclass(frozen=True, slots=True)
class _Since:
    """A kind of reading when the case was shared, and since; None: not read."""

    earlier: ReadOnce | None
    later: ReadOnce | None


@dataclass(frozen=True, slots=True)
class CaseSeen:
    """A case, for its keeper (``own``) or for a helper; ``asleep``: the helpers have moved."""

    number: int
    name: str
    own: bool
    asleep: bool
    opened: date
    until: date
    advice: tuple[AdviceTold, ...]
    readings: tuple[_Since, ...]
    sheet: CareSheet
    alarms: tuple[Alarm, ...]

    @property
    def count(self) -> int:
        """Return how much was advised."""
        return len(self.advice)

    @property
    def undone(self) -> int:
        """Return how much of it is not done yet."""
        return sum(one.to_do for one in self.advice)

    @property
    def next(self) -> Say | None:
        """Return the newest that is not done yet; a vet goes before all else."""
        undone = [one for one in self.advice if one.to_do]
        vets = [one for one in undone if one.what is Advised.VET]
        return (vets or undone)[-1].said if undone else None


def case_seen(case: Case, context: Context, *, own: bool, asleep: bool = False) -> CaseSeen:
    """Return a case as facts."""
    box = case.enclosure
    return CaseSeen(
        number=case.number,
        name=box.name,
        own=own,
        asleep=asleep,
        opened=case.opened.date(),
        until=(case.moved + REST).date(),
        advice=tuple(advice_told(one, to_do=one.is_open(box, case.before)) for one in case.advice),
        readings=tuple(_readings(case)),
        sheet=sheet_of(box, context),
        alarms=last_alarms(box, context),
    )


def _readings(case: Case) -> Iterator[_Since]:
    for of in KEPT_AS:
        before = next((r for r in case.before if r.of is of), None)
        of_kind = [r for r in case.enclosure.readings if r.of is of]
        newest = max(of_kind, key=lambda r: r.day, default=None)
        since = None if newest == before else newest
        if before or since:
            yield _Since(_read(before), _read(since))


def _read(reading: Reading | None) -> ReadOnce | None:
    return None if reading is None else read_once(reading)


def tell_case(command: str, facts: CaseSeen) -> Layered:
    """Tell what is open, what was advised, and what was read before and since."""
    say = Says("cases", facts)
    sheet = facts.sheet
    return Layered(
        command=command,
        title=say("title"),
        brief=Brief(
            head=say("asleep" if facts.asleep else "undone"),
            range=(*([say("next")] if facts.next else []), say("until")),
            steps=(say("do-keeper" if facts.own else "do-helper"),),
        ),
        steps=tuple(_steps(facts, say)),
        numbers=(
            *map(_advised, facts.advice),
            *setup_rows(sheet.setup),
            *sheet.standing,
        ),
        table=_table(facts) if facts.readings else None,
        why=(say("whose"),),
        guide=("asking-helpers",),
        picture=None
        if sheet.gauges is None
        else lambda teller: sheet_picture(sheet, teller, say("over")),
        set_up=sheet.set_up,
        alarms=facts.alarms,
    )


def _advised(one: AdviceTold) -> Row:
    return Row(Say("cases-label-advice", one), Say("cases-advised", one))


def _steps(facts: CaseSeen, say: Says) -> Iterator[Say]:
    if facts.own:
        yield say("step-read")
        yield say("step-end-own")
    else:
        yield say("step-advise")
        yield say("step-end")


def _table(facts: CaseSeen) -> Table:
    return Table(
        columns=(Say("cases-column-what"), Say("cases-column-before"), Say("cases-column-since")),
        rows=tuple(_cells(one) for one in facts.readings),
    )


def _cells(one: _Since) -> tuple[Say, Say, Say]:
    told = one.later or one.earlier
    assert told is not None
    unread = Say("cases-unread")
    return (
        what_said(told),
        read_said(one.earlier) if one.earlier else unread,
        read_said(one.later) if one.later else unread,
    )
