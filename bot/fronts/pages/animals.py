"""What an animal wants as the site shows it: every figure in both units, with how it is known."""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.fronts.pages.figures import length_range, number, temperature_range
from bot.fronts.pages.targets import UNKNOWN, subject_name, wanted_by
from bot.language.quantities import Units
from calc.animals import Animal, Target
from calc.setup.bodies import body_of
from calc.sources import Source, source

__all__ = ["Sheet", "SheetRow", "sheet"]


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
        SheetRow(subject_name(d.about), d.text, "", source(d.source)) for d in animal.disagreements
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
    for wanted in wanted_by(animal, Units.IN):
        yield _row(wanted.label, wanted.target, wanted.text)
    home = animal.home_latitude_deg
    yield _row("Latitude of its home", home, _latitudes(home) if home else UNKNOWN)
    body = body_of(animal.slug)
    if body is not None:
        back = length_range(body.back_m.low, body.back_m.high, Units.IN)
        yield SheetRow("Height of its back", back, "over what it lies on", source("back_heights"))
    if animal.zone is not None:
        zone = animal.zone
        text = f"zone {zone.number}: {zone.description}"
        yield SheetRow("UV zone", text, zone.note, source(zone.source))


def _row(label: str, target: Target | None, text: str) -> SheetRow:
    if target is None:
        return SheetRow(label, text, "", None)
    return SheetRow(label, text, target.note, source(target.source))


def _latitudes(target: Target) -> str:
    """Return a span of latitudes, its end nearer to the pole of its half first."""
    low, high = target.low, target.high
    ends = (low, high) if abs(low) >= abs(high) else (high, low)
    return " to ".join(f"{number(abs(end))}° {'N' if end >= 0 else 'S'}" for end in ends)
