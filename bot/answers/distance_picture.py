"""The picture of where a tube hangs, or of why it has no place."""

from bot.answers.curves import uvi_picture
from bot.answers.figures import length_away, uvi_estimate
from bot.answers.placed import start_told
from bot.answers.uv_parts import Wish, lamp_name, screen_phrase
from bot.drawing import PointKind
from bot.language.quantities import Units
from bot.reply import Picture
from calc.uv.lamp import Lamp
from calc.uv.placement import FARTHEST_PLACE_M, Placement, Spot, Verdict, spot
from calc.uv.screen import Screen

__all__ = ["distance_picture"]


def distance_picture(
    lamp: Lamp, screen: Screen, screen_told: bool, wish: Wish, placement: Placement, units: Units
) -> Picture:
    """Draw the UV index over the distance, with the range and the place to start."""
    near, _, far = placement.ends or (None, None, None)
    name = lamp_name(lamp)
    return uvi_picture(
        title=_title(placement, wish),
        subtitle=f"{name}, {screen_phrase(screen)}" if screen_told else name,
        lamp=lamp,
        screen=screen,
        wanted=(wish.low, wish.high),
        units=units,
        advised_m=(near.distance_m, far.distance_m) if near and far else None,
        spots=(_point(lamp, screen, placement, units),),
    )


def _title(placement: Placement, wish: Wish) -> str:
    match placement.verdict:
        case Verdict.FITS:
            return f"How far the tube hangs for {wish.whom}"
        case Verdict.BY_LENGTH:
            return f"It depends on the length of the tube for {wish.whom}"
        case _:
            return f"Why this tube will not do for {wish.whom}"


def _point(
    lamp: Lamp, screen: Screen, placement: Placement, units: Units
) -> tuple[str, Spot, PointKind]:
    if placement.ends:
        return f"start at {start_told(placement, units)}", placement.ends[1], PointKind.START
    if placement.start:
        told = f"would hang at {length_away(placement.start.distance_m, units)}"
        return told, placement.start, PointKind.HERE
    at = placement.at_safe_minimum
    if placement.verdict is Verdict.OUT_OF_RANGE:
        at = spot(lamp, FARTHEST_PLACE_M, screen)
    if placement.mild_m is not None:
        at = spot(lamp, placement.mild_m, screen)
        return f"mild at any length: {length_away(at.distance_m, units)}", at, PointKind.HERE
    return f"UVI {uvi_estimate(at.uvi)} at {length_away(at.distance_m, units)}", at, PointKind.HERE
