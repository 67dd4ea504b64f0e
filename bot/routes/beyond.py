"""What is no question for this bot: food, shedding, names, prices and the like."""

from bot.facts import Say
from bot.language.words import join_line
from bot.layered import Brief, Layered
from bot.preferences import Context
from bot.routes.asked import Asked
from bot.routes.offered import ForExample
from bot.routes.pages import page_near

__all__ = ["BEYOND", "asks_to_buy", "is_beyond", "not_mine"]

BEYOND = Say("ask-title-beyond")
"""The title of the reply to what is no question for this bot."""

_WHERE_TO_BUY = (
    r"\b(?:prices?|discount)\b|\bbrands?\b(?! new)"
    r"|\b(?:which|what|any|good|best|online|cheap|cheapest) (?:\w+ )?(?:shop|store|place)s?\b"
    r"|\b(?:where|who)\b.*\bcheap\w*|\bcheapest\b"
    r"|\b(?:what|how much)\b.{0,40}\bcosts?\b|\bcosts?\W*$"
    r"|\bhow much (?:is|are) (?:an? |the |those |these )?(?:\d+ ?%? ?\w* ?)?(?:tube|bulb|lamp"
    r"|fixture|thermostat|meter|gecko|dragon|snake|lizard|tortoise)s?\b"
    r"|\bwhere (?:can|do|did|to|should)\b.*\b(?:buy|order|get an?|get one)\b"
)
# What a seller says may be asked about.
_ADVISED = r"\b(?:shops?|stores?)\b.{0,16}\b(?:says?|said|told|tells?|claims?|gave|recommend\w*)\b"
_NO_BRANDS = r"\bno (?:brands?|shops?|prices?)\b"
_OTHER = (
    (
        r"\b(?:eats?|eating|feed\w*|fed|food|foods|diet|crickets?|roach\w*|dubias?|mealworms?|worms?"
        r"|greens|veg\w*|salad|fruits?|mice|mouse|rats?|pinkies|calcium|supplement\w*|vitamins?|dust\w*"
        r"|water bowl|drink\w*|hydrat\w*|gutload\w*|treats?)\b"
    ),
    r"\b(?:shed|sheds|shedding|stuck shed|brumat\w+|poop\w*|pee|smell\w*|bath\w*|soak\w*)\b",
    r"\b(?:male|female|boy|girl|gender|sex|sexing|breed(?:ing|s)?|mating|mate|eggs?|gravid|morphs?|het)\b",
    r"\b(?:names?|named|call (?:him|her|it|my))\b",
    r"\b(?:handl\w+|tame|taming|bit|bite|bites|hiss\w*|friendly|bored|lonely|love|happy|toys?)\b",
    (
        r"\b(?:substrate|sand|bedding|soil|paper towels?|humid\w*|mist\w*|fogger|hygrometer"
        r"|clean\w*|disinfect\w*|plants?|decor\w*|bioactive)\b"
    ),
    (
        r"\b(?:live together|same tank|cohab\w*|tank ?mates?|roommates?|two in one|get along)\b"
        r"|\b(?:shar(?:e|ing)|together in)\b.*\b(?:tank|viv\w*|enclosure|cage)"
    ),
    r"\b(?:wormer|wormers|de-?worm\w*|antibiotics?|medicat\w*|medicines?)\b",
    (
        r"\b(?:what|which) (?:kind|species|sort|type) (?:of \w+ )?(?:is|are) (?:this|it|he|she)\b"
        r"|\b(?:found|caught|spotted|saw)\b.*\bwhat (?:is (?:it|this|that|he|she)|are they)\b"
        r"|\bidentif\w+"
    ),
    (
        r"\b(?:two|2|three|several|both) (?:fe)?males?\b.*\b(?:together|fight\w*|share|same)\b"
        r"|\bmy (?:dogs?|cats?)\b.*\b(?:bark\w*|star(?:es?|ing)|jumps?|scratch\w*|afraid|scared)\b"
    ),
    r"\bhow (?:old|big|long do|heavy|much (?:is|are|for))\b",
    r"\b(?:banana|apple|grape|lettuce|kale|carrot|tomato|strawberr|blueberr|honey|cheese)\w*\b",
    r"\b(?:lifespan|live for|full grown|grow\w*|fat|obese|overweight)\b",
    r"\b(?:what|how|which) (?:size|big|large)\b.*\b(?:tank|viv\w*|enclosure|cage|terrarium)\b",
)
_ON_TOPIC = (
    r"\b(?:uv\w*|tubes?|lamps?|bulbs?|lights?|lighting|heat\w*|temp\w*|bask\w*|warm\w*|cold\w*"
    r"|cool\w*|hot\w*|watt\w*|mesh|reflectors?|thermo\w*|nights?|timer|degrees|t5|t8"
    r"|leds?|mats?|halogen|ceramics?|emitters?|panels?|dimm\w+|stats?"
    r"|(?:the|light|lamp) hours|hours in (?:the )?(?:winter|summer)"
    r"|lux|lumens?|bright\w*|dim)\b"
)


# Nothing here holds for eggs, whatever the warmth that is asked for.
_EGGS = r"\bincubat\w+"
_TOGETHER = (
    r"\b(?:can|could|may|will|should)\b.*\b(?:share|live together|be (?:kept|housed) together)\W*$"
)


def asks_to_buy(asked: Asked) -> bool:
    """Say whether a price or a shop is asked for, and not whether a seller is right."""
    told = asked.says(_ADVISED) or asked.says(_NO_BRANDS)
    return asked.says(_WHERE_TO_BUY) and not told


def is_beyond(asked: Asked) -> bool:
    """Say whether the words ask what is not for this bot."""
    if asks_to_buy(asked) or asked.says(_EGGS) or asked.says(_TOGETHER):
        return True
    if asked.uv or asked.warmth or asked.says(_ON_TOPIC):
        return False
    return any(asked.says(pattern) for pattern in _OTHER)


def not_mine(asked: Asked, context: Context) -> Layered:
    """Return what the bot is for, with the nearest page and a question it can answer."""
    animal = asked.animal_for_examples(context)
    example = ForExample(join_line("needs", {"animal": animal}))
    steps = (Say("ask-what-i-can", example), Say("ask-all-of-mine"))
    return Layered(
        command="ask",
        status="problem",
        title=BEYOND,
        brief=Brief(Say("ask-beyond"), steps=steps[:1]),
        steps=steps,
        guide=(page_near(asked) or "how-to-ask",),
    )
