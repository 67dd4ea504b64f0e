"""A text with everything found in it, and how each part stands: there, denied, wished, asked."""

import re
from bisect import bisect_right
from dataclasses import dataclass, field, replace
from typing import TypeVar

from bot.facts import Say
from bot.language.hearing.facts import OF_TURN, THERE, Ask, Fact, FactName, FactValue, Standing
from bot.language.hearing.figures import Figure
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.past import is_only_asked, is_past
from bot.language.hearing.placed import Placed, Words
from bot.language.hearing.word_lists import word_list
from bot.language.normal import Normal

__all__ = ["ANIMALS", "LIVING", "SPOKEN_NONE", "Part", "Scene"]

Part = Mark | Figure
Row = TypeVar("Row", Fact, Ask)

ANIMALS = frozenset(("animal", "kin", "strange"))
"""The marks of an animal: by its name, by one that several share, by one that is not known."""

LIVING = ANIMALS | {"person"}

# How far back in a sentence a "should" or a "not" still reaches, in characters.
_REACH = 200
# A denial after the thing: "reflector no", "screen: none".
SPOKEN_NONE = re.compile(r"\s*[:=?]?\s*(?:no|none|nope|nothing)\b\s*(?=[,.;\n)]|$)")

_WHOSE = frozenset(("the", "my", "his", "her", "its", "it", "i", "we", "this", "that"))
_ALSO = frozenset(["or", "nor", "and", "a", "an", "any", "the"])
_GUESSES = frozenset(("hedge", "not"))
_FIGURE = re.compile(r" [0-9]")
_NEXT_WORD = re.compile(r"[ \t]*([a-z']+)")
# "The thermostat broke" and "a thermostat comes tomorrow".
_NOT_THERE = re.compile(
    r" (?:just |is |has |has just )?(?:(?P<later>coming|comes|arrives|arriving|on the way|on order)"
    r"|broke|broken|died|blew|burnt out|burned out)\b"
)
_NOT = frozenset(("not",))
_INSTRUMENTS = frozenset(("thermometer", "uvi", "control"))
_DIALS = frozenset(("thermometer",))
_HOW = frozenset(("how",))
_OWN = re.compile(r"\s+(?:the|my|this|it)\b")
# A figure that comes with a thing which may only be thought of: a 12% tube, a 40w mat.
# A reading that somebody wants is a wish; a lamp or a box that somebody wants is a plan.
_INTO = re.compile(r"(?: ?(?:ft|feet|in|inch|inches|cm))? to (?:an? )?[0-9]+(?:\.[0-9]+)?\s?x")
_HOMES = frozenset(("size", "cross", "volume"))
_FOR_A = re.compile(r"\b(?:for|in) (?:a|my|his|her|our|the) \Z")
_TOLD = frozenset(("length", "temperature", "degrees", "plain", "duration"))
_READ = frozenset(("temperature", "degrees", "plain"))
_ASKED_FOR = frozenset(("percent", "power"))
# What turns the rest of a clause into a wish, a question, a plan, or back into what is.
_TURNS = frozenset(("restart", "wish", "asked", "intent"))
_SAID = _NOT | {"mesh", "lid", "reflector", "lamp", "tube", "heat", "control", "night_heat"}


