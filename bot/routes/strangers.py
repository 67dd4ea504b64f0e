"""Animals that are not for this bot: names that nobody here knows, pets that are no reptiles."""

import re
from functools import cache
from importlib.resources import files
from itertools import pairwise

from bot import guide
from bot.language.tongue import Tongue, tongue_of
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
# Where somebody names an animal: for a marbled pebblewyrm, got a kriptosaur from my uncle.
_CUED = re.compile(
    r"\b(?:for|got|getting|get|have|keep|keeping|adopted|adopting|rescued|inherited|bought|from"
    r"|does|do|can|should|would|will|is|over|above)"
    r" (?:a|an|my|our|this|these|two|new)(?: new| baby| young| adult)? "
    r"((?:[^\W\d_]+[ -]){0,2}?)([^\W\d_]{5,})"
    r"(?=\W*$|[,.;?!]|\W+(?:and|to|at|in|on|with|from|off|by|how|what|which|when|where|is|are|do"
    r"|does|needs?|wants?|likes?|gets?|lives?|should|please|pls|thanks|that|who|as|yesterday|today"
    r"|\d+ (?:day|week|month|year|yr|mo))\b)",
    re.I,
)
_FOR_ONE = re.compile(r"\bfor (?:a|an|my|our|this|these) ([^\W\d_]{4,}?)s?\W*$", re.I)
_WORD = re.compile(r"[^\W\d_]+")
# In so long a word one letter may be off, or two.
_NOT_SHORT, _LONG = 6, 8
_LEFT_ALONE = frozenset(("pet", "kind", "species", "other", "all", "wild", "exotic"))
_RUN_ABOUT = frozenset(("dog", "cat", "chicken", "Hund", "Katze", "Huhn"))
_OF_THE_HOUSE = "birds-and-mammals"
_ASKED_OF = (
    r"\b(?:for|does|do|is|are|will|can|should|would|für|braucht|brauchen|ist|darf|kann|soll)"
    r" (?:a |an |my |the |our |ein\w* |mein\w* |der |die |das )?"
)


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
    latin = (one[1] for one in _LATIN.finditer(asked.said) if _is_new(one[1]))
    return next(latin, "") or _cued(asked.said)


def _cued(said: str) -> str:
    """Return the name of an animal by its place in a sentence and a word that is none of ours."""
    if tongue_of(said) is Tongue.GERMAN:
        return ""
    for found in _CUED.finditer(said):
        if not _is_ordinary(found[2].lower()) and _is_new(found[2]):
            return f"{found[1]}{found[2]}"
    return ""


def _is_ordinary(word: str) -> bool:
    """Say whether a word, or one that it may be a slip of, stands in what people write here."""
    from rapidfuzz import process
    from rapidfuzz.distance import OSA

    words = _ordinary()
    if word in words or word.removesuffix("s") in words or word in words_around().in_front:
        return True
    slips = (len(word) >= _NOT_SHORT) + (len(word) >= _LONG)
    return process.extractOne(word, words, scorer=OSA.distance, score_cutoff=slips) is not None


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
    return "" if _is_ordinary(word) or not _is_new(word) else found[1]


def other_pet(asked: Asked) -> bool:
    """Say whether it is asked of a pet that is no reptile: a hamster, a budgie."""
    words = _WORD.findall(asked.typed)
    for word in dict.fromkeys((*words, *map(" ".join, pairwise(words)))):
        what = named(word).what
        if isinstance(what, WithoutTargets) and what.family == _OF_THE_HOUSE:
            # One that runs about the house is told of beside the reptile that is asked for.
            beside = what.name in _RUN_ABOUT or asked.about_an_animal or asked.unclear_animal
            return not beside or re.search(rf"{_ASKED_OF}{word}\b", asked.typed) is not None
    return False


@cache
def _ordinary() -> frozenset[str]:
    """Return the words of the guide and of what people write, without a plural's ending too."""
    words = {word.lower() for page in guide.pages() for word in _WORD.findall(page.body)}
    words.update((files("bot.routes") / "ordinary.txt").read_text(encoding="ascii").split())
    return frozenset(words | {word.removesuffix("s") for word in words})
