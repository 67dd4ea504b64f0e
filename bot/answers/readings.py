"""A lamp as its keeper read it: typed readings into the engine's lamp, and what they show."""

from collections.abc import Sequence
from dataclasses import replace

from bot.answers.figures import length, number, percent, uvi
from bot.language.quantities import Units
from bot.language.readings import PlacedReading
from bot.reply import Row, Table
from calc.uv.lamp import Lamp
from calc.uv.meter import METER_DOUBT, MeterFit, Reading, fit_readings
from calc.uv.residuals import Pattern, Suspect
from calc.uv.screen import Screen

__all__ = [
    "engine_readings",
    "fit_rows",
    "fit_table",
    "read_lamp",
]

_PATTERNS = {
    Pattern.TOO_FEW: "two readings or fewer cannot show whether one of them is off",
    Pattern.CONSISTENT: "they agree with one tube, as careful readings do",
    Pattern.NEAR_LOW: "they are low close by, or high far away, for one tube",
    Pattern.NEAR_HIGH: "they are high close by, or low far away, for one tube",
    Pattern.RISING: "they rise in the order you took them",
    Pattern.SCATTERED: "they scatter more than careful readings do",
}
_SUSPECTS = {
    Suspect.OFF_AXIS: "taken beside the middle of the tube",
    Suspect.NOT_FACING: "the sensor not facing the tube",
    Suspect.OTHER_LAMP: "another lamp or daylight in the reading",
    Suspect.WARM_UP: "the tube on for less than 20 to 30 minutes",
    Suspect.MEASURED_POINT: "the distance not measured from the lit tube to the sensor",
    Suspect.TUBE_LENGTH: "a tube longer or shorter than you said",
    Suspect.SHADED: "a hand, a wire or a branch in the way",
}


def engine_readings(readings: Sequence[PlacedReading], screen: Screen) -> list[Reading]:
    """Return typed readings as the engine's, all through one screen."""
    return [Reading(r.distance.low, r.value, screen) for r in readings]


def read_lamp(lamp: Lamp, readings: Sequence[PlacedReading] | None, screen: Screen) -> Lamp:
    """Return the lamp with the constant its readings give it, or as it is without readings."""
    if not readings:
        return lamp
    return replace(lamp, own=fit_readings(engine_readings(readings, screen), lamp).own)


def fit_rows(fit: MeterFit, readings: Sequence[PlacedReading], units: Units) -> tuple[Row, ...]:
    """Return what the readings show: how far they hold, what is odd, what was set aside."""
    rows = [Row(label="Your readings", text=_PATTERNS[fit.pattern])]
    if fit.set_aside is not None:
        rows[0] = Row(label="The others", text=_PATTERNS[fit.pattern])
    if fit.suspects:
        reasons = "; ".join(_SUSPECTS[s] for s in fit.suspects)
        rows.append(Row(label="Possible reasons", text=reasons))
    if fit.set_aside is not None:
        wild = readings[fit.set_aside]
        wanted = wild.value / fit.ratios[fit.set_aside]
        rows.insert(
            0,
            Row(
                label="Set aside",
                text=f"UVI {number(wild.value, 0.01)} at {length(wild.distance.low, units)}: "
                f"by the others it should be about {uvi(wanted)}. Read it again",
            ),
        )
    rows.append(
        Row(
            label="How sure",
            text=f"the readings fix the lamp to about {percent(fit.fit.factor - 1.0)}; "
            f"a hand meter itself may be off by about {percent(METER_DOUBT.factor - 1.0)}",
        )
    )
    return tuple(rows)


def fit_table(fit: MeterFit, readings: Sequence[PlacedReading], units: Units) -> Table:
    """Return every reading beside what the fitted lamp gives there."""
    return Table(
        columns=("From the tube", "You read", "The lamp by all readings", "Used"),
        rows=tuple(
            (
                length(reading.distance.low, units),
                number(reading.value, 0.01),
                uvi(reading.value / ratio),
                "set aside" if i == fit.set_aside else "yes",
            )
            for i, (reading, ratio) in enumerate(zip(readings, fit.ratios, strict=True))
        ),
    )
