"""The brief of a reply: the few lines that every front shows, each with what it is for.

An answer that brings its own brief keeps it. For one that brings none it is made of the whole
answer, its first step and its first caution, with more of them while a phone shows them at once.
"""

from collections.abc import Iterable, Iterator
from functools import lru_cache
from textwrap import wrap

from bot.reply import Line, PartName, Reply, Role

__all__ = [
    "MOST_LINES",
    "PHONE",
    "brief_of",
    "fitted",
    "held_back",
    "held_labels",
    "in_order",
    "phone_lines",
]

PHONE = 38
"""Characters in a line of a phone."""
MOST_LINES = 8
"""Lines that a brief has at most."""
_LEAD = {Role.STEP: "1. ", Role.CAUTION: "! "}
_FULL = {PartName.STEPS: Role.STEP, PartName.CARE: Role.CAUTION}


def brief_of(reply: Reply) -> tuple[Line, ...]:
    """Return the brief that the reply brings, or one made of its answer, steps and cautions."""
    if reply.brief:
        return reply.brief
    head = Line(role=Role.HEAD, text=reply.answer)
    assumed = [Line(role=Role.ASSUMED, text=each.text) for each in reply.assumed if each.text]
    # What stands open below is not said twice.
    do = () if PartName.STEPS in reply.opened else reply.steps[:2]
    mind = () if PartName.CARE in reply.opened else reply.cautions[:2]
    steps = [Line(role=Role.STEP, text=step) for step in do]
    cautions = [Line(role=Role.CAUTION, text=caution) for caution in mind]
    kept = [head, *assumed, *steps[:1], *cautions[:1]]
    for more in (*cautions[1:], *steps[1:]):
        if phone_lines((*kept, more)) <= MOST_LINES:
            kept.append(more)
    return in_order(kept)


def in_order(lines: Iterable[Line]) -> tuple[Line, ...]:
    """Return the lines as they are read: dangers, whom to call, the answer, what to do."""
    order = list(Role)
    return tuple(sorted(lines, key=lambda line: order.index(line.role)))


def fitted(lines: Iterable[Line], gives_way: Iterable[tuple[Role, int]]) -> tuple[Line, ...]:
    """Return the lines that a phone shows at once, as far as others give way for them.

    ``gives_way`` tells what does, in its turn, and how many lines of it stay; the last go first.
    """
    kept = list(lines)
    for role, stay in gives_way:
        while phone_lines(kept) > MOST_LINES:
            where = [i for i, line in enumerate(kept) if line.role is role]
            if len(where) <= stay:
                break
            del kept[where[-1]]
    return tuple(kept)


def phone_lines(lines: Iterable[Line]) -> int:
    """Return how many lines of a phone the lines of a brief take.

    >>> phone_lines([Line(role=Role.HEAD, text="14 in is 35.56 cm.")])
    1
    """
    return sum(_long(line) for line in lines)


def _long(line: Line) -> int:
    return _tall(_LEAD.get(line.role, ""), line.text)


@lru_cache(maxsize=4096)
def _tall(lead: str, text: str) -> int:
    return sum(len(wrap(lead + part, PHONE)) or 1 for part in text.split("\n"))


def held_back(reply: Reply) -> tuple[PartName, ...]:
    """Return the parts that say more than the brief and are not shown beside it."""
    return tuple(_held_back(reply))


def held_labels(reply: Reply) -> str:
    """Return what the parts are called that are not shown beside the brief, as they are typed."""
    held = held_back(reply)
    return ", ".join(part.label.lower() for part in reply.parts if part.name in held)


def _held_back(reply: Reply) -> Iterator[PartName]:
    brief = brief_of(reply)
    for part in reply.parts:
        told = sum(line.role is _FULL.get(part.name) for line in brief)
        if part.name not in reply.opened and told < len(part.items):
            yield part.name
