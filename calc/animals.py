"""What each animal wants: UV, surface, air, night and hours, every figure with its source.

Rows live in ``data/animals/*.toml``, in the unit that the rule is spoken in; here they become SI.
A target that is ``None`` is not known here. Body temperatures from the literature are kept apart
from surface targets: a basking surface is normally several kelvin above the body it warms.
"""

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from functools import cache
from importlib.resources import files
from typing import Any

from calc.sources import Kind, source

__all__ = [
    "ANY",
    "Animal",
    "BodyTemperature",
    "Disagreement",
    "OwnLimits",
    "Subject",
    "Target",
    "Zone",
    "animal_name",
    "animals",
    "any_animal",
    "common_names",
    "own_name",
    "own_slug",
    "zones",
]


class Subject(StrEnum):
    """A thing that an animal wants; also what two sources may disagree about."""

    UVI = "uvi"
    ZONE = "zone"
    BASKING_SURFACE = "basking_surface"
    WARM_AIR = "warm_air"
    COOL_AIR = "cool_air"
    NIGHT_FLOOR = "night_floor"
    NIGHT_HEAT_OFF = "night_heat_off"
    LIGHT_HOURS = "light_hours"
    HOME_LATITUDE = "home_latitude"


@dataclass(frozen=True, slots=True)
class Target:
    """A range to aim for, with the aim inside it where one is known."""

    low: float
    best: float | None
    high: float
    source: str
    note: str = ""

    def __post_init__(self) -> None:
        if not self.low <= (self.low if self.best is None else self.best) <= self.high:
            raise ValueError(f"not in order: {self.low}, {self.best}, {self.high}")

    @property
    def kind(self) -> Kind:
        """How far the figure may be trusted."""
        return source(self.source).kind

    @property
    def aim(self) -> float:
        """The value to aim for: the known best, otherwise the middle."""
        return (self.low + self.high) / 2.0 if self.best is None else self.best


@dataclass(frozen=True, slots=True)
class Zone:
    """One of the four UV zones: the UV index of an animal's mean and highest exposure."""

    number: int
    description: str
    mean_uvi: tuple[float, float]
    maximum_uvi: tuple[float, float]
    source: str
    note: str = ""


@dataclass(frozen=True, slots=True)
class BodyTemperature:
    """A body temperature from the literature [degC]; never a target for a surface."""

    taxon: str
    low_c: float
    high_c: float
    what: str
    source: str


@dataclass(frozen=True, slots=True)
class Disagreement:
    """Another view of one target, in a sentence."""

    about: Subject
    text: str
    source: str


@dataclass(frozen=True, slots=True)
class OwnLimits:
    """What a group said that no animal of this kind may have [degC, UV index 1]; None: nothing."""

    surface_c: float | None = None
    coolest_air_c: float | None = None
    night_c: float | None = None
    uvi_now: float | None = None


@dataclass(frozen=True, slots=True)
class Animal:
    """One kept reptile; ``None`` means not known here.

    ``basking`` is True for an animal that comes under a bright beam for its heat and False for
    one that wants gentle warmth. Below ``night_floor_c.low`` the night needs heat, above
    ``night_floor_c.high`` it does not, between them keepers differ. ``own_limits`` has only an
    animal that a group added. ``is_pale_or_young``: albino, hypomelanistic or hatchling, whose UV
    is lower.
    """

    slug: str
    name: str
    scientific: str
    basking: bool
    zone: Zone | None
    uvi: Target | None
    basking_surface_c: Target | None
    warm_air_c: Target | None
    cool_air_c: Target | None
    night_floor_c: Target | None
    night_heat_off_c: Target | None
    light_hours: Target | None
    home_latitude_deg: Target | None
    bodies: tuple[BodyTemperature, ...]
    disagreements: tuple[Disagreement, ...]
    own_limits: OwnLimits | None = None
    is_pale_or_young: bool = False

    def disagreements_about(self, *subjects: Subject) -> tuple[Disagreement, ...]:
        """Return the other views on any of these subjects."""
        return tuple(d for d in self.disagreements if d.about in subjects)


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
    text = (files("calc.data") / "zones.toml").read_text(encoding="utf-8")
    return {
        int(number): Zone(
            number=int(number),
            description=row["description"],
            mean_uvi=(row["mean"][0], row["mean"][1]),
            maximum_uvi=(row["maximum"][0], row["maximum"][1]),
            source=row["source"],
            note=row.get("note", ""),
        )
        for number, row in tomllib.loads(text).items()
    }


@cache
def animals() -> dict[str, Animal]:
    """Return every animal by slug, in alphabetical order."""
    tables = (p for p in (files("calc.data") / "animals").iterdir() if p.name.endswith(".toml"))
    rows: dict[str, Animal] = {}
    for table in tables:
        for slug, row in tomllib.loads(table.read_text(encoding="utf-8")).items():
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
            BodyTemperature(b["taxon"], b["low"], b["high"], b["what"], b["source"])
            for b in row.get("bodies", ())
        ),
        disagreements=tuple(
            Disagreement(Subject(d["about"]), d["text"], d["source"])
            for d in row.get("disagreements", ())
        ),
    )


def _target(row: Mapping[str, Any], subject: Subject) -> Target | None:
    given = row.get(subject.value)
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
