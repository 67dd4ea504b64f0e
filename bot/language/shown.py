"""What an asker typed, made harmless to show again."""

import unicodedata

__all__ = ["copies_well", "shown"]

_MOST = 40
# Looked at before anything is thrown away, so that a huge text costs nothing.
_LOOKED_AT = 200
# Markup of Discord, of HTML and of terminals; quotes and hyphens stay, they are units and words.
_MARKUP = frozenset("*_~`|<>@#[]{}\\")


def copies_well(text: str) -> bool:
    """Say whether a text may be shown word for word in a line that is to be copied.

    >>> copies_well("12% tube, 16in to his back"), copies_well("<@123> 12% tube")
    (True, False)
    """
    return text.isprintable() and not _MARKUP & set(text) and "://" not in text


def shown(text: str) -> str:
    """Return ``text`` on one line, short, and without controls, mentions, markup or links.

    >>> shown("<@123> **14** in")
    '123 14 in'
    """
    kept = [" "]
    for character in unicodedata.normalize("NFC", text[:_LOOKED_AT]):
        kind = unicodedata.category(character)[0]
        piled_up = kind == "M" and unicodedata.category(kept[-1])[0] in "MZ"
        if character.isspace() or character in _MARKUP:
            kept.append(" ")
        elif kind != "C" and not piled_up:
            kept.append(character)
    line = " ".join(_without_links("".join(kept)).split())
    return line if len(line) <= _MOST else line[: _MOST - 1].rstrip() + "…"


def _without_links(line: str) -> str:
    """Return the line with every slash gone that is not inside a fraction or a date."""
    padded = f" {line} "
    return "".join(
        " " if here == "/" and not (before.isdigit() and after.isdigit()) else here
        for before, here, after in zip(padded, padded[1:], padded[2:], strict=False)
    )
