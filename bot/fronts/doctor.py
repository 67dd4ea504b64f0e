"""A check-up before the bot is started: every part is fine, or there is something to do."""

import asyncio
from collections.abc import Iterator

from bot.facts import Say
from bot.language.units import Units
from bot.operating.checkup import (
    Examined,
    Finding,
    Looked,
    State,
    clock_finding,
    folder_finding,
    found,
    packages_finding,
    python_finding,
    to_do,
)
from bot.preferences import FIRST, Language
from bot.problems import store_told
from bot.saying.voice import voice
from bot.settings import Settings

__all__ = ["examined", "examined_database", "report"]


def examined(settings: Settings) -> list[Finding]:
    """Look at every part; nothing is changed."""
    from bot.fronts.discord.trial import discord_findings

    token = settings.token.get_secret_value() if settings.token else None
    return [
        python_finding(),
        packages_finding(),
        clock_finding(),
        folder_finding(settings.data_folder()),
        asyncio.run(examined_database(settings)),
        _pictures(),
        *asyncio.run(discord_findings(token)),
    ]


def report(findings: list[Finding], language: Language = FIRST) -> Iterator[str]:
    """Yield a line for each finding and one in the end."""
    say = voice(language, Units.CM).text
    states = {state: say(Say.by("doctor-state", state)) for state in State}
    width = max(map(len, states.values()))
    for finding in findings:
        part = say(Say.by("doctor-part", finding.part))
        yield f"{states[finding.state]:<{width}}  {part}: {say(finding.told)}"
    many = sum(finding.state is State.TO_DO for finding in findings)
    yield say(Say("doctor-end", Examined(count=many)))


async def examined_database(settings: Settings) -> Finding:
    """Look how the database stands, and where it is damaged or refuses, why."""
    from bot.database.address import address_of
    from bot.database.errors import StoreError, StoreUnavailableError
    from bot.database.standing import standing_of

    try:
        url = address_of(settings.database_url.get_secret_value(), settings.data_folder())
        standing = await standing_of(url)
    except StoreUnavailableError as error:
        where = url.database or "" if url.get_backend_name() == "sqlite" else url.host or ""
        return Finding(
            Looked.DATABASE,
            State.TO_DO,
            Say.by("doctor-database", error.cause, Examined(where)),
        )
    except StoreError as error:
        return Finding(Looked.DATABASE, State.TO_DO, store_told(error))
    kind = url.get_backend_name()
    if standing.version is None:
        return found(Looked.DATABASE, "database-new", Examined(kind))
    if standing.version != standing.newest:
        seen = Examined(f"{kind}, {standing.version}", standing.newest)
        return found(Looked.DATABASE, "database-old", seen)
    return found(Looked.DATABASE, "database", Examined(f"{kind}, {standing.version}"))


def _pictures() -> Finding:
    from bot.drawing import Axis, Chart, Line

    x, y = Axis("distance [in]", 0.0, 1.0), Axis("UVI", 0.0, 1.0)
    trial = Chart("Trial", "", x, y, (Line("", (0.0, 1.0), (0.0, 1.0)),))
    try:
        from bot.render.picture import draw
        from bot.render.picture.lettering import font_files

        letters, size = len(font_files()), len(draw(trial))
    except Exception as error:
        seen = Examined(f"{type(error).__name__}: {error}")
        return to_do(Looked.PICTURES, "pictures-none", seen)
    return found(Looked.PICTURES, "pictures", Examined(str(size), count=letters))
