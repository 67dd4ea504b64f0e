"""Which question free words mean: rules of words, tried in turn, the surest first.

A rule needs both: words that ask, and something the question is about. Words that fit no rule
are not forced into one; they may still offer several questions.
"""

from collections.abc import Callable
from dataclasses import dataclass

from bot.answers.routes.asked import Asked
from bot.language.hearing import FactName

__all__ = ["Rule", "fitting", "possible"]

_UV = r"\b(?:uv\w*|tubes?|t5s?|t8s?|5\.0|10\.0|\d+ ?(?:%|percent))"
_LIGHT = r"\b(?:lights?|lamps?|bulbs?|uv\w*|tubes?)\b"
_HEAT = r"\b(?:temp\w*|hot\w*|warm\w*|heat\w*|cold\w*|cool\w*|bask\w*|degrees|chilly)\b"
_HEAT_LAMP = r"\b(?:heat|basking|halogen|flood|spot) ?(?:lamps?|bulbs?|lights?)\b"
_ASKS = (
    r"\b(?:is|are|can|could|should|shall|do|does|what|whats|which|why|how|or|vs|yes or no|better"
    r"|good|ok\w*|safe|bad|instead|recommend\w*|need)\b"
)
_FIT = r"\b(?:ok\w*|alright|all right|fine|good|safe|right|enough|too \w+|correct)\b"
_SHOULD = (
    r"\b(?:should|needs?|required?|requirements?|ideal|best|recommended|supposed|proper|care"
    r"|parameters|does an?|do they (?:like|want))\b"
)
_CHANGE = (
    r"\b(?:bring|get\w*|lower|raise|drop|increase|reduce|too (?:hot|cold|high|low|warm)|can'?t"
    r"|won'?t|only|stuck|hotter|cooler|warmer|down|up)\b"
)


def _always(_asked: Asked) -> bool:
    return True


_NO_PLAN = r"\bwatt|\bgetting an? (?:new )?(?:uv|bulb|tube|lamp)"


@dataclass(frozen=True, slots=True)
class Rule:
    """A question, the words that ask it (all patterns), those that rule it out, and what else."""

    name: str
    asks: tuple[str, ...]
    unless: str = ""
    when: Callable[[Asked], bool] = _always

    def fits(self, asked: Asked) -> bool:
        """Say whether the words ask this."""
        if self.unless and asked.says(self.unless):
            return False
        return all(asked.says(pattern) for pattern in self.asks) and self.when(asked)


def _few(asked: Asked) -> bool:
    """Say whether nothing of a set-up was told that an answer would have to look at."""
    return not (asked.uv or asked.warmth or asked.at_a_distance)


def _tells_a_set_up(asked: Asked) -> bool:
    return asked.uv and asked.warmth


def _tube_at_a_place(asked: Asked) -> bool:
    return asked.told.tube is not None and asked.at_a_distance


def _only_the_night(asked: Asked) -> bool:
    return bool(asked.told.all(FactName.ROOM_NIGHT)) and _few(asked) and not asked.lamps


_ONE_OR_OTHER = r"\b\d+(?:\.0)? ?%? or (?:an? )?\d+(?:\.0)? ?%?"
_IN_UNITS = (
    r"\bconvert\b|\b(?:in|to|into|as) (?:an? )?(?:°?[cf]|inch(?:es)?|cm|mm|met(?:er|re)s?|feet|ft"
    r"|centi\w+|fahrenheit|celsius)\b|\bhow many (?:inches|cm|centim\w+|feet|mm)\b"
)

