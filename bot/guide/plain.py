"""A page without its Markdown: headings and plain text, for replies that hold no markup."""

import re
from collections.abc import Iterator
from functools import cache
from typing import TYPE_CHECKING

from bot.guide.loader import FIRST, Page
from bot.guide.loader import page as a_page

if TYPE_CHECKING:
    from markdown_it.token import Token

__all__ = ["INTRODUCTION", "heading_in", "pieces", "sections"]

INTRODUCTION = "To begin with"
# About four lines of a phone: a longer paragraph is told in more than one piece.
_LONG_PIECE = 150
_SENTENCE_ENDS = re.compile(r"(?<=[.!?”]) (?=[A-ZÄÖÜ“])")
_INTRODUCTIONS = {"de": "Zum Anfang"}


@cache
def sections(page: Page, language: str = FIRST) -> tuple[tuple[str, str], ...]:
    """Return (heading, plain text) for each part; the text before the first heading comes first.

    Paragraphs are a blank line apart, list items a line; code is put in quotation marks.
    """
    from markdown_it import MarkdownIt

    parts: list[tuple[str, list[str]]] = [(_INTRODUCTIONS.get(language, INTRODUCTION), [])]
    lists: list[int | None] = []
    mark, heading = "", False
    for token in MarkdownIt().parse(page.body):
        match token.type:
            case "heading_open":
                heading = True
            case "bullet_list_open":
                lists.append(None)
            case "ordered_list_open":
                lists.append(0)
            case "bullet_list_close" | "ordered_list_close":
                lists.pop()
                parts[-1][1].append("")
            case "list_item_open":
                mark = _next_mark(lists)
            case "inline" if heading:
                parts.append((_plain(token), []))
                heading = False
            case "inline":
                parts[-1][1].append(mark + _plain(token))
                if not lists:
                    parts[-1][1].append("")
                mark = ""
            case _:
                pass
    return tuple((title, "\n".join(lines).strip()) for title, lines in parts if lines)


def pieces(text: str) -> Iterator[str]:
    """Yield a part's text in pieces that make sense one by one: a few sentences, or a list item.

    >>> list(pieces("It depends.\\n\\n1. Look.\\n2. Read."))
    ['It depends.', '1. Look.', '2. Read.']
    """
    for line in filter(None, text.split("\n")):
        piece = ""
        for sentence in _SENTENCE_ENDS.split(line):
            more = f"{piece} {sentence}".strip()
            if piece and len(more) > _LONG_PIECE:
                yield piece
                more = sentence
            piece = more
        yield piece


def heading_in(slug: str, heading: str, language: str) -> str:
    """Return the heading in a language of a part of a page, by its English one."""
    first = [each for each, _ in sections(a_page(slug))]
    here = [each for each, _ in sections(a_page(slug, language), language)]
    return dict(zip(first, here, strict=True)).get(heading, heading)


def _next_mark(lists: list[int | None]) -> str:
    count = lists[-1]
    if count is None:
        return "- "
    lists[-1] = count + 1
    return f"{count + 1}. "


def _plain(token: "Token") -> str:
    return "".join(
        f"“{child.content}”" if child.type == "code_inline" else child.content or _space(child.type)
        for child in token.children or ()
    )


def _space(kind: str) -> str:
    return " " if kind in ("softbreak", "hardbreak") else ""
