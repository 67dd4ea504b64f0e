"""The documented ranges of the heat engine: both ends hold, beyond them it says why not."""

from math import inf, nan

import numpy as np
import pytest

from calc.animals import animals
from calc.heat.air import dry_air
from calc.heat.basking import (
    Reading,
    dimmer_for,
    distance_for,
    surface_at,
    wattage_steps,
    watts_for,
)
from calc.heat.box import air_held, watts_to_hold
from calc.heat.convection import (
    nusselt_mcadams_cold,
    nusselt_mcadams_hot,
    nusselt_vertical_churchill,
)
from calc.heat.dimming import rerated_by_power, rerated_by_voltage
from calc.heat.enclosure import Enclosure
from calc.heat.first_wattage import LampShape, first_wattage
from calc.heat.night import night_plan
from calc.heat.readings import Readings
from calc.heat.surface import Slab, steady_surface
from calc.heat.thermometer import Surface, corrected_reading, surface_behind
from calc.timer import flat_times
from calc.validity import OutsideModelError
from tests.calc.refused import Range, assert_ends_hold, assert_refused_beyond

READ = Reading(42.0, 22.0, 0.30)
DRAGON = animals()["bearded-dragon"]
BOX = Enclosure(1.2, 0.6, 0.6)

RANGES = [
    Range(dry_air, "air temperature", 0.0, 100.0, "degC"),
    Range(lambda x: Reading(22.0 + x, 22.0, 0.3), "rise over the air", 2.0, 80.0, "K"),
    Range(lambda x: Reading(x + 20.0, x, 0.3), "air beside the spot", 0.0, 60.0, "degC"),
    Range(lambda x: Reading(42.0, 22.0, x), "lamp distance", 0.05, 2.0, "m"),
    Range(lambda x: READ.wanted_rise_k(22.0 + x), "wanted rise", 2.0, 80.0, "K"),
    Range(lambda x: surface_at(READ, x), "lamp distance", 0.05, 2.0, "m"),
    Range(lambda x: surface_at(READ, 0.3, x), "change of power", 0.0, 4.0, "", open_low=True),
    Range(lambda x: dimmer_for(READ, 40.0, x), "dimmer setting", 0.0, 1.0, "", open_low=True),
    Range(lambda x: watts_for(READ, x, 40.0), "lamp power", 0.0, 1000.0, "W", open_low=True),
    Range(lambda x: wattage_steps(READ, x, 40.0), "lamp power", 0.0, 1000.0, "W", open_low=True),
    Range(lambda x: dimmer_for(READ, 40.0, 1.0, x), "lamp power", 0.0, 1000.0, "W", open_low=True),
    Range(lambda x: nusselt_mcadams_cold(x), "Rayleigh number", 0.0, 1e10, "", step=1.0),
    Range(lambda x: nusselt_mcadams_hot(x), "Rayleigh number", 0.0, 1e11, "", step=1.0),
    Range(lambda x: nusselt_vertical_churchill(x, 0.7), "Rayleigh number", 0.0, 1e11, "", step=1.0),
    Range(rerated_by_voltage, "share of rated voltage", 0.3, 1.1, ""),
    Range(lambda x: Enclosure(x, 0.6, 0.6), "enclosure length", 0.15, 3.0, "m"),
    Range(lambda x: Enclosure(1.2, x, 0.6), "enclosure depth", 0.15, 3.0, "m"),
    Range(lambda x: Enclosure(1.2, 0.6, x), "enclosure height", 0.15, 3.0, "m"),
    Range(lambda x: watts_to_hold(BOX, x, x), "room air", 0.0, 50.0, "degC"),
    Range(lambda x: air_held(BOX, 10.0, x), "room air", 0.0, 50.0, "degC"),
    Range(lambda x: first_wattage(LampShape.FLOOD, x, 45.0, 0.3), "room air", 10.0, 35.0, "degC"),
    Range(
        lambda x: first_wattage(LampShape.FLOOD, 22.0, x, 0.3), "wanted surface", 30.0, 65.0, "degC"
    ),
    Range(lambda x: first_wattage(LampShape.FLOOD, 22.0, 40.0, x), "lamp distance", 0.1, 1.0, "m"),
    Range(lambda x: night_plan(DRAGON, x), "room at night", -10.0, 45.0, "degC"),
    Range(lambda x: Slab(side_m=x), "slab side", 0.05, 0.4, "m"),
    Range(lambda x: Slab(emissivity=x), "emissivity", 0.0, 1.0, ""),
    Range(lambda x: Slab(below_w_m2k=x), "loss below", 0.0, 20.0, "W/m2K"),
    Range(lambda x: corrected_reading(x, Surface.WOOD, 22.0), "reading", -20.0, 150.0, "degC"),
    Range(
        lambda x: corrected_reading(40.0, Surface.WOOD, x),
        "mirrored temperature",
        -20.0,
        150.0,
        "degC",
    ),
    Range(lambda x: surface_behind(40.0, x, 0.9, 22.0), "thermometer setting", 0.5, 1.0, ""),
    Range(lambda x: surface_behind(40.0, 0.95, x, 22.0), "emissivity", 0.5, 1.0, ""),
    Range(flat_times, "hours of light", 1.0, 23.0, "h"),
    Range(lambda x: Readings(lamp_on_h=x), "lamp time", 0.0, 24.0, "h"),
    Range(rerated_by_power, "share of rated power", 0.3**1.6, 1.1**1.6, ""),
    *(
        Range(lambda x, name=name: Readings(**{name: x}), told, -10.0, 150.0, "degC")  # type: ignore[misc]
        for name, told in (
            ("basking_surface_c", "basking surface"),
            ("cool_air_c", "cool air"),
            ("warm_air_c", "warm air"),
            ("night_low_c", "night air"),
        )
    ),
]


