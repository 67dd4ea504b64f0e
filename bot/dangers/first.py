"""What cannot wait is said first: the acts, whom to call, what was read, and then the answer.

Nothing here reads a sentence: what is said, left out or put side by side goes by the table alone.
The acts are in the asker's language, also where the answer behind them is not.
"""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from typing import Protocol

from bot.brief import brief_of, fitted, phone_lines
from bot.brief import in_order as as_read
from bot.dangers.calls import call_sentences
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
_GIVE_WAY = (Role.RANGE, Role.ASSUMED)
_MOST_QUOTED = 3
_PRESSING = (HazardKind.PEOPLE, HazardKind.STOP, HazardKind.VET)
# Questions that answer nothing themselves: what they say is only a way to another question.
_NO_ANSWER = ("ask", "help")
# What these say holds for anybody, not for the one who tells a danger.
_GENERAL_WORDS = ("guide",)
# What these answer is never what somebody does.
_IN_GENERAL = ("lamp",)
_Teller = Callable[[Say], str]
_BARE = (Role.DANGER, Role.CALL, Role.HEAD, Role.RANGE, Role.ASSUMED)


@dataclass(frozen=True, slots=True)
class Quoted:
    """Words of the asker."""

    text: str


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
    reply: Reply, heard: Iterable[Alarm], link: Callable[[str], PageLink], speaker: Speaker
) -> Reply:
    """Return the reply behind what was heard in the words and what the answer itself found.

    ``link`` makes the link to a guide page.
    """
    alarms = merged((*heard, *reply.alarms))
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
    said = [item.acts[0] for item in spoken] or [row.asked for row in asked[:MOST_ACTS]]
    calls = call_sentences([(item.hazard, item in spoken) for item in pressing])
    read = _read([item.alarm for item in told if item in lead])
    brief = (
        _pressing_brief(spoken, calls, read, rest, say)
        if pressing
        else _mild_brief(said, rest, say, acts=bool(milder))
    )
    steps = (*steps_of(pressing, spoken), *(act for item in milder for act in item.acts))
    later = tuple(row.asked for row in asked) if told else ()
    leading = spoken[0].hazard if spoken else asked[0]
    shown_first = [item.hazard for item in told] + asked
    opening = " ".join(map(say, (*said, *calls, *read)))
    return rest.model_copy(
        update={
            "status": "ok" if pressing or not rest.answer else reply.status,
            "title": _title(reply, rest, spoken if pressing else [], milder, say),
            "answer": _joined(opening, rest, say, apart=bool(pressing)),
            "brief": brief,
            "rows": (_read_on(leading, link, say), *rest.rows),
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


def _read_on(row: Hazard, link: Callable[[str], PageLink], say: _Teller) -> Row:
    place = ReadOn(link(row.page).title, row.part)
    return Row(label=say(Say("door-label-read-on")), text=say(Say("door-read-on", place)))


def _pressing_brief(
    spoken: Sequence[Ordered], calls: Sequence[Say], read: Sequence[Say], rest: Reply, say: _Teller
) -> tuple[Line, ...]:
    """Return the acts, whom to call, and then the bare answer; all else stands in the parts."""
    acts = [_line(Role.DANGER, say(item.acts[0])) for item in spoken]
    for act in spoken[0].acts[1:]:
        acts.append(_line(Role.DANGER, say(act)))
        if phone_lines(acts) > _MOST_ACT_LINES:
            acts.pop()
            break
    said = [*acts, *(_line(Role.CALL, say(call)) for call in calls)]
    said += [_line(Role.ASSUMED, say(words)) for words in read]
    said += [line for line in _brief_left(rest) if line.role in _BARE]
    return fitted(as_read(said), ((role, 0) for role in _GIVE_WAY))


def _mild_brief(said: Sequence[Say], rest: Reply, say: _Teller, *, acts: bool) -> tuple[Line, ...]:
    """Return the answer with what is wrong as its first steps, or behind the calm rules."""
    role = Role.STEP if acts and rest.answer else Role.HEAD
    lines = [*(_line(role, say(text)) for text in said), *_brief_left(rest)]
    if role is Role.HEAD:
        return fitted(as_read(lines), ((role, 0) for role in (*_GIVE_WAY, Role.STEP)))
    return fitted(as_read(lines), ((Role.STEP, len(said)), (Role.RANGE, 1), (Role.ASSUMED, 0)))


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
    return reply.model_copy(update=cleared | also)


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
    label = say(Say("door-label-question")) if rest.status == "problem" else rest.title
    return f"{opening}\n\n{label}: {rest.answer}"


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
