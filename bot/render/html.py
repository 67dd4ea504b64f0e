"""Reply → an HTML fragment, and a guide page's Markdown → HTML. Everything is escaped.

No script, no style, no address of its own: the classes are for a style sheet elsewhere.
"""

import re
from collections.abc import Iterable
from functools import cache
from itertools import pairwise

from markdown_it import MarkdownIt
from markdown_it.token import Token
from markupsafe import Markup

from bot.reply import PageLink, Reply, Row, SourceLine, Table

__all__ = ["heading_id", "render_html", "render_markdown"]

_BEFORE_UNIT = re.compile(r"(?<=\d) (?=(?:in|ft|cm|mm|m|°F|°C|W|h|min)\b|%)")


def render_html(reply: Reply, level: int = 2, picture: str = "") -> Markup:
    """Return the reply as one article whose title is a heading of this level.

    ``picture`` is the address of the reply's picture, where there is one to show.
    """
    parts = [
        _element(f"h{level}", reply.title),
        _element("p", reply.answer, "answer"),
        _picture(reply, picture),
        _rows(reply.rows),
        _table(reply.table, reply.title),
        _part("Do this", "steps", level, _list("ol", reply.steps)),
        _part("Take care", "cautions", level, _list("ul", reply.cautions)),
        _part("Read more", "more", level, _items("ul", map(_page_link, reply.guide))),
        _sources(reply.sources),
    ]
    return Markup('<article class="reply reply-{}">{}</article>').format(
        reply.status, Markup("").join(parts)
    )


def render_markdown(text: str) -> Markup:
    """Return Markdown as HTML: HTML inside it is shown as text, headings can be linked to."""
    reader = _reader()
    tokens = reader.parse(text)
    for opening, inline in pairwise(tokens):
        if opening.type == "heading_open":
            opening.attrSet("id", heading_id(_plain(inline)))
        for child in inline.children or ():
            if child.type == "text":
                child.content = _together(child.content)
    # The renderer escapes every text; with html off nothing else gets through.
    return Markup(reader.renderer.render(tokens, reader.options, {}))


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
    inner = Markup("").join(Markup("<li>{}</li>").format(item) for item in items)
    return Markup("<{0}>{1}</{0}>").format(name, inner) if inner else Markup("")


def _list(name: str, texts: Iterable[str]) -> Markup:
    return _items(name, map(_lines, texts))


def _part(title: str, css: str, level: int, inner: Markup) -> Markup:
    if not inner:
        return inner
    return Markup('<section class="{}">{}{}</section>').format(
        css, _element(f"h{level + 1}", title), inner
    )


def _rows(rows: tuple[Row, ...]) -> Markup:
    if not rows:
        return Markup("")
    pairs = (
        Markup("<div><dt>{}</dt><dd>{}</dd></div>").format(row.label, _lines(row.text))
        for row in rows
    )
    return Markup('<dl class="rows">{}</dl>').format(Markup("").join(pairs))


def _table(table: Table | None, name: str) -> Markup:
    if table is None:
        return Markup("")
    heads = Markup("").join(Markup('<th scope="col">{}</th>').format(c) for c in table.columns)
    lines = Markup("").join(
        Markup("<tr>{}</tr>").format(
            Markup("").join(Markup("<td>{}</td>").format(_lines(cell)) for cell in row)
        )
        for row in table.rows
    )
    # Focusable, so that a wide table can be scrolled from the keyboard.
    return Markup(
        '<div class="wide" tabindex="0" role="region" aria-label="{}">'
        "<table><thead><tr>{}</tr></thead><tbody>{}</tbody></table></div>"
    ).format(name, heads, lines)


def _picture(reply: Reply, address: str) -> Markup:
    if reply.picture is None or not address:
        return Markup("")
    return Markup('<img class="picture" src="{}" alt="{}">').format(address, reply.picture.alt)


def _page_link(page: PageLink) -> Markup:
    return Markup('<a href="{}">{}</a>').format(page.url or f"{page.slug}.html", page.title)


def _sources(lines: tuple[SourceLine, ...]) -> Markup:
    if not lines:
        return Markup("")
    return Markup(
        '<details class="sources"><summary>Where the numbers come from</summary>{}</details>'
    ).format(_items("ul", map(_source, lines)))


def _source(line: SourceLine) -> Markup:
    return Markup('{} <span class="kind">{}</span>').format(line.citation, line.kind)
