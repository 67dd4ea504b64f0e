"""Short phrases that go on with a conversation: a choice, a greeting, a reason, what if."""

import re

__all__ = [
    "agrees",
    "asks",
    "asks_again",
    "asks_how_to_know",
    "asks_why",
    "asks_why_needed",
    "begun_anew",
    "choice_of",
    "does_not_know",
    "greets",
    "has_no_meter",
    "names_a_season",
    "option_named",
    "plain",
    "since_now",
    "takes_mesh_off",
]

_ORDINALS = (
    ("first", "1st", "one", "erste", "ersten", "erstes"),
    ("second", "2nd", "two", "zweite", "zweiten", "zweites"),
    ("third", "3rd", "three", "dritte", "dritten", "drittes"),
)
_CHOICE = re.compile(
    r"^(?:the |number |option |no\.? ?|nr\.? ?|die |das |den )?#?(\w+)(?: one| option)?[.!)]*$"
)
_JOINS = re.compile(
    r"^(?:(?:and|und|ok|okay|so|but|aber|no|nope|nein|actually|sorry|oops|wait|then|well)[, ]+)*"
    r"(?:what about|what if|how about|was ist mit|und wenn|wie ist es mit)?"
)
_ASKS = re.compile(
    r"\b(?:how|what|whats|which|when|where|why|who|do|does|is it|can|should|wie|welche[rs]?|wann|wo"
    r"|wer|warum|soll|kann|brauch\w*)\b|(?:^|[,;] )was\b"
)
_OFF = re.compile(
    r"\b(?:(?:mesh|screen|net|lid|cover|gitter|netz|deckel)\b.{0,24}\b(?:off|out|away|weg|ab|raus)"
    r"|(?:without|ohne|remove|take off|cut)\b.{0,16}"
    r"\b(?:mesh|screen|net|lid|cover|gitter|netz|deckel))\b"
    r"|^(?:and |und |what about |was ist )*(?:ohne|without)(?: it| that| one)?\W*$"
)
_WHY = re.compile(
    r"^(?:(?:but|and|ok|okay|so|hm+|aber|und)[, ]+)*"
    r"(?:why|how come|how so|what for|warum|wieso|weshalb|why not|warum nicht|says who"
    r"|based on what|how (?:do|can|would) you (?:know|tell|get)(?: (?:that|this|it))?"
    r"|where (?:do|does) (?:you|that|this|it) (?:get (?:that|this|it)|come) from"
    r"|woher (?:weißt|wissen) (?:du|sie) das)"
    r"(?: (?:is|ist) (?:that|it|das))?(?: so| (?:warmer|hotter|cooler|colder|closer"
    r"|nearer|higher|lower|more|less|wärmer|kälter|mehr))?[?.! ]*$"
)
_YES = re.compile(
    r"^(?:oh |ah )?(?:yes|yep|yeah|yup|ja|jep|jawohl|right|correct|exactly|genau|richtig|sure)"
    r"(?: (?:yes|it is|thats it|that's it|thats the one|that one|please|bitte|genau|das ist es))*"
    r"[.! ]*$"
    r"|^(?:ok(?:ay)?|yes|yeah|gut|ja)?[, ]*(?:do (?:that|it|so)|go (?:on|ahead)|mach das)[.! ]*$"
)
_HOW_TO_KNOW = re.compile(
    r"\bhow (?:do|can|would|should|could) i (?:know|tell|see|find|check|measure|work)\b"
    r"|\bwhere (?:do|can|does|is) (?:i|it|that) (?:see|find|read|look|say|stand|written|printed)\b"
    r"|\bwie (?:finde|sehe|erkenne|merke|messe|prüfe) ich\b|\bworan (?:sehe|erkenne|merke)\b"
    r"|\bwoher weiß ich\b|\bwo (?:steht|sehe|finde)\b"
)
_MOST_TO_KNOW = 7
_DOES_NOT_KNOW = re.compile(
    r"\b(?:not sure|no (?:idea|clue)|dunno|don'?t know|unsure|idk|can'?t (?:tell|measure|say)"
    r"|(?:don'?t|do not) have (?:a|one|any)|have(?:n't| no| not got) (?:a )?(?:meter|gun|idea)"
    r"|no (?:uv )?meter|weiß (?:ich )?nicht|keine ahnung|hab(?:e)? kein\w*|kann ich nicht)\b"
)
_SEASON = re.compile(r"\b(?:winters?|summers?|seasons?|all year|im winter|sommer|jahreszeit\w*)\b")
_WHY_NEEDED = re.compile(
    r"^(?:and |but |ok |so |aber |und )*(?:why|warum|wozu|wieso) "
    r"(?:does|do|would|should|braucht|brauchen)"
    r" (?:\w+ ){0,3}?(?:need |needs )?(?:it|uv\w*|that|this|das|es)\b"
)
_NO_METER = re.compile(
    r"\b(?:no|without an?|don'?t have an?|don'?t own an?|haven'?t (?:got )?an?|kein\w*|ohne) "
    r"(?:uv\w* ?)?(?:meter|messgerät\w*|uv-?meter)\b"
)
_HEATER = re.compile(
    r"^(?:(?:and|so|but|ok|okay|also|then)[, ]+)*do i (?:really |still )?need "
    r"(?:a heater|heat(?:ing)?|that|it|one)(?: then| at all)?[?.! ]*$"
)
_JUDGED = re.compile(
    r"^(?:(?:and|so|but|ok|okay|und|also|aber|then|yes|hm+)[, ]+)*"
    r"(?:is (?:that|it|this) (?:now )?|its |that's |thats |all |still |still too |a bit |bit )*"
    r"(?:better|worse|ok\w*|fine|good|safe|enough|right|alright"
    r"|too (?:much|little|hot|cold|strong|weak|close|far|high|low|bright|dim)"
    r"|(?:passt|geht|reicht|stimmt) (?:das|es)|in ordnung"
    r"|zu (?:viel|wenig|heiß|kalt|stark|schwach|nah|weit))"
    r"(?: (?:or|oder) (?:\w+ ){0,4}\w+)?(?: (?:now|then|yet|like that|so|jetzt|dann))*\?+$"
    r"|^(?:(?:and|so|then|ok|also|und|a bit|a little|even|etwas|bisschen|ein bisschen|noch)[, ]+)*"
    r"(?:closer|nearer|higher|lower|further|farther|more|less|näher|höher|tiefer|weiter|mehr"
    r"|weniger)(?: (?:or|oder) \w+)?(?: then| now| dann)?\W*\?+$"
    r"|^(?:so |and |also |und )*(?:closer|nearer|higher|lower|further|farther|näher|höher|tiefer"
    r"|weiter) (?:or|oder) \w+(?: \w+)?\W*$"
    r"|^(?:is|are) (?:that|it|this) (?:better|worse) or (?:better|worse)\W*$"
    r"|^yes (?:its |it's )?(?:fine|ok|good) or (?:yes|no)\b.{0,30}$"
)
_AGAIN = re.compile(
    r"^(?:(?:and|so|but|ok|okay|und|also|aber|then)[, ]+)*(?:is|are|would|will|ist|reicht|geht) "
    r"(?:that|this|it|these|they|das|es)(?: (?:be|still|now|then|really|denn|dann))*"
    r"(?: (?:ok\w*|alright|all right|fine|good|enough|safe|right|correct|bad|gut|genug|richtig"
    r"|sicher|too (?:much|little|hot|cold|strong|weak|close|far|high|low)"
    r"|zu (?:viel|wenig|heiß|kalt|stark|schwach|nah|weit)))?[?.! ]*$"
)
_FIGURES = re.compile(
    r"^(?:(?:i mean[t]?|its|it's|no|sorry|thats|that's|ok|and|so|und|ich meine?)[, ]+)*"
    r"(?:the |der |die |das )?"
    r"(?:(?P<distance>gap|distance|height|abstand|höhe)|(?P<length>length|länge)"
    r"|(?P<tube>strength|percent|stärke|prozent))\W*$"
)
_GREETS = re.compile(
    r"^(?:hi+|hey+|hello|hiya|howdy|yo|moin|hallo|servus|grüezi"
    r"|good (?:morning|evening|day|afternoon)|guten (?:morgen|tag|abend))"
    r"(?: (?:there|all|everyone|everybody|guys|bot|you|again|zusammen|alle))*[!., ]*$"
)
# Degrees or bare numbers alone, before and after the word.
_NOW_AFTER = re.compile(
    r"^[^\d%]*\d+(?:\.\d+)? ?°?[fc]?\b"
    r"(?! ?(?:in|inch\w*|cm|ft|foot|feet|w|watts?|%|h|hours?)\b)[^\d%]*"
    r"\b(?P<now>(?:now|jetzt)\b[^\d%]*\d+(?:\.\d+)? ?°?[fc]?\b"
    r"(?! ?(?:in|inch\w*|cm|ft|foot|feet|w|watts?|%|h|hours?)\b)[^\d%]*)$",
    re.I,
)
_ANEW = re.compile(
    r"^(?:(?:new|another|different|other|next|unrelated) (?:topic|question|thing|one)"
    r"|change of (?:topic|subject)|something else|neues thema|(?:eine )?andere frage"
    r"|was anderes|neue frage)\b[,:.;!– -]*(?=\S)"
)


