"""A line of text, or a question that comes apart, becomes a question that was read and checked.

Everything an asker can get wrong becomes a Reply of status ``problem`` here and at the door, and
nowhere else. Every text is listened to here for what cannot wait, before anything is made of it.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from pydantic import ValidationError

from bot.answering import in_words
from bot.around import own_rows, understood_row, units_told
from bot.command import Command
from bot.command_asked import command_of, no_such_command
from bot.commands import COMMANDS, command_named
from bot.dangers import listen
from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.normal import encodable
from bot.language.shown import shown
from bot.language.wanted import UpTo
from bot.layered import Layered
from bot.preferences import Context, Preferences
from bot.queries.query import Query
from bot.queries.question import Question
from bot.queries.typed import typed, typed_all
from bot.queries.units import taken_units
from bot.question_context import context_of, read_options
from bot.refusal import AnimalNotNamedError, RefusedError
from bot.reply import Alarm, Assumed, Heard, Reply, Row
from bot.said_first import heard_in, of_its_lamp, said_first
from bot.saying.voice import voice
from calc.validity import OutsideModelError

if TYPE_CHECKING:
    from bot.free_words import FreeWords
    from bot.language.uv_lamps import UvLamp

__all__ = ["Understood", "take_apart", "understand"]

_MOST_CHARACTERS = 2000
# The options that hold free words.
_FREE_WORDS = ("question", "setup")


@dataclass(frozen=True, slots=True)
class Understood:
    """A question that was read and checked, before it is answered."""

    command: Command
    query: Query
    context: Context
    values: Mapping[str, object]
    preferences: Preferences
    free: "FreeWords | None" = None
    heard: tuple[Alarm, ...] = ()
    told: tuple[Heard, ...] = ()

    @property
    def given(self) -> dict[str, str]:
        """The options as they were typed, or as somebody would type what was heard."""
        return typed_all(self.values)

    def told_first(self, reply: Reply) -> Reply:
        """Return the reply behind what was heard, and what the figures told or it found itself."""
        from bot.limits_told import told_alarms

        told = told_alarms(self.command, self.values, self.preferences)
        alarms = of_its_lamp((*told, *reply.alarms), self.given, self._kept_kinds())
        asked = self._asked_in_words(reply)
        found = reply.model_copy(update={"alarms": alarms, "heard": self.told} | asked)
        return said_first(found, self.heard, self.preferences)

    def _kept_kinds(self) -> "tuple[UvLamp, ...]":
        """Return the kinds of the group's own lamps that were named."""
        if not self.preferences.own.lamps:
            return ()
        from bot.questions.setup.own_told import kept_kinds

        return kept_kinds(self.given, self.preferences.own)

    def _asked_in_words(self, reply: Reply) -> dict[str, Question | None]:
        """Return the free words as what is asked again, where a hazard was heard in them.

        A button asks again what stands there: the options alone would tell nothing of the hazard.
        """
        if self.free is None or not self.heard:
            return {}
        words = self.free.command.asking(self.free.given)
        return {"meant": words, "perhaps": reply.perhaps or reply.meant}

    def finished(self, reply: Reply) -> Reply:
        """Return the reply with what was taken for granted and the question as understood."""
        taken, named = taken_units(self.query)
        say = voice(reply.language, self.context.units).text
        assumed = tuple(
            Assumed(name=name, how="inferred", text=say(told)) for name, told in units_told(taken)
        )
        own = own_rows(self.command, self.query, self.given, self.context)
        rows = (*reply.rows, *(Row(label=say(row.label), text=say(row.say)) for row in own))
        label = say(Say("door-label-taken"))
        rows += tuple(Row(label=label, text=each.text) for each in assumed)
        if self.free:
            row = understood_row(self.command, self.given)
            rows = (Row(label=say(row.label), text=say(row.say)), *rows)
        return reply.model_copy(
            update={
                "meant": self.command.asking({**self.values, **named}),
                "units": self.context.units.value,
                "rows": rows,
                "assumed": (*reply.assumed, *assumed),
                "opened": reply.opened or self.command.shown_open(self.given),
            }
        )

    def in_words(self, layered: Layered) -> Reply:
        """Return an answer in the asker's language."""
        return in_words(layered, self.context)

    def told_no(self, error: RefusedError) -> Reply:
        """Return the answer that says no; its example is a question that works."""
        reply = self.in_words(error.told(error.example))
        return reply.model_copy(update={"meant": self.command.asking(self.values)})

    def refused(self, sentence: Say) -> Reply:
        """Return the reply that says why there is no answer."""
        from bot.problems import problem

        asked = self.command.asking(self.values)
        return problem(self.command.name, sentence, self.preferences, asked)

    def without_animal(self, error: AnimalNotNamedError) -> Reply:
        """Return the reply that asks which animal it is for."""
        if self.free is None:
            from bot.unread import unnamed_example, unnamed_told
            from bot.way_on import leading_on

            example = unnamed_example(self.command, self.given)
            tried = leading_on(example, self.command, self.given, self.preferences)
            reply = self.refused(unnamed_told(error, self.command, self.given, tried))
            return reply.model_copy(update={"lacking": (error.option,)})
        reply = self.free.lacking(("animal",), self.context)
        return reply.model_copy(update={"meant": self.command.asking(self.values)})

    def outside(self, error: OutsideModelError) -> Reply:
        """Return the reply for what the model does not reach."""
        from bot.outside import outside_told

        shown_first, example = self.preferences.shown, self.command.examples[0]
        return self.refused(outside_told(error, shown_first, example))


