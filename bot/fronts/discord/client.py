"""The bot on Discord: one client, one tree, no privileged intent, nobody pinged by accident."""

import asyncio
import gc
import logging
import signal
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path
from typing import Any

import aiohttp
import discord

from bot.ask import ask
from bot.commands import COMMANDS
from bot.completion import complete
from bot.fronts.discord.answering import Answers, Finished, Way, has_two_faces, laid_out
from bot.fronts.discord.buttons import BUTTONS
from bot.fronts.discord.forms import take_form
from bot.fronts.discord.limits import Limits
from bot.fronts.discord.question import Question
from bot.fronts.discord.sending import (
    Message,
    edit_in_place,
    guarded,
    in_direct_messages,
    note_failure,
    send,
)
from bot.fronts.discord.sharing import Target, target_of
from bot.fronts.discord.slash import build_tree
from bot.fronts.discord.sync import sync_when_changed
from bot.fronts.discord.watching import watched
from bot.fronts.studio import Studio
from bot.language.quantities import Units
from bot.operating.health import PortTakenError
from bot.operating.metrics import Metrics
from bot.preferences import Preferences
from bot.render.embeds import render_embeds
from bot.settings import Settings

__all__ = ["Noonstone", "keep_the_library_quiet", "run"]

_log = logging.getLogger(__name__)

# Longer waits for Discord's rate limits end in an error instead of a hung answer.
_LONGEST_RATE_LIMIT_S = 30.0
_REFUSED, _FAILED = 2, 1
_CLOSE_SENTENCES = {
    4004: "Discord refused the token. Put a fresh one into NOONSTONE_TOKEN.",
    4010: "Discord refused the shard number. Start one process, or give each its own shard.",
    4011: "The bot is in too many servers for one connection: it must be sharded.",
    4012: "Discord no longer speaks this version of its protocol: update discord.py.",
    4013: "Discord refused the intents: update the bot.",
    4014: "Discord refused a privileged intent, which this bot never needs: update the bot.",
}


class Noonstone(discord.Client):
    """The client: it answers questions, buttons and forms, and keeps no message."""

    def __init__(
        self,
        preferences: Preferences,
        folder: Path,
        studio: Studio | None = None,
        limits: Limits | None = None,
    ) -> None:
        super().__init__(
            intents=discord.Intents(guilds=True),
            allowed_mentions=discord.AllowedMentions.none(),
            max_ratelimit_timeout=_LONGEST_RATE_LIMIT_S,
            max_messages=None,
            member_cache_flags=discord.MemberCacheFlags.none(),
            chunk_guilds_at_startup=False,
        )
        self.studio = studio
        self.limits = limits
        self.metrics = Metrics()
        self.connected = False
        self._answers = Answers()
        self._turn = asyncio.Lock()
        self._preferences = preferences
        self._folder = folder
        self.tree = build_tree(self)

    async def setup_hook(self) -> None:
        """Warm up before the first question, then register the commands if they changed."""
        self.add_dynamic_items(*BUTTONS)
        await asyncio.to_thread(_warm_up)
        await sync_when_changed(self.tree, self._folder)

    async def close(self) -> None:
        """Leave Discord, then end the processes that draw."""
        await super().close()
        if self.studio is not None:
            await self.studio.close()

    async def on_connect(self) -> None:
        """Say in the log that questions are answered from now on."""
        self.connected = True
        _log.info("connected to Discord, in %d servers", len(self.guilds))

    async def on_resumed(self) -> None:
        """Know that the connection stands again."""
        self.connected = True

    async def on_disconnect(self) -> None:
        """Know that the connection is lost for now."""
        self.connected = False

    async def on_error(self, event: str, /, *args: Any, **kwargs: Any) -> None:
        """Log what no other place caught."""
        error = sys.exc_info()[1]
        if error is not None:
            note_failure(error, f"handling {event}")

    async def on_interaction(self, interaction: discord.Interaction["Noonstone"]) -> None:
        """Take the forms; commands and buttons find their own way."""
        if interaction.type is discord.InteractionType.modal_submit:
            await take_form(interaction)

    def preferences(self, first: Units | None = None) -> Preferences:
        """Return how to answer, with this unit first whatever was typed."""
        return replace(self._preferences, forced_units=first)

    async def answer(
        self,
        interaction: discord.Interaction["Noonstone"],
        question: Question,
        *,
        addressee: discord.Member | discord.User | None = None,
        first: Units | None = None,
        in_place: bool = False,
        about: Target | None = None,
    ) -> None:
        """Answer a question: to the asker alone in a server, or to an addressee in public.

        ``first`` is the unit shown first whatever was typed; ``in_place`` changes the message
        whose button was pressed instead of sending another; ``about`` is the message that the
        question was taken from.
        """
        async with guarded(interaction, f"answering {question.command}"):
            about = about or (target_of(interaction.message) if in_place else None)
            alone = in_direct_messages(interaction)
            way = Way(addressee is not None, alone, self.studio is not None)
            with self._noted(question.command) as note:
                # One at a time, so that a crowd's first answer leaves before its last is begun.
                async with self._turn:
                    finished = self._finished(question, self.preferences(first), way, about)
                note(finished.status)
                message = finished.message
                if finished.public and addressee is not None:
                    message = _addressed(message, addressee, interaction.user)
                if in_place:
                    await edit_in_place(interaction, message)
                else:
                    await send(interaction, message, private=not (finished.public or alone))

    def _finished(
        self, question: Question, preferences: Preferences, way: Way, about: Target | None
    ) -> Finished:
        if about is None:
            return self._answers.finished(question, preferences, way)
        return laid_out(question.answered(preferences), question, way, about)

    @contextmanager
    def _noted(self, command: str) -> Iterator[Callable[[str], None]]:
        """Count and log an answer once it is sent, without a word of what was typed."""
        started = time.perf_counter()
        outcome, taken_s = "error", 0.0

        def note(status: str) -> None:
            nonlocal outcome, taken_s
            outcome, taken_s = status, time.perf_counter() - started

        try:
            yield note
        finally:
            self.metrics.questions.labels(command, outcome).inc()
            _log.info("%s: %s in %.1f ms", command, outcome, taken_s * 1000)


