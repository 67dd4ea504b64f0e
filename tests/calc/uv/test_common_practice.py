"""One fitted constant against the six distance rows of keepers: common practice, no source."""

from typing import Any

import numpy as np
import pytest

from calc.shape.line import line_shape
from calc.uv.lamp import CLASS_CONSTANT_UVI_M, Fixture, Lamp, uvi_at
from calc.uv.placement import Verdict, place
from calc.uv.screen import FlatScreen, NoScreen, Screen

# Strength, fixture, share that the screen passes, tube to back for UVI 5 (nearer) and 3 [in].
ROWS: list[dict[str, Any]] = [
    {"strength": strength, "fixture": fixture, "passes": passes, "near_in": near, "far_in": far}
    for strength, fixture, passes, near, far in (
        (12.0, "POLISHED", 1.00, 16.0, 20.0),
        (12.0, "PLAIN", 1.00, 12.0, 16.0),
        (6.0, "POLISHED", 1.00, 10.0, 12.0),
        (6.0, "PLAIN", 1.00, 8.0, 10.0),
        (12.0, "POLISHED", 0.55, 10.0, 14.0),
        (12.0, "PLAIN", 0.55, 8.0, 10.0),
    )
]
INCH_M = 0.0254
FITTED_LENGTH_M = 0.52


def lamp_of(row: dict[str, Any]) -> Lamp:
    return Lamp(row["strength"], Fixture[row["fixture"]], FITTED_LENGTH_M)


def screen_of(row: dict[str, Any]) -> Screen:
    return NoScreen() if row["passes"] == 1.0 else FlatScreen(row["passes"])


def name_of(row: dict[str, Any]) -> str:
    return f"{row['strength']:g} {row['fixture']} {row['passes']}"


@pytest.mark.parametrize("row", ROWS, ids=name_of)
def test_both_ends_of_a_row_lie_in_the_wanted_range(row: dict[str, Any]) -> None:
    for end in ("near_in", "far_in"):
        assert 2.9 <= uvi_at(lamp_of(row), row[end] * INCH_M, screen_of(row)) <= 5.1


@pytest.mark.parametrize("row", ROWS, ids=name_of)
def test_the_answer_is_the_row_within_two_inches(row: dict[str, Any]) -> None:
    placement = place(lamp_of(row), screen_of(row), 3.0, 5.0)
    assert placement.verdict is Verdict.FITS
    assert placement.near is not None
    assert placement.start is not None
    assert placement.far is not None
    near, far = placement.near.distance_m / INCH_M, placement.far.distance_m / INCH_M
    assert near == pytest.approx(row["near_in"], abs=2.0)
    assert far == pytest.approx(row["far_in"], abs=2.0)
    assert near < row["far_in"]
    assert far > row["near_in"]
    assert row["near_in"] <= placement.start.distance_m / INCH_M <= row["far_in"]


def test_the_constant_is_the_geometric_mean_of_the_twelve_ends() -> None:
    constants = []
    for row in ROWS:
        share = row["strength"] / 12.0 * Fixture[row["fixture"]].value * row["passes"]
        for end, uvi in (("near_in", 5.0), ("far_in", 3.0)):
            constants.append(uvi / share / line_shape(row[end] * INCH_M, FITTED_LENGTH_M))
    logs = np.log(constants)
    assert np.exp(logs.mean()) == pytest.approx(CLASS_CONSTANT_UVI_M, abs=0.005)
    assert np.exp(logs.std()) - 1.0 == pytest.approx(0.10, abs=0.005)


@pytest.mark.parametrize("fixture", list(Fixture))
def test_the_weak_tube_over_a_screen_comes_too_close(fixture: Fixture) -> None:
    placement = place(Lamp(6.0, fixture), FlatScreen(0.55), 3.0, 5.0)
    assert placement.verdict is Verdict.TOO_CLOSE
