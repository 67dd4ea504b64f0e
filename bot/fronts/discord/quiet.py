"""What the library would say of itself, and of what people type."""

import logging

import discord

__all__ = ["keep_the_library_quiet"]


def keep_the_library_quiet() -> None:
    """Keep what people type out of the log, whatever its level, and voice, which is not used."""
    library = logging.getLogger("discord")
    library.setLevel(max(logging.INFO, logging.getLogger().level))
    discord.VoiceClient.warn_nacl = discord.VoiceClient.warn_dave = False
