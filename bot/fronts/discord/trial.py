"""A look at Discord without going on line: is the token good, is the invitation complete?"""

import asyncio
from typing import Final

import aiohttp
import discord

from bot.fronts.discord.quiet import keep_the_library_quiet
from bot.operating.checkup import Finding, State

__all__ = ["PERMISSIONS", "SCOPES", "discord_findings"]

# What the bot is invited with: to answer, to post reminders and boards, and to pin them.
PERMISSIONS: Final = discord.Permissions(
    view_channel=True,
    send_messages=True,
    send_messages_in_threads=True,
    embed_links=True,
    attach_files=True,
    read_message_history=True,
    pin_messages=True,
)
SCOPES: Final = ("bot", "applications.commands")
_PATIENCE_S = 15.0
_TOKEN, _RIGHTS = "token", "permissions"


async def discord_findings(token: str | None) -> list[Finding]:
    """Log in over HTTP only, and look at what the application is invited with."""
    unknown = Finding(_RIGHTS, State.UNKNOWN, f"invite the bot with {PERMISSIONS.value}")
    if not token:
        to_do = "NOONSTONE_TOKEN is not set; Discord needs it, the console and the pages do not."
        return [Finding(_TOKEN, State.TO_DO, to_do), unknown]
    keep_the_library_quiet()
    client = discord.Client(intents=discord.Intents(guilds=True))
    try:
        async with asyncio.timeout(_PATIENCE_S), client:
            await client.login(token)
            return [_known(client), _invited(await client.application_info())]
    except discord.LoginFailure:
        told = "Discord refused the token: put a fresh one into NOONSTONE_TOKEN."
        return [Finding(_TOKEN, State.TO_DO, told), unknown]
    except (discord.HTTPException, aiohttp.ClientError, OSError, TimeoutError) as error:
        told = f"Discord cannot be reached from here ({type(error).__name__})"
        return [Finding(_TOKEN, State.UNKNOWN, f"it is set, but {told}"), unknown]


def _known(client: discord.Client) -> Finding:
    return Finding(_TOKEN, State.FINE, f"Discord knows the bot as {client.user}")


def _invited(application: discord.AppInfo) -> Finding:
    address = discord.utils.oauth_url(application.id, permissions=PERMISSIONS, scopes=SCOPES)
    preset = application.install_params
    if preset is None:
        return Finding(_RIGHTS, State.FINE, f"invite the bot with {address}")
    lacking = [
        name for name, wanted in PERMISSIONS if wanted and not getattr(preset.permissions, name)
    ]
    if lacking:
        names = ", ".join(name.replace("_", " ") for name in lacking)
        told = f"the portal's install link lacks {names}: set {PERMISSIONS.value} there."
        return Finding(_RIGHTS, State.TO_DO, told)
    return Finding(_RIGHTS, State.FINE, f"the portal's install link has {PERMISSIONS.value}")
