"""A group's settings and figures: shown, changed. Words: ``words/<language>/group.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, auto

from bot.command import Command
from bot.desk import Desk
from bot.facts import Name, Say, Says
from bot.language.tongue import Tongue
from bot.language.units import Units
from bot.layered import Brief, Layered, Row
from bot.preferences import Context
from bot.queries.saved import NONE, Cleared
from bot.queries.server import AnswersQuery, SettingsQuery, ShowQuery
from bot.questions.animals import animal_asked
from bot.questions.owned import (
    OwnLampTold,
    OwnScreenTold,
    animal_told,
    lamp_told,
    screen_told,
    target_told,
)
from bot.questions.saved.unable import server_of, unable
from bot.questions.shared import name_of
from bot.saved.group import Shown
from bot.saved.group_file import ServerExport
from bot.saved.public import EVERYWHERE, PublicRule, Who

__all__ = [
    "SERVER_ANSWERS",
    "SERVER_SET",
    "SERVER_SHOW",
    "answers",
    "settings",
    "show",
    "tell_answers",
    "tell_settings",
    "tell_shown",
]


@dataclass(frozen=True, slots=True)
class OwnTargetTold:
    """A target of the group's own, and the animal that it is for."""

    species: Name
    told: Say


@dataclass(frozen=True, slots=True)
class OwnAnimalTold:
    """An animal of the group's own, and all that the group said of it."""

    name: str
    told: Say


@dataclass(frozen=True, slots=True)
class GroupShown:
    """All that a group has set; None: left to the asker."""

    units: Units | None
    animal: Name | None
    site: str | None
    zone: str | None
    language: Tongue | None
    vets: str | None
    helpers: str | None
    role: str | None
    posting: Who | None
    most: int | None
    places: int
    public: int
    private: int
    lamps: tuple[OwnLampTold, ...]
    screens: tuple[OwnScreenTold, ...]
    targets: tuple[OwnTargetTold, ...]
    animals: tuple[OwnAnimalTold, ...]

    @property
    def has_channels(self) -> bool:
        """Say whether anything was said of who sees the answers of a channel."""
        return self.public + self.private > 0

    @property
    def has_public(self) -> bool:
        """Say whether anything was said of what becomes public, anywhere."""
        return self.places > 0 or self.posting is not None or self.most is not None

    @property
    def settings(self) -> int:
        """Return how many settings there are."""
        told = (
            self.units,
            self.animal,
            self.site,
            self.zone,
            self.language,
            self.vets,
            self.helpers,
            self.role,
        )
        return sum(one is not None for one in told) + self.has_channels + self.has_public

    @property
    def figures(self) -> int:
        """Return how many figures of the group's own there are."""
        return sum(map(len, (self.lamps, self.screens, self.targets, self.animals)))


class Audience(Enum):
    """Who sees the answers of a channel."""

    PRIVATE = auto()
    PUBLIC = auto()
    USUAL = auto()


@dataclass(frozen=True, slots=True)
class AnswersShown:
    """Who sees the answers of this channel from now on."""

    audience: Audience


async def show(query: ShowQuery, context: Context, desk: Desk) -> GroupShown:
    """Return all that a group has set; the query has no options."""
    return _shown(await desk.store.exchange.server(server_of(desk, "server show")))


def _shown(kept: ServerExport) -> GroupShown:
    settings = kept.settings
    everywhere = kept.public.get(EVERYWHERE, PublicRule())
    public = sum(shown is Shown.PUBLIC for shown in kept.channels.values())
    return GroupShown(
        units=settings.units,
        animal=name_of(settings.animal) if settings.animal else None,
        site=settings.guide_url,
        zone=settings.zone,
        language=settings.language,
        vets=settings.vets,
        helpers=None if settings.helpers is None else str(settings.helpers),
        role=None if settings.helper_role is None else str(settings.helper_role),
        posting=everywhere.who,
        most=everywhere.most,
        places=sum(place != EVERYWHERE for place in kept.public),
        public=public,
        private=len(kept.channels) - public,
        lamps=tuple(map(lamp_told, kept.lamps)),
        screens=tuple(map(screen_told, kept.screens)),
        targets=tuple(OwnTargetTold(name_of(x.animal), target_told(x)) for x in kept.targets),
        animals=tuple(OwnAnimalTold(x.name, animal_told(x)) for x in kept.animals),
    )


