"""A lamp with more watts than the mark on its holder, as it is told in words."""

from bot.dangers.thesaurus import Meaning

__all__ = ["over_the_mark"]

_LEAST, _MOST = 15.0, 1000.0
_FURTHER = 3


def over_the_mark(words: list[Meaning], places: range) -> tuple[int, int] | None:
    """Return where a sentence tells of a lamp with more watts than the mark of its holder."""
    lamps: list[tuple[int, float]] = []
    marks: list[tuple[int, float]] = []
    for place in places:
        number = _watts(words, place)
        if number is not None:
            (marks if _is_mark(words, place, places) else lamps).append((place, number))
    for mark_at, mark in marks:
        for lamp_at, lamp in lamps:
            if lamp > mark and _in_watts(words, mark_at, lamp_at):
                return min(mark_at, lamp_at), max(mark_at, lamp_at) + 1
    return None


def _in_watts(words: list[Meaning], *places: int) -> bool:
    """Say whether one of the figures has its unit."""
    return any(
        place + 1 < len(words) and words[place + 1].word in {"w", "watt", "watts"}
        for place in places
    )


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
    for at in range(place + 1, min(places.stop, place + 1 + _FURTHER)):
        if "mark_after" in words[at].names:
            return True
        if "own_lamp" in words[at].names:
            return False
    return False
