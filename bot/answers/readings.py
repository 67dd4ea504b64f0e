"""A lamp as its keeper read it: typed readings into the engine's lamp, and what they show."""

from collections.abc import Sequence

from bot.answers.figures import length, number, percent, uvi
from bot.answers.readings_off import aside_told, warning_told
from bot.language.quantities import Units
from bot.language.readings import PlacedReading
from bot.language.uv_lamps import UvLamp
from bot.questions.uv import readings as readings_read
from bot.questions.uv.readings_off import OffBy
from bot.reply import Row, Table
from calc.uv.lamp import Lamp, OwnPoint
from calc.uv.meter import (
    METER_DOUBT,
    MeterFit,
)
from calc.uv.point import Shape
from calc.uv.residuals import Pattern, Suspect
from calc.uv.screen import Screen

__all__ = [
    "AGAIN",
    "LampRead",
    "fit_rows",
    "fit_table",
    "read_lamp",
    "shape_rows",
]

_PATTERNS = {
    Pattern.TOO_FEW: "two readings or fewer cannot show whether one of them is off",
    Pattern.CONSISTENT: "they agree with one tube, as careful readings do",
    Pattern.NEAR_LOW: "they are low close by, or high far away, for one tube",
    Pattern.NEAR_HIGH: "they are high close by, or low far away, for one tube",
    Pattern.RISING: "they rise in the order you took them",
    Pattern.SCATTERED: "they scatter more than careful readings do",
}
_POINT_PATTERNS = {
    Pattern.TOO_FEW: "two readings fix a small lamp, but cannot show whether one of them is off",
    Pattern.CONSISTENT: "they agree with one small lamp, as careful readings do",
    Pattern.NEAR_LOW: "they are low close by, or high far away, for one small lamp",
    Pattern.NEAR_HIGH: "they are high close by, or low far away, for one small lamp",
}
_AT_THE_FACE_M = 0.01
_BY_READINGS = "By your readings, "
AGAIN = (
    "Read again after 30 minutes alight: under the middle of the tube, sensor facing it, other "
    "lamps off."
)
_WEAK = (
    "Read again nearer to the tube, where the meter shows 1 or more: so weak a reading is rounded "
    "too much to go by."
)
_WIPE = "Wipe the sensor, and the tube while it is cold and unplugged."
_WORN = "If it shows the same again, the tube is worn out: fit a new one rather than go nearer."
_NO_TUBE = "no tube gives them both, so at least one of them is off"
_SUSPECTS = {
    Suspect.OFF_AXIS: "taken beside the middle of the tube",
    Suspect.NOT_FACING: "the sensor not facing the tube",
    Suspect.OTHER_LAMP: "another lamp or daylight in the reading",
    Suspect.WARM_UP: "the tube on for less than 20 to 30 minutes",
    Suspect.MEASURED_POINT: "the distance not measured from the lit tube to the sensor",
    Suspect.TUBE_LENGTH: "a tube longer or shorter than you said",
    Suspect.SHADED: "a hand, a wire or a branch in the way",
}


class LampRead(readings_read.LampRead):
    """A lamp by its readings, with the sentences of the answers that have not moved yet."""

    __slots__ = ()

    def told(self, answer: str, *, by_readings: bool = True) -> str:
        """Return an answer behind what must be known first: readings that cannot be.

        ``by_readings``: the answer itself hangs on them.
        """
        aside, warning = aside_told(self.off.aside), warning_told(self.off)
        if aside:
            answer = f"{aside} {answer}" if not self.cannot_be else answer
        lead = "By what you read now:" if self.contradicts else "If it is right:"
        if not warning:
            return answer
        if not by_readings or (answer.startswith(_BY_READINGS) and not self.contradicts):
            return f"{warning} {answer}"
        if answer.startswith(_BY_READINGS):
            guess = answer.removeprefix(_BY_READINGS)
            return f"{warning} Do not hang it by them yet. All taken together they say: {guess}"
        return f"{warning} {lead} {answer[0].lower()}{answer[1:]}"

    def moves(self, steps: tuple[str, ...]) -> tuple[str, ...]:
        """Return the steps that move something, or what to do instead where nothing may move."""
        if self.cannot_be:
            return ("Then ask again with the new readings, and move nothing before.",)
        return steps

    @property
    def first_steps(self) -> tuple[str, ...]:
        """What to do before anything else."""
        if self.fit is None:
            return ()
        if self.contradicts:
            return (AGAIN,)
        if self.off.by is OffBy.WEAK:
            return (f"{_WIPE} {AGAIN}", _WORN)
        if self.cannot_be:
            told = "Check that the meter shows a UV index and not µW/cm², and that you measured "
            return (f"{AGAIN} {told}from the lit tube to the sensor.",)
        return (_WEAK,) if self.is_loose else ()

    def set_aside_rows(self, units: Units) -> tuple[Row, ...]:
        """Return the reading that does not count, if there is one."""
        if self.fit is None or self.fit.set_aside is None:
            return ()
        return (_set_aside_row(self.fit, self.fit.set_aside, self.readings, units),)


