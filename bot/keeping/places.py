"""Where something is asked: the server."""

from bot.desk import Desk
from bot.facts import Say
from bot.language.errors import NotUnderstoodError

__all__ = ["server_of"]


def server_of(desk: Desk) -> int:
    """Return the number of the server, or refuse where there is none."""
    if desk.server is None:
        here, wanted = Say("refused-direct"), Say("wanted-in-a-server")
        raise NotUnderstoodError(here, wanted, "server show")
    return desk.server
