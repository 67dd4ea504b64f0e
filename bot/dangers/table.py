"""The table of hazards: what to do now, whom to call and how soon, where to read on."""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from functools import cache
from typing import Any

from bot.facts import Bound, Diff, Figure, Kind, Length, Say, Temp, degrees, kelvins, metres
from calc.tables import read_table
from calc.uv.nearest import COMFORTABLE_MINIMUM_M

__all__ = [
    "Call",
    "Hazard",
    "HazardKind",
    "Later",
    "Soon",
    "Urgency",
    "Who",
    "hazard",
    "hazards",
]


class HazardKind(StrEnum):
    """What a hazard threatens: a person, the animal by a running cause, the animal itself."""

    PEOPLE = "people"
    STOP = "stop"
    VET = "vet"
    WRONG = "wrong"
    NEVER = "never"


class Urgency(StrEnum):
    """When the first act is due, the soonest first."""

    NOW = "now"
    TODAY = "today"
    THIS_WEEK = "this week"
    CHANGE = "change"


class Who(StrEnum):
    """Who is called."""

    EMERGENCY = "emergency number"
    DOCTOR = "doctor"
    POISON_LINE = "poison line"
    ELECTRICIAN = "electrician"
    VET = "vet"
    NOBODY = "nobody"


class Soon(StrEnum):
    """How soon somebody is called, the soonest first."""

    NOW = "now"
    TODAY = "today"
    THIS_WEEK = "this week"
    BEFORE_USE = "before it is used again"
    NEVER = "never"


@dataclass(frozen=True, slots=True)
class Call:
    """Who is called and how soon; ``only_if`` and the ``else_`` pair say on what it depends.

    Conditions and the note are keys of the words.
    """

    who: Who
    soon: Soon
    only_if: str = ""
    else_who: Who | None = None
    else_soon: Soon | None = None
    else_if: str = ""
    also_who: Who | None = None
    also_if: str = ""
    note: str = ""


@dataclass(frozen=True, slots=True)
class DangerFigures:
    """The figures that dangers tell."""

    wood: Temp
    sun_gain: Diff
    too_hot: Temp
    stiff: Temp
    deadly: Temp
    cold_room: Temp
    nearest: Length


_FIGURES = DangerFigures(
    # Wood beside it can catch fire, as in calc/data/limits.toml: never rounded up.
    wood=Figure(Kind.TEMPERATURE, 76.6667, 76.6667, 76.6667, Bound.AT_MOST),
    # In a closed glass space in the sun, in half an hour.
    sun_gain=kelvins(20.0),
    # Where lizards lose control of their body, by heat and by cold.
    too_hot=degrees(41.0, (37.0, 45.0)),
    stiff=degrees(6.0, (2.0, 10.0)),
    deadly=degrees(40.0),
    cold_room=degrees(10.0),
    nearest=metres(COMFORTABLE_MINIMUM_M, bound=Bound.AT_LEAST),
)


@dataclass(frozen=True, slots=True)
class Later:
    """What is said in place of title and acts: where there is more time, or UV and heat are one."""

    title: Say
    do_now: tuple[Say, ...]


@dataclass(frozen=True, slots=True)
class Hazard:
    """One row of the table; what its columns mean stands at the table's head."""

    key: str
    rank: int
    kind: HazardKind
    urgency: Urgency
    title: Say
    act: str
    do_now: tuple[Say, ...]
    asked: Say
    call: Call
    why: Say
    page: str
    part: str
    sources: tuple[str, ...]
    then: tuple[Say, ...] = ()
    later: Later | None = None
    one_lamp: Later | None = None
    one_lamp_later: Later | None = None
    covers: frozenset[str] = frozenset()
    silences: frozenset[str] = frozenset()
    mutes: frozenset[str] = frozenset()
    made_of: tuple[frozenset[str], ...] = ()


@cache
def hazards() -> Mapping[str, Hazard]:
    """Return every hazard by its key, the one that speaks first before the others."""
    rows = [_hazard(key, row) for key, row in read_table("bot/dangers/table.toml").items()]
    return {row.key: row for row in sorted(rows, key=lambda row: row.rank)}


def hazard(key: str) -> Hazard:
    """Return one hazard.

    >>> hazard("fire").kind
    <HazardKind.PEOPLE: 'people'>
    """
    return hazards()[key]


def _hazard(key: str, row: Mapping[str, Any]) -> Hazard:
    def told(*what: str) -> Say:
        return Say.of("danger", key, *what, facts=_FIGURES)

    def each(count: int, *what: str) -> tuple[Say, ...]:
        return tuple(told(*what, str(number + 1)) for number in range(count))

    def instead(count: int, *what: str) -> Later | None:
        return Later(told(*what, "title"), each(count, *what, "do-now")) if count else None

    return Hazard(
        key=key,
        rank=row["rank"],
        kind=HazardKind(row["kind"]),
        urgency=Urgency(row["urgency"]),
        title=told("title"),
        act=row["act"],
        do_now=each(row["acts"], "do-now"),
        asked=told("asked"),
        call=_call(row["call"]),
        why=told("why"),
        page=row["page"],
        part=row["part"],
        sources=tuple(row["from"]),
        then=each(row.get("then", 0), "then"),
        later=instead(row.get("later", 0), "later"),
        one_lamp=instead(row.get("one_lamp", 0), "one-lamp"),
        one_lamp_later=instead(row.get("one_lamp_later", 0), "one-lamp-later"),
        covers=frozenset(row.get("covers", ())),
        silences=frozenset(row.get("silences", ())),
        mutes=frozenset(row.get("mutes", ())),
        made_of=tuple(frozenset(keys) for keys in row.get("made_of", ())),
    )


def _call(told: Mapping[str, str]) -> Call:
    kinds = {"who": Who, "else_who": Who, "also_who": Who, "soon": Soon, "else_soon": Soon}
    made: dict[str, Any] = {
        name: kinds[name](text) if name in kinds else text for name, text in told.items()
    }
    return Call(**made)
