"""The README: its sample session is what the tool says today, its commands are the ones run."""

import re
from pathlib import Path

from bot.ask import ask
from bot.commands import COMMANDS
from bot.fronts.demo import SCENES, sample_session
from bot.preferences import Preferences

ROOT = Path(__file__).parent.parent.parent
README = (ROOT / "README.md").read_text(encoding="utf-8")


def test_the_sample_session_is_what_the_tool_says() -> None:
    shown = re.search(r"<!-- sample: begin -->\n(.*)<!-- sample: end -->", README, re.DOTALL)
    assert shown is not None
    assert shown[1] == sample_session(), "renew it from: python -m bot demo --sample"


def test_the_job_comes_first_in_one_paragraph() -> None:
    first = README.split("\n\n")[0]
    assert first.startswith("Noonstone is the Discord bot")
    assert "\n" not in first


def test_every_picture_is_there_is_small_and_is_told_in_words() -> None:
    shown = re.findall(r"!\[([^\]]*)\]\(([^)]+)\)", README)
    assert shown
    for words, path in shown:
        assert len(words) > 40
        assert (ROOT / path).read_bytes().startswith(b"\x89PNG")
        assert (ROOT / path).stat().st_size <= 100_000


def test_it_is_read_in_two_screens() -> None:
    assert len(README.splitlines()) <= 105


def test_the_demo_plays_every_question_a_keeper_may_ask() -> None:
    played = {ask(scene.line, Preferences()).command for scene in SCENES}
    played |= {scene.line.split()[0] for scene in SCENES}
    assert {command.name for command in COMMANDS} - {"ask"} <= played