def asks_why_needed(line: str) -> bool:
    """Whether a line asks why an animal needs UV at all.

    >>> asks_why_needed("why does he need it, hes only up at night"), asks_why_needed("why 12%")
    (True, False)
    """
    return _WHY_NEEDED.match(plain(line)) is not None


def has_no_meter(line: str) -> bool:
    """Whether a line says that there is no UV meter.

    >>> has_no_meter("dont have a meter"), has_no_meter("my meter says 3")
    (True, False)
    """
    return _NO_METER.search(plain(line)) is not None


def begun_anew(line: str) -> str:
    """Return what stands behind words that begin another matter; nothing where none do.

    >>> begun_anew("new topic, how old can a tube get"), begun_anew("new tube")
    ('how old can a tube get', '')
    """
    found = _ANEW.match(line.lower())
    return line[found.end() :].strip() if found else ""


def greets(line: str) -> bool:
    """Whether a line is a greeting and nothing else.

    >>> greets("hey there!"), greets("hi, is 90F ok")
    (True, False)
    """
    return _GREETS.match(plain(line)) is not None


def option_named(line: str) -> str:
    """Return which figure of a tube a line names and nothing else, by its option.

    >>> option_named("the gap"), option_named("i mean the length"), option_named("the gap is 3")
    ('distance', 'length', '')
    """
    found = _FIGURES.match(plain(line))
    return next((name for name, said in (found.groupdict() if found else {}).items() if said), "")


