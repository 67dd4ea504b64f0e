"""Hazards that are told in words: which of the table a text tells."""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from math import inf
from typing import Literal, cast

from bot.dangers.clauses import Told, take_apart
from bot.dangers.learned import Guess, guess
from bot.dangers.pairs import Found, found, pairs, urgencies
from bot.dangers.table import HazardKind, hazards
from bot.dangers.thesaurus import listed
from bot.dangers.topics import is_only_a_topic
from bot.language.tongue import Tongue, tongue_of
from bot.reply import Alarm

__all__ = ["listen"]


@dataclass(frozen=True, slots=True)
class _Weights:
    """How lists of words and learned sentences hear together: chances [1] of what was learned.

    Below ``nothing_below``, what only the lists heard is dropped; from ``alone_above`` on (in a
    few words, ``alone_in_few_above``), what only it heard is taken. A list's word for a hazard
    weighs as ``list_weighs``; beside the likeliest, a hazard that a list heard stays from
    ``heard_stays`` of it on, another from ``other_stays``. Where a person may be hurt, the lists
    are doubted less. A clause that tells a hazard by itself is heard from ``clause_from`` on.
    """

    nothing_below: float
    nothing_of_people_below: float
    alone_above: float
    alone_in_few_above: float
    list_weighs: float = 0.2
    heard_stays: float = 0.3
    other_stays: float = 0.5
    clause_from: float = 0.0


# Set on messages of another hand, which since count as mended on.
_WEIGHTS = {
    Tongue.ENGLISH: _Weights(0.60, 0.10, 0.87, 0.80, heard_stays=0.15, clause_from=0.20),
    Tongue.GERMAN: _Weights(0.70, 0.50, 0.70, 0.90, 0.1, 0.2, 0.4, clause_from=0.30),
}
_FEW_WORDS = 10
# Fewer, such as an option's text, tell nothing that no list knows.
_FEWEST_WORDS = 3
_UNITS = frozenset({"c", "f", "in", "cm", "mm", "m", "ft", "w", "h", "deg", "uvi", "x"})
# A clause that by itself tells a hazard with this chance is heard in any surroundings.
_CLAUSE_TELLS = 0.9
# And up to what is wrong with this one, before it is told where.
_PLACE_COUNTS_NOT = 0.85
# Where one of a text stands without any of the others, it is no hazard: a figure that is too small,
# a lid of glass of which nobody says that the tube is over it, a reading that nobody wishes for.
_NEEDS = {
    "light_all_day": ("hours", {"hours_long", "all_hours"}),
    "no_uv_through_glass": ("pane_lid", {"over_glass", "through_word", "between_word"}),
    "too_hot_wish": ("uvi_strong", {"wish", "need_word"}),
}
# Where a person may be hurt, less of a chance is enough beside another hazard.
_OF_PEOPLE = 0.6
# What takes back what was learned.
_NOT_BESIDE = {"no_uv_through_glass": "inside_glass"}
# Where no small word tells the language, German hears only what it is as sure of as this.
_UNTOLD_ABOVE = 0.95
_Urgency = Literal["", "now", "today", "this week", "change"]


def listen(text: str) -> tuple[Alarm, ...]:
    """Return the hazards that a text tells, the one that speaks first before the others.

    What is only asked about or planned comes after what is so, and is marked as asked.

    >>> [alarm.key for alarm in listen("the plug is melting and he is limp")]
    ['fire', 'not_moving']
    """
    if is_only_a_topic(text):
        return ()
    tongue = tongue_of(text)
    if tongue is Tongue.GERMAN:
        return _heard(take_apart(text, Tongue.GERMAN))
    told = take_apart(text)
    alarms = _heard(told)
    if alarms or tongue or _count(told) < _FEWEST_WORDS:
        return alarms
    return _heard(take_apart(text, Tongue.GERMAN), at_least=_UNTOLD_ABOVE)


def _heard(told: Told, at_least: float = 0.0) -> tuple[Alarm, ...]:
    """Return what lists and learned sentences hear together in the text's language."""
    heard: dict[str, Found] = {}
    seen = "vet_seen" in told.hits
    told_by = _told_by(told.tongue)
    possible = set().union(*(told_by.get(name, ()) for name in told.hits))
    for key, row in hazards().items():
        if key not in possible:
            continue
        if seen and row.kind is HazardKind.VET and "still_now" not in told.hits:
            continue
        best = _best(told, key)
        if best is not None:
            heard[key] = best
    # What was learned adds nothing of its own to so few words.
    guessed = guess(told) if heard or _count(told) >= _FEWEST_WORDS else None
    if at_least and (guessed is None or guessed.any_chance < at_least):
        return ()
    if guessed is not None:
        heard = _weighed(heard, guessed, told)
    covered = {
        other for key, best in heard.items() if not best.asked for other in _covers().get(key, ())
    }
    alarms = [
        Alarm(
            key=key,
            words=told.quoted(best.start, best.end),
            asked=best.asked,
            urgency=_urgency(told, key),
        )
        for key, best in heard.items()
        if key not in covered
    ]
    return tuple(sorted(alarms, key=lambda alarm: alarm.asked))


