"""What the questions about saved data say alike: a set-up in words, a moment, a file taken back."""

from datetime import date, datetime
from typing import TypeVar
from zoneinfo import ZoneInfo

from pydantic import ValidationError
from pydantic_core import ErrorDetails

from bot.answers.figures import calendar_day, length, number, percent, temperature
from bot.kept.keeper import KeptScreen, Reading, Setup
from bot.kept.values import Kept
from bot.language.dates import read_date
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Units
from bot.language.shown import shown
from bot.language.tongue import Tongue
from bot.language.words import join_line
from bot.reply import Document, Reply, Row
from calc.animals import animal_name
from calc.quantities import Quantity

__all__ = [
    "MOST_IMPORT",
    "day_of",
    "exported",
    "language_told",
    "measured_name",
    "moment_told",
    "question_of",
    "read_file",
    "reading_told",
    "screen_words",
    "setup_rows",
]

MOST_IMPORT = 2_000_000
"""More characters than all that one person or group may keep makes as a file."""

_NAMES = {
    Quantity.UVI: "UV index",
    Quantity.BASKING_SURFACE: "basking surface",
    Quantity.WARM_AIR: "warm-end air",
    Quantity.COOL_AIR: "cool-end air",
    Quantity.NIGHT_AIR: "night low",
}
_Kept = TypeVar("_Kept", bound=Kept)
_REASONS = {
    "json_invalid": "it is no JSON, or its end is missing",
    "missing": "it is missing",
    "extra_forbidden": "it is not known here",
    "enum": "it is none of the words that it may be",
    "literal_error": "it is none of the words that it may be",
}


def day_of(text: str, today: date, option: str) -> date:
    """Return a day as typed, today where nothing was; a day that is not here yet is refused."""
    try:
        day = read_date(text or "today", today)
    except NotUnderstoodError as error:
        raise NotUnderstoodError(error.read, error.accepted, error.example, option) from error
    if day > today:
        raise NotUnderstoodError(text, "a day that has been", str(today), option)
    return day


def moment_told(moment: datetime, zone: str) -> str:
    """Return a moment on the clock of a zone."""
    local = moment.astimezone(ZoneInfo(zone))
    return f"{calendar_day(local.date())} at {local:%H:%M} ({zone})"


def reading_told(reading: Reading, units: Units) -> str:
    """Return the value of a reading in both units, and where it was taken."""
    if reading.of is not Quantity.UVI:
        return temperature(reading.value, units)
    at = f" at {length(reading.distance_m, units)}" if reading.distance_m else ""
    return f"UVI {number(reading.value, 0.01)}{at}"


def language_told(tongue: Tongue | None) -> str:
    """Return the name of a language, or nothing."""
    return {None: "", Tongue.ENGLISH: "English", Tongue.GERMAN: "Deutsch"}[tongue]


def measured_name(of: Quantity) -> str:
    """Return what a reading is of, in words."""
    return _NAMES[of]


def setup_rows(setup: Setup, units: Units) -> tuple[Row, ...]:
    """Return what is told of a set-up, a row a fact."""
    told = [("Animal", animal_name(setup.animal) if setup.animal else "")]
    tube = [_lamp_words(setup)]
    tube.append({"polished": "polished reflector", "plain": "plain fixture"}.get(_of(setup), ""))
    tube.append(f"length {length(setup.tube_length_m, units)}" if setup.tube_length_m else "")
    tube.append(f"in use since {calendar_day(setup.tube_since)}" if setup.tube_since else "")
    told.append(("Tube", ", ".join(filter(None, tube))))
    told.append(("Side by side", _tubes_words(setup, units)))
    told.append(("Screen", screen_words(setup.screen, units) if setup.screen else ""))
    told.append(("Lid", f"{setup.lid}: no useful UV comes through" if setup.lid else ""))
    told.append(("Tube to back", length(setup.distance_m, units) if setup.distance_m else ""))
    sides = (setup.length_m, setup.depth_m, setup.height_m)
    told.append(("Enclosure", " × ".join(length(side, units) for side in sides if side)))
    return tuple(Row(label=label, text=text) for label, text in told if text)


