"""Weights, indices, weaves and lamps against published figures (sources in uv.toml)."""

from typing import Any

import pytest

from calc.shape.line import far_field_per_flux, parallel_per_flux
from calc.uv.dose import ACTINIC_PER_ERYTHEMAL
from calc.uv.erythema import erythemal_weight, uv_index
from calc.uv.screen import Weave, open_area
from calc.uv.vitamin_d import vitamin_d_weight
from tests.published.printed import printed, printed_table

TABLE = printed_table("uv")
INCH_M = 0.0254


@pytest.mark.parametrize("row", TABLE["open_area"], ids=lambda row: row["percent"])
def test_open_area_is_the_worked_example(row: dict[str, Any]) -> None:
    mesh = row["mesh_per_in"] / INCH_M
    percent = 100 * open_area(Weave(mesh, mesh, row["wire_in"] * INCH_M))
    assert percent == printed(row["percent"])


def test_the_erythemal_weight_is_the_printed_one() -> None:
    (row,) = TABLE["weight"]
    assert float(erythemal_weight(row["nm"])) == printed(row["weight"])


@pytest.mark.parametrize("row", TABLE["index"], ids=lambda row: row["source"])
def test_the_uv_index_of_an_irradiance_is_the_printed_one(row: dict[str, Any]) -> None:
    assert uv_index(row["erythemal_w_m2"]) == printed(row["uvi"])


def test_the_hazard_weight_stays_under_the_bound() -> None:
    (row,) = TABLE["hazard"]
    for wave, weight in zip(row["nm"], row["weight"], strict=True):
        assert float(weight) / float(erythemal_weight(wave)) <= ACTINIC_PER_ERYTHEMAL


def test_vitamin_d_weights_are_the_table() -> None:
    (row,) = TABLE["vitamin_d"]
    for wave, weight in zip(row["nm"], row["weight"], strict=True):
        assert float(vitamin_d_weight(wave)) == float(weight)


def test_a_tube_is_a_point_within_one_per_cent_from_five_lengths_on() -> None:
    (row,) = TABLE["five_times"]
    for times in (row["times"], 2.0 * row["times"]):
        share = float(parallel_per_flux(times, 1.0)) / float(far_field_per_flux(times))
        assert 1.0 - float(row["error"]) <= share < 1.0
