"""In which language a text is written, by its small words: English, German, or not to be told."""

import re
from enum import StrEnum

__all__ = ["Tongue", "tongue_of"]


class Tongue(StrEnum):
    """A language that people write here; the value is its code in ISO 639-1."""

    ENGLISH = "en"
    GERMAN = "de"


# Words that one of the two has and the other has not, the commonest first.
_GERMAN = frozenset(
    "der das ist und ich nicht ein eine einen einem einer mein meine meinen meinem meiner ihr ihm "
    "ihn sie er es wir vom zum zur auf aus mit bei für fuer von den dem des auch noch nur "
    "schon sehr ganz mal wie wo wann warum wieso wer oder aber wenn dass weil ob kann darf "
    "muss soll habe hab haben hat hatte sind seid bin bist wird werden wurde kein keine keinen "
    "jetzt heute gestern nachts tagsüber über unter zwischen nach seit beim ins doch hier dort "
    "mir mich dir dich uns euch sich seine seinen seiner seit tier tiere röhre roehre lampe "
    "terrarium strom licht hilfe bitte danke hallo grad zu".split()
)
_ENGLISH = frozenset(
    "the a is and i not my his her its he she it we of to for with at from on have has had are "
    "be been do does did can could should would will this that these those there what how when "
    "why who or but if because no any some now today just about into over under your you me him "
    "they them their our tank bulb help please thanks hello".split()
)
# Letters that only German has of the two.
_LETTERS = re.compile(r"[äöüßÄÖÜẞ]")
_WORD = re.compile(r"[^\W\d_]+")


def tongue_of(text: str) -> Tongue | None:
    """Return the language of a text, or None where its small words do not tell.

    >>> tongue_of("die Lampe ist zu nah"), tongue_of("is the lamp too near"), tongue_of("12% 30cm")
    (<Tongue.GERMAN: 'de'>, <Tongue.ENGLISH: 'en'>, None)
    """
    words = _WORD.findall(text.lower())
    german = sum(word in _GERMAN or bool(_LETTERS.search(word)) for word in words)
    english = sum(word in _ENGLISH for word in words)
    if german == english:
        return None
    return Tongue.GERMAN if german > english else Tongue.ENGLISH
