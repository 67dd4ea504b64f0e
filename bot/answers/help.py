"""What can be asked: the list of questions, or one of them with its options."""

from collections.abc import Mapping, Sequence

from bot.answers.linking import page_links
from bot.command import Command
from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.names import closest
from bot.language.shown import shown
from bot.language.wanted import Closest
from bot.preferences import Context
from bot.queries.general import HelpQuery
from bot.reply import Reply, Row, Table

__all__ = ["answer_help"]

_OWN_WORDS = "ask what temperature does a bearded dragon need"


def answer_help(
    query: HelpQuery,
    context: Context,
    commands: Sequence[Command],
    groups: Mapping[str, str],
) -> Reply:
    """Answer with every question, those of a group, or the options and examples of one."""
    wish = " ".join(query.command.lower().removeprefix("/").split())
    if not wish:
        return _all(commands, groups)
    if wish in groups:
        return _group(wish, groups[wish], commands)
    by_name = {command.name: command for command in commands}
    if wish not in by_name:
        near = closest(wish, (*by_name, *groups))
        raise NotUnderstoodError(
            shown(wish),
            Say("wanted-command", Closest(near)),
            f"help {near or commands[0].name}",
            "command",
        )
    return _one(by_name[wish], context)


def _group(name: str, about: str, commands: Sequence[Command]) -> Reply:
    within = [command for command in commands if command.name.startswith(f"{name} ")]
    return Reply(
        command="help",
        status="ok",
        title=f"What you can ask with {name}",
        answer=f"{about}.",
        table=Table(
            columns=("Question", "What it answers"),
            rows=tuple((command.name, command.summary) for command in within),
        ),
        steps=(f"Try: {within[0].examples[0]}", f"More about one: help {within[0].name}"),
    )


def _all(commands: Sequence[Command], groups: Mapping[str, str]) -> Reply:
    alone = [(c.name, c.summary) for c in commands if c.name.partition(" ")[0] not in groups]
    return Reply(
        command="help",
        status="ok",
        title="What you can ask",
        answer="Ask in inches or centimetres, °F or °C; every answer shows both.",
        table=Table(
            columns=("Question", "What it answers"),
            rows=(*alone, *((f"{name} …", about) for name, about in groups.items())),
        ),
        steps=(
            f"Not sure which one? Say it in your own words: {_OWN_WORDS}",
            f"Try: {commands[0].examples[0]}",
            f"More about one question: help {commands[0].name}, or help {next(iter(groups))}",
        ),
        cautions=(
            (
                "I compute from what you tell me and cannot see your animal: "
                "for a sick animal ask a reptile vet."
            ),
        ),
    )


def _one(command: Command, context: Context) -> Reply:
    options = command.query.options()
    return Reply(
        command="help",
        status="ok",
        title=f"How to ask: {command.name}",
        answer=f"{command.summary}.",
        rows=tuple(
            Row(
                label=option.name,
                text=f"{option.description}{' (needed)' if option.required else ''}",
            )
            for option in options
        ),
        steps=tuple(f"Try: {example}" for example in command.examples),
        guide=page_links(command.guide, context.guide_url),
    )
