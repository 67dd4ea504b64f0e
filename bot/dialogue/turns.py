"""The next line of a conversation as a whole question: one pure value, one step.

A dialogue keeps the last question as it was understood, and what was offered beside its answer;
nothing that was typed. What tells a danger, and what is a whole question, is asked as it is.
"""

import re
from collections.abc import Mapping
from dataclasses import replace

from bot.answering import in_words
from bot.commands import command_named
from bot.dangers import listen
from bot.dialogue.again import of_the_answer
from bot.dialogue.alone import by_facts
from bot.dialogue.another import (
    BY_CASES,
    OF_UV,
    STAYS,
    another_asked,
    asking,
    carried,
    names_of,
)
from bot.dialogue.as_asked import as_asked, is_typed, tells_by_name
from bot.dialogue.asking import Answer, asked_next, said_beside
from bot.dialogue.changes import after_move, cold_told, read_again, reading_placed
from bot.dialogue.either import OTHER, chosen_of, lamps_named, other_named, the_other, turned
from bot.dialogue.figures import without_lengths
from bot.dialogue.fragments import change_wished, changed_by
from bot.dialogue.heat_told import doubted_there
from bot.dialogue.kept import Dialogue, Next, after, still_wanted
from bot.dialogue.moves import changed_in
from bot.dialogue.phrases import asks, begun_anew, greets, since_now
from bot.dialogue.remembered import completed
from bot.dialogue.thanks import is_thanks
from bot.dialogue.told import readings_heard, set_up_told, staying, told_of_set_up, warmth_told
from bot.dialogue.topics import topic_of
from bot.dialogue.unclear import unclear
from bot.facts import Say
from bot.language.units import Units
from bot.language.unsure import NOT_SURE, Unsure
from bot.layered import Brief, Layered
from bot.preferences import Context, Preferences
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.queries.typed import typed
from bot.question_context import context_of
from bot.reply import PartName, Reply
from bot.routes.routing import asked_in
from calc.naming import Known, Several, named

__all__ = ["next_line", "said_in", "told_as_meant", "turn"]

# What comes next after a check is asked of the same set-up.
_CHECK, _AFTER_CHECK, _NEEDS = "check", "next", "needs"
# 97ish, about so much.
_ABOUT = re.compile(r"(?<![\w.])(\d+(?:\.\d+)?) ?-?ish\b", re.I)
_BARE_NUMBER = re.compile(r"(?<![\w.])\d+(?:[.,]\d+)?(?![\w.])")
# Told before any question, it is the place that one is then asked of.
_PLACE = "distance"
_TELLS_A_PLACE = ("uvi", "check", "next")
# A reading whose place may be told later.
_METER = "meter"


def next_line(
    dialogue: Dialogue, line: str, preferences: Preferences
) -> tuple[Next, Question | Layered | str, Dialogue]:
    """Return what a line is, the whole question that it means, and the dialogue for it.

    What is asked as it was typed stays a line; what needs no question is told as it is.

    A figure, a name or a word for a part of the set-up changes the question before; another
    question takes the animal, the lamps and the box along; ``2`` takes what was offered.
    """
    what, meant, behind = _next_of(dialogue, line, preferences)
    if not isinstance(meant, Question):
        return what, meant, behind
    wishes = behind.preferring(preferences)
    meant, beside = completed(meant, dialogue.asked, behind.known, wishes)
    return what, meant, replace(behind, beside=(*behind.beside, *beside))


def _next_of(
    dialogue: Dialogue, line: str, preferences: Preferences
) -> tuple[Next, Question | Layered | str, Dialogue]:
    """Return what a line is and what it means by itself and by the question before."""
    dialogue = replace(dialogue, beside=()).spoken_in(line, preferences)
    line = _ABOUT.sub(r"\1", line)
    whole, line = line, since_now(line) if dialogue.asked else line
    wishes = dialogue.preferring(preferences)
    context = context_of(AskQuery(question=line), {"question": line}, wishes)
    told = set_up_told(dialogue.asked, context)
    moved = changed_in(line) if dialogue.asked else None
    read_before = {**dialogue.known, **told} if dialogue.asked else told
    again_read = read_again(dialogue.asked, line, context)
    placed = again_read or reading_placed(dialogue.asked, read_before, line, context)
    # How far something was moved is no distance that is too small, and what a UV meter shows is
    # no temperature; all the rest is listened to.
    plain = without_lengths(whole) if moved or placed else whole
    plain = _BARE_NUMBER.sub("", plain) if again_read else plain
    if any(not alarm.asked for alarm in listen(plain)):
        spoken_of = {**dialogue.known, **staying(line, context), **readings_heard(line, context)}
        return Next.QUESTION, as_asked(whole, wishes), replace(dialogue, known=spoken_of)
    if asks_nothing := _asks_nothing(dialogue, line):
        return asks_nothing
    if anew := begun_anew(line):
        anew_too = Dialogue(units=dialogue.units, spoken=dialogue.spoken)
        return _next_of(anew_too, anew, preferences)
    if again := _of_what_was_told(dialogue, line):
        return again
    names_a_topic = dialogue.asked is not None and topic_of(
        line, dialogue.asked.command, dialogue.page
    )
    if not names_a_topic and is_typed(line, wishes, goes_on=dialogue.asked is not None):
        return Next.QUESTION, line, dialogue
    heard = staying(line, context)
    heard = _with_place_before(dialogue.asked, told, heard)
    before = {name: value for name, value in told.items() if name in (*STAYS, _METER)}
    known = {**dialogue.known, **before, **dialogue.known, **heard}
    is_first = not (dialogue.asked or dialogue.offers or dialogue.wanted or dialogue.known)
    dialogue = replace(dialogue, known={**known, **readings_heard(line, context)})
    if moved and dialogue.asked:
        meant, beside = after_move(dialogue.asked, told, dialogue.known, moved, context, wishes)
        return Next.QUESTION, meant, replace(dialogue, beside=beside)
    if placed:
        return Next.QUESTION, placed, dialogue
    if is_first:
        place = by_facts(line, context)
        if place is not None and place.command == "uvi":
            known_too = {**dialogue.known, _PLACE: place.values[_PLACE]}
            dialogue = replace(dialogue, known=known_too)
        return Next.QUESTION, as_asked(line, wishes), dialogue
    return _by_both(dialogue, line, told, context, wishes)


