"""What is put into each option: what works, what nearly works, and what is meant badly."""

import json
import tomllib
from collections.abc import Mapping
from functools import cache
from pathlib import Path

from bot.command import Command
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.understood import take_apart
from calc.animals import animals
from tests.bot.language.test_hostile import HOSTILE

__all__ = ["FREE", "examples_of", "given_of", "packed", "pool"]

_FREE = Path(__file__).parents[1] / "bot" / "free_questions.toml"
FREE = [
    str(row["say"])
    for rows in tomllib.loads(_FREE.read_text(encoding="utf-8")).values()
    for row in rows
]
_LENGTHS = [
    *("14in", "35cm", "1'2\"", "10-12 in", "0in", "-1in", "0.5cm", "99m", "1e3in", "12", "15 lb"),
    *("not sure", "half a metre", "14 in, or 15", "1/0 in", "½ ft"),
]
_AIR = ["70F", "21C", "62", "24", "35", "40", "-40", "-300C", "999F", "68-72F", "warm", "70"]
_SURFACE = ["98F", "38C", "98", "38", "50", "60", "0", "-5", "1000C", "95-110F", "hot"]
_READINGS = [
    *("4.2 at 12 in", "4.2 at 12 in, 2.9 at 15 in", "4.2 at 12, 2.9 at 15", "0 at 12in"),
    *("4.2 at 0in", "9 at 12in, 9 at 12in", "2 at 10in, 5 at 20in", "12 in 4.2", "4.2", "at at"),
    ", ".join(["4.2 at 12 in"] * 60),
]
_DATED = [
    *("2026-01-03 4.2, 2026-03-01 3.9", "2026-01-03 4.2", "2026-13-40 4", "03/04/2026 4.2"),
    *("2026-01-03 4.2, 2026-01-03 3.9", "2026-03-01 3.9, 2026-01-03 4.2", "4 4", "9999-12-31 1"),
    *("0001-01-01 4, 2026-01-01 3", "2026-01-03 0, 2026-03-01 0"),
]
_SIZES = [
    *("48x24x24in", "120x60x60cm", "4ft", "48", "4x2x2", "4x2x2 ft", "120 by 60 by 60", "0x0x0in"),
    *("1x1x1in", "9999x1x1m", "48x24", "48x24x24x24in", "xxx", "40 gallon", "10", "11", "0"),
]
_TIMES = ["6 months", "new", "8", "100 years", "-1 month", "2026-01-01", "3 hours", "30 h", "0"]
_UVI = ["4", "3-5", "5-3", "0", "0-0", "-1", "1000", "1e9", "uvi 4", "not sure", "0.001", "40-50"]
_SCREENS = [
    *("none", "45%", "passes 55%", "blocks 0%", "100%", "18x16 0.011in", "18x16 9in", "mesh"),
    *("mesh lid", "not sure", "?", "I don’t know", "1000x1000 1in", "glass", "none, 45%"),
]
_POOL: dict[str, list[str]] = {
    "age": _TIMES,
    "air": _AIR,
    "basking": _SURFACE,
    "cool": _AIR,
    "day": ["today", "yesterday", "tomorrow", "2026-05-01", "2026-02-30", "1.1.1", "0"],
    "dimmer": ["90%", "0%", "100%", "101%", "-1%", "0.5", "1e3%"],
    "enclosure": _SIZES,
    "every": ["3 months", "30 days", "0 days", "-1 day", "1000 years", "month"],
    "first": ["2026-05-04", "04.05.2026", "never", "first"],
    "heat": _LENGTHS,
    "holder": ["100W", "0W", "-5W", "1e9W", "60", "100F"],
    "hours": ["10", "12 hours", "0", "24", "25", "-1", "8:00", "10-12"],
    "kind": ["radiant panel", "heat mat", "heat rock", "lava lamp"],
    "lamp_on": _TIMES,
    "latitude": ["home", "27S", "40N", "90N", "91N", "0", "-0", "66.6", "lat"],
    "length": _LENGTHS,
    "meter": _UVI,
    "month": ["December", "13", "0", "6", "feb", "smarch"],
    "months": ["own", "turned", "both"],
    "name": ["Pebble’s box", "P", "x" * 33, "a/b", ".", "null", "'; DROP TABLE keeper; --", "{}"],
    "night": _AIR,
    "number": ["1", "0", "-1", "99999999999999999999", "1.5", "one"],
    "on": ["8:00", "25:00", "7am", "noon", "8", "-1:00"],
    "page": ["screens", "sreens", "../screens", "screens.md", "index"],
    "patch": _LENGTHS,
    "range": [*_SURFACE, *_UVI],
    "room": _AIR,
    "safe": _LENGTHS,
    "setting": ["95%", "0.95", "0", "2", "9.5"],
    "setup": FREE[:40],
    "question": FREE,
    "screen": _SCREENS,
    "screens": ["none; 45%", ";", "none; none", "; ".join(_SCREENS), "45%"],
    "site": ["https://guide.example", "http://a", "javascript:alert(1)", "https://x/?q=<b>", "//a"],
    "surface": _SURFACE,
    "tube": ["12%", "6%", "10.0", "5.0", "0%", "100%", "1000", "12% or 6%", "T5", "not sure"],
    "tubes": ["1", "2", "4", "0", "5", "1.5", "6%; 12%", "6%; 12%; 14%; 10%; 5%; 2%; 7%", ";"],
    "until": ["in 2 days", "2026-06-01", "tomorrow", "in 1000 years", "yesterday", "now"],
    "uvi": _UVI,
    "value": [*_LENGTHS, *_SURFACE, "difference 10F", "10F difference", "delta 10"],
    "want": _SURFACE,
    "warm": _AIR,
    "watts": ["75W", "0W", "75", "1e9", "-1", "40-60W", "75V"],
    "weeks": ["4", "8", "26", "0", "1e9"],
    "when": ["in 3 months", "2026-06-01 8:00", "8:00", "in 1e9 days", "yesterday", "2026-02-30"],
    "without": _READINGS,
    "words": ["beardie, 12% tube in a polished hood, no screen", *FREE[:10]],
    "wood": _SURFACE,
    "year": ["2026", "0", "9999", "10000", "-5", "26"],
    "zone": ["Europe/Berlin", "UTC", "America/Chicago", "Mars/Base", "../etc/passwd", "+25:00"],
}
_SHARED = {"across", "back", "distance", "platform", "start"}
_ANYWHERE = ["not sure", "none", "yes", "", " ", "—", "4.2 at 12 in", "14in", "12%", *HOSTILE]


