"""What a reply points to: guide pages and sources, by slug and key."""

from collections.abc import Iterable

from bot.guide import FIRST, page
from bot.reply import PageLink, SourceLine
from calc.sources import source

__all__ = ["page_links", "source_lines"]


def page_links(slugs: Iterable[str], guide_url: str, language: str = FIRST) -> tuple[PageLink, ...]:
    """Return links to guide pages by their titles; without a site the address stays empty."""
    base = guide_url.rstrip("/")
    return tuple(
        PageLink(
            slug=slug, title=page(slug, language).title, url=f"{base}/{slug}.html" if base else ""
        )
        for slug in slugs
    )


def source_lines(keys: Iterable[str]) -> tuple[SourceLine, ...]:
    """Return sources by key, each once, in the order first met."""
    found = (source(key) for key in dict.fromkeys(keys))
    return tuple(SourceLine(key=s.key, citation=s.citation, kind=s.kind.value) for s in found)
