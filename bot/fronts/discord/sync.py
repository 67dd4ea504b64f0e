"""Registers the slash commands with Discord, only when they changed, and knows their numbers."""

import hashlib
import json
import logging
from pathlib import Path
from typing import Any

import discord
from discord import app_commands

__all__ = ["registered", "sync_when_changed"]

_log = logging.getLogger(__name__)
_FILE = "discord-commands.sha256"


async def sync_when_changed(tree: app_commands.CommandTree[Any], folder: Path) -> dict[str, int]:
    """Register the commands unless the same ones were registered before; return their numbers.

    What was registered is remembered in ``folder`` as a hash, with the numbers by which a message
    names a command that can be clicked; without that file it is done again. Where Discord will not
    have it now, the bot answers what is registered already.
    """
    application = tree.client.application_id
    assert application is not None
    commands = await _payload(tree)
    digest = _digest(application, commands)
    path = folder / _FILE
    remembered, numbers = _remembered(path)
    if remembered == digest:
        return numbers
    try:
        # What tree.sync() does, which would make every command's payload once more.
        synced = await tree.client.http.bulk_upsert_global_commands(application, commands)
    except discord.HTTPException as error:
        _log.error("cannot register the commands, so the next start tries again: %s", error)
        return {}
    _log.info("registered %d commands", len(synced))
    chat = discord.AppCommandType.chat_input.value
    numbers = {made["name"]: int(made["id"]) for made in synced if made["type"] == chat}
    lines = (digest, *(f"{name} {number}" for name, number in numbers.items()))
    try:
        folder.mkdir(parents=True, exist_ok=True)
        path.write_text("\n".join(lines), encoding="ascii")
    except OSError as error:
        _log.warning("cannot remember the registered commands in %s: %s", path, error.strerror)
    return numbers


def registered(folder: Path) -> dict[str, int]:
    """Return the numbers of the commands as they were registered last, as far as is known."""
    return _remembered(folder / _FILE)[1]


async def _payload(tree: app_commands.CommandTree[Any]) -> list[Any]:
    translator = tree.translator
    return [
        await command.get_translated_payload(tree, translator)
        if translator
        else command.to_dict(tree)
        for command in tree.get_commands()
    ]


def _digest(application: int, commands: list[Any]) -> str:
    text = json.dumps([application, commands], sort_keys=True)
    return hashlib.sha256(text.encode()).hexdigest()


def _remembered(path: Path) -> tuple[str, dict[str, int]]:
    try:
        digest, *lines = path.read_text(encoding="ascii").splitlines()
        return digest, {name: int(number) for name, number in (line.split() for line in lines)}
    except (OSError, ValueError):
        return "", {}
