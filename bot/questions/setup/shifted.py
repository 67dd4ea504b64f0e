"""What a change moves, as arrows of a drawing: everything that goes along, each from its place."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from bot.drawing import Moved, Shift
from calc.setup.set_up import Act, Movement, Thing

__all__ = ["Hung", "shifts_of"]

_MOVED = {Thing.TUBE: Moved.TUBE, Thing.HEAT_LAMP: Moved.LAMP, Thing.STAND: Moved.STAND}
# Along a tube or a stand, where an arrow up or down begins: off what stands in its middle.
_ALONG = 0.88


@dataclass(frozen=True, slots=True)
class Hung:
    """What a thing takes along the box, and how high its underside or its top is [m]."""

    x0_m: float
    x1_m: float
    z_m: float


def shifts_of(
    change: Movement | None, drawn: Mapping[Thing, Hung], label: str, axis: int = 0
) -> Iterator[Shift]:
    """Yield the arrow of each thing that is drawn and moved, seen along one axis of the box."""
    if change is None or change.act is not Act.MOVE:
        return
    way = change.by_m or change.toward
    if way is None:
        return
    along, up = float(way[axis]), float(way[2])
    if not (along or up):
        return
    for thing in change.things:
        at = drawn.get(thing)
        if at is None or thing not in _MOVED:
            continue
        x_m = at.x0_m + _ALONG * (at.x1_m - at.x0_m)
        if along:
            x_m = at.x1_m if along > 0.0 else at.x0_m
        told = label if change.by_m else ""
        yield Shift(_MOVED[thing], x_m, at.z_m, along, up, bool(change.by_m), told)
