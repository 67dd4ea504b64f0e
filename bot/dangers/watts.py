"""A lamp with more watts than the mark on its holder, as it is told in words."""

from bot.dangers.thesaurus import Meaning

__all__ = ["over_the_mark"]

_LEAST, _MOST = 15.0, 1000.0
_FURTHER = 3
_ARTICLES = frozenset(
    ("a", "an", "the", "my", "that", "this", "einer", "der", "ner", "eine", "meiner")
)


def over_the_mark(words: list[Meaning], places: range) -> tuple[int, int] | None:
    """Return where a sentence tells of a lamp with more watts than the mark of its holder."""
    marked = any(words[at].names & {"mark_word", "says_word"} for at in places)
    lamps: list[tuple[int, float]] = []
    marks: list[tuple[int, float]] = []
    for place in places:
        number = _watts(words, place)
        if number is not None and (marked or _has_unit(words, place)):
            (marks if _is_mark(words, place, places) else lamps).append((place, number))
    for mark_at, mark in marks:
        for lamp_at, lamp in lamps:
            if lamp > mark and (_has_unit(words, mark_at) or _has_unit(words, lamp_at)):
                return min(mark_at, lamp_at), max(mark_at, lamp_at) + 1
    return None


def _has_unit(words: list[Meaning], place: int) -> bool:
    return place + 1 < len(words) and words[place + 1].word in {"w", "watt", "watts", "watter"}


def _watts(words: list[Meaning], place: int) -> float | None:
    text = words[place].word
    if not text[0].isdecimal() or not text[-1].isdecimal() or "/" in text:
        return None
    after = words[place + 1].names if place + 1 < len(words) else frozenset[str]()
    if "not_watts" in after:
        return None
    number = float(text.replace(",", "."))
    return number if _LEAST <= number <= _MOST else None


def _is_mark(words: list[Meaning], place: int, places: range) -> bool:
    """Say whether a figure belongs to the holder: "max 60", "60w holder", "rated for 60"."""
    before = range(max(places.start, place - _FURTHER), place)
    if any("mark_word" in words[at].names for at in before):
        return True
    if any("says_word" in words[at].names for at in before):
        return any("holder" in words[at].names for at in places)
    if place > 1 and "in_word" in words[place - 2].names and words[place - 1].word in _ARTICLES:
        return True
    for at in range(place + 1, min(places.stop, place + 1 + _FURTHER)):
        if "mark_after" in words[at].names:
            return True
        if "own_lamp" in words[at].names:
            return False
    return False
