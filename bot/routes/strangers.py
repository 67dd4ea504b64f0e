"""Animals that are not for this bot: names that nobody here knows, pets that are no reptiles."""

import re
from functools import cache

from bot import guide
from bot.routes.asked import Asked
from calc.name_index import words_around
from calc.naming import Unplaced, WithoutTargets, named

__all__ = ["other_pet", "stranger_in", "stranger_told"]

_KINDS = (
    r"monitor|skink|gecko|dragon|lizard|snake|python|boa|viper|cobra|tortoise|turtle|terrapin|frog"
    r"|toad|newt|salamander|chameleon|iguana|agama|anole|gharial|caiman|crocodile|alligator|tegu"
)
_NAMED = re.compile(rf"((?:[^\W\d_][\w'’-]*[ -]){{1,3}})({_KINDS})s?(?![\w-])", re.I)
_LATIN = re.compile(
    r"(?<![\w-])([^\W\d_]{4,}(?:saurus|ensis|notus|ophis|dactylus|emys|chelys|lepis|gekko))(?![\w-])",
    re.I,
)
_FOR_ONE = re.compile(r"\bfor (?:a|an|my|our|this|these) ([^\W\d_]{4,}?)s?\W*$", re.I)
_WORD = re.compile(r"[^\W\d_]+")
_LEFT_ALONE = frozenset(("pet", "kind", "species", "other", "all", "wild", "exotic"))
_OF_THE_HOUSE = "birds-and-mammals"
_ASKED_OF = r"\b(?:for|does|do|is|are|will|can|should|would) (?:a |an |my |the |our )?"


def stranger_in(asked: Asked) -> str:
    """Return the name of a kind of reptile that nobody here knows: earless monitor; else ""."""
    if asked.told.animal or asked.unclear_animal:
        return ""
    for found in _NAMED.finditer(asked.said):
        words = found[1].replace("-", " ").split()
        known = words_around().in_front | _LEFT_ALONE
        while words and words[0].lower() in known:
            words = words[1:]
        if not words or words[-1].lower() in known:
            continue
        name = f"{' '.join(words)} {found[2]}"
        if _is_new(name):
            return name
    return next((one[1] for one in _LATIN.finditer(asked.said) if _is_new(one[1])), "")


def _is_new(word: str) -> bool:
    return isinstance(named(word).what, Unplaced)


def stranger_told(asked: Asked) -> str:
    """Return what a question ends with as its animal, where no page here has the word; else "".

    It is looked at only where words may mean anything.
    """
    found = _FOR_ONE.search(asked.said)
    if found is None or asked.told.facts or asked.unclear_animal or asked.lamps:
        return ""
    word = found[1].lower()
    is_ordinary = word in words_around().in_front or word in _ordinary()
    return "" if is_ordinary or not _is_new(word) else found[1]


def other_pet(asked: Asked) -> bool:
    """Say whether it is asked of a pet that is no reptile: a hamster, a budgie."""
    for word in dict.fromkeys(_WORD.findall(asked.typed)):
        what = named(word).what
        if isinstance(what, WithoutTargets) and what.family == _OF_THE_HOUSE:
            return asked.says(rf"{_ASKED_OF}{word}\b")
    return False


@cache
def _ordinary() -> frozenset[str]:
    """Return the words of the guide, each with and without its plural's ending."""
    words = {word.lower() for page in guide.pages() for word in _WORD.findall(page.body)}
    return frozenset(words | {word.removesuffix("s") for word in words})
