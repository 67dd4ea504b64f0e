"""The websocket half of the stand-in: HELLO, IDENTIFY, READY, events, RESUME, and its faults."""

import asyncio
import json
import zlib
from collections import deque
from dataclasses import dataclass, field
from typing import Any, Final

from aiohttp import WSMsgType, web

from tests.discord.limits import Json
from tests.discord.payloads import APPLICATION_ID, bot_user, guild
from tests.discord.platform import Platform

__all__ = ["Connection", "Gateway", "Session"]

DISPATCH, HEARTBEAT, IDENTIFY, RESUME = 0, 1, 2, 6
RECONNECT, INVALID_SESSION, HELLO, HEARTBEAT_ACK = 7, 9, 10, 11
# GUILD_MEMBERS, GUILD_PRESENCES and MESSAGE_CONTENT.
PRIVILEGED: Final = 1 << 1 | 1 << 8 | 1 << 15
AUTHENTICATION_FAILED, DISALLOWED_INTENTS = 4004, 4014
MOST_BYTES_SENT = 4096
GUILDS_A_SHARD = 2500
MOST_KEPT = 1000


class Connection:
    """One websocket, compressed when its address asked for it."""

    def __init__(self, request: web.Request, socket: web.WebSocketResponse) -> None:
        wanted = request.query.get("compress")
        assert wanted in (None, "zlib-stream"), f"the stand-in does not speak {wanted}"
        self._zlib = zlib.compressobj() if wanted else None
        self._request = request
        self._lock = asyncio.Lock()
        self.socket = socket

    async def send(self, payload: Json) -> None:
        """Send one payload, in order."""
        text = json.dumps(payload)
        async with self._lock:
            if self.socket.closed:
                return
            if self._zlib is None:
                await self.socket.send_str(text)
            else:
                packed = self._zlib.compress(text.encode())
                await self.socket.send_bytes(packed + self._zlib.flush(zlib.Z_SYNC_FLUSH))

    def cut(self) -> None:
        """Lose the connection without a word."""
        assert self._request.transport is not None
        self._request.transport.abort()


@dataclass
class Session:
    """What Discord remembers of an identified client."""

    id: str
    intents: int
    shard: int
    shards: int
    connection: Connection | None
    events: int = 0
    # What a client that was away can still get.
    sent: deque[Json] = field(default_factory=lambda: deque(maxlen=MOST_KEPT))


class Gateway:
    """The gateway over a platform's state."""

    def __init__(self, platform: Platform, url: str = "") -> None:
        self.platform = platform
        self.url = url
        self.privileged_allowed = False
        # A code to close newcomers with, such as 4011 for a bot that must be sharded, and how many.
        self.refuse_with: int | None = None
        self.refusals = 1_000
        self.sessions: dict[str, Session] = {}
        self.identifies = 0
        self.resumes = 0
        self.heartbeats = 0

    async def handle(self, request: web.Request) -> web.StreamResponse:
        """Serve one websocket until it closes."""
        socket = web.WebSocketResponse(autoping=True)
        await socket.prepare(request)
        connection = Connection(request, socket)
        await connection.send({"op": HELLO, "d": {"heartbeat_interval": 41250}})
        async for message in socket:
            if message.type is WSMsgType.TEXT:
                assert len(message.data.encode()) <= MOST_BYTES_SENT
                await self._receive(connection, json.loads(message.data))
        for session in self.sessions.values():
            if session.connection is connection:
                session.connection = None
        self.platform.changed()
        return socket

    async def _receive(self, connection: Connection, payload: Json) -> None:
        if payload["op"] == HEARTBEAT:
            self.heartbeats += 1
            await connection.send({"op": HEARTBEAT_ACK})
        elif payload["op"] == IDENTIFY:
            await self._identify(connection, payload["d"])
        elif payload["op"] == RESUME:
            await self._resume(connection, payload["d"])
        self.platform.changed()

    async def _identify(self, connection: Connection, wanted: Json) -> None:
        self.identifies += 1
        if wanted["token"] != self.platform.token:
            await connection.socket.close(code=AUTHENTICATION_FAILED)
            return
        if wanted["intents"] & PRIVILEGED and not self.privileged_allowed:
            await connection.socket.close(code=DISALLOWED_INTENTS)
            return
        if self.refuse_with is not None and self.refusals > 0:
            self.refusals -= 1
            await connection.socket.close(code=self.refuse_with)
            return
        shard, shards = wanted.get("shard", (0, 1))
        identifier = f"session-{self.identifies}"
        session = Session(identifier, wanted["intents"], shard, shards, connection)
        self.sessions[identifier] = session
        mine = [s for s in self.platform.servers if s.has_bot and shard_of(s.id, shards) == shard]
        assert len(mine) <= GUILDS_A_SHARD
        ready = {
            "v": 10,
            "user": bot_user(),
            "guilds": [{"id": str(s.id), "unavailable": True} for s in mine],
            "session_id": identifier,
            "resume_gateway_url": self.url,
            "shard": [shard, shards],
            "application": {"id": APPLICATION_ID, "flags": 0},
        }
        await self._dispatch(session, "READY", ready)
        for server in mine:
            await self._dispatch(session, "GUILD_CREATE", guild(server))

    async def _resume(self, connection: Connection, wanted: Json) -> None:
        session = self.sessions.get(wanted["session_id"])
        if session is None or wanted["token"] != self.platform.token:
            await connection.send({"op": INVALID_SESSION, "d": False})
            return
        self.resumes += 1
        session.connection = connection
        for payload in [p for p in session.sent if p["s"] > (wanted["seq"] or 0)]:
            await connection.send(payload)
        await self._dispatch(session, "RESUMED", {})

    async def _dispatch(self, session: Session, event: str, data: Any) -> None:
        session.events += 1
        payload = {"op": DISPATCH, "t": event, "s": session.events, "d": data}
        session.sent.append(payload)
        if session.connection is not None:
            await session.connection.send(payload)

    def session(self, guild_id: int | None = None) -> Session | None:
        """Return the newest session that hears of this guild (None: of direct messages)."""
        for session in reversed(self.sessions.values()):
            if shard_of(guild_id or 0, session.shards) == session.shard:
                return session
        return None

    async def dispatch(self, event: str, data: Any, guild_id: int | None = None) -> None:
        """Send an event; a client that is away gets it when it resumes."""
        session = await self.platform.until(lambda: self.session(guild_id), "a session")
        await self._dispatch(session, event, data)

    def _connection(self) -> Connection:
        session = self.session()
        assert session is not None
        assert session.connection is not None
        return session.connection

    def cut(self) -> None:
        """Lose the client's connection without a word."""
        session = self.session()
        connection = self._connection()
        assert session is not None
        session.connection = None
        connection.cut()

    async def close(self, code: int) -> None:
        """Close the client's connection with a code."""
        await self._connection().socket.close(code=code)

    async def ask_to_reconnect(self) -> None:
        """Send op 7."""
        await self._connection().send({"op": RECONNECT, "d": None})

    async def invalidate(self, *, resumable: bool) -> None:
        """Send op 9; a session that cannot be resumed is forgotten."""
        connection = self._connection()
        if not resumable:
            self.sessions.clear()
        await connection.send({"op": INVALID_SESSION, "d": resumable})


def shard_of(guild_id: int, shards: int) -> int:
    """Return the shard that hears of a guild."""
    return (guild_id >> 22) % shards
