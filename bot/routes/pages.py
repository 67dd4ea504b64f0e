"""Which page of the guide explains what free words ask about."""

import re
from functools import cache

from bot import guide
from bot.guide import glossary
from bot.language.hearing import FactName
from bot.routes.asked import Asked

__all__ = ["SO_FAR", "page_asked", "page_explaining", "page_near"]

_UV_GOES = (
    r"\b(?:block\w*|through|takes?|reduce\w*|stops?|filter\w*|pass\w*|between|lose|cuts?|affect\w*"
    r"|absorb\w*|in the way|under|behind)\b"
)
# Pages for a whole question, the surest first: all of the patterns must be found.
_ASKED: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("reflectors", (r"\b(?:dust\w*|dirty|wipe|clean\w*)\b", r"\b(?:uv\w*|tubes?|lamps?|bulbs?)\b")),
    ("dimmers-and-wattage", (r"\bdim(?:med|ming|mers?)?\b", r"\b(?:heat|bask\w*|lamps?|bulbs?)\b")),
    ("sun-and-shade", (r"\b(?:ferguson|uvb?|uvi) zones?\b",)),
    (
        "uv-and-heat-together",
        (r"\b(?:mbd|metabolic bone|rickets|vitamin d3?|d3)\b", r"\b(?:uv\w*|tubes?|light)\b"),
    ),
    (
        "measuring-temperatures",
        (r"\bthermometers?\b", r"\b(?:don'?t have|have no|no|without|need|buy|get)\b"),
    ),
    (
        "fire-and-electrical-safety",
        (r"\b(?:fires?|electric\w*|plugs?|sockets?|outlets?|extension cords?|short circuit)\b",),
    ),
    (
        "uv-and-heat-together",
        (
            r"\b(?:uv\w*|tubes?)\b",
            r"\b(?:heat\w*|bask\w*|warm|hot)\b",
            (
                r"\b(?:same (?:side|end|spot|place|corner)|side by side|next to|opposite|together"
                r"|both)\b"
            ),
        ),
    ),
    (
        "measuring-the-distance",
        (
            r"\b(?:mean\w*|stands? for|difference|what (?:is|are|does))\b",
            r"\b(?:numbers?|labels?|printed|percent\w*|5\.0|10\.0)(?!\w)|\d ?%",
            r"\b(?:uv\w*|tubes?|box|bulbs?|5\.0|10\.0)(?!\w)",
        ),
    ),
    (
        "measuring-temperatures",
        (
            r"\b(?:guns?|probes?|thermometers?|gauges?|dials?)\b",
            r"\b(?:which|who|trust|differ\w*|wrong|accurate|right|believe|reliable|better)\b",
        ),
    ),
    (
        "uv-and-your-eyes",
        (
            r"\b(?:uv\w*|tubes?|t5|t8|lamps?|lights?|bulbs?)\b",
            (
                r"\b(?:my|our|your|human|kids?) (?:own )?(?:eyes?|skin)\b"
                r"|\b(?:hurt|harm|burn|tan|bad for|dangerous|safe|sunburn\w*)\b.*"
                r"\b(?:me|us|people|humans?|kids?|child\w*|cats?|dogs?)\b"
                r"|\b(?:i|we|people|kids?)\b.*\b(?:sunburn\w*|burnt|burned|tan|tanned)\b"
            ),
        ),
    ),
    (
        "when-a-lamp-is-worn-out",
        (
            r"\b(?:uv\w*|tubes?|bulbs?|lamps?|t5)\b",
            (
                r"\bburn(?:ing|ed)?[ -]?in\b|\bbreak[ -]?in\b"
                r"|\bnew\b.*\b(?:burn|run|settle|on for)\b.*\b(?:before|until|first)\b"
            ),
        ),
    ),
    (
        "when-a-lamp-is-worn-out",
        (
            r"\b(?:uv\w*|tubes?|t5|t8)\b|\breplac\w+ (?:\w+ )?(?:bulb|lamp)",
            (
                r"\b(?:replac\w+|renew|wear\w* out|worn|expire\w*|go(?:es)? bad|lasts?|lifespan"
                r"|fad(?:e|es|ing)|still (?:good|works?|working)|run out"
                r"|flicker\w*|dim|dark ends?|black ends?|broken|bought used|second ?hand)\b"
                r"|\bhow old\b|\b(?:uv\w*|tubes?|bulbs?|lamps?|t5)\b.{0,24}\bold\b"
                r"|\b(?:old|used) (?:uv\w*|tubes?|bulbs?|lamps?|t5)\b"
                r"|\b(?:how often|when)\b.*\b(?:chang\w+|swap\w*|new)\b"
            ),
        ),
    ),
    (
        "measuring-the-distance",
        (
            r"\b(?:measure|measuring)\b|\bfrom where\b|\bwhere (?:do|should) \w+ measure\b",
            r"\b(?:distance|height|far|high)\b|\bto (?:the )?back\b|\bfrom where\b",
        ),
    ),
    (
        "how-to-take-a-reading",
        (
            r"\b(?:measure|measuring|read|test|use|check|tell)\b.*\b(?:uv\w*)\b",
            r"\b(?:how|where)\b",
        ),
    ),
    (
        "measuring-temperatures",
        (
            (
                r"\b(?:measure|measuring|read|check|take|test|know|find out)\b"
                r"|\b(?:where|which|what)\b.*\bthermometers?\b|\bprobes?\b.*\bgo\b"
            ),
            r"\b(?:how|where|which|what)\b",
            r"\b(?:temp\w*|hot|warm\w*|heat\w*|cool\w*|bask\w*|thermometers?|probes?|guns?)\b",
        ),
    ),
    (
        "uv-and-heat-together",
        (
            r"\b(?:uv\w*|tubes?|t5s?|t8s?)\b",
            (
                r"\b(?:across|short ?ways?|sideways|width ?ways|widthwise|length ?ways|lengthwise"
                r"|front to back)\b"
            ),
        ),
    ),
    (
        "screens",
        (
            r"\b(?:glass|plastic|plexi\w*|acrylic|perspex|polycarbonate|windows?)\b",
            r"\b(?:uv\w*|tubes?|t5s?|t8s?)\b",
            (
                r"\b(?:can|could|ok\w*|fine|should|is it|does|do|will)\b.*"
                r"\b(?:on|over|above|top|through|behind|work)\b"
            ),
        ),
    ),
    (
        "screens",
        (
            r"\b(?:mesh|screens?|glass|plastic|plexi\w*|acrylic|perspex|polycarbonate|windows?)\b",
            rf"\b(?:uv\w*|lights?|tubes?|sun\w*)\b|{_UV_GOES}",
            rf"{_UV_GOES}|\b(?:bad|ok\w*|why|does|how (?:much|thick|fine)|useless|worth)\b",
        ),
    ),
    ("reflectors", (r"\breflectors?\b", r"\b(?:what|do|does|is|are|why|need|worth|matter)\b")),
    (
        "nights",
        (
            r"\b(?:nights?|sleep\w*|24/7|24 hours|dark)\b",
            (
                r"\b(?:lights?|lamps?|uv\w*|bulbs?)\b.*\b(?:on|off)\b"
                r"|\b(?:leave|turn|switch|keep)\b.*\b(?:on|off)\b"
            ),
        ),
    ),
    (
        "the-cool-end",
        (
            r"\b(?:how|can'?t|won'?t|get|make|bring)\b",
            r"\b(?:warm\w*|heat\w*|cool|lower|raise|hot|cold|up|down)\b",
            r"\b(?:cool|cold) (?:side|end)\b",
        ),
    ),
)
# A distance or a temperature with its unit wants an answer with figures.
SO_FAR = r"\b\d+ ?(?:in|inch(?:es)?|cm|ft|feet)\b|\b\d+ ?(?:°|degrees)? ?[cf]\b"
_EXPLAIN = (
    r"\b(?:what(?:'?s| is| are| does| do)|why|explain|meaning of|mean\w*|define|definition"
    r"|tell me about|how does"
    r"|how (?:do|can|should) i|where (?:do|should) i|difference between|what'?s)\b"
)
_MOST_WORDS = 14
_FIRE = "fire-and-electrical-safety"


