"""What a reply points to: guide pages and sources, by slug and key."""

from collections.abc import Callable, Iterable
from functools import cache

from bot.facts import Say
from bot.preferences import FIRST
from bot.reply import PageLink, SourceLine
from calc.sources import Kind, source
from calc.tables import ROOT

__all__ = ["page_links", "source_lines"]

_TITLE = "title: "


def page_links(slugs: Iterable[str], guide_url: str, language: str = FIRST) -> tuple[PageLink, ...]:
    """Return links to guide pages by their titles; without a site the address stays empty."""
    base = guide_url.rstrip("/")
    folder = f"{base}/" if language == FIRST else f"{base}/{language}/"
    return tuple(
        PageLink(
            slug=slug, title=_title(slug, language), url=f"{folder}{slug}.html" if base else ""
        )
        for slug in slugs
    )


@cache
def _title(slug: str, language: str) -> str:
    """Return a page's title from the head of its file: an answer that links to it needs no more."""
    told, first = (ROOT / "bot/guide" / folder / f"{slug}.md" for folder in (language, ""))
    with (told if told.is_file() else first).open(encoding="utf-8") as lines:
        found = next(line for line in lines if line.startswith(_TITLE))
    return found.removeprefix(_TITLE).strip().strip('"')


def source_lines(keys: Iterable[str], say: Callable[[Say], str]) -> tuple[SourceLine, ...]:
    """Return sources by key, each once, in the order first met; their kind is said."""
    found = (source(key) for key in dict.fromkeys(keys))
    return tuple(SourceLine(key=s.key, citation=s.citation, kind=say(_kind(s.kind))) for s in found)


def _kind(kind: Kind) -> Say:
    return Say.by("source", kind)
