"""The scales of drawings: SI as inches and centimetres, °F and °C, the asker's first."""

from bot.drawing import Scale
from bot.language.quantities import Units, convert

__all__ = ["lengths", "temperatures"]


def lengths(units: Units) -> tuple[Scale, ...]:
    """Return inches and centimetres."""
    return _ordered(
        Scale("in", convert(1.0, "m", "in")), Scale("cm", convert(1.0, "m", "cm")), units
    )


def temperatures(units: Units) -> tuple[Scale, ...]:
    """Return °F and °C."""
    freezing = convert(0.0, "degC", "degF")
    fahrenheit = Scale("°F", convert(1.0, "degC", "degF") - freezing, freezing)
    return _ordered(fahrenheit, Scale("°C"), units)


def _ordered(imperial: Scale, metric: Scale, units: Units) -> tuple[Scale, ...]:
    return (imperial, metric) if units is Units.IN else (metric, imperial)
