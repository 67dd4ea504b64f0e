"""Who may use the questions of moderators, and what the others hear."""

from dataclasses import replace

import pytest

from bot.commands import STORED_COMMANDS
from tests.discord.cast import FERN, MANAGE_MESSAGES, Person, direct
from tests.discord.saving import Keeper, keeper, store
from tests.discord.world import World

__all__ = ["keeper", "store"]

ADMINISTRATOR, EVERY_RIGHT = 1 << 3, (1 << 53) - 1
# What somebody sees who opens the menu for the first time.
MOST_ENTRIES = 14
BESIDE = MANAGE_MESSAGES - 1 & ~ADMINISTRATOR


@pytest.mark.parametrize(
    "rights",
    [FERN.rights | MANAGE_MESSAGES, ADMINISTRATOR, EVERY_RIGHT],
    ids=["manages messages", "administrator without more", "owner"],
)
async def test_who_may_manage_messages_and_who_may_do_everything_is_let_through(
    world: World, keeper: Keeper, rights: int
) -> None:
    person = replace(FERN, rights=rights)
    async with world.running(keeper()):
        asked = [
            await world.slash("server set", {"units": "cm"}, user=person),
            await world.slash("board list", {}, user=person),
        ]
    assert not any("moderators" in answer.text for answer in asked)
    assert "Kept" in asked[0].text
    assert "no boards yet" in asked[1].text


@pytest.mark.parametrize("rights", [FERN.rights, BESIDE], ids=["a member", "all but this right"])
async def test_whom_only_the_servers_settings_let_see_it_hears_which_right_is_needed(
    world: World, keeper: Keeper, rights: int
) -> None:
    person: Person = replace(FERN, rights=rights)
    async with world.running(keeper()):
        refused = [
            await world.slash("server set", {"units": "cm"}, user=person),
            await world.slash("board list", {}, user=person),
        ]
    for answer in refused:
        assert answer.ephemeral
        assert answer.text == (
            "This is for moderators: you need the right Manage Messages in this channel, which an "
            "administrator of the server can give you."
        )


async def test_in_direct_messages_nobody_is_a_moderator(world: World, keeper: Keeper) -> None:
    person = replace(FERN, rights=EVERY_RIGHT)
    async with world.running(keeper()):
        asked = await world.slash("server show", {}, user=person, where=direct(person))
    assert "moderators" in asked.text


async def test_discord_shows_them_to_those_who_may_manage_messages(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        sent = {command["name"]: command for command in world.platform.commands[None]}
    newcomer = [c for c in sent.values() if c["type"] == 1 and not c["default_member_permissions"]]
    assert len(newcomer) <= MOST_ENTRIES
    assert not {"help", "about", "convert"} & sent.keys()
    groups = {c.name.partition(" ")[0] for c in STORED_COMMANDS if c.who == "moderator"}
    assert groups == {"server", "board"}
    # A server's settings show these to its helpers.
    groups.add("cases")
    for name, command in sent.items():
        wanted = MANAGE_MESSAGES if name in groups else None
        assert command["default_member_permissions"] == wanted, name
        assert name not in groups or command["contexts"] == [0]
