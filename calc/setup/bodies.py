"""How high an animal's back is, and how high a basking place it can be given."""

import tomllib
from dataclasses import dataclass
from functools import cache
from importlib.resources import files

from calc.uncertainty import Estimate

__all__ = ["Body", "body_of"]


@dataclass(frozen=True, slots=True)
class Body:
    """An adult's back over what it lies on [m], and the highest basking place to give it [m].

    Source: back_heights.
    """

    back_m: Estimate
    highest_platform_m: float
    in_water: bool
    digs: bool = False


def body_of(slug: str) -> Body | None:
    """Return the body of an animal of the list by its slug, or None where it is not known."""
    return _bodies().get(slug)


@cache
def _bodies() -> dict[str, Body]:
    text = (files("calc.data") / "bodies.toml").read_text(encoding="utf-8")
    rows = {slug: row for slug, row in tomllib.loads(text).items() if isinstance(row, dict)}
    return {
        slug: Body(
            Estimate(*row["back"]),
            row["highest_platform"],
            row.get("in_water", False),
            row.get("digs", False),
        )
        for slug, row in rows.items()
    }
