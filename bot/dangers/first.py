"""What cannot wait is said first: the acts, whom to call, what was read, and then the answer.

Nothing here reads a sentence: what is said, left out or put side by side goes by the table alone.
The acts are in the asker's language, also where the answer behind them is not.
"""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import Protocol

from bot.brief import MOST_LINES, brief_of, fitted, phone_lines
from bot.brief import in_order as as_read
from bot.dangers.calls import call_sentences, short_calls, shortest_call
from bot.dangers.order import (
    MOST_ACTS,
    Ordered,
    in_order,
    merged,
    spoken_of,
    steps_of,
)
from bot.dangers.table import Hazard, HazardKind, hazard
from bot.facts import Say
from bot.language.shown import shown
from bot.reply import Alarm, Line, PageLink, Reply, Role, Row, SourceLine
from calc.sources import source

__all__ = ["first"]

_MOST_ACT_LINES = 4
# Where a phone has no room for them beside a hazard, these stand in the parts alone.
_GIVE_WAY = (Role.ASSUMED, Role.RANGE)
_MOST_QUOTED = 3
_PRESSING = (HazardKind.PEOPLE, HazardKind.STOP, HazardKind.VET)
# Questions that answer nothing themselves: what they say is only a way to another question.
_NO_ANSWER = ("ask", "help")
# What these say holds for anybody, not for the one who tells a danger.
_GENERAL_WORDS = ("guide",)
# What these answer is never what somebody does.
_IN_GENERAL = ("lamp",)
_Teller = Callable[[Say], str]


@dataclass(frozen=True, slots=True)
class Quoted:
    """Words of the asker."""

    text: str


@dataclass(frozen=True, slots=True)
class Short:
    """The short form of an act."""

    title: Say


@dataclass(frozen=True, slots=True)
class Lacks:
    """What a question still needs, by name."""

    names: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Read:
    """What was read as a hazard."""

    words: tuple[Say, ...]


@dataclass(frozen=True, slots=True)
class ReadOn:
    """Where the guide tells more."""

    page: str
    part: str


class Speaker(Protocol):
    """Who says messages: the voice of the asker's language."""

    @property
    def language(self) -> str:
        """Return the language that is spoken."""

    def text(self, say: Say) -> str:
        """Return a message in words."""


def first(
    reply: Reply,
    found: Iterable[Alarm],
    link: Callable[[str], PageLink],
    speaker: Speaker,
    heading: Callable[[str, str], str],
) -> Reply:
    """Return the reply behind what was heard in the words and what the answer itself found.

    ``link`` makes the link to a guide page, ``heading`` names a part of one as the asker reads it.
    """
    alarms = merged(found)
    if not alarms:
        return reply
    say = speaker.text
    told = in_order([alarm for alarm in alarms if not alarm.asked])
    pressing = [item for item in told if item.hazard.kind in _PRESSING]
    milder = [item for item in told if item.hazard.kind not in _PRESSING]
    asked = [hazard(alarm.key) for alarm in alarms if alarm.asked]
    # What a page says in general must not calm who has to act now.
    calming = bool(pressing) and reply.command in _GENERAL_WORDS
    rest = _left_of(reply, feeding=calming or _feeding(alarms, reply))
    lead = pressing or milder
    spoken = spoken_of(lead)
    rules = [row.asked for row in asked]
    said = [item.acts[0] for item in spoken] or rules[:MOST_ACTS]
    calls = call_sentences([(item.hazard, item in spoken) for item in pressing])
    read = _read([item.alarm for item in told if item in lead])
    brief = (
        _pressing_brief(spoken, pressing, rest, say)
        if pressing
        else _mild_brief([item.acts[0] for item in spoken], rules[:MOST_ACTS], rest, say)
    )
    steps = (*steps_of(pressing, spoken, calls), *_mild_steps(milder))
    later = tuple(rules) if told or len(rules) > 1 else ()
    leading = spoken[0].hazard if spoken else asked[0]
    shown_first = [item.hazard for item in told] + asked
    opening = " ".join(map(say, (*said, *calls, *read)))
    place = ReadOn(link(leading.page).title, heading(leading.page, leading.part))
    return rest.model_copy(
        update={
            "status": "ok" if pressing or not rest.answer else reply.status,
            "title": _title(reply, rest, spoken if pressing else [], milder, say),
            "answer": _joined(opening, rest, say, apart=bool(pressing)),
            "brief": brief,
            "rows": (_read_on(place, say), *_waited(rest, brief, say), *rest.rows),
            "why": (*((say(leading.why),) if pressing else ()), *rest.why),
            "steps": tuple(dict.fromkeys((*map(say, (*steps, *later)), *rest.steps))),
            "guide": _pages(shown_first, link, rest),
            "sources": _sources(shown_first, rest),
            "dangers": tuple(item.as_danger(say) for item in told),
            "alarms": tuple(alarms),
            "language": rest.language if rest.answer else speaker.language,
        }
    )


