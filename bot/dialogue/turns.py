"""The next line of a conversation as a whole question: one pure value, one step.

A dialogue keeps the last question as it was understood, and what was offered beside its answer;
nothing that was typed. What tells a danger, and what is a whole question, is asked as it is.
"""

import re
from collections.abc import Callable, Mapping
from dataclasses import replace
from enum import Enum, auto
from types import MappingProxyType

from bot.command import Command
from bot.commands import command_at, command_named
from bot.dangers import listen
from bot.dialogue.asking import asked_next, question_kept
from bot.dialogue.fragments import by_facts, change_wished, changed_by, told_of_set_up
from bot.dialogue.kept import STAYS, Dialogue, after
from bot.dialogue.phrases import (
    asks,
    asks_again,
    asks_why,
    begun_anew,
    choice_of,
    is_thanks,
    topic_of,
    unit_wished,
)
from bot.language.errors import NotUnderstoodError
from bot.language.unsure import NOT_SURE, Unsure
from bot.layered import Layered
from bot.preferences import Context, Preferences
from bot.queries.options import AnimalName, Tube
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.queries.typed import typed
from bot.question_context import context_of
from bot.reply import PartName, Reply
from bot.routes.routing import route

__all__ = ["Next", "next_line", "told_as_meant", "turn"]

# These are answered for every fixture and screen that it may be.
_BY_CASES = ("distance", "uvi")
_OF_UV = ("distance", "uvi", "tube", "section", "dose")
# What comes next after a check is asked of the same set-up.
_CHECK, _AFTER_CHECK, _NEEDS = "check", "next", "needs"
_ABOUT_ONE = re.compile(r"^(?:the|an?|its|it's|der|die|das) | (?:one|ones)$")
_OPTION = re.compile(r"(?<!\S)[a-z_]+[:=]\S")
# Told before any question, it is the place that one is then asked of.
_PLACE = "distance"


class Next(Enum):
    """What a line is after the answer before it."""

    QUESTION = auto()
    THANKS = auto()
    WHY = auto()


def next_line(
    dialogue: Dialogue, line: str, preferences: Preferences
) -> tuple[Next, Question | str, Dialogue]:
    """Return what a line is, the whole question that it means, and the dialogue for it.

    What is asked as it was typed stays a line.

    A figure, a name or a word for a part of the set-up changes the question before; another
    question takes the animal, the lamps and the box along; ``2`` takes what was offered.
    """
    if any(not alarm.asked for alarm in listen(line)):
        return Next.QUESTION, line, dialogue
    if is_thanks(line):
        return Next.THANKS, line, dialogue
    if anew := begun_anew(line):
        return next_line(Dialogue(units=dialogue.units), anew, preferences)
    if dialogue.asked and asks_why(line):
        return Next.WHY, dialogue.asked, dialogue
    if dialogue.asked and asks_again(line) and dialogue.asked.command != _NEEDS:
        return Next.QUESTION, dialogue.asked, dialogue
    chosen = choice_of(line, len(dialogue.offers))
    if chosen is None:
        chosen = _named_offer(line, dialogue.offers)
    if chosen is not None:
        return Next.QUESTION, dialogue.offers[chosen], dialogue
    if dialogue.asked and (units := unit_wished(line)):
        return Next.QUESTION, dialogue.asked, replace(dialogue, units=units)
    if _is_typed(line):
        return Next.QUESTION, line, dialogue
    wishes = dialogue.preferring(preferences)
    context = context_of(AskQuery(question=line), {"question": line}, wishes)
    heard = {name: value for name, value in told_of_set_up(line, context).items() if name in STAYS}
    known = {**dialogue.known, **heard}
    if not (dialogue.asked or dialogue.known):
        place = by_facts(line, context)
        if place is not None and place.command == "uvi":
            known = {**known, _PLACE: place.values[_PLACE]}
        return Next.QUESTION, line, replace(dialogue, known=known)
    return Next.QUESTION, _meant(dialogue, line, context, wishes), replace(dialogue, known=known)


def turn(
    dialogue: Dialogue,
    line: str,
    preferences: Preferences,
    answer: Callable[[Question | str, Preferences], Reply],
) -> tuple[Reply | None, Dialogue]:
    """Return the answer to a line as it is meant here, and the dialogue after it.

    None is the answer to who only says thanks; ``answer`` answers a question or a line.
    """
    what, meant, dialogue = next_line(dialogue, line, preferences)
    if what is Next.THANKS:
        return None, dialogue
    wishes = dialogue.preferring(preferences).speaking(line)
    reply = told_as_meant(what, answer(meant, wishes), wishes)
    return reply, after(dialogue, reply)


