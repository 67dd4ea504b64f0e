"""Replies and guide pages as HTML: nothing typed becomes markup, no figure is lost."""

import re
from xml.etree.ElementTree import Element

import html5lib
import pytest
from hypothesis import given
from hypothesis import strategies as st
from markupsafe import Markup

from bot import guide
from bot.ask import ask
from bot.preferences import Preferences
from bot.render.html import environment, heading_id, render_html, render_markdown
from bot.reply import PageLink, PartName, Picture, Reply, Row, SourceLine, Table

DRAWN = Markup("<svg></svg>")
# HTML5 cannot hold these; a browser replaces them, so does the parser.
NOT_IN_HTML = re.compile("[\x00-\x08\x0b-\x1f\x7f-\x9f\ufdd0-\ufdef\ufffe\uffff]")


def tree(html: str) -> Element:
    parser = html5lib.HTMLParser(strict=True, namespaceHTMLElements=False)
    parsed: Element = parser.parseFragment(html)
    return parsed


def words(html: str) -> list[str]:
    return " ".join(tree(html).itertext()).split()


def everywhere(text: str) -> Reply:
    return Reply(
        command="convert",
        status="ok",
        title=text,
        answer=text,
        rows=(Row(label=text, text=text),),
        table=Table(columns=(text,), rows=((text,),)),
        steps=(text,),
        cautions=(text,),
        guide=(PageLink(slug="screens", title=text, url=text),),
        sources=(SourceLine(key=text, citation=text, kind=text),),
        picture=Picture(alt=text),
    )


@given(st.text(max_size=60) | st.text(alphabet="<>&\"'/=! ab\n-[]()`*_", max_size=60))
def test_no_text_of_a_reply_becomes_markup(text: str) -> None:
    harmless = tree(render_html(everywhere("x"), picture=DRAWN))
    shown = tree(render_html(everywhere(NOT_IN_HTML.sub("?", text)), picture=DRAWN))
    kinds = sorted(e.tag for e in shown.iter() if e.tag != "br")
    assert kinds == sorted(e.tag for e in harmless.iter())
    assert all(set(e.attrib) <= ALLOWED for e in shown.iter())


ALLOWED = {"class", "lang", "href", "src", "alt", "scope", "tabindex", "role", "aria-label"}


def test_the_title_is_a_heading_of_the_level_asked_for() -> None:
    for level in (1, 2, 3):
        html = render_html(everywhere("x"), level=level)
        found = [e.tag for e in tree(html).iter() if re.fullmatch(r"h\d", str(e.tag))]
        assert found == [f"h{level}"]


def test_the_brief_is_in_sight_and_every_part_opens_at_a_click() -> None:
    reply = everywhere("x").model_copy(update={"opened": (PartName.NUMBERS,), "why": ("y",)})
    html = tree(render_html(reply))
    assert [e.text for e in html.iter("summary")] == ["Steps", "Why", "Care", "Sources"]
    assert [e.tag for e in html.iter() if e.attrib.get("class") == "numbers"] == ["div"]
    assert [e.attrib["class"] for e in html.iter("p")] == ["answer", "caution"]
    assert next(html.iter("ol")).attrib["class"] == "brief"


def test_a_picture_is_shown_only_where_there_is_one() -> None:
    assert "<svg" not in render_html(everywhere("x"))
    assert '<figure class="picture"><svg></svg></figure>' in render_html(
        everywhere("x"), picture=DRAWN
    )


def test_a_picture_has_its_caption() -> None:
    macros = environment().get_template("reply.html").module
    html = macros.figure(DRAWN, Markup("told"))  # type: ignore[attr-defined]
    assert "<svg></svg><figcaption>told</figcaption>" in html


def test_a_figure_stands_at_the_end_of_its_part_and_an_unknown_one_nowhere() -> None:
    text = "First.\n\n## One\n\nA.\n\n### Deeper\n\nB.\n\n## Two\n\nC.\n"
    figures = {"One": Markup("<hr>"), "Two": Markup("<br>"), "Three": Markup("<img>")}
    found = [e.tag for e in tree(render_markdown(text, figures)).iter()][1:]
    assert found == ["p", "h2", "p", "h3", "p", "hr", "h2", "p", "br"]


def test_an_empty_reply_has_no_empty_parts() -> None:
    html = render_html(Reply(command="help", status="problem", title="T", answer="A"))
    assert html.replace("\n", "") == (
        '<article class="reply reply-problem" lang="en"><h2>T</h2><p class="answer">A</p></article>'
    )


def test_what_stands_around_an_answer_is_told_in_the_askers_language() -> None:
    asked = ask("night room:64F animal:bearded dragon", Preferences(language="de"))
    html = render_html(asked, picture=DRAWN)
    assert ' lang="de">' in html
    assert "<b>Vorsicht:</b>" in html
    for word in ("Caution", "common practice</span>"):
        assert word not in html


@pytest.mark.parametrize(
    "hostile",
    [
        "<script>alert(1)</script>",
        "[a](javascript:alert(1))",
        "![a](http://evil.example/x.png)",
        "<http://evil.example>",
        "a <img src=x onerror=alert(1)>",
        "[a]: http://evil.example\n[a]",
        "&lt;b&gt; <b>",
    ],
)
def test_markdown_lets_no_html_link_or_image_through(hostile: str) -> None:
    found = {str(e.tag) for e in tree(render_markdown(hostile)).iter()}
    assert found <= {"DOCUMENT_FRAGMENT", "p"}


@pytest.mark.parametrize("page", guide.pages(), ids=lambda page: page.slug)
def test_a_guide_page_keeps_every_word_and_can_be_linked_to(page: guide.Page) -> None:
    html = render_markdown(page.body)
    assert isinstance(html, Markup)
    body = re.sub(r"^(#+|-|\d+\.) |\*\*|`", "", page.body, flags=re.M)
    assert "".join(words(html)) == "".join(body.split())
    ids = [e.attrib["id"] for e in tree(html).iter() if "id" in e.attrib]
    assert ids == [heading_id(heading) for heading, _ in guide.sections(page)[1:]]
    assert len(set(ids)) == len(ids)
