"""The temperatures that were told on the way, and the unit that they were told in."""

import re
from collections.abc import Mapping
from dataclasses import dataclass

from bot.commands import command_named
from bot.dialogue.another import names_of
from bot.facts import Say, Temp, degrees
from bot.language.quantities import Measure, read_temperature
from bot.language.screens import Blocks, NoScreen
from bot.language.units import Units
from bot.language.unsure import SomeMesh, Unsure
from bot.preferences import Preferences
from bot.queries.heat import TempsQuery
from bot.queries.question import Question
from bot.queries.typed import typed
from bot.question_context import read_alone
from calc.animal import Target
from calc.animals import animals
from calc.naming import Known, Several, named

__all__ = [
    "LAMP_DISTANCE",
    "LAMP_WATTS",
    "READINGS",
    "completed",
    "judged_so",
    "kept_readings",
    "readings_told",
    "unit_before",
]

READINGS = ("basking", "cool", "warm", "night", "water")
"""Where a temperature was read, by the option."""
LAMP_DISTANCE, LAMP_WATTS = "lamp_distance", "lamp_watts"
"""Under these a conversation knows the heat lamp that was told."""
_OF_A_SPOT = {"surface": "basking", "air": "warm"}
_HOLD_ALL = ("temps", "check", "next")
_SPOT, _STATE = "basking", "state"
_HEATS = (*READINGS, *_OF_A_SPOT, "room", "reading")
_OF_A_HEAT_LAMP = {"distance": LAMP_DISTANCE, "watts": LAMP_WATTS}
_LAMP = (LAMP_DISTANCE, LAMP_WATTS)
_OF_LAMPS = ("basking", "watts")
_NEEDS, _NIGHT, _ROOM = "needs", "night", "room"
# Which reading is judged where what an animal needs was asked about.
_JUDGED = {
    "water": ("water",),
    "basking": ("basking", "warm"),
    "cool": ("cool",),
    "warm": ("warm",),
    "": READINGS,
}
_LEAST_OF_MESH, _NO_MESH = Blocks(0.30, "30%"), NoScreen("none")
# So near to what is wanted is what was read [K], and so far from it nobody reads anything.
_NEAR_K, _FAR_K = 8.0, 15.0
_BARE = re.compile(r"\d{1,3}(?:\.\d)?")


@dataclass(frozen=True, slots=True)
class TakenAs:
    """A bare number as it was taken."""

    degrees: Temp


def readings_told(question: Question) -> dict[str, object]:
    """Return the temperatures that a question tells, by their places, and its heat lamp."""
    values = question.values
    if question.command in _OF_LAMPS:
        names = {**_OF_A_SPOT, **_OF_A_HEAT_LAMP}
        values = {names.get(name, name): value for name, value in values.items()}
    return {name: values[name] for name in (*READINGS, *_LAMP) if values.get(name)}


def kept_readings(question: Question, known: Mapping[str, object]) -> Mapping[str, object]:
    """Return what is known after a question: its readings alone where it holds all of them.

    Another animal lives at other ones.
    """
    told = readings_told(question)
    before, now = (typed(each.get("animal", "")) for each in (known, question.values))
    another = bool(now) and _is_named(before) and now != before
    gone: set[str] = set(READINGS) if another or (question.command in _HOLD_ALL and told) else set()
    if another:
        gone |= {*_LAMP, _STATE}
    if _STATE in question.values and not typed(question.values[_STATE]):
        gone.add(_STATE)
    return {name: value for name, value in known.items() if name not in gone} | told


def completed(
    meant: Question,
    asked: Question | None,
    known: Mapping[str, object],
    before: Mapping[str, object],
    preferences: Preferences,
) -> tuple[Question, tuple[Say, ...]]:
    """Return a question with what was told before it and belongs to it, and what is said of that.

    ``asked`` is the question before, ``before`` what was known before this line.
    """
    if asked is not None and asked.command == meant.command == _NEEDS:
        named_now = _is_named(typed(meant.values.get("animal", "")))
        if named_now and not _is_named(typed(asked.values.get("animal", ""))):
            meant = judged_so(meant, known) or meant
    if asked is None or asked.command != meant.command:
        meant = _with_readings(meant, known)
    meant, beside = _with_share(meant)
    meant, more = _in_unit_before(meant, unit_before(asked, before, preferences), preferences)
    return meant, (*beside, *more)


def _with_share(meant: Question) -> tuple[Question, tuple[Say, ...]]:
    """Return the question which tube suits with what takes least of its light, if nobody knows.

    No tube that is weak enough for it is too strong.
    """
    screen = meant.values.get("screen")
    if meant.command != "tube" or not isinstance(screen, Unsure):
        return meant, ()
    share = _LEAST_OF_MESH if isinstance(screen, SomeMesh) else _NO_MESH
    say = Say("talk-mesh-least" if isinstance(screen, SomeMesh) else "talk-mesh-none")
    return Question("tube", {**meant.values, "screen": share}), (say,)


