"""The bot on Discord: one client, one tree, no privileged intent, nobody pinged by accident."""

import asyncio
import logging
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path
from typing import Any

import discord

from bot.database.store import Store
from bot.facts import Say
from bot.fronts.discord.answering import Answers, Way, warm_up
from bot.fronts.discord.buttons import BUTTONS
from bot.fronts.discord.forms import take_form
from bot.fronts.discord.helping import Helpers, ask_writer, asks_writer, told_on
from bot.fronts.discord.in_card import pictured
from bot.fronts.discord.lean import LeanState
from bot.fronts.discord.localised import Descriptions
from bot.fronts.discord.people import of_group
from bot.fronts.discord.public import (
    Pings,
    addressed,
    kept_private,
    may_change,
    refused_post,
)
from bot.fronts.discord.question import Question
from bot.fronts.discord.rights import asker_of
from bot.fronts.discord.saved import answer_saved
from bot.fronts.discord.seen import seen
from bot.fronts.discord.sending import edit_in_place, guarded, in_direct_messages, is_own, send
from bot.fronts.discord.sharing import Target, target_of
from bot.fronts.discord.slash import build_tree
from bot.fronts.discord.sync import registered, sync_when_changed
from bot.fronts.discord.talking import Addressed, Talk
from bot.fronts.discord.upkeep import Upkeep
from bot.language.quantities import Units
from bot.operating.metrics import Metrics
from bot.preferences import OFFERED, Preferences
from bot.render.mentions import Mention, by_number, clickable, unnumbered
from bot.reply import PartName
from bot.saved.group import Shown
from bot.serving.allowance import Allowance, Limits
from bot.serving.failures import note_failure
from bot.serving.flight import InFlight
from bot.serving.memory import Memory
from bot.serving.studio import Studio
from bot.settings import Shards

__all__ = ["Noonstone"]

_log = logging.getLogger(__name__)

# Longer waits for Discord's rate limits end in an error instead of a hung answer.
_LONGEST_RATE_LIMIT_S = 30.0
# Stopping takes ten seconds at most, with what comes after these.
_FINISH_WITHIN_S, _TELL_WITHIN_S, _CLOSE_WITHIN_S = 6.0, 1.0, 2.0


