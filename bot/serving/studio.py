"""Pictures drawn beside the event loop: in processes of their own, each once, none for ever.

A picture never costs an answer: what hangs is killed, what crashes is started again, what is
too much at once is told so, and the caller gets a ``Missing`` instead of bytes.
"""

import asyncio
import logging
import os
import signal
from collections.abc import Awaitable, Callable
from concurrent.futures import ThreadPoolExecutor
from enum import Enum
from multiprocessing import get_context
from multiprocessing.connection import Connection
from multiprocessing.context import SpawnProcess
from queue import SimpleQueue
from threading import Lock

from cachetools import LRUCache

from bot.drawing import Axis, Chart, Drawing, Line, fingerprint

__all__ = ["Job", "Missing", "Studio", "dark", "fingerprint", "light"]

Job = Callable[[Drawing], bytes]
log = logging.getLogger(__name__)

_START_LIMIT_S = 60.0
_STEPS_BACK = 5
_AXIS = Axis("0", 0.0, 1.0)
_TRIAL = Chart("0", "", _AXIS, _AXIS, (Line("", (0.0, 1.0), (0.0, 1.0)),))


class Missing(Enum):
    """Why there is no picture."""

    BUSY = "busy"
    FAILED = "failed"


def light(drawing: Drawing) -> bytes:
    """Draw on light paper."""
    from bot.render.picture import draw

    return draw(drawing)


def dark(drawing: Drawing) -> bytes:
    """Draw on dark paper, as most people have their chat."""
    from bot.render.picture import Theme, draw

    return draw(drawing, Theme.DARK)


class Studio:
    """Draws pictures in a few processes and keeps the latest ones.

    ``waiting`` bounds the queue behind the workers, ``limit_s`` the time of one picture,
    ``most_bytes`` what is kept; ``sleep`` lets time pass.
    """

    def __init__(
        self,
        *,
        workers: int = 1,
        waiting: int = 16,
        limit_s: float = 10.0,
        most_bytes: int = 8_000_000,
        job: Job = light,
        sleep: Callable[[float], Awaitable[object]] = asyncio.sleep,
    ) -> None:
        self._closed = False
        self._sleep = sleep
        self._most_asked = workers + waiting
        self._kept: LRUCache[str, bytes] = LRUCache(most_bytes, getsizeof=len)
        self._asked: dict[str, asyncio.Task[bytes | Missing]] = {}
        self._workers = [_Worker(job, limit_s) for _ in range(workers)]
        self._idle: SimpleQueue[_Worker] = SimpleQueue()
        for worker in self._workers:
            self._idle.put(worker)
        self._threads = ThreadPoolExecutor(workers, thread_name_prefix="studio")

    async def png(self, drawing: Drawing) -> bytes | Missing:
        """Return the picture as PNG, or why there is none."""
        name = fingerprint(drawing)
        kept = self.kept(name)
        if kept is not None:
            return kept
        if name not in self._asked and len(self._asked) >= self._most_asked:
            return Missing.BUSY
        # Others may wait for the same picture: one who leaves must not take it with them.
        return await asyncio.shield(self._begun(name, drawing))

    def kept(self, name: str) -> bytes | None:
        """Return the picture of the drawing with a fingerprint, if it was drawn of late."""
        return self._kept.get(name)

    async def soon(self, drawing: Drawing, within_s: float) -> bytes | None:
        """Return the picture if it is kept, or drawn within so long where nobody else waits.

        What is not drawn by then is drawn all the same, and kept for who asks next.
        """
        name = fingerprint(drawing)
        kept = self.kept(name)
        if kept is not None or self._asked or self._closed:
            return kept
        drawn, over = self._begun(name, drawing), asyncio.ensure_future(self._sleep(within_s))
        await asyncio.wait((drawn, over), return_when=asyncio.FIRST_COMPLETED)
        over.cancel()
        return self.kept(name)

    def _begun(self, name: str, drawing: Drawing) -> "asyncio.Task[bytes | Missing]":
        if name not in self._asked:
            self._asked[name] = asyncio.create_task(self._draw(name, drawing))
        return self._asked[name]

    async def warm(self) -> None:
        """Start every worker and let it draw once, so that the first asker need not wait."""
        loop = asyncio.get_running_loop()
        trials = (
            loop.run_in_executor(self._threads, self._drawn_by_one, _TRIAL) for _ in self._workers
        )
        for outcome in await asyncio.gather(*trials, return_exceptions=True):
            if isinstance(outcome, BaseException) and not self._closed:
                log.warning("a picture process did not start: %r", outcome)

    async def close(self) -> None:
        """End the processes; who still waits for a picture is told that it failed."""
        self._closed = True
        self._threads.shutdown(wait=False, cancel_futures=True)
        for worker in self._workers:
            worker.close()
        await asyncio.gather(*self._asked.values(), return_exceptions=True)
        await asyncio.to_thread(self._threads.shutdown)

    async def _draw(self, name: str, drawing: Drawing) -> bytes | Missing:
        loop = asyncio.get_running_loop()
        try:
            png = await loop.run_in_executor(self._threads, self._drawn_by_one, drawing)
        except asyncio.CancelledError:
            if not self._closed:
                raise
            return Missing.FAILED
        except Exception as error:
            log.warning("a picture failed: %s: %s", type(error).__name__, error)
            return Missing.FAILED
        finally:
            del self._asked[name]
        if len(png) <= self._kept.maxsize:
            self._kept[name] = png
        return png

    def _drawn_by_one(self, drawing: Drawing) -> bytes:
        worker = self._idle.get()
        try:
            return worker.draw(drawing)
        finally:
            self._idle.put(worker)


