"""Each sentence of the collection by itself: heard as its row says, nothing more, nothing less."""

from collections import Counter
from typing import Any

import pytest

from tests.bot.language.hearing_score import TUNED_ON, heard_in, sentences, told

# What hearing cannot do yet, by the first words.
NOT_YET = {
    "red-eared slider in a 55 gallon.": "whose the second distance is",
    "My russian tort is on a tortoise table": "a name cut short, before another meaning of it",
    "Not a beginner, but not an expert.": "high output told far from the tube",
    "so the tube's up against the mesh and the hammock": "a name in brackets",
}


def rows() -> list[Any]:
    found = []
    for row in sentences(TUNED_ON):
        why = next((NOT_YET[start] for start in NOT_YET if row["text"].startswith(start)), "")
        marks = [pytest.mark.xfail(reason=why)] if why else []
        found.append(pytest.param(row, marks=marks, id=row["text"][:50]))
    return found


@pytest.mark.parametrize("row", rows())
def test_a_sentence_is_heard_as_written_down(row: dict[str, Any]) -> None:
    heard = heard_in(row["text"])
    got = Counter((fact.name.value, told(fact)) for fact in heard.facts)
    assert got == Counter((n, value) for n, values in row["hear"].items() for value in values)
    assert {question.name.value for question in heard.questions} >= set(row.get("asks", []))
    assert {f.name.value for f in heard.facts if f.hedged} >= set(row.get("hedged", []))


def test_every_sentence_not_heard_yet_is_in_the_collection() -> None:
    texts = [row["text"] for row in sentences(TUNED_ON)]
    assert all(any(text.startswith(start) for text in texts) for start in NOT_YET)
