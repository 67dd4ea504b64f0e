"""Cases as the helpers of a group see them: listed, looked at, answered. Words: ``cases.ftl``.

A helper is whoever asks in the channel that ``server helpers`` named, as Discord's own settings
let people in there, and every moderator; moderators alone where none was named.
"""

from dataclasses import dataclass
from datetime import date

from bot.command import Command
from bot.desk import Desk
from bot.facts import Name, Say, Says
from bot.layered import Brief, Layered, Table
from bot.preferences import Context
from bot.queries.cases import AdviseQuery, CaseNumberQuery, CasesQuery
from bot.questions.saved.case_advice import advice_of
from bot.questions.saved.case_told import AdviceTold, CaseSeen, advice_told, case_seen, tell_case
from bot.questions.saved.unable import server_of, unable
from bot.questions.shared import name_of
from bot.refusal import RefusedError
from bot.saved.cases import Case

__all__ = [
    "CASES_ADVISE",
    "CASES_END",
    "CASES_LIST",
    "CASES_SHOW",
    "CaseAdvised",
    "CaseEnded",
    "CaseLine",
    "CasesListed",
    "advise",
    "end",
    "list_",
    "show",
    "tell_advise",
    "tell_end",
    "tell_list",
    "tell_show",
]

_MOST_LINES = 25


@dataclass(frozen=True, slots=True)
class CaseLine:
    """A case in the list."""

    number: int
    name: str
    animal: Name | None
    count: int
    undone: int
    moved: date


@dataclass(frozen=True, slots=True)
class CasesListed:
    """All cases of a group, those first in which something moved last."""

    lines: tuple[CaseLine, ...]
    all: int

    @property
    def count(self) -> int:
        """Return how many there are."""
        return self.all

    @property
    def unanswered(self) -> int:
        """Return in how many nothing was advised yet."""
        return sum(not line.count for line in self.lines)


async def _channel(desk: Desk, command: str) -> tuple[int, int | None]:
    """Return the group and the channel of its helpers, or refuse who is none of them."""
    server = server_of(desk, command)
    channel = (await desk.store.servers.settings(server)).helpers
    here = channel is not None and channel in (desk.channel, desk.parent)
    if not (desk.moderator or here):
        raise unable(command, Say("cases-no-right"), example="mine case")
    return server, channel


async def list_(query: CasesQuery, context: Context, desk: Desk) -> CasesListed:
    """Find the cases that are shared with the helpers here."""
    cases = await desk.store.cases.of_group(*await _channel(desk, "cases list"))
    lines = tuple(map(_line, sorted(cases, key=lambda case: case.moved, reverse=True)))
    return CasesListed(lines[:_MOST_LINES], len(lines))


def _line(case: Case) -> CaseLine:
    animal = case.enclosure.setup.animal
    return CaseLine(
        number=case.number,
        name=case.enclosure.name,
        animal=name_of(animal) if animal else None,
        count=len(case.advice),
        undone=len(case.open_advice),
        moved=case.moved.date(),
    )


def tell_list(facts: CasesListed) -> Layered:
    """Tell how many there are, then which."""
    say = Says("cases", facts)
    return Layered(
        command="cases list",
        title=say("list-title"),
        brief=Brief(head=say("list-head"), range=(say("list-private"),)),
        steps=(Say("cases-list-step", facts.lines[0]),) if facts.lines else (),
        table=Table(
            (
                Say("cases-column-number"),
                Say("cases-column-box"),
                Say("cases-column-undone"),
                Say("cases-column-moved"),
            ),
            tuple(_cells(line) for line in facts.lines),
        )
        if facts.lines
        else None,
        guide=("asking-helpers",),
    )


def _cells(line: CaseLine) -> tuple[Say, ...]:
    say = Says("cases", line)
    return say("line-number"), say("line-box"), say("line-undone"), say("line-moved")


