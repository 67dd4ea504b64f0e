"""Animals in side view, our own, drawn to their true length; the back lies where the sum has it."""

import json
from functools import cache
from pathlib import Path

from bot.drawing import Figure
from bot.render.picture.geometry import Rect
from bot.render.picture.inks import Ink, Theme
from bot.render.picture.svg import Shape, svg

__all__ = ["animal_alone", "animal_shapes", "back_of"]

_FILE = Path(__file__).parent / "animals.json"
_LONG_UNITS = 1000.0
# An animal alone [units]: how wide and high its sheet is, and what is left free round it.
_ALONE, _ALONE_TALL, _EDGE = 240.0, 110.0, 8.0


def animal_shapes(
    figure: Figure, x: float, feet: float, long: float, back: float
) -> tuple[Shape, Rect]:
    """Return an animal and where it is: its nose at ``x``, ``long`` wide, ``back`` high [units]."""
    shapes, back_units = _figures()[figure]
    along, up = long / _LONG_UNITS, back / back_units
    move = f"translate({x:.1f} {feet:.1f}) scale({along:.5f} {up:.5f})"
    return Shape("g", {"transform": move}, inside=shapes), Rect(x, feet - back, x + long, feet)


def back_of(figure: Figure, long: float) -> float:
    """Return how high over its feet the back of an animal is that is so long [units]."""
    return _figures()[figure][1] / _LONG_UNITS * long


def animal_alone(figure: Figure, theme: Theme, ident: str, told: str) -> str:
    """Return an animal as an SVG of its own, as large as its sheet allows."""
    long = min(_ALONE - 2.0 * _EDGE, (_ALONE_TALL - 2.0 * _EDGE) / back_of(figure, 1.0))
    back = back_of(figure, long)
    shape, _ = animal_shapes(figure, _EDGE, _ALONE_TALL - _EDGE, long, back)
    return svg([shape], _ALONE, _ALONE_TALL, theme=theme, title=told, ident=ident)


@cache
def _figures() -> dict[Figure, tuple[list[Shape], float]]:
    told = json.loads(_FILE.read_text("utf-8"))
    return {
        Figure(name): (
            [
                Shape(tag, {key: _value(v) for key, v in given.items()})
                for tag, given in one["shapes"]
            ],
            float(one["back_mm"]) / float(one["long_mm"]) * _LONG_UNITS,
        )
        for name, one in told.items()
    }


def _value(text: str) -> Ink | str:
    return Ink(text[1:]) if text.startswith("@") else text
