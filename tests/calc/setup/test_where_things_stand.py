"""Where a set-up has its lamps, stands and places to read, and how far a change goes. By hand."""

from dataclasses import replace

import pytest

from calc.animal import Animal
from calc.animals import animals
from calc.heat.enclosure import Enclosure, Lid
from calc.judgement import Verdict
from calc.quantities import Quantity
from calc.setup.along import Lies
from calc.setup.arrangement import Arranged, Arrangement, room_of
from calc.setup.lit import lit_set_up, movement_of
from calc.setup.mends import Mend, MendKind
from calc.setup.plan import Plan, Request, plan_as_is
from calc.setup.planned import arranged_set_up, planned_set_up
from calc.setup.room import Room
from calc.setup.set_up import Act, HeatLamp, Hide, Movement, SetUp, Sign, Stand, StandKind, Thing
from calc.setup.sun_patch import sun_patch
from calc.uncertainty import Estimate
from calc.uv.ground import HeatPatch, Platform
from calc.uv.lamp import Fixture, Lamp
from calc.uv.patches import Place
from calc.uv.screen import NoScreen
from calc.uv.section import Box, HungTube

BACK = Estimate(0.04, 0.05, 0.07)
REQUEST = Request(
    animals()["bearded-dragon"], Enclosure(1.2, 0.6, 0.6, lid=Lid.SOLID), 3.0, 5.0, 0.05, 0.4, 21.0
)
FOUND = plan_as_is(REQUEST)
TUBE = HungTube(Lamp(12.0, Fixture.POLISHED, 0.519), 0.2745, 0.2, 0.6, NoScreen())
ROOM = Room(
    Box(1.2, 0.6, 0.6),
    (TUBE,),
    Platform(0.3, 0.7, 0.1, 0.5, 0.2),
    0.05,
    3.0,
    5.0,
    HeatPatch(0.8, 0.22, 0.1),
)


def planned(
    request: Request = REQUEST,
    found: Plan | None = None,
    *,
    in_water: bool = False,
    unchecked: bool = False,
) -> SetUp:
    assert isinstance(FOUND, Plan)
    found = FOUND if found is None else found
    return planned_set_up(
        found, request, BACK, StandKind.BRANCH, in_water=in_water, unchecked=unchecked
    )


def test_a_plan_tells_its_box_its_animal_and_what_is_wanted() -> None:
    assert isinstance(FOUND, Plan)
    value = planned()
    assert value.box == Box(1.2, 0.6, 0.6)
    assert (value.lid, value.animal, value.back_m) == (Lid.SOLID, "bearded-dragon", BACK)
    assert value.uvi_wanted == (3.0, 5.0)
    assert value.stands == (Stand(StandKind.BRANCH, FOUND.places.platform),)
    assert (value.tubes, value.shade) == (FOUND.places.tubes, FOUND.places.met.shade)
    assert (value.in_water, planned(in_water=True).in_water) == (False, True)


def test_a_plan_is_read_near_the_ends_of_its_platform_and_of_its_box() -> None:
    """The meter at 85 % of the platform, the gun at 12 %, the air at 93 % of the box."""
    assert isinstance(FOUND, Plan)
    platform = Platform(0.2, 0.4, 0.1, 0.5, 0.3)
    found = replace(
        FOUND,
        places=replace(FOUND.places, room=replace(FOUND.places.room, platform=platform)),
        light=replace(FOUND.light, platform_top_m=0.3),
    )
    uvi, surface, cool = planned(found=found).spots
    assert uvi.at_m == pytest.approx((0.37, 0.3, 0.35))
    assert surface.at_m == pytest.approx((0.224, 0.3, 0.3))
    assert cool.at_m == pytest.approx((1.116, 0.3, 0.072))
    assert [spot.quantity for spot in (uvi, surface, cool)] == [
        Quantity.UVI,
        Quantity.BASKING_SURFACE,
        Quantity.COOL_AIR,
    ]
    # The UV is worked out, the rest waits to be read.
    assert [spot.is_read for spot in (uvi, surface, cool)] == [False, True, True]
    assert (uvi.wanted, uvi.value) == ((3.0, 5.0), found.light.uvi)
    for spot, target in (
        (surface, REQUEST.animal.basking_surface_c),
        (cool, REQUEST.animal.cool_air_c),
    ):
        assert target is not None
        assert (spot.wanted, spot.value, spot.judged) == ((target.low, target.high), None, None)


