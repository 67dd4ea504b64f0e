"""Counts: a column for each week, then a bar for each thing that was counted, figure by figure."""

from typing import TYPE_CHECKING, Any

from bot.drawing import Course, Tally, TallyGroup, TallyRow
from bot.render.picture import inks
from bot.render.picture.frame import MARGIN_IN, Frame, bare
from bot.render.picture.lettering import WIDTH_IN, line_height_in, width_in, wrapped

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

__all__ = ["draw_tally"]

_HEAD, _SMALL = 11.5, 10.5
_ROOM_IN = WIDTH_IN - 2 * MARGIN_IN
_GAP_IN, _BESIDE_IN = 0.14, 0.12
_BAR_IN, _ROW_PAD_IN = 0.16, 0.04
_MOST_LABEL_IN, _MOST_LABEL_LINES = 2.05, 2
# A column at its highest, and with the figure over it.
_COLUMN_IN, _COURSE_IN = 0.34, 0.58
_WIDEST_PITCH_IN = 0.62
_EDGE_IN = 0.03
# Edges of columns too narrow for the usual ones would close the gaps between them.
_NARROW_IN, _EDGE_PT, _THIN_PT = 0.15, 1.0, 0.3
# Each kind has its own fill; its heading tells it without the fill.
_FILLS: tuple[dict[str, Any], ...] = (
    {"facecolor": inks.BLUE, "edgecolor": inks.BLUE},
    {"facecolor": inks.AMBER, "edgecolor": inks.INK},
    {"facecolor": inks.INK, "edgecolor": inks.INK},
    {"facecolor": inks.RUST, "edgecolor": inks.RUST},
)


def draw_tally(tally: Tally) -> "Figure":
    """Return the counts as a figure."""
    # One week has no course: its columns would only repeat the totals.
    courses = tally.courses if len(tally.weeks) > 1 else ()
    dates_in = line_height_in(_SMALL) + _GAP_IN if courses else 0.0
    laid = [_Laid(group) for group in tally.groups]
    body_in = len(courses) * _COURSE_IN + dates_in + sum(one.tall_in for one in laid)
    body_in += _GAP_IN * max(0, len(laid) - 1)
    frame = Frame(tally.title, tally.subtitle, tally.note, body_in)
    top = frame.body_top_in
    label_in = max((width_in(c.label, _HEAD, "bold") for c in courses), default=0.0) + _BESIDE_IN
    for course in courses:
        top -= _COURSE_IN
        _course(frame, course, (label_in, top), unfinished=tally.unfinished)
    if courses:
        _dates(frame, tally.weeks, (label_in, top))
        top -= dates_in
    for one in laid:
        _group(frame, one, top)
        top -= one.tall_in + _GAP_IN
    return frame.figure


# --- the course ------------------------------------------------------------------------------


def _pitch_in(weeks: int, room_in: float) -> float:
    return min(_WIDEST_PITCH_IN, room_in / weeks)


def _course(
    frame: Frame,
    course: Course,
    at_in: tuple[float, float],
    *,
    unfinished: bool,
) -> None:
    """Draw the columns of one kind from a place on; the week that is not over is hatched."""
    label_in, bottom_in = at_in
    room = _ROOM_IN - label_in
    middle = bottom_in + (_COLUMN_IN + line_height_in(_HEAD)) / 2.0
    frame.text(MARGIN_IN, middle, course.label, _HEAD, inks.INK, weight="bold")
    axes = frame.axes(MARGIN_IN + label_in, bottom_in, room, _COURSE_IN)
    bare(axes)
    axes.set(xlim=(0.0, room), ylim=(0.0, _COURSE_IN))
    pitch, highest = _pitch_in(len(course.times), room), max(course.times) or 1
    heights = [times / highest * _COLUMN_IN for times in course.times]
    for number, height in enumerate(heights):
        last = number == len(heights) - 1
        fill = _fill(course.fill)
        how = _unfinished(fill) if last and unfinished else fill
        edge = _EDGE_PT if pitch > _NARROW_IN else _THIN_PT
        _box(axes, (number + 0.1) * pitch, 0.0, 0.8 * pitch, height, how, edge)
    axes.axhline(0.0, color=inks.MUTED, linewidth=1.6)
    _figures(axes, course.times, heights, pitch)


def _figures(axes: "Axes", times: tuple[int, ...], heights: list[float], pitch: float) -> None:
    """Write the figure over each column, or where there is no room over the highest and last."""
    _, room = axes.get_xlim()
    wide = [width_in(str(figure), _SMALL) for figure in times]
    every = max(wide) < pitch
    taken = 2 * room
    for number in reversed(range(len(times))):
        if not (every or number == len(times) - 1 or number == times.index(max(times))):
            continue
        half = wide[number] / 2.0
        middle = min(max((number + 0.5) * pitch, half), room - half)
        if middle + half > taken:
            continue
        # A figure wider than its column stands clear of the neighbours too.
        first, last = int((middle - half) / pitch), int((middle + half) / pitch)
        under = heights[number] if every else max(heights[first : last + 1])
        axes.text(
            middle, under + 0.03, str(times[number]), ha="center", va="bottom", fontsize=_SMALL
        )
        taken = middle - half


