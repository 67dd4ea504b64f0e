"""Figures that no question draws: how to lay out, where to measure. Drawn like every picture.

They show an arrangement, not a sum: the enclosure is to scale, the animal is not. Words:
``sketch.ftl``.
"""

from collections.abc import Callable
from dataclasses import dataclass

from bot.drawing import Bar, Block, Dimension, End, Place, Side
from bot.facts import Length, Name, Say, Temp, degrees, metres
from bot.guide import Sketch
from bot.reply import Picture
from bot.saying.voice import Voice
from calc.animal import Target
from calc.animals import animals

__all__ = ["sketch"]

_INCH_M = 0.0254
_LONG_M, _WIDE_M, _HIGH_M = 48 * _INCH_M, 36 * _INCH_M, 24 * _INCH_M
_RIGHT_M = 16 * _INCH_M
_LAMP_X_M = 0.23
_STONE = (0.06, 0.40, 0.0, 0.11)
_HIDE = (0.8, 0.98, 0.0, 0.13)
_STONE_TOP_M = _STONE[3]
_SURFACE, _WARM, _COOL = (_LAMP_X_M + 0.1, _STONE_TOP_M), (0.56, 0.17), (1.1, 0.07)
# The animal is drawn at one size on paper: this much above the stone its feet rest on it.
_BACK_M = 0.028
_ANIMAL = "bearded-dragon"


@dataclass(frozen=True, slots=True)
class SketchAway:
    """The distance that counts, the one that does not, and how far an infrared gun is held."""

    right: Length
    wrong: Length
    gun: Length


@dataclass(frozen=True, slots=True)
class SketchWanted:
    """How warm a place should be."""

    warmth: Temp


@dataclass(frozen=True, slots=True)
class SketchAnimal:
    """Whom the figures of a sketch are for."""

    animal: Name


@dataclass(frozen=True, slots=True)
class SketchPlace:
    """One place of a sketch by the number that stands beside it."""

    number: int
    text: Say


@dataclass(frozen=True, slots=True)
class SketchNumbered:
    """A sketch of places with numbers."""

    title: Say
    below: Say
    places: tuple[Say, ...]


_AWAY = SketchAway(metres(_RIGHT_M), metres(_HIGH_M), metres(12 * _INCH_M))


def sketch(which: Sketch, speaker: Voice) -> Picture:
    """Return a figure with its words."""
    return _MAKERS[which](speaker)


def _layout(speaker: Voice) -> Picture:
    say = speaker.text
    share_m = 0.56 * _LONG_M
    share = Dimension(0.0, 0.86 * _HIGH_M, share_m, 0.86 * _HIGH_M, say(Say("sketch-layout-share")))
    drawing = Side(
        title=say(Say("sketch-layout")),
        subtitle=say(Say("sketch-layout-below")),
        width_m=_LONG_M,
        height_m=_HIGH_M,
        width_label=_length(_LONG_M, speaker),
        height_label=_length(_HIGH_M, speaker),
        tubes=(Bar(0.0, share_m, _HIGH_M, say(Say("sketch-tube"))),),
        heat_lamp=Place(_LAMP_X_M, _HIGH_M, say(Say("sketch-lamp"))),
        blocks=_blocks(speaker),
        back=Place(_LAMP_X_M, _STONE_TOP_M + _BACK_M, ""),
        dimensions=(share,),
        ends=(
            End(say(Say("sketch-warm")), say(Say("sketch-layout-warm")), True),
            End(say(Say("sketch-cool")), say(Say("sketch-layout-cool")), False),
        ),
    )
    return Picture(alt=say(Say("sketch-layout-alt")), drawing=drawing)


def _distance(speaker: Voice) -> Picture:
    say = speaker.text
    right, wrong = Say("sketch-distance-right", _AWAY), Say("sketch-distance-wrong", _AWAY)
    stone_m = _HIGH_M - _RIGHT_M - _BACK_M
    drawing = Side(
        title=say(Say("sketch-distance")),
        subtitle=say(Say("sketch-distance-below")),
        width_m=_WIDE_M,
        height_m=_HIGH_M,
        width_label="",
        height_label="",
        tubes=(Bar(0.06, _WIDE_M - 0.06, _HIGH_M, say(Say("sketch-tube"))),),
        blocks=(Block(0.04, 0.36, 0.0, stone_m, say(Say("sketch-stone"))),),
        back=Place(0.2, _HIGH_M - _RIGHT_M, ""),
        dimensions=(
            Dimension(0.2, _HIGH_M, 0.2, _HIGH_M - _RIGHT_M, say(right)),
            Dimension(0.52, _HIGH_M, 0.52, 0.0, say(wrong)),
        ),
    )
    return Picture(alt=say(Say("sketch-distance-alt", _AWAY)), drawing=drawing)


def _places(speaker: Voice) -> Picture:
    animal = animals()[_ANIMAL]
    return _numbered(
        Say("sketch-places"),
        Say("sketch-places-below", SketchAnimal(Name(f"animal-{_ANIMAL}"))),
        {
            _SURFACE: Say("sketch-places-surface", _wanted(animal.basking_surface_c)),
            _WARM: Say("sketch-places-warm", _wanted(animal.warm_air_c)),
            _COOL: Say("sketch-places-cool", _wanted(animal.cool_air_c)),
        },
        speaker,
    )


def _wanted(target: Target | None) -> SketchWanted:
    assert target is not None, "the animal of the sketch is one whose figures are known"
    return SketchWanted(degrees(target.aim, (target.low, target.high)))


def _thermometers(speaker: Voice) -> Picture:
    return _numbered(
        Say("sketch-thermometers"),
        Say("sketch-thermometers-below"),
        {
            _SURFACE: Say("sketch-thermometers-surface", _AWAY),
            _COOL: Say("sketch-thermometers-cool"),
            _WARM: Say("sketch-thermometers-warm"),
        },
        speaker,
    )


def _numbered(
    title: Say, below: Say, places: dict[tuple[float, float], Say], speaker: Voice
) -> Picture:
    say = speaker.text
    drawing = Side(
        title=say(title),
        subtitle=say(below),
        width_m=_LONG_M,
        height_m=_HIGH_M,
        width_label=_length(_LONG_M, speaker),
        height_label=_length(_HIGH_M, speaker),
        heat_lamp=Place(_LAMP_X_M, _HIGH_M, say(Say("sketch-lamp"))),
        blocks=_blocks(speaker),
        back=Place(_LAMP_X_M, _STONE_TOP_M + _BACK_M, ""),
        places=tuple(Place(*spot, say(text)) for spot, text in places.items()),
        ends=(
            End(say(Say("sketch-warm")), "", True),
            End(say(Say("sketch-cool")), "", False),
        ),
    )
    numbers = enumerate(places.values(), 1)
    told = tuple(Say("sketch-place", SketchPlace(number, text)) for number, text in numbers)
    alt = Say("sketch-numbered-alt", SketchNumbered(title, below, told))
    return Picture(alt=say(alt), drawing=drawing)


def _blocks(speaker: Voice) -> tuple[Block, ...]:
    say = speaker.text
    return (Block(*_STONE, say(Say("sketch-stone"))), Block(*_HIDE, say(Say("sketch-hide"))))


def _length(value_m: float, speaker: Voice) -> str:
    return speaker.figure(metres(value_m), "best", False).replace("\u00a0", " ")


_MAKERS: dict[Sketch, Callable[[Voice], Picture]] = {
    Sketch.LAYOUT: _layout,
    Sketch.DISTANCE: _distance,
    Sketch.PLACES: _places,
    Sketch.THERMOMETERS: _thermometers,
}
