"""The learned half of the listening: made from the sentences that are here, and bounded."""

import json
import time
from importlib.resources import as_file, files
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dangers.clauses import take_apart
from bot.dangers.learned import NOTHING, guess
from bot.dangers.listening import listen
from bot.dangers.table import hazards
from bot.language.tongue import Tongue, tongue_of
from tests.bot.dangers.training import digest, sentences


@pytest.mark.parametrize("tongue", Tongue)
def test_the_model_was_made_from_the_sentences_that_are_here(tongue: Tongue) -> None:
    path = files("bot.dangers") / f"learned_{tongue}.npz"
    with as_file(path) as file, np.load(file) as kept:
        assert str(kept["digest"]) == digest(tongue)


@pytest.mark.parametrize("tongue", Tongue)
def test_every_sentence_tells_a_hazard_of_the_table_or_none(tongue: Tongue) -> None:
    known = {NOTHING, *hazards()}
    assert {key for _, key in sentences(tongue)} == known


def test_the_sentences_of_a_language_are_heard_in_it() -> None:
    for tongue, other in ((Tongue.ENGLISH, Tongue.GERMAN), (Tongue.GERMAN, Tongue.ENGLISH)):
        texts = [text for text, _ in sentences(tongue)]
        assert sum(tongue_of(text) is other for text in texts) <= 0.01 * len(texts)


@given(st.text(max_size=300))
def test_the_chances_of_any_text_are_chances(text: str) -> None:
    told = take_apart(text)
    guessed = guess(told)
    if guessed is None:
        return
    assert 0.0 <= guessed.any_chance <= 1.0
    assert abs(sum(guessed.chances.values()) - guessed.any_chance) < 1e-9
    assert all(0 <= guessed.place_of(key) < len(told.words) for key in guessed.telling)


def test_a_long_text_is_guessed_at_in_bounded_time() -> None:
    told = take_apart("the dome smells odd and my gecko hides near the hot stone all day " * 30)
    guess(told)
    before = time.process_time()
    guess(told)
    assert time.process_time() - before < 0.2


def _aside(name: str) -> list[dict[str, Any]]:
    """Return messages of another hand on which nothing was ever mended; keep it so."""
    text = (Path(__file__).parent / "aside" / f"{name}.jsonl").read_text(encoding="utf-8")
    return [json.loads(line) for line in text.splitlines()]


def _first_act(text: str) -> str:
    return next((alarm.key for alarm in listen(text) if not alarm.asked), NOTHING)


def test_messages_kept_apart_get_the_right_act_first() -> None:
    # First runs: 86 of 88, 6 of 64, 0 of 150; of those added later 52 of 55, 4 of 100. With what
    # was learned since, by which a fresh batch has 88 of 90 alarmed, not 81: 138 of 143, 9 of 164.
    rows = _aside("hazards")
    right = [_first_act(row["text"]) in (row["key"], *row["also"]) for row in rows]
    assert sum(right) >= 0.95 * len(rows)
    calm = [_first_act(row["text"]) != NOTHING for row in _aside("lookalikes")]
    assert sum(calm) <= 0.06 * len(calm)
    ordinary = [_first_act(row["text"]) != NOTHING for row in _aside("ordinary")]
    assert sum(ordinary) <= 0.01 * len(ordinary)


@pytest.mark.parametrize("tongue", Tongue)
def test_a_batch_kept_apart_in_each_language_alarms_where_it_should(tongue: Tongue) -> None:
    # Two batches each. First runs: English 128 and 129 of 135, 4 and 12 of 150, 0 and 1 of 150,
    # thresholds chosen after both; German 134 of 135 twice, 6 of 150 twice, 0 and 1 of 150. Nothing
    # in them is learned: keep it so.
    folder = Path(__file__).parent / "aside" / tongue
    shares = {}
    for name in ("hazards", "lookalikes", "ordinary"):
        lines = (folder / f"{name}.tsv").read_text(encoding="utf-8").splitlines()
        told = [_first_act(line.rpartition("\t")[2]) != NOTHING for line in lines]
        shares[name] = sum(told) / len(told)
    assert shares["hazards"] >= 0.95
    assert shares["lookalikes"] <= 0.055
    assert shares["ordinary"] <= 0.02


@pytest.mark.parametrize(
    "text", ["50", "100", "5cm", "30x60", "12% 30cm", "18x18x24in", "41C 26C 19C"]
)
def test_figures_alone_are_no_hazard_in_any_language(text: str) -> None:
    assert listen(text) == ()