def _lamp_words(setup: Setup) -> str:
    percent = f"{number(setup.tube_percent, 0.1)} %" if setup.tube_percent else ""
    if setup.lamp is None:
        return f"T5 HO, {percent}" if percent else ""
    return f"{setup.lamp.value}{f', {percent} on its label' if percent else ''}"


def _tubes_words(setup: Setup, units: Units) -> str:
    if setup.tubes is None or setup.tubes < 2:
        return ""
    gap = f", {length(setup.gap_m, units)} from middle to middle" if setup.gap_m else ""
    return f"{setup.tubes} of them{gap}"


def _of(setup: Setup) -> str:
    return setup.reflector or ""


def screen_words(screen: KeptScreen, units: Units) -> str:
    """Return what is between, in words."""
    if screen.pane:
        return f"{screen.pane}, through which no useful UV comes"
    if screen.passes is not None:
        return f"blocks {percent(1.0 - screen.passes)} of the UV"
    if screen.wire_m is None:
        return "nothing between"
    return f"a weave of {length(screen.wire_m, units)} wire"


def question_of(setup: Setup) -> str:
    """Return the question that a set-up can be asked about, empty if too little is known."""
    of_class = setup.tube_percent and setup.reflector and setup.screen
    if not (of_class or setup.lamp):
        return ""
    parts = {
        "distance": f"{setup.distance_m * 100:.4g}cm" if setup.distance_m else "",
        "tube": f"{setup.tube_percent:g}%" if setup.tube_percent and not setup.lamp else "",
        "lamp": setup.lamp.value if setup.lamp else "",
        "reflector": setup.reflector or "",
        "screen": _between(setup.screen) if setup.screen else "",
        "animal": animal_name(setup.animal) if setup.animal else "",
        "length": f"{setup.tube_length_m * 100:.4g}cm" if setup.tube_length_m else "",
        "tubes": str(setup.tubes) if (setup.tubes or 1) > 1 else "",
        "gap": f"{setup.gap_m * 100:.4g}cm" if setup.gap_m and (setup.tubes or 1) > 1 else "",
    }
    told = {name: text for name, text in parts.items() if text}
    return join_line("uvi" if setup.distance_m else "distance", told)


def _between(screen: KeptScreen) -> str:
    if screen.pane:
        return screen.pane
    if screen.wire_m is not None and screen.mesh_x_per_m and screen.mesh_y_per_m:
        per_inch = [f"{x * 0.0254:.3g}" for x in (screen.mesh_x_per_m, screen.mesh_y_per_m)]
        return f"{'x'.join(per_inch)} {screen.wire_m * 1000:.3g}mm"
    return "none" if screen.passes is None else f"passes {screen.passes * 100:.3g}%"


def exported(command: str, title: str, name: str, value: Kept) -> Reply:
    """Return the reply that hands a file over."""
    # Lines are short, so that a terminal breaks none.
    text = value.model_dump_json(indent=1, exclude_none=True)
    return Reply(
        command=command,
        status="ok",
        title=title,
        answer=f"Here is the file, {name}. Keep it where only you can read it.",
        document=Document(name=name, text=f"{text}\n"),
        steps=(f"Take it back with: {command.split()[0]} import file:{name}",),
    )


def read_file(kind: type[_Kept], text: str, command: str) -> _Kept:
    """Return the checked value of a file, or refuse it with the first thing that is wrong."""
    wanted = "a JSON file that an export made, not changed by hand into something else"
    example = f"{command} file:export.json"
    if len(text) > MOST_IMPORT:
        raise NotUnderstoodError("a huge file", f"{wanted}, of two megabytes at most", example)
    try:
        return kind.model_validate_json(text)
    except ValidationError as error:
        first = error.errors()[0]
        where = " → ".join(shown(str(part)) for part in first["loc"]) or "the file"
        raise NotUnderstoodError(where, f"{wanted} ({_reason(first)})", example, "file") from error


def _reason(error: ErrorDetails) -> str:
    """Return what is wrong with a part of a file, in words that are not for programmers."""
    plain = _REASONS.get(error["type"], "") or error["msg"].removeprefix("Value error, ")
    return "".join(character for character in plain if character not in "<>`|*_~@")
