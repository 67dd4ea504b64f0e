"""What was heard in free words, as plain values in SI units: the ``heard`` of a reply's JSON."""

from collections.abc import Iterator
from typing import TYPE_CHECKING

from bot.language.lamps import OtherLamp, TubeStrength
from bot.language.quantities import Dimension, Measure
from bot.language.readings import PlacedReading
from bot.language.screens import Blocks, NoScreen, Pane, Passes, Weave
from bot.language.sizes import Size
from bot.reply import Heard, HeardValue

if TYPE_CHECKING:
    from bot.language.hearing.facts import Ask, Fact

__all__ = ["heard_told"]

_HOUR_S = 3600.0
_UNITS = {
    Dimension.LENGTH: "m",
    Dimension.TEMPERATURE: "degC",
    Dimension.TEMPERATURE_DIFFERENCE: "K",
    Dimension.POWER: "W",
    Dimension.DURATION: "h",
    Dimension.VOLUME: "m3",
}
_UNCLEAR = "unclear"


def heard_told(words: str, own: tuple[str, ...]) -> tuple[Heard, ...]:
    """Return what was heard in free words.

    What stands apart follows what is so, and what is unclear comes last. ``own`` are the names of
    the animals that the asker's group added.
    """
    from bot.questions.setup.told import heard_in

    heard = heard_in(words, own)
    facts = (_of_fact(fact) for fact in (*heard.facts, *heard.aside))
    return (*facts, *map(_of_ask, heard.questions))


def _of_fact(fact: "Fact") -> Heard:
    value, unit = _value(fact.value)
    return Heard(
        name=fact.name.value,
        value=value,
        unit=unit,
        guessed=fact.assumed,
        sort=fact.standing.value,
        text=fact.words,
        animal=fact.scope.animal,
        hedged=fact.hedged,
        corrects=fact.corrects,
    )


def _of_ask(ask: "Ask") -> Heard:
    among = ask.among or None
    return Heard(name=ask.name.value, value=among, unit="", sort=_UNCLEAR, text=ask.words)


def _value(value: object) -> tuple[HeardValue, str]:
    """Return a value in SI with its unit; one that runs from an end to another has both."""
    match value:
        case Measure():
            per = _HOUR_S if value.dimension is Dimension.DURATION else 1.0
            return _ends(value.low / per, value.high / per), _UNITS[value.dimension]
        case Size():
            return (value.length_m, value.depth_m, value.height_m), "m"
        case TubeStrength():
            return value.percent, "%"
        case PlacedReading():
            ends = _ends(value.distance.low, value.distance.high)
            return (value.value, *(ends if isinstance(ends, tuple) else (ends,))), "1, m"
        case tuple():
            return _ends(value[0], value[-1]), "1"
        case bool():
            return value, ""
        case int() | float():
            return value, "1"
    return next(_words(value)), ""


def _words(value: object) -> Iterator[str]:
    """Yield the name of a kind, as options take it."""
    match value:
        case NoScreen():
            yield "none"
        case Blocks():
            yield f"{value.fraction:.6g} blocked"
        case Passes():
            yield f"{value.fraction:.6g} passed"
        case Pane():
            yield value.material
        case OtherLamp():
            yield value.kind.value
        case Weave():
            yield value.text
    yield str(value)


def _ends(low: float, high: float) -> float | tuple[float, float]:
    return low if low == high else (low, high)
