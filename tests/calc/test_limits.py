"""Limits: own figures before the rule, no target beyond a limit, and what is met past one."""

import math
from dataclasses import fields, replace
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.animal import Animal, State, Target
from calc.animals import animals
from calc.limit_figures import rows, rules
from calc.limits import (
    Due,
    Limit,
    LimitName,
    Limits,
    Met,
    Passed,
    any_limits,
    limits_of,
    passed,
    soonest,
)
from calc.sources import Kind, bibliography
from calc.states import in_states
from calc.uncertainty import Estimate

EVERY_ANIMAL = list(animals().values())
by_slug = pytest.mark.parametrize("animal", EVERY_ANIMAL, ids=lambda a: a.slug)
known_animals = st.sampled_from(EVERY_ANIMAL)


def value_of(limit: Limit | None) -> float:
    assert limit is not None
    return limit.value


@by_slug
def test_every_animal_has_a_line_of_its_own_and_a_limit_for_each_harm(animal: Animal) -> None:
    assert animal.slug in rows()
    limits = limits_of(animal)
    lives_in_water_alone = animal.warm_air_c is None and animal.cool_air_c is None
    of_air = ("surface_c", "caution_c", "coolest_air_c", "room_c", "night_c", "uvi_high")
    of_water = ("surface_c", "water_caution_c", "water_c")
    for name in of_water if lives_in_water_alone else of_air:
        assert getattr(limits, name) is not None, (
            f"{animal.slug} has no {name}: it is in its line of limits.toml, uvi_high from its uvi"
        )


def test_every_limit_has_a_known_source_and_none_of_memory_is_called_better() -> None:
    for line in rows().values():
        for field in fields(Limits):
            limit = getattr(line, field.name)
            if limit is not None:
                assert limit.source in bibliography()
    assert bibliography()["limits_memory"].kind is Kind.MEMORY
    assert bibliography()["limits_judgement"].kind is Kind.MEMORY
    # The few that were read or derived, as the facts say; all others are from memory.
    better = {
        (slug, field.name)
        for slug, line in rows().items()
        for field in fields(Limits)
        if (limit := getattr(line, field.name)) is not None and limit.kind is not Kind.MEMORY
    }
    slugs = {slug for slug, _ in better}
    assert slugs <= {
        *("bearded-dragon", "frilled-lizard", "uromastyx", "egyptian-uromastyx", "green-iguana"),
        *("crested-gecko", "blue-tongued-skink", "shingleback", "savannah-monitor", "corn-snake"),
        *("black-rat-snake", "california-kingsnake", "house-snake", "axolotl"),
    }


@by_slug
def test_no_target_of_the_list_passes_a_limit(animal: Animal) -> None:
    limits = limits_of(animal)
    spot, warm, cool = animal.basking_surface_c, animal.warm_air_c, animal.cool_air_c
    floor, off = animal.night_floor_c, animal.night_heat_off_c
    if spot is not None:
        assert spot.high <= value_of(limits.surface_c)
    if warm is not None:
        assert warm.high <= value_of(limits.surface_c)
    if cool is not None:
        assert cool.high < value_of(limits.caution_c) < value_of(limits.coolest_air_c)
        assert cool.high < value_of(limits.room_c) <= value_of(limits.coolest_air_c)
    for night in (floor, off):
        if night is not None:
            assert value_of(limits.night_c) <= night.low
    if animal.uvi is not None:
        assert animal.uvi.high < limits.uvi_now.value


def test_the_lines_of_the_file_are_in_order() -> None:
    for slug, line in rows().items():
        for low, high in (
            (line.caution_c, line.coolest_air_c),
            (line.coolest_air_c, line.surface_c),
            (line.night_c, line.caution_c),
            (line.water_caution_c, line.water_c),
            (line.cold_water_c, line.water_caution_c),
        ):
            if low is not None and high is not None:
                assert low.value < high.value, slug
        if line.coolest_air_c is not None:
            assert line.coolest_air_c.value < rules()["hot_anywhere"], slug


