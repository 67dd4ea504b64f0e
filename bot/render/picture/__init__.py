"""Drawing → PNG: about 1200 pixels wide, small enough to send, the same bytes every time.

Matplotlib's Figure and its Agg canvas, never pyplot: nothing global is kept but the style,
and no window can open. Imported where a picture is wanted and nowhere else: it is slow to load.
"""

from io import BytesIO
from typing import TYPE_CHECKING

from bot.drawing import Card, Chart, Drawing, Sheet, Side, Tally
from bot.render.picture.chart import draw_chart
from bot.render.picture.sheet import draw_sheet
from bot.render.picture.side import draw_side
from bot.render.picture.table import draw_card
from bot.render.picture.tally import draw_tally

if TYPE_CHECKING:
    from matplotlib.figure import Figure

__all__ = ["MOST_BYTES", "draw", "figure_of"]

MOST_BYTES = 200_000
_COLOURS = 256


def draw(drawing: Drawing) -> bytes:
    """Return a drawing as PNG."""
    from PIL import Image

    figure, raw = figure_of(drawing), BytesIO()
    figure.savefig(raw, format="raw")
    size = figure.canvas.get_width_height()
    drawn = Image.frombytes("RGBA", size, raw.getvalue()).convert("RGB")
    # Line art needs few colours; a palette makes the file a third of the size.
    few = drawn.quantize(_COLOURS, Image.Quantize.FASTOCTREE, dither=Image.Dither.NONE)
    written = BytesIO()
    few.save(written, "png")
    return written.getvalue()


def figure_of(drawing: Drawing) -> "Figure":
    """Return a drawing as a figure."""
    match drawing:
        case Chart():
            return draw_chart(drawing)
        case Side():
            return draw_side(drawing)
        case Sheet():
            return draw_sheet(drawing)
        case Card():
            return draw_card(drawing)
        case Tally():
            return draw_tally(drawing)