def judged_so(question: Question, known: Mapping[str, object]) -> Question | None:
    """Return the question that judges what was read, where what is needed there was asked about.

    None where nothing was read there.
    """
    along = {n: question.values[n] for n in ("animal", "state") if n in question.values}
    about = typed(question.values.get("about", ""))
    if about == _NIGHT:
        room = known.get(_ROOM) or known.get(_NIGHT)
        return Question(_NIGHT, {**along, _ROOM: room}) if room else None
    read = {name: known[name] for name in _JUDGED.get(about, ()) if name in known}
    return Question("temps", {**along, **read}) if read else None


def _wanted(animal: str) -> Mapping[str, Target | None]:
    """Return what an animal wants at each place, by the options; nothing of one without figures."""
    found = named(animal).what if animal else None
    candidates = found.candidates if isinstance(found, Several) else ()
    slugs = [found.slug] if isinstance(found, Known) else [each.slug for each in candidates]
    among = [animals()[slug] for slug in slugs if slug in animals()]
    one = among[0] if len(among) == 1 else None
    if one is None:
        return {}
    spot, air = one.basking_surface_c, one.warm_air_c
    return {
        **dict.fromkeys(("basking", "surface"), spot or air),
        **dict.fromkeys(("warm", "air"), air),
        "cool": one.cool_air_c,
        "water": one.water_c,
        **dict.fromkeys(("room", "night"), one.night_floor_c),
    }


def _likely(text: str, wanted: Target | None) -> Units | None:
    """Return the only unit in which a number is near what is wanted; None: none, or both."""
    if wanted is None:
        return None
    off = {
        unit: max(wanted.low - at, at - wanted.high, 0.0)
        for unit in Units
        for at in (read_temperature(text, unit).middle,)
    }
    near, far = sorted(off, key=lambda unit: off[unit])
    return near if off[near] <= _NEAR_K and off[far] >= _FAR_K else None


def _is_named(animal: str) -> bool:
    return bool(animal) and isinstance(named(animal).what, Known)


def _with_readings(question: Question, known: Mapping[str, object]) -> Question:
    """Return a question with the temperatures that were told before it and fit in it."""
    if question.command in _OF_LAMPS:
        options = {**_OF_A_HEAT_LAMP, **(_OF_A_SPOT if question.command == _SPOT else {})}
        before = {name: known[of] for name, of in options.items() if of in known}
        if question.command != _SPOT:
            before.pop("watts", None)
    elif question.command in _HOLD_ALL:
        command = command_named(question.command)
        assert command is not None
        here = names_of(command)
        before = {name: known[name] for name in READINGS if name in known and name in here}
    else:
        return question
    return Question(question.command, {**before, **question.values})


def unit_before(
    asked: Question | None, known: Mapping[str, object], preferences: Preferences
) -> Units | None:
    """Return the unit in which temperatures were told before; None where none was."""
    told = {**known, **(readings_told(asked) | dict(asked.values) if asked else {})}
    for name in (*READINGS, "room"):
        read = read_alone(TempsQuery, name, told[name], preferences) if name in told else None
        if isinstance(read, Measure) and read.system is not None:
            return read.system
    return None


def _in_unit_before(
    question: Question, units: Units | None, preferences: Preferences
) -> tuple[Question, tuple[Say, ...]]:
    """Return a question whose bare degrees may be either unit in the one that was told before.

    What was taken so is said beside its answer.
    """
    command = command_named(question.command)
    if command is None:
        return question, ()
    wanted = _wanted(typed(question.values.get("animal", "")))
    texts = {
        name: value.text if isinstance(value, Measure) and value.assumed else typed(value)
        for name, value in question.values.items()
        if name in _HEATS
    }
    doubtful = {
        name: text
        for name, text in texts.items()
        if _BARE.fullmatch(text) and read_alone(command.query, name, text, preferences) is None
    }
    # Who writes German means Celsius; what was heard with a unit that nobody told is said too.
    usual = units or (Units.CM if preferences.spoken == "de" else None)
    taken: dict[str, Measure] = {}
    for name, text in doubtful.items():
        value = question.values[name]
        if isinstance(value, Measure):
            taken[name] = value
        elif unit := usual or _likely(text, wanted.get(name)):
            taken[name] = read_temperature(text, unit)
    beside = tuple(
        Say("talk-taken-as" if units else "talk-taken-likely", TakenAs(degrees(each.middle)))
        for each in taken.values()
    )
    return Question(question.command, {**question.values, **taken}), beside
