"""A temperature that is asked about without its place: which place it may be of."""

import re

from bot.command import Routed
from bot.facts import Say
from bot.language.hearing import FactName
from bot.language.quantities import Measure, read_temperature
from bot.layered import Brief, Layered
from bot.queries.question import Question
from bot.routes.asked import Asked
from bot.routes.offered import ForExample
from calc.animal import Animal
from calc.animals import animals
from calc.naming import Known, named

__all__ = ["placed_nowhere"]

_DOUBTS = (
    r"\b(?:too|to) (?:hot|cold|warm|cool|high|low|much)\b|\b(?:ok\w*|fine|alright|safe|bad|good"
    r"|enough|right|dangerous)\b"
)
_READ = r"\b(?:it'?s|it is|sits|reads|is at) (?:at )?\d"
_OWN = rf"\bmy (?!\w* ?(?:breeder|friend|vet|shop|store|seller))|{_READ}"
_TOO = r"\b(?:too?|zu) (?:hot|cold|warm|cool)\b"
_PLACE = (
    r"\b(?:bask\w*|spot|rock|surface|hide|side|end|night\w*|overnight|water|pool|lamp|bulb|mat|gun"
    r"|floor|outside|outdoors|garden|substrate|tile|bath|body|shed|winter)\b"
)
_BARE = re.compile(r"(?<![\d.,x])\d{2,3}(?![\d.,%x]| ?(?:w|in|inch\w*|cm|ft|h|hours?|months?|%)\b)")
_PLACES = (("temps", "basking"), ("temps", "cool"), ("night", "room"))


def placed_nowhere(asked: Asked) -> Routed | Layered | None:
    """Return what is asked of one temperature that has no place: its animal's air, or which place.

    An animal that wants no basking spot has one range for its air, so that is judged.
    """
    animal = asked.told.animal
    room = asked.told.measure(FactName.ROOM)
    degrees = asked.degrees or _bare(asked)
    told = asked.warmth or asked.uv or asked.at_a_distance or asked.lamps
    if told or asked.says(_PLACE):
        return None
    if not animal:
        # Whether it is too hot hangs on whom it is for: that is asked.
        asks_whom = degrees and asked.says(_TOO) and not room and not asked.unclear_animal
        return Routed("needs", {}) if asks_whom else None
    # With a unit it is a measure, without one its option knows whether it tells its own.
    value = read_temperature(degrees) if degrees == asked.degrees != "" else degrees
    doubted = value if asked.says(_DOUBTS) else ""
    if isinstance(doubted, Measure) and (place := _wrong_everywhere(doubted, animal)):
        # What is wrong wherever it was read is told at once, where it was read and not advised.
        return Routed("temps", {"animal": animal, place: doubted}) if asked.says(_OWN) else None
    if (room or doubted) and _wants_none(animal):
        return Routed("temps", {"animal": animal, "cool": room.value if room else doubted})
    if room or not doubted:
        return None
    offers = tuple(
        Question(command, {option: doubted, "animal": animal}) for command, option in _PLACES
    )
    steps = tuple(
        Say.of("ask-where", option, facts=ForExample(offer.line()))
        for (_, option), offer in zip(_PLACES, offers, strict=True)
    )
    return Layered(
        "ask",
        Say("ask-title-which"),
        Brief(Say("ask-where"), steps=steps),
        status="problem",
        steps=steps,
        guide=("measuring-temperatures",),
        offers=offers,
    )


def _wants_none(animal: str) -> bool:
    """Say whether an animal is known to want no basking spot."""
    found = _listed(animal)
    return found is not None and found.needs_no_basking


def _wrong_everywhere(degrees: Measure, animal: str) -> str:
    """Return the place by day that comes nearest to a temperature that none wants; else ""."""
    found = _listed(animal)
    if found is None:
        return ""
    places = (
        ("basking", found.basking_surface_c),
        ("warm", found.warm_air_c),
        ("cool", found.cool_air_c),
    )
    wanted = [(name, place) for name, place in places if place is not None]
    if not wanted:
        return ""
    coldest = min(wanted, key=lambda row: row[1].low)
    hottest = max(wanted, key=lambda row: row[1].high)
    if degrees.high < coldest[1].low:
        return coldest[0]
    return hottest[0] if degrees.low > hottest[1].high else ""


def _listed(animal: str) -> Animal | None:
    what = named(animal).what
    return animals().get(what.slug) if isinstance(what, Known) else None


def _bare(asked: Asked) -> str:
    """Return the one number of the words that has no unit."""
    found = _BARE.findall(asked.words)
    return found[0] if len(found) == 1 and len(asked.words.split()) <= _MOST_WORDS else ""


_MOST_WORDS = 8
