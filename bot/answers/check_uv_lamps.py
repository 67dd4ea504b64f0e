"""The UV of a set-up whose lamp has no figures, or that has none, or has several readings."""

from bot.answers.animals import known_by
from bot.answers.check_parts import Mark, Part, Todo, Urgency
from bot.answers.figures import length, uvi_range
from bot.answers.other_lamp import METER_FIRST
from bot.answers.setup_told import Told
from bot.language.quantities import Units
from bot.language.screens import Pane
from bot.language.uv_lamps import UvLamp
from calc.animals import Target
from calc.uv.placement import COMFORTABLE_MINIMUM_M

__all__ = [
    "UV",
    "behind_pane",
    "for_the_meter",
    "hung",
    "of_other_lamp",
    "wanted_told",
    "without_tube",
]

UV = "UV"
"""The name of this part."""


def wanted_told(target: Target) -> str:
    """Return the range that is wanted, and how it is known."""
    return f"wanted UVI {uvi_range(target.low, target.high)} ({known_by(target)})"


def hung(told: Told) -> str:
    """Return how the tubes hang, as far as it changes what the animal gets."""
    many = f" under {told.tubes} tubes, whose UV adds" if told.tubes > 1 else ""
    across = ", and only straight under it, as it lies across" if told.lies_across else ""
    return f"{many}{across}"


def behind_pane(pane: Pane, wanted: Target) -> Part:
    """Judge a tube over glass or plastic: nothing useful comes through, at any distance."""
    why = f"no useful UV comes through {pane.material}; {wanted_told(wanted)}"
    text = (
        "Put the tube inside, or over open metal mesh: then ask distance again, and start at the "
        "far end of the range."
    )
    return Part(
        UV,
        Mark.CHANGE,
        why,
        (Todo(Urgency.TOO_LITTLE_UV, text),),
        sources=(wanted.source, "float_glass_uv"),
    )


def for_the_meter(wanted: Target) -> Part:
    """Judge nothing of several readings: another question fits them together."""
    why = f"several meter readings: the question meter fits them together; {wanted_told(wanted)}"
    text = "Ask meter with your readings, such as: meter readings:4.2 at 12 in, 2.9 at 15 in."
    return Part(
        UV,
        Mark.CANNOT_TELL,
        why,
        (Todo(Urgency.MEASURE, text),),
        sources=(wanted.source, "common_practice"),
    )


def of_other_lamp(kind: UvLamp, wanted: Target, units: Units) -> Part:
    """Judge nothing of a lamp that has no figures, whatever its distance."""
    why = f"no figures for {kind.a}: {METER_FIRST}; {wanted_told(wanted)}"
    text = (
        f"Read the UV index at the animal's back with a meter: {uvi_range(wanted.low, wanted.high)}"
        f" is right, and never nearer than {length(COMFORTABLE_MINIMUM_M, units)}. Without a "
        "meter plan a T5 HO tube."
    )
    return Part(
        UV,
        Mark.CANNOT_TELL,
        why,
        (Todo(Urgency.MEASURE, text),),
        ("the UV index at the animal's back, read with a meter",),
        sources=(wanted.source, "common_practice", "nearest_distance"),
    )


def without_tube(wanted: Target) -> Part:
    """Judge a set-up that has no UV tube."""
    why = f"there is no UV tube; {wanted_told(wanted)}"
    text = "Plan a T5 HO tube for the UV: the question plan, or tube, says which one and where."
    return Part(
        UV,
        Mark.CHANGE,
        why,
        (Todo(Urgency.TOO_LITTLE_UV, text),),
        sources=(wanted.source, "common_practice"),
    )
