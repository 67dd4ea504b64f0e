"""What a board says, as facts of the question that it repeats. Words: ``board.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date

from bot.facts import Say
from bot.layered import Brief, Care, Layered, Table
from bot.preferences import Context
from bot.queries.card import CardQuery
from bot.queries.general import GuideQuery
from bot.queries.needs import NeedsQuery
from bot.questions.general.guide import GuidePages, guide_asked, tell_guide
from bot.questions.general.needs_facts import Needs, needs
from bot.questions.general.needs_targets import OneNeed
from bot.questions.saved.targets import moved_said
from bot.questions.saved.unable import unable
from bot.questions.uv import card as cards
from bot.questions.uv.card_table import Card, card
from bot.saved.boards import BoardNews, Topic
from calc.animals import animal_name

__all__ = ["Board", "FirstDay", "GuideBoard", "Welcome", "board_of", "tell_board", "with_news"]

_PREVIEW = "board preview"
_FIRST_DAY_PAGES = (
    "measuring-the-distance",
    "measuring-temperatures",
    "warm-end-and-cool-end",
    "reading-a-uv-meter",
)
_START = Care(Say("board-care-start"))


@dataclass(frozen=True, slots=True)
class FirstDay:
    """What is measured on the first day, of whatever animal."""


@dataclass(frozen=True, slots=True)
class GuideBoard:
    """The pages of the guide; ``linked``: as links to a site of the group's own."""

    pages: GuidePages
    linked: bool


@dataclass(frozen=True, slots=True)
class Welcome:
    """What the bot is for, with buttons that begin to ask."""


Board = Card | Needs | FirstDay | GuideBoard | Welcome


def board_of(topic: Topic, animal: str | None, context: Context, command: str = _PREVIEW) -> Board:
    """Return what a board of a topic says; some topics need an animal."""
    if topic is Topic.FIRST_DAY:
        return FirstDay()
    if topic is Topic.WELCOME:
        return Welcome()
    if topic is Topic.GUIDE:
        pages = guide_asked(GuideQuery.model_validate({}), context)
        assert isinstance(pages, GuidePages)
        return GuideBoard(pages, bool(context.guide_url))
    if animal is None:
        example = f"board preview topic:{topic.value} animal:bearded dragon"
        raise unable(command, Say("board-no-animal"), example=example)
    named = {"animal": animal_name(animal)}
    if topic is Topic.DISTANCES:
        return card(CardQuery.model_validate(named), context)
    return needs(NeedsQuery.model_validate(named), context)


def tell_board(facts: Board) -> Layered:
    """Tell what a board says, all of it in sight and without a picture."""
    match facts:
        case Card():
            return replace(cards.tell(facts), picture=None)
        case Needs():
            return _temperatures(facts)
        case FirstDay():
            return _first_day()
        case Welcome():
            return _welcome()
        case GuideBoard():
            return _guide(facts)


@dataclass(frozen=True, slots=True)
class BoardChanged:
    """What changed of the targets of a board, and on which day."""

    day: date
    changed: tuple[Say, ...]


def with_news(told: Layered, news: BoardNews | None) -> Layered:
    """Return what a board says with what changed of it lately."""
    if news is None:
        return told
    facts = BoardChanged(news.day, moved_said(news.moved))
    brief = replace(told.brief, range=(Say("retarget-board", facts), *told.brief.range))
    return replace(told, brief=brief)


def _temperatures(facts: Needs) -> Layered:
    known = [one for one in facts.needs if one.figure is not None]
    return Layered(
        command=_PREVIEW,
        title=Say("needs-title", facts),
        brief=Brief(head=Say("board-needs")),
        table=Table(
            columns=(
                Say("board-column-what"),
                Say("board-column-aim"),
                Say("board-column-known"),
            ),
            rows=tuple(_row(one) for one in known),
        ),
        steps=(Say("board-step-order"), Say("needs-step-measure", facts)),
        care=(_START,),
        guide=("measuring-temperatures", "the-basking-spot"),
        sources=tuple(one.source for one in known if one.source),
    )


def _row(one: OneNeed) -> tuple[Say, Say, Say]:
    assert one.known is not None
    return Say.by("needs-label", one.need, one), _aim(one), one.known


def _aim(one: OneNeed) -> Say:
    if one.uvi is not None:
        return Say("needs-aim-uvi", one)
    return Say("needs-aim-warmth", one) if one.light is None else Say("needs-aim-light", one)


def _first_day() -> Layered:
    return Layered(
        command=_PREVIEW,
        title=Say("board-day-title"),
        brief=Brief(head=Say("board-day-head")),
        steps=tuple(_days()),
        care=(_START, Care(Say("care-off-first"))),
        guide=_FIRST_DAY_PAGES,
        sources=("common_practice",),
    )


def _welcome() -> Layered:
    return Layered(
        command=_PREVIEW,
        title=Say("board-welcome-title"),
        brief=Brief(head=Say("board-welcome-head"), range=(Say("board-welcome-alone"),)),
        steps=(
            Say("board-welcome-animal"),
            Say("board-welcome-check"),
            Say("board-welcome-reading"),
            Say("board-welcome-wrong"),
        ),
        care=(Care(Say("board-welcome-urgent")),),
        guide=("planning-a-set-up", "measuring-temperatures"),
    )


def _days() -> Iterator[Say]:
    yield Say("board-day-before")
    yield Say("board-day-tube")
    yield Say("board-day-basking")
    yield Say("board-day-cool")
    yield Say("board-day-warm")
    yield Say("board-day-night")
    yield Say("board-day-lights")
    yield Say("board-day-shade")
    yield Say("board-day-again")


def _guide(facts: GuideBoard) -> Layered:
    told = replace(tell_guide(facts.pages), command=_PREVIEW)
    if not facts.linked:
        return told
    slugs = tuple(page.heading for page in facts.pages.pages)
    return replace(told, table=None, guide=slugs)
