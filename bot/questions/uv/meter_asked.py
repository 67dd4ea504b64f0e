"""Readings with and without a screen, as the engine takes them; what cannot be is refused."""

from dataclasses import dataclass

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.readings import PlacedReading
from bot.language.words import join_line
from bot.queries.uv_depth import MeterQuery
from bot.questions.uv.lamp_asked import WITHOUT_EXAMPLE, engine_readings, screen_asked
from calc.uncertainty import Estimate
from calc.uv.lamp import Lamp
from calc.uv.meter import Reading, screen_from_readings
from calc.uv.screen import FlatScreen, NoScreen, Screen
from calc.validity import OutsideModelError

__all__ = ["Through", "read_through"]


@dataclass(frozen=True, slots=True)
class Through:
    """The readings that tell of the lamp, the screen, and what it passes by readings."""

    readings: tuple[PlacedReading, ...]
    given: tuple[Reading, ...]
    screen: Screen
    passes: Estimate | None


def read_through(query: MeterQuery, named: Lamp) -> Through:
    """Return what was read, through the screen that was told or through one's own."""
    screen = screen_asked(query.screen)
    if query.without is None:
        given = engine_readings(query.readings, screen)
        return Through(query.readings, tuple(given), screen, None)
    if not isinstance(screen, NoScreen):
        raise NotUnderstoodError(
            query.screen.text,
            Say("wanted-screen-or-without"),
            join_line("", {"screen": "none", "without": query.without[0].text}).strip(),
            "screen",
        )
    bare = engine_readings(query.without, NoScreen(), "without")
    screened = engine_readings(query.readings, NoScreen())
    try:
        passes = screen_from_readings(bare, screened, named)
    except OutsideModelError as error:
        raise NotUnderstoodError(
            query.without[0].text,
            Say("wanted-without-higher"),
            WITHOUT_EXAMPLE,
            "without",
        ) from error
    return Through(query.without, tuple(bare), FlatScreen(passes.best), passes)
