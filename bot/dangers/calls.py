"""Whom to call and how soon, in sentences: the soonest of all hazards, each person once."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from bot.dangers.table import Hazard

__all__ = ["CALLS_A_VET", "call_sentences", "soonest_vet"]

_MOST = 3
_WHO = {
    "emergency number": "call your emergency number",
    "doctor": "see a doctor",
    "poison line": "call a poison line",
    "electrician": "ask an electrician",
    "vet": "call a reptile vet",
}
_SOON = ("now", "today", "this week", "before it is used again")
CALLS_A_VET = "vet"
"""The act that is itself the call to a vet."""


@dataclass(frozen=True, slots=True)
class _Wanted:
    who: str
    soon: str
    condition: str = ""
    note: str = ""

    @property
    def haste(self) -> int:
        return _SOON.index(self.soon)

    def sentence(self, sooner: "_Wanted | None") -> str:
        """Return the sentence; ``sooner`` is what is wanted without any condition."""
        if sooner and sooner.haste < self.haste:
            return f"{_begun(self.condition)}: {self.soon} is soon enough."
        act = f"{_WHO[self.who]} {self.soon}{f', {self.note}' if self.note else ''}."
        return f"{_begun(self.condition)}: {act}" if self.condition else _begun(act)


def soonest_vet(rows: Sequence[Hazard]) -> str:
    """Return how soon a vet is to be called without any condition, or nothing."""
    calls = [row.call for row in rows if row.call.who == "vet" and not row.call.only_if]
    return min((call.soon for call in calls), key=_SOON.index, default="")


def call_sentences(told: Sequence[tuple[Hazard, bool]]) -> list[str]:
    """Return whom to call; each hazard comes with whether its first act was said already."""
    wanted = [want for row, _ in told for want in _wanted(row)]
    said = [
        _Wanted("vet", row.call.soon)
        for row, spoken in told
        if spoken and CALLS_A_VET in (row.act, *row.covers)
    ]
    surely: dict[str, _Wanted] = {}
    for want in wanted:
        if not want.condition:
            known = surely.get(want.who)
            surely[want.who] = min(known, want, key=lambda w: w.haste) if known else want
    spoken_soon = min((want.haste for want in said), default=len(_SOON))
    kept = [want for who, want in surely.items() if who != "vet" or want.haste < spoken_soon]
    maybe: dict[tuple[str, str], _Wanted] = {}
    for want in wanted:
        certain = surely.get(want.who)
        alone = len(told) == 1
        if want.condition and (not certain or want.haste < certain.haste or alone):
            maybe.setdefault((want.who, want.soon), want)
    every = sorted((*kept, *maybe.values()), key=lambda w: (w.haste, w.who != "emergency number"))
    return [want.sentence(surely.get(want.who)) for want in every[:_MOST]]


def _wanted(row: Hazard) -> Iterator[_Wanted]:
    call = row.call
    if call.who in _WHO:
        yield _Wanted(call.who, call.soon, call.only_if, call.note)
    if call.else_if:
        who = call.else_who or call.who
        by_itself = "now" if who == "emergency number" else call.soon
        yield _Wanted(who, call.else_soon or by_itself, call.else_if)
    if call.also_if:
        soon = "today" if call.soon == "now" else call.soon
        yield _Wanted(call.also_who, soon, call.also_if)


def _begun(text: str) -> str:
    return f"{text[0].upper()}{text[1:]}"
