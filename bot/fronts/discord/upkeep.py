"""What the bot does by itself over its store: reminders, boards, counts, servers that left."""

import asyncio
import logging
import secrets
from collections.abc import Collection
from typing import TYPE_CHECKING, Final

from bot.database.errors import StoreError
from bot.fronts.discord.boards import show_boards
from bot.fronts.discord.reminders import deliver_due
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
_WISHES_S: Final = 60.0
_SWEEP_S: Final = 3600.0


class Upkeep:
    """The rounds of one process; the store's claims keep several processes apart."""

    def __init__(self, client: "Noonstone", memory: Memory, share: float = 1.0) -> None:
        self._memory = memory
        by, pace = f"process {secrets.token_hex(8)}", Pace(share)
        reminding, boarding = Hands(by, _REMINDING, pace), Hands(by, _BOARDING, pace)
        self._hands = (reminding, boarding)
        self._rounds = (
            Rounds("delivering reminders", lambda: deliver_due(client, memory, reminding)),
            Rounds("showing boards", lambda: show_boards(client, memory, boarding)),
            Rounds("keeping counts", self._keep_counts),
            Rounds("learning who has set anything", self._look_around),
            Rounds("sweeping", self._sweep),
        )

    async def start(self) -> None:
        """Begin the rounds; every board is looked at, since this may be a newer engine."""
        try:
            await self._memory.store.boards.look_again(self._memory.clock())
        except StoreError as error:
            _log.warning("boards are looked at later: %s", error)
        for rounds in self._rounds:
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
        await asyncio.gather(*(rounds.stop() for rounds in self._rounds))
        try:
            await self._memory.keep_counts()
        except StoreError as error:
            _log.warning("the last counts are lost: %s", error)

    async def present(self, servers: Collection[int], shard_ids: Collection[int], of: int) -> None:
        """Note which servers of these shards are there, and which left while this was down."""
        servers_store = self._memory.store.servers
        now = self._memory.clock()
        try:
            for server in await servers_store.known() - set(servers):
                # 0 is the group of a console; what belongs to other shards is theirs to tell.
                if server and (server >> 22) % of in shard_ids:
                    await servers_store.left(server, now)
            for server in await servers_store.away() & set(servers):
                await servers_store.came(server)
        except StoreError as error:
            _log.warning("servers are noted later: %s", error)

    async def channel_gone(self, channel: int) -> None:
        """Forget the boards of a deleted channel, and send its reminders another way."""
        try:
            await self._memory.store.boards.channel_gone(channel)
            await self._memory.store.reminders.channel_gone(channel)
        except StoreError as error:
            _log.warning("a deleted channel is noted later: %s", error)

    async def left(self, server: int) -> None:
        """Note that a server removed the bot."""
        try:
            await self._memory.store.servers.left(server, self._memory.clock())
        except StoreError as error:
            _log.warning("a server that left is noted later: %s", error)

    async def came(self, server: int) -> None:
        """Note that a server added the bot."""
        try:
            await self._memory.store.servers.came(server)
        except StoreError as error:
            _log.warning("a server that came is noted later: %s", error)

    async def _keep_counts(self) -> float:
        await self._memory.keep_counts()
        return _COUNTS_S

    async def _look_around(self) -> float:
        await self._memory.look_around()
        return _WISHES_S

    async def _sweep(self) -> float:
        now, store = self._memory.clock(), self._memory.store
        gone = await store.servers.sweep(now)
        old = await store.reminders.sweep(now)
        if gone or old:
            _log.info("deleted %d servers that left and %d old reminders", gone, old)
        return _SWEEP_S
