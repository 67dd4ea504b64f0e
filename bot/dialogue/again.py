"""What a line wants of the answer before: its reasons, it again, another unit, it as it is."""

import re
from dataclasses import replace

from bot.dialogue.another import BY_CASES, OF_UV
from bot.dialogue.kept import Dialogue, Next
from bot.dialogue.phrases import (
    asks_again,
    asks_why,
    asks_why_needed,
    does_not_know,
    has_no_meter,
    option_named,
)
from bot.dialogue.unit_words import asks_which_unit, unit_meant, unit_wished
from bot.facts import Say
from bot.language.units import Units
from bot.language.unsure import NOT_SURE, Unsure
from bot.preferences import Context
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.routes.routing import asked_in
from bot.routes.second import turn_of

__all__ = ["by_what_was_learned", "of_the_answer"]

_NEEDS, _PLACE = "needs", "distance"


def of_the_answer(
    dialogue: Dialogue, asked: Question, line: str
) -> tuple[Next, Question, Dialogue] | None:
    """Return what a line wants of the answer before: its reasons, it again, another unit."""
    if asks_why(line):
        return Next.WHY, asked, dialogue
    if asks_why_needed(line) and "animal" in dialogue.known:
        of_uv = {"animal": dialogue.known["animal"], "about": "uv"}
        return Next.WHY, Question(_NEEDS, of_uv), dialogue
    if asks_again(line) and asked.command != _NEEDS:
        return Next.QUESTION, asked, dialogue
    if (units := unit_meant(line)) and (meant := _in_unit(asked, units)):
        return Next.QUESTION, meant, dialogue
    if units := unit_wished(line):
        return Next.QUESTION, asked, replace(dialogue, units=units)
    if asks_which_unit(line):
        return Next.QUESTION, asked, replace(dialogue, beside=(Say("talk-units"),))
    if (option := option_named(line)) and option in (*asked.values, asked.command):
        return Next.QUESTION, asked, dialogue
    if has_no_meter(line) and asked.command in OF_UV:
        return Next.QUESTION, asked, dialogue
    if does_not_know(line) and dialogue.wanted:
        return Next.QUESTION, _without_knowing(dialogue, asked), dialogue
    return None


def by_what_was_learned(
    dialogue: Dialogue, line: str, context: Context
) -> tuple[Next, Question | str, Dialogue] | None:
    """Return what a line that tells nothing is by what was learned of such lines."""
    asked = dialogue.asked
    assert asked is not None
    match turn_of(asked_in(AskQuery(question=line), context)):
        case "thanks":
            return Next.THANKS, line, dialogue
        case "why":
            return Next.WHY, asked, dialogue
        case "again":
            return Next.QUESTION, asked, dialogue
        case "simpler":
            return Next.QUESTION, asked, replace(dialogue, beside=(Say("talk-simpler"),))
        case "no idea":
            return Next.QUESTION, _without_knowing(dialogue, asked), dialogue
    return None


def _without_knowing(dialogue: Dialogue, asked: Question) -> Question:
    """Return the question whose writer cannot tell what was asked for last."""
    option = dialogue.wanted[-1] if dialogue.wanted else ""
    if option in ("reflector", "screen") and asked.command in BY_CASES:
        return Question(asked.command, {**asked.values, option: Unsure(NOT_SURE)})
    return asked


def _in_unit(asked: Question, units: Units) -> Question | None:
    """Return the question with its distance in the other unit; None where it has none such."""
    number = re.match(r"\d+(?:\.\d+)?", asked.given.get(_PLACE, ""))
    if number is None:
        return None
    return Question(asked.command, {**asked.values, _PLACE: f"{number[0]} {units.value}"})
