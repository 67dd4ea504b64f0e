"""Which questions free words may mean where they surely mean none: each is offered."""

from bot.routes.asked import Asked
from bot.routes.rule import CHANGE, HEAT, HEAT_LAMP, HOW_FAR, LIGHT, UV, Rule, only_an_animal

__all__ = ["possible"]


_SINCE = (
    r"\b(?:january|february|march|april|june|july|august|september|october|november|december"
    r"|ago|last (?:week|month|year)|used to|since|months?|years?)\b"
)
_OURS = rf"{HEAT}|{UV}|{LIGHT}|\b(?:mesh|reflectors?|thermo\w+|heaters?|mats?|dimmers?|timers?)\b"
_POSSIBLE = (
    Rule("check", (r"\b(?:uvi|uv index)\b.*\d",)),
    Rule("surface", (r"\bguns?\b|\b(?:ir|infra ?red|laser) thermometers?\b",)),
    Rule("needs", (rf"{HEAT}|{UV}",), when=only_an_animal),
    Rule("basking", (r"\bbask\w*|\bhot ?spot\b", CHANGE)),
    Rule("decline", (UV, _SINCE)),
    Rule("meter", (r"\bmeters?\b|\breadings?\b",)),
    Rule("check", (r"\bmeters?\b|\bset-?up\b",)),
    Rule("night", (r"\b(?:night\w*|overnight|sleep\w*|chilly|power|freez\w*|getting cold)\b",)),
    Rule("air", (r"\b(?:cool|cold) (?:side|end)\b|\b(?:whole|entire) (?:tank|viv)|\bambient",)),
    Rule("distance", (UV,)),
    Rule("tube", (UV,)),
    Rule("temps", (HEAT,), when=lambda a: a.warmth),
    Rule("distance", (LIGHT, HOW_FAR)),
    Rule("basking", (LIGHT, HOW_FAR)),
    Rule("watts", (rf"{HEAT_LAMP}|\bbulbs?\b|\bwatt\w*|\b(?:heat|warm)\b",), r"\bnight"),
    Rule("hours", (r"\blight(?:s|ing)?\b",)),
    Rule(
        "needs",
        (rf"{HEAT}|{UV}|{LIGHT}|\b(?:help|new|advice|care|info|keep)\b",),
        when=lambda a: a.about_an_animal,
    ),
    Rule("lamp", (r"\b(?:heat|basking|night) ?(?:lamps?|bulbs?|lights?)\b|\bheaters?\b",)),
    Rule(
        "plan",
        (r"\b(?:help|new|beginner|first|advice|care|keep)\b",),
        when=lambda a: bool(a.told.animal),
    ),
    # Nothing about light or heat goes away with nothing.
    Rule("needs", (_OURS,)),
    Rule("check", (_OURS,)),
)


def possible(asked: Asked) -> tuple[str, ...]:
    """Return the questions that the words may mean, the likeliest first."""
    return tuple(dict.fromkeys(rule.name for rule in _POSSIBLE if rule.fits(asked)))
