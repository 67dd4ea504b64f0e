"""Why a set-up cannot be done in that box, and what would change that."""

from bot.answers.figures import length, percent, temperature, uvi_range
from bot.answers.heat_parts import HEAT_CAUTIONS
from bot.answers.linking import page_links, source_lines
from bot.answers.plan_asked import Asked
from bot.answers.tube_length import OTHER_KINDS, shortest_told
from bot.answers.uv_parts import UV_CAUTIONS, lamp_name, screen_phrase
from bot.language.quantities import Units
from bot.preferences import Context
from bot.reply import Reply, Row, Value
from calc.heat.enclosure import LampPlace, Lid
from calc.setup.changes import Change, ChangeKind, Refusal, Way
from calc.setup.light import Obstacle
from calc.uncertainty import Estimate
from calc.uv.placement import COMFORTABLE_MINIMUM_M

__all__ = ["plan_refused"]

_GUIDE = ("planning-a-set-up", "measuring-the-distance", "warm-end-and-cool-end")
_SOURCES = ("plan_judgement", "uv_distance_rows", "nearest_distance", "half_to_two_thirds")
_MORE = ("enclosure_model",)
_AGAIN = "Then ask plan again, and measure before the animal moves in."
_NO_WAY = "No single change that I know makes it work: choose a longer and taller box."
_GENTLE = (
    "Or no lamp at all: a panel or mat without light, on a thermostat. Ask lamp radiant panel, or "
    "lamp heat mat."
)


def plan_refused(found: Refusal, what: Asked, context: Context) -> Reply:
    """Return the refusal: the reason in one sentence, and the ways out that were tried."""
    units = context.units
    ways = tuple(_way(way, what, units) for way in found.ways)
    others = (OTHER_KINDS,) if found.obstacle is Obstacle.NO_TUBE_SHORT_ENOUGH else ()
    gentle = found.obstacle is Obstacle.NO_ROOM_FOR_HEAT and not what.animal.basking
    none = () if found.obstacle is Obstacle.LENGTH_UNTOLD else (_NO_WAY,)
    size = what.request.box
    rows = [
        what.wish.row,
        Row(
            label="Box",
            text=f"{length(size.length_m, units)} long, {length(size.depth_m, units)} deep, "
            f"{length(size.height_m, units)} high inside, {_LIDS[size.lid]}",
        ),
    ]
    if what.assumed:
        rows.append(Row(label="Assumed", text="; ".join(what.assumed)))
    return Reply(
        command="plan",
        status="problem",
        title=f"Not in that box for {what.whom}",
        answer=_why(found, what, units),
        values=_values(found),
        rows=tuple(rows),
        steps=(*(ways or none), *others, *((_GENTLE,) if gentle else ()), _AGAIN),
        cautions=(*UV_CAUTIONS[:2], *HEAT_CAUTIONS[1:]),
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*what.wish.sources, *what.sources, *_SOURCES, *_MORE)),
    )


_LIDS = {Lid.SOLID: "solid lid", Lid.PART_MESH: "part mesh lid", Lid.FULL_MESH: "full mesh lid"}
_NAMES = {
    ChangeKind.TALLER_BOX: ("height", "m"),
    ChangeKind.LONGER_BOX: ("length", "m"),
    ChangeKind.COOLER_ROOM: ("room", "degC"),
}


def _values(found: Refusal) -> tuple[Value, ...]:
    single = [way.changes[0] for way in found.ways if len(way.changes) == 1]
    return tuple(
        Value.of(f"{_NAMES[c.kind][0]}_needed", Estimate.exact(c.least), _NAMES[c.kind][1])
        for c in single
        if c.least is not None and c.kind in _NAMES
    )


