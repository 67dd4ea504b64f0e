"""Why a tube has no place for an animal, in one or two sentences."""

from bot.answers.figures import length, percent, uvi, uvi_estimate
from bot.language.quantities import Units
from calc.uv.lamp import Lamp, uvi_at
from calc.uv.placement import FARTHEST_PLACE_M, SAFE_MINIMUM_M, Placement, Verdict
from calc.uv.screen import Screen

__all__ = ["why_no_place"]

_AN_INCH_M = 0.0254


def why_no_place(
    what: str, wanted: str, lamp: Lamp, screen: Screen, placement: Placement, units: Units
) -> str:
    """Return why a lamp, named by a phrase, cannot give the UV that is wanted."""
    match placement.verdict:
        case Verdict.TOO_WEAK:
            return (
                f"Do not use {what}: even at {length(SAFE_MINIMUM_M, units)}, the nearest that is "
                f"safe, it gives about UVI {uvi_estimate(placement.at_safe_minimum.uvi)} and not "
                f"{wanted}."
            )
        case Verdict.OUT_OF_RANGE:
            return (
                f"Do not use {what}: it is too strong for {wanted} even "
                f"{length(FARTHEST_PLACE_M, units)} away."
            )
        case _:
            return _too_close(what, wanted, lamp, screen, placement, units)


def _too_close(
    what: str,
    wanted: str,
    lamp: Lamp,
    screen: Screen,
    placement: Placement,
    units: Units,
) -> str:
    start_m = placement.start.distance_m if placement.start else SAFE_MINIMUM_M
    nearer = max(start_m - _AN_INCH_M, SAFE_MINIMUM_M / 2)
    more = uvi_at(lamp, nearer, screen) / uvi_at(lamp, start_m, screen) - 1.0
    return (
        f"Do not use {what}: for {wanted} it would have to hang about "
        f"{length(start_m, units)} from the animal's back. That is too close for comfort: "
        f"an animal that lifts itself by {length(_AN_INCH_M, units)} gets about "
        f"{percent(more)} more UV (UVI {uvi(uvi_at(lamp, nearer, screen))}, "
        "with the usual doubt of a third), and it can touch the fixture."
    )
