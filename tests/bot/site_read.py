"""The site, each page made once when a test reads it, and read as a browser reads it."""

from collections.abc import Iterator
from functools import cache
from xml.etree.ElementTree import Element

import html5lib

from bot.fronts.pages.edition import Edition, editions
from bot.fronts.pages.site import Site

SITE = Site()
# The same with links to the page to try questions, as the small server has it.
SERVED = Site(try_it=True)
PAGES = sorted(name for name in SITE if name.endswith(".html"))
EDITIONS = editions()
FOLDERS = [edition.folder for edition in EDITIONS]


@cache
def tree(name: str) -> Element:
    parser = html5lib.HTMLParser(strict=True, namespaceHTMLElements=False)
    parsed: Element = parser.parse(SITE[name].decode())
    return parsed


def ids(name: str) -> list[str]:
    return [e.attrib["id"] for e in tree(name).iter() if "id" in e.attrib]


def text(name: str) -> str:
    return " ".join("".join(tree(name).itertext()).split())


def edition_of(name: str) -> Edition:
    return next(e for e in reversed(EDITIONS) if name.startswith(e.folder))


def folder_of(name: str) -> str:
    return edition_of(name).folder


def shown_of(element: Element) -> Iterator[str]:
    """Give every text but what is typed, cited, drawn in a picture, and what says it is English."""
    english = element.attrib.get("lang") in ("en", "la") or element.attrib.get("class") == "sources"
    if not english and element.tag.rpartition("}")[2] not in (
        *("pre", "code", "script", "dt"),
        "svg",
    ):
        yield element.text or ""
        for inside in element:
            yield from shown_of(inside)
    yield element.tail or ""
