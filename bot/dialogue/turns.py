"""The next line of a conversation as a whole question: one pure value, one step.

A dialogue keeps the last question as it was understood, and what was offered beside its answer;
nothing that was typed. What tells a danger, and what is a whole question, is asked as it is.
"""

import json
import re
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from enum import Enum, auto
from typing import Self

from bot.command import Command, Routed
from bot.commands import command_at, command_named
from bot.dangers import listen
from bot.dialogue.asking import asked_next, taken_apart
from bot.dialogue.fragments import by_facts, change_wished, changed_by, told_of_set_up
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
from bot.language.units import Units
from bot.language.unsure import NOT_SURE
from bot.language.words import join_line
from bot.layered import Layered
from bot.preferences import Context, Preferences
from bot.queries.setup import AskQuery
from bot.question_context import context_of
from bot.reply import PartName, Reply
from bot.routes.routing import route

__all__ = ["START", "Dialogue", "Next", "after", "next_line", "told_as_meant", "told_before"]

# These are answered for every fixture and screen that it may be.
_BY_CASES = ("distance", "uvi")
_OF_UV = ("distance", "uvi", "tube", "section", "dose")
# What comes next after a check is asked of the same set-up.
_CHECK, _AFTER_CHECK = "check", "next"
_ABOUT_ONE = re.compile(r"^(?:the|an?|its|it's|der|die|das) | (?:one|ones)$")
_OPTION = re.compile(r"(?<!\S)[a-z_]+[:=]\S")
# Told before any question, it is the place that one is then asked of.
_PLACE = "distance"
# What is so of the keeper's set-up, whatever is asked next.
_STAYS = frozenset(
    (
        *("animal", "tube", "reflector", "screen", "length", "age", "tubes", "gap", "lamp"),
        *("enclosure", "material", "lid", "room"),
    )
)


@dataclass(frozen=True, slots=True)
class Dialogue:
    """The question before: its command and options as typed, and the lines that were offered.

    ``known`` are the parts of the set-up that were told on the way, by the option they fill.
    """

    asked: str = ""
    offers: tuple[str, ...] = ()
    known: Mapping[str, str] = field(default_factory=dict)
    units: Units | None = None

    def packed(self) -> str:
        """Return the dialogue as one word of text that ``unpacked`` reads again."""
        told = {"asked": self.asked, "offers": self.offers, "known": self.known}
        units = {"units": self.units.value} if self.units else {}
        return json.dumps(told | units, ensure_ascii=False, separators=(",", ":"))

    @classmethod
    def unpacked(cls, text: str) -> Self:
        """Return the dialogue that was packed; a ValueError says that it was none."""
        try:
            told = json.loads(text)
            asked, offers, known = told["asked"], told["offers"], told["known"]
            units = Units(told["units"]) if "units" in told else None
        except (KeyError, TypeError, RecursionError) as error:
            raise ValueError(text) from error
        texts = (asked, *offers, *known, *known.values()) if isinstance(known, dict) else (None,)
        if not all(isinstance(each, str) for each in texts):
            raise ValueError(text)
        return cls(asked, tuple(offers), known, units)

    def preferring(self, preferences: Preferences) -> Preferences:
        """Return the asker's preferences with the unit that was wished for on the way."""
        return replace(preferences, forced_units=self.units) if self.units else preferences


START = Dialogue()
"""A conversation in which nothing was asked yet."""


class Next(Enum):
    """What a line is after the answer before it."""

    QUESTION = auto()
    THANKS = auto()
    WHY = auto()