def _fill(number: int) -> dict[str, Any]:
    return _FILLS[number % len(_FILLS)]


def _unfinished(fill: dict[str, Any]) -> dict[str, Any]:
    return {"facecolor": inks.PAPER, "edgecolor": fill["edgecolor"], "hatch": "/////"}


def _dates(frame: Frame, weeks: tuple[str, ...], at_in: tuple[float, float]) -> None:
    """Write the first day of as many weeks as there is room for, the last one always."""
    label_in, top_in = at_in
    room = _ROOM_IN - label_in
    pitch = _pitch_in(len(weeks), room)
    taken = 2 * room
    for number in reversed(range(len(weeks))):
        half = width_in(weeks[number], _SMALL) / 2.0
        middle = min(max((number + 0.5) * pitch, half), room - half)
        if middle + half <= taken:
            place = MARGIN_IN + label_in + middle
            frame.text(place, top_in - 0.03, weeks[number], _SMALL, inks.MUTED, ha="center")
            taken = middle - half - _BESIDE_IN


# --- the bars --------------------------------------------------------------------------------


class _Laid:
    """A group with its words broken into lines."""

    def __init__(self, group: TallyGroup) -> None:
        self.group = group
        widest = max(width_in(row.label, _SMALL) for row in group.rows)
        self.label_in = min(widest, _MOST_LABEL_IN)
        self.labels = [_label_lines(row, self.label_in) for row in group.rows]
        self.explained = wrapped(group.explained, _ROOM_IN, _SMALL) if group.explained else []
        self.rows_in = [len(x) * (line_height_in(_SMALL) + _ROW_PAD_IN) for x in self.labels]
        self.tall_in = line_height_in(_HEAD) + len(self.explained) * line_height_in(_SMALL)
        self.tall_in += sum(self.rows_in) + 2 * _EDGE_IN


def _label_lines(row: TallyRow, room_in: float) -> list[str]:
    lines = wrapped(row.label, room_in + 0.01, _SMALL)
    if len(lines) <= _MOST_LABEL_LINES:
        return lines
    return [*lines[: _MOST_LABEL_LINES - 1], f"{lines[_MOST_LABEL_LINES - 1]} …"]


def _group(frame: Frame, laid: _Laid, top_in: float) -> None:
    group = laid.group
    frame.text(MARGIN_IN, top_in, group.heading, _HEAD, inks.INK, weight="bold")
    right = WIDTH_IN - MARGIN_IN
    frame.text(right, top_in, group.shown, _SMALL, inks.MUTED, ha="right")
    top_in -= line_height_in(_HEAD)
    for line in laid.explained:
        frame.text(MARGIN_IN, top_in, line, _SMALL, inks.MUTED)
        top_in -= line_height_in(_SMALL)
    tall = sum(laid.rows_in)
    bottom_in = top_in - _EDGE_IN - tall
    axes = frame.axes(MARGIN_IN, bottom_in, _ROOM_IN, tall)
    bare(axes)
    axes.set(xlim=(0.0, _ROOM_IN), ylim=(0.0, tall))
    left = laid.label_in + _BESIDE_IN
    words = max(width_in(row.text, _SMALL, "bold") for row in group.rows)
    longest = _ROOM_IN - left - words - _BESIDE_IN
    per_time = longest / (max(max(row.times, row.beside or 0) for row in group.rows) or 1)
    axes.plot([left, left], [0.0, tall], color=inks.MUTED, linewidth=1.6, zorder=3)
    middle = tall
    for row, lines, row_in in zip(group.rows, laid.labels, laid.rows_in, strict=True):
        _row(axes, row, lines, _fill(group.fill), (left, middle - row_in / 2.0), per_time)
        middle -= row_in


def _row(
    axes: "Axes",
    row: TallyRow,
    lines: list[str],
    fill: dict[str, Any],
    at: tuple[float, float],
    per_time: float,
) -> None:
    """Draw a bar from a place on, its name at the left of it and its figure at its end."""
    left, middle = at
    words: dict[str, Any] = {"va": "center_baseline", "fontsize": _SMALL}
    step = line_height_in(_SMALL)
    for number, line in enumerate(lines):
        level = middle + ((len(lines) - 1) / 2.0 - number) * step
        axes.text(left - _BESIDE_IN, level, line, ha="right", **words)
    if row.beside is not None:
        outline = {"facecolor": "none", "edgecolor": fill["edgecolor"], "linestyle": (0, (2, 1))}
        _box(axes, left, middle - _BAR_IN / 2.0, row.beside * per_time, _BAR_IN, outline)
    _box(axes, left, middle - _BAR_IN / 2.0, row.times * per_time, _BAR_IN, fill)
    end = left + max(row.times, row.beside or 0) * per_time
    axes.text(end + 0.07, middle, row.text, ha="left", weight="bold", **words)


def _box(
    axes: "Axes",
    left: float,
    bottom: float,
    wide: float,
    tall: float,
    how: dict[str, Any],
    edge_pt: float = _EDGE_PT,
) -> None:
    from matplotlib.patches import Rectangle

    if wide > 0.0 and tall > 0.0:
        axes.add_patch(Rectangle((left, bottom), wide, tall, linewidth=edge_pt, **how))
