"""What a few words ask about what was spoken of, by a name alone: nights, hours, which heater."""

import re
from collections.abc import Collection, Mapping
from dataclasses import dataclass, field

__all__ = ["Topic", "topic_of"]

_MOST_WORDS = 12
_MOST_OF_A_NAME = 6
_THERMOSTATS = (
    "page:thermostats-and-timers",
    "page:answers-about-heat",
    "page:answers-about-dimming",
)


@dataclass(frozen=True, slots=True)
class Topic:
    """A question that a few words name; ``after``: only behind one of these questions."""

    command: str
    form: str
    values: Mapping[str, object] = field(default_factory=dict)
    after: Collection[str] = ()
    most: int = _MOST_OF_A_NAME
    of_an_animal: bool = True

    def is_meant(self, plain: str, before: str, page: str) -> bool:
        """Say whether the words name it behind the question before, or the page after it."""
        if self.after and before not in self.after and f"page:{page}" not in self.after:
            return False
        return len(plain.split()) <= self.most and re.search(self.form, plain) is not None


def _page(form: str, page: str, part: str, *after: str) -> Topic:
    """Return a part of a page that words ask for, whatever the animal."""
    values = {"page": page, "part": part}
    return Topic("guide", form, values, after, _MOST_WORDS, of_an_animal=False)


