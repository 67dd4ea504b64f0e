"""What stands in Discord's menu: few entries, and each described in every language."""

from collections.abc import Iterator

import pytest

from bot.ask import ask
from bot.commands import ALL_COMMANDS, COMMANDS, command_at
from bot.fronts.discord import localised
from bot.fronts.discord.localised import described
from bot.menu import GROUPS, STORED_GROUPS, WORDS, about_question, bare, menu_name
from bot.preferences import FIRST, Preferences
from tests.discord.command_limits import command_breaches
from tests.discord.limits import Json
from tests.discord.saving import Keeper, keeper, store
from tests.discord.world import World

__all__ = ["keeper", "store"]


def leaves(part: Json) -> Iterator[Json]:
    """Yield a command and all that lies in it."""
    yield part
    for option in part.get("options") or []:
        yield from leaves(option)


async def test_an_offered_language_stands_in_the_menu_within_the_limits(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        registered = world.platform.commands[None]
    assert command_breaches(registered) == []
    for command in registered:
        for part in leaves(command):
            if part.get("description"):
                assert part["description_localizations"]["de"]
    told = next(command for command in registered if command["name"] == "distance")
    german = described(about_question("distance"), "de")
    assert told["description_localizations"]["de"] == german != told["description"]


async def test_a_language_that_is_not_offered_does_not_stand_in_the_menu(
    world: World, keeper: Keeper, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(localised, "OFFERED", (FIRST,))
    async with world.running(keeper()):
        registered = world.platform.commands[None]
    assert not any(p.get("description_localizations") for c in registered for p in leaves(c))


def test_every_grouped_question_is_in_the_list_and_in_one_group() -> None:
    grouped = [name for names in GROUPS.values() for name in names]
    assert len(set(grouped)) == len(grouped)
    assert set(grouped) < {command.name for command in COMMANDS}
    assert not GROUPS.keys() & set(STORED_GROUPS)


@pytest.mark.parametrize("command", ALL_COMMANDS, ids=lambda c: c.name)
def test_the_console_takes_a_question_by_both_of_its_names(command: object) -> None:
    for name in (command.name, menu_name(command.name)):  # type: ignore[attr-defined]
        for line in (f"/{name} a:b", f"{name} a:b", name):
            assert command_at(line) == (command, "a:b" if "a:b" in line else "")
        assert bare(name) == command.name  # type: ignore[attr-defined]


@pytest.mark.parametrize("name", sorted(WORDS))
def test_words_that_somebody_may_say_ask_no_question(name: str) -> None:
    assert command_at(f"{name} is not on") is None


def test_a_smoking_heat_lamp_is_heard_and_not_taken_for_a_question() -> None:
    assert ask("heat lamp is smoking", Preferences()).dangers


async def test_a_command_in_a_message_can_be_clicked_once_its_number_is_known(
    world: World, keeper: Keeper
) -> None:
    client = keeper()
    assert client.clickable("/meter") == "/uv meter"
    for _ in range(2):
        client = keeper()
        async with world.running(client):
            numbers = {c["name"]: c["id"] for c in world.platform.commands[None]}
        assert client.clickable("/meter") == f"</uv meter:{numbers['uv']}>"
        told = f"Ask </distance:{numbers['distance']}> or a/b, not /distances."
        assert client.clickable("Ask /distance or a/b, not /distances.") == told
        assert client.clickable("/mine reading") == f"</mine reading:{numbers['mine']}>"
    assert len(world.platform.syncs) == 1


async def test_an_answer_names_its_commands_to_be_clicked(world: World, keeper: Keeper) -> None:
    client = keeper()
    async with world.running(client):
        numbers = {c["name"]: c["id"] for c in world.platform.commands[None]}
        lacking = await world.slash("noonstone help", {"command": "distance"})
        of_a_group = await world.slash("ask", {"question": "is led or halogen better"})
        saved = await world.slash("mine list", {})
    assert f"Try: </distance:{numbers['distance']}> tube:12%" in lacking.text
    assert f"</heat lamp:{numbers['heat']}> kind:LED lamp" in of_a_group.text
    assert f"</mine save:{numbers['mine']}>" in saved.text


async def test_two_set_ups_are_compared_in_discord(world: World, keeper: Keeper) -> None:
    async with world.running(keeper()):
        of_one = {"distance": "14in", "tube": "12%", "reflector": "polished", "screen": "none"}
        given = {**of_one, "animal": "bearded dragon", "with_screen": "45%"}
        answer = await world.slash("noonstone compare", given)
    assert "Only the second is right there." in answer.text
