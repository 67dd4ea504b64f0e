"""The rows of a plan: where everything goes, what to aim for, what was assumed."""

from bot.answers.figures import (
    length,
    length_range,
    length_range_away,
    number,
    percent,
    temperature,
    temperature_range,
    uvi,
    watts,
    watts_range,
)
from bot.answers.plan_asked import Asked
from bot.answers.uv_parts import screen_phrase
from bot.language.quantities import Units
from bot.reply import Row
from calc.animals import Target
from calc.heat.enclosure import LampPlace
from calc.heat.night import NightDecision
from calc.judgement import Judged, Move
from calc.setup.light import Held, LightPlan, Obstacle
from calc.setup.plan import Setup
from calc.setup.warmth import HeatKind, WarmthPlan
from calc.sources import Kind, source
from calc.uv.patches import SHADE_UVI, Shade

__all__ = ["plan_rows"]

_KIND_WORDS = {Kind.COMMON_PRACTICE: "common practice", Kind.MEMORY: "from memory"}
_HELD = {
    Held.BY_FLOOR: "; lower is not possible, so this is nearer than I would start",
    Held.BY_REACH: "; higher than that I would not lift it, so this is on the weak side",
}
_TRIED = {
    Obstacle.PLATFORM_TOO_HIGH: "the platform would have to be higher than I would lift it",
    Obstacle.TOO_LOW: "the back would be too near for every usual tube",
    Obstacle.TOO_WEAK: "every usual tube is too weak through it",
    Obstacle.TOO_CLOSE: "every usual tube would have to hang too close",
}
_DOCK = "; keep the water below it. How warm the water should be I do not know"
_DOUBT = "lamps of one class differ by about a third; a UV index meter settles it"


def plan_rows(found: Setup, what: Asked, units: Units) -> tuple[Row, ...]:
    """Return the rows, the places first, then what to aim for, then what was assumed."""
    rows = [
        what.wish.row,
        Row(label="Tube to back", text=_distance(found.light, units)),
        *_tried_row(found),
        Row(label=what.place_name.capitalize(), text=_platform(found, what, units)),
        Row(label="Along the box", text=_along(found, what, units)),
        Row(label="Heat lamp", text=_lamp(found.warmth, what, units)),
        Row(label="Aim for", text=_aims(what, units)),
        *_air_row(found.warmth, units),
        Row(label="Shade", text=_shade(found, what)),
        Row(label="Night", text=_night(found.warmth, what, units)),
        Row(label="Hours", text=_hours(what)),
    ]
    if what.assumed:
        rows.append(Row(label="Assumed", text="; ".join(what.assumed)))
    return (*rows, Row(label="Why ranges", text=_DOUBT))


def _distance(light: LightPlan, units: Units) -> str:
    span = length_range_away(light.near_m, light.far_m, units)
    between = screen_phrase(light.hanging.screen)
    return (
        f"{length(light.distance_m, units)}, good from {span}, {between}{_HELD.get(light.held, '')}"
    )


def _tried_row(found: Setup) -> tuple[Row, ...]:
    if found.tried is None:
        return ()
    why = _TRIED.get(found.tried.obstacle, "no usual tube fits there")
    return (Row(label="Why not on the mesh", text=why),)


def _platform(found: Setup, what: Asked, units: Units) -> str:
    water = _DOCK if what.in_water else ""
    light, platform = found.light, found.places.platform
    wide, deep = platform.x1_m - platform.x0_m, platform.y1_m - platform.y0_m
    return (
        f"top {length(light.platform_top_m, units)} over the floor "
        f"({length_range(light.low_m, light.high_m, units)} keeps it in the range); about "
        f"{length(wide, units)} long, {length(deep, units)} deep, no shorter than the body{water}"
    )


def _along(found: Setup, what: Asked, units: Units) -> str:
    where = f"{length(found.places.tube.x_m, units)} from that wall"
    if found.warmth.watts is None:
        return f"tube from the warm end wall; {what.place_name} under its middle, {where}"
    in_range = found.places.met.heat_in_range
    share = percent(in_range.best if in_range else 0.0)
    return (
        f"tube from the warm end wall; {what.place_name} under its middle, {where}; the heat lamp "
        f"there too, in front of the tube: about {share} of the warm patch has the UV"
    )


def _lamp(warmth: WarmthPlan, what: Asked, units: Units) -> str:
    if warmth.lamp_distance_m is None or warmth.watts is None:
        if warmth.kind is HeatKind.ROOM_IS_NEARLY_ENOUGH:
            return "none to begin with: the room is nearly warm enough. Measure first"
        heater = f"a {watts(warmth.extra_w)} heater" if warmth.extra_w else "a gentle heater"
        return f"none; if the warm end reads too cool, {heater} without light, on a thermostat"
    where = "on the mesh" if warmth.lamp_place is LampPlace.ABOVE_MESH else "inside, guarded"
    place = f"{where}, its face {length(warmth.lamp_distance_m, units)} over the {what.place_name}"
    if warmth.first is None:
        return f"yours, {watts(warmth.watts.best)}, {place}"
    return (
        f"{place}; may take {watts_range(warmth.first.steps_w[0], warmth.first.steps_w[-1])}, "
        f"as lamps differ twofold{_two_sizes(warmth)}"
    )


