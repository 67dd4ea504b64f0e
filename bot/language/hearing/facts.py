"""What can be heard: facts and questions, each with the words it came from."""

from dataclasses import dataclass
from enum import StrEnum

from bot.facts import Say
from bot.language.lamps import Fixture, OtherLamp, TubeStrength
from bot.language.quantities import Measure
from bot.language.readings import PlacedReading
from bot.language.screens import Pane, Screen
from bot.language.sizes import Size

__all__ = [
    "GONE",
    "OF_TURN",
    "THERE",
    "WISHES",
    "Ask",
    "Fact",
    "FactName",
    "FactValue",
    "Heard",
    "LampKind",
    "Lid",
    "Material",
    "Placement",
    "Scope",
    "Standing",
    "Thermometer",
]


class FactName(StrEnum):
    """What a fact is about."""

    ANIMAL = "animal"
    ANIMAL_AGE = "animal_age"
    TUBE = "tube"
    TUBES = "tubes"
    GAP = "gap"
    ACROSS = "across"
    TUBE_LENGTH = "tube_length"
    AGE = "age"
    LAMP = "lamp"
    UV_LAMP = "uv_lamp"
    WITHOUT = "without"
    REFLECTOR = "reflector"
    SCREEN = "screen"
    PLACEMENT = "placement"
    LID = "lid"
    DISTANCE = "distance"
    DISTANCE_BACK = "distance_back"
    DISTANCE_PERCH = "distance_perch"
    DISTANCE_FLOOR = "distance_floor"
    LAMP_DISTANCE = "lamp_distance"
    ENCLOSURE = "enclosure"
    ENCLOSURE_LENGTH = "enclosure_length"
    VOLUME = "volume"
    MATERIAL = "material"
    BASKING = "basking"
    WARM = "warm"
    COOL = "cool"
    NIGHT = "night"
    WATER = "water"
    ROOM = "room"
    ROOM_NIGHT = "room_night"
    TEMPERATURE = "temperature"
    THERMOMETER = "thermometer"
    WATTS = "watts"
    OTHER_WATTS = "other_watts"
    DIMMER = "dimmer"
    THERMOSTAT = "thermostat"
    HOURS = "hours"
    ON_FOR = "on_for"
    UVI = "uvi"
    UVI_AT = "uvi_at"
    TEXT = "text"


class LampKind(StrEnum):
    """A kind of lamp or heater, by class."""

    T5_HO = "t5 ho"
    T5 = "t5"
    T8 = "t8"
    COMPACT = "compact"
    MERCURY_VAPOUR = "mercury vapour"
    METAL_HALIDE = "metal halide"
    UV_LED = "uv led"
    HALOGEN = "halogen"
    FLOOD = "flood"
    INCANDESCENT = "incandescent"
    RED = "red"
    COLOURED = "coloured"
    CERAMIC = "ceramic"
    INFRARED_PROJECTOR = "infrared projector"
    RADIANT_PANEL = "radiant panel"
    HEAT_MAT = "heat mat"
    HEAT_ROCK = "heat rock"
    LED = "led"


class Placement(StrEnum):
    """Where the tube is: over the mesh, or inside with nothing between."""

    OVER = "over"
    INSIDE = "inside"


class Lid(StrEnum):
    """What closes the enclosure at the top."""

    MESH = "mesh"
    SOLID = "solid"
    GLASS = "glass"
    PLASTIC = "plastic"


class Material(StrEnum):
    """What the walls are made of."""

    GLASS = "glass"
    WOOD = "wood"
    PVC = "pvc"
    MELAMINE = "melamine"
    MESH = "mesh"


class Thermometer(StrEnum):
    """What a temperature was read with."""

    INFRARED_GUN = "infrared gun"
    DIGITAL_PROBE = "digital probe"
    DIAL = "dial"


FactValue = (
    str
    | bool
    | int
    | float
    | tuple[float, float]
    | Measure
    | TubeStrength
    | OtherLamp
    | Fixture
    | Screen
    | Pane
    | Size
    | PlacedReading
)


class Standing(StrEnum):
    """How something that was said stands: it is there, it was, it is wished, asked, planned…"""

    IS = "is"
    WAS = "was"
    WISHED = "wished"
    ASKED = "asked"
    PLANNED = "planned"
    OTHERS = "others"
    NOT = "not"


OF_TURN = {
    "wish": Standing.WISHED,
    "was": Standing.WAS,
    "others": Standing.OTHERS,
    "asked": Standing.ASKED,
    "intent": Standing.PLANNED,
}
"""How a thing stands behind a word of such a kind."""

THERE = frozenset((Standing.IS, Standing.PLANNED))
"""What fills a question: what is there, and what is to come."""

WISHES = frozenset((Standing.WISHED, Standing.OTHERS, Standing.WAS))
"""What somebody says that should be, what others have, and what was."""

GONE = WISHES | {Standing.NOT}
"""What is not there."""


@dataclass(frozen=True, slots=True)
class Scope:
    """Which of several animals a fact is told of, by the order in which they were named."""

    animal: int = 0


@dataclass(frozen=True, slots=True)
class Fact:
    """One thing that was said; ``words`` are the asker's own, from ``start`` to ``end``.

    ``hedged`` marks a guess or a plan ("maybe", "about", "want to use"), ``assumed`` a unit or a
    name that was not written, ``corrects`` that it stands in the place of what was said before.
    """

    name: FactName
    value: FactValue
    words: str
    start: int
    end: int
    hedged: bool = False
    assumed: bool = False
    standing: Standing = Standing.IS
    scope: Scope = Scope()
    corrects: bool = False


@dataclass(frozen=True, slots=True)
class Ask:
    """One thing that was said unclearly, and the question that would settle it.

    ``among`` are the values it may have, where they can be counted.
    """

    name: FactName
    question: Say
    words: str
    start: int
    end: int
    among: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Heard:
    """All that was heard in a text, in the order of the words.

    ``aside`` are the facts that are not so now: what was, what others have, what is wished for or
    asked about. They fill no question.
    """

    facts: tuple[Fact, ...]
    questions: tuple[Ask, ...]
    aside: tuple[Fact, ...] = ()

    def all(self, name: FactName) -> tuple[Fact, ...]:
        """Return every fact of this name."""
        return tuple(fact for fact in self.facts if fact.name is name)

    def one(self, name: FactName) -> Fact | None:
        """Return the fact of this name if there is exactly one and no question about it."""
        facts = self.all(name)
        asked = any(question.name is name for question in self.questions)
        return facts[0] if len(facts) == 1 and not asked else None
