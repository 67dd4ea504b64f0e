"""The bibliography: every number's source, read from ``data/sources*.toml``.

A key is short and stable (``keitz1971``); a citation says enough to find the thing; a kind
says how far it may be trusted. ``common practice`` has no source, ``memory`` was not read.
"""

from dataclasses import dataclass
from enum import StrEnum
from functools import cache

from calc.tables import ROOT, read_table

__all__ = ["Kind", "Source", "bibliography", "source"]


class Kind(StrEnum):
    """How a figure is known."""

    STANDARD = "standard"
    PAPER = "paper"
    HANDBOOK = "handbook"
    DATASET = "dataset"
    DERIVATION = "derivation"
    COMMON_PRACTICE = "common practice"
    MEMORY = "memory"


@dataclass(frozen=True, slots=True)
class Source:
    """One entry of the bibliography."""

    key: str
    citation: str
    kind: Kind


@cache
def bibliography() -> dict[str, Source]:
    """Return every source by key; a key given twice is an error."""
    entries: dict[str, Source] = {}
    for path in sorted((ROOT / "calc/data").glob("sources*.toml")):
        for key, row in read_table(path).items():
            if key in entries:
                raise ValueError(f"source {key!r} is given twice")
            entries[key] = Source(key, row["citation"], Kind(row["kind"]))
    return entries


def source(key: str) -> Source:
    """Return the source with this key; an unknown key raises KeyError."""
    return bibliography()[key]
