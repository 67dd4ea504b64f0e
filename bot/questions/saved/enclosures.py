"""The enclosures of a keeper: which one is meant, and one of them taken away.

Words: ``words/<language>/mine-remove.ftl``.
"""

from dataclasses import dataclass

from bot.command import Command
from bot.desk import Desk
from bot.facts import Says
from bot.language.names import closest
from bot.layered import Brief, Layered
from bot.preferences import Context
from bot.queries.mine import RemoveQuery
from bot.questions.saved.refused import Why, refused
from bot.refusal import RefusedError
from bot.saved.keeper import Enclosure

__all__ = ["MINE_REMOVE", "EnclosureGone", "enclosure_asked", "remove", "tell_removed"]

_SAVE = "mine save name:Pebble's box animal:bearded dragon"


async def enclosure_asked(desk: Desk, name: str, command: str) -> Enclosure:
    """Return the keeper's enclosure of this name, or the only one where no name was given."""
    names = await desk.store.enclosures.names(desk.keeper)
    wish = name or (names[0] if len(names) == 1 else "")
    found = await desk.store.enclosures.named(desk.keeper, wish) if wish else None
    if found is None:
        raise no_such(name, names, command)
    return found


def no_such(name: str, names: tuple[str, ...], command: str) -> RefusedError:
    """Return the refusal of a name that no enclosure has."""
    if not names:
        return refused(command, Why.NO_ENCLOSURE, _SAVE)
    near = closest(name, names) or names[0]
    why = Why.OTHER_ENCLOSURE if name else Why.WHICH_ENCLOSURE
    return refused(command, why, f"{command} name:{near}", "name", name, names)


@dataclass(frozen=True, slots=True)
class EnclosureGone:
    """An enclosure that was taken away, with what hung on it."""

    name: str
    readings: int


async def remove(query: RemoveQuery, context: Context, desk: Desk) -> EnclosureGone:
    """Take an enclosure away with all that hangs on it."""
    found = await desk.store.enclosures.named(desk.keeper, query.name)
    if found is None or not await desk.store.enclosures.remove(desk.keeper, query.name):
        names = await desk.store.enclosures.names(desk.keeper)
        raise no_such(query.name, names, "mine remove")
    return EnclosureGone(found.name, len(found.readings))


def tell_removed(facts: EnclosureGone) -> Layered:
    """Tell what is gone."""
    say = Says("mine-remove", facts)
    return Layered(
        command="mine remove",
        title=say("title"),
        brief=Brief(head=say("head"), range=(say("with"),)),
        steps=(say("step"),),
    )


MINE_REMOVE = Command(
    name="mine remove",
    deletes=True,
    query=RemoveQuery,
    stored=remove,
    tell=tell_removed,
    examples=("mine remove name:Spare box",),
)
