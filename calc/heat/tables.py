"""Reading the heat room's tables from ``calc/data/heat``."""

import tomllib
from functools import cache
from importlib.resources import files
from typing import Any

__all__ = ["table"]


@cache
def table(name: str) -> dict[str, Any]:
    """Return the table of this name; it is read once."""
    text = (files("calc.data") / "heat" / f"{name}.toml").read_text(encoding="utf-8")
    return tomllib.loads(text)
