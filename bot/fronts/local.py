"""The desk at a console: one keeper and one group, kept on this computer."""

from collections import Counter
from collections.abc import Mapping
from datetime import UTC, datetime
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING

from bot.ask import answered, ask
from bot.command import Command
from bot.commands import command_at, command_named
from bot.dangers import listen
from bot.database import FILE_NAME
from bot.database.errors import StoreError
from bot.desk import LOCAL, Desk
from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.reply import Reply
from bot.said_first import said_first
from bot.understood import understand

if TYPE_CHECKING:
    import asyncio

    from bot.saved.counts import Asked

__all__ = ["LocalDesk"]


class LocalDesk:
    """Answers lines as the keeper and the moderator of this computer.

    The store is opened when a question first needs it. Where there is one already, its settings and
    own figures count for every question; as long as a glance at its file says them all, it stays
    closed.
    """

    def __init__(self, database_url: str, folder: Path) -> None:
        self._url = database_url
        self._folder, self._file = folder, folder / FILE_NAME
        self._desk: Desk | None = None
        self._answered: list[Question | None] = []
        self._counts: Counter[tuple[Asked, str]] = Counter()

    def ask(self, asked: str | Question, preferences: Preferences) -> Reply:
        """Answer one line, or a question that comes apart."""
        if isinstance(asked, Question):
            command = command_named(asked.command)
        else:
            command = found[0] if (found := command_at(asked)) else None
        stored = command is not None and command.stored is not None
        reply = None if stored else self._at_a_glance(asked, preferences)
        if reply is None:
            reply = self._with_store(asked, preferences, command if stored else None)
        if reply.status == "ok":
            self._answered.append(reply.meant)
        return reply

    def _with_store(
        self, asked: str | Question, preferences: Preferences, command: Command | None
    ) -> Reply:
        """Answer with what is kept; ``command`` is the question where it cannot do without."""
        try:
            desk = self._opened() if command or self._exists() else None
        except StoreError as error:
            if command is not None:
                from bot.problems import problem, store_told

                reply = problem(command.name, store_told(error), preferences)
                line = asked if isinstance(asked, str) else asked.line()
                return said_first(reply, listen(line), preferences)
            desk = None
        if desk is None:
            return ask(asked, preferences)
        self._runner.run(self._keep_counts(desk))
        return self._runner.run(ask(asked, preferences, desk, _read))

    def _at_a_glance(self, asked: str | Question, preferences: Preferences) -> Reply | None:
        """Answer by what the file says at a glance; None where the store has to be opened."""
        if self._desk or self._url or not self._file.exists():
            return None
        from bot.asker import asked_by
        from bot.database.glance import glance

        seen = glance(self._file, LOCAL, LOCAL)
        if seen is None:
            return None
        known = asked_by(preferences, datetime.now(UTC), seen.keeper, seen.group)
        understood = understand(asked, known, _read)
        if not isinstance(understood, Reply) and understood.command.stored is not None:
            return None
        return answered(understood)

    def offers(self) -> Mapping[str, tuple[str, ...]]:
        """Return what can complete an option, as far as something is kept."""
        from bot.asker import offered

        try:
            return self._runner.run(offered(self._opened())) if self._exists() else {}
        except StoreError:
            return {}

    def close(self) -> None:
        """Keep what was counted and close the store; for counts alone none is opened."""
        if self._desk is not None:
            self._runner.run(self._keep_counts(self._desk))
            self._runner.run(self._desk.store.close())
        elif not self._url and self._file.exists():
            from bot.database.glance import count

            # A count never costs an answer.
            count(self._file, LOCAL, datetime.now(UTC).date(), self._counted())
        if "_runner" in self.__dict__:
            self._runner.close()

    @cached_property
    def _runner(self) -> "asyncio.Runner":
        import asyncio

        return asyncio.Runner()

    def _count(self, question: Question | None) -> None:
        """Count an answered question as on a server."""
        from bot.questions.saved.counting import asked_for

        command = command_named(question.command) if question else None
        if question is not None and command is not None:
            given = {} if command.stored else question.given
            self._counts.update(asked_for(command.name, given))

    def _counted(self) -> "Counter[tuple[Asked, str]]":
        """Take out what was counted and not kept so far."""
        for question in self._answered:
            self._count(question)
        self._answered.clear()
        counted, self._counts = self._counts, Counter()
        return counted

    async def _keep_counts(self, desk: Desk) -> None:
        counted = self._counted()
        try:
            await desk.store.counts.add(LOCAL, desk.now.date(), counted)
        except StoreError:
            # A count never costs an answer.
            self._counts.update(counted)

    def _exists(self) -> bool:
        return bool(self._desk or self._url or self._file.exists())

    def _opened(self) -> Desk:
        from bot.database.store import open_store

        now = datetime.now(UTC)
        if self._desk is None:
            store = self._runner.run(open_store(self._url, self._folder))
        else:
            store = self._desk.store
        self._desk = Desk(store, LOCAL, LOCAL, None, moderator=True, now=now)
        return self._desk


def _read(name: str) -> str:
    """Return the text of a file of this computer, or what was typed where it is JSON itself."""
    if name.lstrip().startswith("{"):
        return name
    from bot.questions.saved.files import MOST_IMPORT

    try:
        path = Path(name).expanduser()
        if path.stat().st_size > MOST_IMPORT:
            raise NotUnderstoodError(name, Say("wanted-small-file"), "file:mine.json")
        return path.read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError) as error:
        raise NotUnderstoodError(name, Say("wanted-file-here"), "file:mine.json", "file") from error
