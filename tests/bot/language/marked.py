"""Messages whose figures another hand marked, and how well they are heard."""

import re
import tomllib
from collections.abc import Iterator, Set
from dataclasses import dataclass
from pathlib import Path

from bot.language.hearing import Fact, FactName, Heard
from bot.language.hearing.facts import THERE
from tests.bot.language.hearing_score import heard_in

_MARK = re.compile(r"[{<]([^{}<>|]+)(?:\|([^{}<>]*))?[}>]")
_NUMBERS = re.compile(r"\d+(?:[.,]\d+)?")
_ROLES = {
    "en": "enclosure enclosure_length volume",
    "tu": "tube",
    "tl": "tube_length",
    "ta": "age",
    "aa": "animal_age",
    "di": "distance distance_back distance_perch distance_floor uvi_at",
    "ld": "lamp_distance",
    "ba": "basking",
    "wa": "warm",
    "co": "cool",
    "ni": "night room_night",
    "ro": "room room_night",
    # The watts printed on a tube tell its length.
    "wt": "watts other_watts tube_length",
    "ho": "hours",
    "of": "on_for",
    "uv": "uvi uvi_at",
    "wd": "water",
    "an": "animal",
}
_MARKED = {FactName(name) for names in _ROLES.values() for name in names.split()}


@dataclass(frozen=True, slots=True)
class Mark:
    """A marked figure: its words and place, its role, and how it stands."""

    words: str
    start: int
    end: int
    role: str
    sign: str

    @property
    def names(self) -> frozenset[FactName]:
        """The facts that this role may be."""
        return frozenset(FactName(name) for name in _ROLES[self.role].split())

    def is_told_by(self, fact: Fact) -> bool:
        """Say whether a fact is of this role, touches these words and has their numbers."""
        if fact.name.value not in _ROLES[self.role].split():
            return False
        touches = fact.start < self.end and self.start < fact.end
        return touches and set(_NUMBERS.findall(self.words)) <= set(_NUMBERS.findall(fact.words))


@dataclass(slots=True)
class Found:
    """Figures heard rightly, heard wrongly, missed, and missed but asked about."""

    right: int = 0
    wrong: int = 0
    missed: int = 0
    asked: int = 0

    @property
    def precision(self) -> float:
        return self.right / max(1, self.right + self.wrong)

    @property
    def recall(self) -> float:
        return self.right / max(1, self.right + self.missed)

    @property
    def found_or_asked(self) -> float:
        return (self.right + self.asked) / max(1, self.right + self.missed)


def messages(path: Path) -> list[str]:
    """Return the marked messages of a file."""
    rows: list[str] = tomllib.loads(path.read_text(encoding="utf-8"))["messages"]
    return rows


def taken_apart(message: str) -> tuple[str, list[Mark]]:
    """Return the message as it was typed, and its marks."""
    text, marks, at = "", [], 0
    for match in _MARK.finditer(message):
        text += message[at : match.start()]
        role, sign = re.fullmatch(r"(\w*)([-!?+~]?)", match[2] or "").groups()  # type: ignore[union-attr]
        if match[0][0] == "{" and role in _ROLES:
            marks.append(Mark(match[1], len(text), len(text) + len(match[1]), role, sign))
        text += match[1]
        at = match.end()
    return text + message[at:], marks


def found_in(path: Path) -> Found:
    """Return how well the figures of a file are heard."""
    return found_of(messages(path), _MARKED - {FactName.ANIMAL})


def found_of(marked: list[str], names: Set[FactName] = frozenset(_MARKED)) -> Found:
    """Return how well the figures of messages are heard, and the animals among ``names``."""
    found = Found()
    for message in marked:
        text, marks = taken_apart(message)
        heard = heard_in(text)
        facts = [f for f in heard.facts if f.standing in THERE and f.name in names]
        _count(found, heard, facts, [mark for mark in marks if mark.names & names])
    return found


def _count(found: Found, heard: Heard, facts: list[Fact], marks: list[Mark]) -> None:
    used: set[int] = set()
    for mark in marks:
        hits = [i for i, fact in enumerate(facts) if mark.is_told_by(fact)]
        if mark.sign == "?":
            # Asked about: heard as it is, or not at all, is both right.
            used.update(hits)
        elif mark.sign == "+":
            used.update(hits)
        elif not mark.sign:
            # One fact tells a UV index and its distance.
            fresh = [i for i in hits if i not in used or facts[i].name is FactName.UVI_AT]
            used.update(hits)
            found.right += bool(fresh)
            found.missed += not fresh
            found.asked += not fresh and _is_asked(heard, mark)
    found.wrong += len(set(range(len(facts))) - used)


def _is_asked(heard: Heard, mark: Mark) -> bool:
    names: Iterator[str] = iter(_ROLES[mark.role].split())
    asked = {ask.name.value for ask in heard.questions}
    touched = any(ask.start < mark.end and mark.start < ask.end for ask in heard.questions)
    return touched or not asked.isdisjoint(names)
