"""The bot as a process: how it starts and ends, with which words and which exit code."""

import asyncio
import gc
import logging
import random
import signal
import sys
from collections.abc import AsyncIterator, Iterator
from contextlib import asynccontextmanager
from typing import Final

import aiohttp
import discord

from bot.database.errors import StoreError
from bot.database.store import Store, open_store_soon
from bot.fronts.discord.client import Noonstone
from bot.fronts.discord.quiet import keep_the_library_quiet
from bot.fronts.discord.watching import watched
from bot.operating.health import PortTakenError
from bot.preferences import Preferences
from bot.serving.allowance import Limits
from bot.serving.studio import Studio, dark, light
from bot.settings import Settings

__all__ = ["run"]

_log = logging.getLogger(__name__)

_REFUSED, _FAILED = 2, 1
_TOO_FEW_SHARDS: Final = 4011
_OUT_OF_ORDER, _TOO_OFTEN = 500, 429
_FIRST_WAIT_S, _LONGEST_WAIT_S = 5.0, 300.0
_CLOSE_SENTENCES = {
    4004: "Discord refused the token. Put a fresh one into NOONSTONE_TOKEN.",
    4010: "Discord refused the shard number: look at NOONSTONE_SHARDS.",
    _TOO_FEW_SHARDS: (
        "The bot is in too many servers for so few connections: raise the number of shards in "
        "NOONSTONE_SHARDS, or leave it out."
    ),
    4012: "Discord no longer speaks this version of its protocol: update discord.py.",
    4013: "Discord refused the intents: update the bot.",
    4014: "Discord refused a privileged intent, which this bot never needs: update the bot.",
}


def run(settings: Settings) -> int:
    """Run the bot until it is stopped; return the exit code."""
    keep_the_library_quiet()
    try:
        try:
            asyncio.run(_run(settings))
        except discord.ConnectionClosed as error:
            if error.code != _TOO_FEW_SHARDS or settings.shards is not None:
                raise
            # It grew while it ran; a new start asks Discord for the number of shards.
            _log.warning("Discord wants more shards; starting anew")
            asyncio.run(_run(settings))
    except StoreError as error:
        return _told(str(error), _REFUSED)
    except PortTakenError as error:
        return _told(f"NOONSTONE_HEALTH_PORT: {error}", _REFUSED)
    except discord.LoginFailure:
        return _told(_CLOSE_SENTENCES[4004], _REFUSED)
    except discord.PrivilegedIntentsRequired:
        return _told(_CLOSE_SENTENCES[4014], _REFUSED)
    except discord.ConnectionClosed as error:
        unknown = f"Discord closed the connection for good (code {error.code})."
        return _told(_CLOSE_SENTENCES.get(error.code, unknown), _FAILED)
    except discord.HTTPException as error:
        return _told(f"Discord refuses the bot: {error}.", _FAILED)
    return 0


async def _run(settings: Settings) -> None:
    loop = asyncio.get_running_loop()
    stop = asyncio.Event()
    for number in (signal.SIGINT, signal.SIGTERM):
        loop.add_signal_handler(number, stop.set)
    preferences = Preferences(
        units=settings.units, guide_url=settings.guide_url, language=settings.language
    )
    folder, waits = settings.data_folder(), growing_waits()
    async with _opened(settings) as store:
        while True:
            studio = Studio(job=light if settings.pictures == "light" else dark)
            client = Noonstone(preferences, folder, studio, Limits(), settings.shards, store)
            try:
                await _until(stop, client, settings)
                return
            except (discord.HTTPException, discord.GatewayNotFound) as error:
                if not _passes(error):
                    raise
                told = f"Discord does not answer as it should: {error}"
            except (aiohttp.ClientError, OSError) as error:
                told = f"Discord cannot be reached: {error}. Check the network"
            wait_s = next(waits)
            _log.warning("%s; trying again in %.0f s", told, wait_s)
            if await _set_within(stop, wait_s):
                return


def growing_waits() -> Iterator[float]:
    """Yield waits in seconds, each twice as long as the one before, up to five minutes.

    Each is up to a quarter shorter by chance: many that were refused at once come back one by one.
    """
    wait_s = _FIRST_WAIT_S
    while True:
        yield wait_s * random.uniform(0.75, 1.0)
        wait_s = min(2 * wait_s, _LONGEST_WAIT_S)


def _passes(error: discord.HTTPException | discord.GatewayNotFound) -> bool:
    """Say whether Discord may answer later: it is out of order, or was asked too often."""
    if isinstance(error, discord.HTTPException):
        return error.status >= _OUT_OF_ORDER or error.status == _TOO_OFTEN
    return True


async def _set_within(event: asyncio.Event, wait_s: float) -> bool:
    try:
        async with asyncio.timeout(wait_s):
            return await event.wait()
    except TimeoutError:
        return False


async def _until(stop: asyncio.Event, client: Noonstone, settings: Settings) -> None:
    studio = client.studio
    assert studio is not None
    async with client, watched(client, settings.health_port):
        warming = asyncio.create_task(studio.warm())
        serving = asyncio.create_task(_serve(client, settings))
        stopping = asyncio.create_task(stop.wait())
        await asyncio.wait((serving, stopping), return_when=asyncio.FIRST_COMPLETED)
        if stop.is_set():
            _log.info("asked to stop")
            await client.leave()
            serving.cancel()
        stopping.cancel()
        _, outcome = await asyncio.gather(stopping, serving, return_exceptions=True)
    await warming
    if isinstance(outcome, Exception) and not stop.is_set():
        raise outcome


@asynccontextmanager
async def _opened(settings: Settings) -> AsyncIterator[Store]:
    address = settings.database_url.get_secret_value()
    store = await open_store_soon(address, settings.data_folder())
    try:
        yield store
    finally:
        await store.close()


async def _serve(client: Noonstone, settings: Settings) -> None:
    assert settings.token is not None
    await client.login(settings.token.get_secret_value())
    # What is there by now stays: walking through it would stall every asker for 50 ms.
    gc.collect()
    gc.freeze()
    gc.enable()
    await client.connect()


def _told(sentence: str, code: int) -> int:
    print(sentence, file=sys.stderr)
    return code
