"""The field of a chart: where a value of x and y lies on the sheet."""

from bot.drawing import Chart
from bot.render.picture.geometry import Rect

__all__ = ["Plot"]


class Plot:
    """The field of a chart: where a value of x and y lies on the sheet."""

    def __init__(self, chart: Chart, field: Rect) -> None:
        self.field = field
        self._x, self._y = chart.x, chart.y

    def x(self, value: float) -> float:
        """Return how far right a value of x lies."""
        share = (value - self._x.low) / (self._x.high - self._x.low)
        return self.field.x0 + share * (self.field.x1 - self.field.x0)

    def y(self, value: float) -> float:
        """Return how far down a value of y lies."""
        share = (value - self._y.low) / (self._y.high - self._y.low)
        return self.field.y1 - share * (self.field.y1 - self.field.y0)

    def held(self, value: float) -> float:
        """Return how far down a value of y lies, held inside the field."""
        return min(max(self.y(value), self.field.y0), self.field.y1)
