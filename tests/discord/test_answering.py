"""The latest answers are kept ready to be sent: the same ones, for the same asker's way, today."""

from datetime import date

import pytest

from bot.fronts.discord import answering
from bot.fronts.discord.answering import Answers, Finished, Way, laid_out
from bot.fronts.discord.question import Question
from bot.language.quantities import Units
from bot.preferences import Preferences
from bot.reply import Reply
from tests.discord.cast import FERN, MOSS, direct
from tests.discord.conftest import Maker
from tests.discord.world import World

LENGTH = Question("convert", {"value": "14in"})
TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "animal": "bearded dragon"}
PRIVATE, PUBLIC, ALONE = Way(False, False, True), Way(True, False, True), Way(False, True, True)
ANYONE, METRIC = Preferences(), Preferences(forced_units=Units.CM)


@pytest.fixture
def work(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Return the questions that were really worked out, in their order."""
    done: list[str] = []
    answered = Question.answered

    def noted(self: Question, preferences: Preferences) -> Reply:
        done.append(self.command)
        return answered(self, preferences)

    monkeypatch.setattr(Question, "answered", noted)
    return done


async def test_a_question_asked_again_is_not_worked_out_again(work: list[str]) -> None:
    answers = Answers()
    first = await answers.finished(LENGTH, ANYONE, PRIVATE)
    again = await answers.finished(Question("convert", {"value": "14in"}), ANYONE, PRIVATE)
    assert again is first
    assert work == ["convert"]


async def test_another_unit_place_or_text_is_another_answer(work: list[str]) -> None:
    answers = Answers()
    found = [
        await answers.finished(LENGTH, ANYONE, PRIVATE),
        await answers.finished(LENGTH, METRIC, PRIVATE),
        await answers.finished(LENGTH, ANYONE, PUBLIC),
        await answers.finished(LENGTH, ANYONE, ALONE),
        await answers.finished(Question("convert", {"value": "14 in"}), ANYONE, PRIVATE),
    ]
    assert len(work) == 5
    assert [finished.public for finished in found] == [False, False, True, False, False]


async def test_an_answer_is_kept_for_its_day_only(work: list[str]) -> None:
    days = [date(2026, 12, 31), date(2026, 12, 31), date(2027, 1, 1)]
    answers = Answers(today=lambda: days.pop(0))
    question = Question("hours", {"animal": "bearded dragon", "latitude": "52N"})
    for _ in range(3):
        await answers.finished(question, ANYONE, PRIVATE)
    assert work == ["hours", "hours"]


async def test_no_more_than_so_many_are_kept_and_the_oldest_goes(work: list[str]) -> None:
    answers = Answers(most=2)
    for length in ("1in", "2in", "3in", "3in", "1in"):
        await answers.finished(Question("convert", {"value": length}), ANYONE, PRIVATE)
    assert len(work) == 4


async def test_what_failed_is_tried_again(monkeypatch: pytest.MonkeyPatch) -> None:
    answers = Answers()
    with monkeypatch.context() as broken:
        broken.setattr(answering, "render_post", lambda *_, **__: 1 / 0)
        with pytest.raises(ZeroDivisionError):
            await answers.finished(LENGTH, ANYONE, PRIVATE)
    assert (await answers.finished(LENGTH, ANYONE, PRIVATE)).status == "ok"


@pytest.mark.parametrize("way", [PRIVATE, PUBLIC, ALONE])
async def test_a_kept_answer_is_sent_as_a_new_one_would_be(way: Way) -> None:
    def sent(finished: Finished) -> object:
        return finished.message.post, finished.message.rows, finished.message.card

    question = Question("distance", TUBE)
    kept = await Answers().finished(question, ANYONE, way)
    assert sent(kept) == sent(laid_out(question.answered(ANYONE), question, way))


async def test_everybody_gets_an_own_message_of_a_kept_answer(
    world: World, bot: Maker, work: list[str]
) -> None:
    async with world.running(bot()):
        first = await world.slash("distance", TUBE)
        second = await world.slash("distance", TUBE, user=MOSS)
        alone = await world.slash("distance", TUBE, where=direct(FERN))
        shared = await world.press(first, "Share")
        third = await world.slash("distance", TUBE, user=MOSS)
        await world.platform.until(lambda: shared.further, "the shared answer")
    assert first.post.seen_by == FERN.id
    assert second.post.seen_by == third.post.seen_by == MOSS.id
    assert second.text == third.text == alone.text
    assert second.buttons == third.buttons
    assert "Share" in third.buttons
    assert "Share" not in alone.buttons
    assert work.count("distance") == 2


async def test_a_kept_answer_given_to_a_member_pings_that_member_only(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        given = await world.slash("distance", {**TUBE, "for": MOSS})
        again = await world.slash("distance", {**TUBE, "for": FERN}, user=MOSS)
    assert given.post.pings == {f"@{MOSS.id}"}
    assert again.post.pings == {f"@{FERN.id}"}