def test_only_what_an_animal_is_known_to_want_is_read() -> None:
    def read(animal: Animal) -> list[Quantity]:
        return [spot.quantity for spot in planned(replace(REQUEST, animal=animal)).spots[1:]]

    dragon = REQUEST.animal
    no_cool = replace(dragon, cool_air_c=None, warm_air_c=dragon.basking_surface_c)
    assert read(no_cool) == [Quantity.BASKING_SURFACE, Quantity.WARM_AIR]
    assert read(replace(no_cool, warm_air_c=None)) == [Quantity.BASKING_SURFACE]
    assert read(replace(dragon, basking_surface_c=None)) == [Quantity.COOL_AIR]


def test_a_uv_range_from_memory_makes_nothing_of_a_plan_sure() -> None:
    assert isinstance(FOUND, Plan)
    weak = replace(REQUEST, low_uvi=1.0, high_uvi=1.5)
    for unchecked, verdict in ((False, Verdict.HIGH), (True, Verdict.PROBABLY_HIGH)):
        judged = planned(weak, unchecked=unchecked).spots[0].judged
        assert judged is not None
        assert judged.verdict is verdict


def test_a_plans_lamp_hangs_its_distance_over_the_platform_and_is_what_is_bought() -> None:
    assert isinstance(FOUND, Plan)
    warmth = FOUND.warmth
    assert warmth.first is not None
    heat = HeatPatch(0.31, 0.22, 0.1)
    two = replace(
        FOUND,
        places=replace(FOUND.places, heat=heat),
        light=replace(FOUND.light, platform_top_m=0.2),
        warmth=replace(
            warmth, lamp_distance_m=0.25, first=replace(warmth.first, buy_w=(75.0, 50.0))
        ),
    )
    (lamp,) = planned(found=two).lamps
    assert (lamp.x_m, lamp.y_m, lamp.z_m) == pytest.approx((0.31, 0.22, 0.45))
    assert (lamp.sizes_w, lamp.patch) == ((50.0, 75.0), heat)
    own = replace(warmth, watts=Estimate.exact(60.0), first=None)
    assert planned(found=replace(two, warmth=own)).lamps[0].sizes_w == (60.0,)
    for nothing in (replace(own, watts=None), replace(own, lamp_distance_m=None)):
        assert planned(found=replace(two, warmth=nothing)).lamps == ()


def test_a_lit_room_tells_its_places_and_its_hide() -> None:
    met = ROOM.met(4)
    corner = Place(1.1, 0.5, 0.05, Estimate(0.1, 0.2, 0.3))
    hide = Mend((MendKind.HIDE,), ROOM, met, corner)
    heat = replace(hide, kinds=(MendKind.HEAT_LAMP,), hide=None)
    value = lit_set_up(ROOM, met, (hide, heat))
    assert (value.box, value.tubes, value.shade) == (ROOM.box, ROOM.tubes, met.shade)
    assert value.stands == (Stand(StandKind.PLATFORM, ROOM.platform),)
    assert (value.back_m, value.uvi_wanted) == (Estimate.exact(0.05), (3.0, 5.0))
    assert value.hides == (Hide(1.1, 0.5, is_there=False),)
    assert value.first == Movement(Act.ADD, (Thing.HIDE,))
    strong, weak = value.spots
    for spot, place in ((strong, met.strongest), (weak, met.weakest)):
        assert spot.at_m == (place.x_m, place.y_m, place.z_m)
        assert (spot.quantity, spot.value, spot.is_read) == (Quantity.UVI, place.uvi, False)
    assert (strong.wanted, strong.judged) == ((3.0, 5.0), met.judged)
    # What the weakest place means is told by the shade.
    assert (weak.wanted, weak.judged, weak.sign) == (None, None, Sign.CANNOT_TELL)
    alone = lit_set_up(ROOM, met, ())
    assert (alone.first, alone.hides) == (None, ())


def test_the_heat_lamp_of_a_lit_room_hangs_level_with_its_tubes_and_beside_them() -> None:
    met = ROOM.met(4)
    patch = HeatPatch(0.8, 0.22, 0.1)
    # 0.22 is under the tube at 0.2, so the lamp hangs 15 cm in front of that.
    (lamp,) = lit_set_up(ROOM, met, ()).lamps
    assert lamp == HeatLamp(0.8, lamp.y_m, 0.6, (), patch)
    assert lamp.y_m == pytest.approx(0.35)
    in_front = replace(ROOM, heat=replace(patch, y_m=0.5))
    assert lit_set_up(in_front, met, ()).lamps[0].y_m == 0.5
    assert lit_set_up(replace(ROOM, heat=None), met, ()).lamps == ()


def test_where_uv_heat_and_light_meet_is_told_where_a_heat_lamp_hangs() -> None:
    assert isinstance(FOUND, Plan)
    met = ROOM.met(4)
    assert lit_set_up(ROOM, met, ()).sun == sun_patch(ROOM, met)
    assert lit_set_up(replace(ROOM, heat=None), met, ()).sun is None
    assert planned().sun == sun_patch(room_of(FOUND), FOUND.places.met)
    without = replace(FOUND, warmth=replace(FOUND.warmth, watts=None))
    assert planned(found=without).sun is None


