"""Who asks: how they want to be answered, what day it is where they live, what can be offered."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date, datetime
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

from bot.desk import Desk
from bot.language.tongue import Tongue
from bot.preferences import LANGUAGES, Language, Preferences
from bot.saved.group import NOTHING_OWN, Own, ServerSettings
from bot.saved.keeper import KeeperSettings
from bot.saved.pool import Shared
from calc.animals import animal_name

if TYPE_CHECKING:
    from bot.database.store import Store

__all__ = ["asked_by", "local_now", "merged", "names_of", "offered", "own_of", "preferred", "today"]


async def preferred(base: Preferences, desk: Desk) -> Preferences:
    """Return how to answer at this desk."""
    keeper = await desk.store.keepers.settings(desk.keeper)
    if desk.server is None:
        return asked_by(base, desk.now, keeper)
    group = await desk.store.servers.settings(desk.server)
    own = await own_of(desk.store, desk.server, desk.now.date())
    return asked_by(base, desk.now, keeper, group, own)


def asked_by(
    base: Preferences,
    now: datetime,
    keeper: KeeperSettings,
    group: ServerSettings | None = None,
    own: Own = NOTHING_OWN,
) -> Preferences:
    """Return how to answer a keeper of a group at a moment, on the day where the keeper lives."""
    zone = ZoneInfo(keeper.zone or (group.zone if group else None) or "UTC")
    return merged(replace(base, today=now.astimezone(zone).date()), keeper, group, own)


async def own_of(store: "Store", server: int, today: date) -> Own:
    """Return a group's own figures, with what its keepers' readings say where there are any."""
    own, shared = await store.figures.own(server), await store.pool.of_group(server)
    if not shared:
        return own
    import asyncio

    # Hundreds of readings take some milliseconds: beside the event loop.
    return await asyncio.to_thread(_with_readings, own, shared, today)


def _with_readings(own: Own, shared: Sequence[Shared], today: date) -> Own:
    from bot.pooled import classes_of, fading_of, reads_of

    reads = reads_of(shared, today)
    classes, fading = classes_of(reads), fading_of(reads)
    if not classes and fading is None:
        return own
    figures = {name: getattr(own, name) for name in ("lamps", "screens", "targets", "animals")}
    return Own(**figures, classes=classes, fading=fading)


def merged(
    base: Preferences,
    keeper: KeeperSettings,
    group: ServerSettings | None = None,
    own: Own = NOTHING_OWN,
) -> Preferences:
    """Return how to answer: the keeper's wish first, then the group's, then ours."""
    if group is None:
        return replace(
            base,
            units=keeper.units or base.units,
            language=_language(keeper.language) or base.language,
        )
    return replace(
        base,
        language=_language(keeper.language or group.language) or base.language,
        units=keeper.units or group.units or base.units,
        guide_url=group.guide_url or base.guide_url,
        default_animal=animal_name(group.animal)
        if group.animal and own.knows(group.animal)
        else base.default_animal,
        own=own,
        vets=group.vets or "",
    )


def _language(tongue: Tongue | None) -> Language | None:
    return next((language for language in LANGUAGES if language == tongue), None)


async def local_now(desk: Desk) -> datetime:
    """Return the time at the keeper's place, as far as a zone is known; else in UTC."""
    zone = (await desk.store.keepers.settings(desk.keeper)).zone
    if zone is None and desk.server is not None:
        zone = (await desk.store.servers.settings(desk.server)).zone
    return desk.now.astimezone(ZoneInfo(zone or "UTC"))


async def today(desk: Desk) -> date:
    """Return the day at the keeper's place."""
    return (await local_now(desk)).date()


async def offered(desk: Desk) -> Mapping[str, tuple[str, ...]]:
    """Return what can complete an option at this desk, by the kind of the option."""
    reminders = await desk.store.reminders.all(desk.keeper)
    lists = {
        "enclosure": await desk.store.enclosures.names(desk.keeper),
        "stock": tuple(spare.name for spare in await desk.store.spares.all(desk.keeper)),
        "reminder": tuple(str(reminder.id) for reminder in reminders),
    }
    if desk.server is not None:
        lists |= names_of(await desk.store.figures.own(desk.server))
        cases = await desk.store.cases.of_group(desk.server, desk.channel)
        lists["case"] = tuple(str(case.number) for case in cases)
    return lists


def names_of(own: Own) -> dict[str, tuple[str, ...]]:
    """Return what of a group's own can complete an option, by the kind of the option."""
    lamps = tuple(lamp.name for lamp in own.lamps)
    screens = tuple(screen.name for screen in own.screens)
    named = {
        "own_lamp": lamps,
        "tube": lamps,
        "uv_lamp": lamps,
        "own_screen": screens,
        "screen": screens,
    }
    return {**named, "animal": own.names}
