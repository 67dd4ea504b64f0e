"""Latitudes and months as people type them."""

from contextlib import suppress

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.language.errors import NotUnderstoodError
from bot.language.skies import read_latitude, read_month


@pytest.mark.parametrize(
    ("text", "latitude"),
    [
        ("40", 40.0),
        ("40N", 40.0),
        ("40 n", 40.0),
        ("40° N", 40.0),
        ("40,5 north", 40.5),
        ("33.9 S", -33.9),
        ("latitude 51.5", 51.5),
        ("-33.9", -33.9),
        ("−33.9", -33.9),
        ("0", 0.0),
        ("90", 90.0),
    ],
)
def test_a_latitude_is_read(text: str, latitude: float) -> None:
    assert read_latitude(text) == latitude


@pytest.mark.parametrize(
    "text", ["", "91", "40E", "-40S", "forty", "40N 3W", "nan", "inf", "1e1", "4" * 50, "1,200"]
)
def test_what_is_no_latitude_is_refused(text: str) -> None:
    with pytest.raises(NotUnderstoodError):
        read_latitude(text)


@pytest.mark.parametrize(
    ("text", "month"),
    [("June", 6), ("jun", 6), ("06", 6), ("6", 6), ("Sept.", 9), ("december", 12), ("12", 12)],
)
def test_a_month_is_read(text: str, month: int) -> None:
    assert read_month(text) == month


@pytest.mark.parametrize("text", ["", "0", "13", "Juno", "summer", "6.5", "-6"])
def test_what_is_no_month_is_refused(text: str) -> None:
    with pytest.raises(NotUnderstoodError):
        read_month(text)


@given(st.text(max_size=60))
def test_any_text_is_read_or_refused(text: str) -> None:
    for read in (read_latitude, read_month):
        with suppress(NotUnderstoodError):
            assert -90 <= read(text) <= 90
