"""Length and temperature the other way; a difference is never shown as a reading."""

from bot.answers.figures import number
from bot.answers.linking import source_lines
from bot.language.quantities import Dimension, Measure, Units, convert
from bot.preferences import Context
from bot.queries.general import ConvertQuery
from bot.reply import Reply, Row, Value

__all__ = ["answer_convert"]

# dimension → SI unit of the conversion, and as the reply names it
_SI = {
    Dimension.LENGTH: ("m", "m"),
    Dimension.TEMPERATURE: ("degC", "degC"),
    Dimension.TEMPERATURE_DIFFERENCE: ("delta_degC", "K"),
}
_SHOWN: dict[Dimension, dict[Units, tuple[tuple[str, str, float], ...]]] = {
    Dimension.LENGTH: {
        Units.IN: (("in", "in", 0.01), ("ft", "ft", 0.001)),
        Units.CM: (("cm", "cm", 0.01), ("mm", "mm", 0.1)),
    },
    Dimension.TEMPERATURE: {
        Units.IN: (("degF", "°F", 0.1),),
        Units.CM: (("degC", "°C", 0.1),),
    },
    Dimension.TEMPERATURE_DIFFERENCE: {
        Units.IN: (("delta_degF", "°F of difference", 0.1),),
        Units.CM: (("delta_degC", "°C of difference", 0.1),),
    },
}


def answer_convert(query: ConvertQuery, context: Context) -> Reply:
    """Answer with the same quantity in the other system."""
    measure = query.value
    asked = measure.system or context.units
    other = Units.CM if asked is Units.IN else Units.IN
    shown = [_texts(measure, units) for units in (asked, other)]
    rows = [Row(label="Also", text=" = ".join(t[1:])) for t in shown if len(t) > 1]
    if measure.dimension is not Dimension.LENGTH:
        rows.append(Row(label="Kind", text=_kind(measure)))
    _, si_unit = _SI[measure.dimension]
    middle = (measure.low + measure.high) / 2
    return Reply(
        command="convert",
        status="ok",
        title="Conversion",
        answer=f"{shown[0][0]} is {shown[1][0]}.",
        values=(
            Value(name="value", low=measure.low, best=middle, high=measure.high, unit=si_unit),
        ),
        rows=tuple(rows),
        sources=source_lines(["nist_sp811"]),
    )


def _texts(measure: Measure, units: Units) -> list[str]:
    si, _ = _SI[measure.dimension]
    texts = []
    for unit, sign, step in _SHOWN[measure.dimension][units]:
        low, high = (number(convert(v, si, unit), step) for v in (measure.low, measure.high))
        texts.append(f"{low} {sign}" if low == high else f"{low} to {high} {sign}")
    return texts


def _kind(measure: Measure) -> str:
    if measure.dimension is Dimension.TEMPERATURE:
        return (
            "a reading of a thermometer; for how much warmer or colder, "
            "write difference before it, such as convert difference 10F"
        )
    return "how much warmer or colder, not a reading: 0 °C of difference is no change at all"
