"""Who may do what where something is asked: the asker, and the bot itself."""

from typing import Any, Final

import discord

from bot.serving.memory import Asker

__all__ = ["asker_of", "is_moderator", "lacking", "roles_of"]

# As Discord's own settings name them, which is where somebody has to look for them.
_OF_A_BOARD: Final = (
    "View Channel",
    "Embed Links",
    "Attach Files",
    "Read Message History",
    "Pin Messages",
)


def asker_of(interaction: discord.Interaction[Any]) -> Asker:
    """Return who asks, and where; a server counts that added the bot itself."""
    return Asker(
        person=interaction.user.id,
        server=interaction.guild_id if interaction.is_guild_integration() else None,
        channel=interaction.channel_id,
        parent=getattr(interaction.channel, "parent_id", None),
    )


def is_moderator(interaction: discord.Interaction[Any]) -> bool:
    """Say whether the asker may manage messages where this is asked.

    Administrators may do everything, whatever else is set for them; so may the owner, for whom
    Discord sends every right.
    """
    rights = interaction.permissions
    may = rights.manage_messages or rights.administrator
    return interaction.guild_id is not None and may


def roles_of(interaction: discord.Interaction[Any]) -> frozenset[int]:
    """Return the numbers of the asker's roles here; of the roles themselves nothing is kept."""
    return frozenset(getattr(interaction.user, "_roles", ()))


def lacking(interaction: discord.Interaction[Any]) -> tuple[str, ...]:
    """Return the rights that the bot lacks here for what it writes by itself."""
    if interaction.guild_id is None or not interaction.is_guild_integration():
        return ()
    rights = interaction.app_permissions
    if rights.administrator:
        return ()
    in_thread = isinstance(interaction.channel, discord.Thread)
    writing = "Send Messages in Threads" if in_thread else "Send Messages"
    needed = (writing, *_OF_A_BOARD)
    return tuple(name for name in needed if not getattr(rights, name.lower().replace(" ", "_")))
