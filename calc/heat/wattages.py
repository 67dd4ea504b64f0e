"""The wattages that lamps and emitters are sold in, and how to land on one."""

from enum import StrEnum

from calc.heat.tables import table

__all__ = ["Family", "next_smaller", "next_step_up", "steps_between", "steps_sold"]


class Family(StrEnum):
    """A kind of heater with its own steps."""

    BASKING_LAMP = "basking_lamp"
    DARK_EMITTER = "dark_emitter"


def steps_sold(family: Family = Family.BASKING_LAMP) -> tuple[float, ...]:
    """Return the steps sold [W], rising.

    Source: lamp_steps.
    """
    return tuple(float(watts) for watts in table("wattages")[family.value]["watts"])


def steps_between(
    low_w: float, high_w: float, family: Family = Family.BASKING_LAMP
) -> tuple[float, ...]:
    """Return the steps sold within a range [W]; the nearest one where none lies inside."""
    inside = tuple(step for step in steps_sold(family) if low_w <= step <= high_w)
    middle = (low_w + high_w) / 2.0
    return inside or (min(steps_sold(family), key=lambda step: abs(step - middle)),)


def next_smaller(watts: float, family: Family = Family.BASKING_LAMP) -> float | None:
    """Return the largest step sold below this wattage [W], or None."""
    return max((step for step in steps_sold(family) if step < watts), default=None)


def next_step_up(watts: float, family: Family = Family.BASKING_LAMP) -> float | None:
    """Return the smallest step sold that is at least this wattage [W], or None."""
    return min((step for step in steps_sold(family) if step >= watts), default=None)
