"""Words that ask for nothing: thanks, a farewell, a word of liking alone."""

import re

from bot.dialogue.phrases import plain

__all__ = ["is_thanks"]

_FRIENDLY = (
    r"(?: (?:so much|very much|a lot|you|all|again|mate|man|young|sir|friend|guys|everyone"
    r"|for (?:the |your )?help|dir|euch|schön|sehr|bye|tschüss))*"
)
_THANKS = re.compile(
    r"^(?:ok(?:ay)?|great|perfect|cool|nice|good|super|many|oh|ah|alles klar|prima|vielen)?[,! ]*"
    r"(?:thanks?|thank you|thx|ty|cheers|ta|danke(?:schön|schoen)?|merci)\b"
    rf"{_FRIENDLY}[!. ]*$"
    r"|^(?:ok(?:ay)?|great|perfect|cool|brilliant|alright|gut)?[,.! ]*"
    r"(?:thanks|thank you|thx|cheers|danke)\b"
    r"(?!.*(?:\d|\?|\b(?:how|what|which|when|where|why|can|should|does|is it|and (?:at|the|for)"
    r"|but|wie|was (?:ist|soll|kann|mach\w*)|welche\w*|kann|soll|und|aber)\b)).{0,60}$"
    r"|^(?:ok(?:ay)? )?(?:good ?bye|bye(?: bye)?|see you|tschüss|tschüs|ciao|servus)[!. ]*$"
)
# Alone it is a word of liking; "cool side" is a place.
_LIKES = re.compile(
    r"^(?:(?:oh|ah|ok|okay|wow|very|really|so|thats|that's|that is|das ist|sehr|echt)[, ]+)*"
    r"(?:cool|nice|great|awesome|perfect|brilliant|lovely|sweet|amazing|excellent|wonderful|super"
    r"|toll|klasse|prima|perfekt|spitze|wunderbar|geil|alles klar|cool beans|good to know"
    r"|gut zu wissen|top|alles klar|passt(?: so)?|mega|stark|läuft|passt scho[n]?)(?: (?:cool"
    r"|nice|great|man|mate|lol|one|stuff|then|dann))*[!. :)]*$"
)
_SIGHS = re.compile(
    r"^(?:phew|puh|uff|wow|oh|ah|aha|lol|haha\w*|hihi|ha|hehe|ups|oje|jesses|mist)"
    r"(?:[ ,]+(?:ok|okay|lol|good|gut|haha\w*|cool|danke|thanks))*[!. ]*$"
    r"|^(?!.*(?:\?|\d|\b(?:how|what|which|when|where|wie|was|welche\w*)\b)).{0,40}"
    r"\b(?:but|aber) (?:thanks|thank you|thx|danke)\b.{0,20}$"
)


def is_thanks(line: str) -> bool:
    """Whether a line only says thanks, or that it was liked.

    >>> is_thanks("ok thanks a lot!"), is_thanks("thanks, and at night?"), is_thanks("cool")
    (True, False, True)
    """
    words = plain(line)
    if words and not any(sign.isalnum() or sign in "?!.:;," for sign in words):
        # A thumb up, and no word.
        return True
    return any(form.match(words) for form in (_THANKS, _LIKES, _SIGHS))
