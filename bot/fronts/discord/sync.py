"""Registers the slash commands with Discord, and only when they changed."""

import hashlib
import json
import logging
from pathlib import Path
from typing import Any

import discord
from discord import app_commands

__all__ = ["sync_when_changed"]

_log = logging.getLogger(__name__)
_FILE = "discord-commands.sha256"


async def sync_when_changed(tree: app_commands.CommandTree[Any], folder: Path) -> bool:
    """Register the commands unless the same ones were registered before; say whether it was done.

    What was registered is remembered as a hash in ``folder``; without that file it is done again.
    Where Discord will not have it now, the bot answers what is registered already.
    """
    digest = _digest(tree)
    path = folder / _FILE
    if _remembered(path) == digest:
        return False
    try:
        synced = await tree.sync()
    except discord.HTTPException as error:
        _log.error("cannot register the commands, so the next start tries again: %s", error)
        return False
    _log.info("registered %d commands", len(synced))
    try:
        folder.mkdir(parents=True, exist_ok=True)
        path.write_text(digest, encoding="ascii")
    except OSError as error:
        _log.warning("cannot remember the registered commands in %s: %s", path, error.strerror)
    return True


def _digest(tree: app_commands.CommandTree[Any]) -> str:
    payload = [command.to_dict(tree) for command in tree.get_commands()]
    text = json.dumps([tree.client.application_id, payload], sort_keys=True)
    return hashlib.sha256(text.encode()).hexdigest()


def _remembered(path: Path) -> str:
    try:
        return path.read_text(encoding="ascii")
    except (OSError, UnicodeDecodeError):
        return ""
