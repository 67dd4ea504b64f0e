"""Fluent messages, compiled strictly into functions of facts.

The syntax and its parser are Project Fluent's. Running it is ours, because an answer must not be
sent with a hole in it: what is wrong in a file is an error when it is read, with file and line.
"""

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import date, time
from enum import Enum
from typing import Any, Protocol

from fluent.syntax import ast

from bot.facts import Digits, Figure, Kind, Moment, Name

__all__ = ["FORMS", "KINDS", "Speaker", "Spoken", "Used", "WordsError", "compiled"]


class WordsError(ValueError):
    """A words file is wrong; the message names file, line and message."""


class Speaker(Protocol):
    """What a message needs while it is said: how a language and a unit tell each value."""

    def plain(self, value: Any, name: str) -> str:
        """Return a text, a count or another message."""

    def figure(self, value: Figure, form: str, alone: bool) -> str:
        """Return a figure in a form, in one unit or both."""

    def second(self, value: Figure, form: str) -> str:
        """Return a figure in a form, in the unit that stands in brackets alone."""

    def name(self, value: Name, form: str) -> str:
        """Return the name of a thing in a form."""

    def day(self, value: date) -> str:
        """Return a day of the calendar."""

    def clock(self, value: time) -> str:
        """Return a time of day."""

    def moment(self, value: Moment) -> str:
        """Return a day with its time and zone."""

    def digits(self, value: Digits) -> str:
        """Return a plain number as the language writes it."""

    def listed(self, texts: list[str], join: str) -> str:
        """Return texts as a list."""

    def referred(self, key: str, facts: Any) -> str:
        """Return another message about the same facts."""

    def plural(self, count: int) -> str:
        """Return the plural form that a count takes."""


Spoken = Callable[[Any, Speaker], str]


@dataclass(slots=True)
class Used:
    """What a message uses, for the tests: facts with how they are told, and other messages.

    A fact is ``guarded`` where a variant above has asked whether it is known.
    """

    where: str
    facts: dict[str, set[tuple[str, bool]]] = field(default_factory=dict)
    messages: dict[str, frozenset[str]] = field(default_factory=dict)


KINDS = {
    "LENGTH": Kind.LENGTH,
    "TEMP": Kind.TEMPERATURE,
    "DIFF": Kind.DIFFERENCE,
    "WATTS": Kind.POWER,
    "UVI": Kind.UVI,
    "SHARE": Kind.SHARE,
    "HOURS": Kind.TIME,
    "ANGLE": Kind.ANGLE,
    "NUMBER": Kind.NUMBER,
}
KINDS |= {"LUX": Kind.LUX, "LUMENS": Kind.LUMENS}
# Values that the speaker has one way to tell, by the name of that way.
_VALUES = {"DAY": date, "CLOCK": time, "DIGITS": Digits, "MOMENT": Moment}
_TWO_UNITS, _AS_GIVEN = ("LENGTH", "TEMP", "DIFF"), ("UVI", "SHARE")
FORMS = ("best", "range", "low", "high", "doubt", "given")


def compiled(key: str, pattern: ast.Pattern, used: Used) -> Spoken:
    """Return the function that says a message; ``used`` is filled with what it needs."""
    return _Compiler(key, used).pattern(pattern)


