"""For machines on localhost: ``/healthz`` says whether the bot works, ``/metrics`` counts."""

from collections.abc import Awaitable, Callable, Mapping

from aiohttp import web
from prometheus_client import CONTENT_TYPE_LATEST, generate_latest

from bot.operating.metrics import Metrics

__all__ = ["PortTakenError", "health_app", "serve_health"]


class PortTakenError(Exception):
    """Something else listens on the port."""

    def __init__(self, port: int) -> None:
        super().__init__(f"port {port} cannot be listened on; choose another, or none.")


Checks = Callable[[], Awaitable[Mapping[str, str]]]


def health_app(checks: Checks, metrics: Metrics) -> web.Application:
    """Return the application; ``checks`` names each part, and why if it does not work."""

    async def healthz(_: web.Request) -> web.Response:
        found = dict(await checks())
        causes = {part: cause for part, cause in found.items() if cause}
        told = {"healthy": not causes, "parts": {part: not found[part] for part in found}}
        return web.json_response({**told, "causes": causes}, status=503 if causes else 200)

    async def counts(_: web.Request) -> web.Response:
        return web.Response(
            body=generate_latest(metrics.registry), headers={"Content-Type": CONTENT_TYPE_LATEST}
        )

    app = web.Application()
    app.add_routes([web.get("/healthz", healthz), web.get("/metrics", counts)])
    return app


async def serve_health(port: int, checks: Checks, metrics: Metrics) -> web.AppRunner:
    """Serve on 127.0.0.1 only, until the runner is cleaned up; fails with PortTakenError."""
    runner = web.AppRunner(health_app(checks, metrics), access_log=None)
    await runner.setup()
    try:
        await web.TCPSite(runner, "127.0.0.1", port).start()
    except OSError as error:
        await runner.cleanup()
        raise PortTakenError(port) from error
    return runner
