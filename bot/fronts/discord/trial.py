"""A look at Discord without going on line: is the token good, is the invitation complete?"""

import asyncio
from typing import Final

import aiohttp
import discord

from bot.fronts.discord.quiet import keep_the_library_quiet
from bot.operating.checkup import Examined, Finding, Looked, State, found, to_do

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


async def discord_findings(token: str | None) -> list[Finding]:
    """Log in over HTTP only, and look at what the application is invited with."""
    unknown = found(Looked.RIGHTS, "invite", Examined(str(PERMISSIONS.value)), State.UNKNOWN)
    if not token:
        return [to_do(Looked.TOKEN, "token-none"), unknown]
    keep_the_library_quiet()
    client = discord.Client(intents=discord.Intents(guilds=True))
    try:
        async with asyncio.timeout(_PATIENCE_S), client:
            await client.login(token)
            return [_known(client), _invited(await client.application_info())]
    except discord.LoginFailure:
        return [to_do(Looked.TOKEN, "token-refused"), unknown]
    except (discord.HTTPException, aiohttp.ClientError, OSError, TimeoutError) as error:
        seen = Examined(type(error).__name__)
        return [found(Looked.TOKEN, "token-away", seen, State.UNKNOWN), unknown]


def _known(client: discord.Client) -> Finding:
    return found(Looked.TOKEN, "token", Examined(str(client.user)))


def _invited(application: discord.AppInfo) -> Finding:
    address = discord.utils.oauth_url(application.id, permissions=PERMISSIONS, scopes=SCOPES)
    preset = application.install_params
    if preset is None:
        return found(Looked.RIGHTS, "invite", Examined(address))
    lacking = [
        name for name, wanted in PERMISSIONS if wanted and not getattr(preset.permissions, name)
    ]
    if lacking:
        names = ", ".join(name.replace("_", " ") for name in lacking)
        return to_do(Looked.RIGHTS, "link-lacks", Examined(names, str(PERMISSIONS.value)))
    return found(Looked.RIGHTS, "link", Examined(str(PERMISSIONS.value)))
