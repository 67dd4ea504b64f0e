"""What is tried for the UV of a box, in which order, and which of it is taken. By hand, exact.

The looks at a room stand in here: what is tried is seen from outside, and each may be the one that
serves.
"""

from collections.abc import Callable, Iterable
from dataclasses import replace
from itertools import pairwise
from math import sqrt

import pytest

from calc.judgement import LIKELY, judge_value
from calc.quantities import Quantity
from calc.setup.mends import Mend, MendKind, is_served, mends_for
from calc.setup.room import Room
from calc.uncertainty import Doubt, Estimate
from calc.uv.ground import HeatPatch, Platform
from calc.uv.lamp import Fixture, Lamp, OwnConstant, of_length, uvi_at
from calc.uv.lengths import DARK_ENDS_M, LengthKnown, length_of_tube
from calc.uv.patches import Glance, Patches
from calc.uv.placement import COMFORTABLE_MINIMUM_M
from calc.uv.screen import NoScreen
from calc.uv.section import Box, HungTube

LIT_M = 0.819
HALF_M = (LIT_M + DARK_ENDS_M) / 2.0
TUBE = Lamp(12.0, Fixture.POLISHED, LIT_M)
BOX = Box(1.2, 0.6, 1.2)
HIDE, LOWER, HIGHER = MendKind.HIDE, MendKind.PLATFORM_LOWER, MendKind.PLATFORM_HIGHER
SIDEWAYS, FEWER, MORE = MendKind.PLATFORM_SIDEWAYS, MendKind.FEWER_TUBES, MendKind.MORE_TUBES
CLASS, LENGTH, HEAT = MendKind.OTHER_TUBE, MendKind.OTHER_LENGTH, MendKind.HEAT_LAMP
WARM_END = MendKind.TUBE_TO_WARM_END
NO_USE, SERVES = Glance(0.0, 0.0, 1.0, 0.0), Glance(1.0, 1.0, 0.0, 1.0)

Tried = list[tuple[tuple[MendKind, ...], Room]]


def room(
    lamp: Lamp = TUBE,
    wanted: tuple[float, float] = (3.0, 5.0),
    top_m: float = 0.5,
    sides_m: tuple[float, ...] = (0.3,),
    along: tuple[float, float] = (HALF_M - 0.15, HALF_M + 0.15),
    across: tuple[float, float] = (0.15, 0.45),
    x_m: float = HALF_M,
    box: Box = BOX,
) -> Room:
    """One tube begins at the warm end wall and hangs over the middle of the platform."""
    tubes = tuple(HungTube(lamp, x_m, y_m, box.height_m, NoScreen()) for y_m in sides_m)
    return Room(box, tubes, Platform(*along, *across, top_m), 0.05, *wanted)


def meeting(
    given: Room,
    uvi: float | None = None,
    in_range: float = 1.0,
    chance: float = 0.0,
    shade: float = 1.0,
    heat: float | None = None,
) -> Patches:
    """What is met in a room, if its strongest place had so much [1] without any doubt."""
    low, high = given.low_uvi, given.high_uvi
    value = Estimate.exact((low + high) / 2.0 if uvi is None else uvi)
    found = given.met(4)
    return replace(
        found,
        in_range=Estimate.exact(in_range),
        chance_in_range=chance,
        strongest=replace(found.strongest, uvi=value),
        judged=judge_value(Quantity.UVI, value, low, high),
        shade_chance=shade,
        too_near=False,
        heat_in_range=None if heat is None else Estimate.exact(heat),
    )


def mended(
    given: Room,
    before: Patches,
    glance: Callable[[Room], Glance],
    after: Callable[[Room], Patches],
    highest_m: float = 1.2,
    *,
    nothing_owned: bool = True,
) -> tuple[Mend, ...]:
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(Room, "glance", glance)
        patch.setattr(Room, "met", lambda one, _cells: after(one))
        return mends_for(given, before, highest_m, nothing_owned=nothing_owned)


