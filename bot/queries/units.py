"""Which units an asker wrote, and which were taken from the setting, over any kind of option."""

from collections.abc import Iterator

from bot.language.quantities import Measure, Units
from bot.language.readings import DatedReading, PlacedReading
from bot.language.sizes import Size
from bot.queries.query import Query

__all__ = ["system_of", "taken_units"]

_METRIC = ("cm", "mm", "m")


def system_of(value: object, *, bare: bool = False) -> Units | None:
    """Return the system that the asker wrote in a value, if any; ``bare`` numbers count too."""
    for _, unit, assumed, system in _parts(value):
        if unit and (bare or not assumed):
            return system
    return None


def taken_units(query: Query) -> tuple[list[tuple[str, str, str]], dict[str, object]]:
    """Return what had no unit as (option, text, unit taken), and the values of such options.

    A day that was told by its distance from today is among them with its date.
    """
    taken, named = [], {}
    for name in type(query).model_fields:
        value = getattr(query, name)
        bare = [(text, unit) for text, unit, assumed, _ in _parts(value) if assumed]
        taken += [(name, text, unit) for text, unit in bare]
        if bare or _is_relative(value):
            named[name] = value
    return taken, named


def _is_relative(value: object) -> bool:
    parts = value if isinstance(value, tuple) else ()
    return any(isinstance(part, DatedReading) and part.is_relative for part in parts)


def _parts(value: object) -> Iterator[tuple[str, str, bool, Units | None]]:
    """Yield text, unit, whether it was assumed, and system of every length or alike in a value."""
    match value:
        case Measure():
            yield value.text, value.unit, value.assumed, value.system
        case Size():
            system = Units.CM if value.unit in _METRIC else Units.IN
            yield value.text, value.unit, value.assumed, system
        case PlacedReading():
            yield from _parts(value.distance)
        case tuple():
            for part in value:
                yield from _parts(part)
