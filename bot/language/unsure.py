"""What an asker does not know: taken as it is said, so that nobody has to guess."""

from dataclasses import dataclass

from bot.language.normal import normalise
from bot.language.screens import is_some_mesh
from bot.language.sides import LONGEST

__all__ = ["NOT_SURE", "SomeMesh", "Unsure", "read_some_mesh", "read_unsure"]

NOT_SURE = "not sure"
_WORDS = frozenset(
    (
        *("not sure", "unsure", "im not sure", "not certain", "unknown", "no idea", "no clue"),
        *("dont know", "do not know", "i dont know", "didnt say", "cant tell", "idk", "dunno"),
        *("?", "??", "???"),
    )
)


@dataclass(frozen=True, slots=True)
class Unsure:
    """The asker does not know."""

    text: str


@dataclass(frozen=True, slots=True)
class SomeMesh(Unsure):
    """There is a mesh, and the asker does not know what it takes."""


def read_unsure(text: str) -> Unsure | None:
    """Return that the asker does not know, if that is what was typed.

    >>> read_unsure("I don't know"), read_unsure("plain")
    (Unsure(text="I don't know"), None)
    """
    words = " ".join(text[:LONGEST].split())
    plain = normalise(words).lower().replace("'", "").strip(" .!")
    return Unsure(words) if plain in _WORDS else None


def read_some_mesh(text: str) -> Unsure | None:
    """Return a mesh of which nothing more is known, or that the asker does not know.

    >>> read_some_mesh("mesh lid"), read_some_mesh("45%")
    (SomeMesh(text='mesh lid'), None)
    """
    words = " ".join(text[:LONGEST].split())
    return SomeMesh(words) if is_some_mesh(words) else read_unsure(text)