class _Compiler:
    def __init__(self, key: str, used: Used) -> None:
        self._key, self._used = key, used
        self._known: list[str] = []

    def _wrong(self, what: str) -> WordsError:
        return WordsError(f"{self._used.where}: {self._key}: {what}")

    def pattern(self, pattern: ast.Pattern) -> Spoken:
        """Return the function that says a pattern."""
        parts = [self._element(element) for element in pattern.elements]
        if len(parts) == 1:
            return parts[0]
        return lambda facts, speaker: "".join([part(facts, speaker) for part in parts])

    def _element(self, element: ast.TextElement | ast.Placeable) -> Spoken:
        if isinstance(element, ast.TextElement):
            # A wrapped line of the file is one space: an editor may break lines anywhere.
            return _constant(element.value.replace("\n", " "))
        return self._placed(element.expression)

    def _placed(self, given: Any) -> Spoken:
        match given:
            case ast.StringLiteral():
                return _constant(given.parse()["value"])
            case ast.Placeable():
                return self._placed(given.expression)
            case ast.SelectExpression():
                return self._select(given)
            case ast.VariableReference():
                name = given.id.name
                self._note(name, "plain")
                return lambda facts, speaker: speaker.plain(getattr(facts, name), name)
            case ast.MessageReference() | ast.TermReference():
                return self._reference(given)
            case ast.FunctionReference():
                return self._function(given)
        raise self._wrong(f"{type(given).__name__} is not used here")

    def _reference(self, given: ast.MessageReference | ast.TermReference) -> Spoken:
        term = "-" if isinstance(given, ast.TermReference) else ""
        key = f"{term}{given.id.name}"
        if given.attribute:
            key += f".{given.attribute.name}"
        self._used.messages[key] = frozenset(self._known) | self._used.messages.get(
            key, frozenset()
        )
        return lambda facts, speaker: speaker.referred(key, facts)

    def _function(self, given: ast.FunctionReference) -> Spoken:
        called, told = given.id.name, given.arguments.positional
        if len(told) != 1 or not isinstance(told[0], ast.VariableReference):
            raise self._wrong(f"{called} takes one fact")
        name = told[0].id.name
        options = {a.name.name: _literal(a.value) for a in given.arguments.named}
        makers: dict[str, Callable[[str, dict[str, str]], Spoken]] = {
            "NAME": self._name,
            "LIST": self._list,
            "CAP": self._capital,
        }
        known = {*makers, *_VALUES, *KINDS}
        if called not in known:
            there_are = ", ".join(sorted(known))
            raise self._wrong(f"there is no function {called}; there are {there_are}")
        self._note(name, called)
        if called in KINDS:
            spoken = self._figure(called, name, options)
        elif called in _VALUES:
            spoken = self._value(_VALUES[called], called, name)
        else:
            spoken = makers[called](name, options)
        if options:
            raise self._wrong(f"{called} has no option {', '.join(options)}")
        return spoken

    def _figure(self, called: str, name: str, options: dict[str, str]) -> Spoken:
        form, units = options.pop("form", "best"), options.pop("units", "both")
        alone, other, kind, key = units == "first", units == "second", KINDS[called], self._key
        if form not in FORMS or (form == "given" and called not in _AS_GIVEN):
            raise self._wrong(f"{called} has no form {form!r}")
        if form == "doubt" and called in _TWO_UNITS:
            raise self._wrong(f"{called} has no form 'doubt': say its best and its range")
        if units not in ("both", "first", "second"):
            raise self._wrong(f"units is 'both', 'first' or 'second', not {units!r}")

        def figure(facts: Any, speaker: Speaker) -> str:
            value = getattr(facts, name)
            if type(value) is not Figure or value.kind is not kind:
                raise WordsError(f"{key}: {called}(${name}) got {value!r}")
            return speaker.second(value, form) if other else speaker.figure(value, form, alone)

        return figure

    def _name(self, name: str, options: dict[str, str]) -> Spoken:
        form, key = options.pop("form", ""), self._key

        def named(facts: Any, speaker: Speaker) -> str:
            return _named(getattr(facts, name), form, speaker, f"{key}: ${name}")

        return named

    def _list(self, name: str, options: dict[str, str]) -> Spoken:
        join, form = options.pop("join", "list-and"), options.pop("form", "")
        self._used.messages.setdefault(join, frozenset())

        def listed(facts: Any, speaker: Speaker) -> str:
            texts = [_said(item, form, name, speaker) for item in getattr(facts, name)]
            return speaker.listed(texts, join)

        return listed

    def _capital(self, name: str, options: dict[str, str]) -> Spoken:
        form = options.pop("form", "")

        def capital(facts: Any, speaker: Speaker) -> str:
            text = _said(getattr(facts, name), form, name, speaker)
            return text[:1].upper() + text[1:]

        return capital

    def _value(self, kind: type, called: str, name: str) -> Spoken:
        """Return what says a fact that is a value of a kind, by the speaker's way for it."""
        key, way = self._key, called.lower()

        def valued(facts: Any, speaker: Speaker) -> str:
            value = getattr(facts, name)
            if not isinstance(value, kind):
                raise WordsError(f"{key}: {called}(${name}) got {value!r}")
            said: str = getattr(speaker, way)(value)
            return said

        return valued

    def _select(self, given: ast.SelectExpression) -> Spoken:
        if not isinstance(given.selector, ast.VariableReference):
            raise self._wrong("only a fact can be asked")
        name = given.selector.id.name
        cases: dict[str, Spoken] = {}
        usual: Spoken | None = None
        for variant in given.variants:
            key = variant.key
            label = key.name if isinstance(key, ast.Identifier) else key.value
            if label in cases:
                raise self._wrong(f"${name} has [{label}] twice")
            guards = [name] if label != "none" else []
            self._known += guards
            cases[label] = self.pattern(variant.value)
            del self._known[len(self._known) - len(guards) :]
            usual = cases[label] if variant.default else usual
        self._note(name, f"select:{','.join(cases)}", guarded=True)
        assert usual is not None
        otherwise = usual

        def selected(facts: Any, speaker: Speaker) -> str:
            value = getattr(facts, name)
            spoken = cases.get(_asked(value))
            if spoken is None and type(value) is int:
                spoken = cases.get(speaker.plural(value))
            return (spoken or otherwise)(facts, speaker)

        return selected

    def _note(self, name: str, way: str, *, guarded: bool = False) -> None:
        self._used.facts.setdefault(name, set()).add((way, guarded or name in self._known))


def _constant(text: str) -> Spoken:
    return lambda facts, speaker: text


def _literal(value: Any) -> str:
    return str(value.parse()["value"])


def _named(value: Any, form: str, speaker: Speaker, where: str) -> str:
    if type(value) is not Name:
        raise WordsError(f"{where} is no name: {value!r}")
    return speaker.name(value, form)


def _said(value: Any, form: str, name: str, speaker: Speaker) -> str:
    return speaker.name(value, form) if type(value) is Name else speaker.plain(value, name)


def _asked(value: Any) -> str:
    """Return the variant that a fact chooses."""
    if value is None:
        return "none"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, Enum):
        return value.name.lower()
    return str(value) if type(value) is int else "some"
