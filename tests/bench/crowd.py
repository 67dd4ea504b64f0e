"""A crowd of askers before a stand-in of Discord, and the bots that answer it as processes."""

import asyncio
import gc
import sys
from collections.abc import AsyncIterator, Awaitable, Callable, Mapping
from contextlib import asynccontextmanager
from itertools import count
from pathlib import Path
from statistics import quantiles

from tests.discord.cast import Person, direct
from tests.discord.platform import Exchange
from tests.discord.test_process import LAUNCH, Process, started
from tests.discord.world import World

__all__ = ["Crowd", "Given", "bare_bot", "crowd", "noonstone", "percentiles", "resident_bytes"]

Given = Mapping[str, str]
_START_WITHIN_S = 60.0
_BARE = Path(__file__).with_name("bare_bot.py")
_FIRST_ID = 4_000_000_001_000_000


class Crowd:
    """Always somebody else asks, so that no share is used up."""

    def __init__(self, world: World, process: Process) -> None:
        self.world = world
        self.process = process
        self._numbers = count(_FIRST_ID)

    async def begun(self, name: str, given: Given) -> Exchange:
        """Have a new person ask in direct messages; return what was answered to it."""
        person = Person(next(self._numbers), "somebody")
        asked = await self.world.begin(name, given, user=person, where=direct(person))
        await self.world.platform.until(lambda: asked.callback, f"an answer to {name}")
        return asked

    async def acknowledged_s(self, name: str, given: Given) -> float:
        """Return the seconds from a question to the first request that answers it."""
        asked = await self.begun(name, given)
        assert asked.answered is not None
        return asked.answered - asked.born


@asynccontextmanager
async def crowd(
    start: Callable[[World], Awaitable[Process]], world: World | None = None
) -> AsyncIterator[Crowd]:
    """Give a crowd before a bot that runs until the block ends."""
    world = world or World()
    await world.open()
    process = await start(world)
    try:
        await world.platform.until(
            lambda: world.gateway.session() and world.platform.commands[None],
            "the bot",
            within_s=_START_WITHIN_S,
        )
        # The driver's own collections would be taken for the bot's slowness.
        gc.collect()
        gc.disable()
        yield Crowd(world, process)
    finally:
        gc.enable()
        process.terminate()
        await process.communicate()
        await world.close()


async def bare_bot(world: World) -> Process:
    """Start the bot to compare with."""
    return await asyncio.create_subprocess_exec(
        sys.executable,
        str(_BARE),
        world.url,
        world.gateway.url,
        stdout=asyncio.subprocess.DEVNULL,
        stderr=asyncio.subprocess.DEVNULL,
    )


def noonstone(folder: Path, launch: str = LAUNCH) -> Callable[[World], Awaitable[Process]]:
    """Return how our bot is started, as it is for real."""
    return lambda world: started(world, folder, stderr=asyncio.subprocess.DEVNULL, launch=launch)


def percentiles(values: list[float]) -> tuple[float, float]:
    """Return the 50th and the 99th percentile."""
    cuts = quantiles(values, n=100)
    return cuts[49], cuts[98]


def resident_bytes(process: Process) -> int:
    """Return the memory that a process holds now."""
    status = Path(f"/proc/{process.pid}/status").read_text(encoding="ascii")
    line = next(line for line in status.splitlines() if line.startswith("VmRSS"))
    return 1024 * int(line.split()[1])
