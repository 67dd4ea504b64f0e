"""What is tried for the UV of a box, and in which order. By hand, exact."""

from dataclasses import replace
from math import sqrt

import pytest

from calc.uncertainty import Doubt
from calc.uv.choice import strengths_and_fixtures
from calc.uv.ground import Platform
from calc.uv.lamp import Fixture, Lamp, OwnConstant, of_length, uvi_at
from calc.uv.lengths import DARK_ENDS_M, LengthKnown, length_of_tube
from calc.uv.placement import COMFORTABLE_MINIMUM_M
from calc.uv.screen import NoScreen
from calc.uv.section import Box
from tests.calc.setup.looks import (
    BOX,
    CLASS,
    FEWER,
    HALF_M,
    HIGHER,
    LENGTH,
    LIT_M,
    LOWER,
    MORE,
    NO_USE,
    SERVES,
    SIDEWAYS,
    TUBE,
    Tried,
    away_m,
    in_turn,
    meeting,
    mended,
    room,
    tried,
)


@pytest.mark.parametrize(
    ("wanted", "middle"),
    [((3.0, 5.0), sqrt(15.0)), ((1.25, 5.0), 2.5), ((0.5, 5.0), 2.5), ((1.6, 5.0), sqrt(8.0))],
)
def test_a_platform_is_tried_at_the_upper_end_at_the_middle_and_between(
    wanted: tuple[float, float], middle: float
) -> None:
    """A range wider than 4 to 1 has its middle at half its upper end."""
    for top_m, kind in ((0.1, HIGHER), (1.0, LOWER)):
        found = tried(room(wanted=wanted, top_m=top_m), 9.0, nothing_owned=False)
        assert [kinds for kinds, _ in found] == [(kind,)] * 3
        near, between, start = (away_m(one) for _, one in found)
        for distance_m, uvi in ((near, 5.0), (start, middle)):
            assert uvi_at(TUBE, distance_m, NoScreen()) == pytest.approx(uvi, rel=0.01)
        assert between == pytest.approx(sqrt(near * start))


def test_a_platform_goes_no_lower_than_the_floor_and_no_higher_than_its_animal() -> None:
    shallow = replace(BOX, height_m=0.45)
    (low,) = tried(room(top_m=0.2, box=shallow), 9.0, nothing_owned=False)
    assert (low[0], low[1].platform.top_m) == ((LOWER,), 0.0)
    weak, wanted = Lamp(1.0, Fixture.PLAIN, LIT_M), (0.9, 1.0)
    (high,) = tried(room(weak, wanted, top_m=0.2), 0.1, 0.3, nothing_owned=False)
    assert (high[0], high[1].platform.top_m) == ((HIGHER,), 0.3)
    # One that stands higher than that may stay there, and is not taken down for it.
    assert tried(room(weak, wanted, top_m=0.5), 0.1, 0.3, nothing_owned=False) == []


@pytest.mark.parametrize(("most_m", "count"), [(0.019, 0), (0.02, 1)])
def test_two_centimetres_are_worth_a_move(most_m: float, count: int) -> None:
    weak = Lamp(1.0, Fixture.PLAIN, LIT_M)
    assert len(tried(room(weak, (0.9, 1.0), 0.0), 0.1, most_m, nothing_owned=False)) == count


def test_no_place_is_nearer_than_comfortable_however_weak_the_tube() -> None:
    weak = Lamp(1.0, Fixture.PLAIN, LIT_M)
    found = tried(room(weak, (0.9, 1.0)), 0.1, nothing_owned=False)
    assert [away_m(one) for _, one in found] == [pytest.approx(COMFORTABLE_MINIMUM_M)]


def test_of_lengths_that_are_not_told_none_gives_more_than_the_upper_end() -> None:
    untold = of_length(TUBE, length_of_tube())
    given = room(untold, (0.5, 5.0), x_m=(untold.lit_length_m + DARK_ENDS_M) / 2.0)
    along = replace(given, platform=Platform(0.12, 0.42, 0.15, 0.45, 0.5))
    near, _, start = (away_m(one) for _, one in tried(along, 9.0, nothing_owned=False)[:3])
    assert uvi_at(untold.may_be[-1], near, NoScreen()) == pytest.approx(5.0, rel=0.01)
    assert uvi_at(untold, start, NoScreen()) == pytest.approx(2.5, rel=0.01)
    # Where the middle of the range would lie nearer than that, it is not tried.
    narrow = replace(along, low_uvi=4.9)
    assert len({away_m(one) for _, one in tried(narrow, 9.0, nothing_owned=False)}) == 1


