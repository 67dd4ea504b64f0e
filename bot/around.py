"""What stands around an answer: how the question was understood, and what was taken for granted.

Words: ``words/<language>/door.ftl``, in the language that the answer is told in.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from bot.command import Command
from bot.facts import Name, Say
from bot.language.shown import shown
from bot.layered import Row
from bot.preferences import Context
from bot.queries.query import Query
from bot.saved.group import OwnAnimal, OwnLamp, OwnScreen

__all__ = ["own_rows", "understood_row", "units_told"]

_SIGNS = {"degF": "°F", "degC": "°C"}


@dataclass(frozen=True, slots=True)
class UnitTaken:
    """A number without its unit, and the one it was taken in."""

    name: str
    text: str
    unit: str


@dataclass(frozen=True, slots=True)
class AsLine:
    """A question as a line with options."""

    line: str


@dataclass(frozen=True, slots=True)
class OwnNamed:
    """A figure of the group's own by its name, with what is known of it."""

    name: str
    told: Say


@dataclass(frozen=True, slots=True)
class OwnAnimalNamed:
    """An animal of the group's own, and when its figures were set."""

    name: str
    set_on: date


@dataclass(frozen=True, slots=True)
class UsualAnimal:
    """The group's animal, where none was named."""

    animal: Name


def units_told(taken: Sequence[tuple[str, str, str]]) -> Iterator[tuple[str, Say]]:
    """Yield the options whose unit was taken for granted, and what is told of each."""
    for name, text, unit in taken:
        yield name, Say("door-taken", UnitTaken(name, text, _SIGNS.get(unit, unit)))


def understood_row(command: Command, given: Mapping[str, str]) -> Row:
    """Return how free words were understood."""
    told = " ".join(f"{name}:{shown(text)}" for name, text in given.items())
    line = Say("door-line", AsLine(f"{command.name} {told}"))
    return Row(Say("door-label-understood"), line)


def own_rows(
    command: Command, query: Query, given: Mapping[str, str], context: Context
) -> Iterator[Row]:
    """Yield every figure of the group's own that the question named or fell back on."""
    for told in _own(command, query, given, context):
        yield Row(Say("door-label-own"), told)


def _own(
    command: Command, query: Query, given: Mapping[str, str], context: Context
) -> Iterator[Say]:
    options = command.query.options()
    for option in options if context.own.lamps or context.own.screens else ():
        from bot.questions.owned import lamp_told, screen_told

        text = given.get(option.name, "")
        lamp = context.own.lamp(text) if option.completes in ("tube", "uv_lamp") else None
        screen = context.own.screen(text) if option.completes == "screen" else None
        if not text:
            lamp, screen = _in_words(option.completes, given, context)
        if lamp is not None:
            told = lamp_told(lamp).law
            yield Say("door-own-tube", OwnNamed(lamp.name, told))
        if screen is not None:
            told = Say("owned-screen", screen_told(screen))
            yield Say("door-own-screen", OwnNamed(screen.name, told))
    animal = _own_animal(given, context) if query.asks_of_an_animal() else None
    if animal is not None:
        yield Say("door-own-animal", OwnAnimalNamed(animal.name, animal.set_on))
    wanted = any(option.completes == "animal" for option in options) and query.asks_of_an_animal()
    wanted = wanted and bool(context.default_animal) and not {"animal", "uvi"} & given.keys()
    if wanted and not _tells_an_animal(given.get("setup", ""), context.own.names):
        from bot.questions.animals import name_said

        usual = name_said(context.default_animal, context.own.names)
        yield Say("door-own-usual", UsualAnimal(usual))


def _in_words(
    completes: str, given: Mapping[str, str], context: Context
) -> tuple[OwnLamp | None, OwnScreen | None]:
    """Return the lamp or the screen that the free words of a set-up name."""
    words = given.get("setup", "")
    if not words or completes not in ("tube", "screen"):
        return None, None
    from bot.questions.setup.own_told import own_told

    told = own_told(words, context.own)
    if completes == "tube":
        return next((tube.lamp for tube, _ in told.lamps), None), None
    names = (screen.text for screen, _ in told.screens)
    return None, next((context.own.screen(name) for name in names), None)


def _tells_an_animal(text: str, own: tuple[str, ...]) -> bool:
    from bot.questions.setup.told import names_an_animal

    return names_an_animal(text, own)


def _own_animal(given: Mapping[str, str], context: Context) -> OwnAnimal | None:
    """Return the group's own animal that the question named or fell back on."""
    names = context.own.names
    if not names:
        return None
    from bot.language.hearing import FactName
    from bot.questions.setup.told import heard_in
    from calc.naming import Known, named

    heard = heard_in(given.get("setup", ""), names).facts
    told = (str(fact.value) for fact in heard if fact.name is FactName.ANIMAL)
    text = given.get("animal", "") or next(told, context.default_animal)
    what = named(text, names).what
    return context.own.animal(what.name) if isinstance(what, Known) else None
