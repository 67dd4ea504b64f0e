"""Whom a group calls, where its helpers are asked, and what was called wrong."""

import json
from datetime import timedelta

import pytest

from bot.ask import ask as ask_purely
from bot.brief import MOST_LINES, phone_lines
from bot.commands import command_named
from bot.database.store import Store
from bot.preferences import LANGUAGES, Preferences
from bot.questions.saved.asked_values import values_of
from bot.reply import Role
from bot.saved.group import NOTHING_OWN
from bot.saved.wrongs import MOST_WRONGS, Wrong
from tests.bot.keeping.conftest import NOW, Ask
from tests.bot.keeping.people import CHANNEL, GARDEN, row, whole

BURN = "my beardie burnt its belly on the lamp"
LONG = "our own vets in #reptile-vets, or 000 000 00 00"
VETS = "the channel #reptile-vets"


async def test_vets_stand_with_every_call_to_a_vet(ok: Ask) -> None:
    await ok(f"server vets line:{VETS}")
    assert row(await ok("server show"), "Vets") == VETS
    burnt = await ok(BURN)
    assert burnt.brief[0].role is Role.DANGER
    assert f"Your group's vets: {VETS}." in [line.text for line in burnt.brief]
    assert VETS not in whole(await ok("convert 14in"))
    await ok("server vets line:none")
    assert VETS not in whole(await ok(BURN))


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("words", [BURN, "smoke comes out of the lamp and my gecko is limp"])
def test_a_phone_still_shows_all_of_a_danger(words: str, language: str) -> None:
    plain = ask_purely(words, Preferences(language=language))  # type: ignore[arg-type]
    told = ask_purely(words, Preferences(language=language, vets=LONG))  # type: ignore[arg-type]
    urgent = [line for line in plain.brief if line.role in (Role.DANGER, Role.CALL)]
    assert [line for line in told.brief if line in urgent] == urgent
    assert phone_lines(told.brief) <= max(MOST_LINES, phone_lines(plain.brief) + 2)
    assert LONG in whole(told)


@pytest.mark.parametrize("line", ["<@1>", "x" * 51, "**", "a`b"])
async def test_no_line_pings_or_formats(ask: Ask, line: str) -> None:
    assert (await ask(f"server vets line:{line}")).status == "problem"


async def test_helpers_are_asked_in_the_channel_in_which_it_is_said(ok: Ask, store: Store) -> None:
    await ok("server helpers ask:here")
    assert (await store.servers.settings(GARDEN)).helpers == CHANNEL
    export = json.loads((await ok("server export")).document.text)  # type: ignore[union-attr]
    assert export["settings"]["helpers"] == CHANNEL
    await ok("server helpers ask:nowhere")
    assert (await store.servers.settings(GARDEN)).helpers is None


def test_of_a_question_values_are_kept_and_no_text() -> None:
    given = {"room": "64F", "animal": "my Bearded Dragon"}
    assert values_of(command_named("night"), given, NOTHING_OWN) == {
        "room": "64 F",
        "animal": "bearded dragon",
    }
    assert (
        values_of(command_named("ask"), {"question": "my name is Fern and my gecko"}, NOTHING_OWN)
        == {}
    )
    assert values_of(command_named("mine show"), {"name": "Pebble's box"}, NOTHING_OWN) == {}


@pytest.mark.slow
async def test_moderators_see_what_was_called_wrong_by_week_and_can_clear_it(
    ok: Ask, store: Store
) -> None:
    first = Wrong(day=NOW.date() - timedelta(days=7), command="night", given={"room": "64 F"})
    for _ in range(MOST_WRONGS):
        await store.wrongs.add(GARDEN, first)
    await store.wrongs.add(GARDEN, Wrong(day=NOW.date(), command="temps", given={}))
    told = await ok("server wrong")
    assert told.answer.startswith(f"{MOST_WRONGS} answers were called wrong.")
    assert [each.text for each in told.rows] == ["1", str(MOST_WRONGS - 1)]
    assert told.table is not None
    assert told.table.rows[1][1] == "night room:64 F"
    assert (await ok("server wrong clear:yes")).answer.startswith(f"{MOST_WRONGS} are cleared.")
    assert await store.wrongs.newest(GARDEN) == ()


async def test_what_a_group_called_wrong_goes_with_the_group(ok: Ask, store: Store) -> None:
    await store.wrongs.add(GARDEN, Wrong(day=NOW.date(), command="temps", given={}))
    await ok("server forget sure:yes")
    assert await store.wrongs.newest(GARDEN) == ()


async def test_a_target_that_changed_since_the_last_reading_is_told(ok: Ask) -> None:
    await ok("mine save name:Box animal:bearded dragon")
    await ok("mine reading name:Box uvi:4.2 distance:16in day:2026-05-01")
    assert "changed a target" not in (await ok("mine show name:Box")).answer
    await ok("server target animal:leopard gecko of:uvi range:0.5-0.7")
    assert "changed a target" not in (await ok("mine show name:Box")).answer
    await ok("server target animal:bearded dragon of:uvi range:3-4")
    told = await ok("mine show name:Box")
    assert "Your group changed a target since then." in told.answer
    assert "3 to 4" in row(told, "New target")
    await ok("mine reading name:Box uvi:4.2 distance:16in")
    assert "changed a target" not in (await ok("mine show name:Box")).answer