class _Worker:
    """One process that draws one picture at a time; started when needed, killed when it hangs."""

    def __init__(self, job: Job, limit_s: float) -> None:
        self._job, self._limit_s = job, limit_s
        self._running: tuple[SpawnProcess, Connection] | None = None
        self._closed = False
        self._lock = Lock()

    def draw(self, drawing: Drawing) -> bytes:
        """Return the picture; fails with what went wrong, and the process is then new."""
        pipe, new = self._pipe()
        try:
            # Starting takes its time and is no fault of the picture's.
            if new and not (pipe.poll(_START_LIMIT_S) and pipe.recv()):
                raise TimeoutError(f"no process within {_START_LIMIT_S} s")
            pipe.send(drawing)
            if not pipe.poll(self._limit_s):
                raise TimeoutError(f"not drawn within {self._limit_s} s")
            answer: bytes | str = pipe.recv()
        except (EOFError, OSError):
            self._end()
            raise
        if isinstance(answer, str):
            raise RuntimeError(answer)
        return answer

    def close(self) -> None:
        """End the process and start no other."""
        self._closed = True
        self._end()

    def _pipe(self) -> tuple[Connection, bool]:
        """Return the pipe to the process, and whether that was started just now."""
        with self._lock:
            if self._closed:
                raise EOFError("the studio is closed")
            new = self._running is None
            if self._running is None:
                spawn = get_context("spawn")
                ours, theirs = spawn.Pipe()
                process = spawn.Process(target=_work, args=(theirs, self._job), daemon=True)
                process.start()
                theirs.close()
                self._running = process, ours
            return self._running[1], new

    def _end(self) -> None:
        with self._lock:
            if self._running is None:
                return
            process, pipe = self._running
            self._running = None
        process.kill()
        process.join()
        process.close()
        pipe.close()


def _work(pipe: Connection, job: Job) -> None:
    """Draw what comes through the pipe until the other side is gone."""
    # Ctrl+C is for the parent, which then closes the pipe.
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    # What fails is told through the pipe; what libraries do for the first time is no news.
    logging.disable(logging.WARNING)
    if hasattr(os, "nice"):
        # Answers come first: on a busy machine a picture waits, not the event loop.
        os.nice(_STEPS_BACK)
    pipe.send(True)
    while True:
        try:
            drawing = pipe.recv()
        except EOFError:
            return
        try:
            answer: bytes | str = job(drawing)
        except Exception as error:
            answer = f"{type(error).__name__}: {error}"
        pipe.send(answer)
