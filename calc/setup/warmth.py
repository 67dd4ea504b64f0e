"""What heats the set-up by day and by night: lamp, air, and whether the night needs any."""

from dataclasses import dataclass
from enum import Enum, auto

from calc.animal import Animal
from calc.heat.box import MOST_RISE_K, HeatNeed, Spot, air_held, likely_cool_end, watts_to_hold
from calc.heat.enclosure import Enclosure, LampPlace, Lid
from calc.heat.first_wattage import FirstWattage, LampShape, first_wattage
from calc.heat.held import judge_held
from calc.heat.night import Emitter, NightDecision, NightPlan, emitter_for, night_plan
from calc.heat.wattages import Family, next_step_up
from calc.judgement import Judged
from calc.limits import limits_of
from calc.setup.light import HEAT_FIXTURE_M
from calc.uncertainty import Estimate
from calc.validity import OutsideModelError

__all__ = ["HeatKind", "WarmthPlan", "plan_warmth"]

_FARTHEST_ON_MESH_M = 0.60
_FARTHEST_INSIDE_M = 0.40
_NEAREST_LAMP_M = 0.10
_LEAST_RISE_K = 8.0


class HeatKind(Enum):
    """What kind of heat the day needs."""

    BASKING_LAMP = auto()
    GENTLE = auto()
    ROOM_IS_NEARLY_ENOUGH = auto()
    UNKNOWN = auto()


@dataclass(frozen=True, slots=True)
class WarmthPlan:
    """The heat of a set-up.

    ``first`` is the range to buy from, None where a lamp is owned or none is needed; ``air`` is
    how the air of the cool end stands, None where no range or no lamp is known;
    ``watts`` what is reckoned with [W]; ``held_c`` is the air of the cool end; ``short_w`` what
    it lacks [W], and ``extra_w`` the dark heater that covers its high end [W], None where no
    single one does.
    """

    kind: HeatKind
    lamp_distance_m: float | None
    lamp_place: LampPlace
    first: FirstWattage | None
    watts: Estimate | None
    need: HeatNeed | None
    held_c: Estimate | None
    air: Judged | None
    short_w: Estimate | None
    extra_w: float | None
    night: NightPlan | None
    emitter: Emitter | None


def plan_warmth(
    animal: Animal,
    box: Enclosure,
    platform_top_m: float,
    room_c: float,
    night_c: float | None = None,
    shape: LampShape = LampShape.FLOOD,
    owned_w: float | None = None,
) -> WarmthPlan:
    """Plan the heat of a set-up.

    Parameters
    ----------
    animal : whose targets count
    box : the enclosure
    platform_top_m : height of the basking place over the floor [m]
    room_c : air of the room by day [degC], 10 to 35
    night_c : coldest of the room at night [degC], -10 to 45
    shape : the heat lamp's shape
    owned_w : wattage of a heat lamp that is owned [W]

    Returns
    -------
    WarmthPlan

    Notes
    -----
    The lamp stands on a mesh up to 0.6 m over the platform, else hangs inside, at most 0.4 m.
    Source: lamp_beams; enclosure_model; lamp_split; plan_judgement.
    """
    if not 10.0 <= room_c <= 35.0:
        raise OutsideModelError("room air", room_c, 10.0, 35.0, "degC")
    kind = _kind(animal, room_c)
    distance, place = _lamp_distance(box, platform_top_m)
    first = None
    if kind is HeatKind.BASKING_LAMP and animal.basking_surface_c and owned_w is None:
        wanted = animal.basking_surface_c.aim
        first = first_wattage(shape, room_c, wanted, distance, box, place)
    watts = _watts(first, owned_w)
    need = _need(animal, box, room_c)
    held = None if watts is None else _held(box, watts, place, room_c)
    air = None if held is None else judge_held(held, animal.cool_air_c, limits_of(animal))
    night = None if night_c is None else night_plan(animal, night_c)
    short = _short(need, watts, place, air)
    return WarmthPlan(
        kind=kind,
        lamp_distance_m=distance if kind is HeatKind.BASKING_LAMP or watts else None,
        lamp_place=place,
        first=first,
        watts=watts,
        need=need,
        held_c=held,
        air=air,
        short_w=short,
        extra_w=None if short is None else next_step_up(short.high, Family.DARK_EMITTER),
        night=night,
        emitter=_emitter(box, night, night_c),
    )


