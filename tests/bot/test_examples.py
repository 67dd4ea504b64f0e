"""Examples that replies hand out: made from an animal's needs, and faulted by no answer."""

import pytest

from bot.ask import ask
from bot.commands import COMMANDS, command_named
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.questions.animals import ANY_ANIMAL
from bot.reply import Reply
from bot.routes.examples import examples_for
from calc.animal import Animal, Group
from calc.animals import animals
from tests.some import crossed

# What lives in water alone is under no lamp: there is nothing to ask.
NAMES = tuple(animal.name for animal in animals().values() if animal.uvi is not None)
OF_AN_ANIMAL = tuple(
    command.name for command in COMMANDS if examples_for(command.name, "bearded dragon")
)
ANYONE = Preferences()


def named_animal(name: str) -> Animal:
    return next(animal for animal in animals().values() if animal.name == name)


def filled(question: str, name: str) -> dict[str, str]:
    """Return a whole question out of nothing but examples for an animal."""
    command = command_named(question)
    assert command is not None
    options = {option.name: option for option in command.query.options()}
    whole = {name: options[name].example for name in command.query.lacking({})}
    whole |= {k: v for k, v in examples_for(question, name).items() if k in options}
    if question in ("distance", "uvi", "section"):
        whole |= {"reflector": "polished", "screen": "none"}
    if question in ("distance", "uvi", "tube"):
        # Without them the class of the tube is what the example tells.
        whole.pop("readings")
    if question == "distance":
        whole.pop("distance", "")
    # What is needed beside a distance that is told.
    whole |= {name: options[name].example for name in command.query.lacking(whole)}
    return whole | ({"animal": name} if "animal" in options else {})


@pytest.mark.parametrize(("question", "name"), crossed(OF_AN_ANIMAL, NAMES))
def test_no_example_is_a_set_up_that_is_faulted(question: str, name: str) -> None:
    if question == "surface" and name != ANY_ANIMAL:
        # It names no animal: the spot of some would burn nearly every other.
        return
    if question == "watts" and named_animal(name).group is Group.AMPHIBIAN:
        # Most of them need no heat lamp, and the room is warm enough.
        return
    reply = ask(Question(question, filled(question, name)), ANYONE)
    assert reply.status == "ok", reply.answer
    assert reply.alarms == ()
    if question == "temps" and named_animal(name).group is not Group.TURTLE:
        told = ("Yes. ", "What I know a target for is right", "It needs no hot spot")
        assert any(each in reply.answer for each in told)
    if question == "basking":
        assert "Leave the lamp where it is" in reply.answer
    if question == "uvi":
        assert ": fine, aim for" in reply.answer
    if question == "night":
        assert reply.answer.startswith(("No heat: ", "I do not know", "Its water counts"))


@pytest.mark.parametrize(("question", "name"), crossed(OF_AN_ANIMAL, NAMES))
def test_what_a_question_lacks_is_told_with_figures_for_the_animal(
    question: str, name: str
) -> None:
    command = command_named(question)
    assert command is not None
    if not any(o.name == "animal" for o in command.query.options()):
        return
    reply = ask(Question(question, {"animal": name}), ANYONE)
    if "For example: " in reply.answer:
        again = ask(reply.answer.partition("For example: ")[2], ANYONE)
        assert again.status == "ok", again.answer
        assert again.alarms == ()


@pytest.mark.parametrize("line", [e for command in COMMANDS for e in command.examples])
def test_no_example_of_a_question_sounds_an_alarm(line: str) -> None:
    assert ask(line, ANYONE).alarms == ()


@pytest.mark.parametrize(("question", "name"), crossed(("basking", "uvi", "watts"), NAMES, 3))
def test_the_usual_animal_of_a_group_is_the_one_of_the_example(question: str, name: str) -> None:
    reply: Reply = ask(Question(question, {}), Preferences(default_animal=name))
    assert reply.status == "problem"
    line = reply.answer.partition("For example: ")[2]
    assert line
    if question == "watts" and named_animal(name).group is Group.AMPHIBIAN:
        return
    again = ask(line, Preferences(default_animal=name))
    if "animal:" not in line:
        assert again.alarms == ()
