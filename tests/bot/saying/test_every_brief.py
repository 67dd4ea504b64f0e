"""Whatever is told, a phone shows at once: hazards before each answer, and everything refused.

All of it is some forty thousand replies; each run looks at a sample of its own. What failed is told
whole, so that it can be asked again.
"""

import random
import re
from collections.abc import Iterator
from itertools import combinations

import pytest

from bot.ask import ask
from bot.brief import MOST_LINES, phone_lines
from bot.commands import ALL_COMMANDS, COMMANDS
from bot.dangers.table import hazards
from bot.language.units import Units
from bot.preferences import LANGUAGES, Preferences
from bot.queries.question import Question
from bot.reply import Alarm, Reply, Role
from bot.said_first import said_first
from tests.bot.saying.test_briefs import MOST_WORDS, QUOTED, UNIT
from tests.fuzz.pool import FREE, pool
from tests.some import FULL, some_of

ASKERS = [Preferences(forced_units=u, language=x) for x in LANGUAGES for u in Units]
EXAMPLES = [example for command in COMMANDS for example in command.examples]
LACKING = ["distance", "plan animal:snork", "uvi tube:12%", "meter readings:4.2 at 12 in uvi:9"]
EACH = 150 if FULL else 60


def is_shown_at_once(asked: object, reply: Reply) -> None:
    told = [line.text for line in reply.brief]
    assert phone_lines(reply.brief) <= MOST_LINES, (asked, told)


def is_told_behind(reply: Reply, asked: object, told: Reply) -> None:
    """The answer, or why there is none, stands behind the hazards and in no part alone."""
    left_out = not reply.answer or reply.answer not in told.answer
    heads = {line.text for line in reply.brief if line.role is Role.HEAD} | {reply.short} - {""}
    shown = {line.text for line in told.brief if line.role is Role.HEAD}
    lacks = any(all(name in line for name in reply.lacking) for line in shown if reply.lacking)
    # Where nothing but a danger was understood, it is the answer.
    danger_alone = bool(reply.dangers) and not heads
    assert left_out or lacks or danger_alone or heads & shown, (asked, heads, shown)


def begins_short(asked: object, reply: Reply) -> None:
    first = re.split(r"[.!?](?: |$)|\n", QUOTED.sub("Q", reply.brief[0].text))[0]
    assert len(UNIT.sub("", first).split()) <= MOST_WORDS, (asked, first)


def alarms(draw: random.Random) -> list[Alarm]:
    """Return one to three hazards, each as it may be heard or found."""
    keys = draw.sample(list(hazards()), draw.choice((1, 1, 1, 2, 2, 3)))
    return [
        Alarm(
            key=key,
            words=draw.choice(("", "what I wrote of it")),
            asked=draw.random() < 0.25,
            urgency=draw.choice(("", "", "now", "today", "this week", "change")),
            one_lamp=draw.random() < 0.2,
        )
        for key in keys
    ]


@pytest.mark.parametrize("key", list(hazards()))
def test_every_hazard_alone_leaves_room_for_the_answer(key: str) -> None:
    for asker in ASKERS:
        for line in ("distance bearded dragon tube:12%", "needs animal:corn snake", "xyz"):
            behind = ask(line, asker)
            for asked in (False, True):
                told = said_first(behind, [Alarm(key=key, asked=asked)], asker)
                is_shown_at_once((key, line, asker), told)
                is_told_behind(behind, (key, line, asker), told)
                begins_short((key, line), told)


@pytest.mark.parametrize("pair", some_of(combinations(hazards(), 2)), ids="-".join)
def test_two_hazards_at_once_are_both_told(pair: tuple[str, str]) -> None:
    asker = ASKERS[sum(map(len, pair)) % len(ASKERS)]
    told = said_first(ask("convert 14in", asker), [Alarm(key=key) for key in pair], asker)
    is_shown_at_once(pair, told)
    assert {danger.key for danger in told.dangers} >= set(pair)


def test_hazards_before_any_answer() -> None:
    draw = random.Random()
    replies = {
        (line, index): ask(line, asker)
        for line in (*draw.sample(EXAMPLES, 12), *LACKING)
        for index, asker in enumerate(ASKERS)
    }
    for question in draw.sample(list(refused(draw)), 40):
        index = draw.randrange(len(ASKERS))
        replies[question.line(), index] = ask(question, ASKERS[index])
    for _ in range(EACH):
        (line, index), reply = draw.choice(list(replies.items()))
        heard = alarms(draw)
        told = said_first(reply, heard, ASKERS[index])
        is_shown_at_once((line, heard, ASKERS[index]), told)
        is_told_behind(reply, (line, heard, ASKERS[index]), told)
        # The acts and whom to call are never left to a part.
        pressing = any(hazards()[d.key].kind in ("people", "stop", "vet") for d in told.dangers)
        assert (told.brief[0].role is Role.DANGER) is pressing


def refused(draw: random.Random) -> Iterator[Question]:
    """Yield questions that lack something, have too much, or cannot be read."""
    for command in ALL_COMMANDS:
        given = command.query.texts_in(
            command.examples[0].removeprefix(command.name), command.positional
        )
        yield Question(command.name, {})
        yield Question(command.name, given | {"strange": "thing"})
        for option in command.query.options():
            yield Question(command.name, {n: t for n, t in given.items() if n != option.name})
            for text in ("banana", *pool(command, option.name)):
                yield Question(command.name, given | {option.name: text})


@pytest.mark.slow
def test_whatever_is_refused() -> None:
    draw = random.Random()
    many = 0
    for question in draw.sample(list(refused(draw)), 2 * EACH):
        asker = draw.choice(ASKERS)
        reply = ask(question, asker)
        if not reply.opened:
            is_shown_at_once((question.line(), asker), reply)
        if reply.status == "problem" and not reply.dangers:
            begins_short((question.line(), asker), reply)
            many += 1
    assert many > EACH // 3


def test_free_words() -> None:
    draw = random.Random()
    for words in draw.sample(FREE, EACH):
        asker = draw.choice(ASKERS)
        reply = ask(Question("ask", {"question": words}), asker)
        if not reply.opened:
            is_shown_at_once((words, asker), reply)
