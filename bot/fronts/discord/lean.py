"""Only what the bot reads of a server: that it is there.

Discord tells every channel, role and emoji of every server. A question brings what it needs of
them along, so they are not kept, and what changes them is not listened to; only that a channel
is gone, since a board or a reminder may be meant for it. Of messages only those are looked at
that talk to the bot; the others are dropped before anything is made of them.
"""

from typing import Any, Final

from discord.state import AutoShardedConnectionState

from bot.fronts.discord.talking import talks_to

__all__ = ["LeanState"]

_HEARD: Final = frozenset(
    {
        "READY",
        "RESUMED",
        "GUILD_CREATE",
        "GUILD_DELETE",
        "CHANNEL_DELETE",
        "THREAD_DELETE",
        "INTERACTION_CREATE",
        "MESSAGE_CREATE",
    }
)
_UNREAD: Final = (
    "channels",
    "threads",
    "emojis",
    "stickers",
    "features",
    "presences",
    "voice_states",
    "stage_instances",
    "soundboard_sounds",
    "guild_scheduled_events",
)


class LeanState(AutoShardedConnectionState[Any]):
    """The state of the client: its servers, without what is in them."""

    def __init__(self, **options: Any) -> None:
        super().__init__(**options)
        self.parsers = {name: parse for name, parse in self.parsers.items() if name in _HEARD}

    def parse_guild_create(self, data: Any) -> None:
        """Take a server that is there."""
        kept = {**data, **{name: [] for name in _UNREAD}}
        # The role of everybody, which bears the server's own id, is taken for granted.
        kept["roles"] = [role for role in data.get("roles", ()) if role["id"] == data["id"]]
        super().parse_guild_create(kept)

    def parse_message_create(self, data: Any) -> None:
        """Tell of a message that talks to the bot; nothing is made of any other."""
        me = self.self_id
        written = None if me is None else talks_to(data, me)
        if written is not None:
            self.dispatch("written", written)

    def parse_channel_delete(self, data: Any) -> None:
        """Tell of a channel that was deleted, by its number: it was never kept."""
        self.dispatch("channel_gone", int(data["id"]))

    def parse_thread_delete(self, data: Any) -> None:
        """Tell of a thread that was deleted."""
        self.dispatch("channel_gone", int(data["id"]))
