"""Short phrases that go on with a conversation: thanks, a choice, another unit, what if."""

import re

from bot.language.units import Units

__all__ = ["asks", "choice_of", "is_thanks", "place_named", "takes_mesh_off", "unit_wished"]

_THANKS = re.compile(
    r"^(?:ok(?:ay)?|great|perfect|cool|nice|good|super|many|oh|ah|alles klar|prima|vielen)?[,! ]*"
    r"(?:thanks?|thank you|thx|ty|cheers|ta|danke(?:schön|schoen)?|merci)\b"
    r"(?: (?:so much|a lot|you|again|mate|dir|schön|sehr))*[!. ]*$"
)
_ORDINALS = (
    ("first", "1st", "one", "erste", "ersten", "erstes"),
    ("second", "2nd", "two", "zweite", "zweiten", "zweites"),
    ("third", "3rd", "three", "dritte", "dritten", "drittes"),
)
_CHOICE = re.compile(
    r"^(?:the |number |option |no\.? ?|nr\.? ?|die |das |den )?#?(\w+)(?: one| option)?[.!)]*$"
)
_UNIT = re.compile(
    r"^(?:and |und |ok |please |bitte )*(?:in |as |to |auf )?"
    r"(?P<cm>cm|centimet(?:er|re)s?|celsius|metric|°?c|zentimeter|metrisch)?"
    r"(?P<inch>inch(?:es)?|fahrenheit|imperial|°?f|zoll)?(?: please| bitte)?[?.! ]*$"
)
_JOINS = re.compile(
    r"^(?:(?:and|und|ok|okay|so|but|aber|no|nope|nein|actually|sorry|oops|wait|then|well)[, ]+)*"
    r"(?:what about|what if|how about|was ist mit|und wenn|wie ist es mit)?"
)
_ASKS = re.compile(
    r"\b(?:how|what|whats|which|when|where|why|do|does|is it|can|should|wie|was|welche[rs]?|wann|wo"
    r"|warum|soll|kann|brauch\w*)\b"
)
_OFF = re.compile(
    r"\b(?:(?:mesh|screen|gitter|netz)\b.{0,24}\b(?:off|out|away|weg|ab|raus)"
    r"|(?:without|ohne|remove|take off|cut)\b.{0,16}\b(?:mesh|screen|gitter|netz))\b"
)


def is_thanks(line: str) -> bool:
    """Whether a line only says thanks.

    >>> is_thanks("ok thanks a lot!"), is_thanks("thanks, and at night?")
    (True, False)
    """
    return _THANKS.match(_plain(line)) is not None


def choice_of(line: str, many: int) -> int | None:
    """Return which of so many offers a line takes, from 0 on; None: none of them.

    >>> choice_of("the second one", 3), choice_of("2", 3), choice_of("12 inches", 3)
    (1, 1, None)
    """
    found = _CHOICE.match(_plain(line))
    if found is None:
        return None
    word = found[1]
    for at, words in enumerate(_ORDINALS[:many]):
        if word in words or word == str(at + 1):
            return at
    return None


def unit_wished(line: str) -> Units | None:
    """Return the unit that a line wishes the answer in, and nothing else.

    >>> unit_wished("in cm please"), unit_wished("30 cm")
    (<Units.CM: 'cm'>, None)
    """
    found = _UNIT.match(_plain(line))
    if found is None or bool(found["cm"]) == bool(found["inch"]):
        return None
    return Units.CM if found["cm"] else Units.IN


def asks(line: str) -> bool:
    """Whether a line asks something by itself, behind the words that go on with what was said.

    >>> asks("and what about 40 cm?"), asks("and how far on a mesh lid?")
    (False, True)
    """
    return _ASKS.search(_JOINS.sub("", _plain(line))) is not None


_PLACES = (
    ("night", r"\bnights?\b|\bnacht|\bnachts\b"),
    ("cool", r"\b(?:cool|cold|shade|kühle?n?|schatten)\b"),
    (
        "basking",
        r"\b(?:bask\w*|hot spot|hotspot|warm hide|rock|stone|gun|dock|surface|sonnenplatz)\b",
    ),
    ("warm", r"\b(?:warm|hot)\b"),
)


def place_named(line: str) -> str | None:
    """Return the place of a temperature that a line names, by its option; None: none.

    >>> place_named("84 in the warm hide"), place_named("cool side"), place_named("it is 84")
    ('basking', 'cool', None)
    """
    plain = _plain(line)
    return next((place for place, named in _PLACES if re.search(named, plain)), None)


def takes_mesh_off(line: str) -> bool:
    """Whether a line asks what is so without the mesh."""
    return _OFF.search(_plain(line)) is not None


def _plain(line: str) -> str:
    return " ".join(line.lower().replace("’", "'").split())
