"""Figures that no question draws: how to lay out, where to measure. Drawn like every picture.

They show an arrangement, not a sum: the enclosure is to scale, the animal is not.
"""

from collections.abc import Callable

from bot.drawing import Bar, Block, Dimension, End, Place, Side
from bot.fronts.pages.figures import length, temperature_range
from bot.guide import Sketch
from bot.language.quantities import Units
from bot.reply import Picture
from calc.animals import animals

__all__ = ["sketch"]

_UNITS = Units.IN
_INCH_M = 0.0254
_LONG_M, _WIDE_M, _HIGH_M = 48 * _INCH_M, 36 * _INCH_M, 24 * _INCH_M
_STONE = Block(0.06, 0.40, 0.0, 0.11, "stone")
_LAMP_X_M = 0.23
_HIDE = Block(0.8, 0.98, 0.0, 0.13, "hide")
_SURFACE, _WARM, _COOL = (_LAMP_X_M + 0.1, _STONE.y1), (0.56, 0.17), (1.1, 0.07)
# The animal is drawn at one size on paper: this much above the stone its feet rest on it.
_BACK_M = 0.028
_ANIMAL = "bearded-dragon"


def sketch(which: Sketch) -> Picture:
    """Return a figure with its words."""
    return _MAKERS[which]()


def _layout() -> Picture:
    drawing = Side(
        title="UV and heat over the same end",
        subtitle="an enclosure seen from the front",
        width_m=_LONG_M,
        height_m=_HIGH_M,
        width_label=length(_LONG_M, _UNITS),
        height_label=length(_HIGH_M, _UNITS),
        tubes=(Bar(0.0, 0.56 * _LONG_M, _HIGH_M, "UV tube"),),
        heat_lamp=Place(_LAMP_X_M, _HIGH_M, "basking lamp"),
        blocks=(_STONE, _HIDE),
        back=Place(_LAMP_X_M, _STONE.y1 + _BACK_M, ""),
        dimensions=(
            Dimension(0.0, 0.86 * _HIGH_M, 0.56 * _LONG_M, 0.86 * _HIGH_M, "half to two thirds"),
        ),
        ends=(End("warm end", "hot and bright", True), End("cool end", "cool and dim", False)),
    )
    return Picture(
        alt=(
            "Sketch of an enclosure from the front. The basking lamp hangs over a stone at the "
            "warm end. The UV tube starts at the same end and reaches over half to two thirds of "
            "the length. The cool end has no tube, and a hide."
        ),
        drawing=drawing,
    )


def _distance() -> Picture:
    right, wrong = 16 * _INCH_M, _HIGH_M
    stone = _HIGH_M - right - _BACK_M
    drawing = Side(
        title="From the tube to the back",
        subtitle="not to the floor, and not to the stone",
        width_m=_WIDE_M,
        height_m=_HIGH_M,
        width_label="",
        height_label="",
        tubes=(Bar(0.06, _WIDE_M - 0.06, _HIGH_M, "UV tube"),),
        blocks=(Block(0.04, 0.36, 0.0, stone, "stone"),),
        back=Place(0.2, _HIGH_M - right, ""),
        dimensions=(
            Dimension(0.2, _HIGH_M, 0.2, _HIGH_M - right, f"{length(right, _UNITS)}: yes"),
            Dimension(0.58, _HIGH_M, 0.58, 0.0, f"{length(wrong, _UNITS)}: no"),
        ),
    )
    return Picture(
        alt=(
            "Sketch: a tube over a stone with an animal on it. From the tube to the animal's back "
            f"it is {length(right, _UNITS)}: yes, this is the distance. From the tube to the floor "
            f"it is {length(wrong, _UNITS)}: no, this is not."
        ),
        drawing=drawing,
    )


def _places() -> Picture:
    animal = animals()[_ANIMAL]
    told = []
    for spot, name, target in (
        (_SURFACE, "basking surface", animal.basking_surface_c),
        (_WARM, "warm-end air", animal.warm_air_c),
        (_COOL, "cool-end air", animal.cool_air_c),
    ):
        wanted = temperature_range(target.low, target.high, _UNITS) if target else "not known here"
        told.append(Place(*spot, f"{name}: {wanted}"))
    return _numbered(
        "Three places, three numbers", f"for a {animal.name}; common practice", tuple(told)
    )


def _thermometers() -> Picture:
    away = length(12 * _INCH_M, _UNITS)
    return _numbered(
        "Where each thermometer goes",
        "after two to three hours of light",
        (
            Place(*_SURFACE, f"infrared gun: where the animal lies, from about {away} away"),
            Place(*_COOL, "digital probe: the far end, in the shade, at the animal's height"),
            Place(*_WARM, "digital probe: the air near the basking spot, out of the beam"),
        ),
    )


def _numbered(title: str, subtitle: str, places: tuple[Place, ...]) -> Picture:
    drawing = Side(
        title=title,
        subtitle=subtitle,
        width_m=_LONG_M,
        height_m=_HIGH_M,
        width_label=length(_LONG_M, _UNITS),
        height_label=length(_HIGH_M, _UNITS),
        heat_lamp=Place(_LAMP_X_M, _HIGH_M, "basking lamp"),
        blocks=(_STONE, _HIDE),
        back=Place(_LAMP_X_M, _STONE.y1 + _BACK_M, ""),
        places=places,
        ends=(End("warm end", "", True), End("cool end", "", False)),
    )
    told = "; ".join(f"{number}, {place.text}" for number, place in enumerate(places, 1))
    return Picture(
        alt=(
            "Sketch of an enclosure from the front, the basking lamp over a stone at the warm end, "
            f"a hide at the cool end. {title}, {subtitle}: {told}."
        ),
        drawing=drawing,
    )


_MAKERS: dict[Sketch, Callable[[], Picture]] = {
    Sketch.LAYOUT: _layout,
    Sketch.DISTANCE: _distance,
    Sketch.PLACES: _places,
    Sketch.THERMOMETERS: _thermometers,
}