def next_line(
    dialogue: Dialogue, line: str, preferences: Preferences
) -> tuple[Next, str, Dialogue]:
    """Return what a line is, the whole question that it means, and the dialogue for it.

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
    if dialogue.asked and asks_again(line) and not dialogue.asked.startswith("needs "):
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
    heard = {name: text for name, text in told_of_set_up(line, context).items() if name in _STAYS}
    known = {**dialogue.known, **heard}
    if not (dialogue.asked or dialogue.known):
        place = by_facts(line, context) or ("", {})
        if place[0] == "uvi":
            known = {**known, _PLACE: place[1][_PLACE]}
        return Next.QUESTION, line, replace(dialogue, known=known)
    return Next.QUESTION, _meant(dialogue, line, context, wishes), replace(dialogue, known=known)


def told_as_meant(what: Next, reply: Reply, preferences: Preferences) -> Reply:
    """Return an answer as a conversation tells it.

    Its reasons are open where they were asked for; of what it lacks, one thing is asked.
    """
    has_why = any(part.name is PartName.WHY for part in reply.parts)
    if what is Next.WHY and has_why:
        return reply.model_copy(update={"opened": (*reply.opened, PartName.WHY)})
    return asked_next(reply, preferences)


def after(dialogue: Dialogue, reply: Reply) -> Dialogue:
    """Return the dialogue after an answer; what was not understood changes nothing."""
    # What is only perhaps meant does not take the place of what was surely asked.
    perhaps = "" if dialogue.asked else reply.perhaps
    return replace(told_before(perhaps or reply.asked, dialogue), offers=reply.offers)


def told_before(asked: str, dialogue: Dialogue) -> Dialogue:
    """Return the dialogue after a question that is known as a line alone."""
    apart = taken_apart(asked)
    if apart is None:
        return dialogue
    stays = {name: text for name, text in apart[1].items() if name in _STAYS and text != NOT_SURE}
    return replace(dialogue, asked=asked, offers=(), known={**dialogue.known, **stays})


def _named_offer(line: str, offers: tuple[str, ...]) -> int | None:
    """Return which offer a line takes by its animal, as 'leopard' the leopard gecko's."""
    words = _ABOUT_ONE.sub("", line.lower().strip(" .!?"))
    apart = [taken_apart(offer) for offer in offers]
    named = [found[1].get("animal", "").lower() if found else "" for found in apart]
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


def _meant(dialogue: Dialogue, line: str, context: Context, preferences: Preferences) -> str:
    before = taken_apart(dialogue.asked)
    changed = None if before is None else changed_by(*before, line, context, preferences)
    another = _another(before[0].name if before else "", line, context)
    if changed is not None and (another is None or not asks(line)):
        name, options = changed
        return join_line(name, options)
    if before is not None and (step := change_wished(*before, line)):
        return join_line("basking", step)
    after_check = before is not None and before[0].name == _CHECK
    if before and after_check and another and another.command == _AFTER_CHECK:
        return join_line(_AFTER_CHECK, {**before[1], **another.given})
    if another is not None:
        told = {name: text for name, text in another.given.items() if text != NOT_SURE}
        options = {**another.given, **_carried(another.command, dialogue.known), **told}
        return join_line(another.command, {n: t for n, t in options.items() if t})
    if (topic := topic_of(line)) and "animal" in dialogue.known:
        name, of = topic
        about = {"about": of} if of else {}
        return join_line(name, _carried(name, dialogue.known) | about)
    spoken = f"{line.rstrip('?!. ')}, {_spoken(dialogue)}"
    is_asked = asks(line) or line.rstrip().endswith("?")
    if is_asked and (another := _another("", spoken, context)):
        options = {**another.given, **_carried(another.command, dialogue.known)}
        return join_line(another.command, {n: t for n, t in options.items() if t})
    if found := by_facts(line, context, about_uv=before is not None and before[0].name in _OF_UV):
        name, options = found
        if name == "distance" and not dialogue.asked and _PLACE in dialogue.known:
            name, options = "uvi", {_PLACE: dialogue.known[_PLACE], **options}
        unsure = dict.fromkeys(("reflector", "screen"), NOT_SURE) if name in _BY_CASES else {}
        return join_line(name, unsure | _carried(name, dialogue.known) | options)
    return line if line.startswith("ask ") else f"ask {line}"


def _spoken(dialogue: Dialogue) -> str:
    """Return the animal and the tube that were told, as words that a question goes on with."""
    known = dialogue.known
    tube = f"{known['tube']} tube" if "tube" in known else ""
    return ", ".join(filter(None, (known.get("animal", ""), tube)))


def _another(name: str, line: str, context: Context) -> Routed | None:
    """Return the other question that a line asks by itself."""
    try:
        routed = route(AskQuery(question=line), context)
    except NotUnderstoodError:
        return None
    found = _only_offer(routed) if isinstance(routed, Layered) else routed
    if found is None or found.animal_unclear or found.command in (name, "check", "guide"):
        return None
    other = command_named(found.command)
    return found if other is not None and "animal" in _names(other) else None


def _only_offer(told: Layered) -> Routed | None:
    """Return the one question that may be meant: with what is known it can be asked."""
    apart = taken_apart(told.perhaps) if len(told.offers) == 1 else None
    return Routed(apart[0].name, apart[1]) if apart else None


def _carried(name: str, known: Mapping[str, str]) -> dict[str, str]:
    """Return what another question takes along of the set-up that was told."""
    command = command_named(name)
    assert command is not None
    here = _names(command) & _STAYS
    return {
        option: text
        for option, text in known.items()
        # A tube's question knows the box by its length alone.
        if option in here and not (option == "enclosure" and name not in _OF_UV and "x" not in text)
    }


def _names(command: Command) -> set[str]:
    return set(command.query.examples())
