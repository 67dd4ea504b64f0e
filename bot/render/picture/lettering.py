"""Setting words: how wide they are by the font's own figures, and where lines break."""

import json
import re
import unicodedata
from functools import cache
from pathlib import Path

__all__ = ["FONTS", "SIZE", "clean", "font_files", "leading", "sayable", "width", "wrapped"]

SIZE = 22.0
"""The size of words [units]: at 360 px across, 11 px. No word of a picture is smaller."""

FONTS = ("NoonFigtree-Medium.ttf", "NoonFigtree-Bold.ttf")
_FOLDER = Path(__file__).parent / "letters"
_LEADING = 1.3
_MISSING = "?"
# Dashes, primes and blanks that the letters lack, each as the nearest that they have.
_NEAREST = str.maketrans(
    {"‐": "-", "‑": "-", "‒": "–", "′": "'", "″": '"', "≈": "~", "\u202f": "\u00a0", "\u2009": " "}
)
# A figure and its unit stay on one line, and so does what stands in parentheses with a figure.
_BETWEEN_WORDS = re.compile(r" (?!(?:%|in|cm|m|ft|W|h|min|°[CF])(?:\W|$))")
_PARENTHESIS = re.compile(r"\([^()]*\d[^()]*\)")
_KEPT = "\u00a0"


def font_files() -> list[str]:
    """Return the files of the letters; fails with FileNotFoundError where one is gone."""
    found = [_FOLDER / name for name in FONTS]
    for file in found:
        file.stat()
    return [str(file) for file in found]


@cache
def _advances() -> tuple[dict[str, float], dict[str, float]]:
    told = json.loads((_FOLDER / "advances.json").read_text("utf-8"))
    return told["medium"], told["bold"]


def clean(text: str) -> str:
    """Return words with what cannot be set replaced: control and direction marks, other scripts."""
    known, _ = _advances()
    plain = sayable(unicodedata.normalize("NFC", text)).translate(_NEAREST)
    return "".join(c if c in known else _MISSING for c in plain)


def sayable(text: str) -> str:
    """Return words without control, direction and other marks that nobody sees."""
    return "".join(c for c in text if unicodedata.category(c) not in ("Cc", "Cf", "Co", "Cs", "Mn"))


def width(text: str, size: float, *, bold: bool = False) -> float:
    """Return the width [units] of a line of words that are clean, kerning left out."""
    advances = _advances()[bold]
    return sum(advances[c] for c in text) * size


def leading(size: float) -> float:
    """Return how far apart [units] lines of a size are set."""
    return size * _LEADING


def wrapped(text: str, room: float, size: float, *, bold: bool = False) -> list[str]:
    """Return clean words in lines no wider than the room; a longer word is cut."""
    lines: list[str] = []
    for paragraph in text.splitlines():
        held = _PARENTHESIS.sub(lambda m: m[0].replace(" ", _KEPT), clean(paragraph))
        line = ""
        for word in filter(None, _BETWEEN_WORDS.split(held)):
            for part in _cut(word, room, size, bold=bold):
                longer = f"{line} {part}" if line else part
                if line and width(longer, size, bold=bold) > room:
                    lines.append(line)
                    line = part
                else:
                    line = longer
        lines.append(line)
    return [line.replace(_KEPT, " ") for line in lines]


def _cut(word: str, room: float, size: float, *, bold: bool) -> list[str]:
    """Return a word in parts that fit the room each: at its kept blanks, else anywhere."""
    if width(word, size, bold=bold) <= room:
        return [word]
    if _KEPT in word:
        return [part for part in word.split(_KEPT) if part]
    parts, part = [], ""
    for letter in word:
        if part and width(part + letter, size, bold=bold) > room:
            parts.append(part)
            part = ""
        part += letter
    return [*parts, part]
