"""Signs, drawn and never letters: verdicts, numbers, the mark of the sheet."""

from bot.render.picture.inks import Ink, Sign
from bot.render.picture.svg import Shape, circle, group, path, text

__all__ = ["number_shapes", "sign_shapes", "sun_over_hill"]


def sign_shapes(sign: Sign, x: float, y: float, r: float) -> Shape:
    """Return a verdict's sign round a middle, ``r`` from there to its edge [units]."""
    return group(_SIGNS[sign], x, y, r / 20.0)


_SIGNS: dict[Sign, tuple[Shape, ...]] = {
    Sign.FINE: (
        circle(0.0, 0.0, 19.0, fill=Ink.COOL),
        path(
            "M-9 1l6 7 12-14",
            stroke=Ink.ON_SIGN,
            stroke_width=5.0,
            stroke_linecap="round",
            stroke_linejoin="round",
        ),
    ),
    Sign.CHANGE: (
        path(
            "M-3.6-17.5a4.2 4.2 0 0 1 7.2 0l15.4 29.3a4.2 4.2 0 0 1-3.6 6.2h-30.8"
            "a4.2 4.2 0 0 1-3.6-6.2z",
            fill=Ink.HEAT,
        ),
        path("M0-6.5v10", stroke=Ink.ON_SIGN, stroke_width=5.0, stroke_linecap="round"),
        circle(0.0, 11.3, 3.0, fill=Ink.ON_SIGN),
    ),
    Sign.CANNOT_TELL: (
        circle(
            0.0, 0.0, 17.5, fill=Ink.CARD, stroke=Ink.SOFT, stroke_width=3.2,
            stroke_dasharray="6.2 4.8",
        ),
        path(
            "M-5.5-5.2c0-8 11.5-7.6 11.5-.6 0 4.6-6 4.8-6 9.2",
            stroke=Ink.SOFT,
            stroke_width=4.2,
            stroke_linecap="round",
        ),
        circle(0.0, 10.3, 2.8, fill=Ink.SOFT),
    ),
}  # fmt: skip


def number_shapes(number: int, x: float, y: float, r: float) -> list[Shape]:
    """Return a number in a disc; its digits are part of the sign."""
    return [
        circle(x, y, r, fill=Ink.INK, stroke=Ink.PAPER, stroke_width=2.5),
        text(
            x, y + 0.5 * r, str(number), font_size=1.4 * r, font_weight="700",
            text_anchor="middle", fill=Ink.PAPER,
        ),
    ]  # fmt: skip


def sun_over_hill(x: float, y: float) -> Shape:
    """Return the mark of every sheet, 44 units wide."""
    return group(
        (
            circle(32.0, 22.0, 12.0, fill=Ink.SUN),
            path("M6 52c3-13 13-19 27-19 13 0 22 7 25 19z", fill=Ink.HILL),
        ),
        x,
        y,
        0.6875,
    )