def _read(alarms: Sequence[Alarm]) -> tuple[Say, ...]:
    told = (a for a in alarms if a.words and hazard(a.key).kind is not HazardKind.NEVER)
    quoted = list(dict.fromkeys(shown(alarm.words) for alarm in told))[:_MOST_QUOTED]
    words = tuple(Say("door-quoted", Quoted(text)) for text in quoted)
    return (Say("door-read", Read(words)),) if words else ()


def _read_on(place: ReadOn, say: _Teller) -> Row:
    return Row(label=say(Say("door-label-read-on")), text=say(Say("door-read-on", place)))


def _pressing_brief(
    spoken: Sequence[Ordered], pressing: Sequence[Ordered], rest: Reply, say: _Teller
) -> tuple[Line, ...]:
    """Return the acts, whom to call and how soon, and then the bare answer with its range.

    The first hazard's first act stands in full, of the others the short form; more acts of the
    first one follow while a phone shows all of it at once. The rest stands in the parts.
    """
    ways = list(_ways(spoken, pressing, rest, say))
    lines = next((way for way in ways if phone_lines(way) <= MOST_LINES), ways[-1])
    for act in map(say, spoken[0].acts[1:]):
        more = [*lines, _line(Role.DANGER, act)]
        acts = [line for line in more if line.role is Role.DANGER]
        if phone_lines(acts) > _MOST_ACT_LINES or phone_lines(more) > MOST_LINES:
            break
        lines = more
    read = [_line(Role.ASSUMED, say(words)) for words in _read([x.alarm for x in pressing])]
    others = [line for line in _brief_left(rest) if line.role in _GIVE_WAY and line not in lines]
    # Without the answer's own words nothing of it stands alone.
    others = others if any(line in lines for line in _heads(rest)) else []
    return fitted(as_read([*lines, *read, *others]), ((role, 0) for role in _GIVE_WAY))


def _ways(
    spoken: Sequence[Ordered], pressing: Sequence[Ordered], rest: Reply, say: _Teller
) -> Iterator[list[Line]]:
    """Yield what is never left out, in ever fewer words; the answer is part of it."""
    heads = _heads(rest)
    ranged = [line for line in _brief_left(rest) if line.role is Role.RANGE][:1]
    called = [(item.hazard, item in spoken) for item in pressing]
    acts = [_line(Role.DANGER, say(Say("door-short", Short(x.title)))) for x in spoken]
    whole = [_line(Role.DANGER, say(spoken[0].acts[0])), *acts[1:]]
    every, once = (short_calls(called, once=x) for x in (False, True))
    any_harm = [shortest_call(called)] if every else []
    fuller = [(whole, every), (whole, once)]
    ways = [*fuller, (acts, once)]
    # A refusal is told in fewer words before anything is left out of the calls.
    short = _short(rest, say)
    in_turn = ((heads, ways), (short, ways), (short, [(acts, any_harm)]))
    for answer, tried in (([*heads, *ranged], fuller), *in_turn):
        for told, calls in tried:
            line = " ".join(map(say, calls))
            yield [*told, *([_line(Role.CALL, line)] if line else []), *answer]


def _heads(rest: Reply) -> list[Line]:
    """Return the answer itself, or why there is none."""
    return [line for line in _brief_left(rest) if line.role is Role.HEAD]


def _short(rest: Reply, say: _Teller) -> list[Line]:
    """Return the answer in the fewest words that it has: of a refusal its short form."""
    lacks = Say("door-lacks", Lacks(rest.lacking)) if rest.lacking else None
    short = say(lacks) if lacks else rest.short
    return [_line(Role.HEAD, short)] if short else _heads(rest)


def _waited(rest: Reply, brief: Sequence[Line], say: _Teller) -> Iterator[Row]:
    """Yield the answer, or why there is none, where the brief had no room for it."""
    if any(line not in brief for line in _heads(rest)):
        yield Row(label=_label(rest, say), text=rest.answer)


