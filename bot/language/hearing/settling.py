"""What is left when the same thing was said twice: a correction, a repetition, or a question."""

from bot.facts import Say
from bot.language.hearing.facts import Ask, Fact, FactName, Heard, LampKind
from bot.language.hearing.scene import Scene
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

# A correction follows what it corrects this closely, in characters.
_SAME_BREATH = 60


def settled(scene: Scene, facts: list[Fact], questions: list[Ask]) -> Heard:
    """Return each thing once; a corrected one is dropped, two that disagree are asked about."""
    kept: dict[tuple[FactName, object], Fact] = {}
    last: dict[FactName, Fact] = {}
    for fact in sorted(facts, key=lambda f: (f.start, f.end)):
        if (fact.name, _plain(fact)) in kept:
            continue
        before = last.get(fact.name)
        if before and fact.name not in _MANY and _corrected(scene, before, fact):
            del kept[before.name, _plain(before)]
        kept[fact.name, _plain(fact)] = last[fact.name] = fact
    if (FactName.LAMP, LampKind.T5_HO) in kept:
        kept.pop((FactName.LAMP, LampKind.T5), None)
    remaining = tuple(_measured_first(list(kept.values())))
    asked = list(questions)
    for name in sorted({fact.name for fact in remaining} - _MANY):
        rows = [fact for fact in remaining if fact.name is name]
        if len(rows) > 1:
            latest = rows[-1]
            question = Say("unclear-holds", Choice(tuple(shown(row.words) for row in rows)))
            asked.append(Ask(name, question, latest.words, latest.start, latest.end))
    return Heard(remaining, tuple(sorted(asked, key=lambda ask: (ask.start, ask.name))))


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
