"""Whoever does what each refusal says gets an answer in the end."""

import re
from collections.abc import Callable, Mapping

from bot.command import Command
from bot.commands import command_at, command_named
from bot.language.errors import NotUnderstoodError
from bot.language.words import split_line
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.reply import Reply
from bot.understood import take_apart

__all__ = ["assert_advice_leads_to_an_answer"]

Asked = Callable[[str, Mapping[str, str]], Reply]

_MOST_STEPS = 24
_LONGEST_SENTENCE = 1200
_OF_AN_OPTION = re.compile(r"I read .+? for (\w+)\. I need .+, for example (.+)\.", re.S)
_OF_A_LINE = re.compile(r".*[Ff]or example:? (.+?)\.?", re.S)


def assert_advice_leads_to_an_answer(
    command: Command, given: Mapping[str, str], ask: Asked
) -> None:
    """Ask, then what the refusal gives as an example: that is answered.

    A refusal tells its example, or is a verdict about what was read, with steps of its own. What
    only saved data refuse may take several steps.
    """
    heard: list[str] = []
    for _ in range(_MOST_STEPS if command.stored else 2):
        reply = ask(command.name, given)
        if reply.status == "ok":
            return
        assert reply.answer not in heard, (command.name, given, heard)
        assert len(reply.answer) <= _LONGEST_SENTENCE
        assert "\n" not in reply.answer
        heard.append(reply.answer)
        followed = _followed(reply, command, given)
        if followed is None:
            assert not reply.steps[0].startswith("More about"), (command.name, given, reply)
            return
        command, given = followed
    raise AssertionError(heard)


def by_name(question: Question) -> tuple[Command, dict[str, str]]:
    """Return a question's command and its options as typed."""
    command = command_named(question.command)
    assert command is not None
    return command, question.given


def _followed(
    reply: Reply, command: Command, given: Mapping[str, str]
) -> tuple[Command, Mapping[str, str]] | None:
    """Return the question that the refusal's example makes of this one, if it has an example."""
    about = _OF_AN_OPTION.fullmatch(reply.answer)
    told = about or _OF_A_LINE.fullmatch(reply.answer)
    if told is None:
        return None
    option, example = (about[1], about[2]) if about else ("", told[1])
    options = {o.name: o for o in command.query.options()}
    own = option in options and example in (options[option].example, *options[option].choices)
    if not own and command_at(example) is not None:
        apart = take_apart(example, Preferences())
        assert isinstance(apart, Question), reply.answer
        return by_name(apart)
    try:
        _, named = split_line(f"{command.name.replace(' ', '-')} {example}", options)
    except NotUnderstoodError:
        named = {option: example}
    assert set(named) <= set(options), reply.answer
    return command, {**given, **named}
