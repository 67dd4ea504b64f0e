"""An answer for the animal that is spoken of, and of one whose name several share."""

from dataclasses import replace

from bot.commands import command_named
from bot.dialogue.another import carried, names_of
from bot.dialogue.asking import Answer
from bot.dialogue.kept import Dialogue
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.queries.typed import typed
from bot.question_context import context_of
from bot.reply import Reply
from bot.routes.routing import asked_in
from calc.naming import Known, Several, named

__all__ = ["of_the_animal", "with_kin"]


def of_the_animal(
    meant: Question | str, dialogue: Dialogue, preferences: Preferences, answer: Answer
) -> Reply:
    """Return the answer to a question, or to a line for the animal that is spoken of."""
    animal = typed(dialogue.known.get("animal", ""))
    if not isinstance(meant, str) or not isinstance(named(animal).what, Known):
        return answer(meant, preferences)
    found = answer(meant, replace(preferences, default_animal=animal))
    line = found.meant
    command = command_named(line.command) if line else None
    if line is None or command is None or command.route or "animal" in line.values:
        return found
    if found.alarms or "animal" not in names_of(command):
        return found
    values = {**carried(command.name, dialogue.known), **line.values}
    return answer(Question(command.name, values), preferences)


def with_kin(reply: Reply, line: str, preferences: Preferences) -> Reply:
    """Return the answer to a question for an animal whose name several share, with that name."""
    context = context_of(AskQuery(question=line), {"question": line}, preferences)
    kin = asked_in(AskQuery(question=line), context).unclear_animal
    several = kin is not None and isinstance(named(kin.words).what, Several)
    if kin is not None and (perhaps := reply.perhaps) and "animal" in perhaps.values:
        # What an example was made for is not what is kept.
        rest = {n: v for n, v in perhaps.values.items() if n != "animal"}
        own = Question(perhaps.command, rest | ({"animal": kin.words} if several else {}))
        reply = reply.model_copy(update={"perhaps": own})
    meant = reply.meant
    if meant is None or "animal" not in reply.lacking or "animal" in meant.values:
        return reply
    if kin is None or not several:
        return reply
    named_so = Question(meant.command, {**meant.values, "animal": kin.words})
    return reply.model_copy(update={"meant": named_so, "offers": ()})
