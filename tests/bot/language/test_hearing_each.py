"""Each sentence of the collection by itself: heard as its row says, nothing more, nothing less."""

from collections import Counter
from typing import Any

import pytest

from tests.bot.language.hearing_score import TUNED_ON, asked_among, heard_in, sentences, told


@pytest.mark.parametrize("row", list(sentences(TUNED_ON)), ids=lambda row: row["text"][:50])
def test_a_sentence_is_heard_as_written_down(row: dict[str, Any]) -> None:
    heard = heard_in(row["text"])
    got = Counter((fact.name.value, told(fact)) for fact in heard.facts)
    wanted = Counter((n, value) for n, values in row["hear"].items() for value in values)
    assert got + (asked_among(heard) & wanted - got) == wanted
    assert {question.name.value for question in heard.questions} >= set(row.get("asks", []))
    assert {f.name.value for f in heard.facts if f.hedged} >= set(row.get("hedged", []))
