"""The picture of a plan: the enclosure to scale with tube, lamp, platform and back in place."""

from bot.answers.figures import length, number, temperature_range, uvi, uvi_estimate, uvi_range
from bot.answers.plan_asked import Asked
from bot.answers.side_picture import Words, side_views
from bot.answers.uv_parts import lamp_name, screen_phrase
from bot.drawing import End, Place
from bot.language.quantities import Units
from bot.questions.uv.curves import shortened
from bot.reply import Picture
from calc.quantities import Quantity
from calc.setup.set_up import SetUp, ends_of
from calc.uv.lamp import Lamp

__all__ = ["plan_picture"]

_TOOLS = {
    Quantity.UVI: "UV index meter at back height",
    Quantity.BASKING_SURFACE: "Infrared gun where it basks",
    Quantity.COOL_AIR: "Probe in the shade",
    Quantity.WARM_AIR: "Probe in the shade",
}


def plan_picture(set_up: SetUp, weakest_uvi: float, what: Asked, units: Units) -> Picture:
    """Return the enclosure from the front, and from its warm end with the lamp beside the tube."""
    tube, stand = set_up.tubes[0], set_up.stands[0].place
    from_wall = length(stand.middle_m[0], units)
    ends = _ends(set_up, weakest_uvi)
    words = Words(
        title=f"The set-up for {what.whom}",
        subtitle=f"{lamp_name(tube.lamp)}, {screen_phrase(tube.screen)}",
        tube=_tube_name(tube.lamp),
        stand=what.place_name,
        note=f"The middle of tube and {what.place_name} is {from_wall} from the warm end wall. "
        "Hides are not in the picture.",
        ends=ends,
        places=tuple(_places(set_up, units)),
    )
    drawing = side_views(set_up, words, units)
    tube_end, uv = ends_of(tube)[1], set_up.spots[0]
    away = tube.z_m - (set_up.back_z_m or 0.0)
    alt = (
        f"Side view to scale: {drawing.title}, {drawing.subtitle}.",
        f"From the warm end, on the left, the tube reaches {length(tube_end, units)}.",
        (
            f"The {what.place_name}: top {length(stand.top_m, units)} over the floor, middle "
            f"{from_wall} from the warm end."
        ),
        f"From tube to back {length(away, units)}: UVI {uvi_estimate(uv.value)}."
        if uv.value
        else "",
        "Seen from the warm end, the heat lamp hangs beside the tube." if set_up.lamps else "",
        *(f"{end.name}: {end.text}." for end in ends),
    )
    return Picture(alt=shortened([line for line in alt if line]), drawing=drawing)


def _tube_name(lamp: Lamp) -> str:
    return "UV tube" if lamp.own else f"UV tube, {number(lamp.strength_percent, 0.1)} %"


def _places(set_up: SetUp, units: Units) -> list[Place]:
    told = []
    for spot in set_up.spots:
        if spot.at_m is None or spot.wanted is None:
            continue
        span = (
            uvi_range(*spot.wanted)
            if spot.quantity is Quantity.UVI
            else temperature_range(*spot.wanted, units)
        )
        told.append(Place(spot.at_m[0], spot.at_m[2], f"{_TOOLS[spot.quantity]}: {span}"))
    return told


def _ends(set_up: SetUp, weakest_uvi: float) -> tuple[End, End]:
    heat = " and heat" if set_up.lamps else ""
    wanted = f"UVI {uvi_range(*(set_up.uvi_wanted or (0.0, 0.0)))}{heat}"
    weakest = f"down to UVI {uvi(weakest_uvi)}, and a hide"
    return End("warm end", wanted, True), End("cool end", weakest, False)
