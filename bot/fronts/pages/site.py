"""The guide as a static site: every page as bytes, from the guide, the animals and the sources.

Flat and relative: the site works in any folder, from a file system, and without JavaScript.
"""

from collections.abc import Iterator
from datetime import date
from functools import cache
from importlib.resources import files
from pathlib import Path
from typing import TYPE_CHECKING, Any

from bot import guide
from bot.ask import ask
from bot.command import Command
from bot.commands import ALL_COMMANDS, COMMANDS, STORED_COMMANDS
from bot.fronts.pages.animals import sheet
from bot.fronts.pages.filled import filled_page
from bot.fronts.pages.pictures import Album
from bot.fronts.pages.search import search_script
from bot.fronts.pages.sketches import sketch
from bot.language.units import Units
from bot.preferences import Preferences
from bot.render.html import heading_id, render_figure, render_html, render_markdown
from bot.reply import Picture
from bot.saying.voice import voice
from calc.animals import Animal, animals
from calc.sources import Kind, Source, bibliography

if TYPE_CHECKING:
    from jinja2 import Environment
    from markupsafe import Markup

__all__ = ["build", "render_page", "render_site"]

# The dated examples of the guide are asked on one day, so that its pages do not change by waiting.
_AS_OF = Preferences(today=date(2026, 5, 2))

KINDS = {
    Kind.STANDARD: "Standards: agreed by a body that sets rules.",
    Kind.PAPER: "Papers: measured, written down and published.",
    Kind.HANDBOOK: "Handbooks and public guidance.",
    Kind.DATASET: "Open data: measurements anyone can read.",
    Kind.DERIVATION: "Worked out here from other sources, and checked.",
    Kind.COMMON_PRACTICE: "Common practice: keepers agree, but we have read no source.",
    Kind.MEMORY: "From memory: widely said, or our own judgement. We could not check it.",
}


def build(out_dir: Path) -> int:
    """Write the site into a folder and return the number of files."""
    out_dir.mkdir(parents=True, exist_ok=True)
    site = render_site()
    for name, content in site.items():
        (out_dir / name).write_bytes(content)
    return len(site)


def render_site(try_it: bool = False) -> dict[str, bytes]:
    """Return every file of the site by name.

    With ``try_it`` the pages link to the try-it page, which only the small server has.
    """
    album = Album()
    site = {name: html.encode() for name, html in _pages(try_it, album)} | album.files
    for asset in (files("bot.fronts.pages") / "assets").iterdir():
        site[asset.name] = asset.read_bytes()
    site["search-index.js"] = search_script().encode()
    return site


def render_page(template: str, try_it: bool, **values: Any) -> str:
    """Return one page of the site's look."""
    parts = [
        (topic, [page for page in guide.pages() if page.topic is topic]) for topic in guide.Topic
    ]
    shown = _environment().get_template(template)
    return shown.render(parts=[part for part in parts if part[1]], try_it=try_it, **values)


def _pages(try_it: bool, album: Album) -> Iterator[tuple[str, str]]:
    """Give every page; the pictures that they show are put into the album."""
    sheets = [sheet(animal) for animal in animals().values()]
    yield "index.html", render_page("index.html", try_it, sheets=sheets)
    pages = guide.pages()
    for number, page in enumerate(pages):
        yield (
            f"{page.slug}.html",
            render_page(
                "guide.html",
                try_it,
                page=page,
                body=render_markdown(_told(page), _figures(page, album, try_it)),
                answer=_answer(page, album),
                related=[guide.page(slug) for slug in page.related],
                sources=[bibliography()[key] for key in page.sources],
                before=pages[number - 1] if number else None,
                after=pages[number + 1] if number + 1 < len(pages) else None,
            ),
        )
    yield "questions.html", render_page("questions.html", try_it, asked_about=_questions())
    yield "animals.html", render_page("animals.html", try_it, sheets=sheets)
    for entry in sheets:
        name = f"animal-{entry.animal.slug}.html"
        distances = _distances(entry.animal)
        yield name, render_page("animal.html", try_it, sheet=entry, distances=distances)
    terms = [(term, guide.page(term.page)) for term in guide.glossary()]
    yield "glossary.html", render_page("glossary.html", try_it, terms=terms)
    yield "sources.html", render_page("sources.html", try_it, kinds=_sources_by_kind())
    yield "search.html", render_page("search.html", try_it, sheets=sheets, terms=terms)


def _told(page: guide.Page) -> str:
    return filled_page(page, voice(guide.FIRST, Units.IN)).body


def _figures(page: guide.Page, album: Album, try_it: bool) -> dict[str, "Markup"]:
    """Return the figures of a page by the heading that they stand under."""
    shown: dict[str, Markup] = {}
    for figure in page.figures:
        made = _picture(figure)
        image = album.put(made)
        if made and image:
            caption = _macros().caption(figure, try_it)
            shown[figure.under] = render_figure(image, made.alt, caption)
    return shown


def _picture(figure: guide.Figure) -> Picture | None:
    if figure.sketch:
        return sketch(figure.sketch)
    return ask(figure.ask or "", _AS_OF).picture


def _answer(page: guide.Page, album: Album) -> "Markup | None":
    """Return the answer to the page's example, unless it is a page of the guide itself."""
    reply = ask(page.example, _AS_OF)
    if reply.command == "guide":
        return None
    shown_above = page.example in [figure.ask for figure in page.figures]
    image = None if shown_above else album.put(reply.picture)
    # The page lists its own related pages right below.
    return render_html(reply.model_copy(update={"guide": ()}), level=3, image=image)


def _distances(animal: Animal) -> "Markup | None":
    """Return the distances of the usual tubes for an animal whose UV index is known."""
    if animal.uvi is None:
        return None
    reply = ask(f"card animal:{animal.name}", Preferences())
    return render_html(reply.model_copy(update={"guide": ()}))


def _questions() -> list[tuple[str, list[tuple[Command, list[guide.Page]]]]]:
    """Return the questions in parts, each question with the guide pages that go with it."""
    parts = {
        "Ask right away": [c for c in COMMANDS if c.who == "anyone"],
        "What is kept for you": [c for c in STORED_COMMANDS if c.who == "anyone"],
        "For moderators": [c for c in ALL_COMMANDS if c.who == "moderator"],
    }
    return [
        (heading, [(command, [guide.page(slug) for slug in command.guide]) for command in listed])
        for heading, listed in parts.items()
    ]


def _sources_by_kind() -> list[tuple[str, list[Source]]]:
    entries = sorted(bibliography().values(), key=lambda entry: entry.citation.casefold())
    grouped = [(told, [e for e in entries if e.kind is kind]) for kind, told in KINDS.items()]
    return [group for group in grouped if group[1]]


def _macros() -> Any:
    return _environment().get_template("macros.html").module


@cache
def _environment() -> "Environment":
    from jinja2 import Environment, PackageLoader, StrictUndefined

    environment = Environment(
        loader=PackageLoader("bot.fronts.pages"),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    environment.filters["anchor"] = heading_id
    return environment
