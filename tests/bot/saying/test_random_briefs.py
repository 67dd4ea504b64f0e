"""Questions drawn at random, 500 in a full run: a phone shows each brief at once."""

import re
import tomllib
from collections import Counter
from collections.abc import Iterator
from importlib.resources import files

import pytest

from bot.ask import ask
from bot.brief import MOST_LINES, phone_lines
from bot.language.units import Units
from bot.preferences import LANGUAGES, Language, Preferences
from bot.reply import Reply
from tests.bot.saying.random_questions import random_questions
from tests.bot.saying.test_briefs import MOST_WORDS, QUOTED, UNIT
from tests.some import some

MANY, SEED = some(500), 20261128
QUESTIONS = tuple(random_questions(MANY, SEED))


def replies(language: Language) -> Iterator[tuple[str, Reply]]:
    for question in QUESTIONS:
        for units in Units:
            asker = Preferences(forced_units=units, language=language)
            yield f"{question.line()} ({units.value})", ask(question, asker)


@pytest.mark.slow
@pytest.mark.parametrize("language", LANGUAGES)
def test_a_random_question_has_a_brief_that_a_phone_shows_at_once(language: Language) -> None:
    path = files("bot.words") / language / "avoid.toml"
    avoided = tomllib.loads(path.read_text(encoding="utf-8"))
    said_by_nobody = re.compile(rf"(?<!\w)(?:{'|'.join(map(re.escape, avoided))})(?!\w)", re.I)
    many: Counter[str] = Counter()
    for asked, reply in replies(language):
        assert reply.brief, asked
        assert phone_lines(reply.brief) <= MOST_LINES, (asked, reply.brief)
        first = re.split(r"[.!?](?: |$)", QUOTED.sub("Q", reply.brief[0].text))[0]
        assert len(UNIT.sub("", first).split()) <= MOST_WORDS, (asked, first)
        told = "\n".join(line.text for line in reply.brief)
        assert not said_by_nobody.search(told), (asked, told)
        many["danger" if reply.dangers else reply.status] += 1
    # The draw is worth something: most are answered, and hazards and refusals are among them.
    assert sum(many.values()) == MANY * len(Units)
    assert many["ok"] > MANY
    assert min(many["danger"], many["problem"]) > MANY // 10


def test_the_draw_is_the_same_every_time_and_no_question_stands_out() -> None:
    assert tuple(random_questions(MANY, SEED)) == QUESTIONS
    each = Counter(question.command for question in QUESTIONS)
    assert max(each.values()) < MANY // 5
    assert len({question.line() for question in QUESTIONS}) > MANY * 4 // 5