def test_a_nameless_animal_is_judged_where_nearly_every_animal_is_harmed() -> None:
    anyone = any_limits()
    every = [line for slug, line in rows().items() if slug != "any"]

    def share(name: str, is_cold: bool) -> float:
        own: list[float] = [x.value for line in every if (x := getattr(line, name)) is not None]
        limit = value_of(getattr(anyone, name))
        harmed = [x for x in own if (x >= limit if is_cold else x <= limit)]
        return len(harmed) / len(own)

    for name, is_cold in (("surface_c", False), ("coolest_air_c", False), ("night_c", True)):
        assert 0.75 <= share(name, is_cold) < 1.0, name
    assert anyone.uvi_now.value == max(limits_of(a).uvi_now.value for a in EVERY_ANIMAL)


@pytest.mark.parametrize(
    ("slug", "now"),
    [
        ("leopard-gecko", 4.0),  # twice 1.4 is under 4
        ("blue-tongued-skink", 8.0),
        ("bearded-dragon", 10.0),
        ("uromastyx", 11.0),  # twice 7 is over 11
    ],
)
def test_the_uv_index_that_goes_off_now(slug: str, now: float) -> None:
    assert limits_of(animals()[slug]).uvi_now.value == now


def test_an_albino_or_hatchling_has_half_the_highest() -> None:
    limits = limits_of(in_states(animals()["bearded-dragon"], [State.PALE]))
    assert value_of(limits.uvi_high) == 2.5
    assert limits.uvi_now.value == 5.0


@given(known_animals, st.floats(0.1, 100.0), st.floats(1.0, 4.0))
def test_a_groups_own_target_moves_no_limit(animal: Animal, uvi: float, times: float) -> None:
    def up(target: Target | None) -> Target | None:
        return None if target is None else Target(target.low, None, target.high * times, "memory")

    own = replace(
        animal,
        uvi=Target(0.0, None, uvi, "groups_own"),
        basking_surface_c=up(animal.basking_surface_c),
        cool_air_c=up(animal.cool_air_c),
    )
    assert limits_of(own) == limits_of(animal)


def test_an_animal_without_a_line_goes_by_the_rule() -> None:
    dragon = replace(animals()["bearded-dragon"], slug="not-in-the-list")
    limits = limits_of(dragon)
    assert dragon.basking_surface_c is not None
    assert dragon.cool_air_c is not None
    assert value_of(limits.surface_c) == dragon.basking_surface_c.high + 8.0
    assert value_of(limits.coolest_air_c) == dragon.basking_surface_c.low
    half = (dragon.cool_air_c.high + dragon.basking_surface_c.low) / 2.0
    assert value_of(limits.caution_c) == half
    assert limits.contact_c.value == 40.0


def test_no_coolest_place_by_rule_reaches_forty() -> None:
    ackie = replace(animals()["ackie-monitor"], slug="not-in-the-list")
    assert value_of(limits_of(ackie).coolest_air_c) == 40.0


def test_an_animal_without_a_warm_surface_goes_by_its_warm_air() -> None:
    crested = replace(animals()["crested-gecko"], slug="not-in-the-list")
    assert crested.warm_air_c is not None
    assert value_of(limits_of(crested).surface_c) == crested.warm_air_c.high + 3.0


