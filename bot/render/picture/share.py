"""The card that a link to a page is shown with: the page's title beside its picture."""

from io import BytesIO

from bot.drawing import Drawing
from bot.render.picture import Theme, draw, png_of
from bot.render.picture.geometry import Rect
from bot.render.picture.inks import Ink
from bot.render.picture.lettering import clean, leading, width, wrapped
from bot.render.picture.signs import sun_over_hill
from bot.render.picture.svg import Shape, rect, svg, text

__all__ = ["share_card"]

_PIXELS = (1200, 630)
# The sheet of the card, and where its words and its picture are [units].
_WIDE, _TALL = 720.0, 378.0
_WORDS, _PICTURE = Rect(32.0, 32.0, 372.0, 346.0), Rect(396.0, 24.0, 700.0, 354.0)
_SIZES = (40.0, 34.0, 28.0)
_UNIT = _PIXELS[0] / _WIDE
_FADES = 80


def share_card(title: str, drawing: Drawing) -> bytes:
    """Return the card as PNG, 1200 by 630 pixels; of a tall picture its upper part."""
    from PIL import Image

    card = Image.open(BytesIO(png_of(_words(title)))).convert("RGB").resize(_PIXELS)
    drawn = Image.open(BytesIO(draw(drawing, Theme.LIGHT))).convert("RGB")
    wide, tall = (
        round(_UNIT * one) for one in (_PICTURE.x1 - _PICTURE.x0, _PICTURE.y1 - _PICTURE.y0)
    )
    shown = drawn.resize((wide, drawn.height * wide // drawn.width), Image.Resampling.LANCZOS)
    cut = shown.height > tall
    shown = shown.crop((0, 0, wide, min(tall, shown.height)))
    # What goes on below fades out.
    fading = Image.linear_gradient("L").resize((wide, _FADES))
    fading = fading.transpose(Image.Transpose.FLIP_TOP_BOTTOM)
    mask = Image.new("L", shown.size, 255)
    if cut:
        mask.paste(fading, (0, tall - _FADES))
    down = round(_UNIT * _PICTURE.y0) + (tall - shown.height) // 2
    card.paste(shown, (round(_UNIT * _PICTURE.x0), down), mask)
    written = BytesIO()
    card.quantize(128, Image.Quantize.FASTOCTREE, dither=Image.Dither.NONE).save(written, "png")
    return written.getvalue()


def _words(title: str) -> str:
    room = _WORDS.x1 - _WORDS.x0
    words, lines, size = clean(title), [""], _SIZES[-1]
    for size in _SIZES:
        lines = wrapped(words, room, size, bold=True)
        fits = all(width(line, size, bold=True) <= room for line in lines)
        if fits and len(lines) * leading(size) <= 0.6 * (_WORDS.y1 - _WORDS.y0):
            break
    shapes: list[Shape] = [
        rect(0.0, 0.0, _WIDE, _TALL, fill=Ink.PAPER),
        rect(0.0, _TALL - 10.0, _WIDE, 10.0, fill=Ink.SUN),
        rect(
            _PICTURE.x0 - 4.0,
            _PICTURE.y0 - 4.0,
            _PICTURE.x1 - _PICTURE.x0 + 8.0,
            _PICTURE.y1 - _PICTURE.y0 + 8.0,
            fill=Ink.PAPER,
            stroke=Ink.LINE,
            stroke_width=2.0,
        ),
        sun_over_hill(_WORDS.x0, _WORDS.y0),
        text(_WORDS.x0 + 56.0, _WORDS.y0 + 30.0, "Noonstone", font_size=28.0, fill=Ink.SOFT),
    ]
    foot = _WORDS.y0 + 70.0 + size
    for number, line in enumerate(lines):
        at = foot + number * leading(size)
        shapes.append(text(_WORDS.x0, at, line, font_size=size, fill=Ink.INK, font_weight="700"))
    return svg(shapes, _WIDE, _TALL, theme=Theme.LIGHT, title=words, ident="card")