def _two_sizes(warmth: WarmthPlan) -> str:
    return ", so buy two sizes" if warmth.first and len(warmth.first.buy_w) > 1 else ""


def _aims(what: Asked, units: Units) -> str:
    animal = what.animal
    named = (
        ("basking surface", animal.basking_surface_c),
        ("warm-end air", animal.warm_air_c),
        ("cool-end air", animal.cool_air_c),
    )
    known = [(name, target) for name, target in named if target is not None]
    kinds = {_kind(target) for _, target in known}
    told = [
        f"{name} {temperature_range(target.low, target.high, units)}"
        + (f" ({_kind(target)})" if len(kinds) > 1 else "")
        for name, target in known
    ]
    known_by = f" ({kinds.pop()})" if len(kinds) == 1 else ""
    unknown = [f"; {name} not known here" for name, t in named if t is None and name[0] != "w"]
    return f"{'; '.join(told)}{known_by}{''.join(unknown)}"


def _kind(target: Target) -> str:
    kind = source(target.source).kind
    return _KIND_WORDS.get(kind, str(kind))


def _target(target: Target, units: Units) -> str:
    return f"{temperature_range(target.low, target.high, units)} ({_kind(target)})"


def _air(judged: Judged | None) -> str:
    """Return how the air stands against the cool end's range."""
    if judged is None:
        return "no cool-end range is known here to hold it against"
    if judged.is_fine:
        return "that suits the cool end"
    if judged.verdict.wants_change and judged.move is Move.UP:
        return "too cool for the cool end, so plan a second heater"
    if judged.value.best < judged.low:
        return "that may be too cool: read the cool end before you buy a second heater"
    return "that may be too warm: read the cool end, take the smaller lamp, or let more air through"


def _air_row(warmth: WarmthPlan, units: Units) -> tuple[Row, ...]:
    if warmth.held_c is None:
        return ()
    held = warmth.held_c
    told = (
        f"about {temperature(held.best, units)} at the cool end with the lamp on "
        f"({temperature_range(held.low, held.high, units)}); {_air(warmth.air)}"
    )
    return (Row(label="Air by day", text=told),)


def _shade(found: Setup, what: Asked) -> str:
    met = found.places.met
    told = f"weakest place UVI {uvi(met.weakest.uvi.best)}"
    if met.shade is Shade.THERE and not found.covers_most:
        return f"{told}, at the cool end: add a hide there too"
    if not found.covers_most:
        return f"{told}, hardly under {SHADE_UVI}: add a hide at the cool end"
    low = f"{told} low down" if what.request.upright else told
    return f"{low}; the tube covers most of the box, so leaves and hides must shade"


def _night(warmth: WarmthPlan, what: Asked, units: Units) -> str:
    floor, night = what.animal.night_floor_c, warmth.night
    dark = "all lamps off and dark"
    if night is None:
        if floor is None:
            return f"{dark}; how cool it may get is not known here"
        return f"{dark}; heat without light only if the room falls below {_target(floor, units)}"
    room = temperature(what.request.night_c or 0.0, units)
    off = "" if night.heat_off_c is None else f", off at {temperature(night.heat_off_c, units)}"
    match night.decision:
        case NightDecision.NOTHING:
            return f"{dark}; {room} needs no heat"
        case NightDecision.TOO_WARM:
            return f"{dark}; {room} is warm for a night, so let it get cooler"
        case NightDecision.FLOOR_UNKNOWN:
            return f"{dark}; how cool it may get is not known here: ask a keeper or a vet"
    differ = night.decision is NightDecision.KEEPERS_DIFFER
    need = "keepers differ about {}; if you heat," if differ else "{} is too cold:"
    return f"{need.format(room)} {_emitter(warmth)}, on a thermostat{off}; {dark}"


def _emitter(warmth: WarmthPlan) -> str:
    if warmth.emitter is None:
        return "a heater without light"
    need, step = warmth.emitter.power_w, warmth.emitter.step_w
    span = watts_range(need.low, need.high)
    if step is None:
        return f"heaters without light, {span} in all, more than one gives"
    return f"one {watts(step)} heater without light ({span} needed)"


def _hours(what: Asked) -> str:
    hours = what.animal.light_hours
    told = "12 h on, 12 h off, tube and lamp on one timer"
    if hours is None or hours.low == hours.high:
        return f"{told} (common practice)"
    return f"{told}; {number(hours.low)} to {number(hours.high)} h over the year is usual too"
