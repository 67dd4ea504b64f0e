"""The changes to a basking lamp in words: moves, other lamps, dimmers, guards."""

from bot.answers.figures import length, length_range, percent, temperature_range, watts
from bot.answers.heat_wanted import WantedHeat
from bot.answers.verdicts import verdict_word
from bot.language.quantities import Units
from bot.reply import Row
from calc.heat.basking import MOST_DIMMING, DimmerChange, DimmerVerdict, WattageStep
from calc.heat.dimming import rerated_by_power
from calc.heat.guards import Guard
from calc.judgement import Judged, judge_value
from calc.quantities import Quantity
from calc.uncertainty import Estimate

__all__ = [
    "FIRST_PUT_RIGHT",
    "GUARD_WORDS",
    "dimmer_row",
    "dimming_row",
    "lamp_rows",
    "move_text",
]

GUARD_WORDS = {
    Guard.NEARER_THAN_SAFE_DISTANCE: ("Stop: it would be nearer than the lamp's label allows."),
    Guard.ABOVE_HOLDER_MARK: (
        "Stop: the lamp has more watts than its holder is marked for. Never exceed the mark."
    ),
    Guard.WOOD_TOO_HOT: (
        "Stop: wood that stays at 170 °F (76.5 °C) or more can catch fire in time. Switch off and "
        "give it more distance."
    ),
    Guard.LAMP_WITHIN_REACH: (
        "Stop: an animal that can touch a lamp will be burnt one day. Guard it or hang it out of "
        "reach first."
    ),
}
_ONLY_FILAMENTS = (
    "Only an incandescent or halogen lamp can be dimmed: never dim a mercury-vapour lamp or a UV "
    "tube"
)
FIRST_PUT_RIGHT = {
    Guard.ABOVE_HOLDER_MARK: (
        "Switch the lamp off, let it cool, and fit one of no more watts than the mark on its "
        "holder; or a holder marked for it."
    ),
    Guard.WOOD_TOO_HOT: (
        "Switch the lamp off, and put lamp and wood so far apart that no wood gets near "
        "170 °F (76.5 °C)."
    ),
    Guard.LAMP_WITHIN_REACH: (
        "Leave the lamp off until a guard is round it or the animal can no longer reach it."
    ),
}


def move_text(from_m: float, move: Estimate, units: Units) -> str:
    """Return the move as the end of a sentence."""
    way = "raise" if move.best > from_m else "lower"
    return (
        f"{way} the lamp from {length(from_m, units)} to {length(move.best, units)} above the "
        f"surface; the right place is somewhere within {length_range(move.low, move.high, units)}, "
        f"so start at {length(move.high, units)}, the careful end, and re-measure after two hours"
    )


def lamp_rows(
    lamps: tuple[WattageStep, ...],
    distance_m: float,
    holder_w: float | None,
    wanted: WantedHeat,
    units: Units,
) -> tuple[tuple[str, str, str], ...]:
    """Return the lamps that are sold as rows of a table."""
    return tuple(
        (
            f"{watts(lamp.watts)} of the same shape at {length(distance_m, units)}",
            temperature_range(lamp.surface_c.low, lamp.surface_c.high, units),
            "more than the holder is marked for"
            if holder_w is not None and lamp.watts > holder_w
            else verdict_word(_judged(lamp.surface_c, wanted)),
        )
        for lamp in lamps
    )


def dimmer_row(dimmer: DimmerChange, present: float) -> Row:
    """Return the dimmer setting with what to do instead where it is asked too much."""
    setting = dimmer.setting
    match dimmer.verdict:
        case DimmerVerdict.BEYOND_FULL:
            told = "even full power is not enough: move the lamp nearer or use a stronger one"
        case DimmerVerdict.TOO_MUCH:
            smaller = f"a {watts(dimmer.smaller_w)} lamp" if dimmer.smaller_w else "a smaller lamp"
            told = (
                f"it would have to run at about {percent(setting.best)} of full power. More "
                f"than about {percent(MOST_DIMMING)} of dimming is too much (common practice, no "
                f"source): use {smaller} instead"
            )
        case DimmerVerdict.WITHIN:
            span = f"{percent(setting.low)} to {percent(setting.high)}"
            told = (
                f"from {percent(present)} to about {percent(setting.best)} of full power "
                f"({span}). A dimmer's own marks are not power: turn it in small steps and go by "
                "the thermometer"
            )
    return Row(label="Dimmer", text=f"{told}. {_ONLY_FILAMENTS}")


def dimming_row(dimmer: DimmerChange) -> tuple[Row, ...]:
    """Return what dimming does besides taking heat, where the lamp is dimmed at all."""
    if not 0.2 <= dimmer.setting.best <= 0.99:
        return ()
    lamp = rerated_by_power(dimmer.setting.best)
    told = (
        f"at {percent(lamp.power)} of its power it gives about {percent(lamp.light)} of its light, "
        f"and a more orange one (colour temperature {percent(lamp.colour_temperature)} of full)"
    )
    return (Row(label="What dimming does", text=told),)


def _judged(surface_c: Estimate, wanted: WantedHeat) -> Judged:
    return judge_value(Quantity.BASKING_SURFACE, surface_c, wanted.low_c, wanted.high_c)
