"""What a line does, whose kind is known: it tells a value, asks on, or is about the answer."""

import re
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import cache
from importlib.resources import files

from bot.commands import command_named
from bot.dialogue.again import again_in, without_knowing
from bot.dialogue.another import BY_CASES, carried, names_of
from bot.dialogue.kept import Dialogue, Next
from bot.dialogue.values import value_for
from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.lamps import Fixture
from bot.language.screens import NoScreen
from bot.language.units import Units
from bot.language.unsure import NOT_SURE, SomeMesh, Unsure
from bot.layered import Brief, Layered
from bot.preferences import Context, Preferences
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.queries.typed import typed
from bot.question_context import read_alone
from bot.routes.beyond import not_mine
from bot.routes.part import page_read
from bot.routes.routing import asked_in, route

__all__ = ["OPTIONS", "Doer", "Meant", "Noted", "Way", "ways"]

Meant = tuple[Next, Question | Layered | str, Dialogue]
"""What a line is, what it means, and the conversation for it."""

OPTIONS = {
    "distance": ("distance",),
    "basking": ("basking", "surface", "reading"),
    "cool": ("cool",),
    "warm": ("warm", "air"),
    "night": ("night", "room"),
    "room": ("room", "night"),
    "water": ("water",),
    "tube": ("tube",),
    "length": ("length",),
    "age": ("age",),
    "watts": ("watts",),
    "hours": ("hours",),
    "uvi": ("meter", "readings", "uvi"),
    "screen": ("screen",),
    "reflector": ("reflector",),
    "lamp": ("lamp", "kind"),
    "animal": ("animal",),
    "state": ("state",),
    "enclosure": ("enclosure",),
    "lid": ("lid", "screen"),
    "measured": ("measured",),
    "on": ("lamp_on",),
}
"""Which options a value may fill that a line tells, by what it is of."""
_ELSE = {
    "basking": "temps",
    "cool": "temps",
    "warm": "temps",
    "water": "temps",
    "night": "night",
    "room": "night",
    "distance": "uvi",
    "tube": "distance",
    "age": "decline",
    "uvi": "check",
    "state": "needs",
    "animal": "needs",
    "lamp": "lamp",
}
"""The question of a value that the question before has no option for."""
_READINGS = ("basking", "cool", "warm", "night", "water")
_GO_ALONG = frozenset((*_READINGS, "distance", "tube", "setup"))
_UNITS = {"cm": Units.CM, "c": Units.CM, "in": Units.IN, "f": Units.IN}
_OF_SET_UP = ("check", "next", "plan", "temps", "basking", "night")
_WARMTH = {"warmer": "basking", "cooler": "basking"}
_SAID = {"done": Say("talk-done"), "correct": Say("talk-correct"), "no": Say("talk-correct")}


@dataclass(frozen=True, slots=True)
class Noted:
    """What was told that changes nothing of the answer."""

    text: str


@dataclass(frozen=True, slots=True)
class Way:
    """The question that is asked on, and what the words of a line may lead to instead."""

    asks: Question
    also: tuple[str, ...]

    def leads_to(self, found: Question) -> bool:
        """Say whether a question is one that the words may lead to."""
        page = found.values.get("page")
        return found.command in self.also or f"page:{page}" in self.also


@cache
def ways() -> Mapping[str, Way]:
    """Return what may be asked on about, by its name."""
    text = (files("bot.dialogue") / "following.toml").read_text(encoding="utf-8")
    return {
        name: Way(Question(row["command"], row.get("values", {})), tuple(row["also"]))
        for name, row in tomllib.loads(text).items()
    }