def _why(found: Refusal, what: Asked, units: Units) -> str:
    box, whom = what.request.box, what.whom
    wanted = f"UVI {uvi_range(what.wish.low, what.wish.high)}"
    above = found.hanging.place is LampPlace.ABOVE_MESH
    where = screen_phrase(found.hanging.screen) if above else "inside the box"
    tube = "your tube" if what.owns_tube else "any usual tube"
    match found.obstacle:
        case Obstacle.TOO_LOW:
            return (
                f"It cannot be done as it is: {length(box.height_m, units)} is too low for {tube} "
                f"{where}. Even on a flat stone the back of {whom} would be nearer to the tube "
                f"than {wanted} allows."
            )
        case Obstacle.NO_ROOM_FOR_HEAT:
            return (
                f"It cannot be done as it is: {length(box.height_m, units)} under a solid lid is "
                "too low for a heat lamp inside. It would hang too near to the animal."
            )
        case Obstacle.PLATFORM_TOO_HIGH:
            return (
                f"It cannot be done as it is: {length(box.height_m, units)} is too high for {tube} "
                f"on the lid. The basking place of {whom} would be higher than I would build it."
            )
        case Obstacle.TOO_CLOSE:
            return (
                f"It cannot be done with that light: for {wanted} {tube} {where} would have to be "
                f"nearer than {length(COMFORTABLE_MINIMUM_M, units)} to the back, and nearer than "
                "that no tube should be."
            )
        case Obstacle.TOO_WEAK:
            return f"It cannot be done with that light: {tube} {where} is too weak for {wanted}."
        case Obstacle.TOO_STRONG:
            return f"It cannot be done with that light: {tube} {where} is too strong for {wanted}."
        case Obstacle.LENGTH_UNTOLD:
            return (
                f"It cannot be planned yet: how far {tube} hangs depends on how long it is. "
                "Measure it, and ask again with its length, such as length:34in."
            )
        case _:
            return _why_not_light(found, what, units)


def _why_not_light(found: Refusal, what: Asked, units: Units) -> str:
    request, whom = what.request, what.whom
    long = length(request.box.length_m, units)
    match found.obstacle:
        case Obstacle.SOLID_LID:
            return "It cannot be done: no UV passes a solid lid, so the tube cannot lie on it."
        case Obstacle.TUBE_TOO_LONG:
            owned = length(request.owned.length_m or 0.0, units)
            return f"It cannot be done: your tube of {owned} is longer than the box of {long}."
        case Obstacle.NO_TUBE_SHORT_ENOUGH:
            return (
                f"It cannot be done with a T5 HO tube: every standard one is longer than {long} "
                f"({shortest_told(units)} long), and shorter kinds are not in what I can work out."
            )
        case Obstacle.TOO_SHORT:
            return (
                f"It cannot be done well: {long} is too short for a gradient. Even the shortest "
                f"tube would light nearly all of it, and {whom} must be able to leave light and "
                "heat."
            )
        case Obstacle.ROOM_TOO_WARM:
            cool = what.animal.cool_air_c
            limit = (
                "" if cool is None else f" and the cool end may be {temperature(cool.high, units)}"
            )
            room = temperature(request.room_c, units)
            return f"It cannot be done in that room: it is {room}{limit} at most for {whom}."
        case _:
            return (
                "It cannot be done as it is: a lamp that makes the basking spot would warm the "
                f"whole box beyond what the cool end of {whom} may have."
            )


def _way(way: Way, what: Asked, units: Units) -> str:
    told = " and ".join(_change(change, units) for change in way.changes)
    lamp, light = lamp_name(way.light.lamp), way.light
    place = "inside" if light.hanging.place is LampPlace.INSIDE else "on the mesh"
    return (
        f"Would work: {told}. Then {lamp}, {place}, {length(light.distance_m, units)} from the "
        f"back, its {what.place_name} {length(light.platform_top_m, units)} high."
    )


def _change(change: Change, units: Units) -> str:
    least = change.least or 0.0
    match change.kind:
        case ChangeKind.HANG_INSIDE:
            return "hang the tube inside, with no mesh between"
        case ChangeKind.OTHER_TUBE:
            return "another tube"
        case ChangeKind.OPENER_SCREEN:
            return f"a wider mesh over the tube's length that passes {percent(least)}"
        case ChangeKind.MESH_LID:
            part = "partly" if least < Lid.FULL_MESH.value else "fully"
            return f"a lid that is {part} mesh, with tube and lamp on it"
        case ChangeKind.SMALLER_LAMP:
            return "a smaller heat lamp, or a dimmer on yours"
        case ChangeKind.COOLER_ROOM:
            return f"a room of {temperature(least, units)} or cooler"
        case ChangeKind.TALLER_BOX:
            return f"a box at least {length(least, units)} high"
        case ChangeKind.LONGER_BOX:
            return f"a box at least {length(least, units)} long"
