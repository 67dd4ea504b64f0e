"""The questions about saved data, in the order of the list."""

from bot.command import Command

__all__ = ["STORED_COMMANDS"]

STORED_COMMANDS: tuple[Command, ...] = ()
