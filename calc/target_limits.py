"""Whether a target would pass a limit: nothing is aimed for where harm begins."""

from calc.animal import Subject
from calc.limit_figures import JUDGEMENT, Limit, Limits, rules

__all__ = ["target_past"]


def target_past(limits: Limits, subject: Subject, low: float, high: float) -> Limit | None:
    """Return the limit that a target would pass, or None where it stays within.

    Parameters
    ----------
    limits : whose
    subject : what the target is of
    low, high : its ends, in the target's own unit [degC, UV index 1 or h]

    Returns
    -------
    Limit or None

    Notes
    -----
    Source: limits_judgement.
    """
    coolest, warmest = limits.night_c, limits.caution_c
    match subject:
        case Subject.UVI:
            return limits.uvi_now if high >= limits.uvi_now.value else None
        case Subject.BASKING_SURFACE | Subject.WARM_AIR:
            coolest, warmest = None, limits.surface_c
            if warmest is not None and high <= warmest.value:
                return None
        case Subject.LIGHT_HOURS:
            most = Limit(rules()["light_hours"], JUDGEMENT)
            return most if high >= most.value else None
        case Subject.COOL_AIR | Subject.NIGHT_FLOOR | Subject.NIGHT_HEAT_OFF:
            pass
        case Subject.WATER:
            # Of water that has no limits of its own those of the air hold that it lies in.
            coolest = limits.cold_water_c or coolest
            warmest = limits.water_caution_c or warmest
            if warmest is not None and high <= warmest.value:
                warmest = None
        case _:
            return None
    if coolest is not None and low < coolest.value:
        return coolest
    return warmest if warmest is not None and high >= warmest.value else None
