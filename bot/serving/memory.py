"""What the bot remembers of who asks and where, at hand for every question.

Settings and own figures are read from the store once a while and kept, and only of those who have
any; a change made through this process counts at once, one made through another within a minute
or two. Without its store the bot answers as if nothing were saved.
"""

import asyncio
import logging
import time
from collections import Counter
from collections.abc import Callable, Container, Coroutine, Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Any, Final, TypeVar

from cachetools import TTLCache

from bot.asker import merged, names_of, offered, own_of
from bot.database.errors import StoreError
from bot.database.store import Store
from bot.desk import Desk
from bot.preferences import Preferences
from bot.questions.saved.counting import asked_for
from bot.saved.counts import Asked
from bot.saved.group import NOTHING_OWN, Own, ServerSettings, Shown
from bot.saved.keeper import KeeperSettings
from bot.saved.public import EVERYWHERE, Posted, PublicRule, Reached, Who, in_force

__all__ = ["Allowed", "Asker", "Memory"]

_log = logging.getLogger(__name__)


@dataclass(frozen=True, slots=True)
class Asker:
    """Who asks, and where.

    ``server`` is None in direct messages, and in a server that did not add the bot. A thread has
    its channel as ``parent``.
    """

    person: int
    server: int | None = None
    channel: int | None = None
    parent: int | None = None


@dataclass(frozen=True, slots=True)
class Allowed:
    """Who may post publicly in a place, and how often an hour; ``role`` is that of the helpers."""

    who: Who
    most: int
    role: int | None

    def has(self, roles: Container[int], *, moderator: bool) -> bool:
        """Say whether somebody with these roles may post."""
        if self.who is Who.EVERYBODY or moderator:
            return True
        return self.who is Who.HELPERS and self.role is not None and self.role in roles


_Value = TypeVar("_Value")
_FRESH_S: Final = 60.0
_MOST: Final = 5_000
# An answer must leave within three seconds, with or without what is saved.
_PATIENCE_S: Final = 1.0
_PAUSE_S: Final = 10.0
# The kinds of option that what a keeper saved can complete.
_OF_KEEPERS: Final = frozenset({"enclosure", "reminder", "case", "stock"})


@dataclass(frozen=True, slots=True)
class _Group:
    settings: ServerSettings
    own: Own
    channels: Mapping[int, Shown]
    public: Mapping[int, PublicRule]


_NO_WISH: Final = KeeperSettings()
_NOTHING_SET: Final = _Group(ServerSettings(), NOTHING_OWN, {}, {})


