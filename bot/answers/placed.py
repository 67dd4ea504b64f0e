"""Where a tube goes, in words: the same in every answer, also where its length decides."""

from dataclasses import dataclass, replace

from bot.answers.figures import length, length_range_away, length_start
from bot.language.quantities import Units
from bot.reply import Table, Value
from calc.uncertainty import Estimate
from calc.uv.lamp import Lamp, other_lengths
from calc.uv.lengths import DARK_ENDS_M
from calc.uv.placement import Placement, Verdict, place
from calc.uv.screen import Screen
from calc.uv.start import Advice

__all__ = ["NOT_PLACED", "ByLength", "OfLength", "by_length", "span_told", "start_told"]

NOT_PLACED = {
    Verdict.TOO_WEAK: ("too weak", "do not use"),
    Verdict.TOO_CLOSE: ("too close", "do not use"),
    Verdict.OUT_OF_RANGE: ("too strong", "do not use"),
    Verdict.BY_LENGTH: ("by its length", "tell it"),
}
"""Why a lamp has no place, and what to do about it, in a few words."""


def start_told(placement: Placement, units: Units) -> str:
    """Return where to start, as it is shown beside the range that it lies in."""
    assert placement.ends is not None
    near, start, far = placement.ends
    return length_start(start.distance_m, (near.distance_m, far.distance_m), units)


def span_told(placement: Placement, units: Units) -> str:
    """Return from where to where a lamp goes, or in two words why it has no place."""
    if placement.ends is None:
        return ": ".join(NOT_PLACED[placement.verdict])
    near, _, far = placement.ends
    return length_range_away(near.distance_m, far.distance_m, units)


@dataclass(frozen=True, slots=True)
class OfLength:
    """A lamp at one of the lengths that it may have, and where it goes then."""

    lamp: Lamp
    placement: Placement

    @property
    def is_good(self) -> bool:
        """Whether it fits, and not so far away that a weaker one is the better choice."""
        return self.placement.ends is not None and self.placement.advice is not Advice.WEAKER_TUBE

    @property
    def long_m(self) -> float:
        """Length of the tube from end to end [m]."""
        return self.lamp.lit_length_m + DARK_ENDS_M


@dataclass(frozen=True, slots=True)
class ByLength:
    """Every length that a lamp may have, the shortest first."""

    each: tuple[OfLength, ...]

    @property
    def good(self) -> OfLength | None:
        """The shortest that has a good place, if there is one."""
        return next((one for one in self.each if one.is_good), None)

    def answer(self, units: Units) -> str:
        """Return where the shortest goes, and that the length decides."""
        one = self.good
        if one is None:
            return "Choose a weaker tube: whatever its length, this one has to hang too far away."
        return (
            "Measure the tube first, from end to end: no one distance is right for every length "
            f"it may have. If it is {length(one.long_m, units)} long, keep "
            f"{span_told(one.placement, units)} from the tube to the animal's back; the table has "
            "every length."
        )

    def table(self, units: Units) -> Table:
        """Return the range and the start of every length."""
        return Table(
            columns=("Tube, end to end", "Tube to back", "Start"),
            rows=tuple(
                (
                    length(one.long_m, units),
                    span_told(one.placement, units),
                    start_told(one.placement, units) if one.placement.ends else "",
                )
                for one in self.each
            ),
        )

    def values(self) -> tuple[Value, ...]:
        """Return the distances [m] of every length."""
        return tuple(
            Value.of(f"distance_{round(one.long_m * 1000.0)}_mm", _span(one.placement), "m")
            for one in self.each
            if one.placement.ends
        )


def by_length(lamp: Lamp, screen: Screen, low_uvi: float, high_uvi: float) -> ByLength:
    """Return where a lamp goes at every length that it may have."""
    lamps = sorted(
        (replace(lamp, may_be=()), *other_lengths(lamp)), key=lambda one: one.lit_length_m
    )
    return ByLength(tuple(OfLength(o, place(o, screen, low_uvi, high_uvi)) for o in lamps))


def _span(placement: Placement) -> Estimate:
    assert placement.ends is not None
    return Estimate(*(spot.distance_m for spot in placement.ends))
