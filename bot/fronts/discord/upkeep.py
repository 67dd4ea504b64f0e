"""What the bot does by itself over its store: reminders, boards, counts, servers that left."""

import asyncio
import logging
import secrets
from collections import deque
from collections.abc import Awaitable, Callable, Collection
from typing import TYPE_CHECKING, Final

from bot.database.errors import StoreError, StoreUnavailableError
from bot.fronts.discord.ahead import draw_ahead
from bot.fronts.discord.boards import show_boards
from bot.fronts.discord.reminders import deliver_due
from bot.questions.saved.targets import targets_of
from bot.serving.hands import Hands, Pace
from bot.serving.memory import Memory
from bot.serving.rounds import Rounds

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["Upkeep"]

_log = logging.getLogger(__name__)

# How many reminders and boards at once.
_REMINDING: Final = 6
_BOARDING: Final = 2
_COUNTS_S: Final = 30.0
_MISSED_S: Final = 30.0
# Older ones are found in another way: who left at the next start, a deleted channel when used.
_MOST_MISSED: Final = 10_000
_WISHES_S: Final = 60.0
_TARGETS_S: Final = 60.0
_SWEEP_S: Final = 3600.0


class Upkeep:
    """The rounds of one process; the store's claims keep several processes apart."""

    def __init__(self, client: "Noonstone", memory: Memory, share: float = 1.0) -> None:
        self._memory = memory
        by, pace = f"process {secrets.token_hex(8)}", Pace(share)
        reminding, boarding = Hands(by, _REMINDING, pace), Hands(by, _BOARDING, pace)
        self._hands = (reminding, boarding)
        self._changes_looked_at: int | None = None
        self._missed: deque[Callable[[], Awaitable[None]]] = deque(maxlen=_MOST_MISSED)
        self._rounds = (
            Rounds("making up what was missed", self._make_up),
            Rounds("delivering reminders", lambda: deliver_due(client, memory, reminding)),
            Rounds("showing boards", lambda: show_boards(client, memory, boarding)),
            Rounds("telling of changed targets", self._tell_of_targets),
            Rounds("keeping counts", self._keep_counts),
            Rounds("learning who has set anything", self._look_around),
            Rounds("sweeping", self._sweep),
        )
        # Nothing is drawn ahead because somebody asked for something else.
        self._ahead = Rounds("drawing ahead", lambda: draw_ahead(client, memory))

    async def start(self) -> None:
        """Begin the rounds; every board is looked at, since this may be a newer engine."""
        try:
            await self._memory.store.boards.look_again(self._memory.clock())
        except StoreError as error:
            _log.warning("boards are looked at later: %s", error)
        for rounds in (*self._rounds, self._ahead):
            rounds.start()

    def wake(self) -> None:
        """Do at once what was just asked for."""
        for rounds in self._rounds:
            rounds.wake()

    def rest(self) -> None:
        """Begin nothing more for Discord; what was begun is finished."""
        for hands in self._hands:
            hands.resting = True

    async def stop(self) -> None:
        """End the rounds and keep what was counted."""
        self.rest()
        await asyncio.gather(*(rounds.stop() for rounds in (*self._rounds, self._ahead)))
        try:
            await self._memory.keep_counts()
        except StoreError as error:
            _log.warning("the last counts are lost: %s", error)

    async def present(self, servers: Collection[int], shard_ids: Collection[int], of: int) -> None:
        """Note which servers of these shards are there, and which left while this was down."""
        now = self._memory.clock()

        async def note() -> None:
            kept = self._memory.store.servers
            for server in await kept.known() - set(servers):
                # 0 is the group of a console; what belongs to other shards is theirs to tell.
                if server and (server >> 22) % of in shard_ids:
                    await kept.left(server, now)
            for server in await kept.away() & set(servers):
                await kept.came(server)

        await self._noted("which servers are there", note)

    async def channel_gone(self, channel: int) -> None:
        """Forget the boards of a deleted channel, and send its reminders another way."""

        async def note() -> None:
            await self._memory.store.boards.channel_gone(channel)
            await self._memory.store.reminders.channel_gone(channel)

        await self._noted("a deleted channel", note)

    async def left(self, server: int) -> None:
        """Note that a server removed the bot."""
        now, kept = self._memory.clock(), self._memory.store.servers
        await self._noted("a server that left", lambda: kept.left(server, now))

    async def came(self, server: int) -> None:
        """Note that a server added the bot."""
        await self._noted("a server that came", lambda: self._memory.store.servers.came(server))

    async def _noted(self, what: str, note: Callable[[], Awaitable[None]]) -> None:
        """Note what happened; where the store is away, once it is back and in the same order."""
        if not self._missed:
            try:
                await note()
                return
            except StoreError as error:
                _log.warning("%s is noted later: %s", what, error)
        self._missed.append(note)

    async def _make_up(self) -> float:
        while self._missed:
            note = self._missed[0]
            try:
                await note()
            except StoreUnavailableError:
                raise
            except StoreError as error:
                _log.warning("something that was missed is left out: %s", error)
            if self._missed and self._missed[0] is note:
                self._missed.popleft()
        return _MISSED_S

    async def _tell_of_targets(self) -> float:
        """Remind keepers of targets that changed: all at the start, since ours may be newer."""
        told, now = self._memory.store.told, self._memory.clock()
        newest, looked = await told.newest_change(), self._changes_looked_at
        if looked is None:
            reminded = await told.look(targets_of, now)
        else:
            groups = await told.groups_changed(looked) if newest > looked else ()
            reminded = sum([await told.look(targets_of, now, group) for group in groups])
        self._changes_looked_at = newest
        if reminded:
            _log.info("%d keepers are reminded of targets that changed", reminded)
            self.wake()
        return _TARGETS_S

    async def _keep_counts(self) -> float:
        await self._memory.keep_counts()
        return _COUNTS_S

    async def _look_around(self) -> float:
        await self._memory.look_around()
        return _WISHES_S

    async def _sweep(self) -> float:
        now, store = self._memory.clock(), self._memory.store
        gone = await store.servers.sweep(now)
        await store.public.sweep(now)
        old = await store.reminders.sweep(now)
        rested = await store.cases.sweep(now)
        if gone or old or rested:
            told = "deleted %d servers that left, %d old reminders, %d cases that rested"
            _log.info(told, gone, old, rested)
        return _SWEEP_S
