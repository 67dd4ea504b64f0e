"""Daylight and plant light against pvlib and ephem, lamps against quadrature, asked live."""

from datetime import date
from math import degrees, pi, sqrt

import ephem
import numpy as np
import pytest
from pvlib import clearsky, spectrum
from pvlib.atmosphere import get_absolute_airmass, get_relative_airmass
from pvlib.irradiance import get_extra_radiation
from scipy.integrate import dblquad, quad

from calc.daylight import noon_altitude_deg
from calc.light.illuminance import HungLight, Light, lux_field
from calc.light.kinds import light_kind
from calc.light.outdoors import shade_lux, sun_lux
from calc.light.plants import plant_photons
from calc.shape.flat import bar_per_flux, panel_per_flux
from calc.uncertainty import Estimate
from calc.uv.screen import NoScreen

# Littlefair (1988): mean efficacy of daylight under a clear sky, and of a clear sky alone [lm/W].
EFFICACY_LM_PER_W = 107.0
SKY_LM_PER_W = 144.0


def clear(sun_deg: float) -> tuple[float, float]:
    """Return global and diffuse irradiance [W/m²] of a clear sky, turbidity 3, at sea level."""
    zenith = 90.0 - sun_deg
    airmass = get_absolute_airmass(get_relative_airmass(zenith))
    extra = float(get_extra_radiation(93))  # the day of the year with the mean distance of the sun
    found = clearsky.ineichen(zenith, airmass, 3.0, dni_extra=extra)
    return float(found["ghi"]), float(found["dhi"])


@pytest.mark.parametrize("sun_deg", [10.0, 20.0, 30.0, 45.0, 60.0, 75.0, 90.0])
def test_the_clear_day_is_that_of_a_clear_sky_model(sun_deg: float) -> None:
    everything, _ = clear(sun_deg)
    # The doubt that is told of a clear day is a factor of 1.2.
    assert sun_lux(sun_deg) == pytest.approx(everything * EFFICACY_LM_PER_W, rel=0.2)


@pytest.mark.parametrize("sun_deg", [10.0, 20.0, 30.0, 45.0, 60.0, 90.0])
def test_open_shade_is_that_of_a_clear_sky_model(sun_deg: float) -> None:
    _, sky = clear(sun_deg)
    assert 1 / 1.5 <= shade_lux(sun_deg) / (sky * SKY_LM_PER_W) <= 1.5


@pytest.mark.parametrize("latitude", [-34.0, 0.0, 24.0, 52.0])
@pytest.mark.parametrize("month", [1, 4, 6, 9, 12])
def test_the_sun_at_noon_is_as_high_as_ephem_has_it(latitude: float, month: int) -> None:
    observer = ephem.Observer()
    observer.lat, observer.lon, observer.pressure = str(latitude), "0", 0.0
    observer.date = f"2025/{month}/15"
    observer.date = observer.next_transit(ephem.Sun())
    sun = ephem.Sun(observer)
    assert noon_altitude_deg(latitude, date(2025, month, 15)) == pytest.approx(
        degrees(float(sun.alt)), abs=0.01
    )


def test_sunlight_for_plants_is_that_of_the_reference_spectrum() -> None:
    sun = spectrum.get_reference_spectra()["global"]
    nm = sun.index.to_numpy()
    for_plants = (nm >= 400.0) & (nm <= 700.0)
    # Photons: a mole at 1 nm has 0.1196 J m.
    umol = np.trapezoid(sun.to_numpy()[for_plants] * nm[for_plants] / 119.6266, nm[for_plants])
    # Lux of that spectrum by the published efficacy; the tolerance is that of the efficacy.
    lux = np.trapezoid(sun.to_numpy(), nm) * EFFICACY_LM_PER_W
    found = plant_photons(Estimate.exact(float(lux)), Estimate.exact(55.4))
    assert found.best == pytest.approx(umol, rel=0.05)
    assert light_kind("led-bar").lx_per_umol.low < 55.4 < light_kind("white-tube").lx_per_umol.low


PLACES = [(0.3, 0.0, 0.0), (0.2, 0.35, 0.1), (0.6, 0.0, 0.4), (0.45, 0.9, -0.3)]


def of_a_small_face(height: float, along: float, aside: float, beam_power: float) -> float:
    """Return the light of a small face that looks down, for one lumen: cosines and distance."""
    squared = height * height + along * along + aside * aside
    level = (beam_power + 1.0) / (2.0 * pi)
    return float(level * height ** (beam_power + 1.0) / squared ** ((beam_power + 3.0) / 2.0))


@pytest.mark.parametrize("place", PLACES)
@pytest.mark.parametrize(("beam_deg", "power"), [(120.0, 1.0), (90.0, 2.0)])
def test_a_bar_is_the_sum_of_its_small_faces(
    place: tuple[float, float, float], beam_deg: float, power: float
) -> None:
    height, along, aside = place
    summed, _ = quad(lambda u: of_a_small_face(height, along - u, aside, power), -0.4, 0.4)
    found = float(bar_per_flux(height, 0.8, along, aside, beam_deg))
    assert found == pytest.approx(summed / 0.8, rel=1e-8)


@pytest.mark.parametrize("place", PLACES)
def test_a_panel_is_the_sum_of_its_small_faces(place: tuple[float, float, float]) -> None:
    height, along, aside = place
    summed, _ = dblquad(
        lambda v, u: of_a_small_face(height, along - u, aside - v, 1.0), -0.3, 0.3, -0.15, 0.15
    )
    found = float(panel_per_flux(height, 0.6, 0.3, along, aside))
    assert found == pytest.approx(summed / 0.18, rel=1e-7)


@pytest.mark.parametrize("place", PLACES)
def test_a_tube_is_the_sum_of_its_small_rings(place: tuple[float, float, float]) -> None:
    # A ring of a thin even tube shines with the sine of the angle to its axis.
    height, along, aside = place
    across = height * height + aside * aside

    def ring(u: float) -> float:
        squared = across + (along - u) ** 2
        return sqrt(across / squared) / pi**2 * height / sqrt(squared) / squared

    summed, _ = quad(ring, -0.4, 0.4)
    light = Light(light_kind("white-tube"), Estimate.exact(1.0), by_watts=False, length_m=0.8)
    found = float(lux_field([HungLight(light, 0.0, 0.0, height, NoScreen())], along, aside, 0.0))
    assert found == pytest.approx(summed / 0.8, rel=1e-8)