@dataclass(slots=True)
class Scene:
    """A text with all that was found in it; ``taken`` was used, ``read`` as what, by its start."""

    normal: Normal
    marks: Placed[Mark]
    figures: Placed[Figure]
    tokens: Words
    sentence_ends: list[int]
    clause_ends: list[int]
    changes: list[int]
    taken: set[int] = field(default_factory=set)
    supposing: bool = False
    read: dict[int, Fact | Ask] = field(default_factory=dict)
    _standings: dict[int, Standing] = field(default_factory=dict)
    _denials: dict[int, Mark | None] = field(default_factory=dict)
    _kinds: dict[frozenset[str], Placed[Mark]] = field(default_factory=dict)

    @property
    def text(self) -> str:
        """Return the normalised lower-case text."""
        return self.normal.text

    def take(self, *parts: Part) -> None:
        """Note that these parts have been used and stand for nothing else."""
        self.taken.update(part.start for part in parts)

    def free(self, part: Part) -> bool:
        """Say whether nobody has used this part yet."""
        return part.start not in self.taken

    def of(self, kind: str, *values: str) -> list[Mark]:
        """Return the marks of a kind, of certain values if any are given."""
        marks = self._of_kinds(frozenset((kind,)))
        return [mark for mark in marks if not values or mark.value in values]

    def loose(self, *kinds: str) -> list[Figure]:
        """Return the figures of these kinds that nobody has used."""
        return [f for f in self.figures if f.kind in kinds and self.free(f)]

    def words(self, start: int, end: int) -> list[str]:
        """Return the words between two places."""
        return self.tokens.within(start, end)

    def next_word(self, end: int) -> str:
        """Return the word right after a place, with nothing but blanks between."""
        match = _NEXT_WORD.match(self.text, end)
        return match[1] if match else ""

    def sentence(self, at: int) -> tuple[int, int]:
        """Return start and end of the sentence around a place."""
        return _around(self.sentence_ends, at)

    def clause(self, at: int) -> tuple[int, int]:
        """Return start and end of the clause around a place."""
        return _around(self.clause_ends, at)

    def before(self, at: int, kinds: frozenset[str], from_: int) -> Mark | None:
        """Return the nearest mark of these kinds that ends between ``from_`` and ``at``."""
        return self._of_kinds(kinds).last(at, from_)

    def after(self, at: int, kinds: frozenset[str], until: int) -> Mark | None:
        """Return the nearest mark of these kinds that starts between ``at`` and ``until``."""
        return self._of_kinds(kinds).first(at, until)

    def _of_kinds(self, kinds: frozenset[str]) -> Placed[Mark]:
        """Return the marks of some kinds, which are looked for again and again."""
        if kinds not in self._kinds:
            self._kinds[kinds] = Placed([mark for mark in self.marks if mark.kind in kinds])
        return self._kinds[kinds]

    def standing(self, part: Part) -> Standing:
        """Return how a part stands by the words before it in its sentence."""
        if self.supposing and isinstance(part, Figure):
            return Standing.IS
        return self._standing(part)

    def _standing(self, part: Part) -> Standing:
        if part.start not in self._standings:
            self._standings[part.start] = self._stands(part)
        return self._standings[part.start]

    def supposed(self) -> "Scene":
        """Return what stands apart once more, taken as if it were so now; strengths stay."""
        apart = [f for f in self.figures if f.kind == "percent" or self._standing(f) not in THERE]
        return replace(self, figures=Placed(apart), taken=set(), supposing=True, read={})

    def _stands(self, part: Part) -> Standing:
        start = max(self.sentence(part.start)[0], part.start - _REACH)
        if self.denial(part):
            return Standing.NOT
        if isinstance(part, Figure) and is_past(self, part):
            return Standing.WAS
        if isinstance(part, Figure) and is_only_asked(self.text, part.start, part.end):
            return Standing.ASKED
        if isinstance(part, Mark) and (gone := _NOT_THERE.match(self.text, part.end)):
            return Standing.PLANNED if gone["later"] else Standing.NOT
        if isinstance(part, Mark) and self._unsure(part, start):
            return Standing.ASKED
        turn = self._turned(part, start)
        if turn is None:
            return Standing.IS
        if turn.value == "wanted" and part.kind in _READ:
            return Standing.WISHED
        return OF_TURN.get(turn.value, OF_TURN[turn.kind])

    def of_others(self, part: Part) -> bool:
        """Say whether a part is told of somebody else's animal or set-up."""
        turn = self._turned(part, max(self.sentence(part.start)[0], part.start - _REACH))
        if turn is None or turn.value != "others":
            return False
        # "Got a leo off a coworker": it is the asker's own now.
        return not {"from", "off"} & set(self.words(turn.start - 8, turn.start)[-1:])

    def _unsure(self, part: Mark, start: int) -> bool:
        """Say whether the asker does not know of a thing: no idea about the reflector."""
        guess = self.before(part.start, _NOT, start)
        if guess is None or guess.value != "unsure" or self._ended(guess.end, part.start):
            return False
        between = set(self.words(guess.end, part.start))
        return between <= word_list("unsure_of") and bool(between)

    def left_behind(self, figure: Figure) -> bool:
        """Say whether a figure is what was before a change: moved him from a 4x2x2."""
        said = self.words(max(0, figure.start - 60), figure.start)
        came = "from" in said[-3:] and bool(word_list("moved") & set(said[-9:]))
        if _INTO.match(self.text, figure.end) and word_list("moved") & set(said[-2:]):
            # "Upgraded 2x1x1 to 4x2x2."
            return True
        if said[-1:] == ["to"] or said[-2:-1] == ["to"]:
            # "Upgraded from a 40 gal to a 4x2x2": that is where he is now.
            return False
        return came and len(figure.sides) != 2

    def _turned(self, part: Part, start: int) -> Mark | None:
        """Return the word that makes a wish, a question or a plan of a part, if there is one."""
        turn = self.before(part.start, _TURNS, start)
        if turn is None or turn.kind == "restart" or self._ended(turn.end, part.start):
            return None
        # "How far should a 6% tube be" tells of a tube that is there, "know if 95F is fine" of
        # 95 F, and "can i put the tube inside" of the asker's own tube.
        if self.before(turn.start, _HOW, start):
            return None
        # "I read 52C" is a reading, "i read that it should be 52C" is none; "want 105F" is a
        # wish, "i just want to check my 4x2x2" is none.
        word, figure = self.text[turn.start : turn.end], _FIGURE.match(self.text, turn.end)
        if word == ("i read" if figure else "want"):
            return None
        if word == "they say" and figure and self.before(turn.start, _DIALS, turn.start - 120):
            # "They" are the thermometers.
            return None
        if turn.value == "whether" and isinstance(part, Figure) and part.kind not in _ASKED_FOR:
            return None
        if turn.value == "hearsay" and not self._is_hearsay(turn, part):
            return None
        own = bool(_OWN.match(self.text, turn.end)) and word.endswith("put")
        if isinstance(part, Figure) and turn.kind == "asked" and part.kind in _HOMES:
            # "Which is better for a 120x60x60 cm" tells of a box that is there.
            own = own or bool(_FOR_A.search(self.text, max(0, part.start - 10), part.start))
        return None if own else turn

    def _is_hearsay(self, turn: Mark, part: Part) -> bool:
        """Say whether somebody says a figure, and neither an end cap nor an instrument does."""
        told = isinstance(part, Figure) and part.kind in _TOLD
        return told and self.before(turn.start, _INSTRUMENTS, turn.start - 60) is None

    def _ended(self, end: int, start: int) -> bool:
        return bisect_right(self.clause_ends, start) != bisect_right(self.clause_ends, end)

    def denial(self, part: Part) -> Mark | None:
        """Return the word that denies a part; its value says how: absent, other, moot or from."""
        if part.start not in self._denials:
            start = max(self.sentence(part.start)[0], part.start - _REACH)
            self._denials[part.start] = self._denied_by(part, start)
        return self._denials[part.start]

    def absent(self, part: Part) -> bool:
        """Say whether a part is said not to be there, before it or right after it."""
        word = self.denial(part)
        return (word is not None and word.value == "absent") or bool(
            SPOKEN_NONE.match(self.text, part.end)
        )

    def _denied_by(self, part: Part, start: int) -> Mark | None:
        content = self.before(part.start, _SAID, start)
        if content is None or self._ended(content.end, part.start):
            return None
        turn = self._turned(part, start)
        if turn and turn.kind == "wish":
            # What others have not, or what one should not have, denies nothing here.
            return None
        between = self.words(content.end, part.start)
        if content.kind == "not":
            passed_over = word_list("articles") | {"or", "nor"}
            fitting = [word for word in between if word not in passed_over]
            told_by_others = content.value == "from" and isinstance(part, Figure)
            if self.text[content.start : content.end] == "no" and set(between[:1]) & _WHOSE:
                # "No, the mat has no stat", without its comma, denies no mat.
                return None
            denies = content.value != "unsure" and not told_by_others
            return content if denies and len(fitting) <= 1 and "but" not in between else None
        joined = bool(between) and set(between) <= _ALSO and bool({"or", "nor"} & set(between))
        return self.denial(content) if joined else None

    def latest(self, figure: Figure) -> Figure:
        """Return what holds now of a figure such as: raised it from 12 inches to 16 inches."""
        said = self.words(max(0, figure.start - 50), figure.start)[-7:]
        moved = len(figure.sides) == 2 and said[-1:] == ["from"] and word_list("moved") & set(said)
        return replace(figure, sides=figure.sides[1:]) if moved else figure

    def hedged(self, part: Part) -> bool:
        """Say whether a part is told as a guess or a plan."""
        if self.standing(part) is Standing.PLANNED:
            return True
        start, end = self.sentence(part.start)
        tail = self.text[part.end : part.end + 4]
        if tail.startswith(("ish", " ish", "-ish")):
            return True
        guesses = self._of_kinds(_GUESSES)
        for mark in guesses.within(max(start, part.start - 40), min(end, part.end + 16)):
            if mark.kind == "not" and mark.value != "unsure":
                continue
            gap = (mark.end, part.start) if mark.end <= part.start else (part.end, mark.start)
            near = len(self.words(*gap)) <= (2 if mark.end <= part.start else 0)
            if near and gap[0] <= gap[1] and not self._ended(*gap):
                return True
        return self.text[part.start - 1 : part.start] == "~"

    def fact(self, name: FactName, value: FactValue, *parts: Part, assumed: bool = False) -> Fact:
        """Return a fact with the words of its parts."""
        corrects = max(p.told_to if isinstance(p, Figure) else 0 for p in parts)
        start, end = min(p.start for p in parts), max(corrects, *(p.end for p in parts))
        words, first, last = self._words(start, end)
        hedged = any(self.hedged(part) for part in parts)
        stands = (self._standing(part) for part in parts if isinstance(part, Figure))
        standing = next((each for each in stands if each is not Standing.IS), Standing.IS)
        fact = Fact(
            name, value, words, first, last, hedged, assumed, standing, corrects=corrects > 0
        )
        return self._noted(fact, parts)

    def ask(self, name: FactName, question: Say, *parts: Part) -> Ask:
        """Return a question about the words of some parts."""
        start, end = min(p.start for p in parts), max(p.end for p in parts)
        return self._noted(Ask(name, question, *self._words(start, end)), parts)

    def _noted(self, row: Row, parts: tuple[Part, ...]) -> Row:
        figures = [part for part in parts if isinstance(part, Figure)]
        for figure in figures or (f for p in parts for f in self.figures.touching(p.start, p.end)):
            self.read[figure.start] = row
        return row

    def _words(self, start: int, end: int) -> tuple[str, int, int]:
        first, last = self.normal.span(start, end)
        return self.normal.original[first:last], first, last


def _around(ends: list[int], at: int) -> tuple[int, int]:
    place = bisect_right(ends, at)
    return ends[place - 1], ends[place]
