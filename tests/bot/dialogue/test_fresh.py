"""Conversations that nobody mended on: how many lines after the first are understood."""

import tomllib
from pathlib import Path
from typing import Any

import pytest

from bot.ask import ask
from bot.dialogue import START, next_line, turn
from bot.dialogue.asking import question_kept
from bot.preferences import Preferences

HERE = Path(__file__).parent
ANYONE = Preferences()
# What was right at the first run, of the lines that go on: it may become more, never less.
LEAST = {"fresh": 24, "moved_and_asked": 28, "of_another_hand": 34, "of_all_voices": 83}


def understood(lines: list[dict[str, Any]]) -> list[str]:
    """Return the lines after the first that were not understood."""
    dialogue, missed = START, []
    for row in lines:
        what, _, _ = next_line(dialogue, row["say"], ANYONE)
        reply, dialogue = turn(dialogue, row["say"], ANYONE, ask)
        right = what.name.lower() == row["want"] or (reply is not None and fits(reply.asked, row))
        if not right:
            missed.append(row["say"])
    return [row["say"] for row in lines[1:] if row["say"] in missed]


def fits(asked: str, row: dict[str, Any]) -> bool:
    """Say whether the question that is meant is the wanted one, with all that was told."""
    kept = question_kept(asked)
    if kept is None or kept.command not in row["want"].split("|"):
        return False
    told = kept.given
    return all(told.get(name, "").startswith(text) for name, text in row["told"].items())


@pytest.mark.parametrize("batch", LEAST)
def test_lines_that_go_on_are_understood_as_often_as_at_their_first_run(batch: str) -> None:
    text = (HERE / f"{batch}.toml").read_text(encoding="utf-8")
    talks = tomllib.loads(text)["talk"]
    missed = [say for talk in talks for say in understood(talk["lines"])]
    many = sum(len(talk["lines"]) - 1 for talk in talks)
    assert many - len(missed) >= LEAST[batch], missed