class Memory:
    """The store as the front uses it."""

    def __init__(self, store: Store, clock: Callable[[], datetime] = lambda: datetime.now(UTC)):
        self.store = store
        self.clock = clock
        self._groups: TTLCache[int, _Group] = TTLCache(_MOST, _FRESH_S)
        self._keepers: TTLCache[int, KeeperSettings] = TTLCache(_MOST, _FRESH_S)
        # Who has set anything, once that is known, and who changed something since, and when.
        self._with_wishes: tuple[frozenset[int], frozenset[int]] | None = None
        self._changed: dict[int, float] = {}
        self._looking = asyncio.Lock()
        self._counts: Counter[tuple[int, Asked, str]] = Counter()
        self._paused_until = 0.0

    def desk(self, asker: Asker, *, moderator: bool = False, lacking: tuple[str, ...] = ()) -> Desk:
        """Return the desk at which somebody asks; ``lacking`` are rights that the bot has not."""
        return Desk(
            self.store,
            keeper=asker.person,
            server=asker.server,
            channel=asker.channel,
            moderator=moderator,
            now=self.clock(),
            lacking=lacking,
            parent=asker.parent,
        )

    async def preferences(self, asker: Asker, base: Preferences) -> Preferences:
        """Return how to answer: by the asker's and the group's settings, as far as known."""
        keeper, group = await self._known(asker)
        if group is None:
            return merged(base, keeper)
        return merged(base, keeper, group.settings, group.own)

    async def shown(self, asker: Asker) -> Shown | None:
        """Return who sees the answers here, where the group has said so.

        A thread has what its channel has, unless something was said in the thread itself.
        """
        _, group = await self._known(asker)
        if group is None or asker.channel is None:
            return None
        channels = group.channels
        return channels.get(asker.channel) or channels.get(asker.parent or asker.channel)

    async def public(self, asker: Asker) -> Allowed:
        """Return who may post publicly here and how often; a thread has what its channel has."""
        _, group = await self._known(asker)
        if group is None:
            return Allowed(*in_force(()), None)
        places = (asker.channel, asker.parent, EVERYWHERE)
        rules = (group.public.get(place) for place in places if place is not None)
        return Allowed(*in_force(rules), group.settings.helper_role)

    async def has_places(self, asker: Asker) -> bool:
        """Say whether the group said anything of single channels."""
        _, group = await self._known(asker)
        return group is not None and bool(group.channels or group.public)

    async def note_post(
        self, asker: Asker, command: str, pings: int, most: int | None
    ) -> Reached | None:
        """Note a public post before it is sent; where a share is used up, return which one."""
        if asker.server is None or asker.channel is None:
            return None
        post = Posted(
            at=self.clock(),
            who=asker.person,
            channel=asker.channel,
            command=command,
            pings=pings,
        )
        try:
            return await _in_time(self.store.public.note(asker.server, post, most))
        except (StoreError, TimeoutError) as error:
            _log.warning("a public post is not noted: %s", str(error) or "the store is slow")
            return None

    async def helpers(self, asker: Asker) -> int | None:
        """Return the channel in which helpers are asked, where the group has one."""
        _, group = await self._known(asker)
        return None if group is None else group.settings.helpers

    async def offers(self, asker: Asker, kind: str) -> Mapping[str, tuple[str, ...]]:
        """Return what of the asker's and the group's own can complete an option of a kind."""
        if kind not in _OF_KEEPERS:
            _, group = await self._known(asker)
            return names_of(group.own) if group else {}
        try:
            return await _in_time(offered(self.desk(asker)))
        except (StoreError, TimeoutError):
            return {}

    def changed(self, asker: Asker) -> None:
        """Read anew what a question may have changed."""
        now = time.monotonic()
        self._changed[asker.person] = now
        self._keepers.pop(asker.person, None)
        if asker.server is not None:
            self._changed[asker.server] = now
            self._groups.pop(asker.server, None)

    async def look_around(self) -> None:
        """Learn anew who has set anything."""
        async with self._looking:
            began = time.monotonic()
            self._with_wishes = (
                await self.store.wishes.keepers(),
                await self.store.wishes.groups(),
            )
            self._changed = {who: at for who, at in self._changed.items() if at >= began}

    async def group(self, server: int) -> tuple[ServerSettings, Own]:
        """Return a group's settings and own figures from the store."""
        group = await self._read_group(server)
        return group.settings, group.own

    # --- counts ------------------------------------------------------------------------------

    def count(
        self,
        asker: Asker,
        command: str,
        given: Mapping[str, str],
        *,
        again: bool = False,
    ) -> None:
        """Count an answered question of a server, to be kept with the next round.

        What is shown ``again`` in the place of another answer is no new question, but a page that
        is turned to is one more page that is opened.
        """
        if asker.server is not None:
            for kind, name in asked_for(command, given):
                if kind is Asked.PAGE or not again:
                    self._counts[asker.server, kind, name] += 1

    async def keep_counts(self, only: int | None = None) -> None:
        """Keep what was counted, of all servers or of one; what cannot be kept is kept later."""
        today = self.clock().date()
        of_each: dict[int, list[tuple[Asked, str]]] = {}
        for server, kind, name in self._counts:
            if only in (None, server):
                of_each.setdefault(server, []).append((kind, name))
        for server, keys in of_each.items():
            # Taken one by one, so that what fails for one is not lost for the others.
            taken = {key: self._counts.pop((server, *key), 0) for key in keys}
            asked = {key: times for key, times in taken.items() if times}
            try:
                await self.store.counts.add(server, today, asked)
            except StoreError:
                self._counts.update({(server, *key): times for key, times in asked.items()})
                raise

    # --- reading -----------------------------------------------------------------------------

    async def _known(self, asker: Asker) -> tuple[KeeperSettings, _Group | None]:
        person, server = asker.person, asker.server
        keeper = self._keepers.get(person)
        group = None if server is None else self._groups.get(server)
        if self._with_wishes is not None:
            keepers, groups = self._with_wishes
            if person not in keepers and person not in self._changed:
                keeper = _NO_WISH
            if server is not None and server not in groups and server not in self._changed:
                group = _NOTHING_SET
        if keeper is not None and (group is not None or server is None):
            return keeper, group
        if time.monotonic() < self._paused_until:
            return keeper or _NO_WISH, group
        try:
            keeper = keeper or await _in_time(self._read_keeper(person))
            if server is not None:
                group = group or await _in_time(self._read_group(server))
        except (StoreError, TimeoutError) as error:
            # The next askers are not kept waiting for the same.
            self._paused_until = time.monotonic() + _PAUSE_S
            _log.warning("answering without what is saved: %s", str(error) or "the store is slow")
        return keeper or _NO_WISH, group

    async def _read_keeper(self, person: int) -> KeeperSettings:
        keeper = await self.store.keepers.settings(person)
        self._keepers[person] = keeper
        return keeper

    async def _read_group(self, server: int) -> _Group:
        kept = await self.store.exchange.server(server)
        own = await own_of(self.store, server, self.clock().date())
        group = _Group(kept.settings, own, kept.channels, kept.public)
        self._groups[server] = group
        return group


async def _in_time(reading: Coroutine[Any, Any, _Value]) -> _Value:
    """Return what is read, or stop waiting; the reading itself goes on and is not cut off."""
    task = asyncio.create_task(reading)
    done, _ = await asyncio.wait({task}, timeout=_PATIENCE_S)
    if not done:
        task.add_done_callback(lambda ended: ended.cancelled() or ended.exception())
        raise TimeoutError
    return task.result()
