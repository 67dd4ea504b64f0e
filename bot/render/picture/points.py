"""The points of a chart, and their words, which keep clear of each other and of what is there."""

from typing import TYPE_CHECKING, Any

from bot.drawing import Chart, Point, PointKind, Range, Tone
from bot.render.picture import inks
from bot.render.picture.axes import Shown
from bot.render.picture.lettering import DPI, halo, line_height_in, width_in

if TYPE_CHECKING:
    from matplotlib.axes import Axes

__all__ = ["SMALL", "SPAN_LABEL", "points", "span_label_ends"]

SMALL = 10.5
SPAN_LABEL = 0.035
"""How high above the foot an advised stretch's label stands, as a share of the axes."""

_MOST_BUMPS = 1
_MARKER_IN = 0.16
_KINDS: dict[PointKind, dict[str, Any]] = {
    PointKind.START: {"marker": "o", "markersize": 11, "markerfacecolor": inks.AMBER},
    PointKind.HERE: {"marker": "s", "markersize": 10, "markerfacecolor": inks.RUST},
    PointKind.READING: {"marker": "D", "markersize": 8, "markerfacecolor": inks.PAPER},
    PointKind.SET_ASIDE: {"marker": "X", "markersize": 9, "markerfacecolor": inks.PAPER},
}


def points(axes: "Axes", chart: Chart, x: Shown, y: Shown) -> None:
    """Draw every point with its doubt, then the words above them."""
    for point in chart.points:
        _point(axes, point, x, y)
    labels = _Labels(axes, chart, x, y)
    for point in sorted((p for p in chart.points if p.label), key=lambda p: -p.x):
        labels.write(point)


def span_label_ends(axes: "Axes", span: Range, x: Shown) -> tuple[float, float]:
    """Return from where to where an advised stretch's label goes, inside the axes."""
    left, right = axes.get_xlim()
    half = width_in(span.label, SMALL, "bold") / 2.0 * _per_in(axes)
    middle = (x.one(span.low) + x.one(span.high)) / 2.0
    middle = max(left + half, min(middle, right - half))
    return middle - half, middle + half


def _per_in(axes: "Axes") -> float:
    """Return how much of x lies along an inch of the axes."""
    left, right = axes.get_xlim()
    return (right - left) / (axes.bbox.width / DPI)


def _point(axes: "Axes", point: Point, x: Shown, y: Shown) -> None:
    at, value = x.one(point.x), y.one(point.y)
    if point.low < point.high:
        axes.plot(
            [at, at],
            [y.one(point.low), y.one(point.high)],
            color=inks.INK,
            linewidth=1.8,
            marker="_",
            markersize=9,
            zorder=4,
        )
    look = _KINDS[point.kind]
    # A point at the very edge is drawn whole.
    edge: dict[str, Any] = {"markeredgecolor": inks.INK, "markeredgewidth": 1.8}
    axes.plot([at], [value], zorder=5, clip_on=False, **edge, **look)


class _Labels:
    """Writes the points' words above them and to the right, where a falling curve leaves room."""

    def __init__(self, axes: "Axes", chart: Chart, x: Shown, y: Shown) -> None:
        self._axes, self._x, self._y = axes, x, y
        self._low, self._high = axes.get_xlim()
        floor, self._ceiling = axes.get_ylim()
        self._per_in = _per_in(axes)
        tall_in = axes.bbox.height / DPI
        self._tall = line_height_in(SMALL) * (self._ceiling - floor) / tall_in
        self._gap = 0.11 * self._per_in
        # From where to where, and how high, a label stands already.
        self._taken = [
            (*span_label_ends(axes, span, x), floor + SPAN_LABEL * (self._ceiling - floor))
            for span in chart.spans
            if span.tone is not Tone.BAD
        ]
        for band in chart.bands:
            wide = width_in(band.label, SMALL, "bold") * self._per_in + self._gap
            level = y.one((band.low + band.high) / 2.0) - self._tall / 2.0
            self._taken.append((self._high - wide, self._high, level))
        half = _MARKER_IN / 2.0 * self._per_in
        for point in chart.points:
            at, level = x.one(point.x), y.one(point.y) - self._tall / 2.0
            self._taken.append((at - half, at + half, level))

    def write(self, point: Point) -> None:
        """Write one point's words; a reading's are left out where readings crowd."""
        weight = "normal" if point.kind is PointKind.READING else "bold"
        at, top = self._x.one(point.x), self._y.one(point.high)
        wide = (width_in(point.label, SMALL, weight) + 0.08) * self._per_in
        foot = min(top + 0.6 * self._tall, self._ceiling - 1.2 * self._tall)
        sides = [max(self._low, min(at, self._high - wide)), max(self._low, at - wide + self._gap)]
        left = next((side for side in sides if self._is_free(side, wide, foot)), sides[0])
        bumps = 0
        while not self._is_free(left, wide, foot):
            foot, bumps = foot + self._tall, bumps + 1
        if point.kind is PointKind.READING and bumps > _MOST_BUMPS:
            return
        self._taken.append((left, left + wide, foot))
        self._axes.annotate(
            point.label,
            (at, top),
            xytext=(left, foot),
            textcoords="data",
            ha="left",
            va="bottom",
            fontsize=SMALL,
            weight=weight,
            path_effects=halo(),
            zorder=7,
        )

    def _is_free(self, left: float, wide: float, foot: float) -> bool:
        return all(
            left + wide <= start or end <= left or abs(level - foot) >= self._tall
            for start, end, level in self._taken
        )
