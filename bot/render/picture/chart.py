"""Curves: best line, doubt as a shaded band, what is wanted, what is advised, readings."""

from typing import TYPE_CHECKING, Any

from bot.drawing import Chart, Line, Mark, Range, Stroke, Ticks, Tone
from bot.render.picture import inks
from bot.render.picture.axes import Shown, dress_x, dress_y
from bot.render.picture.frame import Frame
from bot.render.picture.lettering import (
    DPI,
    WIDTH_IN,
    halo,
    line_height_in,
    spread,
    width_in,
    wrapped,
)
from bot.render.picture.points import SMALL, SPAN_LABEL, points, span_label_ends

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

__all__ = ["draw_chart"]

_BODY_IN = 4.0
_LEFT_IN, _RIGHT_IN = 0.88, 0.34
_TOP_IN, _TOP_TWO_IN = 0.08, 0.52
# Numbers have a title below them, days may have their year.
_BOTTOM_IN = {Ticks.NUMBERS: 0.62, Ticks.DATES: 0.52, Ticks.MONTHS: 0.34}
_LABEL_ROOM_IN = 1.25
_STROKES: dict[Stroke, dict[str, Any]] = {
    Stroke.MAIN: {"linewidth": 3.0, "color": inks.BLUE},
    Stroke.SOLID: {"linewidth": 1.8, "color": inks.INK},
    Stroke.DASHED: {"linewidth": 1.8, "color": inks.INK, "dashes": (5, 2)},
    Stroke.DOTTED: {"linewidth": 2.0, "color": inks.MUTED, "dashes": (1, 1.4)},
}


def draw_chart(chart: Chart) -> "Figure":
    """Return the chart as a figure."""
    frame = Frame(chart.title, chart.subtitle, chart.note, _BODY_IN)
    labelled = [line for line in chart.lines if line.label]
    side = max(
        (width_in(part, SMALL) for line in labelled for part in _broken(line.label)), default=0.0
    )
    right = _RIGHT_IN + (side + 0.06 if labelled else 0.0)
    top = _TOP_TWO_IN if len(chart.x.scales) > 1 else _TOP_IN
    bottom = _BOTTOM_IN[chart.x.ticks]
    axes = frame.axes(
        _LEFT_IN,
        frame.body_bottom_in + bottom,
        WIDTH_IN - _LEFT_IN - right,
        _BODY_IN - bottom - top,
    )
    for name in ("top", "right"):
        axes.spines[name].set_visible(False)
    x, y = dress_x(axes, chart.x), dress_y(axes, chart.y)
    for band in chart.bands:
        _band(axes, band, y)
    for span in chart.spans:
        _span(axes, span, x)
    for line in chart.lines:
        _line(axes, line, x, y)
    _line_labels(axes, labelled, x, y)
    for mark in chart.marks:
        _mark(axes, mark, x)
    points(axes, chart, x, y)
    return frame.figure


def _broken(label: str) -> list[str]:
    return wrapped(label, _LABEL_ROOM_IN, SMALL)


def _band(axes: "Axes", band: Range, y: Shown) -> None:
    low, high = y.one(band.low), y.one(band.high)
    axes.axhspan(low, high, facecolor=inks.PALE_AMBER, edgecolor="none", zorder=0.4)
    for end in (low, high):
        axes.axhline(end, color=inks.AMBER, linewidth=1.4, zorder=0.5)
    if band.label:
        axes.annotate(
            band.label,
            (1.0, (low + high) / 2.0),
            xycoords=("axes fraction", "data"),
            xytext=(-6, 0),
            textcoords="offset points",
            ha="right",
            va="center",
            fontsize=SMALL,
            weight="bold",
            path_effects=halo(),
            zorder=6,
        )


def _span(axes: "Axes", span: Range, x: Shown) -> None:
    """Draw an advised stretch as a bar along the foot, one to avoid as hatching all the way up."""
    low, high = x.one(span.low), x.one(span.high)
    if span.tone is Tone.BAD:
        axes.axvspan(low, high, facecolor="#EFEAE0", edgecolor=inks.STONE, hatch="////", zorder=0.6)
        axes.annotate(
            span.label,
            (low, 0.16),
            xycoords=("data", "axes fraction"),
            xytext=(5, 0),
            textcoords="offset points",
            rotation=90,
            ha="left",
            va="bottom",
            fontsize=SMALL,
            path_effects=halo(),
            zorder=6,
        )
        return
    for end in (low, high):
        axes.axvline(end, color=inks.INK, linewidth=1.0, dashes=(2, 2), zorder=1.5)
    axes.plot(
        [low, high],
        [0.012, 0.012],
        transform=axes.get_xaxis_transform(),
        color=inks.INK,
        linewidth=6.0,
        solid_capstyle="butt",
        zorder=5,
    )
    start, end = span_label_ends(axes, span, x)
    axes.annotate(
        span.label,
        ((start + end) / 2.0, SPAN_LABEL),
        xycoords=("data", "axes fraction"),
        ha="center",
        va="bottom",
        fontsize=SMALL,
        weight="bold",
        path_effects=halo(),
        zorder=6,
    )


def _line(axes: "Axes", line: Line, x: Shown, y: Shown) -> None:
    if line.low and line.high:
        axes.fill_between(
            x(line.x),
            y(line.low),
            y(line.high),
            step="post" if line.stepped else None,
            facecolor=inks.PALE_BLUE,
            alpha=0.55,
            edgecolor="none",
            zorder=1.0,
        )
        for edge in (line.low, line.high):
            axes.plot(x(line.x), y(edge), color=inks.BLUE, linewidth=0.7, alpha=0.7, zorder=1.1)
    style = "steps-post" if line.stepped else "default"
    axes.plot(
        x(line.x), y(line.y), drawstyle=style, label=line.label, zorder=3, **_STROKES[line.stroke]
    )


def _line_labels(axes: "Axes", lines: list[Line], x: Shown, y: Shown) -> None:
    """Write each line's name beside its end, all clear of each other."""
    if not lines:
        return
    low, high = axes.get_ylim()
    left, right = axes.get_xlim()
    per_line = line_height_in(SMALL) * (high - low) / (axes.bbox.height / DPI)
    sizes = [per_line * len(_broken(line.label)) for line in lines]
    ends = [min(max(y.one(line.y[-1]), low), high) for line in lines]
    for line, end, place in zip(lines, ends, spread(ends, sizes, low, high), strict=True):
        at = min(x.one(line.x[-1]), right)
        axes.annotate(
            "\n".join(_broken(line.label)),
            (at, end),
            xytext=(right + (right - left) * 0.035, place),
            va="center",
            fontsize=SMALL,
            annotation_clip=False,
            arrowprops={"arrowstyle": "-", "color": inks.STONE, "shrinkA": 0, "shrinkB": 0},
        )


def _mark(axes: "Axes", mark: Mark, x: Shown) -> None:
    at = x.one(mark.x)
    low, high = axes.get_xlim()
    late = (at - low) / (high - low) > 0.55
    axes.axvline(at, color=inks.RUST, linewidth=1.6, dashes=(6, 2), zorder=2)
    axes.annotate(
        mark.label,
        (at, 0.985),
        xycoords=("data", "axes fraction"),
        xytext=(-5 if late else 5, 0),
        textcoords="offset points",
        ha="right" if late else "left",
        va="top",
        fontsize=SMALL,
        color=inks.RUST,
        weight="bold",
        path_effects=halo(),
        zorder=6,
    )