@pytest.mark.parametrize("way", list(Arrangement))
def test_a_plan_hung_another_way_keeps_its_places_and_has_the_lamps_of_that_room(
    way: Arrangement,
) -> None:
    assert isinstance(FOUND, Plan)
    plan = planned(in_water=True)
    met = ROOM.met(4)
    own = FOUND if way in (Arrangement.ACROSS, Arrangement.WHOLE_LENGTH) else None
    value = arranged_set_up(Arranged(way, ROOM, met, own), plan)
    if own or way is Arrangement.SIDE_BY_SIDE:
        # A plan of its own has its set-up.
        assert value is plan
        return
    there = lit_set_up(ROOM, met, ())
    assert (value.tubes, value.lamps) == (there.tubes, there.lamps)
    assert (value.shade, value.sun) == (there.shade, there.sun)
    kept = ("box", "stands", "spots", "lid", "animal", "in_water", "back_m", "is_turned")
    assert all(getattr(value, name) == getattr(plan, name) for name in kept)


def test_a_plan_with_its_tube_across_has_its_places_in_the_turned_box() -> None:
    across = replace(REQUEST, lies=Lies.ACROSS)
    found = plan_as_is(across)
    assert isinstance(found, Plan)
    value, place = planned(across, found), found.places.platform
    assert value.is_turned
    assert value.box == Box(0.6, 1.2, 0.6)
    uvi, surface, cool = (spot.at_m for spot in value.spots)
    long = place.y1_m - place.y0_m
    assert uvi == pytest.approx((0.3, place.y0_m + 0.85 * long, place.top_m + 0.05))
    assert surface == pytest.approx((0.3, place.y0_m + 0.12 * long, place.top_m))
    assert cool == pytest.approx((0.3, 0.93 * 1.2, 0.072))
    (lamp,) = value.lamps
    assert lamp.y_m - value.tubes[0].y_m == pytest.approx(0.15)


def moved(kind: MendKind, after: Room) -> Movement:
    # The first of several kinds is the change that is told.
    return movement_of(ROOM, Mend((kind, MendKind.OTHER_TUBE), after, after.met(4)))


@pytest.mark.parametrize(
    ("kind", "change"),
    [
        (MendKind.FEWER_TUBES, (Act.TAKE_AWAY, Thing.TUBE)),
        (MendKind.OTHER_TUBE, (Act.EXCHANGE, Thing.TUBE)),
        (MendKind.OTHER_LENGTH, (Act.EXCHANGE, Thing.TUBE)),
        (MendKind.MORE_TUBES, (Act.ADD, Thing.TUBE)),
        (MendKind.HIDE, (Act.ADD, Thing.HIDE)),
    ],
)
def test_what_does_not_move_has_no_way(kind: MendKind, change: tuple[Act, Thing]) -> None:
    act, thing = change
    assert moved(kind, ROOM.with_platform(0.6, 0.3, 0.3)) == Movement(act, (thing,))


def test_a_platform_moves_by_what_lies_between_and_takes_its_heat_lamp_along() -> None:
    raised = moved(MendKind.PLATFORM_HIGHER, ROOM.with_platform(0.5, 0.3, 0.35))
    assert raised == Movement(Act.MOVE, (Thing.STAND,), raised.by_m)
    assert raised.by_m == pytest.approx((0.0, 0.0, 0.15))
    for middle_m, by_m in (((0.6, 0.3), (0.1, 0.0)), ((0.5, 0.35), (0.0, 0.05))):
        aside = moved(MendKind.PLATFORM_SIDEWAYS, ROOM.with_platform(*middle_m, 0.1))
        assert aside.things == (Thing.STAND, Thing.HEAT_LAMP)
        assert aside.by_m == pytest.approx((*by_m, -0.1))


def test_a_tube_and_a_heat_lamp_move_by_what_lies_between() -> None:
    to_wall = replace(ROOM, tubes=(replace(TUBE, x_m=0.1745),))
    tube = moved(MendKind.TUBE_TO_WARM_END, to_wall)
    assert tube == Movement(Act.MOVE, (Thing.TUBE,), tube.by_m)
    assert tube.by_m == pytest.approx((-0.1, 0.0, 0.0))
    over = replace(ROOM, heat=HeatPatch(0.5, 0.3, 0.1))
    lamp = moved(MendKind.HEAT_LAMP, over)
    assert lamp == Movement(Act.MOVE, (Thing.HEAT_LAMP,), lamp.by_m)
    assert lamp.by_m == pytest.approx((-0.3, 0.08, 0.0))
