"""Which of what was tried is taken: the easiest that serves, else the best that is safe. Exact."""

from dataclasses import replace
from itertools import pairwise

import pytest

from calc.judgement import LIKELY
from calc.setup.mends import Mend, MendKind, is_served
from calc.setup.room import Room
from calc.uncertainty import Estimate
from calc.uv.ground import HeatPatch
from calc.uv.patches import Glance, Patches
from tests.calc.setup.looks import (
    CLASS,
    HALF_M,
    HEAT,
    HIDE,
    HIGHER,
    LENGTH,
    LIT_M,
    NO_USE,
    SERVES,
    SIDEWAYS,
    WARM_END,
    in_turn,
    meeting,
    mended,
    room,
    tried,
)


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
    assert not hide.instead
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
        *[(0.0, None, False), (0.25, 0.30, False)],
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
