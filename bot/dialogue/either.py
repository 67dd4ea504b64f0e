"""Two lamps that a line sets against each other: the first one is then one of them."""

import re

from bot.preferences import Preferences
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.question_context import context_of
from bot.routes.routing import asked_in

__all__ = ["lamps_named"]

_OR = re.compile(r"\b(?:or|vs|versus|oder)\b")
_T5 = re.compile(r"\bt5\b")
_TUBE = "T5 HO tube"


def lamps_named(line: str, preferences: Preferences) -> tuple[Question, ...]:
    """Return the question about each of two lamps that a line names as a choice; else nothing.

    >>> [each.line() for each in lamps_named("heat mat or ceramic for nights?", Preferences())]
    ['lamp kind:heat mat', 'lamp kind:ceramic heat emitter']
    """
    plain = line.lower()
    if not _OR.search(plain):
        return ()
    context = context_of(AskQuery(question=line), {"question": line}, preferences)
    named = list(dict.fromkeys(asked_in(AskQuery(question=line), context).lamps))
    if len(named) == 1 and (tube := _T5.search(plain)):
        first = tube.start() < plain.find(re.split(r"[ -]", named[0])[0])
        named.insert(0 if first else 1, _TUBE)
    if len(named) != 2:
        return ()
    return tuple(Question("lamp", {"kind": name}) for name in named)
