"""Reasons to stop before doing what the arithmetic of a lamp says."""

from enum import Enum, auto

__all__ = ["WOOD_LIMIT_C", "Guard", "guards"]

WOOD_LIMIT_C = (170.0 - 32.0) / 1.8
"""77 °C in whole degrees, taken at its 170 °F so that either is refused. Source: babrauskas2007."""


class Guard(Enum):
    """A reason to stop and look before doing what the arithmetic says."""

    NEARER_THAN_SAFE_DISTANCE = auto()
    ABOVE_HOLDER_MARK = auto()
    WOOD_TOO_HOT = auto()
    LAMP_WITHIN_REACH = auto()


def guards(
    *,
    distance_m: float | None = None,
    safe_distance_m: float | None = None,
    watts: float | None = None,
    holder_mark_w: float | None = None,
    wood_surface_c: float | None = None,
    within_reach: bool = False,
) -> tuple[Guard, ...]:
    """Return the guards that a plan trips; what is not given is not judged.

    Parameters
    ----------
    distance_m, safe_distance_m : planned and least distance of the lamp [m]
    watts, holder_mark_w : lamp and the mark on its holder [W]
    wood_surface_c : hottest wood near the lamp [degC]
    within_reach : whether the animal can touch the lamp

    Returns
    -------
    tuple of Guard

    Notes
    -----
    An empty answer is not a promise of safety.
    Source: holder_mark; babrauskas2007; contact_burns; fire_service_lamps.

    Examples
    --------
    >>> guards(watts=100.0, holder_mark_w=60.0)
    (<Guard.ABOVE_HOLDER_MARK: 2>,)
    """
    tripped = {
        Guard.NEARER_THAN_SAFE_DISTANCE: distance_m is not None
        and safe_distance_m is not None
        and distance_m < safe_distance_m,
        Guard.ABOVE_HOLDER_MARK: watts is not None
        and holder_mark_w is not None
        and watts > holder_mark_w,
        Guard.WOOD_TOO_HOT: wood_surface_c is not None and wood_surface_c >= WOOD_LIMIT_C,
        Guard.LAMP_WITHIN_REACH: within_reach,
    }
    return tuple(guard for guard, is_tripped in tripped.items() if is_tripped)
