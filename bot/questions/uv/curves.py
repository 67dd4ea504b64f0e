"""Curves of UVI against distance for a picture: the engine's own figures, without a word."""

from collections.abc import Iterable, Sequence

from bot.drawing import Line, Stroke
from calc.uv.lamp import FARTHEST_M, NEAREST_M, Lamp
from calc.uv.lamp_unknowns import uvi_estimate
from calc.uv.placement import COMFORTABLE_MINIMUM_M
from calc.uv.screen import Screen

__all__ = ["MOST_ALT", "alt_of", "curve_of", "shortened", "shown_distances"]

MOST_ALT = 1024
"""Characters that the words of a picture may have."""
_NO_BREAK = "\u00a0"
_NEAREST_SHOWN_M = 0.10
_BEYOND = 1.3


def curve_of(
    lamp: Lamp,
    screen: Screen,
    distances_m: Iterable[float],
    label: str = "",
    stroke: Stroke = Stroke.MAIN,
    doubt: bool = True,
) -> Line:
    """Return the UVI of a lamp over distances, with its doubt."""
    x = tuple(float(d) for d in distances_m)
    found = [uvi_estimate(lamp, distance, screen) for distance in x]
    best = tuple(e.best for e in found)
    if not doubt:
        return Line(label, x, best, stroke=stroke)
    low, high = tuple(e.low for e in found), tuple(e.high for e in found)
    return Line(label, x, best, low, high, stroke)


def shown_distances(met_m: Iterable[float]) -> tuple[float, float]:
    """Return the nearest and farthest distance [m] of a chart that shows all that is met."""
    met = list(met_m)
    far = max([*met, 2 * COMFORTABLE_MINIMUM_M]) * _BEYOND
    near = min([_NEAREST_SHOWN_M, *(0.9 * distance for distance in met)])
    return max(near, NEAREST_M), min(far, FARTHEST_M)


def shortened(sentences: Sequence[str]) -> str:
    """Return whole sentences as one text, as many as the words of a picture may have."""
    text = ""
    for sentence in sentences:
        longer = f"{text} {sentence}".strip()
        if len(longer) > MOST_ALT:
            break
        text = longer
    return text


def alt_of(sentences: Iterable[str]) -> str:
    """Return whole sentences as the words of a picture, whose figures may break anywhere."""
    return shortened([sentence.replace(_NO_BREAK, " ") for sentence in sentences])
