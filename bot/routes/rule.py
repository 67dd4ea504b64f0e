"""A rule that tells which question free words mean, and the words that rules share."""

from collections.abc import Callable
from dataclasses import dataclass

from bot.language.hearing import FactName
from bot.routes.asked import Asked

__all__ = [
    "ANY_UV",
    "ARRANGED",
    "ASKS",
    "BRIGHTNESS",
    "CHANGE",
    "FIT",
    "HEAT",
    "HEAT_LAMP",
    "HOME",
    "HOURS",
    "HOW_DEEP",
    "HOW_FAR",
    "IN_UNITS",
    "LASTS",
    "LIGHT",
    "NO_PLAN",
    "NO_WARMTH",
    "ONE_OR_OTHER",
    "ONLY_A_FIGURE",
    "RENEWED",
    "SHOULD",
    "UV",
    "WHAT_NEXT",
    "Rule",
    "always",
    "few",
    "judges_its_size",
    "names_a_size",
    "only_a_reading",
    "only_an_animal",
    "only_the_night",
    "says_just_an_animal",
    "tells_a_set_up",
    "tells_anything",
    "tube_at_a_place",
]

UV = r"\b(?:uv\w*|tubes?|t5s?|t8s?|5\.0|10\.0|\d+ ?(?:%|percent))"
ANY_UV = rf"{UV}|\b(?:mercury\w*|mvbs?|metal halides?|compacts?|coils?)\b"
RENEWED = r"\b(?:chang|replac|swap|renew)\w*"
LASTS = r"\bhow old\b.*\b(?:can|may|gets?|too)\b|\bhow long\b.*\b(?:lasts?|good for)\b"
LIGHT = r"\b(?:lights?|lamps?|bulbs?|uv\w*|tubes?)\b"
HEAT = r"\b(?:temp\w*|hot\w*|warm\w*|heat\w*|cold\w*|cool\w*|bask\w*|degrees|chilly)\b"
HEAT_LAMP = r"\b(?:heat|basking|halogen|flood|spot) ?(?:lamps?|bulbs?|lights?)\b"
ASKS = (
    r"\b(?:is|are|can|could|should|shall|do|does|what|whats|which|why|how|or|vs|yes or no|better"
    r"|good|ok\w*|safe|bad|instead|recommend\w*|need|enough|any good)\b|\?"
)
WHAT_NEXT = (
    r"\b(?:what(?:'?s| is| comes| do i do| should i do| to do| can i do)? next"
    r"|next (?:upgrade|step)"
    r"|(?:what|anything|something)\b.{0,30}\b(?:improve|upgrade)"
    r"|how (?:can|do|could) i (?:improve|upgrade)"
    r"|make (?:it|his|her|their|my \w+) (?:\w+ )?better|beyond the (?:bare )?minimum)\b"
)
ARRANGED = (
    r"\b(?:side by side|in a row|next to each other|arrang\w*|which way|lengthwa?ys|lengthwise"
    r"|across|layout|lay (?:them )?out)\b"
)
BRIGHTNESS = (
    r"\b(?:how (?:bright|dim|many (?:lumens?|lux))|bright enough|light enough"
    r"|enough (?:light|lux|lumens?)|(?:too|very|so) (?:dim|dark|bright)|brighter|brightness"
    r"|\d+ ?(?:lm|lumens?|lx|lux|foot[- ]?candles?)|(?:lux|light) ?meter\D{0,30}\d{2,6})\b"
)
_GLOWS = (
    r"\b(?:halogens?|incandescents?|flood ?(?:lamp|light|bulb)?s?"
    r"|(?:heat|basking) ?(?:lamp|bulb|light)s?)\b"
)
_STRONG_ENOUGH = (
    r"\b(?:too (?:hot|strong|weak|much)|(?:hot|warm|strong) enough|enough (?:heat|warmth|for))\b"
)
FIT = r"\b(?:ok\w*|alright|all right|fine|good|safe|right|enough|too \w+|correct)\b"
SHOULD = (
    r"\b(?:should|needs?|right|normal|required?|requirements?|ideal|best|recommended|supposed"
    r"|proper|care|parameters|does an?|do they (?:like|want))\b"
)
CHANGE = (
    r"\b(?:bring|get\w*|lower|raise|drop|increase|reduce|too (?:hot|cold|high|low|warm)|can'?t"
    r"|won'?t|only|stuck|hotter|cooler|warmer|down|up)\b"
)


def always(_asked: Asked) -> bool:
    """Say yes: the words alone decide."""
    return True


# German says "how low" for it.
HOW_DEEP = (r"\bhow (?:deep|low)\b", r"\bwater\b")
NO_WARMTH = r"\b(?:temp\w*|cold|cool|warm|heat\w*)\b"
NO_PLAN = r"\bwatt|\bgetting an? (?:new )?(?:uv|bulb|tube|lamp)"


