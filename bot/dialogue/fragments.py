"""What a few words change of the question before: a figure, a name, a lid, 'not sure'."""

import re
from collections.abc import Iterator, Mapping

from bot.command import Command
from bot.dialogue.figures import (
    OF_A_MESH,
    Before,
    bare_degrees,
    either_meant,
    figure_told,
    others_told,
    without_lengths,
)
from bot.dialogue.heat_told import read_there, wished_for
from bot.dialogue.phrases import asks, names_a_season
from bot.dialogue.places import place_named
from bot.dialogue.read_anew import is_heard, over, read_anew
from bot.dialogue.told import (
    all_told,
    named_again,
    part_told,
    states_now,
    told_beside,
    told_in_words,
    with_name_before,
)
from bot.language.arranged import lamp_beside_in
from bot.language.hearing import FactName
from bot.language.lamps import read_tube
from bot.language.quantities import Measure
from bot.language.there import There, there_in
from bot.language.unsure import NOT_SURE, SomeMesh, Unsure
from bot.layered import Layered
from bot.preferences import Context, Preferences
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.queries.typed import typed, typed_all
from bot.question_context import read_alone
from bot.routes.asked import Asked
from bot.routes.filled import is_asked_freely
from bot.routes.routing import asked_in

__all__ = ["change_wished", "changed_by", "way_asked"]

_STRENGTH = re.compile(
    r"\b(?:the|a|an|with|mit|die|der) (2|4|5|6|7|8|10|12|14)(?: percent)?\b(?! ?\w*(?:in|cm|h)\b)"
)
_SET_UPS = ("check", "next")
# No figure of warmth or of a tube changes these.
_NO_READINGS = ("needs", "lamp", "hours")
_GOES_TO = re.compile(
    r"\b(?:go|going|went|down|up|swap\w*|chang\w*|switch\w*|wechsel\w*)(?: (?:it|back|down|up))* "
    r"(?:to|auf) (?:an? |the |eine? )?(2|4|5|6|7|8|10|12|14)(?: ?%| percent)?\b"
    r"(?! ?\w*(?:in|cm|h|f|c)\b)"
)
_WHAT_IF = re.compile(r"\b(?:what (?:about|if)|instead|stattdessen|would|was ist mit)\b")
_NEEDS_A_SHARE = ("tube", "check", "plan")
# What a set-up is told with that is no option of its question.
_PARTS = (
    *(FactName.ENCLOSURE, FactName.ENCLOSURE_LENGTH, FactName.VOLUME, FactName.MATERIAL),
    *(FactName.LID, FactName.WATTS, FactName.OTHER_WATTS),
)
_WARMER = re.compile(
    r"\b(?:hotter|warmer|cooler|colder|(?:bring|get|turn) (?:it|that|this) (?:down|up)|raise it"
    r"|lower it|fix (?:it|that|this)"
    r"|what (?:do|can) i do(?! first| next)|what now|wärmer|heißer|kühler|kälter|get (?:it"
    r"|that) (?:lower|higher)|cool (?:it|this) down"
    r"|(?:krieg|bekomm|bring)\w* .{0,12}(?:runter|rauf|hoch|kühler|wärmer)|wie kühl\w* ich)\b"
)
# Of these the room is asked for, and no room is warmer or has a number between.
_OF_A_ROOM = ("watts", "air")
_BY_NAME = re.compile(r"(?<![\w.,])(2|4|5|6|7|8|10|12|14)er\b(?! (?:pack|karton))")
_PERCENT = re.compile(
    r"(?<![\w.,])(2|4|5|6|7|8|10|12|14)(?:[.,]0)? ?(?:%|percent\b|prozent\b|er\b(?! (?:pack"
    r"|karton)))"
)
_OF_A_TUBE = ("animal", "distance", "screen", "enclosure", "state", "tubes", "gap")
_DONE = re.compile(r"\b(?:done|fixed|did it|did that|sorted|now|after|jetzt?|erledigt|gemacht)\b")
_TO_COOL = re.compile(
    r"\bhow (?:do|can|should|to|would)\b.{0,20}\b(?:cool|lower|reduce|(?:bring|get|turn) (?:it"
    r"|that|this"
    r"|them|the \w+(?: \w+)?) (?:down|cooler|lower|colder))\b"
    r"|\bwie (?:krieg|bekomm|bring|mach)\w*.{0,22}\b(?:runter|kühler|kälter)\b|\bwie kühl\w*"
    r"|\bhow to (?:cool|lower)\b"
)
_TO_WARM = re.compile(
    r"\bhow (?:do|can|should|to|would)\b.{0,20}\b(?:warm|heat|raise|(?:bring|get) (?:it|that"
    r"|this|them"
    r"|the \w+(?: \w+)?) (?:up|warmer|hotter|higher))\b(?! at night)"
    r"|\bwie (?:krieg|bekomm|bring|mach)\w*.{0,22}\b(?:rauf|hoch|wärmer|heißer)\b"
)
_HAS_WATTS = re.compile(r"^[^\d]{0,40}\b\d{2,3} ?w(?:atts?)?\b[^\d]{0,20}$")
_DIMMING = {"page": "dimmers-and-wattage", "part": "What a dimmer is for"}


