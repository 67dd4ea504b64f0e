"""Short phrases that go on with a conversation: thanks, a choice, another unit, what if."""

import re

from bot.language.units import Units

__all__ = [
    "asks",
    "asks_again",
    "asks_why",
    "begun_anew",
    "choice_of",
    "is_thanks",
    "place_named",
    "takes_mesh_off",
    "topic_of",
    "unit_wished",
]

_FRIENDLY = (
    r"(?: (?:so much|very much|a lot|you|all|again|mate|man|young|sir|friend|guys|everyone"
    r"|for (?:the |your )?help|dir|euch|schön|sehr|bye|tschüss))*"
)
_THANKS = re.compile(
    r"^(?:ok(?:ay)?|great|perfect|cool|nice|good|super|many|oh|ah|alles klar|prima|vielen)?[,! ]*"
    r"(?:thanks?|thank you|thx|ty|cheers|ta|danke(?:schön|schoen)?|merci)\b"
    rf"{_FRIENDLY}[!. ]*$"
    r"|^(?:ok(?:ay)? )?(?:good ?bye|bye(?: bye)?|see you|tschüss|tschüs|ciao|servus)[!. ]*$"
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
    r"^(?:and |und |ok |please |bitte |what |how much |whats |what's |is |are |that |it |this )*"
    r"(?:in |as |to |auf )?"
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
_WHY = re.compile(
    r"^(?:(?:but|and|ok|okay|so|hm+|aber|und)[, ]+)*"
    r"(?:why|how come|how so|what for|warum|wieso|weshalb|why not|warum nicht)"
    r"(?: (?:is|ist) (?:that|it|das))?(?: so)?[?.! ]*$"
)
_HEATER = re.compile(
    r"^(?:(?:and|so|but|ok|okay|also|then)[, ]+)*do i (?:really |still )?need "
    r"(?:a heater|heat(?:ing)?|that|it|one)(?: then| at all)?[?.! ]*$"
)
_AGAIN = re.compile(
    r"^(?:(?:and|so|but|ok|okay|und|also|aber|then)[, ]+)*(?:is|are|would|will|ist|reicht|geht) "
    r"(?:that|this|it|these|they|das|es)(?: (?:be|still|now|then|really|denn|dann))*"
    r"(?: (?:ok\w*|alright|all right|fine|good|enough|safe|right|correct|bad|gut|genug|richtig"
    r"|sicher|too (?:much|little|hot|cold|strong|weak|close|far|high|low)"
    r"|zu (?:viel|wenig|heiß|kalt|stark|schwach|nah|weit)))?[?.! ]*$"
)
_TOPICS = (
    ("hours", "", re.compile(r"\bhow (?:many hours|long)\b|\bhours? of light\b|\bwie lange\b")),
    ("needs", "night", re.compile(r"\b(?:nights?|nacht|nachts|overnight)\b")),
    ("needs", "cool", re.compile(r"\b(?:cool|cold) (?:side|end)\b|\bkühle\w* seite\b")),
    ("needs", "basking", re.compile(r"\b(?:bask\w*|hot ?spot|warm (?:side|end)|sonnenplatz)\b")),
    ("needs", "water", re.compile(r"\b(?:water|wasser)\b")),
    ("needs", "uvi", re.compile(r"\buv\w*\b")),
)
_MOST_OF_A_TOPIC = 6
_ANEW = re.compile(
    r"^(?:(?:new|another|different|other|next|unrelated) (?:topic|question|thing|one)"
    r"|change of (?:topic|subject)|something else|neues thema|(?:eine )?andere frage"
    r"|was anderes|neue frage)\b[,:.;!– -]*(?=\S)"
)


def begun_anew(line: str) -> str:
    """Return what stands behind words that begin another matter; nothing where none do.

    >>> begun_anew("new topic, how old can a tube get"), begun_anew("new tube")
    ('how old can a tube get', '')
    """
    found = _ANEW.match(line.lower())
    return line[found.end() :].strip() if found else ""


def topic_of(line: str) -> tuple[str, str] | None:
    """Return the question, and what of it, that a few words name as what is asked next.

    >>> topic_of("and nights"), topic_of("how many hours"), topic_of("its 12 inches")
    (('needs', 'night'), ('hours', ''), None)
    """
    plain = _plain(line)
    if len(plain.split()) > _MOST_OF_A_TOPIC or any(sign.isdigit() for sign in plain):
        return None
    return next(((name, of) for name, of, form in _TOPICS if form.search(plain)), None)


def asks_why(line: str) -> bool:
    """Whether a line asks for the reason of the answer before it, and nothing else.

    >>> asks_why("but why?"), asks_why("why is my tube grey")
    (True, False)
    """
    return _WHY.match(_plain(line)) is not None


def asks_again(line: str) -> bool:
    """Whether a line asks whether what was just told is right, and names nothing new.

    >>> asks_again("is that enough?"), asks_again("is 12 inches enough")
    (True, False)
    """
    return any(form.match(_plain(line)) for form in (_AGAIN, _HEATER))


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
