"""The console: a line in, an answer out; with history and completion on a terminal."""

from collections.abc import Callable, Iterable, Mapping, Sequence
from pathlib import Path

from bot.ask import ask
from bot.commands import COMMANDS
from bot.completion import complete_line
from bot.dialogue import START, known_told, turn, wishes_known
from bot.facts import Say
from bot.fronts.gallery import keep_picture, keep_sheet
from bot.fronts.printing import MORE, around, kept_told, show
from bot.language.units import Units
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.render.text import render_brief, render_part, render_sheet, render_text
from bot.reply import PartName, Reply
from bot.saying.voice import voice

__all__ = ["Answerer", "converse", "converse_on_terminal"]

Answerer = Callable[[str | Question, Preferences], Reply]
_LEAVING = frozenset({"quit", "exit", "bye"})
_ANEW = frozenset({"new", "neu"})
_ALL = "all"
_SHEET = "sheet"


class _Last:
    """The conversation: the last answer, whose parts one word opens, and what was asked before."""

    def __init__(self) -> None:
        self.reply: Reply | None = None
        self._dialogue = START

    def answered(self, line: str, preferences: Preferences, answer: Answerer) -> Reply | str:
        """Return the answer to a line as it is meant here; a sentence where nothing is asked."""
        if line.lower() in _ANEW:
            self.reply, self._dialogue = None, START
            return _said(Say("door-anew"), preferences)
        if wishes_known(line):
            speak = voice(preferences.speaking(line).spoken, Units.CM).text
            return "\n".join(map(speak, known_told(self._dialogue)))
        reply, self._dialogue = turn(self._dialogue, line, preferences, answer)
        if reply is None:
            return _said(Say("door-thanks"), preferences.speaking(line))
        self.reply = reply
        return reply

    def handed_over(self, wish: str, out: Path | None) -> str:
        """Return the care sheet of the last answer and where it is kept; nothing unless wished."""
        reply = self.reply
        if reply is None or reply.sheet is None:
            return ""
        if wish.lower() not in (_SHEET, reply.sheet_label.lower()):
            return ""
        kept = out and keep_sheet(reply, out)
        where = f"\n{around(reply, kept_told(kept))}\n" if kept else ""
        return f"{render_sheet(reply)}{where}".rstrip("\n")

    def opened(self, wish: str) -> tuple[Reply, PartName | None] | None:
        """Return the last answer and what of it the line opens: a part, or all of it.

        None is a line that is a question of its own.
        """
        word = wish.lower()
        if self.reply is None:
            return None
        if word == _ALL:
            return self.reply, None
        named = (part.name for part in self.reply.parts if word in (part.name, part.label.lower()))
        return next(((self.reply, name) for name in named), None)


def _greeting(preferences: Preferences) -> str:
    opening, closing = Say("console-greeting"), Say("console-greeting-help")
    example = f"  {COMMANDS[0].examples[0]}"
    return "\n".join((_said(opening, preferences), example, _said(closing, preferences), ""))


def _said(say: Say, preferences: Preferences) -> str:
    return voice(preferences.spoken, Units.CM).text(say)


def converse(
    lines: Iterable[str],
    write: Callable[[str], object],
    preferences: Preferences,
    out: Path | None = None,
    answer: Answerer = ask,
) -> None:
    """Answer each line in turn until they end or one says quit; keep pictures in ``out``."""
    last = _Last()
    for line in lines:
        wish = line.strip()
        if wish.lower() in _LEAVING:
            return
        if not wish:
            continue
        if again := last.opened(wish):
            reply, part = again
            write((render_part(reply, part) if part else render_text(reply)) + "\n")
            continue
        answered = last.handed_over(wish, out) or last.answered(wish, preferences, answer)
        if isinstance(answered, str):
            write(f"{answered}\n\n")
            continue
        write(render_brief(answered, more=around(answered, MORE), sheet=True) + "\n")
        if kept := out and keep_picture(answered, out):
            write(f"{around(answered, kept_told(kept))}\n\n")


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
    print(_greeting(preferences))

    def typed() -> Iterable[str]:
        while True:
            try:
                yield session.prompt("noonstone> ")
            except KeyboardInterrupt:
                continue
            except EOFError:
                return

    last = _Last()
    for line in typed():
        wish = line.strip()
        if wish.lower() in _LEAVING:
            return
        if not wish:
            continue
        if again := last.opened(wish):
            reply, part = again
            show(reply, part, full=part is None)
            continue
        answered = last.handed_over(wish, out) or last.answered(wish, preferences, answer)
        if isinstance(answered, str):
            print(answered)
            continue
        show(answered)
        if kept := out and keep_picture(answered, out):
            print(around(answered, kept_told(kept)))
