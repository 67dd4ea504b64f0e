"""A whole set-up from what someone has: what to buy, where it goes, what to measure first."""

from bot.answers.figures import length, uvi_estimate, uvi_range, watts
from bot.answers.heat_parts import HEAT_CAUTIONS
from bot.answers.linking import page_links, source_lines
from bot.answers.no_figures import answer_without_figures
from bot.answers.plan_asked import Asked, asked
from bot.answers.plan_picture import plan_picture
from bot.answers.plan_refusal import plan_refused
from bot.answers.plan_rows import plan_rows
from bot.answers.plan_shopping import shopping_list
from bot.answers.plan_steps import plan_steps
from bot.answers.together import COUNTED
from bot.answers.uv_parts import UV_CAUTIONS, lamp_name
from bot.language.quantities import Units
from bot.preferences import Context
from bot.queries.options import kind_of
from bot.queries.plan import PlanQuery
from bot.reply import Picture, Reply, Value
from calc.animals import Target
from calc.heat.enclosure import LampPlace
from calc.heat.first_wattage import LampShape
from calc.setup.changes import Refusal, plan_setup
from calc.setup.plan import Setup
from calc.setup.planned import planned_set_up
from calc.setup.space import SmallestFloor, too_small_by
from calc.uncertainty import Estimate
from calc.uv.lamp import CLASS_STRENGTH_PERCENT

__all__ = ["answer_plan"]

_SHAPE_WORDS = {
    LampShape.WIDE_DOME: "a bulb in a wide dome",
    LampShape.FLOOD: "a flood lamp",
    LampShape.NARROW: "a narrow spot",
}
_GUIDE = ("planning-a-set-up", "uv-and-heat-together", "measuring-temperatures")
_SOURCES = (
    *("plan_judgement", "uv_distance_rows", "keitz1971", "uv_lamp_judgement"),
    *("half_to_two_thirds", "t5_lengths"),
)
_LAMP_SOURCES = ("lamp_beams", "lamp_steps", "enclosure_model")
_WATER = (
    "Water near mains power: give every cable a drip loop, keep sockets above the water, and "
    "follow your local electrical codes."
)
_SIZE = (
    "This plans light and heat. Whether the box is big enough for a grown animal, and what it "
    "eats and drinks, ask a keeper you trust."
)


def answer_plan(query: PlanQuery, context: Context) -> Reply:
    """Answer with a set-up to buy and build, or say why not in that box and what would help."""
    if none := answer_without_figures("plan", query, kind_of(query.tube, None), context):
        return none
    what = asked(query, context)
    found = plan_setup(what.request)
    if isinstance(found, Refusal):
        return plan_refused(found, what, context)
    units = context.units
    set_up = planned_set_up(found, what.request, what.back, what.stand, in_water=what.in_water)
    weakest = found.places.met.weakest.uvi.best
    return Reply(
        command="plan",
        status="ok",
        title=f"A starting set-up for {what.whom}",
        answer=_answer(found, what, units),
        values=_values(found, what),
        rows=plan_rows(found, what, units),
        table=shopping_list(found, what, units),
        steps=plan_steps(found, what, units),
        cautions=_cautions(found, what),
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines(_sources(found, what)),
        picture=Picture.later(plan_picture, set_up, weakest, what, units),
        set_up=set_up,
    )


def _cautions(found: Setup, what: Asked) -> tuple[str, ...]:
    sure = what.new_tube and found.light.lamp.strength_percent <= CLASS_STRENGTH_PERCENT
    water = (_WATER,) if what.in_water else ()
    size = () if _too_small(what) else (_SIZE,)
    return (*water, *UV_CAUTIONS[: 2 if sure else None], *HEAT_CAUTIONS, *size)


def _answer(found: Setup, what: Asked, units: Units) -> str:
    light = found.light
    inside = light.hanging.place is LampPlace.INSIDE
    under = length(what.request.box.height_m - light.tube_z_m, units)
    where = f"Hang inside, {under} under the lid," if inside else "Lay on the mesh"
    long = length(found.fit.length_m, units)
    return (
        f"{_first(what, units)} {where} {_a(lamp_name(light.lamp))}, {long} long. Put the top of "
        f"the {what.place_name} {length(light.platform_top_m, units)} over the floor: then tube "
        f"and back are {length(light.distance_m, units)} apart, for UVI {uvi_estimate(light.uvi)}, "
        f"wanted {uvi_range(what.wish.low, what.wish.high)}. {_heat(found, what)}"
    )


