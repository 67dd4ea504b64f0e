"""A reading whose unit was mistaken: asked about, never guessed."""

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Measure, convert
from bot.language.wanted import Spelled

__all__ = ["check_unit"]


def check_unit(reading: Measure | None, coldest_c: float, option: str) -> None:
    """Ask about a reading in °F that is too cold for a box with its lamp on."""
    if reading is None or reading.unit != "degF" or reading.high >= coldest_c:
        return
    number = f"{round(convert(reading.high, 'degC', 'degF'))}"
    raise NotUnderstoodError(
        reading.text,
        Say("wanted-right-unit", Spelled(number)),
        f"{option}:{number}C",
        option,
    )