def pool(command: Command, option: str) -> list[str]:
    """Return what may be put into an option: what is its own first, then what is hostile."""
    asked = next(o for o in command.query.options() if o.name == option)
    own = [*([asked.example] if asked.example else []), *asked.choices]
    if option in _SHARED:
        own += _LENGTHS
    elif option == "readings":
        own += _DATED if command.name == "decline" else _READINGS
    elif option == "animal":
        own += [*(animal.name for animal in animals().values()), "dragon", "cat", "beardie"]
    own += _POOL.get(option, [])
    if asked.document:
        own += [json.dumps({"noonstone": kind, "version": 1}) for kind in ("keeper", "server")]
    return [*own, *_ANYWHERE]


def packed(command: Command, given: Mapping[str, str]) -> str:
    """Return the texts of all options as one text, in their order."""
    return "\x1f".join(given.get(option.name, "") for option in command.query.options())


def given_of(command: Command, text: str) -> dict[str, str]:
    """Return the options that were packed into a text."""
    names = [option.name for option in command.query.options()]
    given = dict(zip(names, text.split("\x1f"), strict=False))
    return {name: value for name, value in given.items() if value}


@cache
def examples_of(command: Command) -> tuple[dict[str, str], ...]:
    """Return the options of each example of a command, and of one that fills every option."""
    found = []
    for example in command.examples:
        apart = take_apart(example, Preferences())
        if isinstance(apart, Question) and apart.command == command.name:
            found.append(apart.given)
    options = command.query.options()
    return (*found, {option.name: option.example for option in options if option.example})
