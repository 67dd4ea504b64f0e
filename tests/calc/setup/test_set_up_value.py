"""The set-up as one value: a plan's has everything in its place, and nothing hangs under a tube."""

from dataclasses import replace
from itertools import pairwise

import pytest

from calc.animals import animals
from calc.heat.enclosure import Enclosure, Lid
from calc.judgement import Verdict, judge_reading
from calc.quantities import Quantity
from calc.setup.light import LAMPS_APART_M
from calc.setup.plan import OwnedTube, Plan, Request, plan_as_is
from calc.setup.planned import planned_set_up
from calc.setup.set_up import (
    HeatLamp,
    SetUp,
    Sign,
    Spot,
    Stand,
    StandKind,
    beside_tubes,
    ends_of,
    sign_of,
)
from calc.uncertainty import Estimate
from calc.uv.ground import Platform
from calc.uv.lamp import Fixture, Lamp
from calc.uv.patches import Shade
from calc.uv.screen import NoScreen
from calc.uv.section import HungTube, uvi_field

BOX = Enclosure(1.2, 0.6, 0.6, lid=Lid.SOLID)
BACK = Estimate(0.04, 0.05, 0.07)
REQUEST = Request(animals()["bearded-dragon"], BOX, 3.0, 5.0, 0.05, 0.4, 21.0)


def planned(request: Request = REQUEST) -> SetUp:
    found = plan_as_is(request)
    assert isinstance(found, Plan)
    return planned_set_up(found, request, BACK, StandKind.PLATFORM, in_water=False, unchecked=False)


def test_a_plan_is_whole_and_frozen() -> None:
    value = planned()
    assert value == planned()
    assert hash(value) == hash(planned())
    with pytest.raises(AttributeError):
        value.lid = None  # type: ignore[misc]
    assert value.box is not None
    first, last = ends_of(value.tubes[0])
    assert 0.0 <= first < last <= value.box.length_m
    assert value.back_z_m == pytest.approx(value.stands[0].place.top_m + 0.05)


def test_its_lamp_hangs_beside_the_tube_and_over_the_stand() -> None:
    value = planned()
    lamp, tube, stand = value.lamps[0], value.tubes[0], value.stands[0].place
    assert value.is_before_a_tube(lamp)
    assert lamp.y_m - tube.y_m >= LAMPS_APART_M - 1e-9
    assert stand.x0_m < lamp.x_m < stand.x1_m
    assert lamp.z_m > stand.top_m


def test_the_uv_it_tells_for_the_back_is_what_its_own_tubes_give_there() -> None:
    for many in (1, 2):
        request = replace(
            REQUEST,
            box=replace(BOX, height_m=0.9),
            owned=OwnedTube(12.0, Fixture.PLAIN, 0.849, count=many, gap_m=0.05 * (many - 1)),
        )
        value = planned(request)
        spot = value.spot_of(Quantity.UVI)
        assert spot is not None
        assert spot.value is not None
        assert spot.judged is not None
        assert len(value.tubes) == many
        assert value.back_z_m is not None
        middle = sum(tube.y_m for tube in value.tubes) / many
        under = float(uvi_field(value.tubes, value.tubes[0].x_m, middle, value.back_z_m))
        assert under == pytest.approx(spot.value.best, rel=0.02)
        assert spot.sign is Sign.FINE


def test_several_tubes_hang_apart_as_told_and_inside_the_box() -> None:
    owned = OwnedTube(6.0, Fixture.PLAIN, 0.849, count=3, gap_m=0.3)
    value = planned(replace(REQUEST, owned=owned))
    places = [tube.y_m for tube in value.tubes]
    assert all(0.0 <= y < value.lamps[0].y_m for y in places)
    assert all(before < after for before, after in pairwise(places))


@pytest.mark.parametrize("y_m", [0.05, 0.2, 0.3, 0.42, 0.55])
def test_a_lamp_that_would_be_under_a_tube_gets_a_place_beside_it(y_m: float) -> None:
    tube = HungTube(Lamp(12.0, Fixture.POLISHED), 0.3, 0.3, 0.6, NoScreen())
    found = beside_tubes((tube,), y_m, 0.6)
    assert 0.0 < found < 0.6
    assert abs(found - 0.3) >= LAMPS_APART_M - 1e-9
    if abs(y_m - 0.3) >= LAMPS_APART_M:
        assert found == y_m
    assert beside_tubes((), y_m, 0.6) == y_m


def test_a_lamp_beyond_the_tube_is_seen_from_the_front() -> None:
    tube = HungTube(Lamp(12.0, Fixture.POLISHED), 0.3, 0.3, 0.6, NoScreen())
    value = SetUp(tubes=(tube,))
    assert value.is_before_a_tube(HeatLamp(0.3, 0.5, 0.4))
    assert not value.is_before_a_tube(HeatLamp(0.9, 0.3, 0.4))


