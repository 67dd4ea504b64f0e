"""Reading the heat room's tables from ``calc/data/heat``."""

from functools import cache
from typing import Any

from calc.tables import read_table

__all__ = ["table"]


@cache
def table(name: str) -> dict[str, Any]:
    """Return the table of this name; it is read once."""
    return read_table(f"calc/data/heat/{name}.toml")
