"""Colours and how they were chosen: blue, amber and ink differ for every kind of colour sight.

The scale of maps runs from deep blue to pale yellow in even steps of OKLab, a space in which
equal steps look equal; lightness only rises, so it also works in grey.
"""

from functools import cache
from typing import TYPE_CHECKING

from bot.drawing import Tone

if TYPE_CHECKING:
    from matplotlib.colors import ListedColormap

__all__ = [
    "AMBER",
    "BLUE",
    "HAIR",
    "INK",
    "MUTED",
    "PALE_AMBER",
    "PALE_BLUE",
    "PAPER",
    "RUST",
    "STONE",
    "TONES",
    "sun_scale",
]

PAPER = "#FBF8F1"
INK = "#1B2530"
MUTED = "#505B66"
HAIR = "#D8D2C4"
STONE = "#A9A294"
BLUE = "#1F4E9C"
PALE_BLUE = "#BFD0EC"
AMBER = "#E3A008"
PALE_AMBER = "#FBE7A8"
RUST = "#A63A0B"

# A tone's fill, its ink and its sign; the sign tells it without the colour.
TONES = {
    Tone.PLAIN: ("#F1ECE0", INK, ""),
    Tone.GOOD: ("#DCE7F7", INK, "●"),
    Tone.DOUBTFUL: (PALE_AMBER, INK, "◐"),
    Tone.BAD: ("#F3D3C4", INK, "×"),
}

_DARK_LAB = (0.30, -0.02, -0.13)
_LIGHT_LAB = (0.93, -0.02, 0.11)
_STEPS = 256


@cache
def sun_scale() -> "ListedColormap":
    """Return the scale of maps, dark to light."""
    from matplotlib.colors import ListedColormap

    mixed = (
        tuple(
            dark + (light - dark) * step / (_STEPS - 1)
            for dark, light in zip(_DARK_LAB, _LIGHT_LAB, strict=True)
        )
        for step in range(_STEPS)
    )
    return ListedColormap([_srgb(*lab) for lab in mixed], name="noon")


def _srgb(lightness: float, a: float, b: float) -> tuple[float, float, float]:
    """Return OKLab as sRGB, each 0 to 1. Ottosson (2020), A perceptual color space."""
    long = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3
    middle = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3
    short = (lightness - 0.0894841775 * a - 1.2914855480 * b) ** 3
    linear = (
        4.0767416621 * long - 3.3077115913 * middle + 0.2309699292 * short,
        -1.2684380046 * long + 2.6097574011 * middle - 0.3413193965 * short,
        -0.0041960863 * long - 0.7034186147 * middle + 1.7076147010 * short,
    )
    red, green, blue = (_encoded(min(1.0, max(0.0, value))) for value in linear)
    return red, green, blue


def _encoded(value: float) -> float:
    return 12.92 * value if value <= 0.0031308 else 1.055 * value ** (1 / 2.4) - 0.055
