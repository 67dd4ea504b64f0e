"""Every animal is told as its table says it, field by field; degrees go through pint here."""

import tomllib
from functools import cache
from importlib.resources import files
from typing import Any

import pint
import pytest

from calc.animal import Subject, Target
from calc.animals import animals, zones

FIELDS = {
    Subject.UVI: "uvi",
    Subject.BASKING_SURFACE: "basking_surface_c",
    Subject.WARM_AIR: "warm_air_c",
    Subject.COOL_AIR: "cool_air_c",
    Subject.NIGHT_FLOOR: "night_floor_c",
    Subject.NIGHT_HEAT_OFF: "night_heat_off_c",
    Subject.LIGHT_HOURS: "light_hours",
    Subject.HOME_LATITUDE: "home_latitude_deg",
    Subject.WATER: "water_c",
}
OTHER = {
    *("name", "scientific", "basking", "zone", "bodies", "disagreements", "group", "awake"),
    *("adult_length", "readings", "particular"),
}
ROWS: dict[str, dict[str, Any]] = {
    slug: row
    for table in (files("calc.data") / "animals").iterdir()
    if table.name.endswith(".toml")
    for slug, row in tomllib.loads(table.read_text(encoding="utf-8")).items()
}


@cache
def registry() -> "pint.UnitRegistry[float]":
    return pint.UnitRegistry()


def in_si(value: float | None, unit: str) -> float | None:
    if value is None or unit != "degF":
        return value
    return float(registry().Quantity(value, "degF").to("degC").magnitude)


@pytest.mark.parametrize("slug", sorted(ROWS))
def test_an_animal_is_told_as_written(slug: str) -> None:
    row, animal = ROWS[slug], animals()[slug]
    assert set(row) <= OTHER | {subject.value for subject in FIELDS}
    assert (animal.name, animal.scientific) == (row["name"], row["scientific"])
    assert animal.basking == row["basking"]
    assert animal.zone is (zones()[row["zone"]] if "zone" in row else None)
    bodies = [(b.taxon, b.low_c, b.high_c, b.what, b.source) for b in animal.bodies]
    wanted = ("taxon", "low", "high", "what", "source")
    assert bodies == [tuple(b[key] for key in wanted) for b in row.get("bodies", [])]
    relatives = [b.is_relative for b in animal.bodies]
    assert relatives == [b.get("relative", False) for b in row.get("bodies", [])]
    readings = [(r.about, r.low, r.high, r.source) for r in animal.readings]
    of_reading = ("about", "low", "high", "source")
    assert readings == [tuple(r[key] for key in of_reading) for r in row.get("readings", [])]
    assert (animal.group, animal.awake) == (row["group"], row["awake"]["value"])
    assert animal.particular == tuple(row.get("particular", ()))
    grown = row.get("adult_length")
    if grown is not None:
        assert animal.adult_length_m is not None
        assert (animal.adult_length_m.low, animal.adult_length_m.high) == (
            *(grown["low"], grown["high"]),
        )
    others = [(d.about.value, d.text, d.source) for d in animal.disagreements]
    told = [(d["about"], d["text"], d["source"]) for d in row.get("disagreements", [])]
    assert others == told


@pytest.mark.parametrize("subject", FIELDS)
def test_targets_are_told_as_written(subject: Subject) -> None:
    for slug in sorted(ROWS):
        is_told_as_written(slug, subject)


def is_told_as_written(slug: str, subject: Subject) -> None:
    """Hold a target of an animal against its row."""
    written = ROWS[slug].get(subject.value)
    target: Target | None = getattr(animals()[slug], FIELDS[subject])
    assert (target is None) == (written is None), slug
    if target is None or written is None:
        return
    unit = written.get("unit", "")
    for told, key in ((target.low, "low"), (target.best, "best"), (target.high, "high")):
        assert told == pytest.approx(in_si(written.get(key), unit)), slug
    assert (target.source, target.note) == (written["source"], written.get("note", "")), slug
