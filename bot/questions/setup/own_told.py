"""A group's own lamps and screens, heard by their names in free words."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache

from bot.language.hearing.lexicon import known_phrases, tokens_of
from bot.language.normal import normalise
from bot.language.screens import Passes
from bot.language.tongue import Tongue, tongue_of
from bot.language.uv_lamps import UvLamp
from bot.queries.options import OwnTube
from bot.saved.group import NOTHING_OWN, Own, OwnLamp, OwnScreen

__all__ = ["OwnTold", "kept_kinds", "own_told"]

# What stands where a name stood, so that a distance beside it is still one of a tube.
_LAMP, _SCREEN = "tube", "mesh"
_QUOTES = '"„“”'
_FEWEST_LETTERS = 3
# So many words in a row are no chance.
_LONG = 4
_TAG = re.compile(r"[A-Z]|\d{1,3}")
_INTRODUCING = ("called", "named", "group['’]s", "namens", "genannt", r"der\sGruppe")
_CALLED = f"(?:{'|'.join(f'(?<={word} )' for word in _INTRODUCING)})"
_UNIT = (
    r"(?:[\"'°%x×/-]|(?:in|inch(?:es)?|ft|foot|feet|cm|mm|m|w|watts?|percent|prozent|zoll|meter|"
    r"metres?|years?|months?|weeks?|days?|hours?|h|jahren?|monaten?|wochen?|tagen?|stunden?|"
    r"by|mal|of|tubes?|lamps?|bulbs?|röhren?|lampen?)\b)"
)


@dataclass(frozen=True, slots=True)
class OwnTold:
    """Free words with plain ones where names stood, and what was named, with its words."""

    rest: str
    lamps: tuple[tuple[OwnTube, str], ...] = ()
    screens: tuple[tuple[Passes, str], ...] = ()


def own_told(words: str, own: Own = NOTHING_OWN) -> OwnTold:
    """Return what free words tell of a group's own lamps and screens.

    A short name of ordinary words alone ("Mesh lid", "Hood A") may mean any: it is heard in quotes,
    behind a word that introduces a name, or by the way in which it is written.
    """
    lamps: list[tuple[OwnTube, str]] = []
    screens: list[tuple[Passes, str]] = []
    kept: list[OwnLamp | OwnScreen] = [*own.lamps, *own.screens]
    rest, german = words, tongue_of(words) is Tongue.GERMAN
    for figure in sorted(kept, key=lambda one: -len(one.name)):
        named = _pattern(figure.name, german=german)
        found = named.search(rest)
        if found is None:
            continue
        if isinstance(figure, OwnLamp):
            tube = OwnTube(percent=12.0, older_scale=False, text=figure.name, lamp=figure)
            lamps.append((tube, found[0].strip(_QUOTES)))
        else:
            screens.append((Passes(figure.passes, figure.name), found[0].strip(_QUOTES)))
        plain = _LAMP if isinstance(figure, OwnLamp) else _SCREEN
        rest = named.sub(plain, rest)
    return OwnTold(rest, tuple(lamps), tuple(screens))


def kept_kinds(given: Mapping[str, str], own: Own) -> tuple[UvLamp, ...]:
    """Return the kinds of the group's own lamps that options or free words name."""
    if not own.lamps:
        return ()
    named = [kept.kind for text in given.values() if (kept := own.lamp(text))]
    heard = (tube.lamp.kind for text in given.values() for tube, _ in own_told(text, own).lamps)
    return (*named, *heard)


@lru_cache(maxsize=256)
def _pattern(name: str, *, german: bool) -> re.Pattern[str]:
    words = [re.escape(word).replace("'", "['’]") for word in name.replace("’", "'").split()]
    spelt = r"[\s-]+".join(words)
    ways = [rf"[\"“„”]{spelt}[\"“”]"]
    if _is_ordinary(name):
        ways += [rf"{_CALLED}{spelt}(?!\w)", *_by_writing(name, words, german=german)]
    else:
        ways.append(rf"(?<!\w){spelt}(?!\w)")
    return re.compile("|".join(ways), re.IGNORECASE)


def _by_writing(name: str, words: list[str], *, german: bool) -> Iterator[str]:
    """Yield how an ordinary name is told from its words by the way in which it is written."""
    *head, tag = words
    if head and _TAG.fullmatch(tag):
        # "Hood A", "Tube 2": a letter as it is kept, and no figure with its unit.
        spelt = r"[\s-]".join(head)
        yield rf"(?<!\w){spelt}[\s-]?(?-i:{tag})(?![\w.,/]*\d)(?!\w)(?!\s*{_UNIT})"
    elif head and not german and name[0].isupper() and not name.split()[0].isupper():
        # "under the Mesh lid": a capital where no sentence begins, which German has everywhere.
        yield rf"(?<=[\w,;:]\s)(?-i:{' '.join(words)})(?!\w)"


def _is_ordinary(name: str) -> bool:
    """Say whether a name is short, and each word a known one, a number or too short to tell by."""
    known = known_phrases().words
    words = [word for word, _, _ in tokens_of(normalise(name).lower())]
    plain = (word in known or len(word) < _FEWEST_LETTERS or word.isdecimal() for word in words)
    return len(words) < _LONG and all(plain)
