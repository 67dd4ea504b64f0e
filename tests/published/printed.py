"""Tables beside the tests, and the tolerance that a printed figure carries."""

import tomllib
from decimal import Decimal
from pathlib import Path
from typing import Any

import pytest

__all__ = ["TABLES", "half_digit", "printed", "printed_table"]

HERE = Path(__file__).parent
TABLES = tuple(sorted(path.stem for path in HERE.glob("*.toml")))


def half_digit(text: str) -> float:
    """Return half a unit of the last printed digit."""
    exponent = Decimal(text).as_tuple().exponent
    assert isinstance(exponent, int)
    return 0.5 * 10.0**exponent * (1.0 + 1e-9)


def printed(text: str) -> Any:
    """Return what equals a printed figure to half of its last digit."""
    return pytest.approx(float(text), abs=half_digit(text), rel=0.0)


def printed_table(name: str) -> dict[str, list[dict[str, Any]]]:
    """Return the lists of rows of a table file."""
    return tomllib.loads((HERE / f"{name}.toml").read_text(encoding="utf-8"))
