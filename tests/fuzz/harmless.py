"""What must hold of every answer, whatever was typed: no limit broken, no markup let through."""

import re
import unicodedata
from html.parser import HTMLParser

from bot.ask import ask
from bot.fronts.discord.question import Question
from bot.preferences import Preferences
from bot.render.escaping import units_long
from bot.render.html import render_html
from bot.render.post import MOST_CARD, render_post
from bot.render.text import render_text
from bot.reply import PartName, Reply

__all__ = ["assert_harmless", "assert_plain", "assert_same_when_asked_again"]

# What Discord would format, ping or link if it stood there without a backslash before it.
_ACTIVE = re.compile(r"<[@#:/a]|@everyone|@here|\]\(|~~|\|\||```|__|://")
# What the renderer sets itself: a table as a block, a link to a page of a group's own site.
_OWN = re.compile(r"^```$.*?^```$|\[[^\]]*\]\(https?://[\w.:/-]+\.html\)", re.M | re.S)
_ESCAPED = re.compile(r"\\.", re.DOTALL)
_TAGS = {
    *(
        "article",
        "section",
        "div",
        "h2",
        "h3",
        "p",
        "br",
        "b",
        "strong",
        "span",
        "a",
        "ol",
        "ul",
        "li",
    ),
    *("dl", "dt", "dd", "details", "summary", "table", "thead", "tbody", "tr", "th", "td"),
}
_ATTRIBUTES = {"class", "lang", "href", "scope", "tabindex", "role", "aria-label"}


def assert_harmless(reply: Reply) -> None:
    """Assert that every renderer shows the reply within limits and as plain text."""
    for text in _texts(reply):
        assert_plain(text)
    _assert_plain_lines(render_text(reply))
    _Reader().read(str(render_html(reply)))
    for part in (None, *PartName):
        post = render_post(reply, part)
        assert units_long(post.text) <= MOST_CARD
        bare = _ESCAPED.sub("", _OWN.sub("", f"{post.brief}\n{post.part}"))
        found = _ACTIVE.search(bare)
        assert not found, found
    assert Reply.model_validate_json(reply.model_dump_json()).answer == reply.answer


def assert_same_when_asked_again(reply: Reply, given: dict[str, str]) -> None:
    """Assert that the button under an answer asks what was asked, or does not know the question."""
    again = Question.read(reply.asked)
    if reply.status == "ok" and again is not None:
        repeated = ask(Question(again.command, again.given), Preferences())
        assert _said(repeated) == _said(reply), (again, given)


def _said(reply: Reply) -> Reply:
    """Return what the answer says: not in which words it was asked, and how they were taken."""
    rows = tuple(row for row in reply.rows if row.label not in ("Understood as", "Assumed"))
    return reply.model_copy(update={"meant": None, "rows": rows})


def assert_plain(text: str) -> None:
    """Assert that a text holds no markup of Discord, HTML or terminals."""
    assert not re.search(r"[<>`|\\]|@|\*\*|__|~~", text), text
    _assert_plain_lines(text)


def _assert_plain_lines(text: str) -> None:
    odd = [c for c in text if c != "\n" and unicodedata.category(c) in ("Cc", "Cf", "Cs", "Co")]
    assert not odd, (odd, text)


def _texts(reply: Reply) -> list[str]:
    rows = [part for row in reply.rows for part in (row.label, row.text)]
    return [reply.title, reply.answer, *rows, *reply.steps, *reply.cautions]


class _Reader(HTMLParser):
    """Reads the fragment as a browser would, and knows every tag that may be there."""

    def read(self, html: str) -> None:
        self.feed(html)
        self.close()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        assert tag in _TAGS, tag
        for name, value in attrs:
            assert name in _ATTRIBUTES, (tag, name)
            if name == "href":
                # A group may have a site of its own; its address was checked when it was set.
                assert re.fullmatch(r"(https?://[\w.:/-]+/)?[a-z0-9-]+\.html", value or ""), value
