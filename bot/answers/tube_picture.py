"""The curves of every usual tube at a place, the one to take with its doubt."""

import numpy as np

from bot.answers.curves import length_axis, too_near, uvi_axis
from bot.answers.figures import length, uvi_estimate, uvi_range
from bot.answers.uv_parts import (
    Wish,
    fixture_name,
    screen_phrase,
)
from bot.answers.verdicts import verdict_word
from bot.drawing import Chart, Mark, Range, Stroke
from bot.language.quantities import Units
from bot.questions.uv.curves import curve_of, shortened, shown_distances
from bot.reply import Picture
from calc.uv.choice import SuitRow
from calc.uv.lamp import Fixture, Lamp, as_long_as
from calc.uv.screen import Screen

__all__ = ["tube_picture"]

_STROKES = {Fixture.POLISHED: Stroke.SOLID, Fixture.PLAIN: Stroke.DASHED}
_CURVE_POINTS = 41


def tube_picture(
    rows: tuple[SuitRow, ...],
    picks: tuple[SuitRow, ...],
    distance_m: float,
    screen: Screen,
    lamp: Lamp,
    wish: Wish,
    units: Units,
) -> Picture:
    """Return every class's curve, and the doubt of the one that is picked."""
    near, far = shown_distances((distance_m,))
    over = np.linspace(near, far, _CURVE_POINTS)
    pick = picks[0] if picks else None
    lines = tuple(
        curve_of(
            as_long_as(
                Lamp(row.strength_percent, row.fixture, count=lamp.count, gap_m=lamp.gap_m), lamp
            ),
            screen,
            over,
            f"{row.strength_percent:.0f} % {row.fixture.name.lower()}",
            _STROKES[row.fixture] if row is not pick else Stroke.MAIN,
            doubt=row is pick,
        )
        for row in rows
    )
    told = ", ".join(
        f"{row.strength_percent:.0f} % in a {fixture_name(row.fixture)} {uvi_estimate(row.uvi)}, "
        f"{verdict_word(row.judged)}"
        for row in rows
    )
    drawing = Chart(
        title=f"Which tube for {wish.whom}",
        subtitle=f"{length(distance_m, units)} from tube to back, {screen_phrase(screen)}",
        x=length_axis("From the tube to the animal's back", near, far, units),
        y=uvi_axis(2.0 * wish.high),
        lines=lines,
        bands=(Range(wish.low, wish.high, f"wanted {uvi_range(wish.low, wish.high)}"),),
        spans=(too_near(near),),
        marks=(Mark(distance_m, length(distance_m, units)),),
        note="Dashed: plain fixture. Heavy line with its doubt in blue: the tube to take."
        if pick
        else "Dashed: plain fixture. None of these suits the place.",
    )
    alt = (
        f"Chart: {drawing.title}, {drawing.subtitle}.",
        f"UVI falls with distance for every tube; wanted is {uvi_range(wish.low, wish.high)}.",
        f"At that place: {told}.",
    )
    return Picture(alt=shortened(alt), drawing=drawing)