def agrees(line: str) -> bool:
    """Whether a line says yes and nothing else.

    >>> agrees("yes thats it"), agrees("yes but colder")
    (True, False)
    """
    return _YES.match(plain(line)) is not None


def does_not_know(line: str) -> bool:
    """Whether a line says that its writer cannot tell what was asked, and tells nothing else.

    >>> does_not_know("dunno how far"), does_not_know("not sure, maybe 12 inches")
    (True, False)
    """
    words = plain(line)
    return _DOES_NOT_KNOW.search(words) is not None and not any(map(str.isdigit, words))


def asks_how_to_know(line: str) -> bool:
    """Whether a line asks how to find out what was asked for.

    >>> asks_how_to_know("how do i know"), asks_how_to_know("how do i know if hes cold at night")
    (True, False)
    """
    words = plain(line)
    return _HOW_TO_KNOW.search(words) is not None and len(words.split()) <= _MOST_TO_KNOW


def asks_why(line: str) -> bool:
    """Whether a line asks for the reason of the answer before it, and nothing else.

    >>> asks_why("but why?"), asks_why("why is my tube grey")
    (True, False)
    """
    return _WHY.match(plain(line)) is not None


def asks_again(line: str) -> bool:
    """Whether a line asks whether what was just told is right, and names nothing new.

    >>> asks_again("is that enough?"), asks_again("is 12 inches enough")
    (True, False)
    """
    return any(form.match(plain(line)) for form in (_AGAIN, _JUDGED, _HEATER))


def since_now(line: str) -> str:
    """Return what a line says is so now, where it tells one bare figure of before and one of now.

    >>> since_now("122F yeah. and now 104 after dimming"), since_now("12 in, now 104")
    ('now 104 after dimming', '12 in, now 104')
    """
    found = _NOW_AFTER.match(line)
    return line[found.start("now") :] if found else line


def choice_of(line: str, many: int) -> int | None:
    """Return which of so many offers a line takes, from 0 on; None: none of them.

    >>> choice_of("the second one", 3), choice_of("2", 3), choice_of("12 inches", 3)
    (1, 1, None)
    """
    found = _CHOICE.match(plain(line))
    if found is None:
        return None
    word = found[1]
    for at, words in enumerate(_ORDINALS[:many]):
        if word in words or word == str(at + 1):
            return at
    return None


def asks(line: str) -> bool:
    """Whether a line asks something by itself, behind the words that go on with what was said.

    >>> asks("and what about 40 cm?"), asks("and how far on a mesh lid?")
    (False, True)
    """
    return _ASKS.search(_JOINS.sub("", plain(line))) is not None


def names_a_season(line: str) -> bool:
    """Whether a line speaks of a time of the year."""
    return _SEASON.search(plain(line)) is not None


def takes_mesh_off(line: str) -> bool:
    """Whether a line asks what is so without the mesh."""
    return _OFF.search(plain(line)) is not None


def plain(line: str) -> str:
    """Return a line in lower case, its words apart by one blank."""
    return " ".join(line.lower().replace("’", "'").split())
