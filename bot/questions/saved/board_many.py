"""A board about several animals: of each the figures that matter most. Words: ``board.ftl``."""

from dataclasses import dataclass

from bot.facts import Name, Say, Says, Share
from bot.layered import Brief, Care, Layered, Row
from bot.questions.general.needs_facts import Needs
from bot.questions.general.needs_targets import OneNeed
from bot.questions.uv import card as cards
from bot.questions.uv.card_picture import cells_in_words
from bot.questions.uv.card_table import Card, CardRow
from bot.questions.uv.shared import UV_CARE
from calc.uv.lamp import Fixture

__all__ = [
    "START_CARE",
    "USUAL_TUBES",
    "UV_CARE_ON_A_WALL",
    "BoardLamp",
    "BoardNeed",
    "ManyCards",
    "ManyNeeds",
    "aim_said",
    "tell_cards",
    "tell_many_needs",
]

START_CARE = Care(Say("board-care-start"))
# Each caution once: all of a board is in sight.
UV_CARE_ON_A_WALL = tuple(Care(care.say) for care in UV_CARE)
USUAL_TUBES = ("12%", "6%")
"""There is room for the two usual classes of tube."""
_PREVIEW = "board preview"


@dataclass(frozen=True, slots=True)
class ManyCards:
    """The distances of several animals; ``each`` are those of one."""

    each: tuple[Card, ...]

    @property
    def animals(self) -> tuple[Name, ...]:
        """Return the animals in their order."""
        return tuple(one.animal for one in self.each if one.animal is not None)


@dataclass(frozen=True, slots=True)
class ManyNeeds:
    """What several animals need; ``each`` is what one of them does."""

    each: tuple[Needs, ...]

    @property
    def animals(self) -> tuple[Name, ...]:
        """Return the animals in their order."""
        return tuple(one.animal for one in self.each)

    @property
    def any_unchecked(self) -> bool:
        """Say whether a figure is from memory, which a star marks."""
        return any(need.is_unchecked for one in self.each for need in one.needs)


@dataclass(frozen=True, slots=True)
class BoardLamp:
    """A lamp for one of several animals: a class, or the group's own by its name."""

    own: str | None
    strength: Share
    cells: tuple[Say, ...]


@dataclass(frozen=True, slots=True)
class BoardNeed:
    """What one of several animals is given, and whether that is unchecked."""

    label: Say
    aim: Say | None
    is_unchecked: bool


def tell_cards(facts: ManyCards) -> Layered:
    """Tell how far the usual tubes go for each animal."""
    say = Says("board", facts)
    one = facts.each[0]
    return Layered(
        command=_PREVIEW,
        title=say("distances-title"),
        brief=Brief(
            head=say("distances-head"),
            assumed=(Say("card-assumed"),) if one.any_length else (),
        ),
        numbers=(
            *(_distances_of(each) for each in facts.each),
            *(row for row in cards.group_told(one)),
        ),
        steps=(
            Say("card-step-measure"),
            Say("card-do-far" if one.any_length else "card-step-start"),
            say("step-distance"),
        ),
        care=UV_CARE_ON_A_WALL,
        guide=cards.tell(one).guide,
        sources=tuple(dict.fromkeys(x for each in facts.each for x in cards.tell(each).sources)),
    )


def _distances_of(facts: Card) -> Row:
    # In a plain fixture a lamp hangs closer, so that these distances are on the safe side.
    rows = [row for row in facts.rows if row.own or row.fixture is Fixture.POLISHED]
    first, *more = (Say("board-lamp", _lamp_line(row, facts)) for row in rows)
    return Row(Say("board-label-distances", facts), first, tuple(more))


def _lamp_line(row: CardRow, facts: Card) -> BoardLamp:
    return BoardLamp(row.own, row.strength, cells_in_words(row, facts.screens))


def tell_many_needs(facts: ManyNeeds) -> Layered:
    """Tell what each animal is given."""
    say = Says("board", facts)
    sources = (need.source for one in facts.each for need in one.needs if need.source)
    return Layered(
        command=_PREVIEW,
        title=say("needs-title"),
        brief=Brief(
            head=say("needs-head"), range=(say("needs-star"),) if facts.any_unchecked else ()
        ),
        numbers=tuple(map(_needs_of, facts.each)),
        steps=(say("step-order"), say("step-needs")),
        care=(START_CARE,),
        guide=("measuring-temperatures", "the-basking-spot"),
        sources=tuple(dict.fromkeys(sources)),
    )


def _needs_of(facts: Needs) -> Row:
    first, *more = (Say("board-need", _need_line(one)) for one in facts.needs)
    return Row(Say("board-label-needs", facts), first, tuple(more))


def _need_line(one: OneNeed) -> BoardNeed:
    aim = None if one.figure is None else aim_said(one)
    return BoardNeed(Say.by("needs-label", one.need, one), aim, one.is_unchecked)


def aim_said(one: OneNeed) -> Say:
    """Return a figure that is known, as it is aimed for."""
    if one.uvi is not None:
        return Say("needs-aim-uvi", one)
    return Say("needs-aim-warmth", one) if one.light is None else Say("needs-aim-light", one)
