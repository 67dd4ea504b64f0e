"""The steps of a plan: what to measure on the first day, and in the first week."""

from bot.answers.figures import length, temperature_range, uvi_range
from bot.answers.plan_asked import Asked
from bot.language.quantities import Units
from calc.setup.plan import Setup

__all__ = ["plan_steps"]

_BEFORE = "Before the animal comes: build it, and run tube and lamp for two to three hours."
_WRITE = "First week: each day note surface, cool end, the lowest of the night and where it sits."
_AGAIN = "First week: change one thing at a time, measure again two hours later, then ask temps."


def plan_steps(found: Setup, what: Asked, units: Units) -> tuple[str, ...]:
    """Return the steps in order; the last one measures again."""
    return (
        _BEFORE,
        _tape(found, what, units),
        _meter(found, what, units),
        *_surface(found, what, units),
        *_cool(what, units),
        _WRITE,
        _AGAIN,
    )


def _tape(found: Setup, what: Asked, units: Units) -> str:
    return (
        f"First day: tape from the underside of the tube to {length(what.back.best, units)} over "
        f"the {what.place_name}, where the back will be: "
        f"{length(found.light.distance_m, units)}. If not, build that place higher or lower."
    )


def _meter(found: Setup, what: Asked, units: Units) -> str:
    wanted = uvi_range(what.wish.low, what.wish.high)
    new = "A new tube is stronger for its first 100 hours, so go" if what.new_tube else "Go"
    return (
        f"First day: a UV index meter at back height, facing the tube, should show {wanted}. "
        f"No meter? {new} a little farther, up to {length(found.light.far_m, units)}."
    )


def _surface(found: Setup, what: Asked, units: Units) -> tuple[str, ...]:
    target = what.animal.basking_surface_c
    if target is None:
        return ()
    span = temperature_range(target.low, target.high, units)
    first = found.warmth.first
    more = "the larger lamp" if first and len(first.buy_w) > 1 else "a lamp of the next size"
    lamp = f"Too hot: dim, or raise the lamp. Too cool: {more}"
    if found.warmth.watts is None:
        lamp = "Too cool: the smallest lamp, far away"
    return (f"First day: infrared gun at the {what.place_name}: {span}. {lamp}.",)


def _cool(what: Asked, units: Units) -> tuple[str, ...]:
    target = what.animal.cool_air_c or what.animal.warm_air_c
    if target is None:
        return ("First day: probe in the shade of the cool end; ask a keeper what it should be.",)
    span = temperature_range(target.low, target.high, units)
    return (f"First day: probe in the shade of the cool end, at animal height: {span}.",)
