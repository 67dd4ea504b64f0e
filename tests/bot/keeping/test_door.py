"""The door with saved data: who may ask, whose settings count, what happens without a store."""

from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from rich.console import Console

from bot.ask import ask as at_the_door
from bot.command import Command
from bot.commands import STORED_COMMANDS
from bot.database.store import Store
from bot.desk import Desk
from bot.language.quantities import Units
from bot.preferences import Preferences
from bot.render.html import render_html
from bot.render.post import render_post
from bot.render.terminal import render_terminal
from bot.render.text import render_text
from bot.reply import Reply
from tests.bot.keeping.conftest import Ask
from tests.bot.keeping.people import FERN, MOSS, row, whole
from tests.some import some

EVERY = pytest.mark.parametrize("command", STORED_COMMANDS, ids=lambda c: c.name)
MODERATORS = [c for c in STORED_COMMANDS if c.who == "moderator"]
DISTANCE = "distance tube:12% reflector:polished screen:none"


def drawn(reply: Reply) -> list[str]:
    console = Console(width=200, no_color=True)
    with console.capture() as capture:
        console.print(render_terminal(reply))
    return [render_text(reply), capture.get(), render_html(reply), render_post(reply).text]


@pytest.mark.slow
async def test_the_examples_work_one_after_the_other_and_every_renderer_draws_them(
    ok: Ask,
) -> None:
    for command in STORED_COMMANDS:
        for example in command.examples:
            reply = await ok(example)
            assert reply.command == command.name
            assert all(drawn(reply))


@EVERY
def test_the_pure_door_says_that_saved_data_are_needed(command: Command) -> None:
    reply = at_the_door(command.examples[0], Preferences())
    assert reply.status == "problem"
    assert "saved data" in reply.answer
    assert reply.command == command.name


@pytest.mark.parametrize("command", MODERATORS, ids=lambda c: c.name)
async def test_who_is_no_moderator_is_refused_and_nothing_changes(
    command: Command, ask: Ask, store: Store
) -> None:
    reply = await ask(command.examples[0], moderator=False)
    assert reply.status == "problem"
    assert "moderators" in reply.answer
    assert await store.servers.known() == frozenset()


@pytest.mark.parametrize("command", MODERATORS, ids=lambda c: c.name)
async def test_a_question_for_moderators_needs_a_server(command: Command, ask: Ask) -> None:
    reply = await ask(command.examples[0], server=None, channel=None)
    assert reply.status == "problem"
    assert "server" in reply.answer


async def test_the_keepers_unit_goes_before_the_groups_and_both_before_none(ok: Ask) -> None:
    assert "in (" in (await ok(f"{DISTANCE} animal:beardie")).answer
    await ok("server set units:cm animal:bearded dragon")
    assert "cm (" in (await ok(DISTANCE, keeper=MOSS)).answer
    assert "in (" in (await ok(f"{DISTANCE} uvi:3-5", server=None)).answer
    await ok("mine prefer units:in")
    assert "in (" in (await ok(DISTANCE)).answer
    assert "cm (" in (await ok(DISTANCE, keeper=MOSS)).answer


async def test_a_bare_number_takes_the_unit_of_the_group_and_says_so(ok: Ask, ask: Ask) -> None:
    line = "uvi distance:35 tube:12% reflector:polished screen:none uvi:3-5"
    assert (await ask(line)).status == "problem"
    await ok("server set units:cm")
    assert "35 has no unit, so I took it as cm" in row(await ok(line), "Assumed")


async def test_own_figures_are_the_groups_alone(ok: Ask, ask: Ask) -> None:
    await ok("server lamp name:Hood readings:4.2 at 12 in length:34in")
    line = "distance tube:hood reflector:plain screen:none uvi:3-5"
    assert "the group's own lamp" in whole(await ok(line))
    assert "the group's own lamp" in whole(await ok(line, keeper=MOSS, moderator=False))
    assert (await ask(line, server=1)).status == "problem"
    assert (await ask(line, server=None)).status == "problem"


async def test_a_guide_address_of_the_group_is_linked(ok: Ask) -> None:
    await ok("server set site:https://guide.example/pages/")
    reply = await ok(f"{DISTANCE} uvi:3-5")
    assert reply.guide[0].url == "https://guide.example/pages/measuring-the-distance.html"
    await ok("server set site:none")
    assert (await ok(f"{DISTANCE} uvi:3-5")).guide[0].url == ""


async def test_with_a_damaged_database_saved_data_are_said_to_be_unusable_and_the_rest_answered(
    desk: Desk, tmp_path: Path
) -> None:
    await desk.store.close()
    for file in (tmp_path / "kept").iterdir():
        file.write_bytes(b"no database any more " * 100)
    kept = await at_the_door("mine list", Preferences(), desk)
    assert kept.status == "problem"
    assert "cannot be used here" in kept.answer
    pure = await at_the_door(f"{DISTANCE} uvi:3-5", Preferences(units=Units.IN), desk)
    assert pure.status == "ok"


async def test_a_file_is_never_repeated_in_what_was_asked(ok: Ask) -> None:
    reply = await ok('mine import file:{"noonstone": "keeper"}')
    assert reply.asked == "mine import"


@settings(
    max_examples=some(60),
    deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture],
)
@given(
    st.sampled_from([c.name for c in STORED_COMMANDS]),
    st.sampled_from(["name:", "animal:", "uvi:4 day:", "when:", "until:", "number:", "file:", ""]),
    st.text(max_size=80),
)
async def test_no_text_whatever_raises(ask: Ask, name: str, option: str, text: str) -> None:
    reply = await ask(f"{name} {option}{text}")
    assert reply.status in ("ok", "problem")
    assert reply.answer


async def test_every_line_of_help_about_a_group_is_a_question(ok: Ask) -> None:
    for group in ("mine", "remind", "server", "board"):
        table = (await ok(f"help {group}")).table
        assert table is not None
        for name, _ in table.rows:
            assert (await ok(f"help {name}")).title == f"How to ask: {name}"
    reply = await ok("help", keeper=FERN)
    assert "mine …" in [row.label for row in reply.rows]


async def test_a_language_is_a_wish_of_the_keeper_before_that_of_the_group(ok: Ask) -> None:
    night = "night animal:corn snake room:18C"
    assert (await ok(night)).language == "en"
    await ok("server set language:de")
    assert (await ok(night)).language == "de"
    await ok("mine prefer language:english")
    assert (await ok(night)).language == "en"
    await ok("mine prefer language:none")
    assert (await ok(night)).language == "de"
    kept = await ok("server set language:none")
    assert "Deutsch" not in str(kept.rows)
    assert (await ok(night)).language == "en"