def told_as_meant(what: Next, reply: Reply, preferences: Preferences) -> Reply:
    """Return an answer as a conversation tells it.

    Its reasons are open where they were asked for; of what it lacks, one thing is asked.
    """
    has_why = any(part.name is PartName.WHY for part in reply.parts)
    if what is Next.WHY and has_why:
        return reply.model_copy(update={"opened": (*reply.opened, PartName.WHY)})
    return asked_next(reply, preferences)


def _named_offer(line: str, offers: tuple[str, ...]) -> int | None:
    """Return which offer a line takes by its animal, as 'leopard' the leopard gecko's."""
    words = _ABOUT_ONE.sub("", line.lower().strip(" .!?"))
    kept = [question_kept(offer) for offer in offers]
    named = [found.given.get("animal", "").lower() if found else "" for found in kept]
    fits = [
        at for at, name in enumerate(named) if words and re.search(rf"\b{re.escape(words)}\b", name)
    ]
    return fits[0] if len(fits) == 1 and len(set(named)) == len(named) else None


def _is_typed(line: str) -> bool:
    """Whether a line is a question by its name, not one in free words that begins with a name."""
    found = command_at(line)
    if found is None:
        return False
    command, rest = found
    return not rest or bool(command.positional) or _OPTION.search(rest) is not None


def _meant(
    dialogue: Dialogue, line: str, context: Context, preferences: Preferences
) -> Question | str:
    before = dialogue.asked
    command = command_named(before.command) if before else None
    name, values = (before.command, before.values) if before else ("", {})
    changed = None if command is None else changed_by(command, values, line, context, preferences)
    another = _another(name, line, context)
    if changed is not None and (another is None or not asks(line)):
        return changed
    if command is not None and (step := change_wished(command, values, line)):
        return Question("basking", step)
    if name == _CHECK and another and another.command == _AFTER_CHECK:
        return Question(_AFTER_CHECK, {**values, **another.values})
    if another is not None:
        told = {n: v for n, v in another.values.items() if typed(v) != NOT_SURE}
        return _asking(another, _carried(another.command, dialogue.known), told)
    if (topic := topic_of(line)) and "animal" in dialogue.known:
        other, of = topic
        about = {"about": of} if of else {}
        return Question(other, _carried(other, dialogue.known) | about)
    is_asked = asks(line) or line.rstrip().endswith("?")
    if is_asked and (another := _another("", line, context, dialogue.known)):
        return _asking(another, _carried(another.command, dialogue.known))
    if found := by_facts(line, context, about_uv=name in _OF_UV):
        if found.command == "distance" and not dialogue.asked and _PLACE in dialogue.known:
            found = Question("uvi", {_PLACE: dialogue.known[_PLACE], **found.values})
        unsure = dict.fromkeys(("reflector", "screen"), Unsure(NOT_SURE))
        by_cases = unsure if found.command in _BY_CASES else {}
        carried = _carried(found.command, dialogue.known)
        return Question(found.command, by_cases | carried | dict(found.values))
    return line if line.startswith("ask ") else f"ask {line}"


def _asking(asked: Question, *told: Mapping[str, object]) -> Question:
    """Return a question with what is told beside it; what is empty is left out."""
    values = dict(asked.values)
    for each in told:
        values |= each
    return Question(asked.command, {name: value for name, value in values.items() if value})


class _GoingOn(AskQuery):
    """A question in free words, of the animal and the tube that were told before it."""

    animal: AnimalName = ""
    tube: Tube | None = None


def _another(
    name: str, line: str, context: Context, known: Mapping[str, object] = MappingProxyType({})
) -> Question | None:
    """Return the other question that a line asks by itself, or of what is known."""
    told = {option: known[option] for option in ("animal", "tube") if option in known}
    try:
        routed = route(_GoingOn.model_validate({"question": line, **told}), context)
    except NotUnderstoodError:
        return None
    if isinstance(routed, Layered):
        found = _only_offer(routed)
    else:
        found = None if routed.animal_unclear else Question(routed.command, routed.values)
    if found is None or found.command in (name, "check", "guide"):
        return None
    other = command_named(found.command)
    return found if other is not None and "animal" in _names(other) else None


def _only_offer(told: Layered) -> Question | None:
    """Return the one question that may be meant: with what is known it can be asked."""
    return told.perhaps if len(told.offers) == 1 else None


def _carried(name: str, known: Mapping[str, object]) -> dict[str, object]:
    """Return what another question takes along of the set-up that was told."""
    command = command_named(name)
    assert command is not None
    here = _names(command) & STAYS
    return {
        option: value
        for option, value in known.items()
        # A tube's question knows the box by its length alone.
        if option in here
        and not (option == "enclosure" and name not in _OF_UV and "x" not in typed(value))
    }


def _names(command: Command) -> set[str]:
    return set(command.query.examples())