def in_turn(glances: Iterable[Glance]) -> Callable[[Room], Glance]:
    told = iter(glances)
    return lambda _: next(told)


def kinds_of(given: Room, one: Room) -> tuple[MendKind, ...]:
    """What was done to a room, as it is seen in it."""
    (before, after), (old, new) = (
        (r.platform for r in (given, one)),
        (r.tubes for r in (given, one)),
    )
    classes, lengths = (
        [(lamp.strength_percent, lamp.fixture) for lamp in (old[0].lamp, new[0].lamp)],
        [lamp.lit_length_m for lamp in (old[0].lamp, new[0].lamp)],
    )
    done = (
        (SIDEWAYS, before.middle_m != after.middle_m),
        (FEWER, len(new) < len(old)),
        (MORE, len(new) > len(old)),
        (CLASS, classes[0] != classes[1]),
        (LENGTH, lengths[0] != lengths[1]),
        (LOWER, after.top_m < before.top_m),
        (HIGHER, after.top_m > before.top_m),
    )
    return tuple(kind for kind, is_done in done if is_done)


def tried(
    given: Room,
    uvi: float,
    highest_m: float = 1.2,
    *,
    nothing_owned: bool = True,
) -> Tried:
    """Everything that is looked at where nothing serves, each with what was done."""
    looked: list[Room] = []

    def glance(one: Room) -> Glance:
        looked.append(one)
        return NO_USE

    before = meeting(given, uvi, 0.0)
    found = mended(given, before, glance, lambda _: before, highest_m, nothing_owned=nothing_owned)
    assert found == ()
    return [(kinds_of(given, one), one) for one in looked]


def away_m(one: Room) -> float:
    return one.tubes[0].z_m - one.back_z_m


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


def test_everything_is_tried_the_easiest_first() -> None:
    given = room(sides_m=(0.25, 0.35), along=(0.8, 1.1), top_m=0.3, box=Box(1.3, 0.6, 1.2))
    up, once = (SIDEWAYS, HIGHER), (SIDEWAYS, FEWER, HIGHER)
    found = tried(given, 6.0)
    assert [kinds for kinds, _ in found] == [
        *[(HIGHER,)] * 3,
        *[(SIDEWAYS,), up],
        *[(FEWER,), (FEWER, HIGHER)],
        # 12 % in a plain fixture gives 0.7 of 6; 6 % gives half, and in a plain one too little.
        *[(CLASS,)] * 2,
        *[(LENGTH,)] * 2,
        # Three tubes give 9, which is more than 1.4 times 5.
        *[(CLASS, HIGHER)] * 3,
        once,
        *[(SIDEWAYS, FEWER, CLASS, HIGHER)] * 3,
    ]
    assert all(len(one.tubes) == 1 for kinds, one in found if FEWER in kinds)
    lamps = [(one.tubes[0].lamp.strength_percent, one.tubes[0].lamp.fixture) for _, one in found]
    others = [(6.0, Fixture.POLISHED), (6.0, Fixture.PLAIN), (12.0, Fixture.PLAIN)]
    assert lamps[7:9] == [others[0], others[2]]
    assert lamps[11:14] == others
    assert lamps[15:] == others
    assert [one.tubes[0].lamp.lit_length_m for _, one in found[9:11]] == [0.519, 1.119]
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
    assert [kinds for kinds, _ in found[-4:]] == [(HIGHER,), *[(CLASS, HIGHER)] * 3]
    assert [kinds for kinds, _ in found[3:-4]] == [*[(LENGTH,)] * 2, *[(CLASS, HIGHER)] * 3]


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


def first(
    given: Room,
    glances: dict[MendKind, Glance],
    after: Patches | None = None,
    before: Patches | None = None,
) -> Mend | None:
    """The first mend where what is done alone is looked at as told, and is met as told."""
    before = meeting(given, 2.0, 0.0) if before is None else before
    after = meeting(given) if after is None else after
    kinds = [kinds for kinds, _ in tried(given, before.strongest.uvi.best)]
    looks = in_turn(NO_USE if more else glances.get(kind, NO_USE) for kind, *more in kinds)
    found = mended(given, before, looks, lambda _: after)
    return found[0] if found else None


