"""What an animal wants as the site shows it: every figure in both units, with how it is known."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from bot.answers.figures import (
    length_range,
    number,
    temperature,
    temperature_range,
    uvi_range,
)
from bot.language.quantities import Units
from calc.animals import Animal, Target
from calc.setup.bodies import body_of
from calc.sources import Source, source

__all__ = ["Sheet", "SheetRow", "sheet"]

UNKNOWN = "not known here: ask an experienced keeper or a reptile vet"


@dataclass(frozen=True, slots=True)
class SheetRow:
    """One thing the animal wants; ``source`` is None where it is not known here."""

    label: str
    text: str
    note: str
    source: Source | None


@dataclass(frozen=True, slots=True)
class Sheet:
    """The page of one animal."""

    animal: Animal
    name: str
    targets: tuple[SheetRow, ...]
    bodies: tuple[SheetRow, ...]
    other_views: tuple[SheetRow, ...]
    sources: tuple[Source, ...]


def sheet(animal: Animal) -> Sheet:
    """Return an animal's page; a target that is not known is shown as such, never left out."""
    targets = tuple(_targets(animal))
    bodies = tuple(
        SheetRow(b.taxon, temperature_range(b.low_c, b.high_c, Units.IN), b.what, source(b.source))
        for b in animal.bodies
    )
    views = tuple(
        SheetRow(_subject(d.about.value), d.text, "", source(d.source))
        for d in animal.disagreements
    )
    met = [row.source for row in (*targets, *bodies, *views) if row.source is not None]
    return Sheet(
        animal,
        animal.name[0].upper() + animal.name[1:],
        targets,
        bodies,
        views,
        tuple(dict.fromkeys(met)),
    )


def _targets(animal: Animal) -> Iterator[SheetRow]:
    surface = "Basking surface" if animal.basking else "Warmest surface"
    yield _row("UV index where it basks", animal.uvi, _uvi)
    yield _row(surface, animal.basking_surface_c, _temperature)
    yield _row("Warm-end air", animal.warm_air_c, _temperature)
    yield _row("Cool-end air", animal.cool_air_c, _temperature)
    yield _row("Night heat only below", animal.night_floor_c, _temperature)
    if animal.night_heat_off_c is not None:
        yield _row("Night heat off at", animal.night_heat_off_c, _temperature)
    yield _row("Hours of light", animal.light_hours, _hours)
    yield _row("Latitude of its home", animal.home_latitude_deg, _latitudes)
    body = body_of(animal.slug)
    if body is not None:
        back = length_range(body.back_m.low, body.back_m.high, Units.IN)
        yield SheetRow("Height of its back", back, "over what it lies on", source("back_heights"))
    if animal.zone is not None:
        zone = animal.zone
        text = f"zone {zone.number}: {zone.description}"
        yield SheetRow("UV zone", text, zone.note, source(zone.source))


def _row(label: str, target: Target | None, show: Callable[[Target], str]) -> SheetRow:
    if target is None:
        return SheetRow(label, UNKNOWN, "", None)
    return SheetRow(label, show(target), target.note, source(target.source))


def _temperature(target: Target) -> str:
    text = temperature_range(target.low, target.high, Units.IN)
    if target.best is None or target.low == target.high:
        return text
    return f"{text}, best about {temperature(target.best, Units.IN)}"


def _uvi(target: Target) -> str:
    return uvi_range(target.low, target.high)


def _hours(target: Target) -> str:
    if target.low == target.high:
        return f"{number(target.low)} h a day"
    return f"{number(target.low)} to {number(target.high)} h a day"


def _latitudes(target: Target) -> str:
    """Return a span of latitudes, its end nearer to the pole of its half first."""
    low, high = target.low, target.high
    ends = (low, high) if abs(low) >= abs(high) else (high, low)
    return " to ".join(f"{number(abs(end))}° {'N' if end >= 0 else 'S'}" for end in ends)


def _subject(value: str) -> str:
    return value.replace("_", " ").replace("uvi", "UV index").capitalize().replace("Uv", "UV")
