"""Where something is asked: the server."""

from bot.desk import Desk
from bot.language.errors import NotUnderstoodError

__all__ = ["server_of"]


def server_of(desk: Desk) -> int:
    """Return the number of the server, or refuse where there is none."""
    if desk.server is None:
        raise NotUnderstoodError("a direct message", "the same question in a server", "server show")
    return desk.server
