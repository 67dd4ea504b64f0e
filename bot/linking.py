"""What a reply points to: guide pages and sources, by slug and key."""

from collections.abc import Callable, Iterable

from bot.facts import Say
from bot.guide import FIRST, page
from bot.reply import PageLink, SourceLine
from calc.sources import Kind, source

__all__ = ["page_links", "source_lines"]


def page_links(slugs: Iterable[str], guide_url: str, language: str = FIRST) -> tuple[PageLink, ...]:
    """Return links to guide pages by their titles; without a site the address stays empty."""
    base = guide_url.rstrip("/")
    folder = f"{base}/" if language == FIRST else f"{base}/{language}/"
    return tuple(
        PageLink(
            slug=slug, title=page(slug, language).title, url=f"{folder}{slug}.html" if base else ""
        )
        for slug in slugs
    )


def source_lines(keys: Iterable[str], say: Callable[[Say], str]) -> tuple[SourceLine, ...]:
    """Return sources by key, each once, in the order first met; their kind is said."""
    found = (source(key) for key in dict.fromkeys(keys))
    return tuple(SourceLine(key=s.key, citation=s.citation, kind=say(_kind(s.kind))) for s in found)


def _kind(kind: Kind) -> Say:
    return Say.by("source", kind)
