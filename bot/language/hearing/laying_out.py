"""Laying a text out for listening: its phrases, its figures, its sentences and clauses."""

import re
from collections.abc import Iterator
from dataclasses import replace
from itertools import islice

from bot.language.glossary import glossed
from bot.language.hearing.corrections import with_corrections
from bot.language.hearing.figures import Figure, figures_of
from bot.language.hearing.lexicon import Mark, Names, known_phrases, marks_of, tokens_of
from bot.language.hearing.past import changes_in
from bot.language.hearing.placed import Placed, Words
from bot.language.hearing.scene import Scene
from bot.language.hearing.told_once import told_once
from bot.language.hearing.word_lists import word_list
from bot.language.spoken import in_digits

__all__ = ["LONGEST_MESSAGE", "MOST_FIGURES", "MOST_MARKS", "laid_out"]

# A message of Discord; what is longer is not read.
LONGEST_MESSAGE = 2000
# No set-up has more, and no message of five thousand has 23; the limit bounds the work.
MOST_FIGURES = 50
# The message with the most has 30 phrases; the limit bounds the work as well.
MOST_MARKS = 150
# Some overlap, so that more are looked at before the rest is left.
_MOST_LOOKED_AT = 200

_SENTENCE = re.compile(r"[.!?]+(?=\s|$)|[\n;]+")
_CLAUSE = re.compile(r"[,()]|\s[-/+]\s|/(?=\s)")
_SAYS = re.compile(
    r"\b([a-z']{2,20}) (?:(?:also|always|all|just|once) )?"
    r"(says?|said|swears?|swore|claims?|claimed|reckons?|recommends?|recommended|suggests?"
    r"|suggested|insists?)(?![a-z])(?! (?:no|yes|so)\b)"
)
# A place of one or two letters is one beside its figure alone: n 66, cs: 78, 21 rm.
_SHORT_PLACE = 2
_BESIDE = (re.compile(r"[ :=@]{0,2}[0-9]{2}"), re.compile(r"[0-9] ?(?:°? ?[fc])? ?\Z"))
_DIGIT = re.compile(r"[0-9]")
_WORD = re.compile(r"[a-z0-9']+")


def laid_out(text: str, names: Names) -> Scene:
    """Return the scene of a text; ``names`` are those of animals that the caller knows."""
    plain = in_digits(glossed(text))
    plain = plain.cut(LONGEST_MESSAGE)
    # Letter by letter where the fold of the whole text changes its length.
    lower = plain.text.lower()
    if len(lower) != len(plain.text):
        lower = "".join(low if len(low := c.lower()) == 1 else c for c in plain.text)
    plain = replace(plain, text=lower)
    phrases = known_phrases()
    places = tokens_of(lower)
    animal_marks = names.find(lower, phrases.words)[:_MOST_LOOKED_AT]
    other_marks = marks_of(lower, places, phrases, names.words, _MOST_LOOKED_AT)
    other_marks = [mark for mark in other_marks if not _is_letters(lower, mark)]
    marks = _without_overlap([*animal_marks, *other_marks, *_hearsay(lower)])
    with_digits = [(m.start, m.end) for m in marks if _DIGIT.search(lower, m.start, m.end)]
    figures = Placed(told_once(figures_of(lower, with_digits, MOST_FIGURES), lower))
    kept = [mark for mark in marks if not figures.touching(mark.start, mark.end)]
    tokens = Words(_WORD.finditer(lower))
    sentences = _ends(lower, _SENTENCE)
    clauses = sorted({*sentences, *_ends(lower, _CLAUSE, figures)})
    changes = changes_in(lower)
    scene = Scene(plain, Placed(kept[:MOST_MARKS]), figures, tokens, sentences, clauses, changes)
    return with_corrections(scene)


def _is_letters(text: str, mark: Mark) -> bool:
    """Say whether a short name of a place stands beside no figure, and is none."""
    if mark.kind != "place" or mark.end - mark.start > _SHORT_PLACE:
        return False
    behind, before = _BESIDE
    near = behind.match(text, mark.end) or before.search(text, max(0, mark.start - 8), mark.start)
    return near is None


def _hearsay(text: str) -> Iterator[Mark]:
    """Return where somebody says a figure, or something that is no instrument: the chart says."""
    for match in islice(_SAYS.finditer(text), _MOST_LOOKED_AT):
        sure = match[2].startswith(("claim", "reckon", "swear", "swor"))
        if sure or match[1] not in word_list("shows_figures"):
            yield Mark("wish", "hearsay", match.start(2), match.end(2))


def _ends(text: str, pattern: re.Pattern[str], figures: Placed[Figure] | None = None) -> list[int]:
    found = [match.end() for match in pattern.finditer(text)]
    if figures is not None:
        found = [at for at in found if not figures.touching(at - 1, at)]
    return [0, *found, len(text) + 1]


def _without_overlap(marks: list[Mark]) -> list[Mark]:
    """Return the marks in order of place; where two overlap, the longer one, else the first."""
    kept: list[Mark] = []
    for mark in sorted(marks, key=lambda m: (m.start, -m.end)):
        if kept and mark.start < kept[-1].end:
            if mark.end - mark.start > kept[-1].end - kept[-1].start:
                kept[-1] = mark
            continue
        kept.append(mark)
    return kept
