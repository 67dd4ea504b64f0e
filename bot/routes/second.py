"""The second opinion on what free words ask: taken where it is sure, offered where it is likely."""

import re
from dataclasses import dataclass
from functools import cache

from bot import guide
from bot.dangers import listen
from bot.language.hearing import FactName
from bot.preferences import LANGUAGES
from bot.routes.asked import Asked
from bot.routes.beyond import asks_to_buy
from bot.routes.learned import Meant, labels, meant
from bot.routes.pages import SO_FAR

__all__ = ["OFF", "Opinion", "likely_of", "sure_of", "torn_between", "turn_of"]

OFF = "off"
"""Stands for what is no question for this bot."""

# From these chances [1] on it is taken: without a rule, so for a whole page or of many figures,
# against one, against one that says what is likely too, and for a whole page against one; from
# the next on it is offered, and is likely.
# Set on questions that count as mended on since.
_SURE, _WHOLE_PAGE, _AGAINST, _AGAINST_LIKELY, _PAGE_AGAINST = 0.5, 0.7, 0.85, 0.9, 0.95
_OFFERED, _PERHAPS = 0.25, 0.05
_VET = "vet"
# What a rule takes for these was said in so many words.
_SAID_OUT = frozenset((OFF, "distance"))
# So few figures are no set-up, whatever lamp is named beside them.
_SET_UP = "check"
_OUTSIDE, _SUN = "outdoors", "sun-and-outdoors"
_OF_A_TURN = "t"
# What is no wonder of an animal that lives in water.
_SOAKS = "It lies in its water"
_OF_HEAT = ("temps", "basking", "check", "surface", "night")
_OF_A_TUBE = ("uvi", "distance", "check", "decline", "section")
_READ = (FactName.BASKING, FactName.WARM, FactName.COOL, FactName.NIGHT)
# Who writes more, or tells several figures, tells a set-up, and rules know that better.
_FEWEST_WORDS, _MOST_WORDS, _FEW_FIGURES = 2, 40, 2
_WORD = re.compile(r"[^\W\d_]{2}")
# What a rule found is at odds with this chance of it, and one opinion with the next.
_HARDLY, _AT_ODDS, _NEXT = 0.03, 0.8, 0.4
# Of fewer words nobody knows what they are not about.
_SURE_OFF, _FEWEST_OFF = 0.7, 5


@dataclass(frozen=True, slots=True)
class Opinion:
    """A question by its name and what of it is asked, or a page of the guide and its part."""

    name: str
    about: str = ""
    page: str = ""
    part: str = ""

    def is_as(self, other: "Opinion") -> bool:
        """Say whether both are one question, or one page."""
        return (self.name, self.page) == (other.name, other.page)


def sure_of(asked: Asked, ruled: Opinion | None) -> Opinion | None:
    """Return what words surely ask by what was learned, against what a rule says, if anything."""
    words = asked.words.split()
    if not _has_words(asked) or len(words) > _MOST_WORDS or _tells_readings(asked):
        return None
    figures = sum(any(sign.isdigit() for sign in word) for word in words)
    if ruled is not None and (words[0] == ruled.name or _is_unlearned(ruled)):
        # It was called by its name, or no sentence of it was learned.
        return None
    if ruled is not None and ruled.name == OFF and asks_to_buy(asked):
        return None
    found = meant(asked)
    if not found:
        return None
    first, chance = _opinion(found[0]), found[0].chance
    if first is None or first == ruled or (first.page and asked.says(SO_FAR)):
        return None
    if not _judges(first, asked):
        return None
    if first.page and not first.part and any(not alarm.asked for alarm in listen(asked.said)):
        # A hazard that is told brings its page along.
        return None
    few = chance < _SURE_OFF or len(words) < _FEWEST_OFF
    if first.name == OFF and (few or _is_of_sun(ruled)):
        return None
    return first if chance >= _least(found, first, ruled, figures) else None


def torn_between(asked: Asked, ruled: Opinion | None) -> tuple[Opinion, ...]:
    """Return what words may ask where a rule and what was learned are at odds, or that with itself.

    Nothing where either is surer, where a hazard is told, or where figures tell a set-up.
    """
    figures = sum(any(sign.isdigit() for sign in word) for word in asked.words.split())
    many = figures > _FEW_FIGURES or (ruled is not None and figures == _FEW_FIGURES)
    told = many or asked.warmth or asked.at_a_distance or _tells_readings(asked)
    if told or not _has_words(asked):
        return ()
    found = [(opinion, one.chance) for one in meant(asked) if (opinion := _opinion(one))]
    found = [(one, chance) for one, chance in found if one.name != OFF]
    if not found or (ruled is not None and (ruled.name in _SAID_OUT or _is_unlearned(ruled))):
        return ()
    first, chance = found[0]
    if ruled is not None:
        of_rule = sum(one for opinion, one in found if opinion.is_as(ruled))
        torn = chance >= _AT_ODDS and of_rule < _HARDLY and not first.is_as(ruled)
        both: tuple[Opinion, ...] = (ruled, first)
    else:
        torn = len(found) > 1 and chance >= _SURE and found[1][1] >= _NEXT
        both = tuple(one for one, _ in found[:2])
    if not torn or any(not alarm.asked for alarm in listen(asked.said)):
        return ()
    return both


