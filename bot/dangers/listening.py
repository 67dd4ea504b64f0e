"""Hazards that are told in words: which of the table a text tells."""

from collections.abc import Mapping
from functools import cache
from typing import Literal, cast

from bot.dangers.clauses import Told, take_apart
from bot.dangers.pairs import Found, found, pairs, urgencies
from bot.dangers.table import HazardKind, hazards
from bot.dangers.thesaurus import listed
from bot.reply import Alarm

__all__ = ["listen"]

_Urgency = Literal["", "now", "today", "this week", "change"]


def listen(text: str) -> tuple[Alarm, ...]:
    """Return the hazards that a text tells, the one that speaks first before the others.

    What is only asked about or planned comes after what is so, and is marked as asked.

    >>> [alarm.key for alarm in listen("the plug is melting and he is limp")]
    ['fire', 'not_moving']
    """
    told = take_apart(text)
    heard: dict[str, Found] = {}
    seen = "vet_seen" in told.hits
    for key, row in hazards().items():
        if seen and row.kind is HazardKind.VET and "still_now" not in told.hits:
            continue
        best = _best(told, key)
        if best is not None:
            heard[key] = best
    covered = {
        other for key, best in heard.items() if not best.asked for other in _covers().get(key, ())
    }
    alarms = [
        Alarm(
            key=key,
            words=told.quoted(best.start, best.end),
            asked=best.asked,
            urgency=_urgency(told, key),
        )
        for key, best in heard.items()
        if key not in covered
    ]
    return tuple(sorted(alarms, key=lambda alarm: alarm.asked))


def _best(told: Told, key: str) -> Found | None:
    """Return where a text tells a hazard, the plain telling before the asked one."""
    asked = None
    for pair in pairs().get(key, ()):
        if any(name in told.hits for name in pair.first):
            result = found(told, pair)
            if result is not None and not result.asked:
                return result
            asked = asked or result
    return asked


def _urgency(told: Told, key: str) -> _Urgency:
    for urgency, rows in urgencies().get(key, {}).items():
        if any(found(told, pair) for pair in rows):
            return cast(_Urgency, urgency)
    return ""


@cache
def _covers() -> Mapping[str, list[str]]:
    return listed("covers.toml")
