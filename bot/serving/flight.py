"""What is being answered just now: one after the other, and finished before the bot leaves."""

import asyncio
from collections.abc import Iterator
from contextlib import contextmanager

__all__ = ["InFlight", "Turns"]

_TURNS = 3


class InFlight:
    """Counts the answers on their way; once ``leaving``, no question is taken any more."""

    def __init__(self) -> None:
        self.leaving = False
        self._count = 0
        self._none = asyncio.Event()
        self._none.set()

    @contextmanager
    def one(self) -> Iterator[None]:
        """Count an answer while the block lasts."""
        self._count += 1
        self._none.clear()
        try:
            yield
        finally:
            self._count -= 1
            if not self._count:
                self._none.set()

    async def ended(self, within_s: float) -> bool:
        """Wait until none is left, and say whether that came in time."""
        try:
            async with asyncio.timeout(within_s):
                # What has just arrived needs a turn of the loop before it is counted.
                for _ in range(_TURNS):
                    await asyncio.sleep(0)
                    await self._none.wait()
        except TimeoutError:
            return False
        return True


class Turns:
    """Work that is done in turns: between two of them the loop sends, receives and keeps time."""

    def __init__(self) -> None:
        self._lock = asyncio.Lock()

    async def __aenter__(self) -> None:
        await self._lock.acquire()

    async def __aexit__(self, *_: object) -> None:
        # Released at once, the next would begin before the loop had looked around.
        asyncio.get_running_loop().call_soon(self._lock.release)
