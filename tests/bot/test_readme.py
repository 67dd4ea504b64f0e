"""The README: its sample session is what the tool says today, its commands are the ones run."""

import re
from pathlib import Path

from bot.fronts.demo import sample_session
from bot.fronts.listed import table

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


def test_the_table_is_the_list_of_questions() -> None:
    shown = re.search(r"(\| you want to know \| ask \|\n.*?\n)\n", README, re.DOTALL)
    assert shown is not None
    assert shown[1] == table(), "renew it from: python -m bot commands --table"
