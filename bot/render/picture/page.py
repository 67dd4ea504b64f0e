"""The sheet of a picture: heading, body, note; every word, sign and line on it is registered.

``finish`` proves that no word meets a word, a sign or a foreign line, and that all lie on the
sheet; a picture that fails is not sent.
"""

from collections.abc import Sequence

from bot.render.picture.geometry import Rect, enters
from bot.render.picture.inks import Ink, Sign, Theme
from bot.render.picture.lettering import SIZE, clean, leading, sayable, width, wrapped
from bot.render.picture.placing import CLEAR, Label, placed
from bot.render.picture.signs import number_shapes, sign_shapes, sun_over_hill
from bot.render.picture.svg import Point, Shape, arrow_head, path, polyline, svg, text

__all__ = ["MARGIN", "WIDE", "OverlapError", "Page"]

WIDE, MARGIN = 720.0, 32.0
HEAD, BIG = 30.0, 24.0
_SUN = 44.0
# What a sign before the title takes of its line.
_SIGN = 52.0
_TALLEST = 2000.0
_AROUND = ((1, -1), (-1, -1), (1, 1), (-1, 1), (0, -1), (0, 1), (1, 0), (-1, 0))


class OverlapError(AssertionError):
    """Words of a picture meet something: it must not be shown."""