def understand(
    asked: str | Question, preferences: Preferences, files: Callable[[str], str] | None = None
) -> Understood | Reply:
    """Read a line, or a question that comes apart; the reply says what was not understood.

    ``files`` gives the text of a file that a line names.
    """
    if isinstance(asked, Question):
        return _read(asked.encodable(), preferences)
    asked = encodable(asked)
    apart = take_apart(asked, preferences)
    if isinstance(apart, Reply):
        return apart
    try:
        question = apart if files is None else _with_files(apart, files)
    except NotUnderstoodError as error:
        return said_first(_misread(apart.command, error, preferences), listen(asked), preferences)
    return _read(question, preferences)


def _misread(name: str, error: NotUnderstoodError, preferences: Preferences) -> Reply:
    from bot.problems import problem
    from bot.unread import misread

    return problem(name, misread(error), preferences)


def _with_files(question: Question, files: Callable[[str], str]) -> Question:
    command = command_named(question.command)
    documents = [o.name for o in command.query.options() if o.document] if command else []
    texts = {name: files(question.given[name]) for name in documents if name in question.values}
    return replace(question, values={**question.values, **texts})


def take_apart(line: str, preferences: Preferences) -> Question | Reply:
    """Return the question of a line; the reply says what was not understood."""
    command: Command | None = None
    try:
        if len(line) > _MOST_CHARACTERS:
            raise NotUnderstoodError(
                shown(line),
                Say("wanted-short-line", UpTo(_MOST_CHARACTERS)),
                COMMANDS[0].examples[0],
            )
        command, rest = command_of(line, preferences.own.names)
        given = command.query.texts_in(rest, command.positional)
    except NotUnderstoodError as error:
        known = preferences.speaking(line)
        reply = _misread(command.name if command else "help", error, known)
        return said_first(reply, listen(line), known)
    return Question(command.name, given)


def _read(question: Question, preferences: Preferences) -> Understood | Reply:
    """Read the options of a question; the reply says what was not understood."""
    given = question.given
    command = command_named(question.command)
    heard = heard_in(command, given)
    if command is not None and command.route is not None:
        preferences = preferences.speaking(" ".join(given.values()))
    understood = _understood(question, preferences)
    told = _heard_told(given, preferences)
    if isinstance(understood, Reply):
        return said_first(understood.model_copy(update={"heard": told}), heard, preferences)
    return replace(understood, heard=heard, told=told)


