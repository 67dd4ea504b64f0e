"""A text taken apart: its words, sentences and clauses, and in which mood each word is told."""

import re
from bisect import bisect_left, bisect_right
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from functools import cache, lru_cache
from operator import attrgetter
from typing import NamedTuple

from bot.dangers.figures import figure_names, speaks_fahrenheit
from bot.dangers.thesaurus import Meaning, end_of, listed, meaning, phrases_at
from bot.dangers.watts import over_the_mark
from bot.language.normal import normal
from bot.language.tongue import Tongue

__all__ = ["Hit", "Mood", "Told", "take_apart"]

# A message of Discord; what is longer is not read.
_LONGEST = 2000
_WORD = re.compile(
    r"24/7|(?<!\w)[tT](?:5|8|12)(?:[hH][oO])?(?!\w)|\d+(?:[.,]\d+)?|[^\W\d_]+(?:'[^\W\d_]+)*|(?P<end>[.!?;\n]+)|(?P<pause>[,():])"
    r"|(?P<sign>[%°\"'$£€])"
)
_SAME_LETTERS = re.compile(r"(\w)\1{2,}")
_MOST_WORDS = 20_000
_START = attrgetter("start")
_KEEPING, _SMALL = "keeps_its_no", "small_words"
# After a comma, so short a piece with no verb goes on with the list before it.
_SHORT = 3
# So many words up to a negation a German one takes back, itself among them.
_TAKES_BACK = 4


class Mood:
    """How a word is told, where it is not simply so: bits, quick to set and to ask for."""

    PLAIN = 0
    DENIED = 1
    OVER = 2
    REPORTED = 4
    ASKED = 8
    ALL = 15


class Hit(NamedTuple):
    """Something of the thesaurus, from its first word to behind its last."""

    start: int
    end: int


@dataclass(slots=True)
class Told:
    """A text taken apart; lists that go by words have one place a word."""

    original: str
    tongue: Tongue
    words: list[Meaning]
    spans: list[tuple[int, int]]
    sentence: list[int]
    clause: list[int]
    asks: list[bool]
    moods: list[int] = field(default_factory=list)
    hits: dict[str, list[Hit]] = field(default_factory=dict)
    in_phrase: set[int] = field(default_factory=set)

    def mood(self, hit: Hit) -> int:
        """Return how a hit is told; one that begins before a negation carries it in itself."""
        start, end = hit
        moods = self.moods[start]
        for mood in self.moods[start + 1 : end] if end - start > 1 else ():
            moods |= mood & ~Mood.DENIED
        return moods

    def clause_of(self, place: int) -> range:
        """Return the words of the clause in which a word stands."""
        number = self.clause[place]
        return range(bisect_left(self.clause, number), bisect_right(self.clause, number))

    def quoted(self, start: int, end: int) -> str:
        """Return the asker's own words from one word to behind another."""
        return self.original[self.spans[start][0] : self.spans[end - 1][1]]


def take_apart(text: str, tongue: Tongue = Tongue.ENGLISH) -> Told:
    """Return a text as words in clauses, with what was found and its moods."""
    told = _words_of(text, tongue)
    _find(told)
    _group(told)
    _split_at_words(told)
    told.moods = [Mood.PLAIN] * len(told.words)
    for clause in _runs(told.clause):
        _deny(told, clause)
    for sentence in _runs(told.sentence):
        _set_moods(told, sentence)
    return told


def _words_of(text: str, tongue: Tongue) -> Told:
    plain = normal(text[:_LONGEST]).cut(_LONGEST)
    told = Told(text, tongue, [], [], [], [], [])
    sentence = clause = 0
    for found in _WORD.finditer(plain.text):
        what = found.lastgroup
        if what == "end":
            if "?" in found[0]:
                _mark_asking(told, sentence)
            sentence += 1
            clause += 1
        elif what == "pause":
            clause += 1
        else:
            told.words.append(_meant(found[0], tongue))
            told.spans.append(plain.span(*found.span()))
            told.sentence.append(sentence)
            told.clause.append(clause)
            told.asks.append(False)
    return told


@lru_cache(maxsize=_MOST_WORDS)
def _meant(written: str, tongue: Tongue) -> Meaning:
    word = _SAME_LETTERS.sub(r"\1\1", written.lower())
    return meaning(word.replace("'", "") or word, tongue)


def _mark_asking(told: Told, sentence: int) -> None:
    place = len(told.words) - 1
    while place >= 0 and told.sentence[place] == sentence:
        told.asks[place] = True
        place -= 1


def _find(told: Told) -> None:
    """Note what stands where, and which words a phrase has taken."""
    words, hits, sentence = told.words, told.hits, told.sentence
    keeping = _keeping()
    german = told.tongue is Tongue.GERMAN
    fahrenheit = not german and speaks_fahrenheit(words)
    for place, word in enumerate(words):
        for entry in phrases_at(words, place) if word.by_next or word.by_any else ():
            end = end_of(entry, words, place)
            if end and sentence[end - 1] == sentence[place]:
                hits.setdefault(entry.name, []).append(Hit(place, end))
                if entry.name in keeping:
                    told.in_phrase.update(range(place, end))
        names = (*word.names, *figure_names(words, place, fahrenheit=fahrenheit, german=german))
        if names:
            alone = Hit(place, place + 1)
            for name in names:
                hits.setdefault(name, []).append(alone)


