"""What cannot wait is said first: the acts, whom to call, what was read, and then the answer.

Nothing here reads a sentence: what is said, left out or put side by side goes by the table alone.
"""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass

from bot.brief import brief_of, in_order, phone_lines
from bot.dangers.calls import CALLS_A_VET, call_sentences, soonest_vet
from bot.dangers.table import Hazard, HazardKind, Later, Urgency, hazard, hazards
from bot.language.shown import shown
from bot.reply import Alarm, Danger, Line, PageLink, Reply, Role, Row, SourceLine
from calc.sources import source

__all__ = ["first"]

_MOST_ACTS = 3
_MOST_ACT_LINES = 4
_MOST_QUOTED = 3
_LATER_BY = 100
_PRESSING = (HazardKind.PEOPLE, HazardKind.STOP, HazardKind.VET)
# Questions that answer nothing themselves: what they say is only a way to another question.
_NO_ANSWER = ("ask", "help")
# What these answer is never what somebody does.
_IN_GENERAL = ("lamp",)
_SOONEST = tuple(Urgency)
_BARE = (Role.DANGER, Role.CALL, Role.HEAD, Role.RANGE, Role.ASSUMED)


@dataclass(frozen=True, slots=True)
class _Told:
    """A hazard as it was heard, and where it stands among the others."""

    hazard: Hazard
    alarm: Alarm
    order: float

    @property
    def urgency(self) -> Urgency:
        return _urgency(self.alarm)

    @property
    def _is_later(self) -> bool:
        return _SOONEST.index(self.urgency) > _SOONEST.index(self.hazard.urgency)

    @property
    def _instead(self) -> Later | None:
        """What is said in place of the row's own: there is more time, or UV and heat are one."""
        row, late = self.hazard, self._is_later
        if self.alarm.one_lamp:
            return (row.one_lamp_later if late else row.one_lamp) or (row.later if late else None)
        return row.later if late else None

    @property
    def title(self) -> str:
        return self._instead.title if self._instead else self.hazard.title

    @property
    def acts(self) -> tuple[str, ...]:
        return self._instead.do_now if self._instead else self.hazard.do_now

    @property
    def does(self) -> frozenset[str]:
        return self.hazard.covers | {self.hazard.act}

    def as_danger(self) -> Danger:
        """Return the hazard as the reply's data tell it."""
        call = self.hazard.call
        told = {name: getattr(call, name) for name in call.__slots__ if getattr(call, name)}
        return Danger(key=self.hazard.key, urgency=self.urgency.value, call=told)


def first(reply: Reply, heard: Iterable[Alarm], link: Callable[[str], PageLink]) -> Reply:
    """Return the reply behind what was heard in the words and what the answer itself found.

    ``link`` makes the link to a guide page.
    """
    alarms = _merged((*heard, *reply.alarms))
    if not alarms:
        return reply
    told = _in_order([alarm for alarm in alarms if not alarm.asked])
    pressing = [item for item in told if item.hazard.kind in _PRESSING]
    milder = [item for item in told if item.hazard.kind not in _PRESSING]
    asked = [hazard(alarm.key) for alarm in alarms if alarm.asked]
    rest = _left_of(reply, feeding=_feeding(alarms, reply))
    lead = pressing or milder
    spoken = _spoken(lead)
    said = [item.acts[0] for item in spoken] or [row.asked for row in asked[:_MOST_ACTS]]
    calls = call_sentences([(item.hazard, item in spoken) for item in pressing])
    read = _read([item.alarm for item in told if item in lead])
    answer = " ".join((*said, *calls, *read))
    brief = (
        _pressing_brief(spoken, calls, read, rest)
        if pressing
        else _mild_brief(said, rest, acts=bool(milder))
    )
    steps = (*_steps(pressing, spoken), *(act for item in milder for act in item.acts))
    later = tuple(row.asked for row in asked) if told else ()
    leading = spoken[0].hazard if spoken else asked[0]
    shown_first = [item.hazard for item in told] + asked
    return rest.model_copy(
        update={
            "status": "ok" if pressing or not rest.answer else reply.status,
            "title": _title(reply, rest, spoken if pressing else [], milder, asked),
            "answer": _joined(answer, rest, apart=bool(pressing)),
            "brief": brief,
            "rows": (_read_on(leading, link), *rest.rows),
            "why": (*((leading.why,) if pressing else ()), *rest.why),
            "steps": tuple(dict.fromkeys((*steps, *later, *rest.steps))),
            "guide": _pages(shown_first, link, rest),
            "sources": _sources(shown_first, rest),
            "dangers": tuple(item.as_danger() for item in told),
            "alarms": tuple(alarms),
        }
    )


def _urgency(alarm: Alarm) -> Urgency:
    return Urgency(alarm.urgency) if alarm.urgency else hazard(alarm.key).urgency


def _merged(alarms: Iterable[Alarm]) -> list[Alarm]:
    """Return each hazard once: what is there before what is only asked, and the sooner one."""
    found: dict[str, Alarm] = {}
    for alarm in alarms:
        known = found.setdefault(alarm.key, alarm)
        soonest = min(known, alarm, key=lambda a: (a.asked, _SOONEST.index(_urgency(a))))
        words = soonest.words or known.words or alarm.words
        found[alarm.key] = soonest.model_copy(update={"words": words})
    return list(found.values())


