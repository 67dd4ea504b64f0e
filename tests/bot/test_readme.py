"""The README: its sample session is what the tool says today, its commands are the ones run."""

import re
from pathlib import Path

from bot.fronts.demo import sample_session

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
