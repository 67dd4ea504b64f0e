"""Smoke, sparks and melting told in free words are answered with the plug, and nothing before."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences


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
    assert reply.answer.startswith("Pull the plug now and get a grown-up")
    assert reply.guide[0].slug == "fire-and-electrical-safety"


@pytest.mark.parametrize("words", ["can a heat mat catch fire", "is a smoke detector needed"])
def test_who_only_asks_is_not_sent_to_the_plug(words: str, anyone: Preferences) -> None:
    assert not ask(words, anyone).answer.startswith("Pull the plug")
