"""Colours: enough contrast, even steps, and told apart by every kind of colour sight.

Contrast: WCAG 2.2, relative luminance and success criteria 1.4.3 (text 4.5) and 1.4.11
(graphics 3). Colour sight: Machado, Oliveira and Fernandes (2009), A physiologically-based model
for simulation of color vision deficiency, severity 1.0 (matrices from memory). Lightness:
CIELAB of CIE 15, D65, from sRGB by IEC 61966-2-1.
"""

import numpy as np
import pytest
from numpy.typing import NDArray

from bot.render.picture import inks

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
    "tritanopia": np.array(
        [
            [1.255528, -0.076749, -0.178779],
            [-0.078411, 0.930809, 0.147602],
            [0.004733, 0.691367, 0.303900],
        ]
    ),
    "none": np.tile([0.2126, 0.7152, 0.0722], (3, 1)),
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


def lab(light: Colour) -> Colour:
    """Return CIELAB of linear sRGB."""
    to_xyz = np.array(
        [[0.4124, 0.3576, 0.1805], [0.2126, 0.7152, 0.0722], [0.0193, 0.1192, 0.9505]]
    )
    t = to_xyz @ np.clip(light, 0.0, 1.0) / np.array([0.9505, 1.0, 1.089])
    x, y, z = np.where(t > (6 / 29) ** 3, np.cbrt(t), t * (29 / 6) ** 2 / 3 + 4 / 29)
    return np.array([116 * y - 16, 500 * (x - y), 200 * (y - z)])


@pytest.mark.parametrize("ink", [inks.INK, inks.MUTED, inks.RUST])
def test_words_stand_out_from_the_paper(ink: str) -> None:
    assert contrast(ink, inks.PAPER) >= 4.5


@pytest.mark.parametrize("tone", inks.TONES)
def test_words_stand_out_from_every_tint(tone: object) -> None:
    fill, ink, _ = inks.TONES[tone]  # type: ignore[index]
    assert contrast(ink, fill) >= 4.5


def test_curves_stand_out_from_the_paper_and_from_what_is_wanted() -> None:
    for ground in (inks.PAPER, inks.PALE_AMBER, inks.PALE_BLUE):
        assert contrast(inks.BLUE, ground) >= 3.0


@pytest.mark.parametrize("sight", SIGHTS)
def test_what_is_wanted_and_what_is_measured_are_told_apart(sight: str) -> None:
    matrix = SIGHTS[sight]
    blue, amber = (lab(matrix @ linear(of_hex(c))) for c in (inks.BLUE, inks.AMBER))
    assert np.linalg.norm(blue - amber) > 30.0


@pytest.mark.parametrize("sight", SIGHTS)
def test_the_scale_of_maps_only_gets_lighter_for_everyone(sight: str) -> None:
    colours = np.array(inks.sun_scale().colors)[:, :3]
    lightness = [lab(SIGHTS[sight] @ linear(colour))[0] for colour in colours]
    assert np.all(np.diff(lightness) > 0.0)
    assert lightness[-1] - lightness[0] > 60.0


def test_the_scale_of_maps_rises_in_even_steps() -> None:
    colours = np.array(inks.sun_scale().colors)[:, :3]
    lightness = np.array([lab(linear(colour))[0] for colour in colours[::16]])
    steps = np.diff(lightness)
    assert steps.max() < 1.5 * steps.min()


def test_every_tone_has_a_sign_of_its_own() -> None:
    signs = [sign for _, _, sign in inks.TONES.values()]
    assert len(set(signs)) == len(signs)
