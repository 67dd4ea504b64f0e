"""Where a question about saved data is asked: by whom, where, with what right, of which store."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from typing import TYPE_CHECKING

from bot.saved.group import By

if TYPE_CHECKING:
    from bot.database.store import Store

__all__ = ["LOCAL", "PICTURES", "PINNING", "Desk"]

# Without one of these nothing can be written into a channel.
_WRITING = frozenset({"View Channel", "Send Messages", "Send Messages in Threads"})

LOCAL = 0
"""The number of the keeper and of the group at a console."""

PINNING = "Pin Messages"
"""The right without which a board is posted and not pinned, as Discord calls it."""

PICTURES = "Attach Files"
"""The right without which a board is posted without its picture, as Discord calls it."""


@dataclass(frozen=True, slots=True)
class Desk:
    """Who asks, and where.

    ``server`` and ``channel`` are None in direct messages; at a console the server is LOCAL and
    there is no channel. ``moderator`` is decided by the front, question by question. ``pages_of``
    are the guide pages that the answers of each question point to; the door fills them in. A thread
    has its channel as ``parent``.
    ``lacking`` names the rights that the bot lacks in the channel to write there by itself.
    """

    store: "Store"
    keeper: int
    server: int | None
    channel: int | None
    moderator: bool
    now: datetime
    lacking: tuple[str, ...] = ()
    parent: int | None = None
    pages_of: Mapping[str, tuple[str, ...]] = field(default_factory=dict)

    @property
    def may_write(self) -> bool:
        """Say whether the bot may write into the channel by itself."""
        return not _WRITING & set(self.lacking)

    @property
    def by(self) -> By:
        """The one who changes something, and when."""
        return By(self.keeper, self.now)
