"""The animals in a sentence; their names are the caller's, language knows none."""

from collections.abc import Iterator

from bot.language.hearing.facts import Ask, Fact, FactName
from bot.language.hearing.scene import Scene

__all__ = ["animals_heard"]


def animals_heard(scene: Scene) -> Iterator[Fact | Ask]:
    """Return every animal once, and a question where only its kin was named, or two were."""
    first: dict[str, Fact] = {}
    for mark in scene.of("animal"):
        if scene.denial(mark) or scene.of_others(mark):
            continue
        fact = scene.fact(FactName.ANIMAL, mark.value, mark, assumed=mark.slip)
        first.setdefault(mark.value, fact)
    for mark in scene.of("kin"):
        names = mark.value.split("|") if mark.value else []
        if set(names) & set(first):
            continue
        if len(names) == 1:
            first[names[0]] = scene.fact(FactName.ANIMAL, names[0], mark, assumed=True)
            continue
        known = f": {', '.join(names)}" if names else ""
        yield scene.ask(FactName.ANIMAL, f"Which one is it{known}?", mark)
        break
    yield from first.values()
    if len(first) > 1:
        named = [*scene.of("animal"), *scene.of("kin")]
        last = max(named, key=lambda mark: mark.start)
        yield scene.ask(FactName.ANIMAL, f"Which animal is this for: {' or '.join(first)}?", last)
