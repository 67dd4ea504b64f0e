"""A reply as a card or a text: within the limits, nothing said that was not, no caution cut."""

import re
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.ask import ask
from bot.commands import COMMANDS, question_at
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.render.escaping import escape, units_long
from bot.render.post import MOST_CARD, Post, asked_of, render_post
from bot.reply import PageLink, Part, PartName, Reply, Role, Row, SourceLine, Table
from tests.discord.message_limits import COMPONENTS_V2, message_breaches
from tests.some import some

EXAMPLES = [example for command in COMMANDS for example in command.examples]
HOSTILE = (
    "**bold** __under__ ~~gone~~ ||spoiler|| `code` ```block``` # big\n# heading\n-# small\n> quote"
    " [name](http://evil.invalid) <@1> <@&2> <#3> @everyone @here <:emoji:4> <t:5:R> </cmd:6>"
)


def reply(**parts: Any) -> Reply:
    return Reply(**{"command": "distance", "status": "ok", "title": "T", "answer": "A.", **parts})


def whole(**parts: Any) -> Reply:
    """Return a reply of which every part stands open, as on a board."""
    return reply(opened=tuple(PartName), **parts)


def shown(post: Post) -> str:
    return "\n\n".join((post.brief, post.part))


def unescaped(text: str) -> str:
    """Return what a reader sees: Discord drops a backslash before any sign."""
    return re.sub(r"\\([^0-9A-Za-z\s])", r"\1", text)


def breaches(post: Post) -> list[Any]:
    texts = [text for text in (post.brief, post.part, post.asked) if text]
    parts = [{"type": 10, "content": text} for text in texts]
    return message_breaches({"flags": COMPONENTS_V2, "components": parts})


def digits(text: str) -> list[str]:
    return sorted(re.findall(r"\d+(?:[.,]\d+)?", text))


def brief_words(told: Reply) -> str:
    """Return everything that the brief says, with the numbers before its steps."""
    steps = [line for line in told.brief if line.role is Role.STEP]
    numbers = (str(number) for number, _ in enumerate(steps, 1))
    return "\n".join((*(line.text for line in told.brief), *numbers))


def part_words(part: Part) -> str:
    """Return everything that a part says, with the numbers before steps."""
    numbers = [str(n) for n, _ in enumerate(part.items, 1)] if part.name is PartName.STEPS else []
    return "\n".join((*part.items, *numbers))


words = st.text(max_size=600)
labelled = st.builds(Row, label=st.text(max_size=80), text=words)
tables = st.integers(1, 4).flatmap(
    lambda n: st.builds(
        Table,
        columns=st.tuples(*[st.text(max_size=20)] * n),
        rows=st.lists(st.tuples(*[st.text(max_size=60)] * n), max_size=30).map(tuple),
    )
)
replies = st.builds(
    Reply,
    command=st.just("distance"),
    status=st.just("ok"),
    title=st.text(min_size=1, max_size=400),
    answer=st.text(min_size=1, max_size=3000),
    rows=st.lists(labelled, max_size=20).map(tuple),
    table=st.none() | tables,
    steps=st.lists(words, max_size=10).map(tuple),
    cautions=st.lists(st.text(max_size=150), max_size=6).map(tuple),
    guide=st.lists(
        st.builds(PageLink, slug=st.just("a"), title=st.text(max_size=80), url=st.just("")),
        max_size=5,
    ).map(tuple),
    sources=st.lists(
        st.builds(SourceLine, key=st.just("k"), citation=words, kind=st.just("paper")),
        max_size=12,
    ).map(tuple),
    meant=st.builds(Question, st.just("distance"), st.fixed_dictionaries({"tube": words})),
)


@settings(max_examples=some(150), deadline=None)
@given(replies)
def test_any_reply_keeps_every_limit_and_every_caution(any_reply: Reply) -> None:
    for part in (None, *PartName):
        post = render_post(any_reply, part)
        assert breaches(post) == []
        if part is PartName.CARE:
            for caution in any_reply.cautions:
                assert escape(caution) in shown(post)


@given(words)
def test_escaped_text_reads_as_typed_and_formats_nothing(text: str) -> None:
    safe = escape(text)
    assert unescaped(safe) == text
    assert not re.search(r"(?<!\\)(?:\\\\)*[*_~`|\[\]<]", safe)
    assert not re.search(r"(?<!\\)://", safe)


@pytest.mark.parametrize("sign", ["*", "_", "~", "`", "|", "[", "<", "\\"])
def test_a_sign_of_markup_is_shown_and_not_obeyed(sign: str) -> None:
    assert escape(f"a{sign}b") == f"a\\{sign}b"
    assert unescaped(escape(f"a{sign}b")) == f"a{sign}b"


