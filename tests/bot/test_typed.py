"""Values that were heard fill a question as they are; their text is an echo that reads the same."""

import tomllib
from pathlib import Path

from bot.ask import ask
from bot.command import Routed
from bot.commands import command_named
from bot.language.errors import NotUnderstoodError
from bot.language.lamps import TubeStrength
from bot.language.quantities import Measure, Units
from bot.language.readings import PlacedReading
from bot.language.screens import Blocks, Weave
from bot.language.sizes import Size
from bot.language.unsure import Unsure
from bot.preferences import Context, Preferences
from bot.queries.setup import AskQuery
from bot.queries.typed import typed_all
from bot.routes.routing import route
from bot.understood import Understood, understand

ASKED = tomllib.loads((Path(__file__).parent / "free_questions.toml").read_text(encoding="utf-8"))


def found_in(words: str) -> Routed | None:
    try:
        found = route(AskQuery(question=words), Context(Units.IN))
    except NotUnderstoodError:
        return None
    return found if isinstance(found, Routed) else None


def bare(value: object) -> object:
    """Return a value without its words, its lengths and temperatures to a millionth."""
    match value:
        case Measure():
            return value.dimension, round(value.low, 6), round(value.high, 6), value.unit
        case Size():
            return tuple(round(x, 6) for x in (value.length_m, value.depth_m, value.height_m))
        case TubeStrength():
            return value.percent, value.older_scale, value.is_told
        case Blocks():
            return round(value.fraction, 6)
        case Weave():
            return value.mesh_x_per_m, value.mesh_y_per_m, value.wire_m
        case PlacedReading():
            return value.value, bare(value.distance)
        case Unsure():
            return type(value)
        case tuple():
            return tuple(map(bare, value))
        case _ if hasattr(value, "text"):
            return type(value)
    return value


def brings_values(found: Routed) -> bool:
    return any(not isinstance(value, str) for value in found.values.values())


def test_a_question_is_the_same_by_its_values_and_by_their_echo() -> None:
    said = (row["say"] for rows in ASKED.values() for row in rows)
    routed = [found for say in said if (found := found_in(say)) and brings_values(found)]
    assert len(routed) > 50
    for found in routed:
        same_by_their_echo(found)


def same_by_their_echo(found: Routed) -> None:
    command = command_named(found.command)
    assert command is not None
    missing = {n: command.query.examples()[n] for n in command.query.lacking(found.given)}
    by_values = command.query.model_validate({**found.values, **missing})
    by_echo = command.query.model_validate({**typed_all(found.values), **missing})
    for name in found.values:
        assert bare(getattr(by_values, name)) == bare(getattr(by_echo, name)), (found, name)


def test_a_range_stays_a_range_and_a_guessed_unit_is_known_as_guessed() -> None:
    understood = understand("beardie basking 98-104, cool side 75F, is that ok", Preferences())
    assert isinstance(understood, Understood)
    basking, cool = understood.values["basking"], understood.values["cool"]
    assert isinstance(basking, Measure)
    assert isinstance(cool, Measure)
    assert (round(basking.low, 3), round(basking.high, 3)) == (36.667, 40.0)
    assert (basking.assumed, cool.assumed) == (True, False)
    reply = ask("beardie basking 98-104, cool side 75F, is that ok", Preferences())
    assert [assumed.name for assumed in reply.assumed] == ["basking"]
    assert "98-104 has no unit, so I took it as °F" in reply.rows[-1].text
