"""The next line of a conversation as a whole question: one pure value, one step.

A dialogue keeps the last question as it was understood, and what was offered beside its answer;
nothing that was typed. What tells a danger, and what is a whole question, is asked as it is.
"""

import re
from collections.abc import Mapping
from dataclasses import replace

from bot.answering import in_words
from bot.commands import question_at
from bot.dangers import listen
from bot.dialogue.again import of_the_answer
from bot.dialogue.alone import by_facts
from bot.dialogue.another import BY_CASES, STAYS, carried
from bot.dialogue.as_asked import as_asked, is_typed
from bot.dialogue.asking import Answer, asked_next, said_beside
from bot.dialogue.by_rule import meant_by_rule
from bot.dialogue.changes import after_move, read_again, reading_placed
from bot.dialogue.either import OTHER, chosen_of, lamps_named, other_named, the_other, turned
from bot.dialogue.figures import length_told, without_lengths
from bot.dialogue.for_animal import of_the_animal, with_kin
from bot.dialogue.heater import heater_asked
from bot.dialogue.kept import Dialogue, Next, after, still_wanted
from bot.dialogue.moves import changed_in
from bot.dialogue.phrases import begun_anew, greets, since_now
from bot.dialogue.remembered import LAMP_DISTANCE, completed
from bot.dialogue.thanks import is_thanks
from bot.dialogue.told import (
    UNPLACED,
    box_told,
    readings_heard,
    set_up_told,
    staying,
    whole_name,
    with_name_before,
)
from bot.dialogue.topics import topic_of
from bot.facts import Say
from bot.layered import Brief, Layered
from bot.preferences import Context, Preferences
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.queries.typed import typed
from bot.question_context import context_of
from bot.reply import PartName, Reply
from calc.naming import Known, named

__all__ = ["next_line", "said_in", "told_as_meant", "turn"]

# 97ish, about so much.
_ABOUT = re.compile(r"(?<![\w.])(\d+(?:\.\d+)?) ?-?ish\b", re.I)
# From 40 to 30 cm: it is the last that holds.
_FROM_TO = re.compile(
    r"\b(?:from|von) \d+(?:[.,]\d+)? ?(?:in|inch\w*|cm|°?[fc]|w|watts?|%)? ?\b(to|auf|down to"
    r"|up to) "
    r"(?=\d)",
    re.I,
)
# How long an animal is, is no way from a lamp.
_BODY = re.compile(
    r"\b(?:he|she|hes|shes|he's|she's|er|sie)(?: is| ist)? (?:about |only |now |ca\.? |etwa )?"
    r"\d+(?:[.,]\d+)? ?(?:in(?:ch(?:es)?)?|cm|\")(?! ?\w*(?:from|away|below|under|above|off|over"
    r"|down"
    r"|unter|vom|von|weg|up)\b)(?= long| lang|\W*$)",
    re.I,
)
_BARE_NUMBER = re.compile(r"(?<![\w.])\d+(?:[.,]\d+)?(?![\w.])")
# Told before any question, it is the place that one is then asked of.
_PLACE = "distance"
_TELLS_A_PLACE = ("uvi", "check", "next")
_OF_WARMTH = ("needs", "temps")
_OF_A_LAMP = ("basking", "watts")
# What is another once a lamp was moved or dimmed.
_UNDER_A_LAMP = ("basking", "warm", LAMP_DISTANCE)
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
    if doubted := _doubted_before(meant, dialogue.asked, behind):
        known = {n: v for n, v in behind.known.items() if n != UNPLACED}
        return what, doubted, replace(behind, known=known)
    meant, beside = completed(meant, dialogue.asked, behind.known, dialogue.known, wishes)
    return what, meant, replace(behind, beside=(*behind.beside, *beside))


def _doubted_before(meant: Question, asked: Question | None, dialogue: Dialogue) -> str:
    """Return what was asked of a temperature before its animal was told, once that is; else ""."""
    degrees, animal = dialogue.known.get(UNPLACED), typed(meant.values.get("animal", ""))
    before = typed(asked.values.get("animal", "")) if asked else ""
    told_now = isinstance(named(animal).what, Known) and before != animal
    asks_of_it = meant.values.keys() <= {"animal", "state"} and meant.command in _OF_WARMTH
    if not degrees or not told_now or not asks_of_it:
        return ""
    return f"ask is {typed(degrees)} ok for my {animal}"