def _first(what: Asked, units: Units) -> str:
    """Return whether the box will do; one that is too small is still where the animal lives."""
    floor = _too_small(what)
    if floor is None:
        return "It can be done."
    long, deep = (length(side_m, units) for side_m in floor.sides_m)
    return f"Too small when grown: it needs {long} by {deep} of floor. Safest in this box for now:"


def _too_small(what: Asked) -> SmallestFloor | None:
    box = what.request.box
    return too_small_by(what.animal.slug, box.length_m, box.depth_m)


def _a(lamp: str) -> str:
    counted = ("your", "the", *COUNTED.values())
    return lamp if lamp.startswith(counted) else f"a {lamp}"


def _heat(found: Setup, what: Asked) -> str:
    warmth = found.warmth
    if warmth.first is not None:
        buy = " and ".join(watts(w) for w in sorted(warmth.first.buy_w))
        shape = _SHAPE_WORDS[what.request.shape]
        return f"Beside it {shape}: buy {buy}, and let a thermometer decide."
    if warmth.watts is not None:
        return f"Beside it your {watts(warmth.watts.best)} lamp; a thermometer decides."
    return "It needs no hot lamp, only gentle warmth: a thermometer decides."


def _values(found: Setup, what: Asked) -> tuple[Value, ...]:
    light, met, warmth = found.light, found.places.met, found.warmth
    animal = what.animal
    values = [
        Value(
            name="tube_to_back",
            low=light.near_m,
            best=light.distance_m,
            high=light.far_m,
            unit="m",
        ),
        Value.of("uvi", light.uvi, "1"),
        Value(
            name="platform_top",
            low=light.low_m,
            best=light.platform_top_m,
            high=light.high_m,
            unit="m",
        ),
        Value.of("back", what.back, "m"),
        Value.of("tube_length", Estimate.exact(found.fit.length_m), "m"),
        Value.of("middle_from_warm_end", Estimate.exact(found.places.tube.x_m), "m"),
        Value.of("platform_in_range", met.in_range, "1"),
        Value.of("uvi_weakest", met.weakest.uvi, "1"),
    ]
    if warmth.watts is not None:
        values.append(Value.of("lamp_power", warmth.watts, "W"))
    if warmth.lamp_distance_m is not None:
        values.append(Value.of("lamp_distance", Estimate.exact(warmth.lamp_distance_m), "m"))
    if warmth.held_c is not None:
        values.append(Value.of("air_held", warmth.held_c, "degC"))
    if warmth.emitter is not None:
        values.append(Value.of("night_power", warmth.emitter.power_w, "W"))
    targets = (
        ("basking_surface_wanted", animal.basking_surface_c, "degC"),
        ("warm_air_wanted", animal.warm_air_c, "degC"),
        ("cool_air_wanted", animal.cool_air_c, "degC"),
        ("night_floor", animal.night_floor_c, "degC"),
        ("light", animal.light_hours, "h"),
    )
    return (*values, *(_target(name, t, unit) for name, t, unit in targets if t is not None))


def _target(name: str, target: Target, unit: str) -> Value:
    return Value(name=name, low=target.low, best=target.aim, high=target.high, unit=unit)


def _sources(found: Setup, what: Asked) -> tuple[str, ...]:
    animal, night = what.animal, found.warmth.night
    targets = (
        animal.basking_surface_c,
        animal.warm_air_c,
        animal.cool_air_c,
        animal.night_floor_c,
        animal.light_hours,
    )
    off = (night.heat_off_source,) if night and night.heat_off_source else ()
    floor = _too_small(what)
    return (
        *((floor.source,) if floor else ()),
        *what.wish.sources,
        *(target.source for target in targets if target),
        *what.sources,
        *_SOURCES,
        *_LAMP_SOURCES,
        *off,
    )
