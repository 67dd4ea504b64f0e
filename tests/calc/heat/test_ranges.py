"""Which end of a reading that was told as a range is judged."""

import pytest

from calc.animal import Animal
from calc.animals import animals
from calc.heat.ranges import End, judged_end
from calc.heat.readings import finding_for
from calc.quantities import Quantity

COOL = Quantity.COOL_AIR


def dragon() -> Animal:
    return animals()["bearded-dragon"]


def ends(low: float, high: float) -> tuple[float, End]:
    target = dragon().cool_air_c
    assert target is not None
    return judged_end(COOL, target.low + low, target.high + high, dragon())


def test_one_value_is_judged_as_it_is() -> None:
    assert judged_end(COOL, 26.0, 26.0, dragon()) == (26.0, End.WHOLE)


def test_the_end_that_is_off_is_judged() -> None:
    target = dragon().cool_air_c
    assert target is not None
    assert ends(-8.0, 0.0) == (target.low - 8.0, End.LOW_END)
    assert ends(0.0, 8.0) == (target.high + 8.0, End.HIGH_END)


def test_a_range_that_is_off_as_a_whole_is_judged_by_its_middle() -> None:
    assert judged_end(COOL, 10.0, 14.0, dragon()) == (12.0, End.WHOLE)


def test_a_range_inside_the_target_is_judged_by_its_middle() -> None:
    assert ends(1.0, -1.0)[1] is End.WHOLE


@pytest.mark.parametrize("place", [Quantity.BASKING_SURFACE, COOL, Quantity.WARM_AIR])
@pytest.mark.parametrize("low", [10.0, 18.0, 24.0, 30.0, 38.0, 44.0])
@pytest.mark.parametrize("width", [1.0, 4.0, 10.0, 25.0])
def test_no_range_is_called_fine_of_which_an_end_is_not(
    place: Quantity, low: float, width: float
) -> None:
    for animal in (dragon(), animals()["corn-snake"]):
        read, _ = judged_end(place, low, low + width, animal)
        if not finding_for(place, read, animal).is_fine:
            continue
        for end in (low, low + width):
            assert finding_for(place, end, animal).is_fine
