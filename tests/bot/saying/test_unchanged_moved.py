"""Questions that moved answer with the status, values, dangers and figures that they had before.

Pinned: our own values prove nothing but that none got lost. ``pinning.py`` renews them.
"""

import pytest

from tests.bot.saying import pinning

QUESTIONS = sorted(path.stem for path in pinning.FOLDER.glob("*.toml"))


@pytest.mark.parametrize("question", QUESTIONS)
def test_unchanged_a_question_that_moved_lost_no_value_and_no_figure(question: str) -> None:
    before = pinning.pinned(question)
    assert len(before) >= 100
    assert list(before) == pinning.lines(question)
    now = {line: pinning.told(line) for line in before}
    changed = {line: (before[line], now[line]) for line in before if now[line] != before[line]}
    told = next(iter(changed.items()), None)
    assert not changed, f"changed on purpose? python -m tests.bot.saying.pinning {question}: {told}"
