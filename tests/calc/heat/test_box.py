"""The box of two halves: what holds whatever the box, and what was worked out another way."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st
from numpy.typing import NDArray
from scipy.optimize import fsolve

from calc.animals import animals
from calc.heat.air import dry_air
from calc.heat.box import (
    MOST_RISE_K,
    Spot,
    end_flow,
    ends_held,
    likely_cool_end,
    second_heater,
    watts_to_hold,
)
from calc.heat.enclosure import Enclosure, LampPlace, Lid, Material
from calc.heat.night import emitter_for, night_plan
from calc.roots import rising_root
from calc.validity import OutsideModelError
from tests.some import some

MANY = settings(max_examples=some(80), deadline=None)
LENGTHS, DEPTHS, HEIGHTS = st.floats(0.2, 2.0), st.floats(0.15, 0.9), st.floats(0.15, 1.2)
BOXES = st.builds(
    Enclosure, LENGTHS, DEPTHS, HEIGHTS, st.sampled_from(Material), st.sampled_from(Lid)
)
SPOTS, ROOMS, RISES = st.sampled_from(Spot), st.floats(5.0, 25.0), st.floats(0.2, 12.0)
LIDS = (Lid.SOLID, Lid.PART_MESH, Lid.FULL_MESH)


def need(box: Enclosure, rise: float, room: float, spot: Spot) -> float:
    return watts_to_hold(box, room + rise, room, spot).total_w.best


@MANY
@given(BOXES, RISES, ROOMS, SPOTS)
def test_more_mesh_never_needs_less_heat(
    box: Enclosure, rise: float, room: float, spot: Spot
) -> None:
    needs = [need(replace(box, lid=lid), rise, room, spot) for lid in LIDS]
    assert needs[0] < needs[1] < needs[2]


@MANY
@given(BOXES, RISES, ROOMS, SPOTS, st.floats(0.0, 15.0))
def test_a_warmer_room_never_needs_more(
    box: Enclosure, rise: float, room: float, spot: Spot, warmer: float
) -> None:
    cool, later = room + rise, room + warmer
    before, after = (watts_to_hold(box, cool, air, spot).total_w for air in (room, later))
    assert after.best <= before.best + 1e-9
    assert after.high <= before.high + 1e-9


@MANY
@given(BOXES, RISES, ROOMS, SPOTS, st.sampled_from([0, 1, 2]), st.floats(1.01, 1.5))
def test_a_larger_box_needs_more(
    box: Enclosure, rise: float, room: float, spot: Spot, side: int, larger: float
) -> None:
    sides = (box.length_m, box.depth_m, box.height_m)
    longer, deeper, higher = (x * (larger if i == side else 1.0) for i, x in enumerate(sides))
    other = Enclosure(longer, deeper, higher, box.material, box.lid)
    assert need(other, rise, room, spot) > need(box, rise, room, spot)


@MANY
@given(BOXES, st.floats(0.0, 250.0), ROOMS, SPOTS)
@example(Enclosure(1.0, 0.5, 0.5, Material.GLASS, Lid.SOLID), 2.0**-24, 5.0, Spot.WARM_END)
def test_the_cool_end_lies_between_the_room_and_the_warm_end(
    box: Enclosure, watts: float, room: float, spot: Spot
) -> None:
    try:
        held = ends_held(box, watts, room, spot)
    except OutsideModelError:
        most = watts_to_hold(box, room + MOST_RISE_K, room, spot) if room <= 10.0 else None
        assert most is None or watts * 1.35 > most.total_w.best
        return
    for cool, warm in (
        (held.cool_c.low, held.warm_c.low),
        (held.cool_c.best, held.warm_c.best),
        (held.cool_c.high, held.warm_c.high),
    ):
        # The root is found to a share of the rise alone.
        assert room - 1e-6 <= cool <= warm + 1e-6


@MANY
@given(BOXES, RISES, ROOMS, SPOTS)
def test_what_the_need_holds_is_what_was_wanted_at_both_ends(
    box: Enclosure, rise: float, room: float, spot: Spot
) -> None:
    wanted = watts_to_hold(box, room + rise, room, spot)
    assert wanted.walls_w + wanted.air_w == pytest.approx(wanted.total_w.best)
    # The range is symmetrical: as far below as above, as a factor.
    total = wanted.total_w
    assert total.low * total.high == pytest.approx(total.best**2)
    try:
        held = ends_held(box, total.best, room, spot)
    except OutsideModelError:
        assert ends_held(box, total.low, room, spot).cool_c.best < room + rise
        return
    assert held.cool_c.best == pytest.approx(room + rise, abs=1e-5)
    assert held.warm_c.best == pytest.approx(wanted.warm_c, abs=1e-5)


@MANY
@given(BOXES, RISES, ROOMS)
def test_heat_nearer_to_the_middle_warms_the_cool_end_with_fewer_watts(
    box: Enclosure, rise: float, room: float
) -> None:
    needs = [watts_to_hold(box, room + rise, room, spot) for spot in Spot]
    assert needs[0].total_w.best > needs[1].total_w.best > needs[2].total_w.best
    assert needs[0].warm_c > needs[1].warm_c > needs[2].warm_c == pytest.approx(room + rise)


@pytest.mark.parametrize("lid", LIDS)
@pytest.mark.parametrize("spot", [Spot.WARM_END, Spot.INWARD])
def test_both_balances_solved_at_once_by_another_solver(lid: Lid, spot: Spot) -> None:
    # reference: the two equations written out, by scipy's fsolve.
    box, room, watts = Enclosure(0.9, 0.45, 0.45, Material.WOOD, lid), 19.0, 55.0
    air = dry_air(room)
    heat = air.density_kg_m3 * air.heat_capacity_j_kgk

    def lost(rise: float) -> float:
        return (box.conductance_w_k() * rise + box.air_loss_w(rise, room)) / 2.0

    def balances(rises: NDArray[np.float64], /) -> list[float]:
        cool, warm = rises.tolist()
        over = heat * end_flow(warm - cool, room) * (warm - cool)
        return [
            spot.value * watts + over - lost(cool),
            (1.0 - spot.value) * watts - over - lost(warm),
        ]

    cool, warm = fsolve(balances, [4.0, 6.0], xtol=1e-12)
    held = ends_held(box, watts, room, spot)
    assert held.cool_c.best - room == pytest.approx(cool, rel=1e-6)
    assert held.warm_c.best - room == pytest.approx(warm, rel=1e-6)


def test_air_over_air_by_hand() -> None:
    # exact: 0.65/3 · 0.45 · 0.45 · sqrt(9.80665 · 0.45 · 2 / 295.15) m³/s.
    assert end_flow(2.0, 22.0) == pytest.approx(0.00758714, rel=1e-5)
    assert end_flow(-1.0, 22.0) == 0.0


def test_an_emitter_above_the_mesh_needs_more_watts_and_a_solid_lid_has_none_there() -> None:
    plan = night_plan(animals()["bearded-dragon"], 12.0)
    solid, mesh = (Enclosure(0.9, 0.45, 0.45, Material.GLASS, lid) for lid in LIDS[::2])
    inside, above = (emitter_for(mesh, plan, 12.0, place) for place in LampPlace)
    assert inside is not None
    assert above is not None
    assert above.need == inside.need
    assert above.power_w.best == pytest.approx(inside.power_w.best / 0.6)
    under = emitter_for(solid, plan, 12.0, LampPlace.ABOVE_MESH)
    assert under is not None
    assert under.place is LampPlace.INSIDE


@pytest.mark.parametrize("root", [1e-6, 0.3, 0.999])
def test_a_root_is_found_wherever_it_lies(root: float) -> None:
    assert rising_root(lambda x: x**3 - root**3, 0.0, 1.0) == pytest.approx(root, abs=1e-9)
    assert rising_root(lambda x: x - root, root, 1.0) == pytest.approx(root)
    with pytest.raises(ValueError, match="no root"):
        rising_root(lambda x: x + root, 0.0, 1.0)


@MANY
@given(BOXES, st.floats(10.0, 40.0), ROOMS, st.floats(0.5, 8.0))
def test_a_second_heater_lifts_the_cool_end_to_what_it_was_asked_for(
    box: Enclosure, watts: float, room: float, more: float
) -> None:
    before = likely_cool_end(box, watts, room, Spot.WARM_END)
    wanted = min(before + more, room + MOST_RISE_K, 50.0)
    extra = second_heater(box, wanted, room, watts, Spot.WARM_END)
    after = likely_cool_end(box, watts, room, Spot.WARM_END, extra)
    assert after == pytest.approx(wanted, abs=1e-6)
    assert second_heater(box, before - 0.01, room, watts, Spot.WARM_END) == 0.0
