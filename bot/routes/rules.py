"""Which question free words surely mean: rules of words, tried in turn, the surest first.

A rule needs both: words that ask, and something the question is about. Words that fit no rule
are not forced into one; they may still offer several questions.
"""

from bot.language.hearing import FactName
from bot.routes.asked import Asked
from bot.routes.of_sky import OF_SUN, OUTSIDE, sky_latitude, sky_month
from bot.routes.of_two import two_at_a_place
from bot.routes.rule import (
    ANY_UV,
    ARRANGED,
    ASKS,
    BRIGHTNESS,
    FIT,
    HEAT,
    HEAT_LAMP,
    HOME,
    HOURS,
    HOW_DEEP,
    HOW_FAR,
    IN_UNITS,
    LASTS,
    LIGHT,
    NO_PLAN,
    NO_WARMTH,
    ONE_OR_OTHER,
    ONLY_A_FIGURE,
    RENEWED,
    SHOULD,
    UV,
    WHAT_NEXT,
    Rule,
    few,
    names_a_size,
    only_a_reading,
    only_an_animal,
    says_just_an_animal,
    tells_a_set_up,
    tells_anything,
    tube_at_a_place,
)
from bot.routes.rules_of_warmth import OF_WARMTH

__all__ = ["fitting"]


_RULES = (
    Rule("needs", (), when=says_just_an_animal),
    Rule("needs", HOW_DEEP, NO_WARMTH, lambda a: bool(a.told.animal)),
    Rule(
        "needs",
        (r"^(?:so |and )?(?:does|do|will) (?:he|she|it|they) (?:\w+ )?need\b", rf"{HEAT}|{UV}"),
        r"\bnight|\bmeter\b|\bthermostat\b",
        few,
    ),
    Rule(
        "about",
        (
            (
                r"\bare (?:you|u) (?:an? )?(?:\w+ )?"
                r"(?:bot|robot|human|person|real|ai|machine|computer)\b"
                r"|\b(?:who|what) (?:are (?:you|u)|is this(?: bot)?|made you)\W*$"
                r"|\bam i (?:talking|speaking|chatting) (?:to|with) an?\b"
            ),
        ),
    ),
    Rule("compare", (), when=lambda a: two_at_a_place(a) and not a.warmth),
    Rule("convert", (ONLY_A_FIGURE,), when=lambda a: bool(a.amount)),
    Rule("convert", (IN_UNITS,), when=lambda a: bool(a.amount) and not a.told.animal),
    Rule("surface", (r"\bguns?\b|\binfra ?red\b",), when=lambda a: bool(a.degrees and a.surface)),
    Rule(
        "surface",
        (r"\bguns?\b|\binfra ?red thermo", r"\b(?:real\w*|true|trust|accurate|actual\w*)\b"),
        when=lambda a: bool(a.degrees),
    ),
    Rule("check", (), when=lambda a: bool(a.readings) and a.warmth),
    Rule("meter", (), when=lambda a: bool(a.readings)),
    Rule("meter", (), when=only_a_reading),
    Rule("check", (), when=lambda a: bool(a.told.all(FactName.UVI)) and a.about_an_animal),
    Rule(
        "decline",
        (ANY_UV, RENEWED, r"\b(?:when|how (?:often|soon|long)|every)\b"),
        r"\b(?:to|for) (?:an? )?\d|\bdistance\b|\bfar\b",
        lambda a: not a.told.all(FactName.AGE) and not a.at_a_distance and not a.warmth,
    ),
    Rule(
        "decline",
        (UV,),
        r"\bchang\w* (?:\w+ ){0,4}(?:to|for)\b",
        lambda a: bool(a.told.all(FactName.AGE)) and not a.at_a_distance and not a.warmth,
    ),
    Rule("decline", (ANY_UV, LASTS), when=lambda a: not a.at_a_distance and not a.warmth),
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
        lambda a: not tells_a_set_up(a) and not a.says(NO_PLAN),
    ),
    Rule(
        "outdoors",
        (OUTSIDE, OF_SUN),
        r"\b(?:tubes?|bulbs?|lamps?|lights?|t5s?)\b",
        lambda a: sky_latitude(a) is not None or sky_month(a) is not None,
    ),
    Rule(
        "hours",
        (HOURS,),
        r"\b(?:new|last|lasts|replac\w+|wait|burn\w*|before i|good for|keep for)\b",
        lambda a: not a.warmth,
    ),
    Rule("bright", (BRIGHTNESS,), r"\buvi\b|\bnight\b", lambda a: not a.warmth and not a.readings),
    Rule(
        "bright",
        (r"\bleds?\b", r"\b(?:enough|too (?:strong|weak|much|little))\b"),
        r"\buv\w*|\b(?:heat|warm\w*|bask\w*|night)\b",
        lambda a: not a.warmth and not a.readings,
    ),
    *OF_WARMTH,
    Rule("next", (WHAT_NEXT,)),
    Rule("arrange", (ARRANGED, LIGHT), when=names_a_size),
    Rule("check", (r"\b(?:check|rate|review|critique|look at)\b", HOME), when=tells_anything),
    Rule("check", (r"\bset[- ]?up\b", FIT), when=tells_anything),
    Rule(
        "distance",
        (HOW_FAR,),
        r"\bmeasure\b",
        lambda a: a.told.uv_lamp is not None and not a.warmth and not a.at_a_distance,
    ),
    Rule(
        "lamp",
        (ASKS,),
        r"\bhow (?:far|high|close|many)\b|\b(?:expires?|lasts?|lifespan|worn|wears?)\b"
        r"|\b(?:what|which) temp|\btemps? (?:for|should)\b|\bdistance\b",
        lambda a: bool(a.lamps) and not a.warmth and not a.told.tube and not a.readings,
    ),
    Rule("tube", (UV, ONE_OR_OTHER), when=lambda a: not a.warmth),
    Rule(
        "distance",
        (UV, r"\benough\b|\btoo (?:strong|weak|much|little)\b"),
        HEAT,
        lambda a: a.told.tube is not None and not tube_at_a_place(a) and bool(a.told.animal),
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
        lambda a: not a.warmth and not tube_at_a_place(a),
    ),
    Rule(
        "uvi",
        (
            (
                r"\b(?:too (?:strong|weak|close|far|much|high|low)|enough|strong|ok\w*|safe|good"
                r"|fine)\b"
            ),
        ),
        when=lambda a: tube_at_a_place(a) and not a.warmth,
    ),
    Rule(
        "uvi",
        (r"\b(?:what|which|how much) (?:is the )?uv(?:i| index| level)?\b|\bhow strong\b",),
        r"\b(?:should|need\w*)\b",
        lambda a: a.told.tube is not None or a.at_a_distance,
    ),
    Rule(
        "basking",
        (r"\bhow (?:far|high|close|low)\b|\b(?:distance|height)\b", HEAT_LAMP),
        r"\buv\w*\b|\btubes?\b",
        lambda a: not a.uv,
    ),
    Rule(
        "distance",
        (
            HOW_FAR,
            rf"{UV}|\bit\b|\blights?\b",
        ),
        r"\bmeasure\b",
        lambda a: not a.warmth,
    ),
    Rule(
        "temps",
        (),
        when=lambda a: a.warmth and not a.uv and not a.lamps and not a.told.lacks("uvb"),
    ),
    Rule(
        "needs",
        (
            SHOULD,
            rf"{HEAT}|{UV}|\bneeds?\b|\bhumid\w*|\b(?:lights?|lighting|care|requirements|parameters)\b",
        ),
        r"\b(?:reflector|need to know|thermostat|dimmer|meter)\b|\bwhy\b|\bhow (?:do|can) i\b"
        r"|\bwhat (?:do|should) i (?:do|feed)\b",
        lambda a: bool(a.told.animal) and few(a),
    ),
    Rule(
        "needs",
        (
            rf"\b(?:what|how) (?:\w+ ){{0,2}}{HEAT[2:]}|\bwhich temp|\bneeds? uv|\bwhat uv\w*",
            r"\b(?:should|must|does|do|for|need\w*|can)\b",
        ),
        r"\bwhy\b|\bhow (?:do|can) i\b|\bwhat (?:do|should) i (?:do|feed)\b",
        lambda a: a.about_an_animal and few(a),
    ),
    Rule(
        "needs",
        (r"\b(?:what|how)\b", r"\bshould\b", r"\b(?:basking|cool|warm|hot|cold)\b"),
        r"\bwhy\b|\bhow (?:do|can|should) i\b|\bwhat should i\b|\bhow (?:far|high|close)\b",
        lambda a: few(a) and not a.lamps,
    ),
    Rule(
        "lamp",
        (
            r"\b(?:which|what|best|good)\b.*\b(?:bulbs?|lamps?|heaters?|heat source)\b",
            rf"{HEAT}|\bheaters?\b",
        ),
        r"\buv\w*|\btubes?\b|\bwatt\w*|\b(?:dimmer|thermostat|timer)\b|\bdo about\b",
        lambda a: not a.uv and not a.warmth,
    ),
    Rule(
        "needs",
        (rf"{HEAT}|{UV}",),
        rf"\bwhy\b|\bhow (?:do|can|should) i\b|{HEAT_LAMP}|\b(?:help|problem|night|sleep)\w*\b",
        only_an_animal,
    ),
)


def fitting(asked: Asked) -> tuple[str, ...]:
    """Return the questions that the words surely mean, the surest first."""
    return tuple(dict.fromkeys(rule.name for rule in _RULES if rule.fits(asked)))
