"""A check-up before the bot is started: every part is fine, or there is something to do."""

import asyncio
from collections.abc import Iterator

from bot.operating.checkup import (
    Finding,
    State,
    clock_finding,
    folder_finding,
    packages_finding,
    python_finding,
)
from bot.settings import Settings

__all__ = ["examined", "report"]


def examined(settings: Settings) -> list[Finding]:
    """Look at every part; nothing is changed."""
    from bot.fronts.discord.trial import discord_findings

    token = settings.token.get_secret_value() if settings.token else None
    return [
        python_finding(),
        packages_finding(),
        clock_finding(),
        folder_finding(settings.data_folder()),
        asyncio.run(_database(settings)),
        _pictures(),
        *asyncio.run(discord_findings(token)),
    ]


def report(findings: list[Finding]) -> Iterator[str]:
    """Yield a line for each finding and one in the end."""
    width = max(len(state.value) for state in State)
    for finding in findings:
        yield f"{finding.state.value:<{width}}  {finding.part}: {finding.told}"
    to_do = sum(finding.state is State.TO_DO for finding in findings)
    yield f"{to_do} to do." if to_do else "Nothing to do."


async def _database(settings: Settings) -> Finding:
    from bot.database.address import address_of
    from bot.database.errors import StoreError, StoreUnavailableError
    from bot.database.standing import standing_of

    part = "database"
    try:
        url = address_of(settings.database_url.get_secret_value(), settings.data_folder())
        standing = await standing_of(url)
    except StoreUnavailableError:
        told = (
            "it cannot be reached or written: check that it runs, "
            "and the address and password in NOONSTONE_DATABASE_URL."
        )
        return Finding(part, State.TO_DO, told)
    except StoreError as error:
        return Finding(part, State.TO_DO, str(error))
    kind = url.get_backend_name()
    if standing.version is None:
        return Finding(part, State.FINE, f"{kind}, new; set up at the first start")
    if standing.version != standing.newest:
        told = (
            f"{kind}, version {standing.version}; the next start brings it to "
            f"{standing.newest}: make a backup before"
        )
        return Finding(part, State.FINE, told)
    return Finding(part, State.FINE, f"{kind}, version {standing.version}")


def _pictures() -> Finding:
    from bot.drawing import Axis, Chart, Line

    part = "pictures"
    x, y = Axis("distance [in]", 0.0, 1.0), Axis("UVI", 0.0, 1.0)
    trial = Chart("Trial", "", x, y, (Line("", (0.0, 1.0), (0.0, 1.0)),))
    try:
        from bot.render.picture import draw
        from bot.render.picture.lettering import font_files

        letters, size = len(font_files()), len(draw(trial))
    except Exception as error:
        told = f"none can be drawn ({type(error).__name__}: {error}): install it again."
        return Finding(part, State.TO_DO, told)
    return Finding(part, State.FINE, f"drawn, with letters in {letters} weights ({size} bytes)")