def _next_of(
    dialogue: Dialogue, line: str, preferences: Preferences
) -> tuple[Next, Question | Layered | str, Dialogue]:
    """Return what a line is and what it means by itself and by the question before."""
    dialogue = replace(dialogue, beside=()).spoken_in(line, preferences)
    line = _ABOUT.sub(r"\1", line)
    line = whole_name(dialogue.known, _in_place(line) if dialogue.asked else line)
    line, whole = since_now(line) if dialogue.asked else line, line
    wishes = dialogue.preferring(preferences)
    context = context_of(AskQuery(question=line), {"question": line}, wishes)
    told = set_up_told(dialogue.asked, context)
    moved = changed_in(line) if dialogue.asked else None
    heard_too = _heard(dialogue.asked, line, context)
    read_before = {**dialogue.known, **told, **heard_too} if dialogue.asked else told
    again_read = read_again(dialogue.asked, line, context)
    placed = again_read or reading_placed(dialogue.asked, read_before, line, context)
    plain = _listened_to(whole, no_length=bool(moved or placed), is_uvi=again_read is not None)
    if any(not alarm.asked for alarm in listen(plain)):
        spoken_of = {**dialogue.known, **heard_too}
        return Next.QUESTION, as_asked(whole, wishes), replace(dialogue, known=spoken_of)
    if asks_nothing := _asks_nothing(dialogue, line):
        return asks_nothing
    if anew := begun_anew(line):
        anew_too = Dialogue(units=dialogue.units, spoken=dialogue.spoken)
        return _next_of(anew_too, anew, preferences)
    if again := _of_what_was_told(dialogue, line):
        return again
    before = dialogue.asked
    names_a_topic = (
        before is not None
        and not _has_options(line)
        and topic_of(line, before.command, dialogue.page)
    )
    if not names_a_topic and is_typed(line, wishes, goes_on=before is not None):
        return Next.QUESTION, line, dialogue
    is_first = not (dialogue.asked or dialogue.offers or dialogue.wanted or dialogue.known)
    dialogue = _knowing(dialogue, told, heard_too, moved=moved is not None)
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


def _in_place(line: str) -> str:
    """Return a line with the last of what something was and is, and no length of an animal."""
    return _BODY.sub(" ", _FROM_TO.sub(r"\1 ", line))


def _has_options(line: str) -> bool:
    """Say whether a line asks a question by its name with an option by its name."""
    found = question_at(line)
    return found is not None and any(f"{name}:" in line for name in found.values)


def _heard(asked: Question | None, line: str, context: Context) -> dict[str, object]:
    """Return what a line tells of the set-up: what stays, what was read, and its heat lamp."""
    heard = {**staying(line, context), **readings_heard(line, context)}
    lamp = length_told(line) if asked and asked.command in _OF_A_LAMP else None
    return heard | ({LAMP_DISTANCE: lamp} if lamp else {})


def _listened_to(line: str, *, no_length: bool, is_uvi: bool) -> str:
    """Return what may tell a danger of a line.

    How far something was moved is no distance that is too small, and what a UV meter shows is no
    temperature.
    """
    plain = without_lengths(line) if no_length else line
    return _BARE_NUMBER.sub(r"uvi \g<0>", plain) if is_uvi else plain


def _knowing(
    dialogue: Dialogue, told: Mapping[str, object], heard: dict[str, object], *, moved: bool
) -> Dialogue:
    """Return the dialogue with what the question before and a line tell of the set-up.

    What a lamp warmed before it was moved is so no longer.
    """
    before = {name: value for name, value in told.items() if name in (*STAYS, _METER)}
    known = {n: v for n, v in dialogue.known.items() if not (moved and n in _UNDER_A_LAMP)}
    place = _with_place_before(dialogue.asked, told, {})
    if name := typed(heard.get("animal", "")):
        # Of a gecko was spoken, and it is a leopard.
        heard = {**heard, "animal": with_name_before(typed(known.get("animal", "")), name)}
    return replace(dialogue, known={**known, **before, **known, **place, **heard})


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

    if heater := heater_asked(dialogue, line, box_told(line, context)):
        return heater
    found = meant_by_rule(dialogue, line, told, context, preferences)
    if learned := meant_by(dialogue, line, found, told, context, preferences):
        return learned
    if isinstance(found, Layered):
        # What was not followed leaves a choice of two as it is.
        kept = dialogue.offers if _is_a_pair(dialogue.offers) else found.offers
        return Next.SAID, found, replace(dialogue, offers=kept)
    return Next.QUESTION, found, dialogue


def _is_a_pair(offers: tuple[Question, ...]) -> bool:
    """Whether two of a kind are offered: two lamps, or two tubes."""
    return len(offers) == 2 and len({each.command for each in offers}) == 1


def _of_what_was_told(
    dialogue: Dialogue, line: str
) -> tuple[Next, Question | Layered | str, Dialogue] | None:
    """Return what a line takes of the answer before, or of what was named or offered with it."""
    if dialogue.asked and (again := of_the_answer(dialogue, dialogue.asked, line)):
        return again
    if other := the_other(line, dialogue.offers, dialogue.known, dialogue.asked):
        # What it has hangs elsewhere.
        return Next.QUESTION, other, replace(dialogue, known=turned(dialogue.known))
    chosen = chosen_of(dialogue.offers, line)
    if chosen is None:
        return None
    taken = dialogue.offers[chosen]
    if taken.command in BY_CASES:
        taken = Question(taken.command, {**carried(taken.command, dialogue.known), **taken.values})
    return Next.QUESTION, taken, dialogue


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
    found = with_kin(of_the_animal(meant, dialogue, wishes, answer), line, wishes)
    reply = told_as_meant(dialogue, what, found, wishes, answer)
    behind = after(dialogue, reply)
    if not behind.offers:
        behind = replace(behind, offers=lamps_named(line, wishes))
    spoken_of = typed(behind.known.get("animal", ""))
    if other := other_named(line, spoken_of, wishes):
        behind = replace(behind, known={**behind.known, OTHER: other})
    return reply, behind


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
