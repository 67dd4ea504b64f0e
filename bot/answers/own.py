"""What an answer took from the group that asks, told in rows, so that nobody takes it for ours."""

from collections.abc import Mapping

from bot.answers.figures import calendar_day, length, number, percent
from bot.command import Command
from bot.kept.group import OwnAnimal, OwnLamp, OwnScreen
from bot.language.hearing import FactName
from bot.preferences import Context
from bot.queries.options import Query
from bot.questions.setup.told import heard_in, names_an_animal
from bot.reply import Row
from calc.naming import Known, named

__all__ = ["GROUP", "animal_told", "lamp_told", "own_rows", "screen_told"]

GROUP = "The group's own"


def own_rows(
    command: Command, query: Query, given: Mapping[str, str], context: Context
) -> tuple[Row, ...]:
    """Return a row for every figure of the group's own that the question named or fell back on."""
    rows = []
    options = command.query.options()
    for option in options:
        text = given.get(option.name, "")
        lamp = context.own.lamp(text) if option.completes == "tube" else None
        screen = context.own.screen(text) if option.completes == "screen" else None
        if lamp is not None:
            rows.append(Row(label=GROUP, text=f"tube “{lamp.name}”: {lamp_told(lamp, context)}"))
        if screen is not None:
            rows.append(Row(label=GROUP, text=f"screen “{screen.name}”: {screen_told(screen)}"))
    animal = _own_animal(given, context)
    if animal is not None:
        rows.append(Row(label=GROUP, text=f"animal “{animal.name}”: {animal_told(animal)}"))
    wanted = any(option.completes == "animal" for option in options) and query.asks_of_an_animal()
    wanted = wanted and bool(context.default_animal) and not {"animal", "uvi"} & given.keys()
    if wanted and not names_an_animal(given.get("setup", ""), context.own.names):
        told = f"no animal was named, so I took the group's: {context.default_animal}"
        rows.append(Row(label=GROUP, text=told))
    return tuple(rows)


def _own_animal(given: Mapping[str, str], context: Context) -> OwnAnimal | None:
    """Return the group's own animal that the question named or fell back on."""
    names = context.own.names
    if not names:
        return None
    heard = heard_in(given.get("setup", ""), names).facts
    told = (str(fact.value) for fact in heard if fact.name is FactName.ANIMAL)
    text = given.get("animal", "") or next(told, context.default_animal)
    what = named(text, names).what
    return context.own.animal(what.name) if isinstance(what, Known) else None


def animal_told(animal: OwnAnimal) -> str:
    """Return who vouches for an animal of the group's own."""
    return (
        f"its figures were set by this group, on {calendar_day(animal.set_on)}; where it set no "
        "limit, a careful one of mine holds"
    )


def lamp_told(lamp: OwnLamp, context: Context) -> str:
    """Return what is known of a lamp of the group's own."""
    readings = f"{lamp.readings} meter reading{'s' if lamp.readings > 1 else ''}"
    return (
        f"{number(lamp.constant_uvi_m, 0.01)} UVI·m, good to about "
        f"{percent(lamp.doubt_factor - 1.0)}, from {readings}, lit part "
        f"{length(lamp.lit_length_m, context.units)}; set on {calendar_day(lamp.set_on)}"
    )


def screen_told(screen: OwnScreen) -> str:
    """Return what is known of a screen of the group's own."""
    return (
        f"passes {percent(screen.passes)} of the UV (blocks {percent(1.0 - screen.passes)}); "
        f"set on {calendar_day(screen.set_on)}"
    )
