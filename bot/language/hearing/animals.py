"""The animals in a sentence; their names are the caller's, language knows none."""

from collections.abc import Iterator
from dataclasses import replace

from bot.language.hearing.facts import Ask, Fact, FactName
from bot.language.hearing.scene import Scene
from bot.language.shown import shown

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
            words = shown(mark.value)
            yield scene.ask(FactName.ANIMAL, f"Which animal is it? I know no “{words}”.", mark)
            continue
        names = tuple(mark.value.split("|")) if mark.value else ()
        known = f": {', '.join(names)}" if names else ""
        asked = scene.ask(FactName.ANIMAL, f"Which one is it{known}?", mark)
        yield replace(asked, among=names)
    yield from first.values()
    if len(first) > 1:
        named = [*scene.of("animal"), *unsure]
        last = max(named, key=lambda mark: mark.start)
        asked = scene.ask(FactName.ANIMAL, f"Which animal is this for: {' or '.join(first)}?", last)
        yield replace(asked, among=tuple(first))
