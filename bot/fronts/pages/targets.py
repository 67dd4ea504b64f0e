"""What an animal wants, in words: the same lines for the answer and for its page of the site."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from bot.fronts.pages.figures import number, temperature, temperature_range, uvi_range
from bot.language.quantities import Units
from calc.animals import Animal, Subject, Target

__all__ = ["UNKNOWN", "Wanted", "subject_name", "wanted_by"]

UNKNOWN = "not known here: ask an experienced keeper or a reptile vet"


@dataclass(frozen=True, slots=True)
class Wanted:
    """One thing an animal wants; ``target`` is None where it is not known here."""

    label: str
    name: str
    unit: str
    target: Target | None
    text: str


def wanted_by(animal: Animal, units: Units) -> tuple[Wanted, ...]:
    """Return what an animal wants, the most important first; what is not known is named too."""
    return tuple(_wanted(animal, units))


def _wanted(animal: Animal, units: Units) -> Iterator[Wanted]:
    def degrees(target: Target) -> str:
        text = temperature_range(target.low, target.high, units)
        if target.best is None or target.low == target.high:
            return text
        return f"{text}, best about {temperature(target.best, units)}"

    def row(
        label: str, name: str, target: Target | None, show: Callable[[Target], str], unit: str
    ) -> Wanted:
        return Wanted(label, name, unit, target, UNKNOWN if target is None else show(target))

    surface = "Basking surface" if animal.basking else "Warmest surface"
    bright = "where it basks" if animal.basking else "at its brightest place"
    yield row(f"UV index {bright}", "uvi", animal.uvi, _uvi, "1")
    yield row(surface, "basking_surface", animal.basking_surface_c, degrees, "degC")
    yield row("Warm-end air", "warm_air", animal.warm_air_c, degrees, "degC")
    yield row("Cool-end air", "cool_air", animal.cool_air_c, degrees, "degC")
    yield row("Night heat only below", "night_floor", animal.night_floor_c, degrees, "degC")
    if animal.night_heat_off_c is not None:
        yield row("Night heat off at", "night_heat_off", animal.night_heat_off_c, degrees, "degC")
    yield row("Hours of light", "light", animal.light_hours, _hours, "h")


def subject_name(subject: Subject) -> str:
    """Return what two sources may disagree about, as a heading."""
    name = subject.value.replace("_", " ").replace("uvi", "UV index").replace("zone", "UV zone")
    return f"{name[0].upper()}{name[1:]}"


def _uvi(target: Target) -> str:
    text = uvi_range(target.low, target.high)
    return text if target.best is None else f"{text}, best about {number(target.best, 0.1)}"


def _hours(target: Target) -> str:
    if target.low == target.high:
        return f"{number(target.low)} h a day"
    return f"{number(target.low)} to {number(target.high)} h a day"
