"""The glossary: one name for one thing, in plain words."""

from dataclasses import dataclass
from functools import cache
from unicodedata import combining, normalize

from bot.guide.loader import FIRST
from calc.tables import ROOT, read_table

__all__ = ["Term", "alphabetical", "glossary"]


@dataclass(frozen=True, slots=True)
class Term:
    """A word of the guide, what it means, what else keepers call it, and where it is explained.

    ``page`` is the slug of a guide page.
    """

    name: str
    meaning: str
    also: tuple[str, ...]
    page: str


@cache
def glossary(language: str = FIRST) -> tuple[Term, ...]:
    """Return every term of a language, or else of the first one, in alphabetical order."""
    own = f"bot/guide/{language}/glossary.toml"
    rows = read_table(own if (ROOT / own).is_file() else "bot/guide/glossary.toml")
    return tuple(
        Term(name, row["meaning"], tuple(row.get("also", ())), row["page"])
        for name, row in sorted(rows.items(), key=lambda pair: alphabetical(pair[0]))
    )


def alphabetical(text: str) -> str:
    """Return what sorts a text as a dictionary does.

    >>> sorted(["Zeit", "Über", "Ast", "uhr"], key=alphabetical)
    ['Ast', 'Über', 'uhr', 'Zeit']
    """
    return "".join(c for c in normalize("NFD", text.casefold()) if not combining(c))