_HEAT_PAGES = ("page:arranging-the-lamps", "page:basking-lamps", "page:heat-sources")
_HEAT = ("watts", "basking", "temps", "lamp", "needs")
_OF_UV = ("distance", "uvi", "tube", "meter", "section", "decline")
_FAR = r"\bhow (?:far|high|close|low|near)\b|\bwie (?:weit|hoch|nah)\b"
_DISTANCE = (
    r"^(?:and |und |the |so |ok |what about |what |which |der |die |das )*"
    r"(?:(?:the |right |best )?(?:distance|gap|height|abstand|höhe))(?: then| dann)?\W*$"
)
_TOPICS = (
    _page(
        r"\bwomit (?:heiz\w*|wärm\w*)|\b(?:how|what) (?:do|can|should|shall) i (?:heat|warm"
        r"|use to heat)"
        r"|\bheat (?:it|him|her) (?:with what|how)\b|\bwie (?:heiz\w*|wärm\w*)",
        "nights",
        "How to add it",
        "night",
    ),
    _page(
        r"^(?:and |und |but |ok |so )*(?:with what|what with|womit|mit was)\b"
        r"|\bhow (?:do|can|should) i (?:measure|read|check)(?: (?:it|that|this|them|uvi?\w*))?\W*$"
        r"|\bwie mess\w* (?:ich|man) (?:das|es|ihn|uv\w*)\b",
        "how-to-take-a-reading",
        "Taking it",
        *_OF_UV,
        *("check", "page:reading-a-uv-meter", "page:how-to-take-a-reading"),
        *("page:answers-about-tubes", "page:answers-about-uv"),
    ),
    _page(
        r"\b(?:glass|plexi\w*|acrylic|perspex|glasscheibe|scheibe)\b"
        r"(?! (?:tank|viv\w*|enclosure|box|terra\w*|aquarium|cage))",
        "answers-about-tubes",
        "Does glass let UV through?",
        *("distance", "uvi", "tube", "meter", "section"),
    ),
    Topic(
        "needs",
        r"^(?:and |und |what about |ok |so )*(?:the |die )(?:uvb?[ -]?)?(?:tube|uv|uvb|röhre)\W*$",
        {"about": "uvi"},
        after=("temps", "basking", "watts", "night", "hours", "needs", "lamp", "check", "next"),
        of_an_animal=False,
    ),
    Topic(
        "distance",
        rf"\b(?:uvb?|tube|t5|röhre)\b.*(?:{_FAR}|\b(?:distance|gap|height|abstand|höhe)\b)"
        rf"|(?:{_FAR}|\b(?:distance|gap|height|abstand|höhe)\b).*\b(?:uvb?|tube|t5|röhre)\b"
        r"|\b(?:uv\w*|röhren)-?abstand\b",
        most=_MOST_WORDS,
        of_an_animal=False,
    ),
    _page(
        rf"{_FAR}|{_DISTANCE}", "the-basking-spot", "How to set it", "watts", "lamp", *_HEAT_PAGES
    ),
    Topic("basking", rf"{_FAR}|{_DISTANCE}", after=("basking", "temps"), of_an_animal=False),
    Topic("distance", _DISTANCE, of_an_animal=False),
    _page(
        r"\b(?:burn|burns|verbrenn\w*|verbrennt)\b",
        "answers-about-uv",
        "Does UV harm an animal?",
        *_OF_UV,
    ),
    _page(r"\b(?:burn|burns|verbrenn\w*)\b", "answers-about-lamps", "Is a guard needed?", *_HEAT),
    _page(
        r"^(?:and |und |but |ok |so )*(?:with what|what with|womit|mit was|using what)\b"
        r"|\b(?:what|which) (?:tool|thermometer|gauge|device|instrument)\b"
        r"|\bhow (?:do|can|should) i (?:measure|read|check|take) (?:it|that|this|them|temps?\w*)\b"
        r"|\bwie mess\w*\b|\bwelches (?:thermometer|gerät)\b",
        "measuring-temperatures",
        "The two tools",
        *("temps", "basking", "watts", "night", "needs", "guide", "surface", "air", "lamp"),
    ),
    _page(
        r"^(?:its|it's|it is|for|for the|the|my|das ist|es ist|für|für die|die|eine?) ?"
        r"(?:an? |the |my |eine? )?(?:heat |wärme|heiz)?(?:mat|matte|emitter|ceramic|che|panel"
        r"|keramik\w*|heizer|heater)\b",
        "answers-about-heat",
        "Which thermostat for a heater?",
        *_THERMOSTATS,
    ),
    _page(
        r"^(?:its|it's|it is|for|for the|the|my|das ist|es ist|für|für die|die|eine?) ?"
        r"(?:an? |the |my |eine? )?(?:basking |heat |wärme|halogen )?(?:bulb|lamp|spot|halogen"
        r"|flood|birne|lampe|strahler)\b",
        "answers-about-heat",
        "Which thermostat for a lamp?",
        *_THERMOSTATS,
    ),
    Topic(
        "watts",
        r"^(?:and |und |the |so |ok |what |which |how many |how much |wie ?viel\w* |welche )*"
        r"(?:watts?|wattage|watt ?zahl|w|bulb size|size (?:of )?(?:the )?bulb)(?: then| dann)?\W*$",
        after=("temps", "basking", "needs", "hours", "lamp"),
    ),
    Topic(
        "needs",
        r"^(?:and |und |what about |the |die |das |ok |so )+(?:heat |basking |wärme)?"
        r"(?:lamp|bulb|light|lights|heat|lampe|licht|strahler|wärme)\W*$",
        after=(*_HEAT, *_OF_UV, "guide", "night", "hours", ""),
    ),
    _page(
        r"^(?!.*\b(?:far|high|weit|hoch)\b).*\b(?:plants?|pflanzen)\b",
        "light-and-colour",
        "Plants in the box",
    ),
    _page(r"\bbottles?\b|\bwärmflaschen?\b", "answers-about-heat", "Ready for a power cut"),
    _page(
        r"\bworn\b|\bused up\b|\bstill (?:works?|good|ok\w*)\b|\bverbraucht\b",
        "when-a-lamp-is-worn-out",
        "Without a meter",
    ),
    _page(
        r"\b(?:which|what|welches?)\b.*\bthermostat\b",
        "answers-about-heat",
        "Which thermostat for a heater?",
        "night",
        "lamp",
    ),
    _page(
        r"\b(?:which|what|welches?)\b.*\bthermostat\b",
        "answers-about-heat",
        "Which thermostat for a lamp?",
        "watts",
        "basking",
        "temps",
    ),
    _page(
        r"\b(?:which|what|welches?)\b.*\bthermostat\b",
        "thermostats-and-timers",
        "Three kinds",
    ),
    _page(
        r"^(?:\w+[ ,]+){0,3}(?:which|what) (?:one|ones|heater|then|instead|else|kind)\b"
        r"|^(?:und )?(?:welche[rs]?|was dann|was sonst|was stattdessen)\b",
        "nights",
        "How to add it",
        "night",
        "lamp",
    ),
    _page(
        r"\b(?:bright|shin\w+|glow\w*|lights? up|looks? (?:fine|ok\w*|good)|leuchtet|hell)\b",
        "answers-about-tubes",
        "Does it still give UV?",
        "decline",
    ),
    _page(
        r"\bdimm(?:er|ing)\b|\bdim\b",
        "answers-about-dimming",
        "Can a heat lamp be dimmed?",
        *("temps", "basking", "watts", "lamp"),
    ),
    _page(r"\bwhy (?:a |the )?vet\b|\bwarum (?:zum )?tierarzt\b", "when-to-call-a-vet", ""),
    _page(
        r"\bwho(?:'?s| is) right\b|\b(?:says?|said|thinks?|claims?) (?:no|yes|otherwise|not)\b"
        r"|\bwer hat recht\b|\bsagt (?:nein|ja|was anderes)\b",
        "whom-to-believe",
        "",
    ),
    _page(r"\bprobe\b|\bfühler\b", "answers-about-heat", "Where does the probe go?"),
    Topic(
        "tube",
        r"\breplacement\b|\breplace (?:it|him) (?:with|by)\b|\bnew one\b|\bersatz\b"
        r"|\b(?:which|what) (?:one )?(?:(?:should|do|shall) i|to) (?:get|buy|take)\b"
        r"|\bwelche (?:soll ich )?(?:kaufen|nehmen)\b",
        # The lamp that is worn out is not the next one.
        {"lamp": ""},
        ("decline", "check", "next", "uvi", "distance", "meter"),
        _MOST_WORDS,
        of_an_animal=False,
    ),
    Topic(
        "distance",
        r"\bhow (?:far|high|close|low|near)\b|\bwie (?:weit|hoch|nah)\b",
        after=(
            "check",
            "next",
            "needs",
            "meter",
            "tube",
            "uvi",
            "hours",
            "decline",
            "plan",
            "guide",
        ),
        most=_MOST_WORDS,
        of_an_animal=False,
    ),
    Topic("hours", r"\bhow (?:many hours|long)\b|\bhours? of light\b|\bwie lange\b"),
    Topic("hours", r"^(?:and |und |the |ok )*(?:hours|stunden|photoperiod)\W*$"),
    Topic(
        "needs", r"^(?:and |und |what about |ok )*(?:(?:in|during|by) (?:the )?day\w*|tagsüber)\W*$"
    ),
    Topic(
        "tube",
        r"^(?:and |so |ok |und )*(?:which|what|welche\w*|wie ?viel\w*) "
        r"(?:one|tube|lamp|uvb?|röhre|strength|percent\w*|%|stärke|prozent)"
        r"(?: then| dann| do i (?:need|get|want)| should i (?:get|take|buy))?\W*$",
        after=("needs", "distance", "uvi", "hours", "guide", "check"),
        most=_MOST_WORDS,
    ),
    Topic("needs", r"\b(?:nights?|nacht|nachts|overnight)\b", {"about": "night"}),
    Topic(
        "needs",
        r"\b(?:cool|cold) (?:side|end)\b|\bkühle\w* seite\b"
        r"|^(?:and |und |what about |how about |the |die )*(?:cool|cold|kühl)\w*\W*$",
        {"about": "cool"},
    ),
    Topic(
        "needs",
        r"\b(?:bask\w*|hot ?spot|warm (?:side|end)|sonnenplatz)\b",
        {"about": "basking"},
    ),
    Topic("needs", r"\b(?:water|wasser)\b", {"about": "water"}),
    Topic(
        "needs",
        r"\b(?:lowest|coldest|tiefste|kältest\w*)\b",
        {"about": "night"},
        ("night", "needs"),
    ),
    Topic("needs", r"\buv\w*\b", {"about": "uvi"}),
)


def topic_of(line: str, before: str = "", page: str = "") -> Topic | None:
    """Return what a few words name as what is asked next, behind the question or page before.

    >>> [found and found.command for found in map(topic_of, ("and nights", "its 12 inches"))]
    ['needs', None]
    """
    plain = " ".join(line.lower().replace("’", "'").split())
    if any(sign.isdigit() for sign in plain):
        return None
    return next((topic for topic in _TOPICS if topic.is_meant(plain, before, page)), None)
