"""A reading told as a range, as in 75 to 80: which of its ends is judged.

A place that runs from one temperature to another is right where both ends are. The end that is
farther off is judged, and named; where both are off the same way the middle stands for all of it.
"""

from enum import Enum, auto

from calc.animal import Animal
from calc.heat.readings import Finding, finding_for
from calc.judgement import Verdict
from calc.quantities import Quantity

__all__ = ["End", "judged_end"]


class End(Enum):
    """What of a range a verdict is about."""

    WHOLE = auto()
    LOW_END = auto()
    HIGH_END = auto()


def judged_end(place: Quantity, low_c: float, high_c: float, animal: Animal) -> tuple[float, End]:
    """Return the reading that a range is judged by, and which end of it that is.

    Parameters
    ----------
    place : where it was read
    low_c, high_c : both ends [degC], -10 to 150; equal where one value was read
    animal : whose targets count

    Returns
    -------
    tuple[float, End]
        The end [degC] that is farther off, of two equally far the hotter; the middle where neither
        end is off, where both are off the same way, or where no target is known.

    Notes
    -----
    Source: the animal's own rows; that both ends have to be right is a rule of ours, no source.

    Examples
    --------
    >>> from calc.animals import animals
    >>> dragon = animals()["bearded-dragon"]
    >>> judged_end(Quantity.COOL_AIR, 15.0, 26.0, dragon)
    (15.0, <End.LOW_END: 2>)
    """
    middle_c = (low_c + high_c) / 2.0
    if low_c == high_c:
        return middle_c, End.WHOLE
    low, high = (finding_for(place, end, animal) for end in (low_c, high_c))
    if low.judged is None or high.judged is None or low.judged.move is high.judged.move:
        return middle_c, End.WHOLE
    return (low_c, End.LOW_END) if _off(low) > _off(high) else (high_c, End.HIGH_END)


def _off(finding: Finding) -> int:
    """Return how bad a verdict is, from nothing to dangerous; what is unsure is less than sure."""
    if finding.judged is None or finding.is_fine:
        return 0
    verdict = finding.judged.verdict
    if verdict is Verdict.DANGEROUS:
        return 3
    return 2 if verdict.wants_change else 1
