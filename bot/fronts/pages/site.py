"""The guide as a static site: every page as bytes, from the guide, the animals and the sources.

Relative, with a folder for each language after the first: the site works in any folder, from a
file system, and without JavaScript.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import fields
from datetime import date
from functools import partial
from importlib.resources import files
from pathlib import Path
from xml.etree import ElementTree

from markupsafe import Markup

from bot import guide
from bot.ask import ask
from bot.facts import Say
from bot.fronts.pages.animals import COLUMNS, Sheet, sheets
from bot.fronts.pages.asking import questions_in_parts
from bot.fronts.pages.edition import Edition, editions
from bot.fronts.pages.filled import filled_page
from bot.fronts.pages.found import Found
from bot.fronts.pages.home import Home, home, home_picture
from bot.fronts.pages.pictures import inline
from bot.fronts.pages.search import search_script
from bot.fronts.pages.sketches import sketch
from bot.fronts.pages.takeaway import (
    ARCHIVE,
    ICON,
    MANIFEST,
    OFFLINE,
    WORKER,
    archive,
    icon,
    manifest,
    worker,
)
from bot.guide import Sketch
from bot.linking import source_lines
from bot.preferences import FIRST, Preferences
from bot.render.html import render_html, render_markdown
from bot.render.picture.inks import page_inks
from bot.render.picture.lettering import font_files
from bot.reply import Picture, Reply, SourceLine
from calc.animal import Animal
from calc.animals import animals
from calc.sources import Kind, Source, bibliography

__all__ = ["SEARCH", "Site", "build", "search_page"]

# The dated examples of the guide are asked on one day, so that its pages do not change by waiting.
_AS_OF = date(2026, 5, 2)

SEARCH = "search.html"
_MISSING = "404.html"
_Maker = Callable[[], str]


def build(out_dir: Path, address: str = "") -> int:
    """Write the site into a folder and return the number of files.

    With its ``address`` it has a map of its pages for search engines, and cards for chats.
    """
    site = Site(address=address)
    for name, content in site.items():
        path = out_dir / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content)
    return len(site)


class Site(Mapping[str, bytes]):
    """Every file of the site by name, each made when it is first read.

    With ``try_it`` the pages link to the try-it page, which only the small server has. One that is
    ``archived`` is what the archive of any other holds.
    """

    def __init__(self, try_it: bool = False, address: str = "", archived: bool = False) -> None:
        self._makers: dict[str, Callable[[], bytes]] = {}
        self._made: dict[str, bytes] = {}
        for edition in editions(try_it, address, archived):
            made = dict(_Pages(edition).all())
            made["search-index.js"] = partial(search_script, edition)
            made[MANIFEST] = partial(manifest, edition)
            for name, maker in made.items():
                self._makers[f"{edition.folder}{name}"] = partial(_encoded, maker)
            if address:
                for name, card in _cards(edition):
                    self._makers[f"{edition.folder}{name}"] = card
        if address:
            pages = [name for name in self._makers if name.endswith(".html")]
            self._makers["sitemap.xml"] = partial(_sitemap, address, tuple(pages))
        for asset in (files("bot.fronts.pages") / "assets").iterdir():
            self._makers[asset.name] = asset.read_bytes
        self._makers["inks.css"] = partial(_encoded, page_inks)
        for font in map(Path, font_files()):
            self._makers[font.name] = font.read_bytes
        self._makers[ICON] = icon
        self._makers[WORKER] = lambda: worker(self).encode()
        if not archived:
            self._makers[ARCHIVE] = lambda: archive(Site(archived=True))

    def __getitem__(self, name: str) -> bytes:
        if name not in self._made:
            self._made[name] = self._makers[name]()
        return self._made[name]

    def __iter__(self) -> Iterator[str]:
        return iter(self._makers)

    def __len__(self) -> int:
        return len(self._makers)

    def __contains__(self, name: object) -> bool:
        return name in self._makers


def _encoded(maker: Callable[[], str]) -> bytes:
    return maker().encode()


def _cards(edition: Edition) -> Iterator[tuple[str, Callable[[], bytes]]]:
    """Give the maker of each page's card for chats: its title beside its picture, or home's."""

    def card(title: str, picture: Picture | None) -> bytes:
        from bot.render.picture.share import share_card

        drawing = (picture and picture.drawing) or home_picture(edition).drawing
        assert drawing is not None
        return share_card(title, drawing)

    def of_animal(slug: str) -> bytes:
        sheet = next(each for each in sheets(edition.language) if each.animal.slug == slug)
        return card(sheet.name, sheet.reply.picture)

    def of_page(page: guide.Page) -> bytes:
        return card(page.title, pages.first(page))

    pages = _Pages(edition)
    yield "share.png", lambda: card(edition.say(Say("page-described")), None)
    for page in guide.pages(edition.language):
        yield f"share-{page.slug}.png", partial(of_page, page)
    for slug in animals():
        yield f"share-animal-{slug}.png", partial(of_animal, slug)


def _sitemap(address: str, pages: Iterable[str]) -> bytes:
    """Return the map of the site for search engines (the protocol of sitemaps.org, 0.9)."""
    top = ElementTree.Element("urlset", {"xmlns": "http://www.sitemaps.org/schemas/sitemap/0.9"})
    for name in pages:
        if name.rpartition("/")[2] != _MISSING:
            place = ElementTree.SubElement(ElementTree.SubElement(top, "url"), "loc")
            place.text = address + name.removesuffix("index.html")
    return b'<?xml version="1.0" encoding="utf-8"?>\n' + ElementTree.tostring(top)


def search_page(edition: Edition, typed: str, found: Sequence[Found]) -> str:
    """Return the page of what was looked up."""
    glossary = guide.glossary(edition.language)
    terms = [(term, guide.page(term.page, edition.language)) for term in glossary]
    return edition.page(
        SEARCH, SEARCH, sheets=sheets(edition.language), terms=terms, typed=typed, found=found
    )


class _Pages:
    """Every page of an edition."""

    def __init__(self, edition: Edition) -> None:
        self._edition = edition
        # The examples are typed in inches, which only the first language's readers use.
        units = None if edition.language == FIRST else edition.voice.units
        self._asking = Preferences(language=edition.language, today=_AS_OF, forced_units=units)
        glossary = guide.glossary(edition.language)
        self._terms = [(term, guide.page(term.page, edition.language)) for term in glossary]

    @property
    def _sheets(self) -> tuple[Sheet, ...]:
        return sheets(self._edition.language)

    def all(self) -> Iterator[tuple[str, _Maker]]:
        """Give the maker of every page by its name."""
        one = self._one
        yield one("index.html", lambda: _fields(home(self._edition)))
        yield one(_MISSING, lambda: _lost(self._edition))
        yield from self._guide()
        yield one("questions.html", lambda: {"asked_about": questions_in_parts(self._edition)})
        yield one("animals.html", lambda: {"sheets": self._sheets, "columns": self._columns()})
        for slug in animals():
            yield f"animal-{slug}.html", partial(self._animal, slug)
        yield one("glossary.html", lambda: {"terms": self._terms})
        yield one(OFFLINE, lambda: {"archive": ARCHIVE})
        yield one("sources.html", lambda: {"kinds": self._sources_by_kind()})
        yield one(SEARCH, lambda: {"sheets": self._sheets, "terms": self._terms})

    def _one(self, name: str, values: Callable[[], dict[str, object]]) -> tuple[str, _Maker]:
        return name, lambda: self._edition.page(name, name, **values())

    def _columns(self) -> list[str]:
        return [self._edition.say(told) for told in COLUMNS.values()]

    def _animal(self, slug: str) -> str:
        sheet = next(each for each in self._sheets if each.animal.slug == slug)
        return self._edition.page(
            "animal.html",
            f"animal-{slug}.html",
            sheet=sheet,
            distances=self._distances(sheet.animal),
            picture=inline(sheet.reply.picture),
            beginners=next(
                (p for p in guide.pages(self._edition.language) if p.animal == slug), None
            ),
        )

    def _guide(self) -> Iterator[tuple[str, _Maker]]:
        around = (None, *guide.pages(self._edition.language), None)
        for before, page, after in zip(around, around[1:-1], around[2:], strict=False):
            assert page is not None
            yield f"{page.slug}.html", partial(self._guide_page, page, before, after)

    def _guide_page(
        self, page: guide.Page, before: guide.Page | None, after: guide.Page | None
    ) -> str:
        edition = self._edition
        return edition.page(
            "guide.html",
            f"{page.slug}.html",
            page=page,
            contents=[told for told, _ in guide.sections(page, edition.language)[1:]],
            topic=edition.topic(page.topic),
            body=render_markdown(filled_page(page, edition.voice).body, self._figures(page)),
            answer=self._answer(page),
            related=[guide.page(slug, edition.language) for slug in page.related],
            sources=self._sources(page.sources),
            before=before,
            after=after,
        )

    def _figures(self, page: guide.Page) -> dict[str, Markup]:
        """Return the figures of a page by the heading that they stand under.

        A page without one has that of its example, before its first part.
        """
        drawn = self._edition.say(Say("page-drawn"))
        example = guide.Figure.model_construct(under="", caption=drawn, ask=page.example)
        shown: dict[str, Markup] = {}
        for figure in page.figures or (example,):
            picture = inline(self._picture(figure))
            if picture:
                shown[figure.under] = self._edition.illustration(figure, picture)
        return shown

    def first(self, page: guide.Page) -> Picture | None:
        """Return the picture that a page is shown by: its first, else that of its example."""
        for figure in page.figures:
            return self._picture(figure)
        return ask(page.example, self._asking).picture

    def _picture(self, figure: guide.Figure) -> Picture | None:
        if figure.sketch:
            return sketch(figure.sketch, self._edition.voice)
        return ask(figure.ask or "", self._asking).picture

    def _answer(self, page: guide.Page) -> Markup | None:
        """Return the answer to the page's example, unless it is a page of the guide itself."""
        reply = ask(page.example, self._asking)
        if reply.command == "guide":
            return None
        asked = [figure.ask for figure in page.figures]
        shown_above = not asked or page.example in asked
        picture = None if shown_above else inline(reply.picture)
        # The page lists its own related pages right below.
        return render_html(_unlinked(reply), level=3, picture=picture)

    def _distances(self, animal: Animal) -> Markup | None:
        """Return the distances of the usual tubes for an animal whose UV index is known."""
        if animal.uvi is None:
            return None
        return render_html(_unlinked(ask(f"card animal:{animal.name}", self._asking)))

    def _sources(self, keys: Iterable[str]) -> tuple[SourceLine, ...]:
        return source_lines(keys, self._edition.say)

    def _sources_by_kind(self) -> list[tuple[str, list[Source]]]:
        entries = sorted(bibliography().values(), key=lambda entry: entry.citation.casefold())
        grouped = [(_kind(kind), [e for e in entries if e.kind is kind]) for kind in Kind]
        return [(self._edition.say(told), some) for told, some in grouped if some]


def _lost(edition: Edition) -> dict[str, object]:
    return {
        "told": edition.say(Say("page-missing")),
        "picture": inline(sketch(Sketch.LAYOUT, edition.voice)),
    }


def _fields(made: Home) -> dict[str, object]:
    return {field.name: getattr(made, field.name) for field in fields(made)}


def _kind(kind: Kind) -> Say:
    return Say.by("page-kind", kind)


def _unlinked(reply: Reply) -> Reply:
    return reply.model_copy(update={"guide": ()})