_RULES = (
    Rule("convert", (_IN_UNITS,), when=lambda a: bool(a.amount) and not a.told.animal),
    Rule("surface", (r"\bguns?\b|\binfra ?red\b",), when=lambda a: bool(a.degrees and a.surface)),
    Rule(
        "surface",
        (r"\bguns?\b|\binfra ?red thermo", r"\b(?:real\w*|true|trust|accurate|actual\w*)\b"),
        when=lambda a: bool(a.degrees),
    ),
    Rule("check", (), when=lambda a: bool(a.readings) and a.warmth),
    Rule("meter", (), when=lambda a: bool(a.readings)),
    Rule("check", (), when=lambda a: bool(a.told.all(FactName.UVI)) and a.about_an_animal),
    Rule(
        "decline",
        (_UV,),
        r"\bchang\w* (?:\w+ ){0,4}(?:to|for)\b",
        lambda a: bool(a.told.all(FactName.AGE)) and not a.at_a_distance and not a.warmth,
    ),
    Rule(
        "plan",
        (
            (
                r"\bplan\b|\bshopping list\b|\bset(?:ting)?[ -]?(?:\w+ )?up (?:an? |my |the )"
                r"|\bwant to (?:get|buy|keep)\b|\b(?:thinking|think) (?:of|about) getting\b"
                r"|\bgetting (?:an?|my)\b|\bnew set-?up\b|\bwhat (?:do|will|would) i need\b"
            ),
        ),
        r"\bcheck\b|\bneed (?:at night|uv\w*)\b",
        lambda a: (
            not _tells_a_set_up(a)
            and not a.says(r"\bwatt|\bgetting (?:an?) (?:new )?(?:uv|bulb|tube|lamp)")
        ),
    ),
    Rule(
        "hours",
        (
            (
                r"\bhow (?:many hours|long)\b.*\b(?:lights?|uv\w*|lamps?|bulbs?|on|day)\b|\btimer\b"
                r"|\b(?:day ?length|photoperiod|light cycle)\b"
                r"|\bhours of (?:\w+ )?(?:light|uv\w*|day\w*)\b"
                r"|\bwhat time\b.*\b(?:lights?|uv\w*|lamps?)\b|\bhow long is (?:the|a) day\b"
                r"|\b(?:lights?|day|days|hours)\b.*\b(?:winter|summer|seasons?|all year)\b"
                r"|\b(?:winter|summer|seasons?)\b.*\b(?:lights?|days?|hours)\b"
            ),
        ),
        r"\b(?:new|last|lasts|replac\w+|wait|burn\w*|before i|good for|keep for)\b",
        lambda a: not a.warmth,
    ),
    Rule(
        "air",
        (r"\bwatt\w*\b|\b\d+ ?w\b|\b(?:heat|warm)\b", r"\b(?:enough|heat|warm|hold|keep)\b"),
        r"\b(?:mat|rock|night)\b|\bwhat watt|\bhow many watt|\bbasking\b",
        lambda a: a.told.size is not None and not a.uv,
    ),
    Rule("plan", (r"\bwatt\w*\b",), when=lambda a: a.told.size is not None and not a.warmth),
    Rule(
        "basking",
        (r"\bbask\w*|\bhot ?spot\b", _CHANGE, r"\b\d+ ?w(?:atts?)?\b"),
        r"\b(?:which|what|how many) watt",
        lambda a: not a.uv,
    ),
    Rule(
        "watts",
        (
            (
                r"\b(?:what|which|how many|how much|right|best|more|higher|lower)\b.*\bwatt"
                r"|\bwhat (?:size|strength) (?:of )?(?:heat |basking )?(?:bulb|lamp)\b"
                r"|\b\d+ ?w(?:atts?)?\b.*\b(?:enough|too (?:much|little|strong|weak)|ok\w*)\b"
                r"|\benough\b.*\b\d+ ?w\b"
            ),
        ),
        r"\buv\w*\b",
        lambda a: not a.uv,
    ),
    Rule(
        "needs",
        (r"\bnight|\bovernight\b", r"\bhow (?:cold|warm|low|cool)\b|\bwhat temp|\blowest\b"),
        when=lambda a: bool(a.told.animal) and not a.degrees,
    ),
    Rule(
        "night",
        (
            r"\bnight\w*|\bovernight\b",
            r"\b(?:need\w*|heat\w*|cold\w*|warm\w*|drops?|falls?|gets?|goes|ok\w*|temp\w*|cool)\b",
        ),
        r"\b(?:lights?|uv\w*|lamps?|bulbs?)\b.*\b(?:on|off)\b",
        lambda a: not a.uv and not a.lamps and not a.warmth,
    ),
    Rule(
        "night",
        (),
        when=lambda a: bool(a.told.all(FactName.ROOM_NIGHT)) and _few(a) and not a.lamps,
    ),
    Rule(
        "lamp",
        (_ASKS,),
        r"\bhow (?:far|high|close|many)\b",
        lambda a: bool(a.lamps) and not a.warmth and not a.told.tube and not a.readings,
    ),
    Rule(
        "tube", (_UV, r"\b\d+(?:\.0)? ?%? or (?:an? )?\d+(?:\.0)? ?%?"), when=lambda a: not a.warmth
    ),
    Rule(
        "tube",
        (
            (
                r"\b(?:which|what|best|right)\b (?:\w+ ){0,3}(?:uv(?:b|a)?|tubes?|t5|percent\w*|%"
                r"|strength)(?! (?:index|level|meter))\b"
                r"|\bshould i (?:get|use|buy)\b.*(?:%|\btubes?\b|\buvb?\b)"
                r"|\b(?:what|which) (?:length|size)\b.*\b(?:tubes?|uvb?|t5)\b"
                r"|\bhow long\b.*\btube\b.*\b(?:tank|viv\w*|enclosure)\b"
            ),
        ),
        r"\b(?:uvi|uv index)\b|\b(?:what|which) (?:is|are|does|do|s)\b(?! the (?:best|right))"
        r"|\bneeds?\b.*\bfar\b|\b(?:distance|height)\b",
        lambda a: not a.warmth and not _tube_at_a_place(a),
    ),
    Rule(
        "uvi",
        (
            (
                r"\b(?:too (?:strong|weak|close|far|much|high|low)|enough|strong|ok\w*|safe|good"
                r"|fine)\b"
            ),
        ),
        when=lambda a: _tube_at_a_place(a) and not a.warmth,
    ),
    Rule(
        "uvi",
        (r"\b(?:what|which|how much) (?:is the )?uv(?:i| index| level)?\b|\bhow strong\b",),
        r"\b(?:should|need\w*)\b",
        lambda a: a.told.tube is not None or a.at_a_distance,
    ),
    Rule(
        "basking",
        (r"\bhow (?:far|high|close|low)\b|\b(?:distance|height)\b", _HEAT_LAMP),
        r"\buv\w*\b|\btubes?\b",
        lambda a: not a.uv,
    ),
    Rule(
        "distance",
        (
            (
                r"\bhow (?:far|high|close|low|near)\b|\bwhat (?:distance|height)\b"
                r"|\b(?:distance|height)\b|\bwhere\b.*\b(?:mount|hang|put|place|position|fit)\b"
            ),
            rf"{_UV}|\bit\b|\blights?\b",
        ),
        r"\bmeasure\b",
        lambda a: not a.warmth,
    ),
    Rule("check", (r"\bcheck\b", r"\b(?:set-?up|tank|viv\w*|enclosure)\b")),
    Rule(
        "temps",
        (),
        when=lambda a: a.warmth and not a.uv and not a.lamps and not a.told.lacks("uvb"),
    ),
    Rule(
        "needs",
        (_SHOULD, rf"{_HEAT}|{_UV}|\bneeds?\b|\bhumid\w*|\b(?:lights?|lighting|care)\b"),
        r"\b(?:reflector|need to know|thermostat|dimmer|meter)\b|\bwhy\b|\bhow (?:do|can) i\b"
        r"|\bwhat (?:do|should) i (?:do|feed)\b",
        lambda a: bool(a.told.animal) and _few(a),
    ),
    Rule(
        "needs",
        (
            rf"\b(?:what|how) (?:\w+ ){{0,2}}{_HEAT[2:]}|\bneeds? uv|\bwhat uv\w*",
            r"\b(?:should|does|do|for|need\w*|can)\b",
        ),
        r"\bwhy\b|\bhow (?:do|can) i\b|\bwhat (?:do|should) i (?:do|feed)\b",
        lambda a: a.about_an_animal and _few(a),
    ),
    Rule(
        "needs",
        (r"\b(?:what|how)\b", r"\bshould\b", r"\b(?:basking|cool|warm|hot|cold)\b"),
        r"\bwhy\b|\bhow (?:do|can|should) i\b|\bwhat should i\b|\bhow (?:far|high|close)\b",
        lambda a: _few(a) and not a.lamps,
    ),
)