def test_signs_follow_the_verdict() -> None:
    changes = {Verdict.FAR_TOO_LOW, Verdict.LOW, Verdict.HIGH, Verdict.DANGEROUS}
    for verdict in Verdict:
        sign = sign_of(verdict)
        assert (sign is Sign.CHANGE) == (verdict in changes)
        assert (sign is Sign.FINE) == (verdict is Verdict.FINE)
    assert Spot(Quantity.UVI).sign is Sign.CANNOT_TELL


@pytest.mark.parametrize(
    ("shade", "sign"),
    [
        (Shade.THERE, Sign.FINE),
        (Shade.PROBABLY, Sign.CANNOT_TELL),
        (Shade.CANNOT_TELL, Sign.CANNOT_TELL),
        (Shade.PROBABLY_NONE, Sign.CHANGE),
        (Shade.NONE, Sign.CHANGE),
        (None, Sign.CANNOT_TELL),
    ],
)
def test_the_sign_of_the_shade(shade: Shade | None, sign: Sign) -> None:
    assert SetUp(shade=shade).shade_sign is sign


def _tube(y_m: float, x_m: float = 0.5) -> HungTube:
    return HungTube(Lamp(12.0, Fixture.POLISHED, 0.519), x_m, y_m, 0.6, NoScreen())


def test_more_than_the_verdict_may_count_for_a_sign() -> None:
    fine = judge_reading(Quantity.COOL_AIR, 26.0, 25.0, 28.0)
    low = judge_reading(Quantity.COOL_AIR, 10.0, 25.0, 28.0)
    assert Spot(Quantity.COOL_AIR, judged=fine).sign is Sign.FINE
    assert Spot(Quantity.COOL_AIR, judged=low).sign is Sign.CHANGE
    differ = Spot(Quantity.COOL_AIR, judged=low, keepers_differ=True)
    assert differ.sign is Sign.CANNOT_TELL
    assert replace(differ, held=Sign.CHANGE).sign is Sign.CHANGE
    assert Spot(Quantity.UVI).is_read


def test_a_spot_is_found_by_its_quantity_and_what_is_not_there_is_none() -> None:
    first, second = Spot(Quantity.UVI), Spot(Quantity.UVI, is_read=False)
    value = SetUp(spots=(Spot(Quantity.WATER), first, second))
    assert value.spot_of(Quantity.UVI) is first
    assert value.spot_of(Quantity.COOL_AIR) is None
    assert (SetUp().back_z_m, SetUp(back_m=BACK).back_z_m) == (None, None)
    stand = Stand(StandKind.BRANCH, Platform(0.1, 0.4, 0.1, 0.4, 0.25))
    assert SetUp(stands=(stand,)).back_z_m is None
    assert SetUp(stands=(stand,), back_m=BACK).back_z_m == pytest.approx(0.30)
    assert not SetUp().in_water


def test_a_tube_ends_with_its_dark_ends_and_a_lamp_right_there_covers_it() -> None:
    # exact: 0.519 m lit and 3 cm dark at both ends together.
    first, last = ends_of(_tube(0.3))
    assert (first, last) == pytest.approx((0.5 - 0.2745, 0.5 + 0.2745))
    value = SetUp(tubes=(_tube(0.3), _tube(0.4, 2.0)))
    for x_m, covers in ((first, True), (last, True), (first - 0.001, False), (last + 0.001, False)):
        assert value.is_before_a_tube(HeatLamp(x_m, 0.5, 0.4)) is covers
    assert value.is_before_a_tube(HeatLamp(2.1, 0.5, 0.4))


@pytest.mark.parametrize(
    ("tubes_m", "y_m", "found"),
    [
        ((0.3,), 0.3, 0.45),
        ((0.3,), 0.45, 0.45),
        ((0.3,), 0.15, 0.15),
        ((0.2, 0.3), 0.3, 0.45),
        ((0.4, 0.35), 0.3, 0.20),
        ((0.35, 0.4), 0.35, 0.20),
        ((0.1, 0.5), 0.3, 0.3),
        ((0.1, 0.48), 0.48, 0.54),
        ((0.2, 0.5), 0.5, 0.1),
        ((0.1, 0.58), 0.1, 0.05),
    ],
)
def test_where_a_lamp_goes_by_hand(tubes_m: tuple[float, ...], y_m: float, found: float) -> None:
    """15 cm in front of all, or half the way to the glass; behind all where there is more room."""
    there = beside_tubes(tuple(_tube(at) for at in tubes_m), y_m, 0.6)
    assert there == pytest.approx(found)


def test_everything_read_is_read_inside_the_box() -> None:
    placed = [spot.at_m for spot in planned().spots if spot.at_m is not None]
    assert len(placed) >= 2
    for at in placed:
        assert all(0.0 <= x <= most for x, most in zip(at, (1.2, 0.6, 0.6), strict=True))
