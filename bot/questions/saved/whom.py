"""Whom a group calls and where its helpers are asked. Words: ``words/<language>/whom.ftl``."""

from dataclasses import dataclass

from bot.command import Command
from bot.desk import Desk
from bot.facts import Say, Says
from bot.layered import Brief, Layered
from bot.preferences import Context
from bot.queries.saved import Cleared
from bot.queries.server import HelpersQuery, VetsQuery
from bot.questions.saved.unable import server_of, unable

__all__ = ["SERVER_HELPERS", "SERVER_VETS", "helpers", "tell_helpers", "tell_vets", "vets"]


@dataclass(frozen=True, slots=True)
class VetsSet:
    """The line that stands with every call to a vet; None: no more."""

    line: str | None


@dataclass(frozen=True, slots=True)
class HelpersSet:
    """Whether helpers are asked in this channel from now on."""

    here: bool


async def vets(query: VetsQuery, context: Context, desk: Desk) -> VetsSet:
    """Keep whom the group calls."""
    server = server_of(desk, "server vets")
    line = None if isinstance(query.line, Cleared) else query.line
    await desk.store.servers.change(server, desk.by, vets=line)
    return VetsSet(line)


def tell_vets(facts: VetsSet) -> Layered:
    """Tell what stands with every call to a vet now."""
    say = Says("whom", facts)
    return Layered(
        command="server vets",
        title=say("vets-title"),
        brief=Brief(head=say("vets")),
        steps=(say("vets-step-none"),),
    )


async def helpers(query: HelpersQuery, context: Context, desk: Desk) -> HelpersSet:
    """Let helpers be asked in the channel in which this is asked, or nowhere."""
    server = server_of(desk, "server helpers")
    here = query.ask == "here"
    if here and desk.channel is None:
        raise unable("server helpers", Say("group-no-channel"), example="server helpers ask:here")
    await desk.store.servers.change(server, desk.by, helpers=desk.channel if here else None)
    return HelpersSet(here)


def tell_helpers(facts: HelpersSet) -> Layered:
    """Tell where helpers are asked now."""
    say = Says("whom", facts)
    return Layered(
        command="server helpers",
        title=say("helpers-title"),
        brief=Brief(head=say("helpers"), range=(say("helpers-how"),) if facts.here else ()),
        steps=(say("helpers-step-none"),),
    )


SERVER_VETS = Command(
    name="server vets",
    query=VetsQuery,
    stored=vets,
    tell=tell_vets,
    examples=("server vets line:the channel #reptile-vets", "server vets line:none"),
    who="moderator",
    positional="line",
    guide=("for-moderators",),
)

SERVER_HELPERS = Command(
    name="server helpers",
    query=HelpersQuery,
    stored=helpers,
    tell=tell_helpers,
    examples=("server helpers ask:nowhere",),
    who="moderator",
    guide=("for-moderators",),
)