def change_wished(command: Command, given: Mapping[str, object], line: str) -> dict[str, object]:
    """Return the options of the question how a basking spot gets warmer or cooler, if it is asked.

    What was read of it before goes along.
    """
    surface = given.get("basking") if command.name in ("temps", "check") else None
    if not surface or not _WARMER.search(line.lower()):
        return {}
    told = {"surface": surface, "air": given.get("warm"), "animal": given.get("animal")}
    return {option: value for option, value in told.items() if value}


def way_asked(line: str) -> Question | None:
    """Return the part of a page that says how it gets cooler or warmer, if a line asks that."""
    plain = line.lower()
    if _TO_COOL.search(plain):
        return Question("guide", {"page": "the-cool-end", "part": "Too warm?"})
    if _TO_WARM.search(plain):
        return Question("guide", {"page": "the-basking-spot", "part": "How to set it"})
    return None


def changed_by(
    command: Command,
    given: Mapping[str, object],
    told: Mapping[str, object],
    line: str,
    context: Context,
    preferences: Preferences,
) -> Question | Layered | None:
    """Return the question before with what a line changes of it; None where it changes nothing.

    ``told`` is all that it tells. A number that may be two things is asked about.
    """
    if not is_asked_freely(command.name):
        return None
    asked = asked_in(AskQuery(question=line), context)
    missing = command.query.lacking(typed_all(given), preferences.own)
    before = Before(command.name, command.query, told, missing)
    if either := either_meant(before, given, line, preferences):
        return either
    tells_a_tube = asked.told.tube is not None and asked.at_a_distance
    has_figure = asked.warmth or tells_a_tube or bool(asked.degrees or bare_degrees(line))
    if command.name in _NO_READINGS and has_figure and not asks(line):
        return None
    if command.name == "temps" and (wish := wished_for(given, line)):
        return wish
    if command.name in _OF_A_ROOM and (hot := read_there(line, asked, given.get("distance"))):
        animal = {"animal": given["animal"]} if "animal" in given else {}
        return Question("temps", {**animal, **dict(part_told("temps", asked)), **hot})
    found = _found(before, asked, given, context)
    strength = _share_told(line) if asked.told.tube is None else asked.told.tube.value
    if other := _of_another_question(before, given, found, strength, line, preferences):
        return other
    figure = None if "age" in found else figure_told(before, line, preferences)
    changed = _changed(before, given, found, figure, line, preferences)
    is_grown = "state" in before.names and states_now(asked) == frozenset()
    return Question(command.name, given) if changed is None and is_grown else changed


def _changed(
    before: Before,
    given: Mapping[str, object],
    found: dict[str, object],
    figure: tuple[str, str, object] | None,
    line: str,
    preferences: Preferences,
) -> Question | None:
    """Return the question before with what was found of it and the figure of a line."""
    name, names = before.name, before.names
    is_mesh_untold = name in _NEEDS_A_SHARE and isinstance(found.get("screen"), Unsure)
    if is_mesh_untold:
        found = _with_mesh_untold(name, given, found)
    if figure is not None and (figure[0] == name or not found):
        found = others_told(before, line, preferences) | found
    of_a_season = figure is None and names_a_season(line) and bare_degrees(line)
    if of_a_season and "room" in names and "room" not in found:
        return Question(name, {**given, **found, "room": of_a_season})
    if (
        figure is None
        and name == "temps"
        and (read := read_anew(before, given, found, line, preferences))
    ):
        return read
    told_already = figure is not None and is_heard(typed(figure[2]), found)
    if figure is not None and not (told_already or _is_told(figure, found)):
        other, option, value = figure
        if other != name or option in names:
            found.setdefault(option, value)
            return Question(other, over(given, found))
    return Question(name, over(given, found)) if found or is_mesh_untold else None


def _of_another_question(
    before: Before,
    given: Mapping[str, object],
    found: Mapping[str, object],
    asked_tube: object,
    line: str,
    preferences: Preferences,
) -> Question | None:
    """Return what a line asks that the question before cannot hold; None where it can."""
    if before.name == "basking" and "surface" in given and (hot := _done_to(line)):
        animal = {"animal": given["animal"]} if "animal" in given else {}
        return Question("temps", {**animal, "basking": hot})
    if before.name == "tube" and (tube := asked_tube):
        name = "uvi" if "distance" in given else "distance"
        unsure = dict.fromkeys(("reflector", "screen"), Unsure(NOT_SURE))
        here = {n: v for n, v in {**given, **found}.items() if n in _OF_A_TUBE}
        return Question(name, {**unsure, "tube": tube, **here})
    if before.name == "watts" and not found and _HAS_WATTS.match(line.lower()):
        # Whoever has another size is told what a dimmer can do.
        return Question("guide", _DIMMING)
    return (
        _under_another(before, given, found, line, preferences) if before.name == "meter" else None
    )


