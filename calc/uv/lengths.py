"""How long a tube is and how that is known: told, from its watts, from its box, or not at all."""

from dataclasses import dataclass
from enum import Enum
from math import inf

from calc.uv.tube import STANDARD_T5_HO, StandardTube
from calc.validity import OutsideModelError

__all__ = [
    "DARK_ENDS_M",
    "LengthKnown",
    "TubeLength",
    "length_for_box",
    "length_of_tube",
    "tube_of_watts",
]

DARK_ENDS_M = STANDARD_T5_HO[0].face_to_face_m - STANDARD_T5_HO[0].lit_length_m
"""What of a tube stays dark, both ends together [m]. Source: t5_lit_length."""

_SLIP_M = 1e-9


class LengthKnown(Enum):
    """How the length of a tube is known, the surest first."""

    TOLD = "told"
    FROM_WATTS = "from the watts printed on a T5 HO tube"
    FROM_BOX = "from the enclosure: the one standard tube that fits, or the one that suits it"
    UNKNOWN = "not known: any standard tube that fits"


@dataclass(frozen=True, slots=True)
class TubeLength:
    """A lit length [m], how it is known, and the other lit lengths [m] it may be, rising."""

    lit_m: float
    known: LengthKnown
    others_m: tuple[float, ...] = ()

    @property
    def longest_m(self) -> float:
        """The longest lit length [m] that the tube may have."""
        return max(self.lit_m, *self.others_m, 0.0)


def tube_of_watts(power_w: float) -> StandardTube | None:
    """Return the T5 HO tube of a printed wattage [W], or None where none has it.

    Source: t5_lengths.
    """
    return next((tube for tube in STANDARD_T5_HO if tube.power_w == power_w), None)


def length_of_tube(
    told_lit_m: float | None = None, power_w: float | None = None, box_m: float | None = None
) -> TubeLength:
    """Return the length of a tube from the surest thing that is known of it.

    told, else the tube of its watts, else the one standard tube that fits its box; else any
    that fits, and then the answer starts from the shortest

    Parameters
    ----------
    told_lit_m : lit length that was told [m], above 0
    power_w : watts printed on a T5 HO tube [W]: 24, 39, 54 or 80
    box_m : inner length of the enclosure [m], above 0

    Returns
    -------
    TubeLength
        Lit length [m], how it is known, and the longer ones it may have [m].

    Notes
    -----
    A box shorter than every tube leaves the shortest, of which nothing is sure. Raises
    OutsideModelError for watts that no T5 HO tube has.
    Source: t5_lengths; t5_lit_length; uv_distance_rows.

    Examples
    --------
    >>> length_of_tube(power_w=39.0).known.name, round(length_of_tube(power_w=39.0).lit_m, 3)
    ('FROM_WATTS', 0.819)
    >>> length_of_tube(box_m=0.61).known.name, length_of_tube(box_m=1.22).known.name
    ('FROM_BOX', 'UNKNOWN')
    """
    if told_lit_m is not None:
        return TubeLength(told_lit_m, LengthKnown.TOLD)
    if power_w is not None:
        tube = tube_of_watts(power_w)
        if tube is None:
            ends = STANDARD_T5_HO[0].power_w, STANDARD_T5_HO[-1].power_w
            raise OutsideModelError("watts of the tube", power_w, *ends, "W")
        return TubeLength(tube.lit_length_m, LengthKnown.FROM_WATTS)
    most = inf if box_m is None else box_m + _SLIP_M
    first = STANDARD_T5_HO[0]
    others = _others(first.lit_length_m, most)
    fits_one = not others and first.face_to_face_m <= most
    known = LengthKnown.FROM_BOX if fits_one else LengthKnown.UNKNOWN
    return TubeLength(first.lit_length_m, known, others)


def length_for_box(lit_m: float, box_m: float) -> TubeLength:
    """Return the length [m] that suits a box [m], for a tube that may be any other that fits."""
    return TubeLength(lit_m, LengthKnown.FROM_BOX, _others(lit_m, box_m + _SLIP_M))


def _others(lit_m: float, most_m: float) -> tuple[float, ...]:
    fitting = (tube.lit_length_m for tube in STANDARD_T5_HO if tube.face_to_face_m <= most_m)
    return tuple(other for other in fitting if abs(other - lit_m) > _SLIP_M)