def _heard_told(given: Mapping[str, str], preferences: Preferences) -> tuple[Heard, ...]:
    """Return what was heard in the free words of a question; nothing where it has none."""
    words = next((given[name] for name in _FREE_WORDS if given.get(name, "").strip()), "")
    if not words:
        return ()
    from bot.heard_told import heard_told

    return heard_told(words, preferences.own.names)


def _understood(question: Question, preferences: Preferences) -> Understood | Reply:
    command = command_named(question.command)
    if command is None:
        return _misread("help", no_such_command(question.command), preferences)
    # An option left blank is one that was not filled in.
    filled_in = {o: value for o, value in question.values.items() if typed(value).strip()}
    values: Mapping[str, object] = filled_in
    try:
        query, values = read_options(command.query, filled_in, preferences)
    except ValidationError as error:
        wrong = _wrong(error, command, typed_all(values), preferences)
        return _unread(command, wrong, values, preferences)
    given = typed_all(values)
    if command.query.lacking(given, preferences.own):
        return _unread(command, None, values, preferences)
    if command.route is not None:
        return _routed(command, query, given, preferences)
    return Understood(command, query, context_of(query, values, preferences), values, preferences)


def _wrong(
    error: ValidationError, command: Command, given: Mapping[str, str], preferences: Preferences
) -> Say | None:
    """Return one sentence for the first thing that is wrong; None where something is missing."""
    from bot.unread import first_error, misread, unknown_option
    from bot.way_on import with_way_on

    first = first_error(error)
    if first is not None:
        return misread(with_way_on(first, command, given, preferences))
    return unknown_option(error, command)


def _missing(command: Command, given: Mapping[str, str], preferences: Preferences) -> Say:
    from bot.unread import missing_example, missing_told
    from bot.way_on import leading_on

    example = missing_example(command, given, preferences)
    tried = leading_on(example, command, given, preferences)
    return missing_told(command, given, preferences.own, tried)


def _unread(
    command: Command, wrong: Say | None, values: Mapping[str, object], preferences: Preferences
) -> Reply:
    """Return what is wrong, else what is missing, with what cannot wait among what was read."""
    from bot.limits_told import told_alarms
    from bot.problems import problem
    from bot.unread import lacks_told

    given = typed_all(values)
    lacking = () if wrong else command.query.lacking(given, preferences.own)
    sentence = wrong or _missing(command, given, preferences)
    also = lacks_told(command, lacking)
    reply = problem(command.name, sentence, preferences, command.asking(values), also)
    alarms = told_alarms(command, values, preferences)
    return reply.model_copy(update={"alarms": alarms, "lacking": lacking})


def _routed(
    command: Command, query: Query, given: Mapping[str, str], preferences: Preferences
) -> Understood | Reply:
    """Read the question that free words meant; the reply says that none was found."""
    assert command.route is not None
    context = context_of(query, given, preferences)
    try:
        meant = command.route(query, context)
    except NotUnderstoodError:
        from bot.problems import problem
        from bot.unread import not_heard

        told = not_heard(COMMANDS[0])
        return problem(command.name, told, preferences, command.asking(given))
    if isinstance(meant, Layered):
        return in_words(meant, context).model_copy(update={"meant": command.asking(given)})
    from bot.free_words import FreeWords

    wanted = command_named(meant.command)
    assert wanted is not None
    meant = meant.in_states(wanted.query, context)
    free = FreeWords(command, query, meant, given)
    understood = _understood(meant, meant.heeding(preferences, context))
    if isinstance(understood, Understood):
        return replace(understood, free=free)
    missing = free.missing(preferences)
    if not missing:
        return understood
    kept = {"meant": understood.meant, "alarms": understood.alarms}
    return free.lacking(missing, context).model_copy(update=kept)
