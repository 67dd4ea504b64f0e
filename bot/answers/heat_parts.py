"""What every answer about heat shares: whose targets, how they are known, which cautions."""

from dataclasses import dataclass

from bot.answers.animals import (
    animal_asked,
    known_by,
    of_animal,
)
from bot.answers.figures import temperature, temperature_range
from bot.language.quantities import Units
from bot.preferences import Context
from bot.reply import Row
from calc.animals import Animal, Target

__all__ = [
    "AFTER_A_CHANGE",
    "HEAT_CAUTIONS",
    "Kept",
    "body_rows",
    "kept_named",
    "target_text",
]

HEAT_CAUTIONS = (
    (
        "Heat lamps burn skin and start fires: guard, ceramic holder, two supports, nothing near "
        "that burns."
    ),
    (
        "Switch off and let it cool before you move or change a lamp; follow your local electrical "
        "codes."
    ),
    (
        "An animal that gapes and stays in the coolest corner, lies limp or is burnt needs a "
        "reptile vet."
    ),
)
AFTER_A_CHANGE = (
    "Re-measure after two hours, and go on in small steps: the numbers here are a start, your "
    "thermometer decides."
)


@dataclass(frozen=True, slots=True)
class Kept:
    """The animal an answer is for, and the row that says so where none was named."""

    animal: Animal
    rows: tuple[Row, ...]

    @property
    def whom(self) -> str:
        """The animal as a sentence needs it."""
        return of_animal(self.animal)


def kept_named(name: str, context: Context) -> Kept:
    """Return the animal named, or the group's usual one; without either it is asked for."""
    return Kept(animal_asked(name, context), ())


def target_text(target: Target, units: Units) -> str:
    """Return a target with its aim and how it is known."""
    span = temperature_range(target.low, target.high, units)
    if target.best is not None and target.low < target.best < target.high:
        span += f", best {temperature(target.best, units)}"
    return f"{span} ({known_by(target)})"


def body_rows(animal: Animal, units: Units) -> tuple[Row, ...]:
    """Return what is published on bodies, told apart from the surfaces that warm them."""
    return tuple(
        Row(
            label="Body, not surface",
            text=f"{body.taxon}: {temperature_range(body.low_c, body.high_c, units)}, "
            f"{body.what} (published)",
        )
        for body in animal.bodies
    )