class Page:
    """A picture being drawn, from top to bottom; ``y`` is how far it has come [units]."""

    def __init__(
        self,
        title: str,
        subtitle: str,
        numbers_taken: int = 0,
        *,
        over: str = "",
        sign: Sign | None = None,
    ) -> None:
        self.under: list[Shape] = []
        self._over: list[Shape] = []
        self._words: list[tuple[str, Rect]] = []
        self._things: list[Rect] = []
        self._lines: list[tuple[Point, Point]] = []
        self._numbered: list[str] = []
        self._first_number = numbers_taken + 1
        self._title = clean(title)
        self.y = MARGIN
        self._over.append(sun_over_hill(WIDE - MARGIN - _SUN, MARGIN - 6.0))
        self.thing(Rect(WIDE - MARGIN - _SUN, MARGIN, WIDE - MARGIN, MARGIN + 34.0))
        room = WIDE - 2 * MARGIN - _SUN - 14.0
        if over:
            self.paragraph(over, room=room, ink=Ink.SOFT)
            self.y += 4.0
        beside = 0.0 if sign is None else _SIGN
        if sign is not None:
            self.sign(MARGIN + 19.0, self.y + 19.0, sign, 19.0)
        self.paragraph(title, x=MARGIN + beside, room=room - beside, size=HEAD, bold=True)
        if subtitle:
            self.y += 2.0
            self.paragraph(subtitle, room=room, ink=Ink.SOFT)
        self.y = max(self.y + 12.0, MARGIN + 52.0)

    def paragraph(
        self,
        words: str,
        *,
        x: float = MARGIN,
        room: float = WIDE - 2 * MARGIN,
        size: float = SIZE,
        ink: Ink = Ink.INK,
        bold: bool = False,
    ) -> None:
        """Set words in lines from ``y`` on."""
        for line in wrapped(words, room, size, bold=bold):
            self.text(x, self.y + size * 0.95, line, size=size, ink=ink, bold=bold)
            self.y += leading(size)

    def text(
        self,
        x: float,
        foot: float,
        words: str,
        *,
        size: float = SIZE,
        ink: Ink = Ink.INK,
        bold: bool = False,
        anchor: str = "start",
        halo: Ink | None = None,
    ) -> Rect:
        """Set a line of words by its foot, and return where it stands."""
        words = clean(words)
        box = _box(x, foot, words, size, bold=bold, anchor=anchor)
        if not words.strip():
            return box
        self._words.append((words, box))
        told: dict[str, float | Ink | str] = {"font_size": size, "fill": ink}
        if anchor != "start":
            told["text_anchor"] = anchor
        if bold:
            told["font_weight"] = "700"
        if halo is not None:
            told |= {
                "stroke": halo,
                "stroke_width": 6.0,
                "stroke_linejoin": "round",
                "paint_order": "stroke",
            }
        self._over.append(text(x, foot, words, **told))
        return box

    def lines(
        self,
        x: float,
        foot: float,
        lines: Sequence[str],
        *,
        size: float = SIZE,
        ink: Ink = Ink.INK,
        bold: bool = False,
        anchor: str = "start",
        halo: Ink | None = None,
    ) -> None:
        """Set lines of words below each other by the foot of the first."""
        for number, line in enumerate(lines):
            at = foot + number * leading(size)
            self.text(x, at, line, size=size, ink=ink, bold=bold, anchor=anchor, halo=halo)

    def text_where_free(
        self,
        x: float,
        foot: float,
        words: str,
        *,
        size: float = SIZE,
        ink: Ink = Ink.INK,
        bold: bool = False,
        anchor: str = "start",
        halo: Ink | None = None,
        clear: float = CLEAR,
    ) -> bool:
        """Set a line of words only where nothing stands, and say whether it was set."""
        box = _box(x, foot, clean(words), size, bold=bold, anchor=anchor)
        if not self.is_free(box, clear):
            return False
        self.text(x, foot, words, size=size, ink=ink, bold=bold, anchor=anchor, halo=halo)
        return True

    def is_free(self, box: Rect, clear: float = CLEAR) -> bool:
        """Say whether words could stand there."""
        grown = box.grown(clear)
        return (
            box.lies_in(Rect(8.0, 8.0, WIDE - 8.0, _TALLEST))
            and not any(grown.meets(other) for _, other in self._words)
            and not any(grown.meets(other) for other in self._things)
            and not any(enters(*line, grown) for line in self._lines)
        )

    def thing(self, box: Rect) -> None:
        """Keep words off a thing that is drawn."""
        self._things.append(box)

    def line(self, start: Point, end: Point) -> None:
        """Keep words off a line that is drawn."""
        self._lines.append((start, end))

    def draw(self, *shapes: Shape) -> None:
        """Draw shapes below all words."""
        self.under.extend(shapes)

    def draw_over(self, *shapes: Shape) -> None:
        """Draw shapes above everything drawn below."""
        self._over.extend(shapes)

    def sign(self, x: float, y: float, sign: Sign, r: float = 17.0) -> None:
        """Draw a verdict's sign round a middle."""
        self._over.append(sign_shapes(sign, x, y, r))
        self.thing(Rect(x - r, y - r, x + r, y + r))

    def number(self, x: float, y: float, number: int, r: float = 16.0) -> None:
        """Draw a number in a disc round a middle."""
        self._over.extend(number_shapes(number, x, y, r))
        self.thing(Rect(x - r, y - r, x + r, y + r))

    def arrow(self, start: Point, end: Point, ink: Ink = Ink.INK, *, ground: Ink = Ink.AIR) -> None:
        """Draw a dimension: a line with a head at both ends."""
        (x0, y0), (x1, y1) = start, end
        long = ((x1 - x0) ** 2 + (y1 - y0) ** 2) ** 0.5 or 1.0
        ux, uy = (x1 - x0) / long, (y1 - y0) / long
        head = min(13.0, long / 3.0)
        inner = [
            (x0 + ux * head * 0.7, y0 + uy * head * 0.7),
            (x1 - ux * head * 0.7, y1 - uy * head * 0.7),
        ]
        self.draw(
            polyline(inner, stroke=ground, stroke_width=8.0, stroke_opacity=0.85),
            polyline(inner, stroke=ink, stroke_width=3.2),
            arrow_head((x1, y1), (ux, uy), head, ink),
            arrow_head((x0, y0), (-ux, -uy), head, ink),
        )
        self.line(start, end)

    def shift(self, start: Point, end: Point) -> None:
        """Draw which way something is moved: a heavy arrow with one head."""
        (x0, y0), (x1, y1) = start, end
        long = ((x1 - x0) ** 2 + (y1 - y0) ** 2) ** 0.5 or 1.0
        way = (x1 - x0) / long, (y1 - y0) / long
        head = min(24.0, 0.7 * long)
        foot = x1 - 0.7 * head * way[0], y1 - 0.7 * head * way[1]
        self.draw_over(
            polyline([start, foot], stroke=Ink.HEAT, stroke_width=7.0),
            arrow_head(end, way, head, Ink.HEAT),
        )
        self.thing(Rect(min(x0, x1) - 12.0, min(y0, y1), max(x0, x1) + 12.0, max(y0, y1)))

    def place(self, labels: Sequence[Label], bounds: Rect, halo: Ink, ink: Ink = Ink.INK) -> None:
        """Set labels where there is room; what finds none gets a number, told below the picture."""
        stand = [box for _, box in self._words] + self._things
        without = []
        for label, found in zip(labels, placed(labels, bounds, stand, self._lines), strict=True):
            if found is None or self.strikes(found.leader):
                without.append(label)
                continue
            self.lines(
                found.box.x0,
                found.box.y0 + label.size * 0.95,
                label.lines,
                size=label.size,
                ink=ink,
                bold=label.bold,
                halo=halo,
            )
            if found.leader:
                self.draw(polyline(found.leader, stroke=Ink.SOFT, stroke_width=2.2))
                self.line(*found.leader)
        # Numbers take what all the words have left.
        for label in without:
            self._instead(label, bounds)

    def has_place(self, label: Label, bounds: Rect) -> bool:
        """Say whether a label finds room."""
        stand = [box for _, box in self._words] + self._things
        [found] = placed([label], bounds, stand, self._lines)
        return found is not None and not self.strikes(found.leader)

    def strikes(self, leader: tuple[Point, Point] | None) -> bool:
        """Say whether a line would go through words, as where its end lies under some."""
        return leader is not None and any(enters(*leader, box) for _, box in self._words)

    def _instead(self, label: Label, bounds: Rect) -> None:
        """Put a number where words have no room, joined to their point; the words stand below."""
        self._numbered.append(" ".join(label.lines))
        half = 17.0
        for away in (22.0, 32.0, 48.0, 68.0, 98.0, 140.0):
            for along, down in _AROUND:
                x, y = label.at[0] + along * away, label.at[1] + down * away
                box = Rect(x - half, y - half, x + half, y + half)
                if box.lies_in(bounds) and self.is_free(box, 2.0):
                    joined = (x, y), label.at
                    if not any(enters(*joined, other) for _, other in self._words):
                        self.draw(polyline(joined, stroke=Ink.INK, stroke_width=2.2))
                    self.number(x, y, self._first_number + len(self._numbered) - 1)
                    return

    def rule(self, ink: Ink = Ink.LINE) -> None:
        """Draw a level line across the sheet."""
        self.draw(
            path(f"M{MARGIN:.1f} {self.y:.1f}H{WIDE - MARGIN:.1f}", stroke=ink, stroke_width=1.5)
        )

    def finish(self, note: str = "") -> None:
        """Set what was numbered and the note, and prove the picture."""
        for number, words in enumerate(self._numbered, self._first_number):
            self.number(MARGIN + 16.0, self.y + 15.0, number)
            self.paragraph(words, x=MARGIN + 44.0, room=WIDE - 2 * MARGIN - 44.0)
            self.y += 6.0
        if note:
            self.y += 6.0
            self.paragraph(note, ink=Ink.SOFT)
        self.y += MARGIN - 8.0
        self._prove()

    def svg(self, theme: Theme, ident: str = "picture", told: str = "") -> str:
        """Return the picture as SVG; ``told`` are its words for who cannot see it."""
        shapes = [*self.under, *self._over]
        tall, title = float(round(self.y)), sayable(told) or self._title
        return svg(shapes, WIDE, tall, theme=theme, title=title, ident=ident)

    @property
    def words(self) -> list[tuple[str, Rect]]:
        """Return the words that are set, each with where it stands."""
        return list(self._words)

    def _prove(self) -> None:
        sheet = Rect(8.0, 8.0, WIDE - 8.0, self.y - 6.0)
        for number, (words, box) in enumerate(self._words):
            if not box.lies_in(sheet):
                raise OverlapError(f"{words!r} leaves the sheet: {box}")
            for others, other in self._words[number + 1 :]:
                if box.meets(other):
                    raise OverlapError(f"{words!r} over {others!r}: {box} {other}")
            for other in self._things:
                if box.meets(other):
                    raise OverlapError(f"{words!r} over a thing: {box} {other}")
            for line in self._lines:
                if enters(*line, box.grown(-1.0)):
                    raise OverlapError(f"{words!r} struck by a line: {box} {line}")


def _box(x: float, foot: float, words: str, size: float, *, bold: bool, anchor: str) -> Rect:
    wide = width(words, size, bold=bold)
    left = x - {"start": 0.0, "middle": wide / 2.0, "end": wide}[anchor]
    return Rect(left, foot - 0.76 * size, left + wide, foot + 0.24 * size)
