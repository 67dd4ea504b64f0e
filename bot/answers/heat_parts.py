"""What every answer about heat shares: whose targets, how they are known, which cautions."""

from dataclasses import dataclass

from bot.answers.animals import animal_asked, doubtful_rows, known_by, of_animal
from bot.answers.figures import temperature, temperature_range
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Measure, Units
from bot.language.sizes import Size
from bot.preferences import Context
from bot.reply import Row, Value
from calc.animals import Animal, Subject, Target
from calc.heat.enclosure import Enclosure, Lid, Material
from calc.heat.judge import DANGER_OVER_SURFACE_K
from calc.uncertainty import Estimate

__all__ = [
    "AFTER_A_CHANGE",
    "HEAT_CAUTIONS",
    "Kept",
    "WantedHeat",
    "around",
    "body_rows",
    "box_asked",
    "box_row",
    "check_unit",
    "kept_asked",
    "target_text",
    "wanted_surface",
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
_NO_ANIMAL = "bearded dragon"
# A single wanted surface is met within this much: no infrared gun tells finer.
_ABOUT_K = 1.5
_LIDS = {"solid": Lid.SOLID, "part mesh": Lid.PART_MESH, "full mesh": Lid.FULL_MESH}


@dataclass(frozen=True, slots=True)
class Kept:
    """The animal an answer is for, and the row that says so where none was named."""

    animal: Animal
    rows: tuple[Row, ...]

    @property
    def whom(self) -> str:
        """The animal as a sentence needs it."""
        return of_animal(self.animal)


def kept_asked(name: str, context: Context) -> Kept:
    """Return the animal named, or the group's, or else a bearded dragon and say so."""
    if name.strip() or context.default_animal:
        return Kept(animal_asked(name, context), ())
    animal = animal_asked(_NO_ANIMAL, context)
    told = f"none named, so I took {of_animal(animal)}; name yours with animal:corn snake"
    return Kept(animal, (Row(label="Animal", text=told),))


@dataclass(frozen=True, slots=True)
class WantedHeat:
    """A wanted temperature: the aim and its range [degC], and how it is known."""

    low_c: float
    aim_c: float
    high_c: float
    rows: tuple[Row, ...]
    sources: tuple[str, ...]

    def value(self, name: str) -> Value:
        """Return the wanted range as a figure of the reply."""
        return Value(name=name, low=self.low_c, best=self.aim_c, high=self.high_c, unit="degC")


def wanted_surface(want: Measure | None, animal: str, context: Context) -> WantedHeat:
    """Return the surface that was asked for, or else the animal's own."""
    if want is not None:
        middle = (want.low + want.high) / 2.0
        _check_it_cannot_burn(want, middle, animal, context)
        low, high = min(want.low, middle - _ABOUT_K), max(want.high, middle + _ABOUT_K)
        told = f"{temperature(middle, context.units)}, as you gave it"
        row = Row(label="Wanted surface", text=told)
        return WantedHeat(low, middle, high, (row,), ())
    kept = kept_asked(animal, context)
    target = kept.animal.basking_surface_c
    if target is None:
        raise NotUnderstoodError(
            kept.animal.name,
            "a wanted surface, because none is known here for that animal: give one that a "
            "keeper or reptile vet you trust named",
            "want:85F",
            "animal",
        )
    told = f"{target_text(target, context.units)} for {kept.whom}"
    rows = [*kept.rows, Row(label="Wanted surface", text=told)]
    against = doubtful_rows(kept.animal, Subject.BASKING_SURFACE)
    rows += [Row(label="Others say", text=text) for text in against]
    others = kept.animal.disagreements_about(Subject.BASKING_SURFACE)
    keys = (target.source, *(d.source for d in others))
    return WantedHeat(target.low, target.aim, target.high, tuple(rows), keys)


def _check_it_cannot_burn(want: Measure, aim_c: float, animal: str, context: Context) -> None:
    """Refuse to work towards a surface that would burn the animal."""
    kept = kept_asked(animal, context)
    target = (
        kept.animal.basking_surface_c or kept_asked(_NO_ANIMAL, context).animal.basking_surface_c
    )
    if target is None or aim_c <= target.high + DANGER_OVER_SURFACE_K:
        return
    raise NotUnderstoodError(
        want.text,
        f"a surface that does not burn {kept.whom}, for which "
        f"{temperature(target.high, context.units)} is the most (if yours is another animal that "
        "wants it hotter, name it with animal:)",
        f"want:{temperature(target.aim, context.units).split(' (')[0].replace(' °', '')}",
        "want",
    )


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


def around(value_c: float, doubt_k: float) -> Estimate:
    """Return a reading with the doubt of its thermometer."""
    return Estimate(value_c - doubt_k, value_c, value_c + doubt_k)


def check_unit(reading: Measure | None, coldest_c: float, option: str) -> None:
    """Ask about a reading in °F that is too cold for a box with its lamp on."""
    if reading is None or reading.unit != "degF" or reading.high >= coldest_c:
        return
    number = temperature(reading.high, Units.IN).partition(" ")[0]
    raise NotUnderstoodError(
        reading.text,
        f"the right unit, because a lit enclosure is hardly ever so cold: {number}C if your "
        "thermometer shows °C",
        f"{option}:{number}C",
        option,
    )


def box_asked(size: Size, material: str, lid: str) -> Enclosure:
    """Return the enclosure of the engine for a typed one."""
    return Enclosure(size.length_m, size.depth_m, size.height_m, Material(material), _LIDS[lid])


def box_row(size: Size, material: str, lid: str) -> Row:
    """Return how the enclosure was taken."""
    front = "" if material == "glass" else " with a glass front"
    return Row(label="Enclosure", text=f"{size.text}, {material}{front}, {lid} lid")
