"""Inks by what they are for, each in three themes, and the sign of each tone.

Violet is UV and orange is heat, always and nowhere else: they are what keepers mix up. No ink
tells anything alone: zones have textures, verdicts have signs and words.
"""

from enum import Enum, StrEnum, auto

from bot.drawing import Tone

__all__ = ["TONE_GROUND", "TONE_SIGN", "Ink", "Sign", "Theme", "page_inks", "shown"]


class Theme(Enum):
    """Where a picture is seen."""

    LIGHT = 0
    DARK = 1
    PAGE = 2
    """In a page, which says itself whether it is light, dark or printed."""


class Ink(StrEnum):
    """What is drawn or written."""

    PAPER = auto()
    CARD = auto()
    AIR = auto()
    INK = auto()
    SOFT = auto()
    LINE = auto()
    UV = auto()
    UV_STRONG = auto()
    UV_RIGHT = auto()
    UV_WEAK = auto()
    SHADE = auto()
    SHADE_LINE = auto()
    HEAT = auto()
    HEAT_PALE = auto()
    SUN = auto()
    COOL = auto()
    COOL_PALE = auto()
    WALL = auto()
    BASE = auto()
    STONE = auto()
    STONE_LINE = auto()
    METAL = auto()
    METAL_LINE = auto()
    GLOW = auto()
    SKIN = auto()
    SKIN_PALE = auto()
    SKIN_DARK = auto()
    SKIN_LINE = auto()
    LEAF = auto()
    LEAF_PALE = auto()
    LEAF_DARK = auto()
    BARK = auto()
    BARK_DARK = auto()
    WHITE = auto()
    ON_SIGN = auto()
    HILL = auto()
    EDGE = auto()
    SCREEN = auto()
    SCREEN_INK = auto()
    UV_ON_TOOL = auto()
    LAMP_LIGHT = auto()


_INKS: dict[Ink, tuple[str, str]] = {
    Ink.PAPER: ("#FBF7EF", "#191A18"),
    Ink.CARD: ("#FFFFFF", "#232522"),
    Ink.AIR: ("#FFFDF7", "#20221F"),
    Ink.INK: ("#24272B", "#F0EBE0"),
    Ink.SOFT: ("#575248", "#BDB6A8"),
    Ink.LINE: ("#D9CFBD", "#474942"),
    Ink.UV: ("#5636A3", "#C4B3F9"),
    Ink.UV_STRONG: ("#BFB0E8", "#5F4D97"),
    Ink.UV_RIGHT: ("#D9CFF4", "#473B70"),
    Ink.UV_WEAK: ("#EEEAF9", "#2E2B40"),
    Ink.SHADE: ("#DCDFDC", "#2C3335"),
    Ink.SHADE_LINE: ("#5E676A", "#9AA6A8"),
    Ink.HEAT: ("#AE3F0C", "#F6A268"),
    Ink.HEAT_PALE: ("#F9D9A8", "#5F3E1E"),
    Ink.SUN: ("#E8A317", "#F2B84B"),
    Ink.COOL: ("#14627A", "#84CAE0"),
    Ink.COOL_PALE: ("#CBE4EB", "#24424D"),
    Ink.WALL: ("#6B6154", "#A99F8E"),
    Ink.BASE: ("#C9B99B", "#6A5F4C"),
    Ink.STONE: ("#C4B7A3", "#6E6557"),
    Ink.STONE_LINE: ("#5E5444", "#CFC4B2"),
    Ink.METAL: ("#DCE1E4", "#8E969A"),
    Ink.METAL_LINE: ("#4B5257", "#DDE2E4"),
    Ink.GLOW: ("#F5F0FF", "#F1EBFF"),
    Ink.SKIN: ("#C79A5B", "#C99D60"),
    Ink.SKIN_PALE: ("#E7CD9B", "#E3C48C"),
    Ink.SKIN_DARK: ("#8D6433", "#8F6737"),
    Ink.SKIN_LINE: ("#3D2A14", "#20160A"),
    Ink.LEAF: ("#6E8F4E", "#7D9C5C"),
    Ink.LEAF_PALE: ("#A9C183", "#A3BD7E"),
    Ink.LEAF_DARK: ("#45632F", "#4A6733"),
    Ink.BARK: ("#9A7B58", "#7E6648"),
    Ink.BARK_DARK: ("#6F563B", "#5A4731"),
    Ink.WHITE: ("#FFFFFF", "#E9E6DE"),
    Ink.ON_SIGN: ("#FFFFFF", "#14181A"),
    Ink.HILL: ("#5B6B63", "#7E9186"),
    # Tools are pale by day and by night, and what stands on them is dark.
    Ink.EDGE: ("#4B4437", "#2A2822"),
    Ink.SCREEN: ("#CBE4EB", "#CBE4EB"),
    Ink.SCREEN_INK: ("#14627A", "#14627A"),
    Ink.UV_ON_TOOL: ("#5636A3", "#5636A3"),
    Ink.LAMP_LIGHT: ("#F9D9A8", "#F9D9A8"),
}


def shown(ink: Ink, theme: Theme) -> str:
    """Return an ink as a colour, or in a page as the property that holds it."""
    if theme is Theme.PAGE:
        return f"var(--p-{ink.value.replace('_', '-')})"
    return _INKS[ink][theme.value]


def page_inks() -> str:
    """Return the inks as style properties of a page: by day, by night, and printed as by day."""

    def told(theme: Theme) -> str:
        return " ".join(f"--p-{ink.value.replace('_', '-')}: {shown(ink, theme)};" for ink in Ink)

    day, night = told(Theme.LIGHT), told(Theme.DARK)
    return (
        f":root {{ {day} }}\n@media screen and (prefers-color-scheme: dark) "
        f"{{ :root {{ {night} }} }}\n"
    )


class Sign(Enum):
    """A verdict as it is drawn: told by its shape as well as by its ink."""

    FINE = "a full circle with a tick"
    CHANGE = "a triangle with an exclamation mark"
    CANNOT_TELL = "a broken circle with a question mark"


TONE_SIGN: dict[Tone, Sign | None] = {
    Tone.PLAIN: None,
    Tone.GOOD: Sign.FINE,
    Tone.DOUBTFUL: Sign.CANNOT_TELL,
    Tone.BAD: Sign.CHANGE,
}

TONE_GROUND: dict[Tone, Ink] = {
    Tone.PLAIN: Ink.CARD,
    Tone.GOOD: Ink.COOL_PALE,
    Tone.DOUBTFUL: Ink.CARD,
    Tone.BAD: Ink.HEAT_PALE,
}
