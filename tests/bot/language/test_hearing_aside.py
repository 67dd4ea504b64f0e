"""How well messages of another hand are heard, on which nothing was ever mended.

The floors are what the first run showed, less two or three figures: no goal, but a rope.
"""

from pathlib import Path

from bot.language.hearing.facts import Standing
from tests.bot.language.hearing_score import heard_in
from tests.bot.language.marked import found_in, messages, taken_apart

_ASIDE = Path(__file__).parent / "aside" / "messages.toml"


def test_the_messages_set_aside_are_heard_no_worse_than_at_first() -> None:
    found = found_in(_ASIDE)
    assert found.precision >= 0.90
    assert found.recall >= 0.68
    assert found.found_or_asked >= 0.79


def test_a_mark_is_taken_out_of_its_message() -> None:
    text, marks = taken_apart("tube {12%|tu} at {8 in|di-}, no <mesh|no>")
    assert text == "tube 12% at 8 in, no mesh"
    assert [(m.words, m.role, m.sign) for m in marks] == [("12%", "tu", ""), ("8 in", "di", "-")]
    assert all(text[m.start : m.end] == m.words for m in marks)


def test_what_was_and_what_others_have_seldom_fills_a_question() -> None:
    wrong = total = 0
    for message in messages(_ASIDE):
        text, marks = taken_apart(message)
        heard = heard_in(text)
        for mark in marks:
            if mark.sign in ("-", "~", "!") and mark.sign:
                total += 1
                held = (f for f in heard.facts if f.standing is Standing.IS)
                wrong += any(mark.is_told_by(fact) for fact in held)
    assert total >= 15
    assert wrong <= total // 4