def test_by_readings_any_length_may_be_the_one_that_gives_most() -> None:
    def own(lit_m: float, constant: float, *may_be: Lamp) -> Lamp:
        read = OwnConstant(constant, Doubt("readings", 1.1, "uv_meter_judgement"))
        return replace(TUBE, lit_length_m=lit_m, own=read, may_be=may_be)

    most = own(0.819, 3.0)
    for may_be in ((most, own(1.119, 1.0)), (own(1.119, 1.0), most)):
        given = room(own(0.519, 1.0, *may_be))
        found = tried(given, 9.0, nothing_owned=False)
        assert uvi_at(most, away_m(found[0][1]), NoScreen()) == pytest.approx(5.0, rel=0.01)


@pytest.mark.parametrize(
    ("tube_m", "middle_m"),
    [
        ((0.6, 0.3), (0.6, 0.3)),
        ((0.25, 0.35), (0.25, 0.35)),
        ((0.2, 0.4), (0.2, 0.4)),
        ((0.06, 0.07), (0.15, 0.1)),
        ((1.14, 0.53), (1.05, 0.5)),
        # Right under it, or a centimetre beside: nothing to move.
        ((0.25, 0.4), None),
        ((0.26, 0.39), None),
        ((0.26, 0.43), (0.26, 0.43)),
    ],
)
def test_a_platform_goes_under_the_tube_as_far_as_the_walls_allow(
    tube_m: tuple[float, float], middle_m: tuple[float, float] | None
) -> None:
    lamp = Lamp(12.0, Fixture.POLISHED, 0.1)
    given = room(lamp, sides_m=(tube_m[1],), along=(0.1, 0.4), across=(0.3, 0.5), x_m=tube_m[0])
    found = tried(given, 9.0, nothing_owned=False)
    moved = [one for kinds, one in found if SIDEWAYS in kinds]
    if middle_m is None:
        assert moved == []
        return
    assert [one.platform.middle_m for one in moved] == [pytest.approx(middle_m)] * 2
    # At its height, and at the middle one of its levels.
    levels = [one.platform.top_m for kinds, one in found if SIDEWAYS not in kinds]
    assert [one.platform.top_m for one in moved] == [0.5, levels[len(levels) // 2]]


def test_of_two_levels_that_are_worth_a_move_the_farther_counts_as_the_middle() -> None:
    """At 0.5 m the platform is at the middle of this range already, so two levels are left."""
    given = room(wanted=(1.6, 5.0), along=(0.8, 1.1))
    found = tried(given, 9.0, nothing_owned=False)
    assert [kinds for kinds, _ in found] == [(HIGHER,)] * 2 + [(SIDEWAYS,), (SIDEWAYS, HIGHER)]
    near, between, _, moved = (away_m(one) for _, one in found)
    assert near < between == moved


def test_exactly_two_centimetres_to_the_side_are_worth_it_too() -> None:
    # 0.04 - 0.02 is 0.02 to the last digit; the tube is wherever its middle is.
    given = room(along=(0.0, 0.04), x_m=0.04)
    assert (SIDEWAYS,) in [kinds for kinds, _ in tried(given, 9.0, nothing_owned=False)]


def lamps_of(tries: Tried) -> list[tuple[float, Fixture]]:
    return [(one.tubes[0].lamp.strength_percent, one.tubes[0].lamp.fixture) for _, one in tries]


def test_everything_is_tried_the_easiest_first() -> None:
    given = room(sides_m=(0.25, 0.35), along=(0.8, 1.1), top_m=0.3, box=Box(1.3, 0.6, 1.2))
    others = [one for one in strengths_and_fixtures() if one != (12.0, Fixture.POLISHED)]
    # 6 % in a plain fixture gives 0.35 of 6, which is less than 3 over 1.4; all others enough.
    able = [one for one in others if one != (6.0, Fixture.PLAIN)]
    first, exchanged = [(HIGHER,)] * 3 + [(SIDEWAYS,), (SIDEWAYS, HIGHER)], [(CLASS,)] * len(able)
    found = tried(given, 6.0)
    kinds = [
        *first,
        *[(FEWER,), (FEWER, HIGHER)],
        *exchanged,
        *[(LENGTH,)] * 2,
        # Three tubes give 9, which is more than 1.4 times 5.
        *[(CLASS, HIGHER)] * len(others),
        (SIDEWAYS, FEWER, HIGHER),
        *[(SIDEWAYS, FEWER, CLASS, HIGHER)] * len(others),
    ]
    assert [kinds for kinds, _ in found] == kinds
    assert all(len(one.tubes) == 1 for kinds, one in found if FEWER in kinds)
    after = 7 + len(able)
    assert lamps_of(found[7:after]) == able
    assert [one.tubes[0].lamp.lit_length_m for _, one in found[after : after + 2]] == [0.519, 1.119]
    assert lamps_of(found[after + 2 : after + 2 + len(others)]) == others
    assert lamps_of(found[-len(others) :]) == others
    assert {one.tubes[0].lamp.length_known for _, one in found} == {LengthKnown.TOLD}
    # Tubes that the keeper has to buy are not thought of, whatever they would give.
    own = tried(given, 6.0, nothing_owned=False)
    assert [kinds for kinds, _ in own] == [kinds for kinds, _ in found[:7]]


def test_a_mend_tells_what_was_done_in_it() -> None:
    given = room(sides_m=(0.25, 0.35), along=(0.8, 1.1), top_m=0.3, box=Box(1.3, 0.6, 1.2))
    before, served = meeting(given, 6.0, 0.0), meeting(given)
    every = tried(given, 6.0)
    for serving, (kinds, one) in enumerate(every):
        looks = in_turn(SERVES if at == serving else NO_USE for at in range(len(every)))
        (mend,) = mended(given, before, looks, lambda _: served)
        assert (mend.kinds, mend.room, mend.met) == (kinds, one, served)


def test_at_last_one_tube_of_each_class_is_tried_where_it_is() -> None:
    found = tried(room(top_m=0.3), 30.0)
    each = [(CLASS, HIGHER)] * (len(strengths_and_fixtures()) - 1)
    assert [kinds for kinds, _ in found[3:]] == [*[(LENGTH,)] * 2, *each, (HIGHER,), *each]


@pytest.mark.parametrize(
    ("uvi", "able"),
    [
        # Of four tubes one gives a quarter, two a half and three three quarters.
        (8.0, [2, 3]),
        (4.0, [3]),
        (20.0, [1]),
        # Exactly 1.4 times off the range still counts; a hundredth past that does not.
        (2.0 * (3.0 / 1.4), [2, 3]),
        (1.99 * (3.0 / 1.4), [3]),
        (2.0 * (5.0 * 1.4), [1, 2]),
        (2.01 * (5.0 * 1.4), [1]),
    ],
)
def test_fewer_tubes_are_tried_in_place_where_they_give_about_enough(
    uvi: float, able: list[int]
) -> None:
    given = room(sides_m=(0.15, 0.25, 0.35, 0.45))
    found = [(kinds, one) for kinds, one in tried(given, uvi) if FEWER in kinds]
    assert [len(one.tubes) for kinds, one in found if kinds == (FEWER,)] == able
    levelled = [one for kinds, one in found if kinds[0] is FEWER and CLASS not in kinds]
    assert [len(one.tubes) for one in levelled[len(able) :]] == [1, 2, 3, 1]
    for _, one in found:
        assert one.tube_y_m == pytest.approx(0.3)


def test_one_tube_more_is_tried_up_to_four_and_only_inside_the_walls() -> None:
    def counts(*sides_m: float, depth_m: float = 0.6) -> list[int]:
        given = room(sides_m=sides_m, box=Box(1.2, depth_m, 1.2))
        return [len(one.tubes) for kinds, one in tried(given, 3.0) if kinds == (MORE,)]

    assert counts(0.3) == [2]
    assert counts(0.2, 0.3) == [3]
    assert counts(0.2, 0.3, 0.4) == [4]
    assert counts(0.15, 0.25, 0.35, 0.45) == []
    # A tube right at the walls is inside; one past the back or the front is not.
    assert counts(0.125, 0.375, depth_m=0.5) == [3]
    assert counts(0.12, 0.37, depth_m=0.5) == []
    assert counts(0.125, 0.375, depth_m=0.499) == []


def test_a_longer_tube_is_tried_where_it_fits_to_the_millimetre() -> None:
    def lengths(box_m: float, x_m: float, lamp: Lamp = TUBE) -> list[float]:
        given = room(lamp, box=Box(box_m, 0.6, 1.2), x_m=x_m, along=(0.2, 0.5))
        found = [one for kinds, one in tried(given, 9.0) if kinds == (LENGTH,)]
        assert all(one.tube_ends_m[0] == pytest.approx(x_m - HALF_M) for one in found)
        return [one.tubes[0].lamp.lit_length_m for one in found]

    assert lengths(1.149, HALF_M) == [0.519, pytest.approx(1.119)]
    assert lengths(1.148, HALF_M) == [0.519]
    assert lengths(1.249, HALF_M + 0.11) == [0.519]
    assert lengths(1.5, HALF_M) == [0.519, pytest.approx(1.119), pytest.approx(1.419)]
    assert lengths(1.5, HALF_M, replace(TUBE, may_be=(TUBE,))) == []
