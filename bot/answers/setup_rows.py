"""What was read from a set-up's words, shown with those words, so that a misreading is seen."""

from bot.answers.figures import length, percent, temperature, uvi_range
from bot.answers.setup_told import Said, Told
from bot.language.hearing import FactName
from bot.language.lamps import OtherLamp, TubeStrength
from bot.language.quantities import Dimension, Measure, Units
from bot.language.readings import PlacedReading
from bot.language.screens import Blocks, NoScreen, Passes, Weave
from bot.language.shown import shown
from bot.language.sizes import Size
from bot.reply import Row

__all__ = ["read_rows"]

_GROUPS = {
    "Read of the animal": (FactName.ANIMAL, FactName.ANIMAL_AGE),
    "Read of the UV": (
        *(FactName.TUBE, FactName.REFLECTOR, FactName.SCREEN, FactName.PLACEMENT),
        *(FactName.DISTANCE_BACK, FactName.DISTANCE, FactName.DISTANCE_PERCH),
        *(
            FactName.DISTANCE_FLOOR,
            FactName.TUBES,
            FactName.GAP,
            FactName.ACROSS,
            FactName.TUBE_LENGTH,
            FactName.AGE,
            FactName.UVI,
        ),
        FactName.UVI_AT,
    ),
    "Read of the heat": (
        *(FactName.BASKING, FactName.WARM, FactName.COOL, FactName.NIGHT, FactName.ROOM),
        *(FactName.ROOM_NIGHT, FactName.ON_FOR, FactName.THERMOMETER),
    ),
    "Read of the lamps": (
        *(FactName.LAMP, FactName.WITHOUT, FactName.WATTS, FactName.OTHER_WATTS),
        *(FactName.LAMP_DISTANCE, FactName.DIMMER, FactName.THERMOSTAT, FactName.HOURS),
    ),
    "Read of the enclosure": (
        *(FactName.ENCLOSURE, FactName.ENCLOSURE_LENGTH, FactName.VOLUME),
        *(FactName.MATERIAL, FactName.LID),
    ),
}
_LABELS = {
    FactName.ANIMAL_AGE: "age",
    FactName.PLACEMENT: "the tube is",
    FactName.DISTANCE_BACK: "tube to back",
    FactName.DISTANCE: "tube at",
    FactName.DISTANCE_PERCH: "tube to perch",
    FactName.DISTANCE_FLOOR: "tube to floor",
    FactName.TUBE_LENGTH: "tube length",
    FactName.TUBES: "tubes together",
    FactName.GAP: "tubes apart",
    FactName.ACROSS: "the tube lies across",
    FactName.AGE: "tube age",
    FactName.UVI: "meter shows UVI",
    FactName.UVI_AT: "meter shows UVI",
    FactName.ROOM_NIGHT: "room at night",
    FactName.ON_FOR: "lamp on for",
    FactName.THERMOMETER: "measured with",
    FactName.WITHOUT: "no",
    FactName.OTHER_WATTS: "watts of a heater",
    FactName.LAMP_DISTANCE: "heat lamp at",
    FactName.ENCLOSURE_LENGTH: "length",
    FactName.ENCLOSURE: "size",
}


def read_rows(told: Told, units: Units) -> tuple[Row, ...]:
    """Return what was read, by topic, then what is unclear."""
    rows = [
        Row(label=label, text="; ".join(read))
        for label, names in _GROUPS.items()
        if (read := [_read(name, said, units) for name in names for said in told.all(name)])
    ]
    rows += [
        Row(label="Unclear", text=f"“{shown(ask.words)}”: {ask.question}") for ask in told.unclear
    ]
    return tuple(rows)


def _read(name: FactName, said: Said[object], units: Units) -> str:
    label = _LABELS.get(name, name.value.replace("_", " "))
    value = _value(said.value, units)
    told = label if value == "" else f"{label} {value}"
    doubt = ", you were not sure" if said.hedged else ""
    taken = ""
    if said.assumed and isinstance(said.value, Measure):
        taken = ", the unit is my reading"
    elif said.assumed and isinstance(said.value, Blocks):
        taken = ", taken as what it blocks"
    source = "as you corrected it" if said.option else f"from “{shown(said.words)}”"
    return f"{told} ({source}{doubt}{taken})"


def _value(value: object, units: Units) -> str:
    match value:
        case Measure():
            return _measure(value, units)
        case TubeStrength():
            older = " (older scale)" if value.older_scale else ""
            return f"{value.percent:g} %{older}"
        case OtherLamp():
            return value.kind.value
        case NoScreen():
            return "none"
        case Blocks():
            return f"blocks {percent(value.fraction)}"
        case Passes():
            return f"passes {percent(value.fraction)}"
        case Weave() | Size() | PlacedReading():
            return shown(value.text)
        case bool():
            return "" if value else "none"
        case int():
            return str(value)
        case float():
            return percent(value)
        case tuple():
            return uvi_range(value[0], value[-1])
        case frozenset():
            return " and ".join(sorted(value))
        case _:
            return shown(str(value))


def _measure(value: Measure, units: Units) -> str:
    middle = (value.low + value.high) / 2.0
    match value.dimension:
        case Dimension.LENGTH:
            return length(middle, units)
        case Dimension.TEMPERATURE:
            return temperature(middle, units)
        case _:
            return shown(value.text)