async def _case(desk: Desk, number: int, command: str) -> Case:
    cases = await desk.store.cases.of_group(*await _channel(desk, command))
    found = next((case for case in cases if case.number == number), None)
    if found is None:
        raise _no_such(number, cases, command)
    return found


def _no_such(number: int, cases: tuple[Case, ...], command: str) -> RefusedError:
    known = f"{command} number:{cases[-1].number}" if cases else "cases list"
    return unable(command, Say("cases-no-such", CaseEnded(number, "")), example=known)


async def show(query: CaseNumberQuery, context: Context, desk: Desk) -> CaseSeen:
    """Find one case."""
    return case_seen(await _case(desk, query.number, "cases show"), context, own=False)


def tell_show(facts: CaseSeen) -> Layered:
    """Tell a case to a helper."""
    return tell_case("cases show", facts)


@dataclass(frozen=True, slots=True)
class CaseAdvised:
    """What was advised in a case just now."""

    number: int
    name: str
    advice: tuple[AdviceTold, ...]

    @property
    def count(self) -> int:
        """Return how much was advised."""
        return len(self.advice)

    @property
    def first(self) -> Say:
        """Return the first of it."""
        return self.advice[0].said


async def advise(query: AdviseQuery, context: Context, desk: Desk) -> CaseAdvised:
    """Keep what a helper advises, and have its keeper told."""
    case = await _case(desk, query.number, "cases advise")
    advice = advice_of(query, case.enclosure, desk.now.date(), context)
    where = case.server, case.channel
    kept = await desk.store.cases.advise(*where, case.number, desk.keeper, advice, desk.now)
    if kept is None:
        raise _no_such(query.number, (), "cases advise")
    told = tuple(advice_told(one, to_do=True) for one in advice)
    return CaseAdvised(case.number, case.enclosure.name, told)


def tell_advise(facts: CaseAdvised) -> Layered:
    """Tell what its keeper is told."""
    say = Says("cases", facts)
    return Layered(
        command="cases advise",
        title=say("advised-title"),
        brief=Brief(head=say("advised-head"), range=tuple(one.said for one in facts.advice)),
        steps=(say("advised-step"),),
        why=(say("advised-why"),),
        guide=("asking-helpers",),
    )


@dataclass(frozen=True, slots=True)
class CaseEnded:
    """A case that was ended."""

    number: int
    name: str


async def end(query: CaseNumberQuery, context: Context, desk: Desk) -> CaseEnded:
    """End a case: all of it goes, and its keeper is told."""
    case = await _case(desk, query.number, "cases end")
    name = await desk.store.cases.end(case.server, case.channel, case.number, desk.now)
    if name is None:
        raise _no_such(query.number, (), "cases end")
    return CaseEnded(case.number, name)


def tell_end(facts: CaseEnded) -> Layered:
    """Tell that it is gone."""
    say = Says("cases", facts)
    return Layered(
        command="cases end",
        title=say("ended-title"),
        brief=Brief(head=say("ended"), range=(say("ended-told"),)),
        steps=(say("ended-step"),),
    )


CASES_LIST = Command(
    name="cases list",
    query=CasesQuery,
    stored=list_,
    tell=tell_list,
    examples=("cases list",),
    guide=("asking-helpers",),
)

CASES_SHOW = Command(
    name="cases show",
    query=CaseNumberQuery,
    stored=show,
    tell=tell_show,
    examples=("cases show number:1",),
    guide=("asking-helpers",),
)

CASES_ADVISE = Command(
    name="cases advise",
    query=AdviseQuery,
    stored=advise,
    tell=tell_advise,
    examples=("cases advise number:1 measure:cool", "cases advise number:1 distance:16in tube:new"),
    guide=("asking-helpers",),
)

CASES_END = Command(
    name="cases end",
    deletes=True,
    query=CaseNumberQuery,
    stored=end,
    tell=tell_end,
    examples=("cases end number:1",),
    guide=("asking-helpers",),
)
