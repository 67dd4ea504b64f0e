"""How long a tube is, from what was told of it or of its enclosure; and what cannot be a length."""

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Dimension, Measure
from bot.language.sizes import Size
from bot.language.wanted import Choice
from calc.uv.lamp import LONGEST_LIT_M, SHORTEST_LIT_M
from calc.uv.lengths import DARK_ENDS_M, TubeLength, length_of_tube, tube_of_watts
from calc.uv.tube import STANDARD_T5_HO
from calc.validity import OutsideModelError

__all__ = ["along", "length_asked", "lit_length", "tube_length_m"]

_SLIP_M = 1e-9


def along(enclosure: Measure | Size) -> float:
    """Return the length [m] of an enclosure, along which the tube goes."""
    return enclosure.length_m if isinstance(enclosure, Size) else enclosure.low


def tube_length_m(told: Measure) -> float:
    """Return the length [m] of a tube, face to face, as told or by its printed watts."""
    if told.dimension is not Dimension.POWER:
        return told.low
    tube = tube_of_watts(told.low)
    if tube is None:
        known = tuple(f"{kind.power_w:.0f}" for kind in STANDARD_T5_HO)
        raise NotUnderstoodError(
            told.text,
            Say("wanted-length-or-watts", Choice(known)),
            "length:34in",
            "length",
        )
    return tube.face_to_face_m


def lit_length(told: Measure) -> float:
    """Return the lit length [m] of a tube of a told length."""
    long = tube_length_m(told)
    low, high = (end + DARK_ENDS_M for end in (SHORTEST_LIT_M, LONGEST_LIT_M))
    # A printed end of the range is taken, whatever the last bit of its conversion.
    if not low - _SLIP_M <= long <= high + _SLIP_M:
        raise OutsideModelError("length", long, low, high, "m")
    return min(max(long - DARK_ENDS_M, SHORTEST_LIT_M), LONGEST_LIT_M)


def length_asked(told: Measure | None, enclosure: Measure | Size | None = None) -> TubeLength:
    """Return the length of a tube, from what was told of it or of its enclosure."""
    if told is None:
        return length_of_tube(box_m=None if enclosure is None else along(enclosure))
    if told.dimension is Dimension.POWER:
        tube_length_m(told)
        return length_of_tube(power_w=told.low)
    return length_of_tube(lit_length(told))
