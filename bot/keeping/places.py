"""Where something is asked: the server and channel, or the keeper's enclosure of a name."""

from bot.desk import Desk
from bot.kept.keeper import Enclosure
from bot.language.errors import NotUnderstoodError
from bot.language.names import closest

__all__ = ["enclosure_asked", "server_of"]


def server_of(desk: Desk) -> int:
    """Return the number of the server, or refuse where there is none."""
    if desk.server is None:
        raise NotUnderstoodError("a direct message", "the same question in a server", "server show")
    return desk.server


async def enclosure_asked(desk: Desk, name: str, command: str) -> Enclosure:
    """Return the keeper's enclosure of this name, or the only one where no name was given."""
    names = await desk.store.enclosures.names(desk.keeper)
    wish = name or (names[0] if len(names) == 1 else "")
    found = await desk.store.enclosures.named(desk.keeper, wish) if wish else None
    if found is not None:
        return found
    if not names:
        raise NotUnderstoodError(
            name or "no name",
            "an enclosure that you keep, and you keep none yet",
            "mine save name:Pebble's box animal:bearded dragon",
        )
    near = closest(name, names) or names[0]
    raise NotUnderstoodError(
        name or "no name",
        f"one of your enclosures ({', '.join(names)})",
        f"{command} name:{near}",
        "name",
    )