@pytest.mark.parametrize("given", RANGES, ids=str)
def test_the_documented_ends_hold(given: Range) -> None:
    assert_ends_hold(given)


@pytest.mark.parametrize("given", RANGES, ids=str)
def test_beyond_the_ends_the_refusal_tells_quantity_value_range_and_unit(given: Range) -> None:
    assert_refused_beyond(given)


def test_a_wanted_surface_too_cool_for_any_distance_is_refused() -> None:
    with pytest.raises(OutsideModelError) as caught:
        distance_for(Reading(80.0, 22.0, 1.9), 25.0)
    error = caught.value
    assert error.name == "lamp distance"
    assert error.value > 2.0
    assert (error.low, error.high, error.unit) == (0.05, 2.0, "m")


def test_more_heat_than_the_air_may_rise_is_refused() -> None:
    most = watts_to_hold(BOX, 60.0 - 20.0, 0.0).total_w.best
    with pytest.raises(OutsideModelError) as caught:
        air_held(BOX, 2.0 * most, 0.0)
    error = caught.value
    assert (error.name, error.low, error.unit) == ("heat inside", 0.0, "W")
    # The most is what holds 40 K over the room.
    assert error.high == pytest.approx(most, rel=1e-6)
    assert error.value > error.high


def test_air_hotter_than_the_model_is_refused() -> None:
    for inside_c, room_c, highest in ((50.1, 30.0, 50.0), (45.1, 5.0, 45.0)):
        watts_to_hold(BOX, highest, room_c)
        with pytest.raises(OutsideModelError) as caught:
            watts_to_hold(BOX, inside_c, room_c)
        error = caught.value
        assert (error.name, error.value, error.unit) == ("air inside", inside_c, "degC")
        # Air colder than the room is no fault: it takes no heat at all.
        assert (error.low, error.high) == (-inf, highest)
        assert watts_to_hold(BOX, room_c - 5.0, room_c).total_w.best == 0.0


@pytest.mark.parametrize("absorbed", [-5.0, 5000.0, nan])
def test_heat_that_no_surface_holds_is_refused(absorbed: float) -> None:
    with pytest.raises(OutsideModelError) as caught:
        steady_surface(Slab(), absorbed, 22.0)
    error = caught.value
    assert (error.name, error.unit) == ("absorbed heat", "W/m2")
    assert error.value == pytest.approx(absorbed, nan_ok=True)
    # From nothing, a surface as warm as the air, to what holds it 120 K above.
    assert error.low == pytest.approx(0.0, abs=1e-9)
    assert steady_surface(Slab(), error.high, 22.0) == pytest.approx(142.0, abs=1e-6)


def test_the_worst_of_many_is_the_one_told() -> None:
    with pytest.raises(OutsideModelError) as caught:
        dry_air(np.array([20.0, 120.0, 30.0]))
    assert caught.value.value == 120.0
    with pytest.raises(OutsideModelError) as caught:
        dry_air(np.array([20.0, -10.0]))
    assert caught.value.value == -10.0
    with pytest.raises(OutsideModelError) as caught:
        nusselt_mcadams_cold(np.array([-1.0, 5.0]))
    assert caught.value.value == -1.0
    with pytest.raises(OutsideModelError) as caught:
        surface_behind(np.full(2, 40.0), 0.95, np.array([0.9, 1.2]), np.full(2, 22.0))
    assert caught.value.value == 1.2