def test_the_easiest_that_serves_is_taken_though_a_later_is_likelier() -> None:
    given = room(along=(0.8, 1.1), top_m=0.5)
    enough, best = Glance(0.5, 0.4, 0.10, 0.0), Glance(1.0, 1.0, 0.0, 0.0)
    found = first(given, {SIDEWAYS: enough, CLASS: best, LENGTH: best})
    assert found is not None
    assert found.kinds == (SIDEWAYS,)
    # A little less in the range, or a little likelier above it, and the next kind is looked at.
    for short in (replace(enough, in_range=0.49), replace(enough, chance_above=0.11)):
        found = first(given, {SIDEWAYS: short, LENGTH: best})
        assert found is not None
        assert found.kinds == (LENGTH,)


def test_of_one_kind_the_likeliest_in_range_is_taken() -> None:
    given = room(along=(0.8, 1.1), top_m=0.3)
    some = Glance(0.9, 0.6, 0.0, 0.0)
    for chance, kind in ((0.5, HIGHER), (0.7, SIDEWAYS)):
        found = first(given, {HIGHER: some, SIDEWAYS: replace(some, chance_in_range=chance)})
        assert found is not None
        assert found.kinds == (kind,)


def test_where_none_serves_the_best_that_is_safe_is_taken_if_it_is_worth_it() -> None:
    given = room(top_m=0.3)
    dim = Glance(0.3, 0.3, 0.5, 0.0)
    looks = {HIGHER: dim, LENGTH: replace(dim, chance_above=0.51, chance_in_range=0.9)}
    weak = meeting(given, 2.0, 0.0)
    for before, after, kinds in ((0.0, 0.10, (HIGHER,)), (0.0, 0.09, None), (0.5, 0.59, None)):
        met, now = (meeting(given, 2.0, 0.0, chance) for chance in (after, before))
        found = first(given, looks, met, now)
        assert (found.kinds if found else None) == kinds
    # Away from too much every step is worth it, and none that is itself too much.
    strong = meeting(given, 6.0, 0.0, 0.5)
    found = first(given, looks, meeting(given, 2.0, 0.0, 0.0), strong)
    assert found is not None
    assert found.kinds == (HIGHER,)
    assert first(given, looks, meeting(given, 6.0, 0.0, 0.9), weak) is None


def test_a_look_that_serves_is_not_believed_before_it_is_worked_out() -> None:
    given = room(top_m=0.3)
    after = meeting(given, 2.0, 0.0, 0.05)
    assert first(given, {HIGHER: SERVES, LENGTH: SERVES}, after) is None


@pytest.mark.parametrize(
    ("uvi", "in_range", "served"),
    [(4.0, 0.5, True), (4.0, 0.49, False), (2.0, 1.0, False), (6.0, 1.0, False)],
)
def test_a_platform_is_served_with_half_of_it_in_range(
    uvi: float, in_range: float, served: bool
) -> None:
    met = meeting(room(), uvi, in_range)
    assert is_served(met) is served
    assert not is_served(replace(met, too_near=True))


def shaded(given: Room, chances: dict[tuple[float, float], float], after: Patches) -> list[Mend]:
    """The mends for shade where a tube of such a length that begins there leaves it so likely."""

    def glance(one: Room) -> Glance:
        at = round(one.tube_ends_m[0], 3), one.tubes[0].lamp.lit_length_m
        return replace(NO_USE, shade_chance=chances.get(at, 0.0))

    before = meeting(given, shade=0.5)
    hide, *others = mended(given, before, glance, lambda _: after)
    assert (hide.kinds, hide.room, hide.met, hide.hide) == (
        (HIDE,),
        given,
        before,
        before.weakest,
    )
    assert all(one.instead and one.hide is None for one in others)
    return others


