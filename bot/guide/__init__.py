"""The beginner guide: Markdown pages with front matter, a glossary, and what checks them.

A page is a file ``<slug>.md`` in this folder. Pages hold words only: every figure in them is a
range, given in both units, and labelled with how it is known.
"""

from bot.guide.loader import FIRST, Answers, Figure, GuideError, Page, Sketch, Topic, page, pages
from bot.guide.plain import INTRODUCTION, sections
from bot.guide.terms import Term, glossary

__all__ = [
    "FIRST",
    "INTRODUCTION",
    "Answers",
    "Figure",
    "GuideError",
    "Page",
    "Sketch",
    "Term",
    "Topic",
    "glossary",
    "page",
    "pages",
    "sections",
]
