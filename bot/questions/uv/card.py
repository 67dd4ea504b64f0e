"""One table of distances for a group to pin: tubes and fixtures down, screens across.

Words: ``words/<language>/card.ftl``.
"""

from collections.abc import Iterator

from bot.command import Command
from bot.facts import Figure, Say, Says
from bot.layered import Brief, Layered, Row, Table
from bot.queries.card import CardQuery
from bot.questions.animals import GROUPS_OWN
from bot.questions.uv.card_picture import card_picture
from bot.questions.uv.card_table import Card, Fits, card
from bot.questions.uv.shared import UV_CARE, wish_assumed, wish_rows
from bot.questions.uv.tubes import length_value
from bot.reply import PartName, Picture

__all__ = ["CARD", "group_told", "tell"]

_SOURCES = ("keitz1971", "uv_distance_rows", "nearest_distance")


def tell(facts: Card) -> Layered:
    """Tell how many set-ups have a place, then the table."""
    say = Says("card", facts)
    return Layered(
        command="card",
        title=say("title"),
        brief=_brief(facts, say),
        steps=tuple(_steps(facts, say)),
        numbers=tuple(_numbers(facts, say)),
        table=_table(facts, say),
        care=UV_CARE,
        values=tuple(_values(facts)),
        guide=("measuring-the-distance", "screens", "reflectors", "reading-a-uv-meter"),
        sources=(
            *facts.wish.sources,
            *_SOURCES,
            *((GROUPS_OWN,) if facts.own else ()),
            *(("group_readings",) if facts.by_group else ()),
        ),
        picture=lambda teller: Picture.later(card_picture, facts, teller),
    )


def _brief(facts: Card, say: Says) -> Brief:
    head = say.by("head", facts.found)
    if facts.found is Fits.NONE:
        return Brief(head=head, steps=(say("do-ask"),))
    return Brief(
        head=head,
        range=(say("range"),),
        assumed=(
            *wish_assumed(facts.wish),
            *((say("assumed"),) if facts.any_length else ()),
            *((say("by-group"),) if facts.by_group else ()),
        ),
        steps=(say("do-far" if facts.any_length else "do-start"),),
    )


def _steps(facts: Card, say: Says) -> Iterator[Say]:
    yield say("step-measure")
    if facts.found is not Fits.NONE:
        yield say("step-far" if facts.any_length else "step-start")
    yield say("step-meter")
    yield say("step-again")


def _numbers(facts: Card, say: Says) -> Iterator[Row]:
    yield from wish_rows(facts.wish)
    if facts.sure is not None:
        yield Row(say("label-sure"), say("sure"))
    yield Row(Say("tubes-long-label"), Say("tubes-long", facts.tube))
    yield from group_told(facts)
    for own in facts.own:
        yield Row(say("label-own"), Say("owned-lamp-named", own))


def group_told(facts: Card) -> Iterator[Row]:
    """Yield by how many keepers of the group each class goes that goes by them."""
    for row in facts.by_group:
        yield Row(Say("tubes-group-label"), Say("card-group", row))


def _table(facts: Card, say: Says) -> Table:
    return Table(
        columns=(say("column"), *(Say("card-screen", screen) for screen in facts.screens)),
        rows=tuple(
            (Say("card-row", row), *(Say.by("card-cell", cell.verdict, cell) for cell in row.cells))
            for row in facts.rows
        ),
    )


def _values(facts: Card) -> Iterator[tuple[str, Figure | None]]:
    for row in facts.rows:
        yield from ((cell.key, cell.away) for cell in row.cells)
    yield length_value(facts.tube)


CARD = Command(
    name="card",
    query=CardQuery,
    facts=card,
    tell=tell,
    examples=(
        "card animal:bearded dragon",
        "card animal:leopard gecko screens:none; 45% tubes:2%; 6%",
    ),
    guide=("measuring-the-distance", "screens"),
    opens=(PartName.NUMBERS,),
)
