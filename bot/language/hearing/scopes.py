"""Of which of several animals each fact is told: the one that was named last before it."""

import re
from collections.abc import Iterator
from dataclasses import replace

from bot.language.hearing.facts import Fact, FactName, Scope
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.scene import Scene

__all__ = ["in_scope"]

# Words between two animals that are named in one breath: my beardie and my corn snake.
_JOINED = frozenset(("and", "or", "a", "an", "my", "our", "the", "also", "with", "plus"))
_NAMED = frozenset(("animal", "kin"))
# Words between a figure and the animal behind it that it is told of: 88 for the snake.
_OF = frozenset(("for", "on", "in", "of", "with", "the", "my", "our", "and", "is", "side", "temp"))


def in_scope(scene: Scene, facts: list[Fact]) -> list[Fact]:
    """Return the facts with the animal that each is told of, where several were named."""
    order = {
        str(fact.value): place
        for place, fact in enumerate(
            sorted((f for f in facts if f.name is FactName.ANIMAL), key=lambda f: f.start)
        )
    }
    if len(order) < 2:
        return facts
    named = sorted((*_named(scene, order), *_named_again(scene, order)))
    which = [_of(scene, fact, named, order) for fact in facts]
    return [
        replace(fact, scope=Scope(one)) if one else fact
        for fact, one in zip(facts, which, strict=True)
    ]


def _named(scene: Scene, order: dict[str, int]) -> Iterator[tuple[int, int]]:
    """Return where each animal is named, and which it is; of two named in one breath the first."""
    before: tuple[Mark, int] | None = None
    for mark in scene.marks:
        which = _which(mark, order) if mark.kind in _NAMED else None
        if which is None:
            continue
        if before is not None and set(scene.words(before[0].end, mark.start)) <= _JOINED:
            which = before[1]
        before = mark, which
        yield scene.normal.span(mark.start, mark.end)[0], which


def _named_again(scene: Scene, order: dict[str, int]) -> Iterator[tuple[int, int]]:
    """Return where an animal is named again by the last word of its name: first for the gecko."""
    heads = [name.lower().split()[-1] for name in order]
    marked = [mark for mark in scene.marks if mark.kind in _NAMED]
    for head, which in zip(heads, order.values(), strict=True):
        if heads.count(head) > 1 or not head.isalpha():
            continue
        for found in re.finditer(rf"\b{head}s?\b", scene.text):
            if not any(mark.start <= found.start() < mark.end for mark in marked):
                yield scene.normal.span(*found.span())[0], which


def _which(mark: Mark, order: dict[str, int]) -> int | None:
    """Return the animal that a name means: of a kin, the only one of it that was named."""
    meant = [order[name] for name in mark.value.split("|") if name in order]
    return meant[0] if len(meant) == 1 else None


def _of(
    scene: Scene,
    fact: Fact,
    named: list[tuple[int, int]],
    order: dict[str, int],
) -> int:
    if fact.name is FactName.ANIMAL:
        return order[str(fact.value)]
    found = 0
    for start, which in named:
        if start < fact.end:
            found = which
            continue
        between = scene.normal.original[fact.end : start].lower()
        words = set(between.split())
        if words <= _OF and "for" in words:
            found = which
        break
    return found
