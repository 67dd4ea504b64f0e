"""Drawing → picture: SVG is the source, a PNG is made of it, the same bytes every time.

1200 pixels wide, letters at least 11 px where it is seen 360 px across, light or dark.
"""

from functools import lru_cache
from io import BytesIO

from bot.drawing import Card, Chart, Drawing, Ladder, Sheet, Side, Tally
from bot.render.picture.card import draw_card
from bot.render.picture.chart import draw_chart
from bot.render.picture.inks import Theme
from bot.render.picture.ladder import draw_ladder
from bot.render.picture.lettering import font_files
from bot.render.picture.page import Page
from bot.render.picture.sheet import draw_sheet
from bot.render.picture.side import draw_side
from bot.render.picture.tally import draw_tally

__all__ = ["MOST_BYTES", "Theme", "draw", "page_of", "share_card"]

MOST_BYTES = 200_000
_PIXELS = 1200
_COLOURS = 256
_CARD = (1200, 630)


def draw(drawing: Drawing, theme: Theme = Theme.LIGHT) -> bytes:
    """Return a drawing as PNG."""
    return _png(page_of(drawing).svg(theme))


def share_card(drawing: Drawing) -> bytes:
    """Return a drawing as the PNG that a link to a page is shown with: 1200 by 630 pixels."""
    from PIL import Image

    drawn = Image.open(BytesIO(draw(drawing))).convert("RGB")
    ground, (wide, tall) = drawn.getpixel((0, 0)), _CARD
    share = min(wide / drawn.width, tall / drawn.height)
    size = round(drawn.width * share), round(drawn.height * share)
    card = Image.new("RGB", _CARD, ground)
    card.paste(
        drawn.resize(size, Image.Resampling.LANCZOS), ((wide - size[0]) // 2, (tall - size[1]) // 2)
    )
    made = BytesIO()
    card.quantize(_COLOURS).save(made, "PNG", optimize=True)
    return made.getvalue()


def page_of(drawing: Drawing) -> Page:
    """Return a drawing laid out on its sheet; raises OverlapError where words would meet."""
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
        case Ladder():
            return draw_ladder(drawing)


def _png(svg: str) -> bytes:
    import resvg_py
    from PIL import Image

    raw = resvg_py.svg_to_bytes(
        svg_string=svg, width=_PIXELS, skip_system_fonts=True, font_files=_fonts()
    )
    # Line art needs few colours; a palette makes the file a third of the size.
    drawn = Image.open(BytesIO(bytes(raw))).convert("RGB")
    few = drawn.quantize(_COLOURS, Image.Quantize.FASTOCTREE, dither=Image.Dither.NONE)
    written = BytesIO()
    few.save(written, "png")
    return written.getvalue()


@lru_cache(maxsize=1)
def _fonts() -> list[str]:
    return font_files()
