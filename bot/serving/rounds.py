"""Work that is done again and again: soon when woken, and never ended by an error."""

import asyncio
import logging
from collections.abc import Awaitable, Callable

from bot.database.errors import StoreUnavailableError
from bot.serving.failures import note_failure

__all__ = ["Rounds"]

_log = logging.getLogger(__name__)

_AFTER_FAILURE_S = 30.0
# A round that is cut off in the middle of a write leaves its connection in disorder.
_FINISH_WITHIN_S = 1.5


class Rounds:
    """A task that does one round of work, then waits as long as that round says."""

    def __init__(self, name: str, work: Callable[[], Awaitable[float]]) -> None:
        self._name = name
        self._work = work
        self._woken = asyncio.Event()
        self._task: asyncio.Task[None] | None = None
        self._stopping = False

    def start(self) -> None:
        """Begin with the first round."""
        self._task = asyncio.create_task(self._run(), name=self._name)

    def wake(self) -> None:
        """Have the next round begin at once."""
        self._woken.set()

    async def stop(self) -> None:
        """End after this round, or in the middle of a long one."""
        if self._task is None:
            return
        self._stopping = True
        self.wake()
        done, _ = await asyncio.wait({self._task}, timeout=_FINISH_WITHIN_S)
        if not done:
            self._task.cancel()
            await asyncio.gather(self._task, return_exceptions=True)
        self._task = None

    async def _run(self) -> None:
        while not self._stopping:
            self._woken.clear()
            wait_s = await self._round()
            if self._stopping:
                return
            try:
                async with asyncio.timeout(wait_s):
                    await self._woken.wait()
            except TimeoutError:
                continue

    async def _round(self) -> float:
        try:
            return await self._work()
        except StoreUnavailableError as error:
            _log.warning("%s must wait: %s", self._name, error)
        except Exception as error:
            note_failure(error, self._name)
        return _AFTER_FAILURE_S