@pytest.mark.parametrize(
    ("slug", "met", "name", "due"),
    [
        ("crested-gecko", Met(surface_c=48.9), LimitName.SURFACE, Due.NOW),
        ("bearded-dragon", Met(surface_c=46.0), LimitName.SURFACE, Due.TODAY),
        ("bearded-dragon", Met(surface_c=50.0), LimitName.SURFACE, Due.NOW),
        ("ackie-monitor", Met(coolest_air_c=36.0), LimitName.COOLEST_AIR, Due.NOW),
        ("uromastyx", Met(coolest_air_c=38.0), LimitName.COOLEST_AIR, Due.NOW),
        ("uromastyx", Met(coolest_air_c=36.0), LimitName.COOLEST_AIR, Due.TODAY),
        ("bearded-dragon", Met(room_c=31.0), LimitName.ROOM, Due.TODAY),
        ("bearded-dragon", Met(room_c=35.5), LimitName.ROOM, Due.NOW),
        ("bearded-dragon", Met(night_c=14.0), LimitName.NIGHT, Due.TODAY),
        ("slider", Met(water_c=33.0), LimitName.WATER, Due.NOW),
        ("slider", Met(water_c=14.0), LimitName.COLD_WATER, Due.TODAY),
        ("corn-snake", Met(coolest_air_c=9.0), LimitName.COLD_DAY, Due.TODAY),
        ("bearded-dragon", Met(contact_c=41.0), LimitName.CONTACT, Due.NOW),
        ("leopard-gecko", Met(contact_c=37.0), LimitName.CONTACT, Due.NOW),
        ("corn-snake", Met(wood_c=66.0), LimitName.WOOD, Due.TODAY),
        ("corn-snake", Met(wood_c=77.0), LimitName.WOOD, Due.NOW),
        ("corn-snake", Met(tube_m=0.14), LimitName.TUBE, Due.NOW),
        ("corn-snake", Met(tube_m=0.18), LimitName.TUBE, Due.TODAY),
        ("leopard-gecko", Met(uvi=Estimate(4.0, 5.0, 7.0)), LimitName.UVI, Due.NOW),
        ("bearded-dragon", Met(uvi=Estimate(5.5, 7.0, 9.0)), LimitName.UVI, Due.TODAY),
    ],
)
def test_what_is_met_past_a_limit(slug: str, met: Met, name: LimitName, due: Due) -> None:
    found = passed(limits_of(animals()[slug]), met)
    assert [(p.name, p.due) for p in found] == [(name, due)]
    assert found[0].by >= 0.0


@pytest.mark.parametrize(
    ("slug", "met"),
    [
        ("bearded-dragon", Met(surface_c=45.0, coolest_air_c=31.0, night_c=15.0, room_c=30.0)),
        # Five degrees are an alarm only for animals whose own limit lies above them.
        ("fire-salamander", Met(night_c=5.0)),
        # Over the highest, but by less than the doubt: moved, and no alarm.
        ("bearded-dragon", Met(uvi=Estimate(4.2, 6.0, 8.0))),
        ("bearded-dragon", Met(tube_m=0.20, wood_c=60.0, contact_c=40.0)),
        ("bearded-dragon", Met()),
    ],
)
def test_what_passes_no_limit(slug: str, met: Met) -> None:
    found = passed(limits_of(animals()[slug]), met)
    assert found == ()
    assert soonest(found) is None


def test_the_soonest_comes_first() -> None:
    limits = limits_of(animals()["bearded-dragon"])
    found = passed(limits, Met(surface_c=46.0, coolest_air_c=36.0))
    assert [p.due for p in found] == [Due.NOW, Due.TODAY]
    assert soonest(found) is Due.NOW


@given(known_animals, st.floats(21.0, 150.0), st.floats(0.0, 20.0))
def test_hotter_is_never_milder(animal: Animal, reading: float, more: float) -> None:
    limits = limits_of(animal)
    for name in ("surface_c", "warm_air_c", "coolest_air_c", "room_c", "contact_c", "wood_c"):
        read: list[dict[str, Any]] = [{name: reading}, {name: reading + more}]
        cooler, hotter = (passed(limits, Met(**one)) for one in read)
        assert _rank(hotter) <= _rank(cooler)


@given(known_animals, st.floats(-10.0, 45.0), st.floats(0.0, 20.0))
def test_colder_is_never_milder_for_a_night(animal: Animal, reading: float, less: float) -> None:
    limits = limits_of(animal)
    warmer, colder = (passed(limits, Met(night_c=c)) for c in (reading, reading - less))
    assert _rank(colder) <= _rank(warmer)


def _rank(found: tuple[Passed, ...]) -> float:
    due = soonest(found)
    return math.inf if due is None else due.value
