"""The bot watched by machines on this host: its health and its counts, when a port is set."""

import asyncio
from collections.abc import AsyncIterator, Mapping
from contextlib import asynccontextmanager
from typing import TYPE_CHECKING

from bot.database.standing import trouble_of
from bot.operating.health import serve_health
from bot.operating.stalls import Stalls, watch_stalls

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["watched"]

_NOT_CONNECTED = "it is not connected"


@asynccontextmanager
async def watched(client: "Noonstone", port: int | None) -> AsyncIterator[None]:
    """Serve ``/healthz`` and ``/metrics`` on 127.0.0.1 until the block ends, if there is a port.

    Fails with PortTakenError where something else listens there.
    """
    if port is None:
        yield
        return
    loop = asyncio.get_running_loop()
    stalls = Stalls()
    client.metrics.servers.set_function(lambda: len(client.guilds))
    client.metrics.stall.set_function(lambda: stalls.longest_s(loop.time()))
    runner = await serve_health(port, lambda: _parts(client), client.metrics)
    watch = asyncio.create_task(watch_stalls(stalls))
    try:
        yield
    finally:
        watch.cancel()
        await runner.cleanup()


async def _parts(client: "Noonstone") -> Mapping[str, str]:
    parts = {"gateway": "" if client.connected else _NOT_CONNECTED}
    if client.memory is not None:
        trouble = await trouble_of(client.memory.store.database)
        parts["database"] = trouble.value if trouble else ""
    return parts