async def settings(query: SettingsQuery, context: Context, desk: Desk) -> GroupShown:
    """Change what was named of a group's settings, and return all of them."""
    server = server_of(desk, "server set")
    changed = _changed(query, context)
    if not changed:
        raise unable("server set", Say("group-no-setting"), example="server set units:cm")
    await desk.store.servers.change(server, desk.by, **changed)
    await desk.store.boards.look_again(desk.now, server)
    return _shown(await desk.store.exchange.server(server))


def _changed(query: SettingsQuery, context: Context) -> dict[str, object]:
    changed: dict[str, object] = {}
    wishes = {"units": query.units, "guide_url": query.site, "language": query.language}
    for name, wish in wishes.items():
        if wish is not None:
            changed[name] = None if isinstance(wish, Cleared) else wish
    if query.animal:
        named = query.animal.strip().lower()
        changed["animal"] = None if named == NONE else animal_asked(named, context).slug
    if query.zone:
        changed["zone"] = None if query.zone == NONE else query.zone
    return changed


async def answers(query: AnswersQuery, context: Context, desk: Desk) -> AnswersShown:
    """Set who sees the answers of the channel in which this is asked."""
    server = server_of(desk, "server answers")
    if desk.channel is None:
        raise unable(
            "server answers", Say("group-no-channel"), example="server answers show:public"
        )
    audience = Audience[query.show.upper()]
    shown = None if audience is Audience.USUAL else Shown(query.show)
    await desk.store.servers.show(server, desk.channel, shown, desk.by)
    return AnswersShown(audience)


def tell_shown(facts: GroupShown) -> Layered:
    """Tell all that a group has set."""
    say = Says("group", facts)
    return Layered(
        command="server show",
        title=say("title"),
        brief=Brief(head=say("head")),
        steps=(say("step-change"), say("step-changes")),
        numbers=(*_settings(facts, say), *_figures(facts, say)),
    )


def tell_settings(facts: GroupShown) -> Layered:
    """Tell what a group's settings are now."""
    say = Says("group", facts)
    return Layered(
        command="server set",
        title=say("set-title"),
        brief=Brief(head=say("set")),
        steps=(say("step-none"),),
        numbers=tuple(_settings(facts, say)),
    )


def _settings(facts: GroupShown, say: Says) -> Iterator[Row]:
    if facts.units is not None:
        yield Row(say("label-units"), say("units"))
    if facts.animal is not None:
        yield Row(say("label-animal"), say("animal"))
    if facts.site is not None:
        yield Row(say("label-site"), say("site"))
    if facts.zone is not None:
        yield Row(say("label-zone"), say("zone"))
    if facts.language is not None:
        yield Row(say("label-language"), say("language"))
    if facts.vets is not None:
        yield Row(say("label-vets"), say("vets"))
    if facts.helpers is not None:
        yield Row(say("label-helpers"), say("helpers"))
    if facts.role is not None:
        yield Row(say("label-role"), say("role"))
    if facts.has_public:
        yield Row(say("label-posting"), say("posting"))
    if facts.has_channels:
        yield Row(say("label-channels"), say("channels"))


def _figures(facts: GroupShown, say: Says) -> Iterator[Row]:
    for lamp in facts.lamps:
        yield Row(Say("group-label-lamp", lamp), lamp.law)
    for screen in facts.screens:
        yield Row(Say("group-label-screen", screen), Say("owned-screen", screen))
    for target in facts.targets:
        yield Row(Say("group-label-target", target), target.told)
    for animal in facts.animals:
        yield Row(Say("group-label-own-animal", animal), animal.told)


def tell_answers(facts: AnswersShown) -> Layered:
    """Tell who sees the answers of this channel."""
    say = Says("group", facts)
    return Layered(
        command="server answers",
        title=say("answers-title"),
        brief=Brief(head=say("answers")),
        steps=(say("step-usual"),),
    )


SERVER_SHOW = Command(
    name="server show",
    query=ShowQuery,
    stored=show,
    tell=tell_shown,
    examples=("server show",),
    who="moderator",
    guide=("for-moderators",),
)

SERVER_SET = Command(
    name="server set",
    form=True,
    query=SettingsQuery,
    stored=settings,
    tell=tell_settings,
    examples=("server set units:in animal:bearded dragon", "server set units:none"),
    who="moderator",
    guide=("for-moderators",),
)

SERVER_ANSWERS = Command(
    name="server answers",
    query=AnswersQuery,
    stored=answers,
    tell=tell_answers,
    examples=("server answers show:public",),
    who="moderator",
    guide=("for-moderators",),
)
