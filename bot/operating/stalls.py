"""How long the event loop was held up: whoever blocks it makes every asker wait."""

import asyncio
from collections import deque

__all__ = ["Stalls", "watch_stalls"]

_MINUTE_S = 60.0
_EVERY_S = 0.1


class Stalls:
    """The stalls of the last minute, few enough to look through at any time."""

    def __init__(self) -> None:
        self._falling: deque[tuple[float, float]] = deque()

    def note(self, now_s: float, late_s: float) -> None:
        """Note that the loop was ``late_s`` behind at ``now_s``."""
        # A shorter stall that came earlier can never be the longest again.
        while self._falling and self._falling[-1][1] <= late_s:
            self._falling.pop()
        self._falling.append((now_s, late_s))

    def longest_s(self, now_s: float) -> float:
        """Return the longest stall of the minute before ``now_s``."""
        while self._falling and self._falling[0][0] < now_s - _MINUTE_S:
            self._falling.popleft()
        return self._falling[0][1] if self._falling else 0.0


async def watch_stalls(stalls: Stalls) -> None:
    """Note, ten times a second, how late the loop wakes this task; runs until cancelled."""
    loop = asyncio.get_running_loop()
    while True:
        due = loop.time() + _EVERY_S
        await asyncio.sleep(_EVERY_S)
        now = loop.time()
        stalls.note(now, max(0.0, now - due))
