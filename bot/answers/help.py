"""What can be asked: the list of questions, or one of them with its options."""

from collections.abc import Sequence

from bot.answers.linking import page_links
from bot.command import Command
from bot.language.errors import NotUnderstoodError
from bot.language.names import closest
from bot.language.shown import shown
from bot.preferences import Context
from bot.queries.general import HelpQuery
from bot.reply import Reply, Row, Table

__all__ = ["answer_help"]


def answer_help(query: HelpQuery, context: Context, commands: Sequence[Command]) -> Reply:
    """Answer with every question, or with the options and examples of one."""
    wish = query.command.strip().lower().removeprefix("/")
    if not wish:
        return _all(commands)
    by_name = {command.name: command for command in commands}
    if wish not in by_name:
        near = closest(wish, by_name)
        raise NotUnderstoodError(
            shown(wish),
            f"the name of a question{f', perhaps {near}' if near else ''}",
            f"help {near or commands[0].name}",
            "command",
        )
    return _one(by_name[wish], context)


def _all(commands: Sequence[Command]) -> Reply:
    return Reply(
        command="help",
        status="ok",
        title="What you can ask",
        answer="Ask in inches or centimetres, °F or °C; every answer shows both.",
        table=Table(
            columns=("Question", "What it answers"),
            rows=tuple((command.name, command.summary) for command in commands),
        ),
        steps=(
            f"Try: {commands[0].examples[0]}",
            f"More about one question: help {commands[0].name}",
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
