"""Rules of what warms an animal, and how warm or cold a place or a night may be, in their order."""

from bot.routes.quantity import asks_if_right
from bot.routes.rule import CHANGE, FIT, Rule, few, judges_its_size, only_the_night

__all__ = ["OF_WARMTH"]

OF_WARMTH = (
    Rule(
        "air",
        (
            r"\bwatt\w*\b|\b\d+ ?w\b|\b(?:heat|warm|bulb|lamp)\b",
            r"\b(?:enough|heat|warm|hold|keep|gets?|reach)\b",
        ),
        r"\b(?:mat|rock|night)\b|\bwhat watt|\bhow many watt|\bbasking\b",
        lambda a: a.told.size is not None and not a.uv,
    ),
    Rule("plan", (r"\bwatt\w*\b",), when=lambda a: a.told.size is not None and not a.warmth),
    Rule(
        "basking",
        (r"\bbask\w*|\bhot ?spot\b", CHANGE, r"\b\d+ ?w(?:atts?)?\b"),
        r"\b(?:which|what|how many) watt",
        lambda a: not a.uv,
    ),
    Rule(
        "watts",
        (
            (
                r"\b(?:what|which|how many|how much|right|best|more|higher|lower)\b.*\bwatt"
                r"|\bwattage for\b"
                r"|\bwhat (?:size|strength) (?:of )?(?:heat |basking )?(?:bulb|lamp)\b"
                r"|\b\d+ ?w(?:atts?)?\b.*\b(?:enough|too (?:much|little|strong|weak)|ok\w*)\b"
                r"|\benough\b.*\b\d+ ?w\b|\b\d+ ?w?\w* or \d+ ?w(?:atts?)?\b"
            ),
        ),
        r"\buv\w*\b",
        lambda a: not a.uv,
    ),
    Rule("watts", (), when=judges_its_size),
    Rule(
        "needs",
        (r"\bnight|\bovernight\b", r"\bhow (?:cold|warm|low|cool)\b|\bwhat temp|\blowest\b"),
        when=lambda a: bool(a.told.animal) and not a.degrees,
    ),
    Rule(
        "needs",
        (r"\bhow cold (?:can|may|could)\b|\blowest temp\w*",),
        when=lambda a: bool(a.told.animal) and not a.degrees and few(a),
    ),
    Rule(
        "night",
        (
            r"\bnight\w*|\bovernight\b",
            (
                r"\b(?:need\w*|heat\w*|cold\w*|warm\w*|drops?|falls?|gets?|goes|ok\w*|temp\w*|cool"
                r"|bad|good|fine|safe|alright|right|enough|normal)\b"
            ),
        ),
        r"\b(?:lights?|uv\w*|lamps?|bulbs?)\b.*\b(?:on|off)\b",
        lambda a: not a.uv and not a.lamps and not a.warmth,
    ),
    Rule("night", (), when=only_the_night),
    Rule(
        "needs",
        (),
        r"\bnight|\broom\b|\blamp|\bmy (?!\w* ?(?:breeder|friend|vet|shop|store|seller))"
        r"|\bgun\b|\bhouse\b|\bset[- ]?up\b",
        lambda a: bool(a.told.animal and a.degrees) and few(a) and not a.lamps and asks_if_right(a),
    ),
    Rule("temps", (FIT,), when=lambda a: bool(a.told.animal and a.bare_warmth) and few(a)),
    Rule(
        "temps",
        (),
        r"\b(?:should|what|which|change|bath|bathe|soak|misting)\b"
        r"|\bwater (?:dragon|monitor|snake)",
        lambda a: bool(a.told.animal and a.water) and few(a) and not a.lamps,
    ),
)
