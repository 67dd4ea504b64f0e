"""Colours: enough contrast, and told apart by every kind of colour sight.

Contrast: WCAG 2.2, relative luminance and success criteria 1.4.3 (text 4.5) and 1.4.11
(graphics 3). Colour sight: Machado, Oliveira and Fernandes (2009), A physiologically-based model
for simulation of color vision deficiency, severity 1.0 (matrices from memory).
"""

import numpy as np
import pytest
from numpy.typing import NDArray

from bot.render.picture.inks import TONE_SIGN, Ink, Theme, shown

Colour = NDArray[np.float64]
SIGHTS = {
    "usual": np.eye(3),
    "protanopia": np.array(
        [
            [0.152286, 1.052583, -0.204868],
            [0.114503, 0.786281, 0.099216],
            [-0.003882, -0.048116, 1.051998],
        ]
    ),
    "deuteranopia": np.array(
        [
            [0.367322, 0.860646, -0.227968],
            [0.280085, 0.672501, 0.047413],
            [-0.011820, 0.042940, 0.968881],
        ]
    ),
}


def of_hex(colour: str) -> Colour:
    return np.array([int(colour[i : i + 2], 16) / 255.0 for i in (1, 3, 5)])


def linear(colour: Colour) -> Colour:
    return np.where(colour <= 0.04045, colour / 12.92, ((colour + 0.055) / 1.055) ** 2.4)


def luminance(colour: Colour) -> float:
    return float(linear(colour) @ np.array([0.2126, 0.7152, 0.0722]))


def contrast(one: str, other: str) -> float:
    low, high = sorted((luminance(of_hex(one)), luminance(of_hex(other))))
    return (high + 0.05) / (low + 0.05)


THEMES = (Theme.LIGHT, Theme.DARK)
GROUNDS = (Ink.PAPER, Ink.AIR, Ink.CARD, Ink.COOL_PALE, Ink.HEAT_PALE)


def oklab(light: Colour) -> Colour:
    """Return OKLab of linear sRGB. Ottosson (2020), A perceptual color space (from memory)."""
    to_lms = np.array(
        [
            [0.4122214708, 0.5363325363, 0.0514459929],
            [0.2119034982, 0.6806995451, 0.1073969566],
            [0.0883024619, 0.2817188376, 0.6299787005],
        ]
    )
    to_lab = np.array(
        [
            [0.2104542553, 0.7936177850, -0.0040720468],
            [1.9779984951, -2.4285922050, 0.4505937099],
            [0.0259040371, 0.7827717662, -0.8086757660],
        ]
    )
    return np.asarray(to_lab @ np.cbrt(to_lms @ np.clip(light, 0.0, 1.0)))


@pytest.mark.parametrize("theme", THEMES)
def test_words_stand_out_from_every_ground(theme: Theme) -> None:
    for ground in GROUNDS:
        assert contrast(shown(Ink.INK, theme), shown(ground, theme)) >= 4.5
    for ink in (Ink.SOFT, Ink.UV, Ink.HEAT, Ink.COOL):
        assert contrast(shown(ink, theme), shown(Ink.PAPER, theme)) >= 4.5


@pytest.mark.parametrize("theme", THEMES)
def test_words_on_a_sign_and_lines_of_zones_stand_out(theme: Theme) -> None:
    for ink in (Ink.COOL, Ink.HEAT):
        assert contrast(shown(Ink.ON_SIGN, theme), shown(ink, theme)) >= 4.5
    for zone in (Ink.UV_RIGHT, Ink.UV_WEAK, Ink.AIR):
        assert contrast(shown(Ink.UV, theme), shown(zone, theme)) >= 3.0


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("sight", ["usual", "protanopia", "deuteranopia"])
def test_fine_and_change_are_told_apart_by_every_sight(theme: Theme, sight: str) -> None:
    fine, change = (
        oklab(SIGHTS[sight] @ linear(of_hex(shown(ink, theme)))) for ink in (Ink.COOL, Ink.HEAT)
    )
    assert 100.0 * np.linalg.norm(fine - change) >= 12.0


def test_every_tone_has_a_sign_of_its_own() -> None:
    assert len(set(TONE_SIGN.values())) == len(TONE_SIGN)
