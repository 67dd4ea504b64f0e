"""Whom to call and how soon, in sentences: the soonest of all hazards, each person once."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from bot.dangers.table import Hazard, Soon, Who
from bot.facts import Say

__all__ = [
    "CALLS_A_VET",
    "call_sentences",
    "short_calls",
    "shortest_call",
    "soonest_vet",
    "told_call",
]

_MOST = 3
# The form of the words that a phone shows at a glance.
_BRIEF = "brief"
_SOON = tuple(Soon)
CALLS_A_VET = "vet"
"""The act that is itself the call to a vet."""


@dataclass(frozen=True, slots=True)
class Called:
    """What a sentence about a call is made of: the call itself, on what it depends, a note."""

    act: Say
    condition: Say | None = None
    note: Say | None = None


@dataclass(frozen=True, slots=True)
class AnyHarm:
    """Who is called at any sign of harm, each with how soon."""

    acts: tuple[Say, ...]


@dataclass(frozen=True, slots=True)
class _Wanted:
    who: Who
    soon: Soon
    condition: str = ""
    note: str = ""

    @property
    def haste(self) -> int:
        return _SOON.index(self.soon)

    def act(self, *form: str) -> Say:
        """Return who is called and how soon."""
        return Say.of("call", *form, "act", self.who.name.lower(), self.soon.name.lower())

    def sentence(self, sooner: "_Wanted | None", *form: str) -> Say:
        """Return the sentence; ``sooner`` is what is wanted without any condition."""
        condition = Say.of("call", *form, "if", self.condition) if self.condition else None
        note = Say.of("call-note", self.note) if self.note else None
        called = Called(self.act(*form), condition, note)
        if sooner and sooner.haste < self.haste:
            return Say.of("call", *form, "enough", self.soon.name.lower(), facts=called)
        if condition:
            return Say.of("call", *form, "when-note" if note else "when", facts=called)
        return Say.of("call", *form, "noted" if note else "plain", facts=called)


def told_call(row: Hazard) -> dict[str, str | Say]:
    """Return whom a hazard calls, as the reply's data tell it: its conditions are words."""
    call = row.call
    told = {name: getattr(call, name) for name in call.__slots__ if getattr(call, name)}
    for name in told.keys() & {"only_if", "else_if", "also_if"}:
        told[name] = Say.of("call-if", told[name])
    if call.note:
        told["note"] = Say.of("call-note", call.note)
    return told


def soonest_vet(rows: Sequence[Hazard]) -> Soon | None:
    """Return how soon a vet is to be called without any condition, or nothing."""
    calls = [row.call for row in rows if row.call.who is Who.VET and not row.call.only_if]
    return min((call.soon for call in calls), key=_SOON.index, default=None)


def call_sentences(told: Sequence[tuple[Hazard, bool]]) -> list[Say]:
    """Return whom to call; each hazard comes with whether its first act was said already."""
    every, surely = _every(told)
    return [want.sentence(surely.get(want.who)) for want in every]


def short_calls(told: Sequence[tuple[Hazard, bool]], *, once: bool = False) -> list[Say]:
    """Return the same in the short form that a phone shows beside the acts and the answer.

    ``once``: of what depends on a sign, each person only as soon as the soonest hazard wants it.
    """
    every, surely = _every(told)
    maybe = {want.who: want for want in reversed(every) if want.condition}
    if once:
        every = [want for want in every if not want.condition or maybe[want.who] is want]
    return [want.sentence(surely.get(want.who), _BRIEF) for want in every[:_MOST]]


def shortest_call(told: Sequence[tuple[Hazard, bool]]) -> Say:
    """Return everybody who is to be called in one sentence, at any sign of harm.

    Where they are many, who mends what is unplugged stands in the steps alone.
    """
    every, _ = _every(told)
    soonest = {want.who: want for want in reversed(every)}
    if len(soonest) >= _MOST:
        soonest.pop(Who.ELECTRICIAN, None)
    acts = (want.act(_BRIEF) for want in every if soonest.get(want.who) is want)
    return Say("call-brief-any", AnyHarm(tuple(acts)))


def _every(told: Sequence[tuple[Hazard, bool]]) -> tuple[list[_Wanted], dict[Who, _Wanted]]:
    """Return what is wanted, the soonest first, and what of it is wanted without condition."""
    wanted = [want for row, _ in told for want in _wanted(row)]
    said = [
        _Wanted(Who.VET, row.call.soon)
        for row, spoken in told
        if spoken and CALLS_A_VET in (row.act, *row.covers)
    ]
    surely: dict[Who, _Wanted] = {}
    for want in wanted:
        if not want.condition:
            known = surely.get(want.who)
            surely[want.who] = min(known, want, key=lambda w: w.haste) if known else want
    spoken_soon = min((want.haste for want in said), default=len(_SOON))
    kept = [want for who, want in surely.items() if who is not Who.VET or want.haste < spoken_soon]
    maybe: dict[tuple[Who, Soon], _Wanted] = {}
    for want in wanted:
        certain = surely.get(want.who)
        alone = len(told) == 1
        if want.condition and (not certain or want.haste < certain.haste or alone):
            maybe.setdefault((want.who, want.soon), want)
    every = sorted((*kept, *maybe.values()), key=lambda w: (w.haste, w.who is not Who.EMERGENCY))
    return every, surely


def _wanted(row: Hazard) -> Iterator[_Wanted]:
    call = row.call
    if call.who is not Who.NOBODY:
        yield _Wanted(call.who, call.soon, call.only_if, call.note)
    if call.else_if:
        who = call.else_who or call.who
        by_itself = Soon.NOW if who is Who.EMERGENCY else call.soon
        yield _Wanted(who, call.else_soon or by_itself, call.else_if)
    if call.also_if and call.also_who:
        soon = Soon.TODAY if call.soon is Soon.NOW else call.soon
        yield _Wanted(call.also_who, soon, call.also_if)