def read_lamp(
    lamp: Lamp,
    readings: Sequence[PlacedReading] | None,
    screen: Screen,
    kind: UvLamp = UvLamp.T5_HO,
    *,
    is_named: bool,
) -> LampRead:
    """Return the lamp with the constant its readings give it, or as it is without readings."""
    read = readings_read.read_lamp(lamp, readings, screen, kind, is_named=is_named)
    return LampRead(read.lamp, read.fit, read.readings, read.off)


def fit_rows(fit: MeterFit, readings: Sequence[PlacedReading], units: Units) -> tuple[Row, ...]:
    """Return what the readings show: how far they hold, what is odd, what was set aside."""
    few = fit.contradicts and fit.pattern is Pattern.TOO_FEW
    told = _NO_TUBE if few else _PATTERNS[fit.pattern]
    if fit.shape is Shape.POINT:
        told = _POINT_PATTERNS.get(fit.pattern, told)
    rows = [Row(label="Your readings", text=told), *shape_rows(fit, units)]
    if fit.set_aside is not None:
        rows[0] = Row(label="The others", text=_PATTERNS[fit.pattern])
    if fit.suspects:
        reasons = "; ".join(_SUSPECTS[s] for s in fit.suspects)
        rows.append(Row(label="Possible reasons", text=reasons))
    if fit.set_aside is not None:
        rows.insert(0, _set_aside_row(fit, fit.set_aside, readings, units))
    rows.append(
        Row(
            label="How sure",
            text=f"{_fixed(fit)}; a hand meter itself may be off by about "
            f"{percent(METER_DOUBT.factor - 1.0)}",
        )
    )
    return tuple(rows)


def shape_rows(fit: MeterFit | None, units: Units) -> tuple[Row, ...]:
    """Return how the UV falls by the readings, where it is not as under the tube expected."""
    if fit is None or not isinstance(fit.own, OwnPoint):
        return ()
    behind = fit.own.source.behind_m
    where = "its face" if behind < _AT_THE_FACE_M else f"{length(behind, units)} behind its face"
    found = "so your readings say" if fit.told_by_readings else "taken so for its kind"
    return (
        Row(
            label="How it falls",
            text=f"as from one small lamp ({found}), its light coming from {where}: a quarter at "
            "twice that distance. That is no mistake in measuring. If it is a tube after all, "
            "tell its length",
        ),
    )


def _fixed(fit: MeterFit) -> str:
    if fit.contradicts:
        times = number(fit.fit.factor, 0.1)
        return f"hardly at all: the lamp may be {times} times as strong or as weak"
    return f"the readings fix the lamp to about {percent(fit.fit.factor - 1.0)}"


def _set_aside_row(
    fit: MeterFit, index: int, readings: Sequence[PlacedReading], units: Units
) -> Row:
    wild = readings[index]
    return Row(
        label="Set aside",
        text=f"UVI {number(wild.value, 0.01)} at {length(wild.distance.low, units)}: by the "
        f"others it should be about {uvi(wild.value / fit.ratios[index])}. Read it again",
    )


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