def _by_both(
    dialogue: Dialogue,
    line: str,
    told: Mapping[str, object],
    context: Context,
    preferences: Preferences,
) -> tuple[Next, Question | Layered | str, Dialogue]:
    """Return what a line means by rules and by what was learned of such lines."""
    # It is loaded where a conversation goes on.
    from bot.dialogue.followed import meant_by

    found = _meant(dialogue, line, told, context, preferences)
    if learned := meant_by(dialogue, line, found, told, context, preferences):
        return learned
    if isinstance(found, Layered):
        return Next.SAID, found, replace(dialogue, offers=found.offers)
    return Next.QUESTION, found, dialogue


def _of_what_was_told(
    dialogue: Dialogue, line: str
) -> tuple[Next, Question | Layered | str, Dialogue] | None:
    """Return what a line takes of the answer before, or of what was named or offered with it."""
    if dialogue.asked and (again := of_the_answer(dialogue, dialogue.asked, line)):
        return again
    if other := the_other(line, dialogue.offers, dialogue.known):
        # What it has hangs elsewhere.
        return Next.QUESTION, other, replace(dialogue, known=turned(dialogue.known))
    chosen = chosen_of(dialogue.offers, line)
    return None if chosen is None else (Next.QUESTION, dialogue.offers[chosen], dialogue)


def _with_place_before(
    asked: Question | None, told: Mapping[str, object], heard: dict[str, object]
) -> dict[str, object]:
    """Return what a line tells with how far the tube is that was spoken of before it."""
    spoken_of = asked is not None and asked.command in _TELLS_A_PLACE and _PLACE in told
    return {_PLACE: told[_PLACE], **heard} if spoken_of else heard


def _asks_nothing(dialogue: Dialogue, line: str) -> tuple[Next, Layered | str, Dialogue] | None:
    """Return what is said to thanks or a greeting; None: the line is neither."""
    if is_thanks(line) and chosen_of(dialogue.offers, line) is None:
        return Next.THANKS, line, dialogue
    if greets(line):
        hello = Layered("ask", Say("ask-title-which"), Brief(Say("talk-hello")), status="problem")
        return Next.SAID, hello, dialogue
    return None


def turn(
    dialogue: Dialogue, line: str, preferences: Preferences, answer: Answer
) -> tuple[Reply | None, Dialogue]:
    """Return the answer to a line as it is meant here, and the dialogue after it.

    None is the answer to who only says thanks; ``answer`` answers a question or a line.
    """
    what, meant, dialogue = next_line(dialogue, line, preferences)
    if what is Next.THANKS:
        return None, dialogue
    wishes = dialogue.preferring(preferences)
    if isinstance(meant, Layered):
        speaking = context_of(AskQuery(question=line), {"question": line}, wishes)
        return in_words(meant, speaking).model_copy(update={"units": ""}), dialogue
    found = _with_kin(_of_the_animal(meant, dialogue, wishes, answer), line, wishes)
    reply = told_as_meant(dialogue, what, found, wishes, answer)
    behind = after(dialogue, reply)
    if not behind.offers:
        behind = replace(behind, offers=lamps_named(line, wishes))
    spoken_of = typed(behind.known.get("animal", ""))
    if other := other_named(line, spoken_of, wishes):
        behind = replace(behind, known={**behind.known, OTHER: other})
    return reply, behind


