"""A page of the guide, or the list of pages, in the asker's language.

What an animal needs stands in no page: it is put into the page where that is told, as ``needs``
tells it, so that the two cannot differ.
"""

from collections.abc import Callable
from dataclasses import dataclass

from bot import guide
from bot.command import Command
from bot.facts import Length, Say, Says, metres
from bot.language.names import closest
from bot.language.shown import shown
from bot.layered import Brief, Layered, Row, Table
from bot.preferences import Context
from bot.queries.general import GuideQuery
from bot.queries.needs import NeedsQuery
from bot.questions.general.needs import known_rows, needs
from bot.refusal import RefusedError
from bot.reply import PartName
from calc.animals import animals
from calc.naming import find
from calc.setup.light import LAMPS_APART_M

__all__ = ["GUIDE", "GuidePages", "filled", "guide_asked", "tell_guide"]


@dataclass(frozen=True, slots=True)
class GuidePart:
    """A part of a page: its heading and its text."""

    heading: str
    text: Say


@dataclass(frozen=True, slots=True)
class GuideWords:
    """Words of a page as they are."""

    words: str


@dataclass(frozen=True, slots=True)
class GuideFilled:
    """Words and figures of a page in turn."""

    pieces: tuple[Say, ...]


@dataclass(frozen=True, slots=True)
class GuideLength:
    """A length that answers tell too, from the same place."""

    length: Length


@dataclass(frozen=True, slots=True)
class GuidePages:
    """The list of pages; ``first`` is where to begin."""

    count: int
    first: str
    slug: str
    pages: tuple[GuidePart, ...]


@dataclass(frozen=True, slots=True)
class GuidePage:
    """A page: its part that was asked for first, piece by piece, or what the page is about."""

    title: str
    part: str | None
    text: Say
    more: tuple[Say, ...]
    example: str
    rest: tuple[GuidePart, ...]
    pages: tuple[str, ...]
    sources: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class GuideUnread:
    """A page or a part that is not there; ``parts`` are those of the page, ``near`` a like name."""

    wish: str
    parts: str | None
    near: str | None
    example: str


def guide_asked(query: GuideQuery, context: Context) -> GuidePage | GuidePages:
    """Return a page, found by its name or its title, or the list."""
    language = context.language
    if not query.page.strip():
        found = guide.pages(language)
        listed = tuple(GuidePart(page.slug, _words(page.title)) for page in found)
        return GuidePages(len(found), found[0].title, found[0].slug, listed)
    page = guide.page(_slug(query.page, language), language)
    first = _part(query.part, page, language) if query.part.strip() else None
    parts = [
        GuidePart(heading, filled(text, page, context))
        for heading, text in guide.sections(page, language)
    ]
    texts = [text for heading, text in guide.sections(page, language) if heading == first]
    text, *more = guide.pieces(texts[0] if texts else page.summary)
    return GuidePage(
        title=page.title,
        part=first,
        text=filled(text, page, context),
        more=tuple(filled(piece, page, context) for piece in more),
        example=page.example,
        # What a phone does not show of the part at once stands whole before the others.
        rest=tuple(sorted((p for p in parts if more or p.heading != first), key=_is_not(first))),
        pages=(page.slug, *page.related),
        sources=page.sources,
    )


def _is_not(first: str | None) -> Callable[[GuidePart], bool]:
    return lambda part: part.heading != first


def filled(text: str, page: guide.Page, context: Context) -> Say:
    """Return words of a page with their figures, such as those of its animal, in their holes."""
    words, holes = guide.HOLE.split(text)[::2], guide.HOLE.findall(text)
    if not holes:
        return _words(text)
    told = {"lamps_apart": Say("guide-length", GuideLength(metres(LAMPS_APART_M)))}
    if page.animal is not None:
        animal = animals()[page.animal].name
        facts = needs(NeedsQuery.model_validate({"animal": animal}), context)
        told |= {name: row.say for name, row in known_rows(facts).items()}
        told["too_hot"] = Say("needs-too-hot", facts)
    pieces = [_words(words[0])]
    for hole, after in zip(holes, words[1:], strict=True):
        pieces += (told[hole], _words(after))
    return Say("guide-filled", GuideFilled(tuple(pieces)))


def _words(text: str) -> Say:
    return Say("guide-words", GuideWords(text))


def tell_guide(facts: GuidePage | GuidePages) -> Layered:
    """Return the page, or the table of pages."""
    say = Says("guide", facts)
    if isinstance(facts, GuidePages):
        return Layered(
            command="guide",
            title=say("list"),
            brief=Brief(head=say("count")),
            steps=(say("open"),),
            table=Table(
                columns=(say("column-page"), say("column-about")),
                rows=tuple(
                    (Say("guide-heading", part), Say("guide-part", part)) for part in facts.pages
                ),
            ),
        )
    return Layered(
        command="guide",
        title=say("title"),
        brief=Brief(head=say("text"), range=facts.more),
        steps=(say("try"),),
        numbers=tuple(
            Row(Say("guide-heading", part), Say("guide-part", part)) for part in facts.rest
        ),
        guide=facts.pages,
        sources=facts.sources,
        lines=(facts.example,),
    )


def _part(wish: str, page: guide.Page, language: str) -> str:
    """Return the heading of a part of the page; one of the English page means its twin."""
    parts = [heading for heading, _ in guide.sections(page, language)]
    first = [heading for heading, _ in guide.sections(guide.page(page.slug))]
    headings = {heading.lower(): twin for heading, twin in zip(first, parts, strict=True)}
    headings |= {heading.lower(): heading for heading in parts}
    name = " ".join(wish.lower().split())
    found = headings.get(name) or headings.get(closest(name, headings) or "")
    if found is None:
        unread = GuideUnread(shown(wish), "; ".join(parts), None, f"guide {page.slug}")
        raise RefusedError(unread, _unread, "part")
    return found


def _slug(wish: str, language: str) -> str:
    name = "-".join(wish.lower().split())
    pages = guide.pages(language)
    by_name = {page.slug: page.slug for page in pages}
    for page in (*guide.pages(), *pages):
        by_name["-".join(page.title.lower().split())] = page.slug
    if name in by_name:
        return by_name[name]
    within = [page.slug for page in pages if name in page.slug]
    if len(within) == 1:
        return within[0]
    if worried := guide.of_worry(wish):
        return worried
    animal = find(wish)
    if animal and (about := next((p.slug for p in pages if p.animal == animal.slug), None)):
        return about
    near = by_name.get(closest(name, by_name) or "")
    unread = GuideUnread(shown(wish), None, near, f"guide {near or pages[0].slug}")
    raise RefusedError(unread, _unread, "page")


def _unread(facts: GuideUnread) -> Layered:
    say = Says("guide", facts)
    return Layered(
        command="guide",
        status="problem",
        title=say("unread"),
        brief=Brief(
            head=say("no-part") if facts.parts else say("no-page"), steps=(say("instead"),)
        ),
        steps=(say("instead"),),
    )


GUIDE = Command(
    name="guide",
    query=GuideQuery,
    facts=guide_asked,
    tell=tell_guide,
    examples=("guide", "guide screens"),
    positional="page",
    opens=tuple(PartName),
    one_part="part",
)
