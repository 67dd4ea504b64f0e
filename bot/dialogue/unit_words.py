"""Words for a unit: in which one an answer is wished, was meant, or is asked about."""

import re

from bot.dialogue.phrases import plain
from bot.language.units import Units

__all__ = ["asks_which_unit", "unit_meant", "unit_wished"]

_UNIT = re.compile(
    r"^(?:and |und |ok |okay |please |bitte |what |how much |whats |what's |is |are |that |it "
    r"|this |make |give |say |tell |show |me |us |can |could |you |do |convert |to |das |sag "
    r"|gib |mir |es |mach |lieber )*"
    r"(?:in |as |to |auf |into )?"
    r"(?P<cm>cm|centimet(?:er|re)s?|celsius|metric|°?c|zentimeter|metrisch)?"
    r"(?P<inch>inch(?:es)?|fahrenheit|imperial|°?f|zoll)?"
    r"(?: instead| then| please| bitte| lieber)*[?.! ]*$"
)
_WHICH_UNIT = re.compile(
    r"\b(?:c|celsius) (?:or|oder) (?:f|fahrenheit)\b"
    r"|\b(?:f|fahrenheit) (?:or|oder) (?:c|celsius)\b"
    r"|\b(?:inch\w*|in|zoll) (?:or|oder) (?:cm|centi\w+)\b"
    r"|\b(?:cm|centi\w+) (?:or|oder) (?:inch\w*|zoll)\b"
)
_MEANT_UNIT = re.compile(
    r"^(?:no |nein |sorry |oops |i mean[t]? |ich meinte? |it'?s |its |that was )*"
    r"(?:in )?(?P<unit>inch(?:es)?|in|zoll|cm|centimet(?:er|re)s?|zentimeter)"
    r"(?: (?:i mean[t]?|sorry|obviously|of course|meinte ich|natürlich))+[.! ]*$"
)
_ONE_UNIT_ALONE = re.compile(
    r"\b(?:only|just|all|always|use[sd]?|using|work|think|measure|prefer|nur|alles|immer)\b.{0,30}"
    r"\b(?:(?P<cm>celsius|centigrade|centimet(?:er|re)s?|cm|metric|zentimeter)"
    r"|(?P<inch>fahrenheit|inch(?:es)?|imperial|zoll))\b"
)


def asks_which_unit(line: str) -> bool:
    """Whether a line asks in which unit a figure was taken.

    >>> asks_which_unit("C or F you think"), asks_which_unit("its C")
    (True, False)
    """
    return _WHICH_UNIT.search(plain(line)) is not None


def unit_meant(line: str) -> Units | None:
    """Return the unit that a line says a number was meant in; None where it says nothing such.

    >>> unit_meant("sorry cm i meant"), unit_meant("in cm please")
    (<Units.CM: 'cm'>, None)
    """
    found = _MEANT_UNIT.match(plain(line))
    if found is None:
        return None
    return Units.CM if found["unit"][0] == "c" or found["unit"] == "zentimeter" else Units.IN


def unit_wished(line: str) -> Units | None:
    """Return the unit that a line wishes the answer in, and nothing else.

    >>> unit_wished("in cm please"), unit_wished("30 cm")
    (<Units.CM: 'cm'>, None)
    """
    words = plain(line)
    found = _UNIT.match(words)
    if found is None and not any(map(str.isdigit, words)):
        # "I only have a thermometer in Celsius."
        found = _ONE_UNIT_ALONE.search(words)
    if found is None or bool(found["cm"]) == bool(found["inch"]):
        return None
    return Units.CM if found["cm"] else Units.IN
