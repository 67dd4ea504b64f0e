"""The set-up that a room with its light makes, with what is met there and the first mend."""

from collections.abc import Sequence

from calc.light.bands import Bands
from calc.light.illuminance import Light
from calc.quantities import Quantity
from calc.setup.mends import Mend, MendKind
from calc.setup.room import Room
from calc.setup.set_up import (
    Act,
    HeatLamp,
    Hide,
    Movement,
    SetUp,
    Spot,
    Stand,
    StandKind,
    Thing,
    beside_tubes,
)
from calc.setup.sun_patch import met_by_light
from calc.uncertainty import Estimate
from calc.uv.patches import Patches, Place

__all__ = ["lit_set_up", "movement_of"]

_ACTS = {
    MendKind.PLATFORM_LOWER: (Act.MOVE, Thing.STAND),
    MendKind.PLATFORM_HIGHER: (Act.MOVE, Thing.STAND),
    MendKind.PLATFORM_SIDEWAYS: (Act.MOVE, Thing.STAND),
    MendKind.FEWER_TUBES: (Act.TAKE_AWAY, Thing.TUBE),
    MendKind.OTHER_TUBE: (Act.EXCHANGE, Thing.TUBE),
    MendKind.OTHER_LENGTH: (Act.EXCHANGE, Thing.TUBE),
    MendKind.MORE_TUBES: (Act.ADD, Thing.TUBE),
    MendKind.TUBE_TO_WARM_END: (Act.MOVE, Thing.TUBE),
    MendKind.HIDE: (Act.ADD, Thing.HIDE),
    MendKind.HEAT_LAMP: (Act.MOVE, Thing.HEAT_LAMP),
}


def lit_set_up(
    room: Room,
    met: Patches,
    mends: tuple[Mend, ...],
    stand: StandKind = StandKind.PLATFORM,
    lights: Sequence[Light] = (),
    bands: Bands | None = None,
) -> SetUp:
    """Return the set-up of a room: strongest and weakest place, its shade, the first mend.

    The weakest place has no verdict of its own: what it means is told by ``shade``.

    The heat lamp hangs level with the tubes, over the patch it warms or beside a tube there; white
    lamps hang on their other side.
    """
    sun, light = met_by_light(room, met, lights, bands)
    lamps: tuple[HeatLamp, ...] = ()
    if room.heat is not None:
        y_m = beside_tubes(room.tubes, room.heat.y_m, room.box.depth_m)
        lamps = (HeatLamp(room.heat.x_m, y_m, room.tubes[0].z_m, (), room.heat),)
    wanted = room.low_uvi, room.high_uvi
    return SetUp(
        box=room.box,
        tubes=room.tubes,
        lamps=lamps,
        stands=(Stand(stand, room.platform),),
        hides=tuple(
            Hide(mend.hide.x_m, mend.hide.y_m, is_there=False) for mend in mends if mend.hide
        ),
        back_m=Estimate.exact(room.back_m),
        uvi_wanted=wanted,
        spots=(
            Spot(
                Quantity.UVI,
                _at(met.strongest),
                wanted,
                met.strongest.uvi,
                met.judged,
                is_read=False,
            ),
            Spot(Quantity.UVI, _at(met.weakest), None, met.weakest.uvi, is_read=False),
        ),
        shade=met.shade,
        sun=sun,
        light=light,
        first=movement_of(room, mends[0]) if mends else None,
    )


def movement_of(room: Room, mend: Mend) -> Movement:
    """Return the first change of a mend; what moves with it moves by the same way."""
    kind = mend.kinds[0]
    act, thing = _ACTS[kind]
    if act is not Act.MOVE:
        return Movement(act, (thing,))
    after = mend.room
    if kind is MendKind.TUBE_TO_WARM_END:
        return Movement(act, (thing,), (after.tubes[0].x_m - room.tubes[0].x_m, 0.0, 0.0))
    if kind is MendKind.HEAT_LAMP and room.heat and after.heat:
        by = after.heat.x_m - room.heat.x_m, after.heat.y_m - room.heat.y_m, 0.0
        return Movement(act, (thing,), by)
    (x, y), (x_old, y_old) = after.platform.middle_m, room.platform.middle_m
    by_z = after.platform.top_m - room.platform.top_m
    along = (thing, Thing.HEAT_LAMP) if (x, y) != (x_old, y_old) else (thing,)
    return Movement(act, along, (x - x_old, y - y_old, by_z))


def _at(place: Place) -> tuple[float, float, float]:
    return place.x_m, place.y_m, place.z_m
