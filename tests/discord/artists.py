"""Stand-ins for the drawing, in a module of their own: another process imports it each time."""

import asyncio
import threading

from bot.drawing import Drawing

__all__ = ["Clock", "hopeless", "never", "no_time", "told"]


async def no_time(_: float) -> None:
    """Let all the time pass at once, so that no picture is ready in it."""


class Clock:
    """Time that stands still until it is ``over``; ``waits`` are what was waited for [s]."""

    def __init__(self) -> None:
        self.waits: list[float] = []
        self.over = asyncio.Event()

    async def sleep(self, seconds: float) -> None:
        """Wait until the time is over."""
        self.waits.append(seconds)
        await self.over.wait()


def told(drawing: Drawing) -> bytes:
    """Return what the picture would be of."""
    return f"{getattr(drawing, 'over', '')} {drawing.title}".strip().encode()


def hopeless(_: Drawing) -> bytes:
    """Fail at every picture."""
    raise ValueError("this one never works")


def never(_: Drawing) -> bytes:
    """Hang at every picture."""
    threading.Event().wait()
    return b""