def _kind(animal: Animal, room_c: float) -> HeatKind:
    if animal.basking_surface_c is None:
        return HeatKind.UNKNOWN if animal.warm_air_c is None else HeatKind.GENTLE
    if animal.basking_surface_c.aim < room_c + _LEAST_RISE_K:
        return HeatKind.ROOM_IS_NEARLY_ENOUGH
    return HeatKind.BASKING_LAMP


def _lamp_distance(box: Enclosure, top_m: float) -> tuple[float, LampPlace]:
    to_lid = box.height_m - top_m
    if box.lid is not Lid.SOLID and to_lid <= _FARTHEST_ON_MESH_M:
        return max(to_lid, _NEAREST_LAMP_M), LampPlace.ABOVE_MESH
    free = to_lid - HEAT_FIXTURE_M
    return min(max(free, _NEAREST_LAMP_M), _FARTHEST_INSIDE_M), LampPlace.INSIDE


def _watts(first: FirstWattage | None, owned_w: float | None) -> Estimate | None:
    if owned_w is not None:
        return Estimate.exact(owned_w)
    return first.watts if first else None


def _need(animal: Animal, box: Enclosure, room_c: float) -> HeatNeed | None:
    gentle = animal.basking_surface_c is None and animal.warm_air_c is not None
    target = animal.warm_air_c if gentle else animal.cool_air_c
    # Who does not bask has a panel over the whole box; a lamp hangs at the warm end.
    spot = Spot.MIDDLE if gentle else Spot.WARM_END
    return None if target is None else watts_to_hold(box, target.aim, room_c, spot)


def _held(box: Enclosure, watts: Estimate, place: LampPlace, room_c: float) -> Estimate:
    """Return the air held at the cool end [degC], from the least lamp to the strongest."""
    inside = [w * place.value for w in (watts.low, watts.best, watts.high)]
    most_c = room_c + MOST_RISE_K
    try:
        held = air_held(box, inside[1], room_c, Spot.WARM_END)
    except OutsideModelError:
        held = Estimate.exact(most_c)
    weak, strong = (_likely(box, w, room_c, most_c) for w in (inside[0], inside[2]))
    return Estimate(min(weak, held.low), held.best, max(strong, held.high))


def _likely(box: Enclosure, inside_w: float, room_c: float, most_c: float) -> float:
    """Return the air by given watts [degC]; where that is more than is answered, the most."""
    try:
        return likely_cool_end(box, inside_w, room_c, Spot.WARM_END)
    except OutsideModelError:
        return most_c


def _short(
    need: HeatNeed | None, watts: Estimate | None, place: LampPlace, air: Judged | None
) -> Estimate | None:
    """Return what the air lacks [W], or None where it lacks nothing."""
    if need is None or need.total_w.best <= 0.0:
        return None
    total = need.total_w
    if watts is None:
        return total
    inside = watts.best * place.value
    lacks = air is not None and not air.is_fine and air.value.best < air.low
    if not lacks or total.best <= inside:
        return None
    return Estimate(max(total.low - inside, 0.0), total.best - inside, total.high - inside)


def _emitter(box: Enclosure, night: NightPlan | None, night_c: float | None) -> Emitter | None:
    heats = (NightDecision.HEAT, NightDecision.KEEPERS_DIFFER)
    if night is None or night_c is None or night.decision not in heats:
        return None
    return emitter_for(box, night, night_c)
