"""Which part of a guide page answers free words, so that nobody has to look for it."""

import re
from collections import Counter
from dataclasses import dataclass
from functools import cache

from bot import guide
from bot.language.hearing import FactName
from bot.language.screens import pane_in
from bot.queries.question import Question
from bot.routes.asked import Asked

__all__ = ["page_read", "part_answering", "part_asked"]

# Who writes more tells a set-up; a short answer is for a question in a line.
_MOST_WORDS = 30

_WORD = re.compile(r"[a-z]{3,}")
# Words that stand in every question or on every page.
_COMMON = frozenset(
    (
        *("the", "and", "for", "are", "does", "what", "why", "how", "can", "should", "will"),
        *("with", "that", "this", "have", "has", "need", "get", "put", "use", "when", "which"),
        *("you", "your", "not", "but", "out", "from", "where", "much", "many", "its", "was"),
        *("uvb", "uva", "lamp", "lamps", "light", "lights", "tube", "tubes", "bulb", "bulbs"),
        *("near", "too", "enough", "good", "bad", "hot", "warm", "cold", "know", "mesh", "heat"),
        *("animal", "animals", "tank", "viv", "dragon", "beardie", "gecko", "snake"),
    )
)
_OF_PANES = "Glass and plastic"
_AT_THE_END = "One thing to do next"
_STEM = 5
_IN_HEADING = 3.0
_LEAST = 1.0


def part_answering(asked: Asked, language: str) -> tuple[str, str] | None:
    """Return the page, and its part, whose first sentence answers the words; else None."""
    two_tools = len(asked.told.thermometers) > 1
    told = (asked.warmth and not two_tools) or asked.at_a_distance or asked.readings
    if told or len(asked.words.split()) > _MOST_WORDS:
        return None
    for known in dict.fromkeys((language, guide.FIRST)):
        for answers in _answers(known):
            words = asked.words if known == guide.FIRST else asked.typed
            if answers.are_asked_by(_kind_alone(words, asked)):
                return answers.slug, answers.part
    return None


def _kind_alone(words: str, asked: Asked) -> str:
    """Return words with the animal's last one alone: no black rat snake turned black."""
    for said in asked.told.all(FactName.ANIMAL):
        first, _, kind = said.words.rpartition(" ")
        if first:
            words = re.sub(re.escape(said.words), kind, words, flags=re.IGNORECASE)
    return words


def page_read(page: Question, language: str) -> Question:
    """Return a page to be read with its part as the language calls it."""
    part = page.values.get("part")
    if not part:
        return page
    heading = guide.heading_in(str(page.values["page"]), str(part), language)
    return Question(page.command, {**page.values, "part": heading})


@dataclass(frozen=True, slots=True)
class _Answers:
    """A part that answers: the patterns of its questions, all of a row at once, and what no."""

    slug: str
    part: str
    rows: tuple[tuple[re.Pattern[str], ...], ...]
    unless: re.Pattern[str] | None

    def are_asked_by(self, words: str) -> bool:
        """Say whether the words ask one of its questions."""
        if not any(all(each.search(words) for each in row) for row in self.rows):
            return False
        return self.unless is None or self.unless.search(words) is None


def _whole_words(pattern: str) -> re.Pattern[str]:
    return re.compile(rf"(?<!\w)(?:{pattern})(?!\w)")


@cache
def _answers(language: str) -> tuple[_Answers, ...]:
    return tuple(
        _Answers(
            page.slug,
            answers.part,
            tuple(
                tuple(re.compile(rf"(?<!\w)(?:{one})(?!\w)") for one in row)
                for row in answers.asked
            ),
            re.compile(answers.unless) if answers.unless else None,
        )
        for page in guide.pages(language)
        for answers in page.answers
    )


def part_asked(slug: str, asked: Asked) -> str:
    """Return the heading of the page's part that the words are about, or nothing."""
    if slug == "screens" and pane_in(asked.words):
        return _OF_PANES
    parts, often = _parts(slug)
    # What the whole page is about tells no part from another.
    wanted = _stems(asked.words) - _stems(f"{guide.page(slug).title} {slug}")
    scores = {
        heading: sum(
            _IN_HEADING * (stem in _stems(heading)) + (stem in stems) / max(1, often[stem])
            for stem in wanted
        )
        for heading, stems in parts.items()
    }
    best = max(scores, key=lambda heading: scores[heading])
    return best if scores[best] >= _LEAST else ""


@cache
def _parts(slug: str) -> tuple[dict[str, set[str]], Counter[str]]:
    """Return the word stems of each part of a page, and in how many parts each stands."""
    parts: dict[str, set[str]] = {}
    for heading, text in guide.sections(guide.page(slug)):
        parts.setdefault(heading, set()).update(_stems(text))
    for never in (guide.INTRODUCTION, _AT_THE_END):
        parts.pop(never, None)
    return parts, Counter(stem for stems in parts.values() for stem in stems)


def _stems(text: str) -> set[str]:
    return {word[:_STEM] for word in _WORD.findall(text.lower()) if word not in _COMMON}