def _label(rest: Reply, say: _Teller) -> str:
    return say(Say("door-label-question")) if rest.status == "problem" else rest.title


def _mild_brief(
    acts: Sequence[Say], asked: Sequence[Say], rest: Reply, say: _Teller
) -> tuple[Line, ...]:
    """Return the answer with what is wrong as its first steps, or behind the calm rules.

    Of several calm rules the first stands in front, and others while there is room.
    """
    left = _brief_left(rest)
    role = Role.STEP if acts and rest.answer else Role.HEAD
    told = [_line(role, say(text)) for text in acts or asked]
    heads = _heads(rest)
    while len(told) > 1 and phone_lines([*told, *heads]) > MOST_LINES:
        told.pop()
    if phone_lines([*told, *heads]) > MOST_LINES:
        left = tuple(_short(rest, say))
    # Of our own acts none gives way, of the answer's steps all.
    steps = len(told) if role is Role.STEP else 0
    numbers = [(Role.RANGE, 1), (Role.ASSUMED, 0), (Role.RANGE, 0)]
    gives_way = [(Role.STEP, steps), *numbers] if steps else [*numbers, (Role.STEP, 0)]
    gives_way.append((Role.CAUTION, 0))
    return fitted(as_read([*told, *left]), gives_way)


def _mild_steps(milder: Sequence[Ordered]) -> Iterator[Say]:
    """Return the acts of what is wrong, each with whom to call."""
    for item in milder:
        yield from item.acts
        yield from call_sentences([(item.hazard, False)])


def _brief_left(rest: Reply) -> tuple[Line, ...]:
    return brief_of(rest) if rest.answer else ()


def _line(role: Role, text: str) -> Line:
    return Line(role=role, text=text)


def _feeding(alarms: Sequence[Alarm], reply: Reply) -> bool:
    """Say whether the answer would feed a hazard that was told in words, or only wished for."""
    found = {alarm.key for alarm in reply.alarms}
    for alarm in alarms:
        row = hazard(alarm.key)
        # An answer that found the hazard itself was made for it; a refusal feeds nothing.
        knows = alarm.key in found and row.kind is not HazardKind.NEVER
        calm = alarm.asked and (row.kind is HazardKind.PEOPLE or reply.command in _IN_GENERAL)
        if reply.command in row.silences and not knows and not calm:
            return reply.status == "ok"
    return False


def _left_of(reply: Reply, *, feeding: bool) -> Reply:
    """Return what of the reply may follow: nothing of a way to another question."""
    nothing = reply.status == "problem" and reply.command in _NO_ANSWER
    if not nothing and not feeding:
        return reply
    empty: tuple[()] = ()
    cleared = {"answer": "", "values": empty, "rows": empty, "table": None, "steps": empty}
    also = {"cautions": empty, "guide": empty, "sources": empty, "picture": None, "document": None}
    also |= {"brief": empty, "why": empty, "assumed": empty}
    return reply.model_copy(update=cleared | also | {"short": ""})


def _title(
    reply: Reply, rest: Reply, spoken: Sequence[Ordered], milder: Sequence[Ordered], say: _Teller
) -> str:
    if spoken:
        return say(spoken[0].title)
    if rest.answer and reply.status == "ok":
        return reply.title
    return say(milder[0].title if milder else Say("door-title-asked"))


def _joined(opening: str, rest: Reply, say: _Teller, *, apart: bool) -> str:
    if not rest.answer:
        return opening
    if not apart:
        return f"{opening} {rest.answer}"
    return f"{opening}\n\n{_label(rest, say)}: {rest.answer}"


def _pages(
    rows: Sequence[Hazard], link: Callable[[str], PageLink], rest: Reply
) -> tuple[PageLink, ...]:
    found = {row.page: link(row.page) for row in rows}
    return (*found.values(), *(page for page in rest.guide if page.slug not in found))


def _sources(rows: Sequence[Hazard], rest: Reply) -> tuple[SourceLine, ...]:
    keys = dict.fromkeys(key for row in rows for key in row.sources)
    lines = [
        SourceLine(key=entry.key, citation=entry.citation, kind=entry.kind.value)
        for entry in map(source, keys)
    ]
    return (*lines, *(line for line in rest.sources if line.key not in keys))
