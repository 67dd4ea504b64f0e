"""Text brought to one spelling: one kind of space, hyphen, quote and digit.

Compatibility forms are folded a character at a time, never over the whole text: the whole-text
fold turns 1½ into 11/2 and ″ into two primes. Each character keeps the place it came from, so
that a fact heard in a sentence can show the asker's own words.
"""

import unicodedata
from dataclasses import dataclass
from functools import lru_cache

__all__ = ["Normal", "encodable", "normal", "normalise"]

_SPELLINGS = {
    **dict.fromkeys("‐‑‒–—―−﹣－〜～", "-"),
    **dict.fromkeys("″”“„‟〃＂", '"'),
    **dict.fromkeys("′’‘‚‛`´＇", "'"),
    **dict.fromkeys("º˚∘", "°"),
    **dict.fromkeys("⁄∕", "/"),
    **dict.fromkeys("×✕✖⨯", "x"),
    **dict.fromkeys("≈∼", "~"),
    # Pasted from web pages, invisible, and without a meaning here.
    **dict.fromkeys("\u200b\u2060\ufeff\u00ad", ""),
    "…": "...",
}


@dataclass(frozen=True, slots=True)
class Normal:
    """A normalised text; ``origins[i]`` is the place of its character ``i`` in the original.

    ``ends[i]`` is where what that character came from ends, if it stands for more than one.
    ``metric``: whoever writes in its language measures in cm and °C.
    """

    text: str
    origins: tuple[int, ...] | None
    original: str
    ends: tuple[int, ...] | None = None
    metric: bool = False

    def cut(self, most: int) -> "Normal":
        """Return the text cut to so many normalised characters."""
        origins = None if self.origins is None else self.origins[: most + 1]
        ends = None if self.ends is None else self.ends[:most]
        return Normal(self.text[:most], origins, self.original, ends, self.metric)

    def span(self, start: int, end: int) -> tuple[int, int]:
        """Return the part of the original that normalised characters start to end came from."""
        if self.origins is None:
            return start, end
        if start >= end:
            return self.origins[start], self.origins[start]
        last = self.origins[end - 1] + 1 if self.ends is None else self.ends[end - 1]
        return self.origins[start], last


def encodable(text: str) -> str:
    """Return ``text`` with U+FFFD for each half of a surrogate pair: it is no character.

    >>> encodable("14\\ud800 in") == "14\\ufffd in"
    True
    """
    if text.isascii():
        return text
    return text.encode("utf-16", "surrogatepass").decode("utf-16", "replace")


def normalise(text: str) -> str:
    """Return ``text`` in the one spelling.

    >>> normalise("１４½\u00a0in")
    '14 1/2 in'
    """
    return text if text.isascii() else "".join(map(_folded, text))


def normal(text: str) -> Normal:
    """Return ``text`` in the one spelling with the places its characters came from."""
    if text.isascii():
        return Normal(text, None, text)
    pieces = [_folded(character) for character in text]
    origins = [place for place, piece in enumerate(pieces) for _ in piece]
    return Normal("".join(pieces), (*origins, len(text)), text)


@lru_cache(maxsize=4096)
def _folded(character: str) -> str:
    if character in _SPELLINGS:
        return _SPELLINGS[character]
    if character.isspace():
        return " " if character not in "\r\n" else character
    category = unicodedata.category(character)
    if category == "Cs":
        return "\ufffd"  # Half of a pair is no character, and can not be encoded.
    if category == "Nd":
        return str(unicodedata.decimal(character))
    if category == "No":
        # A vulgar fraction is a number of its own; a superscript is a power and stays foreign.
        folded = unicodedata.normalize("NFKC", character)
        return f" {folded.replace('⁄', '/')}" if "⁄" in folded else character
    return unicodedata.normalize("NFKC", character)
