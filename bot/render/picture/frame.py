"""The sheet of paper that every picture is drawn on: heading, body, note, the noon mark.

Its own opaque background, so that it reads the same on a dark and on a light one.
"""

from functools import cache
from typing import TYPE_CHECKING, Any

from bot.render.picture import inks
from bot.render.picture.lettering import DPI, WIDTH_IN, line_height_in, wrapped

if TYPE_CHECKING:
    from matplotlib.axes import Axes

__all__ = ["MARGIN_IN", "Frame", "bare"]

MARGIN_IN = 0.22
_TITLE, _SUBTITLE, _NOTE = 14.0, 11.0, 10.0
_GAP_IN = 0.08
_MARK_IN = 0.17


@cache
def _prepare() -> None:
    """Put aside whatever style this computer has set: a picture looks the same everywhere."""
    import matplotlib as mpl

    mpl.rcdefaults()
    mpl.rcParams.update(
        {
            "font.family": ["DejaVu Sans"],
            "text.parse_math": False,
            "text.color": inks.INK,
            "axes.edgecolor": inks.MUTED,
            "axes.labelcolor": inks.INK,
            "axes.unicode_minus": True,
            "xtick.color": inks.MUTED,
            "ytick.color": inks.MUTED,
            "xtick.labelcolor": inks.INK,
            "ytick.labelcolor": inks.INK,
            "hatch.linewidth": 0.8,
        }
    )


class Frame:
    """A sheet with its heading and note set, and a body of the height asked for."""

    def __init__(self, title: str, subtitle: str, note: str, body_in: float) -> None:
        _prepare()
        from matplotlib.backends.backend_agg import FigureCanvasAgg
        from matplotlib.figure import Figure

        room = WIDTH_IN - 2 * MARGIN_IN
        heads = wrapped(title, room - 3 * _MARK_IN, _TITLE, "bold")
        subs = wrapped(subtitle, room - 3 * _MARK_IN, _SUBTITLE) if subtitle else []
        notes = wrapped(note, room, _NOTE) if note else []
        above = sum(line_height_in(_TITLE) for _ in heads)
        above += sum(line_height_in(_SUBTITLE) for _ in subs)
        below = sum(line_height_in(_NOTE) for _ in notes)
        self.height_in = 2 * MARGIN_IN + above + body_in + below
        self.height_in += _GAP_IN * (2 if notes else 1)
        self.figure: Figure = Figure(
            figsize=(WIDTH_IN, self.height_in), dpi=DPI, facecolor=inks.PAPER
        )
        FigureCanvasAgg(self.figure)
        self.body_top_in = self.height_in - MARGIN_IN - above - _GAP_IN
        self.body_bottom_in = self.body_top_in - body_in
        self._heading(heads, subs)
        top = self.body_bottom_in - _GAP_IN
        for number, line in enumerate(notes):
            self.text(MARGIN_IN, top - number * line_height_in(_NOTE), line, _NOTE, inks.MUTED)
        self._mark()

    @property
    def body_in(self) -> float:
        """The height [in] of the body."""
        return self.body_top_in - self.body_bottom_in

    def text(
        self, x_in: float, top_in: float, text: str, size: float, colour: str, **how: Any
    ) -> None:
        """Set a line of text by its top left corner [in from the bottom left of the sheet]."""
        place = {"ha": "left", "va": "top"} | how
        self.figure.text(
            x_in / WIDTH_IN, top_in / self.height_in, text, fontsize=size, color=colour, **place
        )

    def axes(self, left_in: float, bottom_in: float, width_in: float, height_in: float) -> "Axes":
        """Return axes at a place of the sheet [in]."""
        return self.figure.add_axes(
            (
                left_in / WIDTH_IN,
                bottom_in / self.height_in,
                width_in / WIDTH_IN,
                height_in / self.height_in,
            ),
            facecolor="none",
        )

    def _heading(self, heads: list[str], subs: list[str]) -> None:
        top = self.height_in - MARGIN_IN
        for line in heads:
            self.text(MARGIN_IN, top, line, _TITLE, inks.INK, weight="bold")
            top -= line_height_in(_TITLE)
        for line in subs:
            self.text(MARGIN_IN, top, line, _SUBTITLE, inks.MUTED)
            top -= line_height_in(_SUBTITLE)

    def _mark(self) -> None:
        """Draw the sun over a stone at the top right, and a hair line round the sheet."""
        from matplotlib.patches import Circle, Rectangle

        side = 2 * _MARK_IN
        axes = self.axes(
            WIDTH_IN - MARGIN_IN - side, self.height_in - MARGIN_IN - side + 0.04, side, side
        )
        bare(axes)
        axes.set(xlim=(-1, 1), ylim=(-1, 1))
        axes.add_patch(Circle((0, 0.1), 0.62, facecolor=inks.AMBER, edgecolor="none"))
        axes.add_patch(Rectangle((-0.95, -0.62), 1.9, 0.42, facecolor=inks.INK, edgecolor="none"))
        edge = Rectangle(
            (0, 0),
            1,
            1,
            transform=self.figure.transFigure,
            fill=False,
            edgecolor=inks.STONE,
            linewidth=1.2,
        )
        self.figure.add_artist(edge)


def bare(axes: "Axes") -> None:
    """Take spines and ticks off axes that are only a place to draw on."""
    axes.set_axis_off()
