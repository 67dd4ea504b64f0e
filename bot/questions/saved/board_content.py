"""What a board says, as facts of the question that it repeats. Words: ``board.ftl``."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date

from bot.facts import Name, Say, Says
from bot.layered import Brief, Care, Layered, Row, Table
from bot.preferences import Context
from bot.queries.card import CardQuery
from bot.queries.general import GuideQuery
from bot.queries.needs import NeedsQuery
from bot.questions.general.guide import GuidePages, guide_asked, tell_guide
from bot.questions.general.needs import tell as tell_needs
from bot.questions.general.needs_facts import Needs, needs
from bot.questions.general.needs_targets import OneNeed
from bot.questions.saved.board_many import (
    START_CARE,
    USUAL_TUBES,
    UV_CARE_ON_A_WALL,
    ManyCards,
    ManyNeeds,
    aim_said,
    tell_cards,
    tell_many_needs,
)
from bot.questions.saved.targets import moved_said
from bot.questions.saved.unable import unable
from bot.questions.shared import name_of
from bot.questions.uv import card as cards
from bot.questions.uv.card_table import Card, card
from bot.saved.boards import BoardNews, Topic
from calc.animals import animal_name

__all__ = [
    "Board",
    "FirstDay",
    "GuideBoard",
    "Welcome",
    "board_of",
    "each_alone",
    "tell_board",
    "with_news",
]

_PREVIEW = "board preview"
_FIRST_DAY_PAGES = (
    "measuring-the-distance",
    "measuring-temperatures",
    "warm-end-and-cool-end",
    "reading-a-uv-meter",
)


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


Board = Card | Needs | ManyCards | ManyNeeds | FirstDay | GuideBoard | Welcome


def board_of(
    topic: Topic, animals: Sequence[str], context: Context, command: str = _PREVIEW
) -> Board:
    """Return what a board of a topic says; some topics need an animal."""
    if topic is Topic.FIRST_DAY:
        return FirstDay()
    if topic is Topic.WELCOME:
        return Welcome()
    if topic is Topic.GUIDE:
        pages = guide_asked(GuideQuery.model_validate({}), context)
        assert isinstance(pages, GuidePages)
        return GuideBoard(pages, bool(context.guide_url))
    if not animals:
        example = f"board preview topic:{topic.value} animal:bearded dragon"
        raise unable(command, Say("board-no-animal"), example=example)
    named = [{"animal": animal_name(animal)} for animal in animals]
    if topic is Topic.TEMPERATURES:
        needed = [needs(NeedsQuery.model_validate(one), context) for one in named]
        return needed[0] if len(needed) == 1 else ManyNeeds(tuple(needed))
    if len(named) == 1:
        return card(CardQuery.model_validate(named[0]), context)
    few = [one | {"tubes": "; ".join(USUAL_TUBES)} for one in named]
    return ManyCards(tuple(card(CardQuery.model_validate(one), context) for one in few))


def each_alone(facts: Board) -> tuple[Board, ...]:
    """Return a board for each animal of one about several; else the board itself."""
    return facts.each if isinstance(facts, ManyCards | ManyNeeds) else (facts,)


def tell_board(facts: Board) -> Layered:
    """Tell what a board says, all of it in sight."""
    match facts:
        case Card():
            return _distances(facts)
        case Needs():
            return _temperatures(facts)
        case ManyCards():
            return tell_cards(facts)
        case ManyNeeds():
            return tell_many_needs(facts)
        case FirstDay():
            return _first_day()
        case Welcome():
            return _welcome()
        case GuideBoard():
            return _guide(facts)


@dataclass(frozen=True, slots=True)
class BoardChanged:
    """What changed of the targets of an animal on a board, and on which day.

    The animal is named where the board is about several.
    """

    day: date
    animal: Name | None
    changed: tuple[Say, ...]


def with_news(told: Layered, news: BoardNews | None, *, several: bool = False) -> Layered:
    """Return what a board says with what changed of it lately."""
    if news is None:
        return told
    changed = tuple(
        Say(
            "retarget-board",
            BoardChanged(news.day, name_of(animal) if several else None, moved_said(moved)),
        )
        for animal, moved in news.moved.items()
    )
    brief = replace(told.brief, range=(*changed, *told.brief.range))
    return replace(told, brief=brief)


def _distances(facts: Card) -> Layered:
    """Tell the whole table: it matters more on a wall than what the question tells around it."""
    told, say = cards.tell(facts), Says("card", facts)
    assert told.table is not None
    rows = (
        (Say("card-short", row) if row.any_length else first, *cells)
        for row, (first, *cells) in zip(facts.rows, told.table.rows, strict=True)
    )
    return replace(
        told,
        brief=replace(told.brief, range=(), steps=()),
        steps=(
            say("step-measure"),
            say("do-far" if facts.any_length else "step-start"),
            say("step-meter"),
        ),
        numbers=(
            *((Row(say("label-sure"), say("sure")),) if facts.sure is not None else ()),
            *cards.group_told(facts),
        ),
        table=replace(told.table, rows=tuple(rows)),
        care=UV_CARE_ON_A_WALL,
    )


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
        care=(START_CARE,),
        guide=("measuring-temperatures", "the-basking-spot"),
        sources=tuple(one.source for one in known if one.source),
        picture=tell_needs(facts).picture,
    )


def _row(one: OneNeed) -> tuple[Say, Say, Say]:
    assert one.known is not None
    return Say.by("needs-label", one.need, one), aim_said(one), one.known


def _first_day() -> Layered:
    return Layered(
        command=_PREVIEW,
        title=Say("board-day-title"),
        brief=Brief(head=Say("board-day-head")),
        steps=tuple(_days()),
        care=(START_CARE, Care(Say("care-off-first"))),
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
