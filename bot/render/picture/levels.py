"""The figures of the levels of a field, each on its line where there is room."""

import numpy as np

from bot.drawing import Grid
from bot.render.picture.geometry import Rect
from bot.render.picture.inks import Ink
from bot.render.picture.page import Page
from bot.render.picture.zones import Field

__all__ = ["levels"]


def levels(page: Page, grid: Grid, field: Field, inside: Rect) -> None:
    """Write the figures of the levels where there is room along them."""
    step = 12.0
    xs = np.arange(inside.x0 + 20.0, inside.x1 - 20.0, step)
    ys = np.arange(inside.y0 + 20.0, inside.y1 - 20.0, step)
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
