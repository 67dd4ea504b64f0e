"""The second opinion on figures: made from the messages beside it, heard where rules are not."""

import tomllib
from importlib.resources import as_file, files

import numpy as np
import pytest

from bot.language.hearing import FactName
from tests.bot.language.hearing_score import heard_in
from tests.bot.language.linking.training import digest, files_told
from tests.bot.language.marked import taken_apart


def test_the_model_was_made_from_the_messages_of_today() -> None:
    with (
        as_file(files("bot.language.hearing") / "learned.npz") as path,
        np.load(path) as kept,
    ):
        assert str(kept["digest"]) == digest()


def test_every_message_can_be_taken_apart_and_tells_something() -> None:
    for file in files_told():
        rows = tomllib.loads(file.read_text(encoding="utf-8"))["messages"]
        assert sum(bool(taken_apart(row)[1]) for row in rows) > len(rows) * 0.8


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("beardie 106/80, 12% tube 12in", FactName.COOL),
        ("warm hide is ninety one and the cool end is seventy four", FactName.WARM),
    ],
)
def test_a_figure_that_no_rule_placed_is_heard(text: str, name: FactName) -> None:
    assert heard_in(text).all(name)


@pytest.mark.parametrize("text", ["98", "temp is 98", "105/80", "left 95F"])
def test_a_lone_number_without_a_place_is_asked_about(text: str) -> None:
    heard = heard_in(text)
    assert not heard.facts
    assert heard.questions


def test_the_chances_do_not_hang_on_the_order_in_which_texts_are_heard() -> None:
    texts = ("beardie 106/80, 12% tube 12in", "leo 33 24 in a 20 long, mat 16w", "was 10in, now 14")
    once = [heard_in(text) for text in texts]
    assert [heard_in(text) for text in reversed(texts)][::-1] == once