def test_hostile_text_stays_text_in_every_part() -> None:
    post = render_post(
        whole(
            title=HOSTILE,
            answer=HOSTILE,
            rows=(Row(label=HOSTILE, text=HOSTILE),),
            table=Table(columns=("a",), rows=(("`" * 3 + "@",),)),
            steps=(HOSTILE,),
            cautions=(HOSTILE,),
        )
    )
    text = shown(post)
    assert not re.search(r"(?<!\\)@(everyone|here)|(?<!\\)<[@#:t/]|http://", text)
    assert not re.search(r"^(#|-#|>)", text.removeprefix("### "), re.MULTILINE)
    assert text.count("```") == 2
    assert unescaped(text).count("**bold**") == 6


def test_the_worst_reply_is_cut_honestly_and_sources_go_first() -> None:
    line = "word " * 120
    post = render_post(
        whole(
            rows=tuple(Row(label=f"row {n}", text=line) for n in range(40)),
            steps=(line,) * 3,
            cautions=(line,) * 3,
            sources=(SourceLine(key="k", citation=line, kind="paper"),) * 40,
            meant=Question("distance", {"tube": "x" * 5000}),
        )
    )
    text = shown(post)
    assert breaches(post) == []
    assert text.count("- word") == 3
    assert re.search(r"… \(\+\d+\)", text)
    assert "(paper)" not in text
    assert post.asked.endswith("…")
    assert units_long(post.text) <= MOST_CARD


def test_cautions_that_no_message_holds_are_an_error_and_not_a_cut() -> None:
    with pytest.raises(ValueError, match="cautions"):
        render_post(whole(cautions=("x" * 1000,) * 4))


def test_a_part_stands_apart_from_the_brief_and_a_page_has_its_title() -> None:
    told = reply(steps=("Do it.",), why=("So it is.",))
    opened = render_post(told, PartName.WHY)
    assert (opened.brief, opened.part) == ("**A.**\n1. Do it.", "**Why**\n- So it is.")
    assert render_post(told.model_copy(update={"opened": (PartName.WHY,)})).brief.startswith(
        "### T\nA."
    )


def test_a_narrow_table_is_a_block_and_a_wide_one_is_lines() -> None:
    narrow = Table(columns=("in", "UVI"), rows=(("14", "4.2"), ("15", "3.9")))
    wide = Table(columns=("Question", "What it answers"), rows=(("distance", "how far " * 4),))
    one, two = render_post(whole(table=narrow)), render_post(whole(table=wide))
    assert "```\nin  UVI\n14  4.2\n15  3.9\n```" in one.brief
    assert "**Question** · **What it answers**\n- distance · how far" in two.brief


def test_a_page_with_an_address_is_a_link_and_one_without_is_a_name() -> None:
    pages = (
        PageLink(slug="screens", title="Screens", url="https://guide.invalid/screens.html"),
        PageLink(slug="nights", title="Nights", url=""),
    )
    post = render_post(whole(guide=pages))
    assert "- [Screens](https://guide.invalid/screens.html)\n- Nights" in post.brief


@pytest.mark.parametrize("line", [EXAMPLES[0], "check setup:a *bold* [lamp](x) \\\\ #1 @here"])
def test_the_answer_comes_first_and_the_question_last_to_be_read_back(line: str) -> None:
    answered = reply(meant=question_at(line))
    post = render_post(answered)
    assert post.text.startswith("**A.**\n")
    assert asked_of(post.text) == line
    assert asked_of(post.brief) == ""


@pytest.mark.parametrize("line", EXAMPLES)
def test_the_digits_are_those_of_the_reply(line: str) -> None:
    answered = ask(line, Preferences())
    brief = shown(render_post(answered.model_copy(update={"opened": ()})))
    assert digits(brief) == digits(brief_words(answered))
    for part in answered.parts:
        bare = answered.model_copy(update={"opened": ()})
        with_it = digits(shown(render_post(bare, part.name)))
        assert with_it == sorted(digits(brief) + digits(part_words(part)))


def test_the_kind_of_a_source_is_told_once() -> None:
    sources = (
        SourceLine(key="a", citation="from memory, no source read", kind="memory"),
        SourceLine(key="b", citation="Keitz (1971)", kind="handbook"),
    )
    told = shown(render_post(whole(sources=sources)))
    assert "-# from memory, no source read\n-# Keitz (1971) (handbook)" in told