def fitting(asked: Asked) -> tuple[str, ...]:
    """Return the questions that the words surely mean, the surest first."""
    return tuple(dict.fromkeys(rule.name for rule in _RULES if rule.fits(asked)))


_ADVICE = r"\b(?:help|new|beginner|first|advice|care|info|keep|tips?)\b"
_POSSIBLE = (
    Rule("basking", (r"\bbask\w*|\bhot ?spot\b", _CHANGE)),
    Rule("night", (r"\bnight\w*\b|\bovernight\b",)),
    Rule("air", (r"\b(?:cool|cold) (?:side|end)\b|\b(?:whole|entire) (?:tank|viv)|\bambient",)),
    Rule("distance", (_UV,)),
    Rule("tube", (_UV,)),
    Rule("temps", (_HEAT,), when=lambda a: a.warmth),
    Rule("watts", (rf"{_HEAT_LAMP}|\bwatt\w*|\b(?:heat|warm)\b",), r"\bnight"),
    Rule("hours", (r"\blight(?:s|ing)?\b",)),
    Rule(
        "needs",
        (rf"{_HEAT}|{_UV}|{_LIGHT}|\b(?:help|new|advice|care|info|keep)\b",),
        when=lambda a: a.about_an_animal,
    ),
    Rule("lamp", (r"\b(?:heat|basking|night) ?(?:lamps?|bulbs?|lights?)\b|\bheaters?\b",)),
    Rule(
        "plan",
        (r"\b(?:help|new|beginner|first|advice|care|keep)\b",),
        when=lambda a: bool(a.told.animal),
    ),
)


def possible(asked: Asked) -> tuple[str, ...]:
    """Return the questions that the words may mean, the likeliest first."""
    return tuple(dict.fromkeys(rule.name for rule in _POSSIBLE if rule.fits(asked)))
