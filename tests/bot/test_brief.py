"""The brief: a few lines for a phone, in one order, with nothing urgent left to a part."""

import pytest

from bot.ask import ask
from bot.brief import MOST_LINES, PHONE, brief_of, held_back, phone_lines
from bot.commands import COMMANDS
from bot.dangers.table import HazardKind, Who, hazard, hazards
from bot.preferences import Preferences
from bot.render.text import render_brief, render_part, render_text
from bot.reply import Alarm, Assumed, Line, PartName, Reply, Role, Row
from bot.said_first import said_first
from tests.bot.dangers.saying import english

ANYONE = Preferences()
EXAMPLES = [example for command in COMMANDS for example in command.examples]


def reply(**parts: object) -> Reply:
    told = {"command": "distance", "status": "ok", "title": "T", "answer": "A.", **parts}
    return Reply.model_validate(told)


def lines_of(answer: str, role: Role = Role.HEAD) -> int:
    return phone_lines([Line(role=role, text=answer)])


def test_a_line_is_as_wide_as_a_phone() -> None:
    assert lines_of("x" * PHONE) == 1
    assert lines_of("x" * (PHONE + 1)) == 2
    assert lines_of("x" * (PHONE - 2), Role.CAUTION) == 1
    assert lines_of("x" * (PHONE - 2), Role.STEP) == 2


@pytest.mark.parametrize(("head", "more"), [(MOST_LINES - 3, True), (MOST_LINES - 2, False)])
def test_a_second_step_is_told_only_while_a_phone_shows_it(head: int, more: bool) -> None:
    answer = "\n".join("A." for _ in range(head))
    told = brief_of(reply(answer=answer, steps=("One.", "Two.", "Three."), cautions=("Care.",)))
    assert (Line(role=Role.STEP, text="Two.") in told) is more
    assert phone_lines(told) == MOST_LINES


def test_the_answer_the_first_step_and_the_first_caution_are_never_given_up() -> None:
    long = " ".join(["word"] * 60)
    assumed = (Assumed(name="value", how="inferred", text="I took it as in."),)
    told = brief_of(reply(answer=long, steps=(long, "Two."), cautions=(long, "b"), assumed=assumed))
    assert [line.role for line in told] == [Role.HEAD, Role.ASSUMED, Role.STEP, Role.CAUTION]


def test_a_brief_that_an_answer_brings_is_kept() -> None:
    own = (Line(role=Role.HEAD, text="17.5 in."),)
    assert said_first(reply(brief=own, steps=("One.",)), (), ANYONE).brief == own


def test_parts_stand_in_their_order_and_an_empty_one_nowhere() -> None:
    rows = (Row(label="Reach", text="3 in"),)
    whole = reply(cautions=("Care.",), steps=("One.",), rows=rows, why=("So.",))
    assert [part.name for part in whole.parts] == ["steps", "numbers", "why", "care"]
    assert whole.parts[1].items == ("Reach: 3 in",)
    assert held_back(whole) == (PartName.NUMBERS, PartName.WHY)
    assert render_part(whole, PartName.WHY) == "Why:\n- So.\n"
    assert render_part(whole, PartName.SOURCES) == ""
    assert Reply.model_validate_json(whole.model_dump_json()).steps == whole.steps


def test_a_part_that_is_the_answer_itself_is_shown_at_once() -> None:
    page = ask("guide screens", ANYONE)
    assert page.rows[-1].label in render_brief(page)
    assert [line.role for line in page.brief] == [Role.HEAD]
    assert held_back(page) == ()
    assert "numbers" not in held_back(ask("help", ANYONE))


@pytest.mark.parametrize("line", EXAMPLES)
def test_the_brief_of_every_example_stands_whole_in_the_full_text(line: str) -> None:
    answered = ask(line, ANYONE)
    whole = render_text(answered, 10_000)
    assert all(text in whole for told in answered.brief for text in told.text.split("\n"))
    lead = Role.DANGER if answered.dangers else Role.HEAD
    assert answered.brief[0].role is lead


@pytest.mark.parametrize("line", EXAMPLES)
def test_no_brief_is_longer_than_a_phone(line: str) -> None:
    assert phone_lines(ask(line, ANYONE).brief) <= MOST_LINES


PRESSING = [key for key, row in hazards().items() if row.kind not in ("wrong", "never")]


@pytest.mark.parametrize("key", PRESSING)
def test_a_danger_leads_with_at_most_four_lines_of_acts(key: str) -> None:
    told = said_first(ask("needs bearded dragon", ANYONE), [Alarm(key=key)], ANYONE).brief
    acts = [line for line in told if line.role is Role.DANGER]
    assert acts[0].text == english(hazard(key).do_now[0])
    assert phone_lines(acts) <= 4
    assert {line.role for line in told} <= {*list(Role)[:5]}
    if hazard(key).call.who is not Who.NOBODY and "vet" not in {
        hazard(key).act,
        *hazard(key).covers,
    }:
        assert Role.CALL in {line.role for line in told}


@pytest.mark.parametrize("key", [key for key in hazards() if key not in PRESSING])
def test_what_is_wrong_but_not_urgent_is_the_first_step(key: str) -> None:
    assert hazard(key).kind in (HazardKind.WRONG, HazardKind.NEVER)
    told = said_first(ask("needs bearded dragon", ANYONE), [Alarm(key=key)], ANYONE).brief
    assert next(line.text for line in told if line.role is Role.STEP) == english(
        hazard(key).do_now[0]
    )


def test_a_refusal_under_a_danger_is_told_in_the_brief() -> None:
    told = ask("distance tube:banana animal:the lamp is smoking", ANYONE).brief
    assert told[0].role is Role.DANGER
    assert any("banana" in line.text for line in told if line.role is Role.HEAD)
