"""The animals: rows that hold together, names that are found, no figure without a source."""

from itertools import pairwise

import pytest

from calc.animal import Animal, Subject, Target
from calc.animals import animals, common_names, zones
from calc.naming import find
from calc.sources import Kind, bibliography

EVERY_ANIMAL = list(animals().values())


def targets(animal: Animal) -> dict[Subject, Target]:
    """Return the known targets of an animal."""
    every = {
        Subject.UVI: animal.uvi,
        Subject.BASKING_SURFACE: animal.basking_surface_c,
        Subject.WARM_AIR: animal.warm_air_c,
        Subject.COOL_AIR: animal.cool_air_c,
        Subject.NIGHT_FLOOR: animal.night_floor_c,
        Subject.NIGHT_HEAT_OFF: animal.night_heat_off_c,
        Subject.LIGHT_HOURS: animal.light_hours,
        Subject.HOME_LATITUDE: animal.home_latitude_deg,
        Subject.WATER: animal.water_c,
    }
    return {subject: target for subject, target in every.items() if target is not None}


def test_there_are_at_least_fifteen_animals_of_several_kinds() -> None:
    assert len(EVERY_ANIMAL) >= 15
    assert {"corn-snake", "slider", "hermanns-tortoise", "panther-chameleon"} <= set(animals())


@pytest.mark.parametrize("animal", EVERY_ANIMAL, ids=lambda a: a.slug)
def test_every_figure_has_a_known_source(animal: Animal) -> None:
    keys = {target.source for target in targets(animal).values()}
    keys |= {body.source for body in animal.bodies}
    keys |= {view.source for view in animal.disagreements}
    assert keys <= set(bibliography())


@pytest.mark.parametrize("animal", EVERY_ANIMAL, ids=lambda a: a.slug)
def test_every_animal_is_found_by_each_of_its_names(animal: Animal) -> None:
    for name in (animal.name, animal.scientific):
        assert find(name) is animal
        assert find(f"  {name.upper()}  ") is animal


@pytest.mark.parametrize("animal", EVERY_ANIMAL, ids=lambda a: a.slug)
@pytest.mark.parametrize("between", ["-", " ", "_", "\t", " - "])
def test_what_stands_between_the_words_of_a_name_does_not_count(
    animal: Animal, between: str
) -> None:
    for name in (animal.name, animal.scientific):
        assert find(between.join(name.replace("-", " ").split())) is animal


@pytest.mark.parametrize("animal", EVERY_ANIMAL, ids=lambda a: a.slug)
def test_heat_falls_from_the_surface_to_the_cool_end_to_the_night(animal: Animal) -> None:
    ladder = [animal.night_floor_c, animal.cool_air_c, animal.warm_air_c, animal.basking_surface_c]
    known = [target for target in ladder if target is not None]
    for cooler, warmer in pairwise(known):
        assert cooler.aim < warmer.aim
        assert cooler.high <= warmer.high


@pytest.mark.parametrize("animal", EVERY_ANIMAL, ids=lambda a: a.slug)
def test_a_uv_target_stays_below_the_highest_of_the_zone(animal: Animal) -> None:
    if animal.uvi is not None and animal.zone is not None:
        assert animal.uvi.high <= max(animal.zone.maximum_uvi[1], 2.0)


@pytest.mark.parametrize(
    ("typed", "name"),
    [
        ("beardie", "bearded dragon"),
        ("bearded dragons", "bearded dragon"),
        ("Pogona vitticeps", "bearded dragon"),
        ("Hermann’s tortoise", "Hermann's tortoise"),
        ("hermanns tortoises", "Hermann's tortoise"),
        ("ball pythons", "royal python"),
        ("eastern blue tongued Skinks", "Australian blue-tongued skink"),
        ("ridge-tailed monitor", "ackie monitor"),
        ("ackies", "ackie monitor"),
        ("RED-EARED SLIDERS", "slider turtle"),
    ],
)
def test_plurals_case_and_hyphens_do_not_count(typed: str, name: str) -> None:
    found = find(typed)
    assert found is not None
    assert found.name == name


@pytest.mark.parametrize("typed", ["", "   ", "dragon", "python", "hamster", "berdi", "12"])
def test_a_name_that_is_not_one_animal_finds_none(typed: str) -> None:
    assert find(typed) is None


def test_the_rules_for_a_bearded_dragon_are_the_common_ones() -> None:
    dragon = animals()["bearded-dragon"]
    surface, cool, warm = dragon.basking_surface_c, dragon.cool_air_c, dragon.warm_air_c
    floor, off = dragon.night_floor_c, dragon.night_heat_off_c
    assert surface is not None
    assert cool is not None
    assert warm is not None
    assert floor is not None
    assert off is not None
    spoken = [surface.low, surface.aim, surface.high, cool.low, cool.high]
    spoken += [warm.low, warm.high, floor.low, off.low]
    assert [round(c * 1.8 + 32, 9) for c in spoken] == [95, 103, 110, 77, 82, 80, 85, 60, 72]
    assert {t.kind for t in (surface, cool, warm, floor, off)} == {Kind.COMMON_PRACTICE}
    assert dragon.uvi is not None
    assert (dragon.uvi.low, dragon.uvi.high) == (3.0, 5.0)


def test_both_views_of_the_panther_chameleon_are_kept() -> None:
    panther = animals()["panther-chameleon"]
    texts = [view.text for view in panther.disagreements_about(Subject.ZONE)]
    assert panther.zone is None
    assert any("zone 4" in text for text in texts)
    assert any("zone 2" in text for text in texts)


def test_what_is_not_known_stays_unknown() -> None:
    assert animals()["slider"].night_floor_c is None
    assert animals()["crested-gecko"].basking_surface_c is None


def test_body_temperatures_come_from_papers_and_datasets_only() -> None:
    kinds = {bibliography()[b.source].kind for a in EVERY_ANIMAL for b in a.bodies}
    assert kinds == {Kind.PAPER, Kind.DATASET}


def test_zones_rise_and_say_that_their_table_was_not_read() -> None:
    table = zones()
    assert sorted(table) == [1, 2, 3, 4]
    highest = [table[n].maximum_uvi[1] for n in sorted(table)]
    assert highest == sorted(highest)
    assert "primary table not read" in bibliography()["uv_zones"].citation


def test_a_target_out_of_order_is_refused() -> None:
    with pytest.raises(ValueError, match="not in order"):
        Target(30.0, 40.0, 35.0, "memory")


def test_common_names_are_one_an_animal() -> None:
    assert len(set(common_names())) == len(EVERY_ANIMAL)
