"""What each kind of heat source is good for: by kind, never by maker."""

import re
from dataclasses import dataclass
from enum import StrEnum
from functools import cache

from calc.heat.tables import table

__all__ = ["Basking", "HeatSource", "find_heat_source", "heat_source_names", "heat_sources"]


class Basking(StrEnum):
    """Whether a heat source makes a basking spot."""

    GOOD = "good"
    NOT_FOR_BASKING = "not_for_basking"
    BY_METER = "by_meter"
    NOT_AT_ALL = "not_at_all"


@dataclass(frozen=True, slots=True)
class HeatSource:
    """One kind of heat source: its use, one sentence of why, its place, and a caution."""

    slug: str
    name: str
    aliases: tuple[str, ...]
    basking: Basking
    gives_light: bool
    uv: str
    heat: str
    why: str
    place: str
    caution: str
    source: str


@cache
def heat_sources() -> dict[str, HeatSource]:
    """Return every kind of heat source by slug, best for basking first."""
    return {
        slug: HeatSource(
            slug=slug,
            name=row["name"],
            aliases=tuple(row["aliases"]),
            basking=Basking(row["basking"]),
            gives_light=row["light"],
            uv=row["uv"],
            heat=row["heat"],
            why=row["why"],
            place=row["place"],
            caution=row["caution"],
            source=row["source"],
        )
        for slug, row in table("heat_sources").items()
    }


def heat_source_names() -> tuple[str, ...]:
    """Return the first name of every kind, for lists and suggestions."""
    return tuple(kind.name for kind in heat_sources().values())


def find_heat_source(name: str) -> HeatSource | None:
    """Return the kind of this name, alias or plural, or None; case and hyphens do not count.

    Examples
    --------
    >>> find_heat_source("Ceramic heat emitters").slug
    'ceramic-emitter'
    """
    plain = _plain(name)
    return _index().get(plain) or _index().get(plain.removesuffix("s"))


@cache
def _index() -> dict[str, HeatSource]:
    index: dict[str, HeatSource] = {}
    for kind in heat_sources().values():
        for name in (kind.slug, kind.name, *kind.aliases):
            if index.setdefault(_plain(name), kind) is not kind:
                raise ValueError(f"{name!r} names two heat sources")
    return index


def _plain(name: str) -> str:
    return re.sub(r"[-_\s]+", " ", name.casefold()).strip()
