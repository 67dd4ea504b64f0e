"""What is heard of a lamp's light: its kind, lumens, watts, and what a meter of lux showed."""

import re

from bot.language.hearing import FactName
from bot.language.light_lamps import LightLamp, lamps_heard, white_lamps_heard
from bot.language.quantities import Measure
from bot.routes.asked import Asked

__all__ = [
    "heat_watts",
    "hours_of_plants",
    "light_away",
    "light_lamp",
    "light_watts",
    "lumens_in",
    "lux_by",
    "lux_in",
    "set_up_in",
    "several_lamps",
    "sides_in",
    "white_lamps",
]

_LUMENS = re.compile(r"\b(\d{2,3}[.,]?\d{3}|\d{2,5}) ?(?:lm|lumens?)\b")
_AWAY = re.compile(
    r"(?<![\d.x×])(\d{1,3}(?:\.\d{1,2})? ?(?:inch(?:es)?|in|cm|ft|feet))"
    r" (?:away|up|high|above|over|from)\b"
)
_LUX = re.compile(r"\b(\d{1,3}[.,]?\d{3}|\d{1,5}) ?(lx|lux|fc|foot[- ]?candles?)\b")
_BY_METER = re.compile(
    r"\b(?:lux|light) ?meter (?:\w+ ){0,3}?(\d{1,3}[.,]?\d{3}|\d{2,5})\b"
    r"(?! ?(?:in|cm|ft|w|f|c|%)\b)"
)
_ASKED_BEFORE = re.compile(
    r"^[^:?.\n]*\b(?:next|upgrade|improve|better|als n(?:ä|ae)chstes|verbessern)\b[^:?.\n]*"
    r"[:?.]\s*(?=\S)",
    re.I,
)
_LIGHT_LAMPS = {
    "LED lamp": "led bar",
    "halogen flood": "halogen flood",
    "incandescent flood": "household bulb",
    "metal halide lamp": "metal halide",
    "T8 tube": "white tube",
    "red heat lamp": "coloured lamp",
    "blue or purple night lamp": "coloured lamp",
}


_MOST_FEET = 10.0
_SIDE = r"\d{1,3}(?:\.\d{1,2})?"
_SIDES = re.compile(rf"\b({_SIDE}(?: ?[x×] ?{_SIDE}){{2}}) ?(in|inch|inches|cm|ft|feet|mm|m|\")?")


def sides_in(words: str) -> str:
    """Return three sides with their unit, as they stand in words; nothing where none do.

    >>> sides_in("a 48x24x24in tank"), sides_in("in a 4x2x2"), sides_in("90x45x45")
    ('48x24x24 in', '4x2x2 ft', '')
    """
    found = _SIDES.search(words)
    if found is None:
        return ""
    sides = [float(side) for side in re.split(r" ?[x×] ?", found[1])]
    # No home is ten inches long.
    unit = found[2] or ("ft" if max(sides) <= _MOST_FEET else "")
    return f"{found[1]} {unit}" if unit else ""


def several_lamps(asked: Asked) -> tuple[LightLamp, ...]:
    """Return the lamps where several are told, each with its label; else none."""
    found = lamps_heard(asked.words)
    return found if len(found) > 1 else ()


def white_lamps(asked: Asked) -> tuple[LightLamp, ...]:
    """Return the white lamps that are told with their watts or lumens."""
    return white_lamps_heard(asked.words)


def heat_watts(asked: Asked) -> Measure | None:
    """Return the watts of a heat lamp: none that stand with a white lamp."""
    said = asked.told.measure(FactName.WATTS)
    white = {one.watts for one in white_lamps(asked)}
    return None if said is None or said.value.low in white else said.value


def hours_of_plants(asked: Asked) -> str:
    """Return usual hours of light where plants are asked about, so that their light is told."""
    return "12 hours" if asked.says(r"\b(?:plants?|dli|par|ppfd|pflanzen)\b") else ""


def light_lamp(asked: Asked) -> str:
    """Return the kind of lamp that gives the light, where there is one."""
    heard = lamps_heard(asked.words)
    if len(heard) == 1:
        return heard[0].kind
    if heard:
        return ""
    return next((_LIGHT_LAMPS[name] for name in asked.lamps if name in _LIGHT_LAMPS), "")


def light_watts(asked: Asked) -> Measure | None:
    """Return the watts of a lamp whose kind is told too, where no lumens are."""
    return asked.wattage if light_lamp(asked) and not lumens_in(asked) else None


def light_away(asked: Asked) -> str:
    """Return the one length that tells how high a lamp hangs; nothing where there are several."""
    found = [match[1] for match in _AWAY.finditer(asked.words)]
    return found[0] if len(found) == 1 else ""


def set_up_in(asked: Asked) -> str:
    """Return the set-up behind what is asked about it: what next: beardie, 12% tube."""
    return _ASKED_BEFORE.sub("", asked.said, count=1)


def lumens_in(asked: Asked) -> str:
    """Return the lumens that are told of one lamp."""
    found = _LUMENS.search(asked.words)
    return found[0] if found and not several_lamps(asked) else ""


def lux_in(asked: Asked) -> str:
    """Return what a meter of lux showed; its name may stand in place of the unit."""
    if found := _LUX.search(asked.words):
        return found[0]
    found = _BY_METER.search(asked.words)
    return f"{found[1]} lux" if found else ""


def lux_by(asked: Asked) -> str:
    """Return that a phone read the light, where it did."""
    return "phone" if lux_in(asked) and asked.says(r"\b(?:phone|app|handy)\b") else ""
