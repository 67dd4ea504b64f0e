"""What stands here was printed by somebody else: every row says by whom, where, and its digits."""

from collections.abc import Iterator
from typing import Any

import pytest

from tests.published.printed import TABLES, printed_table

# What our own code or hand gave is no proof; it belongs to the exact or the pinned tests.
OUR_OWN = ("by hand", "worked here", "computed here", "our own", "from memory", "outside this code")


def rows() -> Iterator[tuple[str, dict[str, Any]]]:
    for table in TABLES:
        for name, found in printed_table(table).items():
            for number, row in enumerate(found, start=1):
                yield f"{table} {name} {number}", row


EVERY_ROW = dict(rows())


def test_the_tables_are_there() -> None:
    assert (
        {name.split()[0] for name in EVERY_ROW}
        == set(TABLES)
        == {"animals", "day_lengths", "heat", "light", "uv"}
    )


@pytest.mark.parametrize("name", EVERY_ROW)
def test_a_row_names_who_printed_it_and_where(name: str) -> None:
    row = EVERY_ROW[name]
    for key in ("source", "where"):
        assert len(row[key].strip()) > 3, key
        assert not any(words in row[key].lower() for words in OUR_OWN), row[key]


@pytest.mark.parametrize("name", EVERY_ROW)
def test_a_row_has_figures_as_printed(name: str) -> None:
    # A printed figure is kept as text: its last digit is its tolerance.
    texts = {key: value for key, value in EVERY_ROW[name].items() if key not in ("source", "where")}
    assert any(isinstance(value, str | list) for value in texts.values())
