"""What the stand-in of Discord knows: messages, commands, interactions, faults, its clock."""

import asyncio
import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Literal, TypeVar

from tests.discord.cast import GARDEN, Person, Place, Server, in_thread
from tests.discord.limits import Breach, Json, form_errors

__all__ = ["ApiError", "Exchange", "Fault", "Platform", "Post", "Seen", "refuse_breaches"]

T = TypeVar("T")


_QUEUE = Path("/proc/self/schedstat")


def _queued_s() -> float:
    """Return how long this process could have run and had to wait, where the system tells it."""
    return int(_QUEUE.read_text("ascii").split()[1]) / 1e9 if _QUEUE.exists() else 0.0


class ApiError(Exception):
    """An answer of the API that is not a success."""

    def __init__(self, status: int, code: int, message: str, body: Json | None = None) -> None:
        super().__init__(f"{status} ({code}): {message}")
        self.status = status
        self.body = body or {"code": code, "message": message}


def refuse_breaches(breaches: Sequence[Breach]) -> None:
    """Refuse a payload that breaks a documented limit, as Discord does."""
    if breaches:
        told = "; ".join(f"{b.path}: {b.rule}: {b.sentence}" for b in breaches)
        raise ApiError(400, 50035, told, form_errors(breaches=list(breaches)))


@dataclass
class Post:
    """A message as stored: who may see it, whom it pings, and its files."""

    payload: Json
    seen_by: int | None
    pings: frozenset[str]
    files: dict[str, bytes] = field(default_factory=dict)
    loading: bool = False
    deleted: bool = False

    @property
    def id(self) -> int:
        """Return the message's id."""
        return int(self.payload["id"])

    @property
    def ephemeral(self) -> bool:
        """Say whether only one person sees it."""
        return self.seen_by is not None


@dataclass
class Exchange:
    """One interaction and all that was answered to it."""

    payload: Json
    person: Person
    place: Place
    born: float
    # When the first request to answer it came in.
    answered: float | None = None
    source: Post | None = None
    callback: Json | None = None
    original: Post | None = None
    follow_ups: list[Post] = field(default_factory=list)

    @property
    def token(self) -> str:
        """Return the token by which it is answered."""
        return str(self.payload["token"])


@dataclass
class Fault:
    """A fault for the next requests that match.

    ``status`` answers with that status before anything happens; ``drop`` cuts the connection
    before, ``lose`` after the request has taken effect; ``hold`` takes it up once ``released``.
    """

    path: str
    kind: Literal["status", "drop", "lose", "hold"] = "status"
    method: str = "POST"
    status: int = 500
    retry_after: float = 0.0
    through_proxy: bool = True
    times: int = 1
    released: asyncio.Event = field(default_factory=asyncio.Event)

    def strikes(self, method: str, path: str) -> bool:
        """Say whether the fault takes this request, and count it."""
        hit = self.times > 0 and method == self.method and re.search(self.path, path) is not None
        self.times -= hit
        return hit


@dataclass(frozen=True)
class Seen:
    """A request that arrived, and how it was answered (0: not at all)."""

    method: str
    path: str
    body: Json | None
    status: int


class Platform:
    """The state behind the stand-in's HTTP and gateway."""

    def __init__(self, servers: Sequence[Server] = (GARDEN,), token: str = "loopback") -> None:
        self.servers = list(servers)
        self.token = token
        self.ahead_s = 0.0
        # How long a request about channels takes, for what is measured.
        self.answer_delay_s = 0.0
        # How many connections the bot is told to make.
        self.shards_wanted = 1
        self.posts: dict[int, Post] = {}
        # What is attached to messages, and where it can be had.
        self.files: dict[str, bytes] = {}
        self.files_at = "https://files.invalid"
        self.commands: dict[int | None, list[Json]] = {None: []}
        self.syncs: list[int | None] = []
        self.exchanges: dict[str, Exchange] = {}
        self.pins: dict[int, list[int]] = {}
        self.direct_channels: dict[int, Person] = {}
        # What was sent under a number that is taken once; Discord forgets it after minutes.
        self.nonces: dict[tuple[int, str], Post] = {}
        self.people: dict[int, Person] = {}
        self.faults: list[Fault] = []
        self.seen: list[Seen] = []
        # Failures of the stand-in itself, which the world's end tells.
        self.broken: list[Exception] = []
        self._waiters: list[asyncio.Future[None]] = []

    def now(self) -> float:
        """Return the platform's time in seconds, which a test may move ahead.

        It stands still while this process waits for its turn on a busy machine.
        """
        return asyncio.get_running_loop().time() - _queued_s() + self.ahead_s

    def forget(self) -> None:
        """Forget what was said and asked so far, as a long run must."""
        for known in (self.posts, self.exchanges, self.pins, self.people, self.seen, self.files):
            known.clear()

    def changed(self) -> None:
        """Wake everybody who waits for something to happen."""
        waiters, self._waiters = self._waiters, []
        for waiter in waiters:
            if not waiter.done():
                waiter.set_result(None)

    async def until(self, look: Callable[[], T | None], what: str, within_s: float = 60.0) -> T:
        """Return what ``look`` finds as soon as it finds something."""
        try:
            async with asyncio.timeout(within_s):
                while not (found := look()):
                    waiter = asyncio.get_running_loop().create_future()
                    self._waiters.append(waiter)
                    await waiter
        except TimeoutError:
            last = "\n".join(f"  {s.method} {s.path} → {s.status}" for s in self.seen[-8:])
            raise AssertionError(f"waited in vain for {what}; the last requests:\n{last}") from None
        return found

    def server_of(self, channel_id: int) -> Server | None:
        """Return the server that a channel belongs to, or the channel of a thread."""
        return next(
            (s for s in self.servers if channel_id in (s.channel_id, in_thread(s).channel_id)), None
        )

    def post(self, message_id: int, channel_id: int | None = None) -> Post:
        """Return a message that the bot may reach by its channel."""
        post = self.posts.get(message_id)
        hidden = post is not None and channel_id is not None and post.ephemeral
        wrong = post is not None and channel_id not in (None, int(post.payload["channel_id"]))
        if post is None or post.deleted or hidden or wrong:
            raise ApiError(404, 10008, "Unknown Message")
        return post
