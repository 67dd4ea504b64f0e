"""Tables beside the tests, and the tolerance that a printed figure carries."""

import tomllib
from decimal import Decimal
from pathlib import Path
from typing import Any

HERE = Path(__file__).parent


def half_digit(printed: str) -> float:
    """Return half a unit of the last printed digit."""
    exponent = Decimal(printed).as_tuple().exponent
    assert isinstance(exponent, int)
    return 0.5 * 10.0**exponent * (1.0 + 1e-9)


def printed_table(name: str) -> dict[str, list[dict[str, Any]]]:
    """Return the lists of rows of a table file."""
    return tomllib.loads((HERE / f"{name}.toml").read_text(encoding="utf-8"))
