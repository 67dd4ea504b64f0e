"""What is asked after something was moved or dimmed, or the place of a reading was told."""

import re
from collections.abc import Mapping
from dataclasses import dataclass

from bot.commands import command_named
from bot.dialogue.another import carried
from bot.dialogue.bare import only_number, place_before
from bot.dialogue.figures import length_told, without_lengths
from bot.dialogue.fragments import changed_by
from bot.dialogue.moves import Change, Moved, moved_on
from bot.dialogue.places import place_named
from bot.dialogue.told import warmth_told
from bot.facts import Length, Say, metres
from bot.language.hearing import FactName
from bot.language.quantities import Measure
from bot.language.readings import PlacedReading
from bot.language.unsure import NOT_SURE, Unsure
from bot.preferences import Context, Preferences
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.queries.typed import typed
from bot.question_context import read_alone
from bot.routes.routing import asked_in

__all__ = ["after_move", "cold_told", "read_again", "reading_placed"]

_OF_A_LAMP = ("watts", "basking")
_READS = re.compile(
    r"\b(?:says?|reads?|shows?|showing|reading|measured?|got|gives?|uvi|index|zeigt|sagt|gemessen"
    r"|misst|messe)\b",
    re.I,
)
# No distance is told so, a UV index always is.
_DECIMAL = re.compile(r"(?<![\w.,])\d[.,]\d(?![\d\w%])")
_STRONGEST = 15.0
_HEATS = re.compile(
    r"\b(?:heat|halogen|basking (?:lamp|bulb)|ceramic|spot ?lamp|wärme\w*"
    r"|strahler)\b"
)
_METER = re.compile(r"\b(?:uv\w* )?(?:meter|solarmeter|uvi|uv[ -]?index|messgerät)\b(?! away)")
_OF_UV = ("meter", "uvi", "distance")
_OF_A_READING = ("distance", "readings")
_HEATED = ("basking", "surface")


@dataclass(frozen=True, slots=True)
class NowAt:
    """How far away a lamp is after it, or the place under it, was moved."""

    distance: Length


def after_move(
    asked: Question,
    told: Mapping[str, object],
    known: Mapping[str, object],
    moved: Moved,
    context: Context,
    preferences: Preferences,
) -> tuple[Question, tuple[Say, ...]]:
    """Return the question after a move, and what its answer says beside it.

    What a temperature shows after it is asked of that temperature. Else the distance that was told
    is longer or shorter by so much; where none was told, or no figure, it is asked for.
    """
    of_animal = {"animal": known["animal"]} if "animal" in known else {}
    if read := warmth_told(moved.rest, told, context, preferences):
        return Question("temps", of_animal | read), ()
    again = Say("talk-measure-again")
    if moved.change is Change.POWER:
        return Question("temps", of_animal), (again,)
    name = asked.command if asked.command in _OF_A_LAMP else "uvi"
    command = command_named(name)
    assert command is not None
    place = told.get("distance") or (known.get("distance") if name == "uvi" else None)
    before = read_alone(command.query, "distance", place, preferences)
    if before is None and name == "uvi" and not (known.keys() & {"tube", "lamp"}):
        return Question("temps", of_animal), (again,)
    unsure = dict.fromkeys(("reflector", "screen"), Unsure(NOT_SURE)) if name == "uvi" else {}
    values = {**unsure, **carried(name, known)}
    if name == asked.command:
        values |= asked.values
    values.pop("distance", None)
    now = moved_on(before, moved, context.units) if isinstance(before, Measure) else None
    if now is None:
        return Question(name, values), ()
    beside = [Say("talk-moved", NowAt(metres(now.middle)))]
    if moved.change is Change.PLACE or any(place in told for place in _HEATED):
        beside.append(again)
    return Question(name, {**values, "distance": now}), tuple(beside)


def reading_placed(
    asked: Question | None, told: Mapping[str, object], line: str, context: Context
) -> Question | None:
    """Return the question of a UV reading that was told without its place, if a line tells that."""
    heard = asked_in(AskQuery(question=line), context).told
    if heard.all(FactName.WATTS) or _HEATS.search(line.lower()):
        # A heat lamp hangs there, and no reading was taken.
        return None
    reading, length = told.get("meter") or told.get("uvi"), length_told(line)
    if asked is None or "distance" in asked.values:
        return None
    of_a_reading = asked.command in ("check", "meter") and "distance" not in told
    untold = asked.command == "distance" and "tube" not in told
    if not (of_a_reading or untold):
        return None
    if not isinstance(reading, tuple) or not isinstance(length, Measure):
        return None
    value = sum(reading) / len(reading)
    rows = (PlacedReading(value, length.narrowed(), length.text),)
    animal = {"animal": told["animal"]} if "animal" in told else {}
    return Question("meter", {"readings": rows, **animal})


def read_again(asked: Question | None, line: str, context: Context) -> Question | None:
    """Return the question of what a UV meter shows, where UV was spoken of last.

    A reading whose place nobody told is held against what the animal needs.
    """
    about = typed(asked.values.get("about", "")) if asked else ""
    of_uv = asked is not None and (asked.command in _OF_UV or about.startswith("uv"))
    of_uv = of_uv or _METER.search(line.lower()) is not None
    if asked is None or not of_uv or place_named(line):
        return None
    told = (length_told(line) or _DECIMAL.search(line)) if asked.command == "meter" else None
    if not (told or about or _READS.search(line)):
        return None
    heard = asked_in(AskQuery(question=line), context)
    place = length_told(line) or place_before(asked.values)
    number = only_number(without_lengths(line))
    if not number or heard.warmth or heard.degrees or heard.told.tube:
        return None
    if not 0.0 < (value := float(number)) <= _STRONGEST:
        return None
    if not isinstance(place, Measure):
        animal = {"animal": asked.values["animal"]} if "animal" in asked.values else {}
        return Question("check", {"meter": number, **animal})
    rows = (PlacedReading(value, place.narrowed(), place.text),)
    names = ("animal", "tube") if asked.command != "meter" else tuple(asked.values)
    rest = {n: asked.values[n] for n in names if n in asked.values and n not in _OF_A_READING}
    return Question("meter", {**rest, "readings": rows})


def cold_told(
    values: Mapping[str, object],
    known: Mapping[str, object],
    told: Mapping[str, object],
    line: str,
    context: Context,
    preferences: Preferences,
) -> Question | None:
    """Return the question of the night: a figure after how cold it may get is how cold it gets."""
    night = command_named("night")
    assert night is not None
    cold = changed_by(
        night, carried("night", {**known, **values}), told, line, context, preferences
    )
    return cold if isinstance(cold, Question) and "room" in cold.values else None
