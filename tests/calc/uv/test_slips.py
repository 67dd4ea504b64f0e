"""A slip put into good readings is found again; good readings have none."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.uv.lamp import Fixture, Lamp, uvi_at
from calc.uv.meter import Reading
from calc.uv.screen import NoScreen
from calc.uv.slips import Slip, corrected, slip_among, slip_of_all
from tests.some import some

LAMP = Lamp(12.0, Fixture.POLISHED)
PLACES = (0.25, 0.32, 0.41, 0.5)


def slipped(reading: Reading, slip: Slip) -> Reading | None:
    """Write a reading down with the slip, where that can be written."""
    back = {
        Slip.INCHES_AS_CM: Slip.CM_AS_INCHES,
        Slip.CM_AS_INCHES: Slip.INCHES_AS_CM,
        Slip.UVI_TOO_HIGH: Slip.UVI_TOO_LOW,
        Slip.UVI_TOO_LOW: Slip.UVI_TOO_HIGH,
        Slip.TOO_FAR: Slip.TOO_NEAR,
        Slip.TOO_NEAR: Slip.TOO_FAR,
    }
    return corrected(reading, back[slip])


def read(share: float = 1.0) -> list[Reading]:
    return [Reading(d, share * uvi_at(LAMP, d, NoScreen())) for d in PLACES]


@pytest.mark.parametrize("slip", Slip)
@pytest.mark.parametrize("index", range(4))
def test_one_slip_among_good_readings_is_found(slip: Slip, index: int) -> None:
    good = read()
    wrong = slipped(good[index], slip)
    if wrong is None:
        assert slip in (Slip.TOO_FAR, Slip.TOO_NEAR)
        return
    found = slip_among([*good[:index], wrong, *good[index + 1 :]], LAMP, [(slip,)] * 4)
    assert found == (index, slip)


@given(st.floats(0.7, 1.4), st.sampled_from([Slip.INCHES_AS_CM, Slip.UVI_TOO_HIGH]))
@settings(max_examples=some(40), deadline=None)
def test_a_slip_in_all_readings_is_found(share: float, slip: Slip) -> None:
    wrong = [one for one in (slipped(reading, slip) for reading in read(share)) if one]
    assert slip_of_all(wrong, LAMP, LAMP, [slip]) is slip


def test_of_two_readings_only_what_is_the_one_way_is_told() -> None:
    near, far = read()[0], read()[2]
    wrong = slipped(far, Slip.UVI_TOO_HIGH)
    assert wrong is not None
    either = (Slip.UVI_TOO_HIGH, Slip.UVI_TOO_LOW)
    assert slip_among([near, wrong], LAMP, [either, either]) is None
    assert slip_among([near, wrong], LAMP, [(), either]) == (1, Slip.UVI_TOO_HIGH)


def test_nothing_explains_what_no_slip_makes() -> None:
    odd = [Reading(d, 3.0) for d in PLACES]
    assert slip_among(odd, LAMP, [tuple(Slip)] * 4) is None
    assert slip_of_all([Reading(0.3, 80.0)], LAMP, LAMP, [Slip.UVI_TOO_LOW]) is None
    assert corrected(Reading(0.3, 50.0), Slip.UVI_TOO_LOW) is None
