"""The table of what is measured. Pinned: names stand in saved data, doubts in every verdict."""

from math import log

import pytest

from calc.quantities import Dimension, Instrument, Quantity, QuantityRow, row_of

_F = 5.0 / 9.0
# Quantity, name, lowest, highest, doubt, step, far, slack.
_TABLE = (
    (Quantity.UVI, "uvi", 0.0, 100.0, log(1.15), 0.1, log(2.0), log(1.05)),
    (Quantity.BASKING_SURFACE, "basking_surface", -20.0, 150.0, 2.0, _F, 8.0, 0.0),
    (Quantity.COOL_AIR, "cool_air", -20.0, 80.0, 1.5, _F, 8.0, 0.0),
    (Quantity.WARM_AIR, "warm_air", -20.0, 80.0, 1.5, _F, 8.0, 0.0),
    (Quantity.NIGHT_AIR, "night_air", -30.0, 80.0, 1.5, _F, 8.0, 0.0),
    (Quantity.WATER, "water", -2.0, 80.0, 1.0, _F, 6.0, 0.0),
    (Quantity.GRADIENT, "gradient", -60.0, 120.0, 2.0, _F, 8.0, 0.0),
    (Quantity.LIGHT_HOURS, "light_hours", 0.0, 24.0, 0.25, 0.5, 4.0, 0.0),
    (Quantity.HUMIDITY, "humidity", 0.0, 1.0, 0.05, 0.01, 0.3, 0.0),
)
_READ_WITH = {
    Quantity.UVI: Instrument.UV_METER,
    Quantity.BASKING_SURFACE: Instrument.INFRARED_GUN,
    Quantity.COOL_AIR: Instrument.DIGITAL_PROBE,
    Quantity.WARM_AIR: Instrument.DIGITAL_PROBE,
    Quantity.NIGHT_AIR: Instrument.DIGITAL_PROBE,
    Quantity.WATER: Instrument.WATER_THERMOMETER,
    Quantity.GRADIENT: Instrument.TWO_PROBES,
    Quantity.LIGHT_HOURS: Instrument.TIMER,
    Quantity.HUMIDITY: Instrument.HYGROMETER,
}


def _figures(row: QuantityRow) -> tuple[float, ...]:
    return row.lowest, row.highest, row.doubt, row.step, row.far, row.slack


def test_unchanged_every_quantity_keeps_its_name_its_bounds_and_its_doubt() -> None:
    assert [line[0] for line in _TABLE] == list(Quantity)
    for quantity, name, *figures in _TABLE:
        assert quantity.value == name
        row = row_of(quantity)
        assert row.quantity is quantity
        assert _figures(row) == pytest.approx(tuple(figures))


def test_each_is_read_with_its_own_instrument() -> None:
    assert {q: row_of(q).instrument for q in Quantity} == _READ_WITH


def test_only_humidity_is_not_judged_and_only_uv_goes_by_factors() -> None:
    assert [q for q in Quantity if not row_of(q).is_judged] == [Quantity.HUMIDITY]
    assert [q for q in Quantity if row_of(q).dimension.is_ratio] == [Quantity.UVI]
    heats = [q for q in Quantity if row_of(q).dimension is Dimension.TEMPERATURE]
    assert heats == list(Quantity)[1:6]
