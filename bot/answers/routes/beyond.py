"""What is no question for this bot: an ill animal, food, shedding, names, prices and the like."""

from bot.answers.linking import page_links
from bot.answers.routes.asked import Asked
from bot.answers.routes.filled import filled
from bot.answers.routes.pages import page_near
from bot.language.shown import copies_well
from bot.language.words import join_line
from bot.preferences import Context
from bot.reply import Reply

__all__ = ["is_beyond", "looks_ill", "other_reply", "vet_reply"]

_ILL = (
    (
        r"\b(?:isn'?t|not|won'?t|wont|stopped|stops|doesn'?t|refus\w+|hasn'?t|quit|barely|never)"
        r" (?:to |been |want(?:ing)? to )?(?:eat|eats|eating|eaten|food|mov\w+|walk\w*"
        r"|poop\w*|open\w*)\b"
    ),
    (
        r"\b(?:no appetite|off (?:his|her|its|their) food|lethargi\w+|listless|letharg\w*"
        r"|swollen|swelling|limp(?:ing|s)?|wheez\w+|gasping|mucus|bleed\w*|blood|bloody|seizures?"
        r"|twitch\w*|tremors?|shaking|paraly\w+|prolapse\w*|vomit\w*|regurg\w*|throw\w* up|diarr\w+"
        r"|runny poop|mouth rot|scale rot|mbd|metabolic bone|rubbery|soft (?:jaw|bones?|shell)"
        r"|egg ?bound|dying|sick|unwell|injur\w+|wounds?|hurt itself|infect\w*"
        r"|parasites?|mites|sunken|skinny|runny nose|panting|stuck eye\w*|los(?:t|ing) weight"
        r"|weight loss|abscess|lumps?"
        r"|got burn(?:t|ed)|burn(?:t|ed)? (?:his|her|its|on (?:his|her|its))|burns? on)\b"
    ),
    r"\b(?:shell|jaw|bones?) (?:is|are|feels?|seems?|got) (?:\w+ )?(?:soft|rubbery)\b",
    (
        r"(?<!i')\b(?:is|are|looks?|seems?|feels?|gets?|getting|got|acts?|became|so|very|really)"
        r" (?:\w+ )?(?:ill|weak|dead|thin|limp)\b(?! (?:mesh|wire|screen|uv|tube|bulb|lamp|light))"
    ),
    r"\b(?:fell (?:off|down|from|over|out)|fell and)\b|\bhaving (?:a )?fits?\b",
    r"\b(?:bubbles?|foam|discharge)\b.*\b(?:nose|mouth|eyes?)\b",
    (
        r"\beyes?\b.*\b(?:closed|shut|swollen|sunken|won'?t open)\b"
        r"|\b(?:clos\w+|shut\w*|keeps?) (?:his|her|its|their|both|one) eyes?\b"
    ),
    (
        r"\b(?:can'?t|cannot|won'?t|not) (?:\w+ )?us(?:e|ing) (?:his|her|its|the)\b"
        r"|\b(?:drag\w*|can'?t|cannot|won'?t) (?:\w+ )?(?:back |hind )?"
        r"(?:legs?|walk|move|climb|breathe)\b"
    ),
)
# Words of a lamp that is ill, so to speak, and of what somebody fears for later.
_NOT_ILL = (
    r"\b(?:temps?|temperatures?|room|house|heat|it) fell\b|\b(?:thin|weak) (?:mesh|wire|screen)"
    r"|\btoo weak\b|\b\d+ ?% (?:\w+ )*weak\b|"
    r"\b(?:weak\w*|dead|dying) (?:uv\w*|tube|bulb|lamp|light)"
    r"|\b(?:uv\w*|tube|bulb|lamp|light|meter)"
    r" (?:is |are |looks |getting |seems )*(?:too )?(?:weak\w*|dead|dying)\b"
)
_WHERE_TO_BUY = (
    r"\b(?:price|prices|cheap\w*|cost|costs|brands?|amazon|shop|shops|store|stores|discount)\b"
    r"|\bwhere (?:can|do|did|to|should)\b.*\b(?:buy|order|get an?|get one)\b"
)
_OTHER = (
    (
        r"\b(?:eats?|eating|feed\w*|fed|food|foods|diet|crickets?|roach\w*|dubias?|mealworms?|worms?"
        r"|greens|veg\w*|salad|fruits?|mice|mouse|rats?|pinkies|calcium|supplement\w*|vitamins?|dust\w*"
        r"|water bowl|drink\w*|hydrat\w*|gutload\w*|treats?)\b"
    ),
    r"\b(?:shed|sheds|shedding|stuck shed|brumat\w+|poop\w*|pee|smell\w*|bath\w*|soak\w*)\b",
    r"\b(?:male|female|boy|girl|gender|sex|sexing|breed\w*|mating|mate|eggs?|gravid|morphs?|het)\b",
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
    r"\bhow (?:old|big|long do|heavy|much (?:is|are|for))\b",
    r"\b(?:banana|apple|grape|lettuce|kale|carrot|tomato|strawberr|blueberr|honey|cheese)\w*\b",
    r"\b(?:lifespan|live for|full grown|grow\w*|fat|obese|overweight)\b",
    r"\b(?:what|how|which) (?:size|big|large)\b.*\b(?:tank|viv\w*|enclosure|cage|terrarium)\b",
)
_ON_TOPIC = (
    r"\b(?:uv\w*|tubes?|lamps?|bulbs?|lights?|lighting|heat\w*|temp\w*|bask\w*|warm\w*|cold\w*"
    r"|cool\w*|hot\w*|watt\w*|mesh|reflectors?|thermo\w*|nights?|timer|degrees|t5|t8)\b"
)
_SEE_A_VET = (
    "That sounds like a question for a reptile vet: please call one {soon}, and do not wait for "
    "the lamps to be put right. I cannot see your animal and cannot say what is wrong with it."
)
_MEANWHILE = (
    "Until you are there: keep it at its usual warmth, do not force food or water, and write down "
    "your temperatures and your lamp's age for the vet."
)
_NOT_MINE = (
    "I cannot help with that: I only work out UV light, heat, nights and hours of light. "
    "For this, ask the people of your group."
)