@cache
def _groups() -> Mapping[str, tuple[str, ...]]:
    groups = listed("groups.toml").items()
    return {
        name: tuple(members.split()) for name, members in groups if name not in {_KEEPING, _SMALL}
    }


@cache
def _keeping() -> frozenset[str]:
    """Return the lists whose phrases have a "no" of their own."""
    return frozenset(listed("groups.toml")[_KEEPING].split())


def _group(told: Told) -> None:
    """Note what several things are together, and what two figures of a sentence are."""
    for name, members in _groups().items():
        hits = [hit for member in members for hit in told.hits.get(member, ())]
        if hits:
            told.hits[name] = sorted(hits, key=_START)
    for sentence in _runs(told.sentence):
        over = over_the_mark(told.words, sentence)
        if over:
            told.hits.setdefault("over_watts", []).append(Hit(*over))


def _split_at_words(told: Told) -> None:
    """Begin a new clause at each and, but, because."""
    breaks = {hit.start for hit in told.hits.get("breaks", ())}
    shift = 0
    for place in range(len(told.words)):
        if place in breaks:
            shift += 1
        told.clause[place] += shift


def _runs(numbers: list[int]) -> Iterator[range]:
    start = 0
    for place in range(1, len(numbers) + 1):
        if place == len(numbers) or numbers[place] != numbers[start]:
            yield range(start, place)
            start = place


def _within(told: Told, name: str, part: range) -> list[Hit]:
    hits = told.hits.get(name)
    if not hits:
        return []
    first = bisect_left(hits, part.start, key=_START)
    return hits[first : bisect_left(hits, part.stop, first, key=_START)]


def _starts(told: Told, name: str, part: range) -> list[int]:
    return [hit.start for hit in _within(told, name, part)]


def _inside(told: Told, name: str, places: list[int]) -> list[int]:
    """Return the places that no phrase of that name has taken."""
    if not places:
        return []
    taken = {at for hit in told.hits.get(name, ()) for at in range(hit.start, hit.end)}
    return [place for place in places if place not in taken]


def _deny(told: Told, clause: range) -> None:
    """Take back what follows a negation in its clause, and the list that goes on after it."""
    places = [
        hit.end
        for hit in _within(told, "denial", clause)
        if not (hit.end == hit.start + 1 and hit.start in told.in_phrase)
    ]
    if not places:
        return
    end = clause.stop
    while end < len(told.words) and told.sentence[end] == told.sentence[clause.start]:
        rest = told.clause_of(end)
        if len(rest) > _SHORT or any("verb" in told.words[at].names for at in rest):
            break
        if any(told.words[at].names & {"denial", "but", "good"} for at in rest):
            break
        if any(told.words[at].word[0].isdecimal() for at in rest):
            break
        end = rest.stop
    for at in range(min(places) - _back(told, clause, min(places)), end):
        told.moods[at] |= Mood.DENIED


def _back(told: Told, clause: range, place: int) -> int:
    """Return how many words a negation takes back that stand before it: "raucht auch nicht"."""
    return min(_TAKES_BACK, place - clause.start) if told.tongue is Tongue.GERMAN else 0


def _asks_at_once(told: Told, sentence: range) -> bool:
    """Say whether a sentence asks by its first word, or by its last ones and of nothing its own."""
    first = told.words[sentence.start].names
    helped = _starts(told, "no_question", sentence)
    if "asks_first" in first and not helped:
        return True
    after = _starts(told, "question_after", sentence)
    return bool(after) and not any("told_now" in told.words[at].names for at in sentence)


def _set_moods(told: Told, sentence: range) -> None:
    clauses = [
        range(sentence.start + part.start, sentence.start + part.stop)
        for part in _runs(told.clause[sentence.start : sentence.stop])
    ]
    over = reported = False
    asked = _asks_at_once(told, sentence)
    healed = _starts(told, "healed", sentence)
    for clause in clauses:
        first = told.words[clause.start].names
        now = bool(_starts(told, "still_now", clause))
        past = bool(_starts(told, "past", clause))
        again = bool(_starts(told, "again_now", clause))
        own = any("subject" in told.words[at].names for at in clause)
        over = past or (over and not now and not own)
        new_turn = bool(first & {"but", "pause_ends"}) or not first & {"joins"}
        if asked and new_turn and clause.start != sentence.start and own:
            asked = False
        if reported and "but" in first:
            reported = False
        places = _inside(told, "no_question", _starts(told, "question", clause))
        begun = min(places) if places else clause.stop
        report = min(_starts(told, "report", clause), default=clause.stop)
        already = bool(_starts(told, "already", clause))
        for at in clause:
            if (over and not now) or (healed and not again):
                told.moods[at] |= Mood.OVER
            if reported or at >= report:
                told.moods[at] |= Mood.REPORTED
            if (asked or at >= begun) and not already:
                told.moods[at] |= Mood.ASKED
        asked = (asked or bool(places)) and not already
        reported = reported or report < clause.stop