def _weighed(heard: dict[str, Found], guessed: Guess, told: Told) -> dict[str, Found]:
    """Return what the lists heard, as what was learned bears it out or adds to it."""
    asked = {key: best for key, best in heard.items() if best.asked}
    plain = {key: best for key, best in heard.items() if not best.asked}
    weights = _WEIGHTS[told.tongue]
    if guessed.any_chance < _least_chance(told, plain):
        alone = guessed.any_chance >= weights.clause_from
        stays = {key: best for key, best in plain.items() if best.sure or alone}
        standing = {key: best for key, best in stays.items() if _stands_alone(told, best)}
        cannot_wait = {key: best for key, best in plain.items() if _is_of_a_body_now(key)}
        ended = {k: best for k, best in cannot_wait.items() if _tells_before_its_place(told, best)}
        return asked | ended | standing
    votes = {
        key: chance + (weights.list_weighs if key in plain else 0.0)
        for key, chance in guessed.chances.items()
    }
    first = max(votes, key=lambda key: votes[key])
    # Beside what a list heard, another hazard must be the likelier half.
    least = weights.other_stays if plain else 0.0
    kept = {}
    for key, row in hazards().items():
        chance, most = guessed.chances.get(key, 0.0), votes[first]
        if key in asked and row.kind in (HazardKind.WRONG, HazardKind.NEVER):
            kept[key] = asked[key]
            continue
        comes_later = row.rank > hazards()[first].rank
        if key in plain and (
            plain[key].sure
            or chance >= weights.heard_stays * most
            or (comes_later and _stands_alone(told, plain[key]))
        ):
            kept[key] = plain[key]
        elif _may_be_told(told, guessed, key) and chance >= (
            _OF_PEOPLE if row.kind is HazardKind.PEOPLE else 1.0
        ) * max(weights.other_stays * most, least):
            kept[key] = plain.get(key) or _clause_of(told, guessed.place_of(key))
        elif key in asked:
            kept[key] = asked[key]
    return kept


def _least_chance(told: Told, plain: Mapping[str, Found]) -> float:
    weights = _WEIGHTS[told.tongue]
    if any(hazards()[key].kind is HazardKind.PEOPLE for key in plain):
        return weights.nothing_of_people_below
    if plain:
        return weights.nothing_below
    if _count(told) < _FEWEST_WORDS:
        return inf
    return weights.alone_in_few_above if len(told.words) <= _FEW_WORDS else weights.alone_above


def _may_be_told(told: Told, guessed: Guess, key: str) -> bool:
    """Say whether what was learned may tell a hazard: not beside what makes it none."""
    one, others = _NEEDS.get(key, ("", set()))
    too_little = one in told.hits and told.hits.keys().isdisjoint(others)
    return key in guessed.telling and not too_little and _NOT_BESIDE.get(key) not in told.hits


def _count(told: Told) -> int:
    return sum(word.word[0].isalpha() and word.word not in _UNITS for word in told.words)


def _stands_alone(told: Told, best: Found) -> bool:
    """Say whether the clause of what the lists heard tells a hazard, whatever stands around it."""
    if best.sure:
        return True
    clause = told.clause_of(best.start)
    words = told.quoted(clause.start, max(clause.stop, best.end))
    return _by_itself(words, told.tongue) >= _CLAUSE_TELLS


def _is_of_a_body_now(key: str) -> bool:
    row = hazards()[key]
    return row.kind is HazardKind.VET and row.urgency == "now"


def _tells_before_its_place(told: Told, best: Found) -> bool:
    """Say whether a clause tells a hazard up to what is wrong, wherever that happens.

    "My beardie is limp" is the same under the lamp; in German a denial may come behind.
    """
    if told.tongue is Tongue.GERMAN:
        return False
    clause = told.clause_of(best.start)
    words = told.quoted(clause.start, best.end)
    return _by_itself(words, told.tongue) >= _PLACE_COUNTS_NOT


@lru_cache(maxsize=2)
def _by_itself(clause: str, tongue: Tongue) -> float:
    """Return how likely a clause by itself tells any hazard; each hazard heard in it asks."""
    guessed = guess(take_apart(clause, tongue))
    return 0.0 if guessed is None else guessed.any_chance


def _clause_of(told: Told, place: int) -> Found:
    clause = told.clause_of(place)
    return Found(clause.start, clause.stop, asked=False)


def _best(told: Told, key: str) -> Found | None:
    """Return where a text tells a hazard, the plain telling before the asked one."""
    asked = None
    for pair in pairs(told.tongue).get(key, ()):
        result = found(told, pair)
        if result is not None and not result.asked:
            return result
        asked = asked or result
    return asked


def _urgency(told: Told, key: str) -> _Urgency:
    for urgency, rows in urgencies().get(key, {}).items():
        if any(found(told, pair) for pair in rows):
            return cast(_Urgency, urgency)
    return ""


@cache
def _told_by(tongue: Tongue) -> Mapping[str, frozenset[str]]:
    """Return which hazards a thing may begin to tell: of the others no pair need be looked at."""
    of_thing: dict[str, set[str]] = {}
    for key, rows in pairs(tongue).items():
        for name in (name for pair in rows for name in pair.first):
            of_thing.setdefault(name, set()).add(key)
    return {name: frozenset(keys) for name, keys in of_thing.items()}


@cache
def _covers() -> Mapping[str, list[str]]:
    return listed("covers.toml")