def _addressed(
    message: Message,
    addressee: discord.Member | discord.User,
    asker: discord.Member | discord.User,
) -> Message:
    """Return the message for a member, who is the only one it pings."""
    words = f"{addressee.mention}, {asker.mention} asked this for you:"
    pings = discord.AllowedMentions(
        everyone=False, users=[addressee], roles=False, replied_user=False
    )
    return replace(message, content=words, pings=pings)


def _warm_up() -> None:
    """Load what the first question would otherwise wait for while the heart beats."""
    for command in COMMANDS:
        try:
            render_embeds(ask(command.examples[0], Preferences()))
            has_two_faces(command.name)
            for option in command.query.options():
                complete(command.name, option.name, "")
        except Exception as error:
            # One broken question must not keep the others from being answered.
            note_failure(error, f"warming up {command.name}")


def run(settings: Settings) -> int:
    """Run the bot until it is stopped; return the exit code."""
    assert settings.token is not None
    token = settings.token.get_secret_value()
    preferences = Preferences(units=settings.units, guide_url=settings.guide_url)
    keep_the_library_quiet()
    try:
        asyncio.run(_run(preferences, settings.data_folder(), token, settings.health_port))
    except PortTakenError as error:
        return _told(f"NOONSTONE_HEALTH_PORT: {error}", _REFUSED)
    except discord.LoginFailure:
        return _told(_CLOSE_SENTENCES[4004], _REFUSED)
    except discord.PrivilegedIntentsRequired:
        return _told(_CLOSE_SENTENCES[4014], _REFUSED)
    except discord.ConnectionClosed as error:
        unknown = f"Discord closed the connection for good (code {error.code})."
        return _told(_CLOSE_SENTENCES.get(error.code, unknown), _FAILED)
    except (discord.HTTPException, discord.GatewayNotFound) as error:
        return _told(f"Discord does not answer as it should: {error}. Try again later.", _FAILED)
    except (aiohttp.ClientError, OSError) as error:
        return _told(f"Discord cannot be reached: {error}. Check the network.", _FAILED)
    return 0


def keep_the_library_quiet() -> None:
    """Keep what people type out of the log, whatever its level, and voice, which is not used."""
    library = logging.getLogger("discord")
    library.setLevel(max(logging.INFO, logging.getLogger().level))
    discord.VoiceClient.warn_nacl = discord.VoiceClient.warn_dave = False


async def _run(preferences: Preferences, folder: Path, token: str, health_port: int | None) -> None:
    loop = asyncio.get_running_loop()
    studio = Studio()
    client = Noonstone(preferences, folder, studio, Limits())
    async with client, watched(client, health_port):
        warming = asyncio.create_task(studio.warm())
        for number in (signal.SIGINT, signal.SIGTERM):
            loop.add_signal_handler(number, lambda: asyncio.ensure_future(client.close()))
        await client.login(token)
        # What is there by now stays: walking through it would stall every asker for 50 ms.
        gc.collect()
        gc.freeze()
        await client.connect()
    await warming


def _told(sentence: str, code: int) -> int:
    print(sentence, file=sys.stderr)
    return code