def _share_told(line: str) -> object:
    """Return the strength of a tube that a line tells by its percent, and nothing of a mesh."""
    found = _PERCENT.search(line.lower())
    return read_tube(f"{found[1]}%") if found and not OF_A_MESH.search(line.lower()) else None


def _done_to(line: str) -> str:
    """Return what a basking spot shows after something was done to it; else nothing."""
    if not _DONE.search(line.lower()) or place_named(line):
        return ""
    return bare_degrees(without_lengths(line).replace("grad", "").replace("degrees", ""))


def _under_another(
    before: Before,
    given: Mapping[str, object],
    found: Mapping[str, object],
    line: str,
    preferences: Preferences,
) -> Question | None:
    """Return what another tube would give where a reading was taken, if a line asks for one."""
    rows = read_alone(before.query, "readings", given.get("readings"), preferences)
    tube = found.get("tube")
    wishes = _GOES_TO.search(line.lower()) or _WHAT_IF.search(line.lower())
    if tube is None or not wishes or not isinstance(rows, tuple) or len(rows) != 1:
        return None
    unsure = dict.fromkeys(("reflector", "screen"), Unsure(NOT_SURE))
    animal = {"animal": given["animal"]} if "animal" in given else {}
    return Question("uvi", {"tube": tube, **unsure, **animal, "distance": rows[0].distance})


def _found(
    before: Before, asked: Asked, given: Mapping[str, object], context: Context
) -> dict[str, object]:
    """Return what a line tells of the options of the question before, the surest first."""
    names, line = set(before.query.examples()), asked.said
    tellers = (
        all_told(before.name, asked),
        told_in_words(line, asked, before.lacking),
        told_beside(before.name, asked, context.day),
    )
    found: dict[str, object] = {}
    for told in tellers:
        found |= {n: value for n, value in told if n in names and n not in found}
    if "animal" in names and "animal" not in found:
        kin, again = asked.unclear_animal, named_again(line)
        named_before = with_name_before(typed(given.get("animal", "")), kin.words) if kin else ""
        found |= {"animal": again or named_before} if again or named_before else {}
    if more := ", ".join(_of_set_up(before.name, line, asked)):
        found["setup"] = _with_words(given, more)
    states = states_now(asked) if "state" in names else None
    if states is not None and typed(states) != typed(given.get("state", "")):
        found["state"] = states
    wished = _GOES_TO.search(line.lower())
    strength = wished or _STRENGTH.search(line.lower()) or _BY_NAME.search(line.lower())
    if strength and "tube" in names and (wished or "tube" not in found):
        found["tube"] = read_tube(f"{strength[1]}%")
    return found


def _with_mesh_untold(
    name: str, given: Mapping[str, object], found: Mapping[str, object]
) -> dict[str, object]:
    """Return what is told where a question takes no mesh without its share."""
    rest = {option: value for option, value in found.items() if option != "screen"}
    if name == "tube":
        return dict(found)
    if name == "check" and isinstance(found["screen"], SomeMesh):
        return {**rest, "setup": _with_words(given, "mesh")}
    return rest


def _of_set_up(name: str, line: str, asked: Asked) -> Iterator[str]:
    """Yield what a line tells of a whole set-up that no option holds, in words that are heard."""
    if name in _SET_UPS and (hang := lamp_beside_in(line)):
        yield hang.value
    for part in _PARTS if name in _SET_UPS else ():
        yield from (said.words.strip(" .") for said in asked.told.all(part))
    if name == "next":
        yield from sorted(one.value for one in there_in(line) - {There.TOGETHER})


def _with_words(given: Mapping[str, object], more: str) -> str:
    """Return the words of a set-up with some more."""
    return ", ".join(filter(None, (typed(given.get("setup", "")).strip("“”"), more)))


def _is_told(figure: tuple[str, str, object], found: Mapping[str, object]) -> bool:
    """Whether the figure of a line was heard already, at the place that it is of."""
    _, option, value = figure
    return option in found or _alike(value) in map(_alike, found.values())


def _alike(value: object) -> object:
    """Return a value as another is held against it, without the words it was read from."""
    if isinstance(value, Measure):
        return value.dimension, round(value.low, 6), round(value.high, 6)
    return typed(value).replace(" ", "").lower()
