"""Infrared readings: corrections that come back, and two that are refused."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.heat.sources_of_heat import (
    Basking,
    HeatSource,
    find_heat_source,
    heat_source_names,
    heat_sources,
)
from calc.heat.thermometer import (
    USUAL_SETTING,
    Surface,
    Unreadable,
    corrected_reading,
    emissivity_of,
    reading_shown,
    surface_behind,
)
from calc.sources import bibliography
from calc.uncertainty import Estimate
from calc.validity import OutsideModelError
from tests.some import some

FEW = settings(max_examples=some(80), deadline=None)
SHARES = st.floats(0.6, 1.0)


@FEW
@given(
    true_c=st.floats(10.0, 90.0), setting=SHARES, emissivity=SHARES, mirrored=st.floats(10.0, 40.0)
)
def test_a_correction_undoes_what_the_thermometer_does(
    true_c: float, setting: float, emissivity: float, mirrored: float
) -> None:
    shown = reading_shown(true_c, setting, emissivity, mirrored)
    assert surface_behind(shown, setting, emissivity, mirrored) == pytest.approx(true_c, abs=1e-9)


@FEW
@given(shown=st.floats(-10.0, 140.0), share=SHARES, mirrored=st.floats(0.0, 60.0))
def test_a_thermometer_set_right_needs_no_correction(
    shown: float, share: float, mirrored: float
) -> None:
    assert surface_behind(shown, share, share, mirrored) == pytest.approx(shown, abs=1e-9)


@FEW
@given(shown=st.floats(30.0, 80.0), emissivity=st.floats(0.6, 0.94))
def test_a_dull_surface_is_hotter_than_shown_in_a_cool_room(
    shown: float, emissivity: float
) -> None:
    assert surface_behind(shown, USUAL_SETTING, emissivity, 22.0) > shown
    assert surface_behind(shown, USUAL_SETTING, emissivity, shown) == pytest.approx(shown)


@pytest.mark.parametrize("surface", Surface)
def test_every_surface_has_a_range_and_a_known_source(surface: Surface) -> None:
    known = emissivity_of(surface)
    assert known.source in bibliography()
    corrected = corrected_reading(40.0, surface, 22.0)
    if surface is Surface.METAL:
        assert corrected is Unreadable.BARE_METAL
    else:
        assert isinstance(corrected, Estimate)
        assert 39.0 < corrected.low <= corrected.best <= corrected.high < 46.0


@pytest.mark.parametrize("surface", Surface)
def test_nothing_is_read_through_glass(surface: Surface) -> None:
    assert corrected_reading(40.0, surface, 22.0, through_glass=True) is Unreadable.THROUGH_GLASS


def test_glass_itself_can_be_read() -> None:
    assert isinstance(corrected_reading(40.0, Surface.GLASS, 22.0), Estimate)


def test_nonsense_is_refused() -> None:
    with pytest.raises(OutsideModelError):
        surface_behind(40.0, 0.95, 0.2, 22.0)
    with pytest.raises(OutsideModelError):
        corrected_reading(400.0, Surface.SLATE, 22.0)


@pytest.mark.parametrize("kind", heat_sources().values(), ids=lambda kind: kind.slug)
def test_every_heat_source_is_found_by_each_name_and_has_a_sentence(kind: HeatSource) -> None:
    for name in (kind.slug, kind.name, *kind.aliases):
        assert find_heat_source(name) is kind
        assert find_heat_source(f" {name.upper()}s ") is kind
    assert kind.source in bibliography()
    for text in (kind.why, kind.place, kind.caution):
        assert text.endswith(".")
        assert text.count(". ") == 0


@pytest.mark.parametrize(
    ("typed", "basking"),
    [
        ("halogen flood", Basking.GOOD),
        ("incandescent", Basking.GOOD),
        ("ceramic", Basking.NOT_FOR_BASKING),
        ("radiant panel", Basking.NOT_FOR_BASKING),
        ("infrared projector", Basking.NOT_FOR_BASKING),
        ("red lamp", Basking.NOT_AT_ALL),
        ("mercury-vapour", Basking.NOT_AT_ALL),
        ("heat rock", Basking.NOT_AT_ALL),
    ],
)
def test_the_trade_s_verdicts_on_heat_sources(typed: str, basking: Basking) -> None:
    kind = find_heat_source(typed)
    assert kind is not None
    assert kind.basking is basking


def test_an_unknown_heat_source_is_none() -> None:
    assert find_heat_source("candle") is None
    assert len(set(heat_source_names())) == len(heat_sources())


def test_what_makes_a_basking_spot_gives_light() -> None:
    for kind in heat_sources().values():
        assert kind.gives_light or kind.basking is not Basking.GOOD
