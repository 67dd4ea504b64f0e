"""A box on the sheet: where a place of it [m] lies."""

from bot.drawing import Side
from bot.render.picture.geometry import Rect

__all__ = ["Scaled"]


class Scaled:
    """An enclosure drawn to a scale [units a metre] with its top left corner at a place."""

    def __init__(self, side: Side, left: float, top: float, scale: float) -> None:
        self.scale = scale
        self.rect = Rect(left, top, left + side.width_m * scale, top + side.height_m * scale)

    def x(self, x_m: float) -> float:
        """Return where along the sheet a place of the floor lies."""
        return self.rect.x0 + x_m * self.scale

    def y(self, y_m: float) -> float:
        """Return where down the sheet a height over the floor lies."""
        return self.rect.y1 - y_m * self.scale
