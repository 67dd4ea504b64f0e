"""The table of hazards: what to do now, whom to call and how soon, where to read on."""

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from functools import cache
from importlib.resources import files
from typing import Any

__all__ = ["Call", "Hazard", "HazardKind", "Later", "Urgency", "hazard", "hazards"]


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


@dataclass(frozen=True, slots=True)
class Call:
    """Who is called and how soon; ``only_if`` and the ``else_`` pair say on what it depends."""

    who: str
    soon: str
    only_if: str = ""
    else_who: str = ""
    else_soon: str = ""
    else_if: str = ""
    also_who: str = ""
    also_if: str = ""
    note: str = ""


@dataclass(frozen=True, slots=True)
class Later:
    """What is said in place of title and acts: where there is more time, or UV and heat are one."""

    title: str
    do_now: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Hazard:
    """One row of the table; what its columns mean stands at the table's head."""

    key: str
    rank: int
    kind: HazardKind
    urgency: Urgency
    title: str
    act: str
    do_now: tuple[str, ...]
    asked: str
    call: Call
    why: str
    page: str
    part: str
    sources: tuple[str, ...]
    then: tuple[str, ...] = ()
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
    text = (files("bot.dangers") / "table.toml").read_text(encoding="utf-8")
    rows = [_hazard(key, row) for key, row in tomllib.loads(text).items()]
    return {row.key: row for row in sorted(rows, key=lambda row: row.rank)}


def hazard(key: str) -> Hazard:
    """Return one hazard.

    >>> hazard("fire").kind
    <HazardKind.PEOPLE: 'people'>
    """
    return hazards()[key]


def _hazard(key: str, row: Mapping[str, Any]) -> Hazard:
    return Hazard(
        key=key,
        rank=row["rank"],
        kind=HazardKind(row["kind"]),
        urgency=Urgency(row["urgency"]),
        title=row["title"],
        act=row["act"],
        do_now=tuple(row["do_now"]),
        asked=row["asked"],
        call=Call(**row["call"]),
        why=row["why"],
        page=row["page"],
        part=row["part"],
        sources=tuple(row["from"]),
        then=tuple(row.get("then", ())),
        **{name: _instead(row.get(name)) for name in ("later", "one_lamp", "one_lamp_later")},
        covers=frozenset(row.get("covers", ())),
        silences=frozenset(row.get("silences", ())),
        mutes=frozenset(row.get("mutes", ())),
        made_of=tuple(frozenset(keys) for keys in row.get("made_of", ())),
    )


def _instead(row: Mapping[str, Any] | None) -> Later | None:
    return Later(row["title"], tuple(row["do_now"])) if row else None
