"""The place of a temperature that a line names."""

import re

from bot.dialogue.phrases import plain

__all__ = ["place_named"]

_PLACES = (
    ("night", r"\bnights?\b|\bnacht\b|\bnachts\b|\bover ?night\b"),
    (
        "water",
        r"\b(?:water|pool|wasser)\b(?! (?:dragons?|monitors?|snakes?|bowls?|dish|agam\w*))",
    ),
    (
        "cool",
        (
            r"\b(?:cool|cold|shade|(?:other|far) (?:end|side|corner)|kühle[rs]?|kühl(?= ?\d)"
            r"|schatten"
            r"|(?:kühlen|kalten?|koidn|koitn|chalte) (?:seitn?|ende?|ecke|bereich|teil)"
            r"|andere\w* (?:seite|ende|ecke))\b"
        ),
    ),
    (
        "basking",
        (
            r"\b(?:bask\w*|hot spot|hotspot|warm hide|rock|stone|gun|dock|island|insel|surface"
            r"|slate|tile|log"
            r"|branch|ledge|floor|ground|mat|sonnenplatz|stein|platte|fläche|boden|ast|fliese"
            r"|schiefer|wurzel"
            r"|matte)\b"
        ),
    ),
    ("warm", r"\b(?:warm|hot|warme?[nrs]?|heiße?[nrs]?|air|ambient|luft)\b"),
)
_NO_PLACE = re.compile(
    # What it is not of, and what is no place in the box.
    r"\b(?:not|nicht|isn'?t|rather than|instead of|statt) (?:(?:on|at|in|of|auf|an|im|am|vom) )?"
    r"(?:(?:the|my|his|her|der|die|das|dem|den|mein\w*) )?[^\W\d]+(?: (?:side|end|spot|seite))?"
    r"|\bnot that (?:hot|warm|cold)\b|\b(?:too|to|so|zu|how|wie|a bit|much|very) "
    r"(?:hot|warm|cold|cool|heiß|kalt|kühl)\b"
    r"|\b(?:uv|hot air|air ?con\w*|heat) mat\b|\broom air\b"
)


def place_named(line: str) -> str | None:
    """Return the place of a temperature that a line names, by its option; None: none.

    >>> place_named("84 in the warm hide"), place_named("the air, not the rock"), place_named("84")
    ('basking', 'warm', None)
    """
    words = _NO_PLACE.sub(" ", plain(line))
    return next((place for place, named in _PLACES if re.search(named, words)), None)