def looks_ill(asked: Asked) -> bool:
    """Say whether the words tell of an animal that may be ill."""
    if asked.signs:
        return True
    return any(asked.says(pattern) for pattern in _ILL) and not asked.says(_NOT_ILL)


def vet_reply(asked: Asked, context: Context) -> Reply:
    """Return the way to a vet, and what can be looked at here on the side."""
    lines = []
    if asked.told.animal:
        lines.append(f"What it should have: {join_line('needs', filled('needs', asked))}")
    heard = filled("check", asked)
    if (asked.uv or asked.warmth) and all(map(copies_well, heard.values())):
        lines.append(f"Check the set-up you told me: {join_line('check', heard)}")
    else:
        kind = asked.animal_for_examples(context)
        told = f"{kind}, 12% tube, no mesh, 16in to his back, basking 98F, cool 75F"
        lines.append(
            f"Check your lamps and warmth beside it: {join_line('check', {'setup': told})}"
        )
    return Reply(
        command="ask",
        status="ok",
        title="Please call a reptile vet",
        answer=_SEE_A_VET.format(soon=asked.signs[0].soon if asked.signs else "today"),
        steps=(_MEANWHILE, *lines),
        guide=page_links(("when-to-call-a-vet", "what-this-bot-cannot-know"), context.guide_url),
    )


def is_beyond(asked: Asked) -> bool:
    """Say whether the words ask what is not for this bot."""
    if asked.says(_WHERE_TO_BUY):
        return True
    if asked.uv or asked.warmth or asked.says(_ON_TOPIC):
        return False
    return any(asked.says(pattern) for pattern in _OTHER)


def other_reply(asked: Asked, context: Context) -> Reply:
    """Return what the bot is for, with the nearest page and a question it can answer."""
    animal = asked.animal_for_examples(context)
    near = page_near(asked) or "how-to-ask"
    example = join_line("needs", {"animal": animal})
    return Reply(
        command="ask",
        status="problem",
        title="Not a question for me",
        answer=_NOT_MINE,
        steps=(f"What I can tell you: {example}", "All my questions: help"),
        guide=page_links((near,), context.guide_url),
    )
