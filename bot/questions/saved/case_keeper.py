"""An enclosure shared with helpers by its keeper, looked at, ended. Words: ``cases.ftl``."""

from dataclasses import dataclass

from bot.command import Command
from bot.desk import Desk
from bot.facts import Say, Says
from bot.layered import Brief, Layered
from bot.preferences import Context
from bot.queries.cases import ShareQuery
from bot.queries.mine import NamedQuery
from bot.questions.saved.case_told import CaseSeen, case_seen, tell_case
from bot.questions.saved.enclosures import enclosure_asked
from bot.questions.saved.unable import server_of, unable
from bot.saved.cases import Case
from bot.saved.values import name_key

__all__ = [
    "MINE_CASE",
    "MINE_SHARE",
    "MINE_UNSHARE",
    "CaseOffered",
    "CaseShared",
    "look",
    "share",
    "tell_look",
    "tell_share",
    "tell_unshare",
    "unshare",
]


@dataclass(frozen=True, slots=True)
class CaseOffered:
    """An enclosure that is not shared."""

    name: str


@dataclass(frozen=True, slots=True)
class CaseShared:
    """An enclosure, the number under which helpers see it, and how much they advised."""

    name: str
    number: int
    advised: int


async def share(query: ShareQuery, context: Context, desk: Desk) -> CaseOffered | CaseShared:
    """Tell who would see what, and share it once the keeper agrees."""
    server = server_of(desk, "mine share")
    kept = await enclosure_asked(desk, query.name, "mine share")
    helpers = (await desk.store.servers.settings(server)).helpers
    if query.sure != "yes":
        return CaseOffered(kept.name)
    case = await desk.store.cases.share(desk.keeper, kept.name, server, helpers, desk.now)
    assert case is not None
    return CaseShared(kept.name, case.number, len(case.advice))


def tell_share(facts: CaseOffered | CaseShared) -> Layered:
    """Ask whether it is meant, or tell under which number it is shared."""
    say = Says("cases", facts)
    if isinstance(facts, CaseOffered):
        return Layered(
            command="mine share",
            title=say("share-title"),
            brief=Brief(
                head=say("share-not-yet"),
                range=(say("share-see"), say("share-nameless")),
                steps=(say("share-do"),),
            ),
            steps=(say("share-step-sure"), say("share-step-end")),
            why=(say("share-who"), say("share-rest")),
        )
    return Layered(
        command="mine share",
        title=say("shared-title"),
        brief=Brief(head=say("shared"), range=(say("share-rest"),), steps=(say("shared-do"),)),
        steps=(say("shared-step-look"), say("share-step-end")),
        why=(say("share-who"),),
    )


async def look(query: NamedQuery, context: Context, desk: Desk) -> CaseSeen:
    """Find the case of an enclosure, with all that was advised."""
    cases = await desk.store.cases.of_keeper(desk.keeper)
    case = cases[0] if len(cases) == 1 and not query.name else None
    if case is None:
        kept = await enclosure_asked(desk, query.name, "mine case")
        case = await _found(desk, kept.name)
        if case is None:
            why = Say("cases-not-shared", CaseOffered(kept.name))
            raise unable("mine case", why, example=f"mine share name:{kept.name}")
    settings = await desk.store.servers.settings(case.server)
    asleep = settings.helpers != case.channel
    return case_seen(case, context, own=True, asleep=asleep)


async def _found(desk: Desk, name: str) -> Case | None:
    cases = await desk.store.cases.of_keeper(desk.keeper)
    return next((c for c in cases if name_key(c.enclosure.name) == name_key(name)), None)


def tell_look(facts: CaseSeen) -> Layered:
    """Tell a case to its keeper."""
    return tell_case("mine case", facts)


async def unshare(query: NamedQuery, context: Context, desk: Desk) -> CaseOffered | CaseShared:
    """End the case of an enclosure, if there is one: all that was advised goes with it."""
    kept = await enclosure_asked(desk, query.name, "mine unshare")
    case = await _found(desk, kept.name)
    if case is None:
        return CaseOffered(kept.name)
    await desk.store.cases.end_of_keeper(desk.keeper, case.enclosure.name)
    return CaseShared(case.enclosure.name, case.number, len(case.advice))


def tell_unshare(facts: CaseOffered | CaseShared) -> Layered:
    """Tell that nobody sees it any more."""
    say = Says("cases", facts)
    if isinstance(facts, CaseOffered):
        return Layered(
            command="mine unshare",
            title=say("unshared-title"),
            brief=Brief(head=say("not-shared")),
            steps=(say("unshared-step"),),
        )
    return Layered(
        command="mine unshare",
        title=say("unshared-title"),
        brief=Brief(head=say("unshared"), range=(say("unshared-advice"),)),
        steps=(say("unshared-step"),),
    )


MINE_SHARE = Command(
    name="mine share",
    query=ShareQuery,
    stored=share,
    tell=tell_share,
    examples=("mine share name:Pebble's box", "mine share name:Pebble's box sure:yes"),
    guide=("asking-helpers",),
)

MINE_CASE = Command(
    name="mine case",
    query=NamedQuery,
    stored=look,
    tell=tell_look,
    examples=("mine case name:Pebble's box",),
    guide=("asking-helpers",),
)

MINE_UNSHARE = Command(
    name="mine unshare",
    deletes=True,
    query=NamedQuery,
    stored=unshare,
    tell=tell_unshare,
    examples=("mine unshare name:Pebble's box",),
    guide=("asking-helpers",),
)
