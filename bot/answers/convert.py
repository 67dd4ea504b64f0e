"""Length and temperature the other way; a difference is never shown as a reading."""

from math import ceil, log10

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
# unit of the conversion, as it is shown, the decimals it has at least
_SHOWN: dict[Dimension, dict[Units, tuple[tuple[str, str, int], ...]]] = {
    Dimension.LENGTH: {
        Units.IN: (("in", "in", 2), ("ft", "ft", 3)),
        Units.CM: (("cm", "cm", 2), ("mm", "mm", 1)),
    },
    Dimension.TEMPERATURE: {
        Units.IN: (("degF", "°F", 1),),
        Units.CM: (("degC", "°C", 1),),
    },
    Dimension.TEMPERATURE_DIFFERENCE: {
        Units.IN: (("delta_degF", "°F of difference", 1),),
        Units.CM: (("delta_degC", "°C of difference", 1),),
    },
}
_MOST_DECIMALS = 9
# Less than this share is a slip of the conversion, and no digit that was asked about.
_SLIP = 1e-12


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
    """Return the measure in each unit of a system, as finely as it was asked."""
    si, _ = _SI[measure.dimension]
    finest = _asked_step(measure)
    texts = []
    for unit, sign, least in _SHOWN[measure.dimension][units]:
        step = abs(convert(finest, si, unit) - convert(0.0, si, unit))
        decimals = max(least, min(ceil(-log10(step) - _SLIP), _MOST_DECIMALS))
        low, high = (
            _plain(convert(end, si, unit), decimals) for end in (measure.low, measure.high)
        )
        texts.append(f"{low} {sign}" if low == high else f"{low} to {high} {sign}")
    return texts


def _asked_step(measure: Measure) -> float:
    """Return the last digit that was asked about, in SI; the usual one where there is no last."""
    si, _ = _SI[measure.dimension]
    zero = convert(0.0, measure.unit, si)
    ends = [convert(end, si, measure.unit) for end in (measure.low, measure.high)]
    for decimals in range(_MOST_DECIMALS):
        if all(abs(round(end, decimals) - end) <= _SLIP * max(abs(end), _SLIP) for end in ends):
            return abs(convert(10.0**-decimals, measure.unit, si) - zero)
    return abs(convert(1.0, measure.unit, si) - zero)


def _plain(value: float, decimals: int) -> str:
    text = f"{value:.{decimals}f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def _kind(measure: Measure) -> str:
    if measure.dimension is Dimension.TEMPERATURE:
        return (
            "a reading of a thermometer; for how much warmer or colder, "
            "write difference before it, such as convert difference 10F"
        )
    return "how much warmer or colder, not a reading: 0 °C of difference is no change at all"