class Doer:
    """What a line does, whose kind is known: of one line, after one conversation."""

    def __init__(
        self,
        dialogue: Dialogue,
        line: str,
        told: Mapping[str, object],
        context: Context,
        preferences: Preferences,
    ) -> None:
        self.dialogue, self.line, self.told = dialogue, line, told
        self.context, self.preferences = context, preferences
        self.asked = asked_in(AskQuery(question=line), context)

    def does(self, key: str) -> Meant | None:
        """Return what follows from a line that does this; None: it cannot be so here."""
        kind, _, name = key.partition(":")
        match kind:
            case "f":
                return self._tells(name)
            case "q":
                return self._asks(name)
        return self._is_about(name)

    def _tells(self, name: str) -> Meant | None:
        before = self.dialogue.asked
        value = value_for(name, self.asked, self.dialogue, self.told, self.preferences)
        if value is None:
            return None
        option = self._option_in(before.command, name, value) if before else ""
        if before and option:
            values = self._with(before.values, option, value)
            return self._question(Question(before.command, values))
        command = _ELSE.get(name)
        if command and (option := self._option_in(command, name, value)):
            here: dict[str, object] = carried(command, self.dialogue.known)
            if command == "temps":
                here |= {n: v for n, v in self.told.items() if n in _READINGS}
            if command in BY_CASES:
                here = dict.fromkeys(("reflector", "screen"), Unsure(NOT_SURE)) | here
            return self._question(Question(command, self._with(here, option, value)))
        if before is None:
            return None
        beside = (Say("talk-noted", Noted(typed(value))),)
        return Next.QUESTION, before, replace(self.dialogue, beside=beside)

    def _option_in(self, command: str, name: str, value: object) -> str:
        """Return the option of a question that a value fills, if it can be read there."""
        found = command_named(command)
        assert found is not None
        for option in OPTIONS[name]:
            if (command, option) == ("tube", "screen") and isinstance(value, Unsure):
                return option
            if option in names_of(found) and (
                read_alone(found.query, option, value, self.preferences) is not None
            ):
                return option
        return ""

    def _with(self, values: Mapping[str, object], option: str, value: object) -> dict[str, object]:
        """Return the values with one told, which is taken from the place where it stood."""
        stood = re.match(r"[\d.]+", typed(value))
        moved = {
            place
            for place in _READINGS
            if place != option
            and stood
            and typed(values.get(place, "")).partition(" ")[0].rstrip("°FCfc") == stood[0]
        }
        return {n: v for n, v in values.items() if n not in moved} | {option: value}

    def _question(self, question: Question) -> Meant:
        return Next.QUESTION, question, self.dialogue

    def _asks(self, name: str) -> Meant | None:
        way = ways()[name]
        if (routed := self._routed()) and way.leads_to(routed):
            found = routed
        elif name in _WARMTH and (surface := self.told.get("basking") or self.told.get("surface")):
            air = self.told.get("warm") or self.told.get("air")
            found = Question("basking", {"surface": surface, **({"air": air} if air else {})})
        else:
            found = way.asks
        if found.command == "guide":
            return self._question(page_read(found, self.context.language))
        command = command_named(found.command)
        assert command is not None
        here = carried(found.command, self.dialogue.known)
        if found.command == "lamp":
            here = {"kind": self.asked.lamps[0]} if self.asked.lamps else {}
        if found.command in _OF_SET_UP:
            along = names_of(command) & _GO_ALONG
            here |= {n: v for n, v in self.told.items() if n in along}
        if found.command in BY_CASES:
            here = dict.fromkeys(("reflector", "screen"), Unsure(NOT_SURE)) | here
        values = {n: v for n, v in found.values.items() if v and typed(v) != NOT_SURE}
        return self._question(Question(found.command, here | values))

    def _routed(self) -> Question | None:
        try:
            found = route(AskQuery(question=self.line), self.context)
        except NotUnderstoodError:
            return None
        if isinstance(found, Layered):
            return found.perhaps if len(found.offers) == 1 else None
        return Question(found.command, found.values)

    def _is_about(self, name: str) -> Meant | None:
        dialogue, before = self.dialogue, self.dialogue.asked
        if name == "thanks":
            return Next.THANKS, self.line, dialogue
        if name in ("first", "second"):
            at = ("first", "second").index(name)
            return self._question(dialogue.offers[at]) if len(dialogue.offers) > at else None
        if name == "off":
            return Next.SAID, not_mine(self.asked, self.context), dialogue
        if before is None:
            return None
        if name in ("yes", "no") and (answered := self._answered(before, yes=name == "yes")):
            return self._question(answered)
        if name in _SAID:
            told = Layered("ask", Say("ask-title-which"), Brief(_SAID[name]), status="problem")
            return Next.SAID, told, dialogue
        match name:
            case "why":
                return Next.WHY, before, dialogue
            case "again" | "yes":
                return self._question(before)
            case "simpler":
                return Next.QUESTION, before, replace(dialogue, beside=(Say("talk-simpler"),))
            case "no idea":
                return self._question(without_knowing(dialogue, before))
        if name in _UNITS:
            return Next.QUESTION, before, replace(dialogue, units=_UNITS[name])
        return self._in_unit(before)

    def _answered(self, before: Question, *, yes: bool) -> Question | None:
        """Return the question before with the answer to what was asked for."""
        if yes and len(self.dialogue.offers) == 1:
            return self.dialogue.offers[0]
        option = self.dialogue.wanted[-1] if self.dialogue.wanted else ""
        values: dict[str, tuple[object, object]] = {
            "screen": (SomeMesh("mesh"), NoScreen("none")),
            "reflector": (Fixture.POLISHED, Fixture.PLAIN),
        }
        if option not in values:
            return None
        return Question(before.command, {**before.values, option: values[option][not yes]})

    def _in_unit(self, before: Question) -> Meant | None:
        words = self.line.lower()
        is_metric = re.search(r"\b(?:c|celsius|cm|centi\w*|metric|zentimeter)\b|°c", words)
        units = Units.CM if is_metric else Units.IN
        if again := again_in(before, units):
            return self._question(again)
        return Next.QUESTION, before, replace(self.dialogue, units=units)