@dataclass(frozen=True, slots=True)
class Rule:
    """A question, the words that ask it (all patterns), those that rule it out, and what else."""

    name: str
    asks: tuple[str, ...]
    unless: str = ""
    when: Callable[[Asked], bool] = always

    def fits(self, asked: Asked) -> bool:
        """Say whether the words ask this."""
        if self.unless and asked.says(self.unless):
            return False
        return all(asked.says(pattern) for pattern in self.asks) and self.when(asked)


def few(asked: Asked) -> bool:
    """Say whether nothing of a set-up was told that an answer would have to look at."""
    return not (asked.uv or asked.warmth or asked.at_a_distance)


def judges_its_size(asked: Asked) -> bool:
    """Say whether a lamp that glows is judged for an animal: its size tells, not its kind."""
    other = r"\b(?:uv\w*|nights?|overnight|light|bright|guard|surface|what|how)\b|\d"
    judged = asked.says(_GLOWS) and asked.says(_STRONG_ENOUGH) and not asked.says(other)
    return judged and bool(asked.told.animal) and few(asked) and not asked.degrees


def says_just_an_animal(asked: Asked) -> bool:
    """Say whether the name of an animal is all that was said."""
    return any(said.words == asked.said.strip(" ?!.") for said in asked.told.all(FactName.ANIMAL))


def tells_a_set_up(asked: Asked) -> bool:
    """Say whether something of the UV and of the warmth was told."""
    return asked.uv and asked.warmth


def tube_at_a_place(asked: Asked) -> bool:
    """Say whether a tube was told and how far away it is."""
    return asked.told.tube is not None and (asked.at_a_distance or bool(asked.so_close))


def only_the_night(asked: Asked) -> bool:
    """Say whether a room's night was told, and no lamp."""
    return bool(asked.told.all(FactName.ROOM_NIGHT)) and few(asked) and not asked.lamps


def tells_anything(asked: Asked) -> bool:
    """Say whether more was told than the animal."""
    return len(asked.told.facts) > bool(asked.told.animal)


def only_a_reading(asked: Asked) -> bool:
    """Say whether a meter reading at a distance was told, and nothing that it is checked with."""
    return asked.reading_here is not None and not (asked.warmth or asked.told.tube)


def names_a_size(asked: Asked) -> bool:
    """Say whether the sides of an enclosure are told."""
    return asked.told.size is not None or asked.says(r"\d ?[x×] ?\d")


def only_an_animal(asked: Asked) -> bool:
    """Say whether an animal was named, and no figure that would have to be looked at."""
    # Gallons say nothing that an answer has to look at.
    figures = r"\b\d+(?![\d.]* ?gal)"
    return bool(asked.told.animal) and few(asked) and not asked.lamps and not asked.says(figures)


HOW_FAR = (
    r"\bhow (?:far|high|close|low|near|many (?:inches|cm|feet))\b|\bwhat (?:distance|height)\b"
    r"|\b(?:distance|height)\b|\bwhere\b.*\b(?:mount|hang|put|place|position|fit)\b"
)
HOME = r"\b(?:set[- ]?up|tank|viv\w*|enclosure|cage)\b"
ONLY_A_FIGURE = (
    r"^(?:so |and )?(?:how (?:hot|cold|warm|big|long|far|much|high) is|what(?:'?s| is)) "
    r"[-+]?\d[\d.,]* ?(?:°|degrees?)? ?(?:inch(?:es)?|in|cm|mm|ft|feet|fahrenheit|celsius|[cf])\W*$"
)
ONE_OR_OTHER = (
    r"\b\d+(?:\.0)? ?%? (?:or|to|for|vs|than) (?:an? )?\d+(?:\.0)? ?%?"
    r"|\d ?% (?:\w+ ){0,2}and (?:an? )?(?:\w+ )?\d+ ?%.{0,24}\bwhich\b"
)
IN_UNITS = (
    r"\bconvert\b|\b(?:in|to|into|as) (?:an? )?(?:°?[cf]|inch(?:es)?|cm|mm|met(?:er|re)s?|feet|ft"
    r"|centi\w+|fahrenheit|celsius)\b|\bhow many (?:inches|cm|centim\w+|feet|mm)\b"
)
HOURS = (
    r"\bhow (?:many hours|long)\b.*\b(?:lights?|uv\w*|lamps?|bulbs?|on|day)\b|\btimer\b"
    r"|\b(?:day ?length|photoperiod|(?:light|night) cycle)\b"
    r"|\bhours? of (?:\w+ )?(?:light|uv\w*|day\w*)\b"
    r"|\b(?:whole|all|entire|every) day\b|\bwhen\b.*\blights?\b.*\b(?:on|off)\b"
    r"|\bwhat time\b.*\b(?:lights?|uv\w*|lamps?)\b|\bhow long is (?:the|a) day\b"
    r"|\b(?:lights?|day|days|hours)\b.*\b(?:winter|summer|seasons?|all year)\b"
    r"|\b(?:winter|summer|seasons?)\b.*\b(?:lights?|days?|hours)\b"
)