def _of_the_animal(
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


def _with_kin(reply: Reply, line: str, preferences: Preferences) -> Reply:
    """Return the answer to a question for an animal whose name several share, with that name."""
    meant = reply.meant
    if meant is None or "animal" not in reply.lacking or "animal" in meant.values:
        return reply
    context = context_of(AskQuery(question=line), {"question": line}, preferences)
    kin = asked_in(AskQuery(question=line), context).unclear_animal
    if kin is None or not isinstance(named(kin.words).what, Several):
        return reply
    named_so = Question(meant.command, {**meant.values, "animal": kin.words})
    return reply.model_copy(update={"meant": named_so, "offers": ()})


def said_in(told: Layered) -> tuple[Say, ...]:
    """Return the sentences of what needs no question, for a front that shows them as they are."""
    return (told.brief.head, *told.brief.steps)


def told_as_meant(
    dialogue: Dialogue, what: Next, reply: Reply, preferences: Preferences, answer: Answer
) -> Reply:
    """Return an answer as a conversation tells it.

    Its reasons are open where they were asked for; of what it lacks, one thing is asked, once.
    """
    has_why = any(part.name is PartName.WHY for part in reply.parts)
    if what is Next.WHY and has_why:
        return reply.model_copy(update={"opened": (*reply.opened, PartName.WHY)})
    before, meant = dialogue.asked, reply.meant
    same = before is not None and meant is not None and before.command == meant.command
    told = asked_next(reply, preferences, still_wanted(dialogue, same=same), answer)
    return said_beside(told, dialogue.beside, preferences)


def _meant(
    dialogue: Dialogue,
    line: str,
    told: Mapping[str, object],
    context: Context,
    preferences: Preferences,
) -> Question | Layered | str:
    before, known = dialogue.asked, dialogue.known
    command = command_named(before.command) if before else None
    name, values = (before.command, before.values) if before else ("", {})
    changed = None
    if command is not None:
        changed = changed_by(command, values, told, line, context, preferences)
    if isinstance(changed, Layered):
        return changed
    spoken_of = "night" if values.get("about") == "night" else name
    if spoken_of != name and (cold := cold_told(values, known, told, line, context, preferences)):
        return cold
    asked = asked_in(AskQuery(question=line), context)
    if before and (doubted := doubted_there(before, line, asked, known)):
        return doubted
    topic = topic_of(line, spoken_of, dialogue.page)
    if topic and not topic.of_an_animal:
        told_too = told_of_set_up(line, context) if topic.command != "guide" else {}
        here = carried(topic.command, {**known, **told_too})
        return asking(Question(topic.command, here), topic.values)
    another = None if tells_by_name(line) else another_asked(name, line, context)
    if name == "lamp" and not asks(line):
        by_lamp = by_facts(line, context, before=name)
        another = None if by_lamp and by_lamp.command == "watts" else another
    if changed is not None and (another is None or not asks(line)):
        return changed
    if command is not None and (step := change_wished(command, told, line)):
        return Question("basking", step)
    if name == _CHECK and another and another.command == _AFTER_CHECK:
        of_it = changed.values if changed else values
        return Question(_AFTER_CHECK, {**another.values, **of_it})
    is_asked = asks(line) or line.rstrip().endswith("?")
    if another is not None and not is_asked and warmth_told(line, told, context, preferences):
        return _by_what_it_tells(dialogue, line, told, context)
    if another is not None:
        heard = {n: v for n, v in another.values.items() if typed(v) != NOT_SURE}
        return asking(another, carried(another.command, known), heard)
    if topic and "animal" in known:
        return Question(topic.command, carried(topic.command, known) | dict(topic.values))
    if is_asked and (another := another_asked("", line, context, known)):
        return asking(another, carried(another.command, known))
    return _by_what_it_tells(dialogue, line, told, context)


def _by_what_it_tells(
    dialogue: Dialogue, line: str, told: Mapping[str, object], context: Context
) -> Question | Layered | str:
    """Return the question that a line is for by what it tells alone; else that it means nothing."""
    before, known = dialogue.asked, dialogue.known
    name, values = (before.command, before.values) if before else ("", {})
    place = told.get(_PLACE, Units.IN) if name in OF_UV else None
    if found := by_facts(line, context, place=place, before=name):
        if found.command == "distance" and not before and _PLACE in known:
            found = Question("uvi", {_PLACE: known[_PLACE], **found.values})
        unsure = dict.fromkeys(("reflector", "screen"), Unsure(NOT_SURE))
        by_cases = unsure if found.command in BY_CASES else {}
        return Question(
            found.command, by_cases | carried(found.command, known) | dict(found.values)
        )
    if "animal" in told_of_set_up(line, context):
        return Question(_NEEDS, {**(values if name == _NEEDS else {}), "animal": known["animal"]})
    if (before or known) and (said := unclear(name, known, line, context)):
        return said
    whole = f"{line.rstrip(' ?!.')}?"
    if known and (another := another_asked("", whole, context, known)):
        return asking(another, carried(another.command, known))
    return line if line.startswith("ask ") else f"ask {line}"
