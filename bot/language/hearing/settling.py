"""What is left when the same thing was said twice: a correction, a repetition, or a question."""

from dataclasses import replace

from bot.facts import Say
from bot.language.hearing.facts import Ask, Fact, FactName, Heard, LampKind, Scope
from bot.language.hearing.scene import Scene
from bot.language.hearing.scopes import in_scope
from bot.language.quantities import Dimension, Measure
from bot.language.shown import shown
from bot.language.wanted import Choice

__all__ = ["settled"]

# Of these a set-up may have several.
_MANY = frozenset(
    (
        FactName.ANIMAL,
        FactName.LAMP,
        FactName.WITHOUT,
        FactName.UVI_AT,
        FactName.THERMOMETER,
        FactName.OTHER_WATTS,
        FactName.MATERIAL,
    )
)

_Key = tuple[FactName, object, Scope]

# A correction follows what it corrects this closely, in characters.
_SAME_BREATH = 60


def settled(
    scene: Scene, facts: list[Fact], questions: list[Ask], aside: list[Fact] | None = None
) -> Heard:
    """Return each thing once; a corrected one is dropped, two that disagree are asked about.

    ``aside`` is what is not so now: it is kept apart, and settles nothing.
    """
    kept: dict[_Key, Fact] = {}
    last: dict[tuple[FactName, Scope], Fact] = {}
    for fact in sorted(in_scope(scene, facts), key=lambda f: (f.start, f.end)):
        if _key(fact) in kept:
            continue
        before = last.get((fact.name, fact.scope))
        corrects = fact.corrects
        if before and fact.name not in _MANY and _corrected(scene, before, fact):
            del kept[_key(before)]
            corrects = True
        kept[_key(fact)] = last[fact.name, fact.scope] = (
            fact if corrects == fact.corrects else replace(fact, corrects=corrects)
        )
    if any(fact.value is LampKind.T5_HO for fact in kept.values()):
        kept = {key: fact for key, fact in kept.items() if fact.value is not LampKind.T5}
    remaining = tuple(_measured_first(list(kept.values())))
    asked = list(questions)
    several = {(fact.name, fact.scope) for fact in remaining if fact.name not in _MANY}
    for name, scope in sorted(several, key=lambda one: (one[0], one[1].animal)):
        rows = [fact for fact in remaining if fact.name is name and fact.scope == scope]
        if len(rows) > 1:
            latest = rows[-1]
            question = Say("unclear-holds", Choice(tuple(shown(row.words) for row in rows)))
            asked.append(Ask(name, question, latest.words, latest.start, latest.end))
    in_order = tuple(sorted(asked, key=lambda ask: (ask.start, ask.name)))
    return Heard(remaining, in_order, _apart(scene, facts, aside or []))


def _apart(scene: Scene, facts: list[Fact], aside: list[Fact]) -> tuple[Fact, ...]:
    """Return what is not so now, each once, beside what is."""
    animals = [fact for fact in facts if fact.name is FactName.ANIMAL]
    scoped = in_scope(scene, [*animals, *aside])[len(animals) :]
    kept = {(fact.standing, _key(fact)): fact for fact in reversed(scoped)}
    return tuple(sorted(kept.values(), key=lambda fact: fact.start))


def _key(fact: Fact) -> _Key:
    return fact.name, _plain(fact), fact.scope


def _measured_first(facts: list[Fact]) -> list[Fact]:
    """Leave out the watts of a tube where its length itself was told."""

    def is_in_watts(fact: Fact) -> bool:
        value = fact.value
        return isinstance(value, Measure) and value.dimension is Dimension.POWER

    tubes = [fact for fact in facts if fact.name is FactName.TUBE_LENGTH]
    if all(is_in_watts(fact) for fact in tubes):
        return facts
    return [f for f in facts if f.name is not FactName.TUBE_LENGTH or not is_in_watts(f)]


def _plain(fact: Fact) -> object:
    value = fact.value
    for field in ("low", "percent", "fraction", "length_m"):
        if hasattr(value, field):
            return field, getattr(value, field), getattr(value, "high", None)
    return value


def _corrected(scene: Scene, one: Fact, other: Fact) -> bool:
    original = scene.normal.original
    between = original[one.end : other.start].lower()
    return (
        any(
            one.end <= scene.normal.span(mark.start, mark.end)[0] < other.start
            for mark in scene.of("corrected")
        )
        and len(between) < 60
    )
