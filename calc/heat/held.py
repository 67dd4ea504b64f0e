"""The air that a lamp holds at the cool end, against what is wanted there and what harms."""

from math import inf

from calc.animal import Target
from calc.judgement import Judged, judge_value
from calc.limits import Limits
from calc.quantities import Quantity
from calc.uncertainty import Estimate

__all__ = ["judge_held"]


def judge_held(held: Estimate, wanted: Target | None, limits: Limits) -> Judged | None:
    """Judge the air of a cool end that is reckoned, not read.

    as ``judge_value``; dangerous where nothing in the box stays cool enough

    Parameters
    ----------
    held : the air with its doubt [degC]
    wanted : the range of the cool end [degC]; None: not known
    limits : whose

    Returns
    -------
    Judged or None
        None where no range is known and no limit is passed.

    Notes
    -----
    Source: judgement_thresholds; limits_judgement.

    Examples
    --------
    >>> from calc.animals import animals
    >>> from calc.limits import limits_of
    >>> dragon = animals()["bearded-dragon"]
    >>> held = Estimate(19.0, 21.0, 23.0)
    >>> judge_held(held, dragon.cool_air_c, limits_of(dragon)).verdict.name
    'LOW'
    """
    caution = limits.caution_c
    past = caution is not None and held.best >= caution.value
    if wanted is None and not past:
        return None
    low, high = (-inf, inf) if wanted is None else (wanted.low, wanted.high)
    unchecked = wanted is not None and wanted.is_unchecked
    return judge_value(Quantity.COOL_AIR, held, low, high, past_limit=past, unchecked=unchecked)
