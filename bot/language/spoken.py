"""Numbers that were dictated, as digits: ninety five, one oh five, achtundzwanzig."""

import re
from functools import cache

from bot.language.normal import Normal

__all__ = ["in_digits"]

_ONES = ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine")
_TEENS = (
    *("ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen"),
    *("sixteen", "seventeen", "eighteen", "nineteen"),
)
_TENS = ("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
_DE_ONES = ("ein", "zwei", "drei", "vier", "fünf", "sechs", "sieben", "acht", "neun")
_DE_TENS = (
    *("zwanzig", "dreißig", "vierzig", "fünfzig"),
    *("sechzig", "siebzig", "achtzig", "neunzig"),
)
_DE_WORDS = {
    **dict(
        zip(
            ("zehn", "elf", "zwölf", "dreizehn", "vierzehn", "fünfzehn"), range(10, 16), strict=True
        )
    ),
    **dict(zip(("sechzehn", "siebzehn", "achtzehn", "neunzehn"), range(16, 20), strict=True)),
    **{ten: 10 * tens for tens, ten in enumerate(_DE_TENS, 2)},
    **{
        f"{one}und{ten}": 10 * tens + ones
        for tens, ten in enumerate(_DE_TENS, 2)
        for ones, one in enumerate(_DE_ONES, 1)
    },
    "hundert": 100,
}
_WORDS = {
    **{word: value for value, word in enumerate((*_ONES, *_TEENS), 1)},
    **{ten: 10 * tens for tens, ten in enumerate(_TENS, 2)},
}
# From here on a word alone is a figure: "one of the twelve" tells none.
_ALONE = 10
_ANY = "|".join((*_TEENS, *_ONES))


@cache
def _spoken() -> re.Pattern[str]:
    small = rf"(?:(?:{'|'.join(_TENS)})(?:[ -](?:{'|'.join(_ONES)}))?|{_ANY})"
    above = rf"(?:{'|'.join(_TENS)}|{'|'.join(_TEENS)})"
    return re.compile(
        rf"(?<![a-z0-9'-])(?:(?P<hundred>(?:one |a )?hundred)(?:(?: and)? (?P<more>{small}))?"
        rf"|one (?:oh|o) (?P<oh>{'|'.join(_ONES)})"
        rf"|one (?P<past>{above}(?:[ -](?:{'|'.join(_ONES)}))?)"
        rf"|(?P<small>{small})(?P<point> point (?:oh|o|zero))?"
        rf"|(?P<de>{'|'.join(sorted(_DE_WORDS, key=len, reverse=True))}))(?![a-z'])"
    )


_WITH = re.compile(r" ?(?:%|percent|per cent|degrees?|by |x )")
_BY = re.compile(r"(?:by|x|is|he'?s|she'?s|aged|turned|says|reads|its|it's|to|at) \Z")
_OF = re.compile(r" (?:of|or|and)\b")


def in_digits(plain: Normal) -> Normal:
    """Return a text with its numbers in words as digits, each at the place of its words."""
    lower = plain.text.lower()
    found = [
        (match, told)
        for match in _spoken().finditer(lower)
        if (told := _digits(match, lower)) is not None
    ]
    if not found or len(lower) != len(plain.text):
        return plain
    text: list[str] = []
    starts: list[int] = []
    ends: list[int] = []
    at = 0
    for match, told in (*found, (None, "")):
        until = match.start() if match else len(plain.text)
        for place in range(at, until):
            first, last = plain.span(place, place + 1)
            text.append(plain.text[place])
            starts.append(first)
            ends.append(last)
        if match:
            first, last = plain.span(*match.span())
            text.append(told)
            starts += [first] * len(told)
            ends += [last] * len(told)
            at = match.end()
    starts.append(len(plain.original))
    return Normal("".join(text), tuple(starts), plain.original, tuple(ends), plain.metric)


def _digits(match: re.Match[str], text: str) -> str | None:
    if match["hundred"]:
        alone = match[0] == "hundred"
        return None if alone else str(100 + _value(match["more"]))
    if match["oh"]:
        return str(100 + _value(match["oh"]))
    if match["past"]:
        return str(100 + _value(match["past"]))
    if match["de"]:
        return str(_DE_WORDS[match["de"]])
    value = _value(match["small"])
    if match["point"]:
        return f"{value}.0"
    told = value >= _ALONE or _WITH.match(text, match.end())
    by = value > 1 and _BY.search(text, max(0, match.start() - 8), match.start())
    if by and not _OF.match(text, match.end()):
        return str(value)
    return str(value) if told else None


def _value(words: str | None) -> int:
    return sum(_WORDS[word] for word in re.split(r"[ -]", words)) if words else 0
