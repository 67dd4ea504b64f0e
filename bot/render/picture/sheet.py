"""Thermometers one below the other: where each goes, what it reads, what is wanted."""

from typing import TYPE_CHECKING

from bot.drawing import Gauge, Sheet, Tone
from bot.render.picture import inks
from bot.render.picture.axes import Shown, dress_x
from bot.render.picture.frame import MARGIN_IN, Frame
from bot.render.picture.lettering import WIDTH_IN, line_height_in, width_in, wrapped

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

__all__ = ["draw_sheet"]

_HEAD, _SMALL = 11.5, 10.5
_ROOM_IN = WIDTH_IN - 2 * MARGIN_IN
_BAR_IN, _GAP_IN = 0.3, 0.16
_AXIS_IN, _AXIS_TWO_IN = 0.62, 0.5


def draw_sheet(sheet: Sheet) -> "Figure":
    """Return the gauges as a figure, all on one axis."""
    heads = [_head_lines(number, gauge) for number, gauge in enumerate(sheet.gauges, 1)]
    tails = [wrapped(_told(gauge), _ROOM_IN, _SMALL) for gauge in sheet.gauges]
    talls = [
        len(head) * line_height_in(_HEAD) + _BAR_IN + len(tail) * line_height_in(_SMALL) + _GAP_IN
        for head, tail in zip(heads, tails, strict=True)
    ]
    above = _AXIS_TWO_IN if len(sheet.axis.scales) > 1 else 0.0
    frame = Frame(sheet.title, sheet.subtitle, sheet.note, above + sum(talls) + _GAP_IN + _AXIS_IN)
    axes = frame.axes(
        MARGIN_IN, frame.body_bottom_in + _AXIS_IN, _ROOM_IN, frame.body_in - _AXIS_IN - above
    )
    for name in ("top", "left", "right"):
        axes.spines[name].set_visible(False)
    axes.set_yticks([])
    axes.set_ylim(frame.body_bottom_in + _AXIS_IN, frame.body_top_in - above)
    x = dress_x(axes, sheet.axis)
    top = frame.body_top_in - above
    for gauge, head, tail, tall in zip(sheet.gauges, heads, tails, talls, strict=True):
        _gauge(frame, axes, x, gauge, head, tail, top - _GAP_IN)
        top -= tall
    return frame.figure


def _head_lines(number: int, gauge: Gauge) -> list[str]:
    room = _ROOM_IN - width_in(_verdict(gauge), _HEAD, "bold") - 0.15
    return wrapped(f"{number}  {gauge.label}", room, _HEAD, "bold")


def _verdict(gauge: Gauge) -> str:
    _, _, sign = inks.TONES[gauge.tone]
    return f"{sign} {gauge.verdict}".strip()


def _told(gauge: Gauge) -> str:
    return "\n".join(part for part in (gauge.reading_text, gauge.wanted_text, gauge.where) if part)


def _gauge(
    frame: Frame,
    axes: "Axes",
    x: Shown,
    gauge: Gauge,
    head: list[str],
    tail: list[str],
    top_in: float,
) -> None:
    fill, ink, _ = inks.TONES[gauge.tone]
    if gauge.verdict:
        frame.text(
            WIDTH_IN - MARGIN_IN,
            top_in,
            _verdict(gauge),
            _HEAD,
            ink,
            weight="bold",
            ha="right",
            bbox={"facecolor": fill, "edgecolor": "none", "boxstyle": "round,pad=0.25"},
        )
    for line in head:
        frame.text(MARGIN_IN, top_in, line, _HEAD, inks.INK, weight="bold")
        top_in -= line_height_in(_HEAD)
    _bar(axes, x, gauge, top_in - _BAR_IN / 2.0)
    top_in -= _BAR_IN
    for line in tail:
        frame.text(MARGIN_IN, top_in, line, _SMALL, inks.INK)
        top_in -= line_height_in(_SMALL)


def _bar(axes: "Axes", x: Shown, gauge: Gauge, level: float) -> None:
    low, high = axes.get_xlim()
    axes.plot([low, high], [level, level], color=inks.STONE, linewidth=1.2, zorder=1)
    ticks = [tick for tick in axes.get_xticks() if low <= tick <= high]
    axes.plot(
        ticks, [level] * len(ticks), "|", color=inks.STONE, markersize=9, zorder=1, clip_on=False
    )
    if gauge.wanted:
        ends = [x.one(end) for end in gauge.wanted]
        for width, colour in ((15.0, inks.AMBER), (11.5, inks.PALE_AMBER)):
            axes.plot(
                ends, [level] * 2, color=colour, linewidth=width, solid_capstyle="butt", zorder=2
            )
    if gauge.reading:
        _reading(axes, [x.one(end) for end in gauge.reading], level, gauge.tone)


def _reading(axes: "Axes", ends: list[float], level: float, tone: Tone) -> None:
    """Draw a reading as a diamond, with its doubt; one off the sheet as an arrow at its edge."""
    low, high = axes.get_xlim()
    middle = sum(ends) / 2.0
    at = min(max(middle, low), high)
    marker = "D" if low <= middle <= high else ("<" if middle < low else ">")
    if ends[1] > ends[0]:
        axes.plot(
            ends, [level] * 2, color=inks.INK, linewidth=2.0, marker="|", markersize=11, zorder=3
        )
    axes.plot(
        [at],
        [level],
        marker=marker,
        markersize=10,
        markerfacecolor=inks.RUST if tone is Tone.BAD else inks.BLUE,
        markeredgecolor=inks.PAPER,
        markeredgewidth=1.6,
        clip_on=False,
        zorder=4,
    )
