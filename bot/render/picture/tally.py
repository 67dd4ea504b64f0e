"""Counts: a column for each week, then a bar for each thing that was counted, figure by figure."""

from bot.drawing import Course, Tally, TallyGroup, TallyRow
from bot.render.picture.geometry import Rect
from bot.render.picture.inks import Ink
from bot.render.picture.lettering import SIZE, leading, width, wrapped
from bot.render.picture.page import BIG, MARGIN, WIDE, Page
from bot.render.picture.svg import Shape, rect, stroke
from bot.render.picture.textures import slanted

__all__ = ["draw_tally"]

_ROOM = WIDE - 2 * MARGIN
_COLUMN, _WIDEST_PITCH = 54.0, 86.0
_BAR = 22.0
_MOST_LABEL, _MOST_LABEL_LINES = 270.0, 2
_INKS = (Ink.COOL, Ink.SUN, Ink.SOFT, Ink.HEAT)


def draw_tally(tally: Tally) -> Page:
    """Return the counts on their sheet."""
    page = Page(tally.title, tally.subtitle)
    # One week has no course: its columns would only repeat the totals.
    courses = tally.courses if len(tally.weeks) > 1 else ()
    left = MARGIN + max((width(c.label, SIZE, bold=True) for c in courses), default=0.0) + 16.0
    left = min(left, MARGIN + 0.4 * _ROOM)
    for course in courses:
        _course(page, course, left, unfinished=tally.unfinished)
    if courses:
        _weeks(page, tally.weeks, left)
    for group in tally.groups:
        _group(page, group)
    page.finish(tally.note)
    return page


def _pitch(weeks: int, left: float) -> float:
    return min(_WIDEST_PITCH, (WIDE - MARGIN - left) / weeks)


def _course(page: Page, course: Course, left: float, *, unfinished: bool) -> None:
    """Draw the columns of one kind; the week that is not over is hatched."""
    foot = page.y + leading(SIZE) + _COLUMN
    pitch, highest = _pitch(len(course.times), left), max(course.times) or 1
    ink = _INKS[course.fill % len(_INKS)]
    for line_number, line in enumerate(
        wrapped(course.label, left - MARGIN - 12.0, SIZE, bold=True)
    ):
        page.text(MARGIN, foot - 20.0 + line_number * leading(SIZE), line, bold=True)
    heights = [times / highest * _COLUMN for times in course.times]
    for number, tall in enumerate(heights):
        x = left + (number + 0.1) * pitch
        last = number == len(heights) - 1
        page.draw(
            *_column(Rect(x, foot - tall, x + 0.8 * pitch, foot), ink, open_=last and unfinished)
        )
    page.draw(stroke((left, foot), (left + pitch * len(heights), foot), Ink.WALL, 2.4))
    every = max(width(str(t), SIZE) for t in course.times) + 4.0 < pitch
    peak = course.times.index(max(course.times))
    for number in reversed(range(len(heights))):
        if every or number in (peak, len(heights) - 1):
            _figure(page, course.times[number], left, pitch, number, heights, foot)
    page.y = foot + 16.0


def _figure(
    page: Page,
    times: int,
    left: float,
    pitch: float,
    number: int,
    heights: list[float],
    foot: float,
) -> None:
    """Write a count over its column, clear of the neighbours that it is wider than."""
    words = str(times)
    half = width(words, SIZE) / 2.0
    middle = min(max(left + (number + 0.5) * pitch, left + half), WIDE - MARGIN - half)
    first = max(0, int((middle - half - left) / pitch))
    last = min(len(heights) - 1, int((middle + half - left) / pitch))
    top = foot - max(heights[first : last + 1])
    page.text_where_free(middle, top - 7.0, words, anchor="middle")


def _column(box: Rect, ink: Ink, *, open_: bool) -> list[Shape]:
    if box.y1 - box.y0 < 0.5:
        return []
    fill = Ink.PAPER if open_ else ink
    drawn = rect(
        box.x0, box.y0, box.x1 - box.x0, box.y1 - box.y0, fill=fill, stroke=ink, stroke_width=2.0
    )
    return [drawn, slanted(box, ink)] if open_ else [drawn]


def _weeks(page: Page, weeks: tuple[str, ...], left: float) -> None:
    """Write the first day of as many weeks as there is room for, the last one always."""
    pitch = _pitch(len(weeks), left)
    for number in reversed(range(len(weeks))):
        half = width(weeks[number], SIZE) / 2.0
        middle = min(max(left + (number + 0.5) * pitch, left + half), WIDE - MARGIN - half)
        page.text_where_free(middle, page.y + 16.0, weeks[number], anchor="middle")
    page.y += leading(SIZE) + 20.0


def _group(page: Page, group: TallyGroup) -> None:
    heading = page.text(MARGIN, page.y + 24.0, group.heading, size=BIG, bold=True)
    if group.shown and not page.text_where_free(
        WIDE - MARGIN, page.y + 24.0, group.shown, ink=Ink.SOFT, anchor="end"
    ):
        page.y += leading(BIG)
        page.text(MARGIN, page.y + 22.0, group.shown, ink=Ink.SOFT)
    page.y = max(page.y, heading.y0) + leading(BIG) + 4.0
    if group.explained:
        page.paragraph(group.explained, ink=Ink.SOFT)
    page.y += 6.0
    parts = [wrapped(row.label, _MOST_LABEL, SIZE)[:_MOST_LABEL_LINES] for row in group.rows]
    wide = max((width(line, SIZE) for lines in parts for line in lines), default=0.0)
    left = MARGIN + wide + 14.0
    words = max((width(row.text, SIZE, bold=True) for row in group.rows), default=0.0)
    most = max((max(row.times, row.beside or 0) for row in group.rows), default=0) or 1
    per_time = max(WIDE - MARGIN - left - words - 24.0, 20.0) / most
    top = page.y
    for row, lines in zip(group.rows, parts, strict=True):
        _row(page, row, lines, left, per_time, _INKS[group.fill % len(_INKS)])
    page.draw(stroke((left, top), (left, page.y), Ink.WALL, 2.4))
    page.y += 18.0


def _row(
    page: Page, row: TallyRow, lines: list[str], left: float, per_time: float, ink: Ink
) -> None:
    """Draw a bar, its name at the left of it and its figure at its end."""
    tall = max(len(lines) * leading(SIZE), _BAR) + 8.0
    middle = page.y + tall / 2.0
    first = middle - len(lines) * leading(SIZE) / 2.0
    page.lines(left - 12.0, first + SIZE * 0.98, lines, anchor="end")
    if row.beside:
        page.draw(
            rect(
                left, middle - _BAR / 2.0, row.beside * per_time, _BAR, stroke=ink,
                stroke_width=2.4, stroke_dasharray="5 4",
            )
        )  # fmt: skip
    bar = Rect(left, middle - _BAR / 2.0, left + row.times * per_time, middle + _BAR / 2.0)
    if row.times:
        page.draw(rect(bar.x0, bar.y0, bar.x1 - bar.x0, _BAR, fill=ink))
    end = left + max(row.times, row.beside or 0) * per_time
    page.text(end + 10.0, middle + 8.0, row.text, bold=True)
    page.y += tall
