"""A set-up, or why it cannot be done and what would change that: each change was tried."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from enum import Enum, auto

from calc.heat.enclosure import LampPlace, Lid
from calc.setup.along import MOST_COVERED
from calc.setup.light import Hanging, LightPlan, Obstacle, Refused
from calc.setup.plan import OwnedTube, Plan, Request, plan_as_is
from calc.uv.screen import FlatScreen
from calc.uv.tube import STANDARD_T5_HO

__all__ = ["Change", "ChangeKind", "Refusal", "Way", "plan_setup"]

_OPENER_SCREENS = (FlatScreen(0.70), FlatScreen(0.85))
_COOLEST_ROOM_C = 16.0
_TALLEST_M, _LONGEST_M = 3.0, 3.0
_ROUNDING_M = 0.005
_ROUND_LENGTHS_M = (0.8, 0.9, 1.0, 1.2, 1.5, 1.8)


class ChangeKind(Enum):
    """What would make it possible."""

    HANG_INSIDE = auto()
    OTHER_TUBE = auto()
    OPENER_SCREEN = auto()
    MESH_LID = auto()
    SMALLER_LAMP = auto()
    COOLER_ROOM = auto()
    TALLER_BOX = auto()
    LONGER_BOX = auto()


@dataclass(frozen=True, slots=True)
class Change:
    """One change, and how far it must go.

    ``least``: a size [m], a room [degC], the share [1] that a screen passes or that is mesh.
    """

    kind: ChangeKind
    least: float | None = None


@dataclass(frozen=True, slots=True)
class Way:
    """One or two changes, and the light that they allow."""

    changes: tuple[Change, ...]
    light: LightPlan


@dataclass(frozen=True, slots=True)
class Refusal:
    """Why it cannot be done in that box, where the tube was tried first, and the ways out."""

    obstacle: Obstacle
    hanging: Hanging
    ways: tuple[Way, ...]


def plan_setup(request: Request) -> Plan | Refusal:
    """Plan a whole set-up, or find what would make it possible.

    Parameters
    ----------
    request : animal, box, room and what is owned

    Returns
    -------
    Plan or Refusal
        Of the ways out only those that were planned with success: single changes, or pairs
        where no single one is enough.

    Notes
    -----
    Source: see ``plan_as_is``.

    Examples
    --------
    >>> from calc.animals import animals
    >>> from calc.heat.enclosure import Enclosure
    >>> low = Enclosure(1.2, 0.6, 0.22, lid=Lid.PART_MESH)
    >>> found = plan_setup(Request(animals()["bearded-dragon"], low, 3, 5, 0.05, 0.4, 21.0))
    >>> found.obstacle.name, [way.changes[0].kind.name for way in found.ways]
    ('NO_ROOM_FOR_HEAT', ['TALLER_BOX'])
    """
    found = plan_as_is(request)
    if isinstance(found, Plan):
        return found
    single, steps = [], list(_changed(request, found))
    for change, changed in steps:
        planned = plan_as_is(changed)
        if isinstance(planned, Plan):
            single.append(Way((change,), planned.light))
    return Refusal(found.obstacle, request.hangings[0], tuple(single or _pairs(steps)))


_Step = tuple[Change, Request]


def _pairs(steps: list[_Step]) -> Iterator[Way]:
    seen = set()
    for first, once in steps:
        refused = plan_as_is(once)
        assert isinstance(refused, Refused)
        for second, twice in _changed(once, refused):
            planned = plan_as_is(twice)
            kinds = frozenset((first.kind, second.kind))
            if isinstance(planned, Plan) and kinds not in seen and len(kinds) == 2:
                seen.add(kinds)
                yield Way((first, second), planned.light)


def _changed(request: Request, refused: Refused) -> Iterator[_Step]:
    for change in _CHANGES:
        yield from change(request, refused)


def _inside(request: Request, refused: Refused) -> Iterator[_Step]:
    if all(hanging.place is LampPlace.ABOVE_MESH for hanging in request.hangings):
        yield Change(ChangeKind.HANG_INSIDE), replace(request, place=LampPlace.INSIDE, screen=None)


def _other_tube(request: Request, refused: Refused) -> Iterator[_Step]:
    if request.owned != OwnedTube():
        yield Change(ChangeKind.OTHER_TUBE), replace(request, owned=OwnedTube())


def _opener(request: Request, refused: Refused) -> Iterator[_Step]:
    now = request.hangings[0]
    if now.place is LampPlace.INSIDE or not isinstance(now.screen, FlatScreen):
        return
    for screen in _OPENER_SCREENS:
        opened = replace(request, place=LampPlace.ABOVE_MESH, screen=screen)
        if screen.transmission > now.screen.transmission and isinstance(plan_as_is(opened), Plan):
            yield Change(ChangeKind.OPENER_SCREEN, screen.transmission), opened
            return


def _mesh(request: Request, refused: Refused) -> Iterator[_Step]:
    if request.box.lid is not Lid.SOLID:
        return
    part, full = (
        replace(request, box=replace(request.box, lid=lid))
        for lid in (Lid.PART_MESH, Lid.FULL_MESH)
    )
    meshed = part if isinstance(plan_as_is(part), Plan) else full
    yield Change(ChangeKind.MESH_LID, meshed.box.lid.value), meshed


def _smaller_lamp(request: Request, refused: Refused) -> Iterator[_Step]:
    if request.owned_w is not None and refused.obstacle is Obstacle.AIR_TOO_WARM:
        yield Change(ChangeKind.SMALLER_LAMP), replace(request, owned_w=None)


def _cooler(request: Request, refused: Refused) -> Iterator[_Step]:
    cool = request.animal.cool_air_c
    if cool is None or refused.obstacle not in (Obstacle.ROOM_TOO_WARM, Obstacle.AIR_TOO_WARM):
        return
    room_c = min(request.room_c - 1.0, cool.high)
    while room_c >= _COOLEST_ROOM_C:
        cooler = replace(request, room_c=room_c)
        if isinstance(plan_as_is(cooler), Plan):
            yield Change(ChangeKind.COOLER_ROOM, room_c), cooler
            return
        room_c -= 1.0


def _taller(request: Request, refused: Refused) -> Iterator[_Step]:
    if refused.height_m is not None and refused.height_m < _TALLEST_M:
        least = refused.height_m + _ROUNDING_M
        taller = replace(request.box, height_m=least)
        yield Change(ChangeKind.TALLER_BOX, least), replace(request, box=taller)


def _longer(request: Request, refused: Refused) -> Iterator[_Step]:
    lengths = (
        Obstacle.TUBE_TOO_LONG,
        Obstacle.NO_TUBE_SHORT_ENOUGH,
        Obstacle.TOO_SHORT,
        Obstacle.AIR_TOO_WARM,
    )
    if refused.obstacle not in lengths:
        return
    tube_m = request.owned.length_m or STANDARD_T5_HO[0].face_to_face_m
    shortest = tube_m / MOST_COVERED + _ROUNDING_M
    lengths_m = [tube_m + _ROUNDING_M, shortest, *(x for x in _ROUND_LENGTHS_M if x > shortest)]
    for least in lengths_m:
        if request.box.length_m < least <= _LONGEST_M:
            longer = replace(request, box=replace(request.box, length_m=least))
            if isinstance(plan_as_is(longer), Plan):
                yield Change(ChangeKind.LONGER_BOX, least), longer
                return


_CHANGES: tuple[Callable[[Request, Refused], Iterator[_Step]], ...] = (
    _inside,
    _other_tube,
    _opener,
    _mesh,
    _smaller_lamp,
    _cooler,
    _taller,
    _longer,
)
