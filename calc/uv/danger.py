"""A UV index against what is wanted and what harms: one judgement for every question of it."""

from calc.judgement import Judged, judge_value
from calc.limits import Due, Limits, Met, passed, soonest, under_uvi
from calc.quantities import Quantity
from calc.uncertainty import Estimate

__all__ = ["judge_uvi"]


def judge_uvi(
    uvi: Estimate,
    low: float,
    high: float,
    limits: Limits | None = None,
    distance_m: float | None = None,
    *,
    unchecked: bool = False,
) -> Judged:
    """Judge a UV index where an animal can get.

    as ``judge_value``; dangerous where a limit is passed about which something is due now

    Parameters
    ----------
    uvi : the UV index with its doubt [1], 0 or more
    low, high : the wanted range [1], low at most high
    limits : whose; None: it is held against no limit
    distance_m : tube to back [m], above 0; None: not known
    unchecked : whether the range is from memory alone: then it is at most probably low or high

    Returns
    -------
    Judged
        Verdict and chances [1].

    Notes
    -----
    Above the range by more than the doubt, and below what is switched off at once, it is high.
    Source: judgement_thresholds; limits_judgement; nearest_distance.

    Examples
    --------
    >>> from calc.animals import animals
    >>> from calc.limits import limits_of
    >>> crested = limits_of(animals()["crested-gecko"])
    >>> judge_uvi(Estimate(9.0, 12.0, 15.0), 0.5, 1.0, crested).verdict.name
    'DANGEROUS'
    """
    is_past = False
    if limits is not None:
        met = Met(uvi=uvi, tube_m=distance_m)
        is_past = soonest(passed(under_uvi(limits, high), met)) is Due.NOW
    return judge_value(Quantity.UVI, uvi, low, high, past_limit=is_past, unchecked=unchecked)
