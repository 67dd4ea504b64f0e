"""A PostgreSQL that refuses while the bot runs: questions in a server are answered as before."""

from pathlib import Path

import pytest

from bot.database.store import open_store_at
from bot.fronts.discord.client import Noonstone
from bot.preferences import Preferences
from tests.bot.database.refusing import REFUSALS, Refusal, refusing
from tests.discord.cast import MOSS, PEBBLE
from tests.discord.test_database_lost import BOX, BROKEN, NOT_JUST_NOW, TUBE
from tests.discord.world import World


@pytest.mark.parametrize("refusal", REFUSALS.values(), ids=list(REFUSALS))
async def test_a_question_in_a_server_is_answered_whatever_the_database_refuses(
    world: World, tmp_path: Path, refusal: Refusal, caplog: pytest.LogCaptureFixture
) -> None:
    async with refusing() as server:
        store = await open_store_at(server.url)
        async with world.running(Noonstone(Preferences(), tmp_path, store=store)):
            # So that the group is one whose settings are looked up for every question.
            await world.slash("server set", {"units": "cm"}, user=PEBBLE)
            await server.refuse(refusal)
            await store.close()
            answer = await world.slash("distance", TUBE, user=MOSS)
            saved = await world.slash("mine save", BOX, user=MOSS)
        await store.close()
    assert "Hang it" in answer.text
    assert answer.ephemeral
    assert (NOT_JUST_NOW in saved.text) is refusal.cause.passes
    assert refusal.cause.passes or BROKEN in saved.text
    assert "noted as" not in answer.text + saved.text
    assert "failure" not in caplog.text
