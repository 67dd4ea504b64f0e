"""What each animal wants: UV, surface, air, night and hours, every figure with its source.

Rows live in ``data/animals/*.toml``, in the unit that the rule is spoken in; here they become SI.
"""

from collections.abc import Mapping
from functools import cache
from typing import Any

from calc.animal import (
    Animal,
    Authority,
    Awake,
    BodyKind,
    BodyTemperature,
    Disagreement,
    Group,
    Particular,
    Subject,
    Target,
    Zone,
)
from calc.tables import ROOT, read_table

__all__ = [
    "ANY",
    "animal_name",
    "animals",
    "any_animal",
    "common_names",
    "own_name",
    "own_slug",
    "zones",
]


ANY = "any"
"""The key of an animal of which nothing is known."""


def any_animal(name: str = "animal") -> Animal:
    """Return an animal of which nothing is known but, where it was told, its name."""
    nothing: dict[str, Any] = dict.fromkeys(
        (
            *("zone", "uvi", "basking_surface_c", "warm_air_c", "cool_air_c", "night_floor_c"),
            *("night_heat_off_c", "light_hours", "home_latitude_deg"),
        )
    )
    return Animal(
        slug=ANY,
        name=name,
        scientific="",
        basking=True,
        bodies=(),
        disagreements=(),
        **nothing,
    )


_OWN = "own:"


def own_slug(name: str) -> str:
    """Return the key of an animal that a group added under this name."""
    return f"{_OWN}{name}"


def own_name(slug: str) -> str | None:
    """Return the name of an animal that a group added by its key; None for one of ours."""
    return slug.removeprefix(_OWN) if slug.startswith(_OWN) else None


def animal_name(slug: str) -> str:
    """Return the name of an animal by its key, also of one that a group added.

    >>> animal_name("boa"), animal_name(own_slug("Moss lizard"))
    ('boa constrictor', 'Moss lizard')
    """
    return own_name(slug) or animals()[slug].name


@cache
def zones() -> dict[int, Zone]:
    """Return the four UV zones by number.

    Source: uv_zones, zone table.
    """
    return {
        int(number): Zone(
            number=int(number),
            description=row["description"],
            mean_uvi=(row["mean"][0], row["mean"][1]),
            maximum_uvi=(row["maximum"][0], row["maximum"][1]),
            source=row["source"],
            note=row.get("note", ""),
        )
        for number, row in read_table("calc/data/zones.toml").items()
    }


@cache
def animals() -> dict[str, Animal]:
    """Return every animal by slug, in alphabetical order."""
    rows: dict[str, Animal] = {}
    for path in (ROOT / "calc/data/animals").glob("*.toml"):
        for slug, row in read_table(path).items():
            if slug in rows:
                raise ValueError(f"animal {slug!r} is given twice")
            rows[slug] = _animal(slug, row)
    return dict(sorted(rows.items()))


def common_names() -> tuple[str, ...]:
    """Return the first name of every animal, for lists and suggestions."""
    return tuple(animal.name for animal in animals().values())


def _animal(slug: str, row: Mapping[str, Any]) -> Animal:
    zone = zones()[row["zone"]] if "zone" in row else None
    return Animal(
        slug=slug,
        name=row["name"],
        scientific=row["scientific"],
        basking=row["basking"],
        zone=zone,
        uvi=_target(row, Subject.UVI),
        basking_surface_c=_target(row, Subject.BASKING_SURFACE),
        warm_air_c=_target(row, Subject.WARM_AIR),
        cool_air_c=_target(row, Subject.COOL_AIR),
        night_floor_c=_target(row, Subject.NIGHT_FLOOR),
        night_heat_off_c=_target(row, Subject.NIGHT_HEAT_OFF),
        light_hours=_target(row, Subject.LIGHT_HOURS),
        home_latitude_deg=_target(row, Subject.HOME_LATITUDE),
        bodies=tuple(
            BodyTemperature(
                b["taxon"],
                b["low"],
                b["high"],
                BodyKind(b["what"]),
                b["source"],
                b.get("relative", False),
            )
            for b in row.get("bodies", ())
        ),
        disagreements=tuple(
            Disagreement(Subject(d["about"]), d["text"], d["source"])
            for d in row.get("disagreements", ())
        ),
        group=Group(row["group"]),
        awake=Awake(row["awake"]["value"]),
        water_c=_target(row, Subject.WATER),
        adult_length_m=_target(row, "adult_length"),
        readings=tuple(
            Authority(Subject(r["about"]), r["low"], r["high"], r["source"])
            for r in row.get("readings", ())
        ),
        particular=tuple(Particular(p) for p in row.get("particular", ())),
    )


def _target(row: Mapping[str, Any], named: str) -> Target | None:
    given = row.get(named)
    if given is None:
        return None

    def si(value: float) -> float:
        # A difference of 32 first, so that whole degrees Fahrenheit like 95 come out exact.
        return (value - 32.0) * 5.0 / 9.0 if given.get("unit") == "degF" else float(value)

    return Target(
        low=si(given["low"]),
        best=si(given["best"]) if "best" in given else None,
        high=si(given["high"]),
        source=given["source"],
        note=given.get("note", ""),
    )
