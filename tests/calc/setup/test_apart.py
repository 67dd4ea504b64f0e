"""What touches what: distances by hand in rooms of round figures, and the limits they break."""

from dataclasses import replace

import pytest

from calc.animals import animals
from calc.heat.enclosure import Enclosure, Lid
from calc.setup.apart import AtLid, Kept, apart, at_lid
from calc.setup.arrangement import Arranged, Arrangement, arranged
from calc.setup.light import LAMPS_APART_M
from calc.setup.plan import Plan, Request, plan_as_is
from calc.uv.ground import HeatPatch, Platform
from calc.uv.section import Box

DRAGON = animals()["bearded-dragon"]
REQUEST = Request(DRAGON, Enclosure(1.2, 0.6, 0.6, lid=Lid.SOLID), 3.0, 5.0, 0.05, 0.4, 21.0)


def planned() -> Plan:
    found = plan_as_is(REQUEST)
    assert isinstance(found, Plan)
    return found


PLAN = planned()
WAYS = {one.way: one for one in arranged(PLAN, REQUEST)}


def by_hand(away_m: float, heat_y_m: float = 0.25, tube_z_m: float = 0.55) -> tuple[Arranged, Plan]:
    """Return one tube over the back edge of a platform, and a heat lamp so far over it."""
    old = WAYS[Arrangement.SIDE_BY_SIDE]
    room = replace(
        old.room,
        box=Box(1.2, 0.6, 0.6),
        platform=Platform(0.2, 0.5, 0.2, 0.5, 0.2),
        back_m=0.05,
        tubes=(replace(old.room.tubes[0], x_m=0.45, y_m=0.1, z_m=tube_z_m),),
        heat=HeatPatch(0.4, heat_y_m, 0.1),
    )
    plan = replace(PLAN, warmth=replace(PLAN.warmth, lamp_distance_m=away_m))
    return replace(old, room=room), plan


def test_distances_are_those_of_a_drawing_by_hand() -> None:
    found = apart(*by_hand(0.35))
    assert found.tube_to_lamp_m == pytest.approx(0.15)
    # 0.1 m behind the platform's edge and 0.3 m over a back on it.
    assert found.tube_to_back_m == pytest.approx(0.1**0.5)
    assert found.lamp_to_back_m == pytest.approx(0.30)
    assert found.tube_over_lid_m == pytest.approx(-0.05)
    assert found.lamp_over_lid_m == pytest.approx(-0.05)
    assert found.warm_to_cool_m == pytest.approx(0.8)
    assert found.kept is Kept.ALL


def test_a_distance_shorter_than_its_limit_is_told_the_gravest_first() -> None:
    assert apart(*by_hand(0.20)).kept is Kept.ALL
    assert apart(*by_hand(0.19)).kept is Kept.LAMP_TO_PLATFORM
    assert apart(*by_hand(0.19, tube_z_m=0.40)).kept is Kept.TUBE_TO_BACK


def test_lamps_with_no_room_beside_each_other_are_too_near() -> None:
    one, plan = by_hand(0.35)
    narrow = replace(one.room, box=Box(1.2, 0.3, 0.6), platform=Platform(0.2, 0.5, 0.1, 0.25, 0.2))
    found = apart(replace(one, room=replace(narrow, heat=HeatPatch(0.4, 0.2, 0.05))), plan)
    assert found.tube_to_lamp_m == pytest.approx(0.1)
    assert found.kept is Kept.TUBE_TO_LAMP


def test_no_heat_lamp_has_no_distances() -> None:
    one, plan = by_hand(0.35)
    found = apart(replace(one, room=replace(one.room, heat=None)), plan)
    assert (found.tube_to_lamp_m, found.lamp_to_back_m, found.warm_to_cool_m) == (None,) * 3
    assert found.kept is Kept.ALL


@pytest.mark.parametrize("way", list(WAYS))
def test_every_way_of_a_roomy_box_keeps_its_limits(way: Arrangement) -> None:
    found = apart(WAYS[way], PLAN)
    assert found.kept is Kept.ALL
    assert found.tube_to_lamp_m is not None
    assert found.tube_to_lamp_m >= LAMPS_APART_M - 1e-9


def test_across_the_heat_lamp_hangs_beside_the_tube_towards_the_cool_wall() -> None:
    along, across = (
        apart(WAYS[way], PLAN) for way in (Arrangement.SIDE_BY_SIDE, Arrangement.ACROSS)
    )
    assert along.warm_to_cool_m is not None
    # Tube and lamp share the way between them about the platform's middle.
    assert across.warm_to_cool_m == pytest.approx(along.warm_to_cool_m - LAMPS_APART_M / 2.0)


@pytest.mark.parametrize(
    ("over_m", "at"), [(0.02, AtLid.OVER), (0.0, AtLid.ON), (-0.05, AtLid.UNDER)]
)
def test_a_lamp_lies_on_a_lid_or_hangs_over_or_under_it(over_m: float, at: AtLid) -> None:
    assert at_lid(over_m) is at
