"""Limits of an animal that a group added: what it set, else never milder than for any animal."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.animal import OwnLimits, Target
from calc.animals import any_animal, own_slug
from calc.limits import any_limits, limits_of
from calc.sources import source

NOTHING = OwnLimits()
warmths = st.floats(10.0, 60.0)


def target(low: float, high: float) -> Target:
    return Target(low, None, high, "groups_own")


@given(low=warmths, width=st.floats(0.0, 10.0), cool=warmths, uvi=st.floats(0.1, 20.0))
def test_what_is_not_set_is_never_milder_than_what_holds_for_any_animal(
    low: float, width: float, cool: float, uvi: float
) -> None:
    bare = replace(any_animal("Moss lizard"), slug=own_slug("Moss lizard"), own_limits=NOTHING)
    told = replace(
        bare,
        basking_surface_c=target(low, low + width),
        cool_air_c=target(cool, cool + width),
        uvi=target(0.0, uvi),
    )
    careful = any_limits()
    for one in (limits_of(bare), limits_of(told)):
        for name in ("surface_c", "caution_c", "coolest_air_c", "uvi_high", "uvi_now"):
            mine, theirs = getattr(one, name), getattr(careful, name)
            assert mine is not None
            assert mine.value <= theirs.value, name
        assert one.night_c == careful.night_c


def test_what_is_set_holds_and_its_source_is_the_group() -> None:
    own = OwnLimits(surface_c=55.0, coolest_air_c=36.0, night_c=4.0, uvi_now=9.0)
    limits = limits_of(replace(any_animal("Moss lizard"), slug="own:Moss lizard", own_limits=own))
    found = (limits.surface_c, limits.coolest_air_c, limits.night_c, limits.uvi_now)
    assert [x.value for x in found if x] == [55.0, 36.0, 4.0, 9.0]
    assert {x.source for x in found if x} == {"groups_own"}
    assert "set by its moderators" in source("groups_own").citation


@pytest.mark.parametrize("ceiling", [20.0, 30.0])
def test_the_coolest_place_is_too_hot_no_later_than_any_surface(ceiling: float) -> None:
    own = OwnLimits(surface_c=ceiling)
    limits = limits_of(replace(any_animal("Moss lizard"), slug="own:Moss lizard", own_limits=own))
    assert limits.coolest_air_c is not None
    assert limits.coolest_air_c.value <= ceiling
