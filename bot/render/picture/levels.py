"""The words of the zones of a field and the figures of its levels, where there is room for them."""

import numpy as np

from bot.drawing import Grid
from bot.render.picture.geometry import Rect
from bot.render.picture.inks import Ink
from bot.render.picture.lettering import SIZE, width
from bot.render.picture.page import Page
from bot.render.picture.zones import Field

__all__ = ["levels", "zone_words"]

_STEP = 12.0


def zone_words(page: Page, grid: Grid, field: Field, inside: Rect) -> None:
    """Write the word of each zone where all of it lies in the zone, nearest to its middle."""
    low, high = grid.wanted or (np.inf, np.inf)
    shade = grid.levels[0]
    ends = ((high, np.inf), (low, high), (shade, low), (-1.0, shade))
    for words, (least, most) in zip(grid.words, ends, strict=False):
        if least < most:
            _zone_word(page, words, field, inside, (least, most))


def _zone_word(
    page: Page, words: str, field: Field, inside: Rect, ends: tuple[float, float]
) -> None:
    half, tall = width(words, SIZE, bold=True) / 2.0 + 4.0, 12.0
    first, last = sorted((float(field.y[0]), float(field.y[-1])))
    xs = np.arange(inside.x0 + half, inside.x1 - half, _STEP)
    ys = np.arange(max(inside.y0, first) + tall, min(inside.y1, last) - tall, _STEP)
    if not len(xs) or not len(ys):
        return
    across, down = (part.ravel() for part in np.meshgrid(xs, ys))
    lies = np.ones(len(across), dtype=bool)
    for dx in (-half, 0.0, half):
        for dy in (-tall, tall):
            values = field.at(across + dx, down + dy)
            lies &= (values >= ends[0]) & (values < ends[1])
    if not lies.any():
        return
    across, down = across[lies], down[lies]
    away = np.hypot(across - across.mean(), 2.0 * (down - down.mean()))
    for at in np.argsort(away, kind="stable")[:200]:
        x, y = float(across[at]), float(down[at])
        if page.text_where_free(
            x, y + 8.0, words, bold=True, anchor="middle", halo=Ink.AIR, clear=12.0
        ):
            return


def levels(page: Page, grid: Grid, field: Field, inside: Rect) -> None:
    """Write the figures of the levels where there is room along them."""
    xs = np.arange(inside.x0 + 20.0, inside.x1 - 20.0, _STEP)
    ys = np.arange(inside.y0 + 20.0, inside.y1 - 20.0, _STEP)
    if not len(xs) or not len(ys):
        return
    across, down = (part.ravel() for part in np.meshgrid(xs, ys))
    values = field.at(across, down)
    first, last = sorted((float(field.y[0]), float(field.y[-1])))
    for level in grid.levels:
        words = f"{level:g}"
        near = np.argsort(np.abs(np.log(np.maximum(values, 1e-6) / level)), kind="stable")[:60]
        for at in near:
            x, y = float(across[at]), float(down[at])
            close = 0.9 < values[at] / level < 1.1 and first < y < last
            if close and page.text_where_free(
                x, y + 8.0, words, anchor="middle", halo=Ink.AIR, clear=16.0
            ):
                break
