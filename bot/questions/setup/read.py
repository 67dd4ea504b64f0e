"""What was read from a set-up's words, shown with those words, so that a misreading is seen.

Words: ``words/<language>/read.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, auto

from bot.facts import Length, Name, Say, Share, Temp, Uvi, degrees, metres, share, uvi
from bot.language.hearing import Ask, FactName
from bot.language.hearing.facts import LampKind, Lid, Material, Placement, Thermometer
from bot.language.lamps import Fixture, OtherLamp, TubeStrength
from bot.language.quantities import Dimension, Measure
from bot.language.readings import PlacedReading
from bot.language.screens import Blocks, NoScreen, Pane, Passes, Weave
from bot.language.shown import shown
from bot.language.sizes import Size
from bot.language.uv_lamps import UvLamp
from bot.layered import Row
from bot.queries.options import OwnTube
from bot.questions.setup.check_lamps import lamp_name
from bot.questions.setup.told import Said, SetUpTold
from calc.naming import Known, named

__all__ = ["joined", "read_rows", "unclear_said", "value_said"]

# A name of which nothing can be shown.
_NOT_SHOWN = "?"


class Topic(Enum):
    """What the things that were read are about."""

    ANIMAL = auto()
    UV = auto()
    HEAT = auto()
    LAMPS = auto()
    ENCLOSURE = auto()


class Taken(Enum):
    """What was not said, so that it was assumed."""

    NOTHING = auto()
    UNIT = auto()
    BLOCKS = auto()


@dataclass(frozen=True, slots=True)
class ReadJoined:
    """Things that are told one after the other, parted more than by a comma."""

    item: Say
    rest: Say | None


@dataclass(frozen=True, slots=True)
class ReadItem:
    """One thing that was read, and the words that it was read from."""

    what: FactName
    value: Say | None
    words: str
    option: bool
    hedged: bool
    taken: Taken


@dataclass(frozen=True, slots=True)
class ReadUnclear:
    """Words that were not clear, and the question about them."""

    words: str
    question: Say


@dataclass(frozen=True, slots=True)
class ReadWhich:
    """The animals that words may mean."""

    names: tuple[Name, ...]


@dataclass(frozen=True, slots=True)
class ReadLength:
    """A length that was read."""

    length: Length


@dataclass(frozen=True, slots=True)
class ReadTemp:
    """A temperature that was read."""

    temp: Temp


@dataclass(frozen=True, slots=True)
class ReadShare:
    """A share that was read."""

    share: Share


@dataclass(frozen=True, slots=True)
class ReadUvi:
    """A UV index that was read."""

    uvi: Uvi


@dataclass(frozen=True, slots=True)
class ReadStrength:
    """A strength of a tube in percent, as its label says it."""

    percent: str
    older: bool


@dataclass(frozen=True, slots=True)
class ReadName:
    """An animal or a lamp that was read."""

    name: Name


@dataclass(frozen=True, slots=True)
class ReadText:
    """Something that is told as it was said."""

    text: str


_TOPICS = {
    Topic.ANIMAL: (FactName.ANIMAL, FactName.ANIMAL_AGE),
    Topic.UV: (
        *(FactName.TUBE, FactName.REFLECTOR, FactName.SCREEN, FactName.PLACEMENT),
        *(FactName.DISTANCE_BACK, FactName.DISTANCE, FactName.DISTANCE_PERCH),
        *(FactName.DISTANCE_FLOOR, FactName.TUBES, FactName.GAP, FactName.ACROSS),
        *(FactName.TUBE_LENGTH, FactName.AGE, FactName.UVI, FactName.UVI_AT),
    ),
    Topic.HEAT: (
        *(FactName.BASKING, FactName.WARM, FactName.COOL, FactName.NIGHT, FactName.ROOM),
        *(FactName.ROOM_NIGHT, FactName.WATER, FactName.ON_FOR, FactName.THERMOMETER),
    ),
    Topic.LAMPS: (
        *(FactName.LAMP, FactName.WITHOUT, FactName.WATTS, FactName.OTHER_WATTS),
        *(FactName.LAMP_DISTANCE, FactName.DIMMER, FactName.THERMOSTAT, FactName.HOURS),
    ),
    Topic.ENCLOSURE: (
        *(FactName.ENCLOSURE, FactName.ENCLOSURE_LENGTH, FactName.VOLUME),
        *(FactName.MATERIAL, FactName.LID),
    ),
}


def read_rows(told: SetUpTold) -> tuple[Row, ...]:
    """Return what was read, by topic, then what is unclear."""
    rows = []
    for topic, names in _TOPICS.items():
        items = tuple(_item(name, said) for name in names for said in told.all(name))
        if items:
            rows.append(Row(Say.by("read-label", topic), joined(items)))
    unclear = (Row(Say("read-unclear-label"), unclear_said(ask)) for ask in told.unclear)
    return (*rows, *unclear)


def joined(items: tuple[Say, ...]) -> Say:
    """Return messages as one, at least one of them."""
    rest = joined(items[1:]) if items[1:] else None
    return Say("read-joined", ReadJoined(items[0], rest))


def unclear_said(ask: Ask) -> Say:
    """Return what was unclear, and what would settle it."""
    which = Say("read-which", ReadWhich(tuple(map(_animal_name, ask.among))))
    return Say("read-unclear", ReadUnclear(shown(ask.words), which if ask.among else ask.question))


def value_said(value: object) -> Say | None:
    """Return a value that an option read in words; None where only its own text tells it."""
    match value:
        case Fixture() | UvLamp():
            return next(_kinds(value))
        case Weave() | PlacedReading() | Pane() | Size():
            return None
        case Measure() | TubeStrength() | OtherLamp() | NoScreen() | Blocks() | Passes():
            return _figure(value)
        case (float(), float()):
            return _figure(value)
        case _:
            return None


def _item(name: FactName, said: Said[object]) -> Say:
    taken = Taken.NOTHING
    if said.assumed and isinstance(said.value, Measure):
        taken = Taken.UNIT
    elif said.assumed and isinstance(said.value, Blocks):
        taken = Taken.BLOCKS
    value = next(_values(name, said.value), None)
    words = shown(said.words)
    return Say("read-item", ReadItem(name, value, words, said.option, said.hedged, taken))


def _values(name: FactName, value: object) -> Iterator[Say]:
    """Yield the message of a value; a fact that is only there or not has none."""
    if isinstance(value, bool):
        if not value:
            yield Say("read-none")
    elif isinstance(value, Fixture | Placement | Lid | Material | Thermometer | UvLamp):
        yield from _kinds(value)
    elif name is FactName.ANIMAL:
        yield _animal(str(value))
    elif name is FactName.WITHOUT and not isinstance(value, LampKind):
        yield Say("read-uvb") if value == "uvb" else Say("read-night-heat")
    elif isinstance(value, LampKind):
        found = lamp_name(value)
        yield Say("read-text", ReadText(shown(value))) if found is None else _named(found)
    else:
        yield _figure(value)


def _kinds(value: Fixture | Placement | Lid | Material | Thermometer | UvLamp) -> Iterator[Say]:
    match value:
        case Fixture():
            yield Say.by("read-fixture", value)
        case Placement():
            yield Say.by("read-placement", value)
        case Lid():
            yield Say.by("read-lid", value)
        case Material():
            yield Say.by("read-material", value)
        case Thermometer():
            yield Say.by("read-thermometer", value)
        case UvLamp():
            yield Say.by("read-uv", value)


def _animal(name: str) -> Say:
    return _named(_animal_name(name))


def _animal_name(name: str) -> Name:
    what = named(name).what
    if isinstance(what, Known):
        return Name(f"animal-{what.slug}")
    return Name("", shown(name) or _NOT_SHOWN)


def _named(name: Name) -> Say:
    return Say("read-name", ReadName(name))


def _figure(value: object) -> Say:
    match value:
        case Measure():
            return _measure(value)
        case OwnTube():
            return _named(Name("", shown(value.lamp.name)))
        case TubeStrength():
            facts = ReadStrength(f"{value.percent:g}", value.older_scale)
            return Say("read-strength", facts)
        case OtherLamp():
            return Say.by("read-uv", value.kind)
        case NoScreen():
            return Say("read-none")
        case Blocks():
            return Say("read-blocks", ReadShare(share(value.fraction)))
        case Passes():
            return Say("read-passes", ReadShare(share(value.fraction)))
        case float():
            return Say("read-share", ReadShare(share(value)))
        case tuple():
            return Say("read-uvi", ReadUvi(uvi(value[0], (value[0], value[-1]))))
        case Weave() | Size() | PlacedReading() | Pane():
            return Say("read-text", ReadText(shown(value.text)))
        case _:
            return Say("read-text", ReadText(shown(str(value))))


def _measure(value: Measure) -> Say:
    middle, ends = value.middle, (value.low, value.high)
    one = value.low == value.high
    match value.dimension:
        case Dimension.LENGTH:
            told = ReadLength(metres(middle, ends))
            return Say("read-length" if one else "read-length-range", told)
        case Dimension.TEMPERATURE:
            read = ReadTemp(degrees(middle, ends))
            return Say("read-temp" if one else "read-temp-range", read)
        case _:
            return Say("read-text", ReadText(shown(value.text)))
