"""An animal that needs no UV lamp: nothing is worked out. Words: ``words/<language>/unlit.ftl``."""

from dataclasses import dataclass

from bot.facts import Name, Say, Says
from bot.layered import Brief, Layered
from bot.questions.shared import animal_name
from bot.refusal import RefusedError
from calc.animal import Animal

__all__ = ["never_too_weak", "under_no_lamp"]


@dataclass(frozen=True, slots=True)
class Unlit:
    """An animal that no lamp is hung for, or whose UV may be none; what it is typed as."""

    animal: Name
    called: str
    example: str


def under_no_lamp(animal: Animal) -> RefusedError:
    """Return that an animal lives under no lamp at all."""
    return RefusedError(
        _unlit(animal), lambda facts: _told(facts, Say("unlit-none", facts)), "animal"
    )


def never_too_weak(animal: Animal) -> RefusedError:
    """Return that no tube gets too weak for an animal that may do without UV."""
    return RefusedError(
        _unlit(animal), lambda facts: _told(facts, Say("unlit-weak", facts)), "animal"
    )


def _unlit(animal: Animal) -> Unlit:
    return Unlit(animal_name(animal), animal.name, "uvi:1-2")


def _told(facts: Unlit, head: Say) -> Layered:
    say = Says("unlit", facts)
    return Layered(
        command="needs",
        status="problem",
        title=say("title"),
        brief=Brief(head, steps=(say("do"),)),
        steps=(say("do"),),
    )
