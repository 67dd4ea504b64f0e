"""What a line wants of the answer before: its reasons, it again, another unit, it as it is."""

import re
from dataclasses import replace

from bot.dialogue.another import BY_CASES, OF_UV
from bot.dialogue.asking import asked_for
from bot.dialogue.kept import Dialogue, Next
from bot.dialogue.phrases import (
    asks_again,
    asks_how_to_know,
    asks_why,
    asks_why_needed,
    does_not_know,
    has_no_meter,
    option_named,
)
from bot.dialogue.remembered import judged_so
from bot.dialogue.unit_words import asks_which_unit, unit_meant, unit_wished
from bot.facts import Say
from bot.language.units import Units
from bot.language.unsure import NOT_SURE, Unsure
from bot.queries.question import Question
from bot.queries.typed import typed

__all__ = ["again_in", "of_the_answer", "without_knowing"]

_NEEDS, _PLACE = "needs", "distance"
_TOOLS = ("measuring-temperatures", "The two tools")
_FOUND_OUT = {
    "tube": ("which-uv-lamp", "Read the print"),
    "reflector": ("reflectors", "Two kinds, as the bot sees them"),
    "screen": ("screens", "How to find out what your screen takes"),
    "distance": ("measuring-the-distance", "How to do it"),
    "readings": ("how-to-take-a-reading", "Taking it"),
    **dict.fromkeys(("surface", "air", "room", "reading"), _TOOLS),
}
"""The page and its part that says how to find out what an option asks for."""
_HEATS = ("basking", "cool", "warm", "night", "room", "water", "surface", "air", "reading")


def of_the_answer(
    dialogue: Dialogue, asked: Question, line: str
) -> tuple[Next, Question, Dialogue] | None:
    """Return what a line wants of the answer before: its reasons, it again, another unit."""
    if asks_why(line):
        return Next.WHY, asked, dialogue
    if asks_why_needed(line) and "animal" in dialogue.known:
        of_uv = {"animal": dialogue.known["animal"], "about": "uv"}
        return Next.WHY, Question(_NEEDS, of_uv), dialogue
    if asks_again(line):
        judged = judged_so(asked, dialogue.known) if asked.command == _NEEDS else asked
        return Next.QUESTION, judged or asked, dialogue
    if (units := unit_meant(line)) and (meant := again_in(asked, units)):
        return Next.QUESTION, meant, dialogue
    if units := unit_wished(line):
        return Next.QUESTION, asked, replace(dialogue, units=units)
    if asks_which_unit(line):
        return Next.QUESTION, asked, replace(dialogue, beside=(Say("talk-units"),))
    if (option := option_named(line)) and option in (*asked.values, asked.command):
        return Next.QUESTION, asked, dialogue
    if has_no_meter(line) and asked.command in OF_UV:
        return Next.QUESTION, asked, dialogue
    if asks_how_to_know(line) and (found := _found_out(dialogue, asked)):
        return found
    if does_not_know(line) and dialogue.wanted:
        return Next.QUESTION, without_knowing(dialogue, asked), dialogue
    return None


def _found_out(dialogue: Dialogue, asked: Question) -> tuple[Next, Question, Dialogue] | None:
    """Return where it stands how to find out what was asked for last, which is asked again."""
    wanted = [option for option in dialogue.wanted if option not in asked.values]
    if not wanted or wanted[-1] not in _FOUND_OUT:
        return None
    page, part = _FOUND_OUT[wanted[-1]]
    again = asked_for(wanted[-1], asked.command)
    return (
        Next.QUESTION,
        Question("guide", {"page": page, "part": part}),
        replace(dialogue, beside=(again,)),
    )


def without_knowing(dialogue: Dialogue, asked: Question) -> Question:
    """Return the question whose writer cannot tell what was asked for last."""
    option = dialogue.wanted[-1] if dialogue.wanted else ""
    if option in ("reflector", "screen") and asked.command in BY_CASES:
        return Question(asked.command, {**asked.values, option: Unsure(NOT_SURE)})
    return asked


def again_in(asked: Question, units: Units) -> Question | None:
    """Return the question with its figures that had no unit in this one; None where it has none."""
    values = {name: _in_unit(typed(value), units, name) for name, value in asked.values.items()}
    changed = {name: text for name, text in values.items() if text}
    return Question(asked.command, {**asked.values, **changed}) if changed else None


def _in_unit(text: str, units: Units, option: str) -> str:
    """Return a length or a temperature in the other unit by its own number; else nothing."""
    number = re.match(r"\d+(?:\.\d+)?(?= ?(?:°?[fc]|in|cm|inch\w*)?$)", text, re.I)
    if number is None or option not in (_PLACE, *_HEATS):
        return ""
    degrees = "C" if units is Units.CM else "F"
    return f"{number[0]} {units.value if option == _PLACE else degrees}"
