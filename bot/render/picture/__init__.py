"""Drawing → picture: SVG is the source, a PNG is made of it, the same bytes every time.

1200 pixels wide, a tall sheet 960; letters at least 11 px where it is seen 360 px across, light or
dark.
"""

from functools import lru_cache
from io import BytesIO

from bot.drawing import Card, Chart, Drawing, Drop, Ladder, Sheet, Side, Tally, Timeline
from bot.render.picture.card import draw_card
from bot.render.picture.chart import draw_chart
from bot.render.picture.drop import draw_drop
from bot.render.picture.inks import Theme
from bot.render.picture.ladder import draw_ladder
from bot.render.picture.lettering import font_files
from bot.render.picture.page import Page
from bot.render.picture.sheet import draw_sheet
from bot.render.picture.side import draw_side
from bot.render.picture.tally import draw_tally
from bot.render.picture.timeline import draw_timeline

__all__ = ["MOST_BYTES", "Theme", "draw", "page_of", "png_of"]

MOST_BYTES = 130_000
_PIXELS = 1200
# A sheet higher than this [units] has fewer: its letters are as large on a phone.
_TALL, _FEWER_PIXELS = 1400.0, 960
_COLOURS = 256
# Colours and how hard a PNG is packed, the quickest first: a tall sheet takes fewer colours.
_PACKINGS = ((_COLOURS, 6), (48, 6), (48, 9))


def draw(drawing: Drawing, theme: Theme = Theme.LIGHT) -> bytes:
    """Return a drawing as PNG."""
    page = page_of(drawing)
    return png_of(page.svg(theme), _PIXELS if page.y <= _TALL else _FEWER_PIXELS)


def page_of(drawing: Drawing) -> Page:
    """Return a drawing laid out on its sheet; raises OverlapError where words would meet."""
    match drawing:
        case Chart():
            return draw_chart(drawing)
        case Drop():
            return draw_drop(drawing)
        case Side():
            return draw_side(drawing)
        case Sheet():
            return draw_sheet(drawing)
        case Card():
            return draw_card(drawing)
        case Tally():
            return draw_tally(drawing)
        case Ladder():
            return draw_ladder(drawing)
        case Timeline():
            return draw_timeline(drawing)


def png_of(svg: str, pixels: int = _PIXELS) -> bytes:
    """Return a picture of SVG as PNG, so many pixels wide."""
    import resvg_py
    from PIL import Image

    raw = resvg_py.svg_to_bytes(
        svg_string=svg, width=pixels, skip_system_fonts=True, font_files=_fonts()
    )
    # Line art needs few colours; a palette makes the file a third of the size.
    drawn = Image.open(BytesIO(bytes(raw))).convert("RGB")
    png = b""
    for colours, level in _PACKINGS:
        few = drawn.quantize(colours, Image.Quantize.FASTOCTREE, dither=Image.Dither.NONE)
        written = BytesIO()
        few.save(written, "png", compress_level=level)
        png = written.getvalue()
        if len(png) <= MOST_BYTES:
            break
    return png


@lru_cache(maxsize=1)
def _fonts() -> list[str]:
    return font_files()
