"""Sample facts for a message: every variant that it asks for, with values that are told."""

from collections.abc import Iterator
from datetime import UTC, date, datetime, time
from enum import Enum
from itertools import islice, product
from types import SimpleNamespace
from typing import Annotated, Any, get_args, get_origin

from bot.facts import Digits, Figure, Moment, Name, Say
from bot.saying.words import Words
from tests.bot.saying import lint

MOST = 120


def facts_for(words: Words, key: str) -> Iterator[Any]:
    """Return facts of every kind that a message fits, a bounded number."""
    needed = lint.needed(words, key)
    if not needed:
        yield None
    only = lint.ONLY.search(words.comment(key))
    for facts in lint.fitting(words, key) if needed else ():
        types = lint.hints(facts)
        values = [_values(types[name], name, (only and only[1]) or "") for name in needed]
        for chosen in islice(product(*values), MOST):
            yield SimpleNamespace(**dict(zip(needed, chosen, strict=True)))


def _values(hint: Any, name: str, only: str) -> list[Any]:
    known, optional = lint.split(hint)
    unknown = [None] if optional and f"${name}" not in only else []
    return [*_known(known), *unknown]


def _known(hint: Any) -> list[Any]:
    if get_origin(hint) is Annotated:
        kind = get_args(hint)[1]
        return [Figure(kind, 0.4, 0.3, 0.5), Figure(kind, 12.0, 12.0, 12.0)]
    if isinstance(hint, type) and issubclass(hint, Enum):
        return list(hint)
    if get_origin(hint) is tuple:
        one = _known(get_args(hint)[0])[0]
        return [(one,), (one, one), (one, one, one)]
    plain: dict[Any, list[Any]] = {
        bool: [True, False],
        int: [0, 1, 2, 5],
        str: ["text"],
        Say: ["a message"],
        str | Say: ["text"],
        Name: [Name("animal-argentine-tegu"), Name("", "Rex")],
        date: [date(2026, 5, 1)],
        time: [time(8), time(22, 30)],
        Digits: [Digits(35.56, 2), Digits(-0.001, 1)],
        Moment: [Moment(datetime(2026, 5, 1, 7, tzinfo=UTC), "Europe/Berlin")],
    }
    return plain[hint]
