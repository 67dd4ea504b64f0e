"""The animals in a sentence; their names are the caller's, language knows none."""

from collections.abc import Iterator
from dataclasses import replace

from bot.facts import Say
from bot.language.hearing.facts import Ask, Fact, FactName
from bot.language.hearing.scene import Scene
from bot.language.wanted import Choice

__all__ = ["animals_heard"]


def animals_heard(scene: Scene) -> Iterator[Fact | Ask]:
    """Return every animal once, and a question where only its kin was named, none, or two."""
    first: dict[str, Fact] = {}
    for mark in scene.of("animal"):
        if scene.denial(mark) or scene.of_others(mark):
            continue
        fact = scene.fact(FactName.ANIMAL, mark.value, mark, assumed=mark.slip)
        first.setdefault(mark.value, fact)
    unsure = [
        mark
        for mark in sorted((*scene.of("kin"), *scene.of("strange")), key=lambda mark: mark.start)
        if not (scene.denial(mark) or scene.of_others(mark))
    ]
    for mark in unsure[:1]:
        if mark.kind == "strange":
            yield scene.ask(FactName.ANIMAL, Say("unclear-animal"), mark)
            continue
        names = tuple(mark.value.split("|")) if mark.value else ()
        which = Say("unclear-which-of", Choice(names)) if names else Say("unclear-which")
        asked = scene.ask(FactName.ANIMAL, which, mark)
        yield replace(asked, among=names)
    yield from first.values()
    if len(first) > 1:
        named = [*scene.of("animal"), *unsure]
        last = max(named, key=lambda mark: mark.start)
        which = Say("unclear-which-of", Choice(tuple(first)))
        asked = scene.ask(FactName.ANIMAL, which, last)
        yield replace(asked, among=tuple(first))
