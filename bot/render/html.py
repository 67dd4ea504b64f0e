"""Reply → an HTML fragment, and a guide page's Markdown → HTML. Everything is escaped.

No script, no style, no address of its own: the classes are for a style sheet elsewhere.
"""

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from itertools import groupby, zip_longest
from types import MappingProxyType

from markdown_it import MarkdownIt
from markdown_it.token import Token
from markupsafe import Markup

from bot.brief import brief_of
from bot.reply import Line, PageLink, Part, PartName, Reply, Role, Row, SourceLine, Table

__all__ = ["Image", "heading_id", "render_figure", "render_html", "render_markdown"]

_NOTHING = Markup("")
_NO_FIGURES: Mapping[str, Markup] = MappingProxyType({})
_STRONG = (Role.DANGER, Role.CALL)
_CLASSES = {Role.HEAD: "answer"}
_BEFORE_UNIT = re.compile(r"(?<=\d) (?=(?:in|ft|cm|mm|m|°F|°C|W|h|min)\b|%)")


@dataclass(frozen=True, slots=True)
class Image:
    """Where a picture is fetched, and its size in pixels where that is known."""

    address: str
    width: int = 0
    height: int = 0


def render_html(reply: Reply, level: int = 2, image: Image | None = None) -> Markup:
    """Return the reply as one article whose title is a heading of this level.

    ``image`` is the reply's picture, where there is one to show.
    """
    shown = render_figure(image, reply.picture.alt) if reply.picture and image else _NOTHING
    parts = [
        _element(f"h{level}", reply.title),
        *_brief(brief_of(reply)),
        shown,
        *(_part(reply, part) for part in reply.parts),
    ]
    return Markup('<article class="reply reply-{}">{}</article>').format(
        reply.status, _NOTHING.join(parts)
    )


def _brief(lines: Sequence[Line]) -> Iterator[Markup]:
    """Return the brief: the steps as one list, every other line by itself."""
    for role, some in groupby(lines, key=lambda line: line.role):
        texts = [line.text for line in some]
        if role is Role.STEP:
            yield Markup('<ol class="brief">{}</ol>').format(
                _NOTHING.join(Markup("<li>{}</li>").format(_lines(text)) for text in texts)
            )
            continue
        tag = Markup("<strong>{}</strong>") if role in _STRONG else Markup("{}")
        mark = Markup("<b>Caution:</b> ") if role is Role.CAUTION else _NOTHING
        for text in texts:
            yield Markup('<p class="{}">{}{}</p>').format(
                _CLASSES.get(role, role), mark, tag.format(_lines(text))
            )


def render_figure(image: Image, alt: str, caption: Markup = _NOTHING) -> Markup:
    """Return a picture with its caption and the way to its full size."""
    size = _NOTHING
    if image.width and image.height:
        size = Markup(' width="{}" height="{}"').format(image.width, image.height)
    return Markup(
        '<figure class="picture"><img src="{0}" alt="{1}"{2}>'
        '<figcaption>{3} <a href="{0}">Open the picture</a></figcaption></figure>'
    ).format(image.address, alt, size, caption)


def render_markdown(text: str, figures: Mapping[str, Markup] = _NO_FIGURES) -> Markup:
    """Return Markdown as HTML: HTML inside it is shown as text, headings can be linked to.

    ``figures`` holds what is put below the part with a heading.
    """
    reader = _reader()
    tokens = reader.parse(text)
    shown: list[Token] = []
    waiting = _NOTHING
    for token, following in zip_longest(tokens, tokens[1:]):
        if token.type == "heading_open":
            heading = _plain(following)
            token.attrSet("id", heading_id(heading))
            if token.tag == "h2":
                shown.append(_ready_made(waiting))
                waiting = figures.get(heading, _NOTHING)
        for child in token.children or ():
            if child.type == "text":
                child.content = _together(child.content)
        shown.append(token)
    shown.append(_ready_made(waiting))
    # The renderer escapes every text; with html off nothing else gets through.
    return Markup(reader.renderer.render(shown, reader.options, {}))


def _ready_made(markup: Markup) -> Token:
    return Token("html_block", "", 0, content=markup)


def heading_id(heading: str) -> str:
    """Return the anchor of a heading, such as ``what-a-screen-does``.

    Examples
    --------
    >>> heading_id("Inside, or on top?")
    'inside-or-on-top'
    """
    kept = "".join(c if c.isalnum() else " " for c in heading.lower())
    return "-".join(kept.split())


@cache
def _reader() -> MarkdownIt:
    return MarkdownIt("commonmark", {"html": False}).disable(["image", "link", "autolink"])


def _plain(token: Token) -> str:
    return "".join(child.content for child in token.children or ())


def _element(name: str, text: str, css: str = "") -> Markup:
    head = Markup('<{} class="{}">').format(name, css) if css else Markup("<{}>").format(name)
    return Markup("{}{}</{}>").format(head, _lines(text), name)


def _lines(text: str) -> Markup:
    return Markup("<br>").join(_together(text).split("\n"))


def _together(text: str) -> str:
    """Return the text with no line break between a number and its unit."""
    return _BEFORE_UNIT.sub("\u00a0", text)


def _items(name: str, items: Iterable[Markup]) -> Markup:
    inner = _NOTHING.join(Markup("<li>{}</li>").format(item) for item in items)
    return Markup("<{0}>{1}</{0}>").format(name, inner) if inner else _NOTHING


def _list(name: str, texts: Iterable[str]) -> Markup:
    return _items(name, map(_lines, texts))


def _part(reply: Reply, part: Part) -> Markup:
    """Return a part that opens at a click; what is the answer itself stands open."""
    match part.name:
        case PartName.NUMBERS:
            inner = _rows(reply.rows) + _table(reply.table, reply.title)
        case PartName.STEPS:
            inner = _list("ol", part.items)
        case PartName.SOURCES:
            inner = _items("ul", (*map(_page_link, reply.guide), *map(_source, reply.sources)))
        case _:
            inner = _list("ul", part.items)
    if part.name in reply.opened:
        return Markup('<div class="{}">{}</div>').format(part.name, inner)
    return Markup('<details class="{}"><summary>{}</summary>{}</details>').format(
        part.name, part.label, inner
    )


def _rows(rows: tuple[Row, ...]) -> Markup:
    if not rows:
        return _NOTHING
    pairs = (
        Markup("<div><dt>{}</dt><dd>{}</dd></div>").format(row.label, _lines(row.text))
        for row in rows
    )
    return Markup('<dl class="rows">{}</dl>').format(_NOTHING.join(pairs))


def _table(table: Table | None, name: str) -> Markup:
    if table is None:
        return _NOTHING
    heads = _NOTHING.join(Markup('<th scope="col">{}</th>').format(c) for c in table.columns)
    lines = _NOTHING.join(
        Markup("<tr>{}</tr>").format(
            _NOTHING.join(Markup("<td>{}</td>").format(_lines(cell)) for cell in row)
        )
        for row in table.rows
    )
    # Focusable, so that a wide table can be scrolled from the keyboard.
    return Markup(
        '<div class="wide" tabindex="0" role="region" aria-label="{}">'
        "<table><thead><tr>{}</tr></thead><tbody>{}</tbody></table></div>"
    ).format(name, heads, lines)


def _page_link(page: PageLink) -> Markup:
    return Markup('<a href="{}">{}</a>').format(page.url or f"{page.slug}.html", page.title)


def _source(line: SourceLine) -> Markup:
    return Markup('{} <span class="kind">{}</span>').format(line.citation, line.kind)
