"""Terse questions that name an animal and what is asked about sound no alarm; hazards still do."""

import json
from pathlib import Path

import pytest

from bot.dangers import listen
from bot.dangers.topics import is_only_a_topic
from calc.animals import animals

ASKED = (
    *("{} uvb?", "{} basking temp", "{} temps", "uvi {}", "{} night temperature", "{} lamp watts"),
    *("{} cool end", "{} light hours", "{} uvb percent", "needs {}", "{} heat mat", "plan {}"),
    *("{} Temperatur", "{} uv Bedarf", "{} Nacht Temperatur", "wie viel Licht braucht {}"),
)


@pytest.mark.parametrize("asked", ASKED)
def test_a_name_and_what_is_asked_about_are_no_hazard(asked: str) -> None:
    for animal in animals().values():
        assert listen(asked.format(animal.name)) == (), animal.name


@pytest.mark.parametrize("folder", ["told", "told/de"])
def test_no_sentence_that_tells_a_hazard_is_taken_for_a_topic(folder: str) -> None:
    missed = []
    for file in sorted((Path(__file__).parent / folder).glob("*.jsonl")):
        for line in file.read_text(encoding="utf-8").splitlines():
            row = json.loads(line)
            if row["key"] != "none" and not row.get("asked") and is_only_a_topic(row["text"]):
                missed.append((row["text"], row["key"]))
    assert missed == []


@pytest.mark.parametrize(
    "text",
    [
        "und ohne Gitter?",
        "wie weit soll die Röhre von meiner Bartagame weg sein, 12%, kein Gitter",
        "and without the mesh?",
    ],
)
def test_a_lid_without_mesh_is_no_lamp_without_a_guard(text: str) -> None:
    assert listen(text) == ()
