"""The picture of dated readings says what the reply says: the verdict, what is due and past."""

from dataclasses import replace
from datetime import date

import pytest

from bot.ask import ask
from bot.drawing import Chart, Stroke, Tone
from bot.preferences import LANGUAGES, Preferences
from bot.reply import Reply

DRAGON = "animal:bearded dragon"
OPEN = "2026-01-03 5.2, 2026-03-01 4.6, 2026-05-02 4.1"
CLOSED = "2026-01-03 5.2, 2026-03-01 4.6, 2026-05-02 4.1, 2026-07-02 3.6"
READ = date(2026, 7, 2)


def told(readings: str, today: date = READ, language: str = "en") -> tuple[Reply, Chart, str]:
    base = Preferences(language=language)  # type: ignore[arg-type]
    reply = ask(f"decline readings:{readings} {DRAGON}", replace(base, today=today))
    assert reply.picture is not None
    assert isinstance(reply.picture.drawing, Chart)
    return reply, reply.picture.drawing, reply.picture.alt


def plain(words: str) -> str:
    return words.replace("\u00a0", " ")


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("readings", [OPEN, CLOSED])
def test_the_picture_and_its_words_say_when_it_is_below_as_the_reply_does(
    readings: str, language: str
) -> None:
    reply, chart, alt = told(readings, language=language)
    assert chart.due is not None
    label, brief = plain(chart.due.label), [line.text for line in reply.brief]
    kept = [line for line in brief if line in label]
    assert " ".join(kept) == label
    assert label in alt
    falls = next(value for value in reply.values if value.name == "falls_below_in")
    assert chart.due.best - READ.toordinal() == pytest.approx(falls.best / 24.0, abs=0.6)


def test_an_end_that_nobody_can_tell_is_open() -> None:
    _, chart, _ = told(OPEN)
    assert chart.due is not None
    assert chart.due.low is not None
    assert chart.due.high is None
    assert chart.x.high > chart.due.best
    _, closed, _ = told(CLOSED)
    assert closed.due is not None
    assert closed.due.high is not None


@pytest.mark.parametrize(
    ("readings", "tone", "told_in"),
    [
        (CLOSED, Tone.GOOD, "Last read"),
        ("2026-01-03 9, 2026-03-01 8.6, 2026-05-02 8.1", Tone.BAD, ""),
        ("2026-01-03 3.2, 2026-03-01 2.6, 2026-05-02 2.1", Tone.BAD, ""),
        ("2026-01-03 4.0, 2026-03-01 0.4, 2026-05-02 8.0", Tone.DOUBTFUL, ""),
    ],
)
def test_the_picture_has_the_sign_and_the_words_of_the_verdict(
    readings: str, tone: Tone, told_in: str
) -> None:
    reply, chart, alt = told(readings)
    assert chart.tone is tone
    title = plain(chart.title)
    assert title in alt
    if told_in:
        verdict = title.rpartition(": ")[2].rstrip(".")
        [row] = [row.text for row in reply.rows if row.label in ("Now", told_in)]
        assert row.endswith(f": {verdict}")
    else:
        assert title in [line.text for line in reply.brief]


def test_a_day_that_is_past_is_said_to_be_past() -> None:
    later = date(2026, 11, 29)
    _, chart, alt = told(OPEN, later)
    assert chart.due is not None
    assert chart.due.best < later.toordinal()
    assert "since" in chart.due.label
    assert "Read it again today." in alt
    [today] = chart.marks
    assert (today.x, today.is_now) == (later.toordinal(), True)
    assert chart.x.high >= later.toordinal()


def test_the_line_is_broken_where_nothing_was_read_yet() -> None:
    _, chart, _ = told(CLOSED)
    read, ahead = chart.lines
    assert (read.stroke, ahead.stroke) == (Stroke.MAIN, Stroke.AHEAD)
    assert read.x[-1] == ahead.x[0] == READ.toordinal()


def test_without_a_line_none_is_drawn_and_nothing_is_due() -> None:
    _, chart, alt = told("2026-01-03 4.2")
    assert chart.lines == ()
    assert chart.due is None
    assert "Line" not in chart.note.replace("No line", "")
    assert "Below" not in alt
