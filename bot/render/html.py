"""Reply → an HTML fragment, and a guide page's Markdown → HTML. Everything is escaped.

The markup stands in ``templates/reply.html``: no script, no style, no address of its own; the
classes are for a style sheet elsewhere.
"""

import re
from collections.abc import Callable, Mapping
from functools import cache
from itertools import zip_longest
from types import MappingProxyType
from typing import Any

from jinja2 import ChoiceLoader, Environment, PackageLoader, StrictUndefined
from markdown_it import MarkdownIt
from markdown_it.token import Token
from markupsafe import Markup

from bot.brief import brief_of
from bot.facts import Say
from bot.language.units import Units
from bot.reply import Reply
from bot.saying.voice import voice

__all__ = ["environment", "heading_id", "render_html", "render_markdown"]

_NOTHING = Markup("")
_NO_FIGURES: Mapping[str, Markup] = MappingProxyType({})
_BEFORE_UNIT = re.compile(r"(?<=\d) (?=(?:in|ft|cm|mm|m|°F|°C|W|h|min)\b|%)")


@cache
def environment(*packages: str) -> Environment:
    """Return where templates are found: those of the packages, then those of an answer."""
    loaders = [PackageLoader(package) for package in (*packages, "bot.render")]
    made = Environment(
        loader=ChoiceLoader(loaders),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    made.filters["anchor"] = heading_id
    made.filters["lines"] = _lines
    return made


def render_html(
    reply: Reply, level: int = 2, picture: Markup | None = None, sheet: str = ""
) -> Markup:
    """Return the reply as one article whose title is a heading of this level.

    ``picture`` is the reply's picture as a part of the page, where there is one to show, and
    ``sheet`` the address of its care sheet.
    """
    say = _around(reply.around)
    told: Markup = _template().reply(reply, brief_of(reply), level, picture, say, sheet)
    return told


@cache
def _around(language: str) -> Callable[[str], str]:
    """Return who says what stands around an answer."""
    told = voice(language, Units.CM)
    return lambda key: told.text(Say(key))


@cache
def _template() -> Any:
    return environment().get_template("reply.html").module


def render_markdown(text: str, figures: Mapping[str, Markup] = _NO_FIGURES) -> Markup:
    """Return Markdown as HTML: HTML inside it is shown as text, headings can be linked to.

    ``figures`` holds what is put below the part with a heading; that of no heading stands before
    the first.
    """
    reader = _reader()
    tokens = reader.parse(text)
    shown: list[Token] = []
    waiting = figures.get("", _NOTHING)
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


def _lines(text: str) -> Markup:
    return Markup("<br>").join(_together(text).split("\n"))


def _together(text: str) -> str:
    """Return the text with no line break between a number and its unit."""
    return _BEFORE_UNIT.sub("\u00a0", text)
