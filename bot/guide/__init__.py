"""The beginner guide: Markdown pages with front matter, a glossary, a search, and what checks them.

A page is a file ``<slug>.md`` in this folder. Pages hold words only: every figure in them is a
range, given in both units, and labelled with how it is known. The figures of an animal are left out
as ``{{ name }}`` and filled in where the page is told.
"""

from bot.guide.loader import (
    FIRST,
    HOLE,
    Answers,
    Figure,
    GuideError,
    Page,
    Sketch,
    Topic,
    page,
    pages,
)
from bot.guide.plain import INTRODUCTION, heading_in, pieces, sections
from bot.guide.terms import Term, alphabetical, glossary
from bot.guide.worries import of_worry, worries

__all__ = [
    "FIRST",
    "HOLE",
    "INTRODUCTION",
    "Answers",
    "Figure",
    "GuideError",
    "Page",
    "Sketch",
    "Term",
    "Topic",
    "alphabetical",
    "glossary",
    "heading_in",
    "of_worry",
    "page",
    "pages",
    "pieces",
    "sections",
    "worries",
]
