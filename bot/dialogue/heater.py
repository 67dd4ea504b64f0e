"""How strong a heater for the night has to be: of a box, not of a way from a lamp."""

import re
from collections.abc import Mapping
from dataclasses import replace

from bot.dialogue.another import carried
from bot.dialogue.asking import asked_for
from bot.dialogue.kept import Dialogue, Next
from bot.dialogue.phrases import plain
from bot.facts import Say
from bot.layered import Brief, Layered
from bot.queries.question import Question
from bot.queries.typed import typed

__all__ = ["heater_asked"]

_HEATER = r"(?:heater|ceramic|che|emitter|panel|mat|bulb|one|it|keramik\w*|heizer|strahler|matte)"
_SIZE = re.compile(
    r"^(?:(?:and|so|ok|okay|then|but|und|also|aber)[, ]+)*"
    r"(?:(?:how many|how much|what|which|wie ?viele?|welche) (?:watt\w*|w)\b.{0,25}"
    r"|watt(?:s|age|zahl)?|(?:the |die )?(?:size|wattage)(?: of it)?"
    rf"|(?:and )?(?:what|which) size(?: of)?(?: an?)?(?: {_HEATER})?"
    rf"|how (?:big|strong)(?: an?| should| must| does)?(?: the| it)?(?: {_HEATER})?(?: be| need)?"
    rf"|wie (?:stark|groß)(?: muss| soll)?(?: der| die| das| er)?(?: {_HEATER})?(?: sein)?)\W*$"
)
_NIGHT, _ROOM, _BOX = "night", "room", "enclosure"


def heater_asked(
    dialogue: Dialogue, line: str, told_now: Mapping[str, object]
) -> tuple[Next, Question | Layered, Dialogue] | None:
    """Return the question of the night with its box, where a line asks how strong a heater is.

    ``told_now`` is what it tells of a box. That is asked for where it was not told; None: the
    line asks something else.
    """
    before = dialogue.asked
    if before is None or not _is_of_a_night(before, dialogue.known) or not _SIZE.match(plain(line)):
        return None
    told = before.values if before.command == _NIGHT else {}
    boxed = {n: v for n, v in told_now.items() if n == _BOX}
    values = {**carried(_NIGHT, dialogue.known), **told, **boxed}
    night = Question(_NIGHT, values)
    if _ROOM not in values or _BOX in values:
        return Next.QUESTION, night, dialogue
    wanted = (*(name for name in dialogue.wanted if name != _BOX), _BOX)
    asks = Layered(
        "ask",
        Say("talk-title"),
        Brief(asked_for(_BOX, _NIGHT)),
        status="problem",
        lacking=(_BOX,),
    )
    return Next.SAID, asks, replace(dialogue, asked=night, wanted=wanted, offers=())


def _is_of_a_night(before: Question, known: Mapping[str, object]) -> bool:
    """Say whether a question is about warmth at night, or a lamp after a cold room was told."""
    about = typed(before.values.get("about", ""))
    lamp = before.command == "lamp" and _ROOM in known
    return lamp or before.command == _NIGHT or (before.command == "needs" and about == _NIGHT)