def _least(found: tuple[Meant, ...], first: Opinion, ruled: Opinion | None, figures: int) -> float:
    """Return the chance [1] from which an opinion is taken, beside what a rule says."""
    whole_page = first.page and not first.part
    if ruled is None or (ruled.name == _SET_UP and figures < _FEW_FIGURES):
        return _WHOLE_PAGE if whole_page or figures > _FEW_FIGURES else _SURE
    if whole_page:
        return _PAGE_AGAINST
    others = (_opinion(one) for one in found if one.chance >= _PERHAPS)
    stands = figures > _FEW_FIGURES or any(ruled.is_as(other) for other in others if other)
    return _AGAINST_LIKELY if stands else _AGAINST


def _is_of_sun(ruled: Opinion | None) -> bool:
    """Say whether a rule found a question about real sun: little of that was learned."""
    return ruled is not None and (ruled.name == _OUTSIDE or ruled.page == _SUN)


def _judges(opinion: Opinion, asked: Asked) -> bool:
    """Say whether a question judges what was told of heat and of a tube: it may be dangerous."""
    if opinion.part == _SOAKS and asked.lives_in_water:
        return False
    if asked.warmth and opinion.name not in _OF_HEAT:
        return False
    return not (asked.told.tube and asked.at_a_distance) or opinion.name in _OF_A_TUBE


def _tells_readings(asked: Asked) -> bool:
    """Say whether meters or thermometers were read in several places: what a rule asks of them."""
    places = sum(bool(asked.told.all(fact)) for fact in _READ)
    return places > 1 or bool(asked.readings) or bool(asked.told.all(FactName.UVI))


def _has_words(asked: Asked) -> bool:
    if asked.by_rule:
        return False
    words = asked.words.split()
    return sum(_WORD.search(word) is not None for word in words) >= _FEWEST_WORDS


def turn_of(asked: Asked) -> str:
    """Return what a line of a conversation is by what was learned, where it surely is no question.

    It is ``thanks``, ``why``, ``again``, ``simpler`` or ``no idea``; else nothing.
    """
    if any(sign.isdigit() for sign in asked.words):
        return ""
    found = meant(asked)
    kind, _, name = found[0].key.partition(":") if found else ("", "", "")
    return name if kind == _OF_A_TURN and found[0].chance >= _AGAINST else ""


def likely_of(asked: Asked) -> tuple[Opinion, ...]:
    """Return what words may ask by what was learned, the likeliest first."""
    if not _has_words(asked):
        return ()
    found = [_opinion(one) for one in meant(asked) if one.chance >= _OFFERED]
    if found[:1] == [Opinion(OFF)]:
        return ()
    return tuple(one for one in found if one is not None and one.name != OFF)


def _is_unlearned(opinion: Opinion) -> bool:
    """Say whether no sentence of a question, or of a part that answers, was learned."""
    if opinion.part:
        return (opinion.page, opinion.part) in _parts_unlearned()
    return opinion.name not in _names_known()


@cache
def _known() -> tuple[Opinion, ...]:
    opinions = (_opinion(Meant(label, 1.0)) for label in labels())
    return tuple(opinion for opinion in opinions if opinion)


@cache
def _names_known() -> frozenset[str]:
    return frozenset(opinion.name for opinion in _known())


@cache
def _parts_unlearned() -> frozenset[tuple[str, str]]:
    """Return the parts that answer and were not learned, as every language calls them."""
    parts = [(opinion.page, opinion.part) for opinion in _known() if opinion.part]
    learned = {
        (slug, guide.heading_in(slug, part, language))
        for slug, part in parts
        for language in LANGUAGES
    }
    all_pages = (page for language in LANGUAGES for page in guide.pages(language))
    answering = {(page.slug, one.part) for page in all_pages for one in page.answers}
    return frozenset(answering - learned)


def _opinion(one: Meant) -> Opinion | None:
    kind, _, rest = one.key.partition(":")
    if kind == "g":
        slug, _, part = rest.partition("/")
        return Opinion("guide", page=slug, part=part)
    name, _, about = rest.partition(" ")
    return Opinion(name, about) if kind == "q" and name != _VET else None
