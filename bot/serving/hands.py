"""The hands of one process: they work on what is claimed, several pieces at once, at a pace.

A piece is claimed only when a hand is free for it, so no claim runs out while it waits; and what
fails keeps no other from being done.
"""

import asyncio
from collections.abc import Awaitable, Callable, Sequence
from typing import Final, TypeVar

from bot.database.errors import StoreError
from bot.serving.failures import note_failure

__all__ = ["EACH_WITHIN_S", "Hands", "Pace"]

_Piece = TypeVar("_Piece")

EACH_WITHIN_S: Final = 60.0
"""How long Discord may take over one piece: well within its claim."""

# Two requests each, of the fifty a second that Discord takes from a bot.
_A_SECOND: Final = 20
# How soon what fell due meanwhile is claimed although nothing was finished.
_LOOK_AGAIN_S: Final = 5.0


class Pace:
    """Turns, so many a second over all that the bot writes by itself.

    ``share`` is the part of the bot that this process is: the limits are those of the whole.
    """

    def __init__(self, share: float = 1.0) -> None:
        self._every_s = 1 / (_A_SECOND * share)
        self._next_at = 0.0

    async def turn(self) -> None:
        """Wait for a turn."""
        now = asyncio.get_running_loop().time()
        at = max(now, self._next_at)
        self._next_at = at + self._every_s
        if at > now:
            await asyncio.sleep(at - now)

    def refused(self) -> None:
        """Leave out a turn: ten thousand refusals in ten minutes shut a whole address out."""
        self._next_at += self._every_s


class Hands:
    """So many hands of one process; once they are ``resting``, nothing more is claimed."""

    def __init__(self, by: str, most: int, pace: Pace) -> None:
        self.by = by
        self.pace = pace
        self.resting = False
        self._most = most

    async def work_off(
        self,
        claim: Callable[[int], Awaitable[Sequence[_Piece]]],
        work: Callable[[_Piece], Awaitable[None]],
    ) -> None:
        """Work until nothing can be claimed; when the store fails, finish what was begun."""
        running: set[asyncio.Task[None]] = set()
        trouble: StoreError | None = None
        try:
            while True:
                if trouble is None and not self.resting:
                    try:
                        claimed = await claim(self._most - len(running))
                    except StoreError as error:
                        trouble, claimed = error, ()
                    running |= {asyncio.ensure_future(work(piece)) for piece in claimed}
                if not running:
                    break
                done, running = await self._some(running)
                trouble = trouble or _trouble(done)
        finally:
            for task in running:
                task.cancel()
            await asyncio.gather(*running, return_exceptions=True)
        if trouble is not None:
            raise trouble

    async def _some(
        self, running: set[asyncio.Task[None]]
    ) -> tuple[set[asyncio.Task[None]], set[asyncio.Task[None]]]:
        """Return what is done and what is not, once so many hands are free that a claim pays."""
        done: set[asyncio.Task[None]] = set()
        while True:
            now_done, running = await asyncio.wait(
                running, timeout=_LOOK_AGAIN_S, return_when=asyncio.FIRST_COMPLETED
            )
            done |= now_done
            if len(running) <= self._most // 2:
                return done, running


def _trouble(done: set[asyncio.Task[None]]) -> StoreError | None:
    """Return the trouble of the store, if there was one; log what nobody expected."""
    trouble = None
    for task in done:
        error = task.exception()
        if isinstance(error, StoreError):
            trouble = error
        elif error is not None:
            note_failure(error, "working on what is due")
    return trouble