def page_asked(asked: Asked) -> str:
    """Return the page that answers the words by itself, or nothing."""
    tells_much = asked.told.tube is not None and (asked.at_a_distance or asked.told.animal)
    if tells_much or asked.warmth or asked.says(SO_FAR):
        return ""
    plain = _beside_the_animal(asked)
    for slug, patterns in _ASKED:
        if all(asked.says(pattern) for pattern in patterns) and (
            slug != _FIRE or all(re.search(pattern, plain) for pattern in patterns)
        ):
            return slug
    return ""


def page_explaining(asked: Asked) -> str:
    """Return the page of a word whose meaning or reason is asked, or nothing."""
    if not asked.says(_EXPLAIN) or len(asked.words.split()) > _MOST_WORDS:
        return ""
    return page_near(asked)


def _beside_the_animal(asked: Asked) -> str:
    """Return the words without the animal's name: a fire salamander does not burn."""
    words = asked.words
    for said in asked.told.all(FactName.ANIMAL):
        words = words.replace(said.words.lower(), " ") if said.words else words
    return words


def page_near(asked: Asked) -> str:
    """Return the page of the longest known word that is said, or nothing."""
    words = _beside_the_animal(asked)
    found = (slug for part, form, slug in _forms() if part in words and form.search(words))
    return next(found, "")


def _said_as(word: str) -> re.Pattern[str]:
    """Return a pattern for a word, its plural, and what has a blank or nothing for a hyphen."""
    parts = map(re.escape, word.split("-"))
    return re.compile(rf"\b{'[ -]?'.join(parts)}s?\b")


@cache
def _forms() -> tuple[tuple[str, re.Pattern[str], str], ...]:
    """Return known words, the longest first: what is always there of one, the word, its page."""
    # The name of an animal says nothing of what is asked about it.
    pages = [page for page in guide.pages() if page.animal is None]
    words = {page.slug.replace("-", " ").removeprefix("the "): page.slug for page in pages}
    for term in glossary():
        for name in (term.name, *term.also):
            words.setdefault(name.lower(), term.page)
    words |= {worry: page.slug for page in pages for worry in page.worries}
    longest_first = sorted(words, key=len, reverse=True)
    return tuple(
        (w.removesuffix("s").partition("-")[0], _said_as(w.removesuffix("s")), words[w])
        for w in longest_first
        if w not in _EVERYDAY
    )


# Terms that are everyday words too, and so say nothing of what is asked.
_EVERYDAY = frozenset(("range", "rise", "doubt", "reading", "hide", "strength", "dose", "lid"))