class Noonstone(discord.AutoShardedClient):
    """The client: it answers questions, buttons and forms, and keeps no message.

    It takes as many connections (shards) as Discord asks for, or those that it is given.
    """

    def __init__(
        self,
        preferences: Preferences,
        folder: Path,
        studio: Studio | None = None,
        limits: Limits | None = None,
        shards: Shards | None = None,
        store: Store | None = None,
    ) -> None:
        super().__init__(
            shard_count=shards.count if shards else None,
            intents=discord.Intents(guilds=True, guild_messages=True, dm_messages=True),
            allowed_mentions=discord.AllowedMentions.none(),
            max_ratelimit_timeout=_LONGEST_RATE_LIMIT_S,
            max_messages=None,
            member_cache_flags=discord.MemberCacheFlags.none(),
            chunk_guilds_at_startup=False,
        )
        self.shard_ids = list(shards.ids) if shards else None
        self.studio = studio
        self.limits = limits
        self.metrics = Metrics()
        self.in_flight = InFlight()
        self.pings = Pings()
        # Whose answers were shared just now.
        self.shares = Allowance(1)
        self.memory = Memory(store) if store is not None else None
        share = len(shards.ids) / shards.count if shards else 1.0
        self._upkeep = Upkeep(self, self.memory, share) if self.memory is not None else None
        self._here: set[int] = set()
        self.answers = Answers(self.mention)
        # What is confirmed by a button is answered like the command itself.
        self.answer_saved = answer_saved
        self.ask_writer, self.helpers = ask_writer, Helpers()
        self._talk = Talk()
        self._preferences = preferences
        self._folder = folder
        self._mention: Mention = unnumbered
        self.tree = build_tree(self)

    def _get_state(self, **options: Any) -> LeanState:
        return LeanState(
            dispatch=self.dispatch,
            handlers=self._handlers,
            hooks=self._hooks,
            http=self.http,
            **options,
        )

    @property
    def connected(self) -> bool:
        """Say whether every connection stands."""
        return bool(self._here) and self._here >= set(self.shards) and not self.is_closed()

    async def setup_hook(self) -> None:
        """Warm up before the first question, then register the commands if they changed."""
        self.add_dynamic_items(*BUTTONS)
        await asyncio.to_thread(warm_up)
        # Of several processes one registers the commands of all.
        if self.shard_ids is None or 0 in self.shard_ids:
            await self.tree.set_translator(Descriptions())
            self._mention = by_number(await sync_when_changed(self.tree, self._folder))
        else:
            self._mention = by_number(registered(self._folder))
        if self._upkeep is not None:
            await self._upkeep.start()

    def mention(self, name: str) -> str:
        """Return what stands in a message for a question's name, to be clicked if it can be."""
        return self._mention(name)

    def clickable(self, text: str) -> str:
        """Return a text with each command in it, such as ``/mine reading``, to be clicked."""
        return clickable(text, self.mention)

    def wake(self) -> None:
        """Do at once what was just asked for: a reminder, a board."""
        if self._upkeep is not None:
            self._upkeep.wake()

    async def leave(self) -> None:
        """Take no more questions, finish those in flight, then leave Discord."""
        self.in_flight.leaving = True
        if self._upkeep is not None:
            self._upkeep.rest()
        if not await self.in_flight.ended(_FINISH_WITHIN_S) and self.studio is not None:
            # Who still waits for a picture is told that there is none.
            await self.studio.close()
            await self.in_flight.ended(_TELL_WITHIN_S)
        try:
            async with asyncio.timeout(_CLOSE_WITHIN_S):
                await self.close()
        except TimeoutError:
            _log.warning("Discord did not say good-bye")

    async def close(self) -> None:
        """End what runs by itself, leave Discord, then end the processes that draw."""
        try:
            if self._upkeep is not None:
                await self._upkeep.stop()
            await super().close()
        finally:
            if self.studio is not None:
                await self.studio.close()

    async def on_shard_connect(self, shard: int) -> None:
        """Say in the log that questions are answered from now on."""
        self._here.add(shard)
        _log.info("connected to Discord: shard %d of %d", shard, self.shard_count or 1)

    async def on_shard_resumed(self, shard: int) -> None:
        """Know that the connection stands again."""
        self._here.add(shard)

    async def on_shard_disconnect(self, shard: int) -> None:
        """Know that the connection is lost for now."""
        self._here.discard(shard)

    async def on_ready(self) -> None:
        """Note which servers left while the bot was away; this may come again and again."""
        if self._upkeep is not None:
            servers = [guild.id for guild in self.guilds]
            await self._upkeep.present(servers, list(self.shards), self.shard_count or 1)

    async def on_guild_join(self, guild: discord.Guild) -> None:
        """Keep what is saved of a server that came back."""
        if self._upkeep is not None:
            await self._upkeep.came(guild.id)

    async def on_guild_remove(self, guild: discord.Guild) -> None:
        """Let the time begin after which the data of a server are deleted."""
        if self._upkeep is not None:
            await self._upkeep.left(guild.id)

    async def on_channel_gone(self, channel: int) -> None:
        """Let no board and no reminder be meant for a channel or a thread that was deleted."""
        if self._upkeep is not None:
            await self._upkeep.channel_gone(channel)

    async def on_error(self, event: str, /, *args: Any, **kwargs: Any) -> None:
        """Log what no other place caught."""
        error = sys.exc_info()[1]
        if error is not None:
            note_failure(error, f"handling {event}")

    async def on_written(self, written: Addressed) -> None:
        """Answer what was written to the bot."""
        await self._talk.answer(self, written)

    async def on_interaction(self, interaction: discord.Interaction["Noonstone"]) -> None:
        """Take the forms; commands and buttons find their own way."""
        if interaction.type is discord.InteractionType.modal_submit:
            await take_form(interaction)

    def preferences(self, first: Units | None = None) -> Preferences:
        """Return how to answer, with this unit first whatever was typed."""
        return replace(self._preferences, forced_units=first)

    async def preferences_of(
        self, interaction: discord.Interaction["Noonstone"], first: Units | None = None
    ) -> Preferences:
        """Return how to answer an asker: by what is saved of the asker and of the group, then by
        the language of the asker's Discord, where that is offered.
        """
        base = self.preferences(first)
        spoken = interaction.locale.value.partition("-")[0]
        language = next((each for each in OFFERED if each == spoken), base.language)
        base = replace(base, language=language)
        if self.memory is None:
            return base
        return await self.memory.preferences(asker_of(interaction), base)

    async def answer(
        self,
        interaction: discord.Interaction["Noonstone"],
        question: Question,
        *,
        addressee: discord.Member | discord.User | None = None,
        first: Units | None = None,
        in_place: bool = False,
        about: Target | None = None,
        part: PartName | None = None,
    ) -> None:
        """Answer a question: to the asker alone in a server, or to an addressee in public.

        ``first`` is the unit shown first whatever was typed; ``in_place`` changes the message
        whose button was pressed instead of sending another, where the presser may change it;
        ``about`` is the message that the question was taken from; ``part`` is the part to open.
        """
        async with guarded(interaction, f"answering {question.command}"):
            memory, pressed = self.memory, interaction.message
            shown = await memory.shown(asker_of(interaction)) if memory else None
            why = await kept_private(interaction)
            in_place = in_place and pressed is not None and may_change(interaction, shown)
            about = about or (target_of(pressed) if in_place else None)
            preferences = await self.preferences_of(interaction, first)
            # What is asked about somebody's message stays with the one who asks.
            usual = why is None if addressee else about is None and shown is Shown.PUBLIC
            # Who presses a button posts nothing new: the others did not ask for it.
            public = usual if pressed is None else in_place and not is_own(interaction)
            alone = in_direct_messages(interaction)
            group = await of_group(interaction)
            way = Way(public, alone, self.studio is not None, why is None, *group)
            with self.noted(question.command) as note:
                finished = await self.answers.finished(question, preferences, way, about, part)
                for_somebody = addressee is not None and finished.status == "ok"
                if for_somebody and finished.public:
                    why = await refused_post(interaction, finished.meant.command, 1)
                    if why is not None:
                        way = replace(way, public=False)
                        finished = await self.answers.finished(
                            question, preferences, way, about, part
                        )
                note(finished.status)
                if self.memory is not None and finished.status == "ok":
                    meant = finished.meant
                    again = in_place or part is not None
                    asker = asker_of(interaction)
                    self.memory.count(asker, meant.command, meant.given, again=again)
                message = finished.message
                if for_somebody and addressee is not None:
                    told_alone = None if finished.public else why or Say("front-stays-private")
                    message = await addressed(interaction, message, addressee.id, told_alone)
                elif in_place and public and pressed is not None:
                    message = replace(message, words=seen(pressed).words)
                asks = in_place and public and pressed is not None and asks_writer(pressed)
                if asks:
                    message = await told_on(interaction, finished, message)
                edited = pressed if in_place and (asks or finished.public is public) else None
                message = await pictured(self, message, finished.picture, edited)
                if edited is not None:
                    await edit_in_place(interaction, message)
                else:
                    await send(interaction, message, private=not (finished.public or alone))

    @contextmanager
    def noted(self, command: str) -> Iterator[Callable[[str], None]]:
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
