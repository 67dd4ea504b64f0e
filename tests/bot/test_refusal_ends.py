"""Every refusal that prints a range prints the rule: its ends are taken, one step on is not.

The ends are read out of the sentence as an asker would read them, in both units, and asked again.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import cache

import pytest
from pydantic import ValidationError

from bot.ask import ask
from bot.command import Command
from bot.commands import COMMANDS, command_named
from bot.language.quantities import read_length
from bot.language.units import Units
from bot.language.words import join_line
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.question_context import read_options
from bot.questions.saved.saving import BOUNDED, BeyondKept, tell_beyond, told_ends
from bot.reply import Reply
from bot.saved.keeper import Setup
from bot.saying.voice import voice
from bot.understood import take_apart

NOBODY = Preferences()
# What is typed, how the refusal shows it where it is about the option itself.
EXTREMES = {
    "-200C": "-200 °C",
    "1000C": "1000 °C",
    "0.5cm": "0.5 cm",
    "50m": "5000 cm",
    "500 hours": "500 h",
    "0W": "0 W",
    "100000W": "100000 W",
}
ABOVE = {"1000C", "50m", "500 hours", "100000W"}
STEPS = {"°F": 1.0, "°C": 0.5, "in": 0.5, "cm": 1.0, "h": 0.1, "W": 1.0}
REFUSED = re.compile(
    r"I cannot answer that\. (?P<name>.+?) is (?P<value>.+?), and my figures hold "
    r"(?P<ends>.+?)\. For example"
)
END = re.compile(r"(from|above|up to) (-?[\d.]+ [^ (]+)(?: \((-?[\d.]+ [^)]+)\))?")


@dataclass(frozen=True)
class Case:
    """A question with an option driven beyond its range, and the refusal that came of it."""

    command: str
    given: tuple[tuple[str, str], ...]
    option: str
    typed: str
    refusal: str

    def __str__(self) -> str:
        return f"{self.command} {self.option} {self.typed} {self.ends()}"

    def ends(self) -> list[tuple[str, str, str]]:
        """Return word, and end in the one and the other unit, as they are printed."""
        return END.findall(of(self.refusal)["ends"])

    def answered(self, typed: str) -> Reply:
        """Return the reply when this is typed for the option."""
        return ask(join_line(self.command, {**dict(self.given), self.option: typed}), NOBODY)

    def refused(self, typed: str) -> str:
        """Return the answer, without what cannot wait and is said before it."""
        return self.answered(typed).answer.rpartition("Your question: ")[2]

    def is_outside(self, typed: str) -> bool:
        """Say whether the option is refused as outside when this is typed for it."""
        found = REFUSED.match(self.refused(typed))
        return found is not None and found["name"] == of(self.refusal)["name"]


def of(refusal: str) -> re.Match[str]:
    found = REFUSED.match(refusal)
    assert found is not None, refusal
    return found


def is_read(command: Command, given: Mapping[str, str]) -> bool:
    """Say whether every option is read: of what is not, no refusal can print an end."""
    try:
        read_options(command.query, given, NOBODY)
    except ValidationError:
        return False
    return True


@cache
def driven_out(name: str) -> tuple[Case, ...]:
    """Return the refusals of a question whose options are driven out one by one, each once."""
    command = command_named(name)
    assert command is not None
    cases: dict[str, Case] = {}
    for example in command.examples:
        apart = take_apart(example, NOBODY)
        assert isinstance(apart, Question)
        for option in command.query.options():
            for typed, shown in EXTREMES.items():
                if not is_read(command, {**apart.given, option.name: typed}):
                    continue
                case = Case(command.name, tuple(apart.given.items()), option.name, typed, "")
                answer = case.refused(typed)
                found = REFUSED.match(answer)
                if found is not None and shown in found["value"]:
                    case = replace(case, refusal=answer)
                    cases.setdefault(str(case), case)
    return tuple(cases.values())


BOUND = (
    *("distance", "uvi", "tube", "meter", "section", "dose", "card", "temps", "basking"),
    *("watts", "air", "night", "surface", "bright", "plan", "arrange", "compare"),
)


def test_questions_are_driven_beyond_what_they_take() -> None:
    for name, options in {
        "temps": {"basking", "lamp_on"},
        "basking": {"distance", "watts"},
        "watts": {"distance"},
        "night": {"room"},
    }.items():
        assert options <= {case.option for case in driven_out(name)}


@pytest.mark.parametrize("name", [c.name for c in COMMANDS if c.name not in BOUND])
def test_no_other_question_refuses_by_a_range(name: str) -> None:
    assert driven_out(name) == (), f"it refuses by a range: {name} belongs into BOUND"


@pytest.mark.parametrize("name", BOUND)
def test_a_printed_end_is_no_longer_outside(name: str) -> None:
    assert driven_out(name)
    for case in driven_out(name):
        assert case.ends()
        for word, *both in case.ends():
            for amount, unit in map(str.split, filter(None, both)):
                outside = case.is_outside(f"{amount}{unit.removeprefix('°')}")
                assert outside is (word == "above"), (str(case), word, amount, unit)


@pytest.mark.parametrize("name", BOUND)
def test_one_step_beyond_a_printed_end_is_not_answered(name: str) -> None:
    for case in driven_out(name):
        is_above = case.typed in ABOVE
        for word, *both in case.ends():
            # An option may be bounded on one side by itself and on the other by another.
            if (word == "up to") is not is_above:
                continue
            for amount, unit in map(str.split, filter(None, both)):
                step = STEPS[unit] if is_above else -STEPS[unit]
                beyond = f"{float(amount) + step:g}{unit.removeprefix('°')}"
                reply = case.answered(beyond)
                # A danger is told whatever the question, and the refusal then stands behind it.
                refused = reply.status == "problem" or "Your question: " in reply.answer
                assert refused, (beyond, case.refusal)


@pytest.mark.parametrize("name", BOUND)
def test_a_refusal_ends_in_a_question_that_works(name: str) -> None:
    for case in driven_out(name):
        question = case.refusal.rpartition("For example: ")[2]
        assert ask(question, NOBODY).status == "ok", str(case)


@pytest.mark.parametrize(
    ("line", "taken", "refused", "told"),
    [
        ("hours latitude:30S year:{}", ("1950", "2090"), ("1949", "2091"), "from 1950 to 2090"),
        ("hours latitude:{}", ("0", "90N", "90S"), ("91N", "90.5S"), "from 0 to 90 degrees"),
        (
            "hours animal:beardie on:{}",
            ("0:00", "23:59"),
            ("24:00", "23:60"),
            "from 0:00 to 23:59",
        ),
        (
            "basking surface:92F air:80F distance:10in want:103F dimmer:{}",
            ("1%", "100%"),
            ("101%", "100.5%"),
            "from 0% to 100%",
        ),
        (
            "surface reading:98F material:slate setting:{}",
            ("50%", "100%"),
            ("49%",),
            "from 50% to 100%",
        ),
    ],
)
def test_ends_in_the_words_of_a_reader_are_its_rule(
    line: str, taken: tuple[str, ...], refused: tuple[str, ...], told: str
) -> None:
    for typed in taken:
        assert ask(line.format(typed), NOBODY).status == "ok", typed
    for typed in refused:
        reply = ask(line.format(typed), NOBODY)
        assert reply.status == "problem", typed
        assert told in reply.answer


@pytest.mark.parametrize("field", [name for name in BOUNDED if name.endswith("_m")])
def test_the_ends_of_what_is_kept_are_those_that_are_told(field: str) -> None:
    option, example = BOUNDED[field]
    rules = {type(m).__name__: m for m in Setup.model_fields[field].metadata}
    low_m = rules["Ge"].ge if "Ge" in rules else 0.0
    high_m = rules["Le"].le
    facts = BeyondKept(option, "x", *told_ends(field), example)
    for units in Units:
        said = voice("en", units).text(tell_beyond(facts).brief.range[0])
        ends = re.findall(r"([\d.]+ (?:in|cm))", said)
        assert len(ends) == (4 if low_m else 2)
        for text in ends:
            assert low_m <= read_length(text).low <= high_m, text
        for text in ends[-2:]:
            assert read_length(text).low == pytest.approx(high_m, rel=0.1)
        for text in ends[:-2]:
            assert read_length(text).low == pytest.approx(low_m, rel=0.1)
    assert example
