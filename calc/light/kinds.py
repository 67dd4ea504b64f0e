"""Kinds of lamps by the visible light they give: by kind, never by maker."""

from dataclasses import dataclass
from enum import StrEnum
from functools import cache

from calc.tables import read_table
from calc.uncertainty import Estimate

__all__ = ["Emits", "LampUv", "LightKind", "light_kind", "light_kinds"]


class Emits(StrEnum):
    """How the light leaves a lamp."""

    TUBE = "tube"
    BAR = "bar"
    PANEL = "panel"
    BEAM = "beam"
    ROUND = "round"


class LampUv(StrEnum):
    """What a lamp sold for light gives of ultraviolet; nothing of it counts for an animal."""

    NONE = "none"
    TRACE = "trace"
    UNKNOWN = "unknown"


@dataclass(frozen=True, slots=True)
class LightKind:
    """One kind of lamp: lumens a watt [lm/W], usual beam [degree], light for plants [lx m² s/umol].

    ``lm_per_w`` is None where nobody has measured it; ``out`` is the share of the lumens that
    leaves a reflector [1]. ``warms``: what is near to it burns.
    """

    slug: str
    emits: Emits
    lm_per_w: Estimate | None
    beam_deg: float | None
    out: float
    lx_per_umol: Estimate
    uv: LampUv
    warms: bool
    source: str


@cache
def light_kinds() -> dict[str, LightKind]:
    """Return every kind of lamp by slug."""
    return {
        slug: LightKind(
            slug=slug,
            emits=Emits(row["emits"]),
            lm_per_w=Estimate(*row["lm_per_w"]) if "lm_per_w" in row else None,
            beam_deg=row.get("beam"),
            out=row.get("out", 1.0),
            lx_per_umol=Estimate(*row["lx_per_umol"]),
            uv=LampUv(row["uv"]),
            warms=row.get("warms", False),
            source=row["source"],
        )
        for slug, row in read_table("calc/data/light/lamps.toml").items()
    }


def light_kind(slug: str) -> LightKind:
    """Return one kind; an unknown one raises KeyError."""
    return light_kinds()[slug]
