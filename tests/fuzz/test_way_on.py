"""The example beside every refusal leads to an answer in one step, whatever was typed wrongly."""

from collections.abc import Mapping

import pytest

from bot.ask import ask
from bot.command import Command
from bot.commands import COMMANDS
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.reply import Reply
from bot.understood import take_apart
from tests.fuzz.advice import assert_advice_leads_to_an_answer, by_name
from tests.fuzz.pool import examples_of
from tests.some import crossed

ANYONE = Preferences()
ASKED = [command for command in COMMANDS if command.route is None]


def asked(name: str, given: Mapping[str, str]) -> Reply:
    return ask(Question(name, given), ANYONE)


@pytest.mark.parametrize(
    ("command", "wrong"),
    crossed(ASKED, ["xyz", "0", "-5", "999999"], 2),
    ids=lambda one: getattr(one, "name", one),
)
def test_one_step_leads_from_any_wrong_option_to_an_answer(command: Command, wrong: str) -> None:
    for option in command.query.options():
        given = dict(examples_of(command)[0]) | {option.name: wrong}
        assert_advice_leads_to_an_answer(command, given, asked)


@pytest.mark.parametrize("command", ASKED, ids=lambda command: command.name)
def test_one_step_leads_from_a_question_that_lacks_anything_to_an_answer(command: Command) -> None:
    whole = examples_of(command)[0]
    for name in whole:
        given = {option: text for option, text in whole.items() if option != name}
        assert_advice_leads_to_an_answer(command, given, asked)


@pytest.mark.parametrize(
    "line",
    [
        "meter readings:4.2 at 12 in animal:bearded dragon without:0 at 12in",
        "meter readings:900 at 12in without:0 at 12in screen:45%",
        "meter readings:4.2 at 12 in screen:45% without:2 at 12in",
        "distance tube:12% screen:xyz uvi:5000",
        "dose uvi:x hours:99 month:June",
        "basking surface:1000F air:xyz distance:0in",
        "tube distance:0in enclosure:1in length:34in",
    ],
)
def test_one_step_leads_from_several_wrong_things_to_an_answer(line: str) -> None:
    apart = take_apart(line, ANYONE)
    assert isinstance(apart, Question)
    assert_advice_leads_to_an_answer(*by_name(apart), asked)
