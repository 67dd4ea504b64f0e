"""One question for several animals that were named in one breath: an answer for each of them."""

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import pairwise

from bot.brief import MOST_LINES, brief_of, fitted, in_order, phone_lines
from bot.facts import Name, Say
from bot.queries.question import Question
from bot.questions.animals import name_said
from bot.reply import Line, Reply, Role, Row
from bot.saying.voice import Voice, voice
from bot.understood import Understood

__all__ = ["for_each_animal"]

_ANIMAL = "animal"
_MOST = 3
# Between two animals that one question is asked for.
_TOGETHER = re.compile(
    r"'?s?[\s,]*(?:(?:and|or|&|\+|vs|plus|as well as|und|oder|sowie)[\s,]+)?"
    r"(?:(?:a|an|my|the|our|also|for|one|eine?n?|meine?n?|für|der|die|den)\s+)*",
    re.I,
)
_GIVES_WAY = ((Role.CAUTION, 0),)


@dataclass(frozen=True, slots=True)
class ForOne:
    """An animal, and the first sentence of its answer."""

    animal: Name
    told: str


@dataclass(frozen=True, slots=True)
class NotFor:
    """For which animal an answer is, where the question named others too."""

    animal: Name


def for_each_animal(
    understood: Understood, reply: Reply, alone: Callable[[Question], Reply]
) -> Reply:
    """Return the answer to a question in free words for each animal that it was asked for.

    ``alone`` answers it for one. Where one of them is in danger, or has no answer, that one's
    answer is told alone, and for which animal it is.
    """
    names = _named_together(understood)
    alike = reply.status == "ok" and _ANIMAL in understood.values and not understood.heard
    if len(names) < 2 or not alike:
        return reply
    values, command = understood.values, understood.command.name
    others = {name: alone(Question(command, {**values, _ANIMAL: name})) for name in names[1:]}
    replies = {names[0]: reply, **others}
    worst = next((n for n, each in replies.items() if each.dangers or each.status != "ok"), "")
    own, speak = understood.preferences.own.names, voice(reply.language, understood.context.units)
    if worst:
        only = speak.text(Say("ask-only-for", NotFor(name_said(worst, own))))
        # What cannot wait stays whole; for whom it is stands in place of what else was supposed.
        kept = [line for line in brief_of(replies[worst]) if line.role is not Role.ASSUMED]
        told = in_order((*kept, Line(role=Role.ASSUMED, text=only)))
        return replies[worst].model_copy(update={"brief": told})
    for most in (2, 1):
        lines = [
            Line(role=Role.HEAD, text=_head(name_said(name, own), each, speak, most))
            for name, each in replies.items()
        ]
        if phone_lines(lines) <= MOST_LINES:
            break
    mind = [line for line in brief_of(reply) if line.role is Role.CAUTION]
    update = {
        "brief": fitted((*lines, *mind), _GIVES_WAY),
        "answer": " ".join(line.text for line in lines),
        "rows": tuple(_rows(list(replies.values()))),
        "steps": (),
        "values": (),
        "table": None,
        "picture": None,
        "sheet": None,
        "set_up": None,
        "offers": tuple(each.meant for each in replies.values() if each.meant),
    }
    return reply.model_copy(update=update)


def _named_together(understood: Understood) -> list[str]:
    """Return the animals that free words name side by side, in their order."""
    if understood.free is None:
        return []
    words = next((text for text in understood.free.given.values() if text), "")
    found: list[tuple[int, int, str]] = []
    at = 0
    for heard in understood.told:
        if heard.name != _ANIMAL or heard.sort != "is" or not isinstance(heard.value, str):
            continue
        start = words.find(heard.text, at)
        if start < 0:
            return []
        at = start + len(heard.text)
        found.append((start, at, heard.value))
    joined = all(_TOGETHER.fullmatch(words, one[1], other[0]) for one, other in pairwise(found))
    names = list(dict.fromkeys(name for _, _, name in found))
    # "First for the gecko": then it is asked for that one alone.
    again = words[at:].lower()
    apart = any(re.search(rf"\b{re.escape(n.lower().split()[-1])}", again) for n in names)
    return names[:_MOST] if joined and not apart else []


def _head(name: Name, reply: Reply, speak: Voice, most: int) -> str:
    """Return the first lines of an answer, ``most`` of them, with its animal if they name none."""
    lines = brief_of(reply)
    told = [line.text for role in (Role.HEAD, Role.RANGE) for line in lines if line.role is role]
    first = told[0] if told else reply.answer
    if speak.name(name, "").lower() in first.lower():
        # What else it needs was not asked.
        most = 1 if reply.meant is not None and "about" in reply.meant.values else most
        return " ".join(told[:most]) or first
    return speak.text(Say("ask-for-one", ForOne(name, first)))


def _rows(replies: Sequence[Reply]) -> list[Row]:
    """Return each row once, with what every animal's answer says under its label."""
    labels = dict.fromkeys(row.label for reply in replies for row in reply.rows)
    # The first of a reply's rows under a label is the one that counts.
    under = [{row.label: row.text for row in reversed(reply.rows)} for reply in replies]
    told = []
    for label in labels:
        texts = [rows.get(label, "") for rows in under]
        same = len(set(texts)) == 1
        told.append(
            Row(label=label, text=texts[0] if same else " | ".join(t or "–" for t in texts))
        )
    return told
