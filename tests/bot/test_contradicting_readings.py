"""Readings that do not fit one tube are told before any distance."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences

REST = "tube:12% reflector:polished screen:none animal:bearded dragon"


@pytest.mark.parametrize("question", ["distance", "uvi distance:12in"])
def test_readings_that_contradict_each_other_are_told_first(
    question: str, anyone: Preferences
) -> None:
    reply = ask(f"{question} {REST} readings:2 at 12in, 8 at 12in", anyone)
    told = f"{reply.answer} {' '.join(reply.why)}"
    assert reply.answer.startswith(("Your readings do not fit one tube", "Not yet: your readings"))
    assert "Your readings do not fit one tube" in told
    assert "took most" not in " ".join(row.text for row in reply.rows)
    assert "settled most" not in told


@pytest.mark.parametrize("readings", ["2 at 12in, 8 at 12in", "4 at 12in, 4 at 24in, 4 at 36in"])
def test_no_distance_is_to_be_kept_by_readings_that_cannot_be(
    readings: str, anyone: Preferences
) -> None:
    reply = ask(f"meter readings:{readings} animal:bearded dragon", anyone)
    assert any(row.text.startswith("Do not hang it by them yet") for row in reply.rows)
    assert "Hang it" not in reply.answer
    sure = next(row.text for row in reply.rows if row.label == "How sure")
    assert "times" in sure
    assert "%" not in sure.partition(". A hand meter")[0]


@pytest.mark.parametrize("readings", ["4.2 at 12in", "4.2 at 12in, 2.9 at 15in"])
def test_careful_readings_bring_no_warning(readings: str, anyone: Preferences) -> None:
    reply = ask(f"distance {REST} readings:{readings}", anyone)
    assert not reply.answer.startswith("Your readings")
    assert "have settled most of it" in reply.why[-1]


def test_one_reading_cannot_contradict_itself(anyone: Preferences) -> None:
    reply = ask(
        f"distance {REST.replace('bearded dragon', 'corn snake')} readings:0.9 at 20in", anyone
    )
    assert not reply.answer.startswith("Your readings")


@pytest.mark.parametrize(
    "question",
    [f"distance {REST}", f"uvi distance:12in {REST}", "meter animal:bearded dragon"],
)
def test_readings_that_contradict_are_told_where_the_wish_is_refused(
    question: str, anyone: Preferences
) -> None:
    told = ask(f"{question} readings:2 at 12in, 8 at 12in uvi:14-16", anyone).answer
    assert "Your readings do not fit one tube" in told
    assert told.index("Your readings do not") < told.index("is too strong")
    alone = ask(f"{question} readings:4.2 at 12in uvi:14-16", anyone).answer
    assert "is too strong" in alone
    assert "Your readings" not in alone
