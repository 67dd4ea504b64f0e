"""Wishes that are not worked towards, and where none is known. Words: ``warmth.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.facts import Name, Say, Says, Temp, degrees
from bot.language.quantities import Measure
from bot.language.shown import shown
from bot.layered import Brief, Layered, Row
from bot.preferences import Context
from bot.questions.heat.shared import HEAT_CARE, aimed
from bot.questions.shared import animal_name, known_by
from bot.refusal import RefusedError
from bot.reply import Alarm
from calc.animals import Animal, Subject, Target

__all__ = ["WishPast", "WishUnknown", "air_past", "air_unknown", "typed"]


@dataclass(frozen=True, slots=True)
class WishPast:
    """A wish past a limit; ``own`` is the range of the animal, where both are known."""

    command: str
    wish: str
    most: Temp
    animal: Name | None
    own: Temp | None
    own_known: Say | None
    example: str


@dataclass(frozen=True, slots=True)
class WishUnknown:
    """An animal of which no such target is known."""

    command: str
    animal: Name
    example: str


def typed(target: Target) -> str:
    """Return the aim of a temperature target as it may be typed, never over its high end."""
    aim_f = round(target.aim * 1.8 + 32.0)
    while aim_f > target.high * 1.8 + 32.0 + 1e-9 and aim_f > target.low * 1.8 + 32.0:
        aim_f -= 1
    return f"{aim_f}F"


def air_past(
    command: str, want: Measure, most_c: float, animal: Animal | None, context: Context
) -> RefusedError:
    """Return the refusal to work towards air in which nothing can cool down."""
    own = None if animal is None else animal.cool_air_c
    example = "want:78F" if own is None else f"want:{typed(own)}"
    subject = Subject.COOL_AIR
    facts = _past(command, want, most_c, animal, (subject, own, example), context)
    return RefusedError(facts, _air_past_told, "want", _too_hot(want))


def air_unknown(command: str, animal: Animal) -> RefusedError:
    """Return that no air is known for an animal."""
    return RefusedError(
        WishUnknown(command, animal_name(animal), "want:78F"), _air_unknown_told, "animal"
    )


def _past(
    command: str,
    want: Measure,
    most_c: float,
    animal: Animal | None,
    its: tuple[Subject, Target | None, str],
    context: Context,
) -> WishPast:
    subject, own, example = its
    known = None
    if animal is not None and own is not None:
        known = known_by(animal, subject, own, context.own)
    return WishPast(
        command=command,
        wish=shown(want.text),
        most=degrees(most_c),
        animal=None if animal is None else animal_name(animal),
        own=None if own is None else aimed(own),
        own_known=known,
        example=example,
    )


def _too_hot(want: Measure) -> tuple[Alarm, ...]:
    return (Alarm(key="too_hot_wish", words=want.text),)


def _air_past_told(facts: WishPast) -> Layered:
    say = Says("warmth", facts)
    return Layered(
        command=facts.command,
        status="problem",
        title=say("past-title"),
        brief=Brief(
            head=say("air-past"),
            range=(say("air-most"), *_own(facts, say)),
            steps=(say("do"),),
        ),
        steps=(say("do"), say("step-help")),
        numbers=tuple(_numbers(facts, say)),
        care=HEAT_CARE,
        guide=("the-cool-end",),
    )


def _own(facts: WishPast, say: Says) -> Iterator[Say]:
    if facts.own is not None and facts.animal is not None:
        yield say("own")


def _numbers(facts: WishPast, say: Says) -> Iterator[Row]:
    if facts.own is not None and facts.own_known is not None:
        yield Row(say("label-own"), say("own-known"))


def _air_unknown_told(facts: WishUnknown) -> Layered:
    say = Says("warmth", facts)
    return Layered(
        command=facts.command,
        status="problem",
        title=say("unknown-title"),
        brief=Brief(head=say("air-unknown"), steps=(say("do"),)),
        steps=(say("do"), say("step-help")),
        care=HEAT_CARE,
        guide=("the-cool-end",),
    )
