"""Smoke, sparks and melting told in free words are answered with the plug, and nothing before."""

import pytest

from bot.ask import ask
from bot.dangers import listen
from bot.dangers.table import hazard
from bot.preferences import Preferences
from tests.bot.dangers.saying import english


@pytest.mark.parametrize(
    "words",
    [
        "the lamp is smoking what do i do",
        "my heat mat melted help",
        "i got sparks from the lamp of my beardie, is 98 ok",
        "ask it smells burnt and my beardie is limp",
        "my dome gave me a shock",
    ],
)
def test_free_words_of_fire_pull_the_plug(words: str, anyone: Preferences) -> None:
    reply = ask(words, anyone)
    assert reply.status == "ok"
    assert reply.dangers[0].key in ("fire", "shock")
    assert reply.answer.startswith(english(hazard(reply.dangers[0].key).do_now[0]))
    assert reply.guide[0].slug == "when-something-burns"


@pytest.mark.parametrize("words", ["can a heat mat catch fire", "is a smoke detector needed"])
def test_who_only_asks_is_not_sent_to_the_plug(words: str, anyone: Preferences) -> None:
    assert not ask(words, anyone).answer.startswith("Pull the plug")


@pytest.mark.parametrize(
    "text",
    [
        "the heat mat has no thermostat and it smells odd",
        "my ceramic heater is old and it smells funny",
    ],
)
def test_a_heater_that_smells_is_fire_also_a_clause_later(text: str) -> None:
    assert listen(text)[0].key == "fire"
