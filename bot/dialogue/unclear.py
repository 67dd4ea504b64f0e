"""What is said to a line of a conversation that means nothing: what it is about, and ways on."""

from collections.abc import Mapping
from dataclasses import dataclass

from bot.dialogue.phrases import asks
from bot.facts import Name, Say
from bot.language.errors import NotUnderstoodError
from bot.layered import Brief, Layered
from bot.preferences import Context
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.queries.typed import typed
from bot.questions.animals import name_said
from bot.routes.routing import route
from calc.naming import Known, named

__all__ = ["unclear"]

_WAYS = (
    ("night", "needs", "night"),
    ("hours", "hours", ""),
    ("basking", "needs", "basking"),
)
_MOST_WAYS = 2


@dataclass(frozen=True, slots=True)
class SpokenOf:
    """The animal that is spoken of."""

    animal: Name


def unclear(
    before: str, known: Mapping[str, object], line: str, context: Context
) -> Layered | None:
    """Return what is said to a line that means nothing; None where it means something."""
    try:
        route(AskQuery(question=line), context, by_rule=not asks(line))
    except NotUnderstoodError:
        pass
    else:
        return None
    animal = typed(known.get("animal", ""))
    title = Say("ask-title-which")
    if not isinstance(named(animal, context.own.names).what, Known):
        return Layered("ask", title, Brief(Say("talk-unclear")), status="problem")
    ways = [way for way in _WAYS if way[0] != before][:_MOST_WAYS]
    offers = tuple(
        Question(command, {"animal": animal, **({"about": about} if about else {})})
        for _, command, about in ways
    )
    steps = tuple(Say.of("talk-way", name) for name, _, _ in ways)
    head = Say("talk-unclear-animal", SpokenOf(name_said(animal, context.own.names)))
    return Layered(
        "ask", title, Brief(head, steps=steps), status="problem", steps=steps, offers=offers
    )
