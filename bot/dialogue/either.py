"""What a line names two of, so that the first one, or the other, is one of them."""

import re
from collections.abc import Mapping

from bot.dialogue.phrases import agrees, choice_of
from bot.dialogue.places import place_named
from bot.language.hearing import FactName
from bot.language.unsure import NOT_SURE, Unsure
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.queries.typed import typed
from bot.question_context import context_of
from bot.routes.routing import asked_in
from calc.naming import Several, named

__all__ = ["OTHER", "chosen_of", "lamps_named", "other_named", "the_other", "turned"]

_OR = re.compile(r"\b(?:or|vs|versus|oder)\b")
_THE_OTHER = re.compile(
    r"^(?:(?:and|ok|okay|so|then|what about|how about|now|und|also|getting|take|taking|for|für"
    r"|with|bei|how far|wie weit)[, ]+)*"
    r"(?:(?:the|my|das|den|die|der|dem|beim|mein\w*) )(?:other|second|ander\w+|zweite[nr]?)"
    r"(?: one| animal| lamp)?\W*$"
)
_MOST_OF_A_PLACE = 5
# These are the same question for another animal: what they hold is of the lamp.
_OF_ANY = ("needs", "hours", "distance", "tube")
_ALSO = {"night": ("room",), "warm": ("air",)}
_STRENGTHS = re.compile(r"(?<![\w.,])(2|4|5|6|7|8|10|12|14)(?: ?%|er\b| percent\b| prozent\b)")
_THEN = re.compile(
    r"^(?:(?:ok|okay|so|and|well|then|hm+|gut|also|dann)[, ]+)*"
    r"(?:the|die|das|den|der) (?:first|1st|second|2nd|erste[nrs]?|zweite[nrs]?)\b(?: one)?"
)
_FIRST = re.compile(r"\b(?:first|1st|erste[nrs]?)\b")
_MOST_OF_A_CHOICE = 9
_T5 = re.compile(r"\bt5\b")
_TUBE = "T5 HO tube"
_ABOUT_ONE = re.compile(r"^(?:the|an?|its|it's|der|die|das) | (?:one|ones)$")
OTHER = "other"
"""Under this a conversation knows the animal that was named beside the one it speaks of."""


def lamps_named(line: str, preferences: Preferences) -> tuple[Question, ...]:
    """Return the question about each of two lamps that a line names as a choice; else nothing.

    >>> [each.line() for each in lamps_named("heat mat or ceramic for nights?", Preferences())]
    ['lamp kind:heat mat', 'lamp kind:ceramic heat emitter']
    """
    plain = line.lower()
    if not _OR.search(plain):
        return ()
    strengths = dict.fromkeys(_STRENGTHS.findall(plain))
    if len(strengths) == 2:
        unsure = dict.fromkeys(("reflector", "screen"), Unsure(NOT_SURE))
        return tuple(Question("distance", {"tube": f"{one}%", **unsure}) for one in strengths)
    context = context_of(AskQuery(question=line), {"question": line}, preferences)
    named = list(dict.fromkeys(asked_in(AskQuery(question=line), context).lamps))
    if len(named) == 1 and (tube := _T5.search(plain)):
        first = tube.start() < plain.find(re.split(r"[ -]", named[0])[0])
        named.insert(0 if first else 1, _TUBE)
    if len(named) != 2:
        return ()
    return tuple(Question("lamp", {"kind": name}) for name in named)


def other_named(line: str, animal: str, preferences: Preferences) -> str:
    """Return the other animal that a line names beside the one that was answered for.

    >>> other_named("one corn snake and one leopard gecko", "corn snake", Preferences())
    'leopard gecko'
    """
    context = context_of(AskQuery(question=line), {"question": line}, preferences)
    told = asked_in(AskQuery(question=line), context).told
    names = dict.fromkeys(str(said.value) for said in told.all(FactName.ANIMAL))
    others = [name for name in names if name != animal]
    return others[0] if len(names) == 2 and others else ""


def the_other(
    line: str,
    offers: tuple[Question, ...],
    known: Mapping[str, object],
    asked: Question | None,
) -> Question | None:
    """Return which of two a line means by "the other one"; None: it means none of them."""
    if not _THE_OTHER.match(" ".join(line.lower().split())):
        return None
    if len(offers) == 2 and {each.command for each in offers} == {"lamp"}:
        return offers[1]
    other = known.get(OTHER)
    if other and asked is not None and asked.command in _OF_ANY:
        return Question(asked.command, {**asked.values, "animal": other})
    return Question("needs", {"animal": other}) if other else None


def turned(known: Mapping[str, object]) -> dict[str, object]:
    """Return what is known once the other animal is spoken of."""
    told = {name: known[name] for name in ("animal", OTHER) if name in known}
    return {"animal": told[OTHER], OTHER: told["animal"]} if len(told) == 2 else told


def chosen_of(offers: tuple[Question, ...], line: str) -> int | None:
    """Return which offer a line takes: by its number, by its animal, the only one by a yes."""
    many = len(offers)
    chosen = choice_of(line, many)
    if chosen is None and many == 1 and agrees(line):
        return 0
    words = " ".join(line.lower().split())
    then = _THEN.match(words) if not any(map(str.isdigit, words[1:])) else None
    if chosen is None and then and many == 2:
        short = len(words.split()) <= _MOST_OF_A_CHOICE
        chosen = int(not _FIRST.search(then[0])) if short else None
    if chosen is None:
        chosen = _placed_offer(line, offers)
    return _named_offer(line, offers) if chosen is None else chosen


def _placed_offer(line: str, offers: tuple[Question, ...]) -> int | None:
    """Return which offer a line takes by the place of a temperature that it names alone."""
    place = place_named(line) if len(line.split()) <= _MOST_OF_A_PLACE else None
    if place is None or any(map(str.isdigit, line)):
        return None
    # One figure whose place was asked for; other offers have figures of examples.
    rests = [{n: v for n, v in offer.values.items() if n != "animal"} for offer in offers]
    figures = {typed(value) for rest in rests for value in rest.values()}
    if len(offers) < 2 or len(figures) != 1 or any(len(rest) != 1 for rest in rests):
        return None
    fits = [at for at, rest in enumerate(rests) if {place, *_ALSO.get(place, ())} & {*rest}]
    return fits[0] if len(fits) == 1 else None


def _named_offer(line: str, offers: tuple[Question, ...]) -> int | None:
    """Return which offer a line takes by its animal, as 'leopard' the leopard gecko's."""
    words = _ABOUT_ONE.sub("", line.lower().strip(" .!?"))
    names = [offer.given.get("animal", "") for offer in offers]
    if not words or len(set(names)) != len(names):
        return None
    what = named(words).what
    several = {one.name for one in what.candidates} if isinstance(what, Several) else set()
    fits = [
        at
        for at, name in enumerate(names)
        if re.search(rf"\b{re.escape(words)}\b", name.lower()) or name in several
    ]
    return fits[0] if len(fits) == 1 else None