def _in_order(alarms: Sequence[Alarm]) -> list[_Told]:
    """Return the hazards, the one that speaks first before the others."""
    keys = {alarm.key for alarm in alarms}
    made = [
        Alarm(key=row.key, one_lamp=any(alarm.one_lamp for alarm in alarms))
        for row in hazards().values()
        if row.made_of and row.key not in keys and all(keys & part for part in row.made_of)
    ]
    told = [_placed(alarm, keys) for alarm in (*alarms, *made)]
    return sorted(told, key=lambda item: item.order)


def _placed(alarm: Alarm, keys: set[str]) -> _Told:
    row = hazard(alarm.key)
    causes = keys & row.made_of[0] if row.made_of else set()
    # The act for the victim also stops its cause, and so it comes before every act it covers.
    stopped = {key for key in keys if causes and hazard(key).kind is HazardKind.STOP}
    covered = {key for key in stopped if hazard(key).act in row.covers | {row.act}}
    order = min((row.rank, *(hazard(key).rank - 0.5 for key in causes | covered)))
    late = _SOONEST.index(_urgency(alarm)) > _SOONEST.index(row.urgency)
    return _Told(row, alarm, order + _LATER_BY * late)


def _spoken(told: Sequence[_Told]) -> list[_Told]:
    """Return the hazards whose first acts are said: none that another act does already."""
    spoken: list[_Told] = []
    done: set[str] = set()
    soon = soonest_vet([item.hazard for item in told])
    for item in told:
        # A vet that another hazard wants sooner is called once, and that soon.
        if item.hazard.act == CALLS_A_VET and item.hazard.call.soon != soon:
            continue
        if item.hazard.act not in done and len(spoken) < _MOST_ACTS:
            spoken.append(item)
            done |= item.does
    return spoken


def _steps(pressing: Sequence[_Told], spoken: Sequence[_Told]) -> Iterator[str]:
    """Return all the acts in their order, without what may not stand beside another hazard's."""
    muted = {key for item in pressing for key in item.hazard.mutes}
    for item in pressing:
        done = item not in spoken and _does(spoken, item)
        acts = item.acts[:1] if item.hazard.key in muted else item.acts
        yield from acts[1:] if done else acts
    for item in pressing[:1]:
        if item.hazard.key not in muted:
            yield from item.hazard.then


def _does(spoken: Sequence[_Told], item: _Told) -> bool:
    return any(item.hazard.act in other.does for other in spoken)


def _read(alarms: Sequence[Alarm]) -> tuple[str, ...]:
    told = (a for a in alarms if a.words and hazard(a.key).kind is not HazardKind.NEVER)
    quoted = dict.fromkeys(f"“{shown(alarm.words)}”" for alarm in told)
    words = list(quoted)[:_MOST_QUOTED]
    return (f"I read {' and '.join(words)} in your words.",) if words else ()


def _read_on(row: Hazard, link: Callable[[str], PageLink]) -> Row:
    return Row(label="Read on", text=f"{link(row.page).title}, the part “{row.part}”")


def _pressing_brief(
    spoken: Sequence[_Told], calls: Sequence[str], read: Sequence[str], rest: Reply
) -> tuple[Line, ...]:
    """Return the acts, whom to call, and then the bare answer; all else stands in the parts."""
    acts = [_line(Role.DANGER, item.acts[0]) for item in spoken]
    for act in spoken[0].acts[1:]:
        acts.append(_line(Role.DANGER, act))
        if phone_lines(acts) > _MOST_ACT_LINES:
            acts.pop()
            break
    said = [*acts, *(_line(Role.CALL, call) for call in calls)]
    said += [_line(Role.ASSUMED, words) for words in read]
    said += [line for line in _brief_left(rest) if line.role in _BARE]
    return in_order(said)


def _mild_brief(said: Sequence[str], rest: Reply, *, acts: bool) -> tuple[Line, ...]:
    """Return the answer with what is wrong as its first steps, or behind the calm rules."""
    role = Role.STEP if acts and rest.answer else Role.HEAD
    return in_order((*(_line(role, text) for text in said), *_brief_left(rest)))


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
    reply: Reply,
    rest: Reply,
    spoken: Sequence[_Told],
    milder: Sequence[_Told],
    asked: Sequence[Hazard],
) -> str:
    if spoken:
        return spoken[0].title
    if rest.answer and reply.status == "ok":
        return reply.title
    return milder[0].title if milder else asked[0].part


def _joined(first_words: str, rest: Reply, *, apart: bool) -> str:
    if not rest.answer:
        return first_words
    if rest.status == "problem":
        between = "\n\nYour question: " if apart else " "
        return f"{first_words}{between}{rest.answer}"
    return (
        f"{first_words}\n\n{rest.title}: {rest.answer}" if apart else f"{first_words} {rest.answer}"
    )


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
