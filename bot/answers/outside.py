"""One plain sentence for a figure beyond what the model may be believed for."""

from math import isfinite

from bot.answers.figures import difference, length, number, temperature
from bot.language.quantities import Units
from calc.validity import OutsideModelError

__all__ = ["outside_sentence"]


def outside_sentence(error: OutsideModelError, units: Units) -> str:
    """Return what was out of range, and the range, in the asker's units."""

    def shown(value: float) -> str:
        if error.unit == "m":
            return length(value, units)
        if error.unit in ("degC", "C"):
            return temperature(value, units)
        if error.unit == "K":
            return difference(value, units)
        return f"{number(value, 0.01)} {error.unit}".strip()

    held = [
        f"{word} {shown(bound)}"
        for word, bound in (
            ("above" if error.is_open_low else "from", error.low),
            ("up to", error.high),
        )
        if isfinite(bound)
    ]
    return (
        f"I cannot answer that: {error.name} is {shown(error.value)}, and I can only be trusted "
        f"{' '.join(held)}. Check the figure and ask again."
    )