def test_instead_of_a_hide_the_tube_goes_to_the_warm_end_or_is_a_shorter_one() -> None:
    given = room(x_m=HALF_M + 0.1)
    to_wall, shorter, same = (0.0, LIT_M), (0.1, 0.519), (0.1, LIT_M)
    good = meeting(given)
    (moved,) = shaded(given, {to_wall: LIKELY, shorter: 1.0}, good)
    assert moved.kinds == (WARM_END,)
    assert moved.room.tube_ends_m[0] == pytest.approx(0.0)
    (other,) = shaded(given, {to_wall: LIKELY - 0.01, shorter: 1.0, same: 1.0}, good)
    assert other.kinds == (LENGTH,)
    assert other.room.tubes[0].lamp.lit_length_m == 0.519
    # Neither a longer tube nor the same one leaves shade where this one does not.
    assert shaded(given, {same: 1.0, (0.1, 1.119): 1.0}, good) == []
    # What is looked at is then worked out: it has to leave shade, and the UV as it was.
    for worse in (meeting(given, shade=0.5), meeting(given, in_range=0.0)):
        assert shaded(given, {to_wall: 1.0, shorter: 1.0}, worse) == []
    # A tube that begins at the wall has nowhere to go.
    assert shaded(room(), {(0.0, LIT_M): 1.0}, good) == []


def test_a_light_that_is_too_strong_gets_a_hide_and_nothing_is_built_on_it() -> None:
    given = replace(room(), heat=HeatPatch(1.0, 0.3, 0.1))
    too_much = meeting(given, 6.0, 0.0, 0.0, 0.5, 0.0)
    after = meeting(given, 6.0, 0.0, 0.0, 1.0, 1.0)
    looks = replace(NO_USE, shade_chance=1.0)
    (hide,) = mended(given, too_much, lambda _: looks, lambda _: after)
    assert hide.kinds == (HIDE,)
    assert (
        mended(given, replace(too_much, shade_chance=1.0), lambda _: looks, lambda _: after) == ()
    )


@pytest.mark.parametrize(
    ("before", "after", "moves"),
    [
        *[(0.0, 0.10, True), (0.0, 0.09, False), (0.49, 0.7, True), (0.5, 1.0, False)],
        (0.0, None, False),
    ],
)
def test_a_heat_lamp_moves_over_the_platform_where_that_helps(
    before: float, after: float | None, moves: bool
) -> None:
    given = replace(room(), heat=HeatPatch(1.0, 0.2, 0.1))
    met, then = (meeting(given, heat=share) for share in (before, after))
    found = mended(given, met, lambda _: NO_USE, lambda _: then)
    assert [mend.kinds for mend in found] == [(HEAT,)] * moves
    for mend in found:
        assert mend.room.heat == HeatPatch(*given.platform.middle_m, 0.1)
        assert mend.met is then
    assert mended(replace(given, heat=None), met, lambda _: NO_USE, lambda _: then) == ()


def test_a_mend_is_built_on_the_one_before() -> None:
    given = replace(room(top_m=0.3), heat=HeatPatch(1.0, 0.2, 0.1))
    weak = meeting(given, 2.0, 0.0, shade=0.5, heat=0.0)
    after = meeting(given, shade=0.5, heat=1.0)
    found = mended(given, weak, lambda _: SERVES, lambda _: after, nothing_owned=False)
    assert [mend.kinds for mend in found] == [(HIGHER,), (HIDE,)]
    less = replace(after, heat_in_range=Estimate.exact(0.2))
    mets = iter([less, after])
    light, hide, heat = mended(
        given, weak, lambda _: SERVES, lambda _: next(mets), nothing_owned=False
    )
    assert [light.met, hide.met, heat.met] == [less, less, after]
    assert light.room == hide.room != given
    assert heat.room.platform == light.room.platform
    tops = [one.platform.top_m for one in (given, light.room)]
    assert all(low < high for low, high in pairwise(tops))
