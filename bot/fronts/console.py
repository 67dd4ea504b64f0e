"""The console: a line in, an answer out; with history and completion on a terminal."""

from collections.abc import Callable, Iterable, Mapping, Sequence
from pathlib import Path

from bot.ask import ask
from bot.completion import complete_line
from bot.fronts.gallery import keep_picture
from bot.preferences import Preferences
from bot.render.text import render_text
from bot.reply import Reply

__all__ = ["Answerer", "converse", "converse_on_terminal", "show"]

_GREETING = (
    "Noonstone. Type a question, for example:\n"
    "  distance tube:12% reflector:polished screen:none animal:bearded dragon\n"
    "help lists what I can answer; leave with quit.\n"
)
Answerer = Callable[[str, Preferences], Reply]
_LEAVING = frozenset({"quit", "exit", "bye"})


def converse(
    lines: Iterable[str],
    write: Callable[[str], object],
    preferences: Preferences,
    out: Path | None = None,
    answer: Answerer = ask,
) -> None:
    """Answer each line in turn until they end or one says quit; keep pictures in ``out``."""
    for line in lines:
        wish = line.strip()
        if wish.lower() in _LEAVING:
            return
        if wish:
            reply = answer(wish, preferences)
            write(render_text(reply) + "\n")
            if kept := out and keep_picture(reply, out):
                write(f"Picture: {kept}\n\n")


def converse_on_terminal(
    preferences: Preferences,
    history: Path,
    out: Path | None = None,
    answer: Answerer = ask,
    offers: Callable[[], Mapping[str, Sequence[str]]] = dict,
) -> None:
    """Answer a person at a terminal, with history kept in a file and Tab completion."""
    from prompt_toolkit import PromptSession
    from prompt_toolkit.completion import CompleteEvent, Completer, Completion
    from prompt_toolkit.document import Document
    from prompt_toolkit.history import FileHistory

    class LineCompleter(Completer):
        def get_completions(self, document: Document, _: CompleteEvent) -> Iterable[Completion]:
            start, choices = complete_line(document.text_before_cursor, offers())
            for choice in choices:
                yield Completion(choice, start_position=start - len(document.text_before_cursor))

    history.parent.mkdir(parents=True, exist_ok=True)
    session: PromptSession[str] = PromptSession(
        history=FileHistory(str(history)), completer=LineCompleter(), complete_while_typing=False
    )
    print(_GREETING)

    def typed() -> Iterable[str]:
        while True:
            try:
                yield session.prompt("noonstone> ")
            except KeyboardInterrupt:
                continue
            except EOFError:
                return

    for line in typed():
        wish = line.strip()
        if wish.lower() in _LEAVING:
            return
        if wish:
            reply = answer(wish, preferences)
            show(reply)
            if kept := out and keep_picture(reply, out):
                print(f"Picture: {kept}")


def show(reply: Reply) -> None:
    """Print a reply on a terminal, laid out with headings and a table."""
    from rich.console import Console

    from bot.render.terminal import render_terminal

    Console().print(render_terminal(reply))
