"""Forms of questions about saved data, and the button that confirms before something is deleted."""

import pytest

from bot.command import Command
from bot.commands import STORED_COMMANDS
from bot.fronts.discord.forms import opens_a_form
from tests.discord.answers import FORM
from tests.discord.cast import PEBBLE
from tests.discord.saving import Keeper, keeper, store
from tests.discord.world import World

__all__ = ["keeper", "store"]

SAVE = {"name": "Pebble's box", "animal": "bearded dragon", "distance": "40cm"}


async def test_what_deletes_one_thing_is_confirmed_by_a_button_too(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        await world.slash("mine save", SAVE)
        asked = await world.slash("mine remove", {"name": SAVE["name"]})
        kept = await world.slash("mine list", {})
        done = await world.press(asked, "Yes, delete for good")
        empty = await world.slash("mine list", {})
    assert asked.ephemeral
    assert "Delete this for good?" in asked.text
    assert SAVE["name"] in kept.text
    assert done.ephemeral
    assert "No enclosures" in empty.text


async def test_a_saved_question_sent_with_nothing_opens_its_form_with_names_to_pick(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        form = await world.slash("mine save", {})
        saved = await world.submit(form, {"name": SAVE["name"]})
        picking = await world.slash("mine remove", {})
        asked = await world.submit(picking, {"name": SAVE["name"]})
        german = await world.slash("remind me", {}, locale="de")
    assert form.kind == FORM
    assert saved.ephemeral
    assert [row["value"] for row in picking.fields["name"]["options"]] == [SAVE["name"]]
    assert "Delete this for good?" in asked.text
    assert german.kind == FORM
    assert len(german.fields["about"]["options"]) == 4


@pytest.mark.parametrize(
    "command",
    [c for c in STORED_COMMANDS if opens_a_form(c)],
    ids=lambda c: c.name.replace(" ", "-"),
)
async def test_every_saved_question_that_needs_something_opens_a_form(
    world: World, keeper: Keeper, command: Command
) -> None:
    async with world.running(keeper()):
        form = await world.slash(command.name, {}, user=PEBBLE)
    assert form.kind == FORM
