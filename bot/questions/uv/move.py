"""Whether a tube is moved: farther in doubt, nearer only where it is surely low.

Words: ``words/<language>/move.ftl``.
"""

from dataclasses import dataclass
from enum import Enum, auto

from bot.facts import Bound, Length, metres
from bot.questions.uv.judged import wants_move
from calc.uv.placement import COMFORTABLE_MINIMUM_M, PlaceCheck

__all__ = ["Move", "MoveWay", "move_of"]


class MoveWay(Enum):
    """What is done with a tube in its place."""

    UNTIL_MILD = auto()
    BY_LENGTH = auto()
    UNTIL_KNOWN = auto()
    LEAVE = auto()
    UNTIL_READ = auto()
    FARTHER = auto()
    CLOSER = auto()
    OTHER_TUBE = auto()


@dataclass(frozen=True, slots=True)
class Move:
    """How a tube is moved: ``by`` so much, to ``begin``, or to where it is ``mild``."""

    way: MoveWay
    by: Length
    begin: Length | None
    mild: Length | None


def move_of(check: PlaceCheck) -> Move:
    """Return what is done with a tube; one without a place is not moved to one."""
    placement, begin = check.placement, None
    if placement.ends is not None:
        near, start, far = (spot.distance_m for spot in placement.ends)
        begin = metres(start, (near, far), Bound.START)
    mild = placement.mild_m
    return Move(
        way=_way(check),
        by=metres(abs(check.move_to_start_m or 0.0)),
        begin=begin,
        mild=None if mild is None else metres(mild, bound=Bound.AT_LEAST),
    )


def _way(check: PlaceCheck) -> MoveWay:
    judged, mild_m = check.judged, check.placement.mild_m
    if mild_m is not None:
        too_strong = check.may_be_above or judged.is_likely_above
        near = check.here.distance_m < mild_m
        return MoveWay.UNTIL_MILD if too_strong and near else MoveWay.BY_LENGTH
    if check.placement.ends is None:
        return MoveWay.OTHER_TUBE
    move = check.move_to_start_m or 0.0
    if check.may_be_above and move > 0.0:
        return MoveWay.UNTIL_KNOWN
    too_near = check.here.distance_m < COMFORTABLE_MINIMUM_M
    if judged.is_fine and not too_near:
        return MoveWay.LEAVE
    if not (too_near or wants_move(judged)):
        return MoveWay.UNTIL_READ
    return MoveWay.FARTHER if move > 0 else MoveWay.CLOSER
