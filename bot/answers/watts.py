"""A first wattage: an honest, wide range, and what to buy."""

from math import sqrt

from bot.answers.basking_words import GUARD_WORDS
from bot.answers.figures import difference, length, temperature, watts, watts_range
from bot.answers.heat_parts import AFTER_A_CHANGE, HEAT_CAUTIONS, taken_text
from bot.answers.heat_wanted import WantedHeat, wanted_surface
from bot.answers.linking import page_links, source_lines
from bot.answers.watts_box import box_of
from bot.language.errors import NotUnderstoodError
from bot.preferences import Context
from bot.queries.heat import WattsQuery
from bot.reply import Reply, Row, Value
from calc.heat.basking import MOST_DIMMING
from calc.heat.first_wattage import LEAST_RISE_K, FirstWattage, LampShape, first_wattage
from calc.heat.guards import guards
from calc.heat.wattages import steps_sold
from calc.uncertainty import Estimate

__all__ = ["SHAPES", "SHAPE_WORDS", "answer_watts"]

_GUIDE = ("dimmers-and-wattage", "basking-lamps", "the-basking-spot")
_SOURCES = ("lamp_beams", "davis2008", "lamp_steps", "holder_mark", "fire_service_lamps")
_OF_BOX = ("enclosure_model",)
SHAPES = {
    "wide dome": LampShape.WIDE_DOME,
    "flood": LampShape.FLOOD,
    "narrow": LampShape.NARROW,
}
SHAPE_WORDS = {
    LampShape.WIDE_DOME: "a bulb in a wide dome",
    LampShape.FLOOD: "a flood lamp",
    LampShape.NARROW: "a narrow spot",
}
_WHY_WIDE = (
    "lamps of one wattage are not alike: two heat lamps of 175 W, at one distance, warmed areas "
    "that differed twofold. Beam, reflector, stone and the air beside it can move the surface by "
    "tens of degrees, so this is a range to buy from and no forecast"
)
_NARROW = (
    "A narrow spot is not for basking: its hot patch is smaller than the animal. Take a flood."
)


def answer_watts(query: WattsQuery, context: Context) -> Reply:
    """Answer with a range of wattages, snapped to what is sold, and what to buy."""
    units, shape = context.units, SHAPES[query.lamp]
    wanted = wanted_surface(query.want, query.animal, context)
    _check_the_room_is_cooler(query, wanted, context)
    box = box_of(query)
    within = () if box is None else (box.enclosure, box.place)
    found = first_wattage(shape, query.room.low, wanted.aim_c, query.distance.low, *within)
    if found.watts.best > steps_sold()[-1]:
        return _too_far(query, wanted, found, context)
    if box is not None and (refused := box.refused(found, query, context)) is not None:
        return refused
    holder = None if query.holder is None else query.holder.low
    tripped = guards(watts=max(found.buy_w), holder_mark_w=holder)
    where = f"{length(query.distance.low, units)} from the surface"
    return Reply(
        command="watts",
        status="ok",
        title=f"A first wattage for {temperature(wanted.aim_c, units)} on the surface",
        answer=(
            f"{_narrow(shape)}{_short_holder(found, holder)}For {SHAPE_WORDS[shape]} {where}, "
            f"expect {_steps_range(found)}: buy {_to_buy(found)}, start {_start(found)}, and let "
            "the thermometer decide."
        ),
        values=(
            Value.of("lamp_power", found.watts, "W"),
            Value.of("room", Estimate.exact(query.room.low), "degC"),
            wanted.value("basking_surface_wanted"),
        ),
        rows=(
            Row(label="Sizes sold in that range", text=", ".join(map(watts, found.steps_w))),
            *wanted.rows,
            *_shape_rows(query),
            *(() if box is None else box.rows(found, query.room.low, units)),
            Row(label="Reckoned", text=f"about {_reckoned(found)} in nine cases of ten"),
            Row(label="Why so wide", text=_WHY_WIDE),
        ),
        steps=(*_instead(shape), *_steps(found, holder)),
        cautions=(
            *((_NARROW,) if shape is LampShape.NARROW else ()),
            *(GUARD_WORDS[guard] for guard in tripped),
            *HEAT_CAUTIONS,
        ),
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*wanted.sources, *_SOURCES, *(() if box is None else _OF_BOX))),
    )


def _check_the_room_is_cooler(query: WattsQuery, wanted: WantedHeat, context: Context) -> None:
    """Refuse a room that is nearly as warm as what is wanted of the surface."""
    if wanted.aim_c - query.room.low >= LEAST_RISE_K:
        return
    room = temperature(wanted.aim_c - LEAST_RISE_K - 1.0, context.units)
    raise NotUnderstoodError(
        query.room.text,
        f"a room at least {difference(LEAST_RISE_K, context.units)} cooler than the wanted "
        f"{temperature(wanted.aim_c, context.units)}, because a lamp can only warm (cool the room "
        "first, or leave the lamp out)",
        f"room:{room.partition(' (')[0].replace(' °', '')}",
        "room",
    )


def _shape_rows(query: WattsQuery) -> tuple[Row, ...]:
    if "lamp" in query.model_fields_set:
        return ()
    return (
        Row(
            label="Lamp",
            text=f"{query.lamp}{taken_text('lamp:flood, lamp:wide dome or lamp:narrow')}",
        ),
    )


def _narrow(shape: LampShape) -> str:
    return f"{_NARROW} " if shape is LampShape.NARROW else ""


def _instead(shape: LampShape) -> tuple[str, ...]:
    told = "Better take a flood, and ask again with lamp:flood. If you must use a narrow spot:"
    return (told,) if shape is LampShape.NARROW else ()


def _short_holder(found: FirstWattage, holder_w: float | None) -> str:
    """Return what comes before anything is bought: a holder that may bear it."""
    if holder_w is None or max(found.buy_w) <= holder_w:
        return ""
    return (
        f"Your holder, marked for {watts(holder_w)}, must not bear what this takes: first get one "
        f"marked for {watts(max(found.buy_w))} or more, or bring lamp and surface nearer together "
        "and ask again. "
    )


def _steps(found: FirstWattage, holder_w: float | None) -> tuple[str, ...]:
    short = _short_holder(found, holder_w).strip()
    return (
        *((short,) if short else ()),
        f"Buy {_to_buy(found)}{_or_dimmer(found)}.",
        (
            "Hang it, or the smaller of two, farther away than you think you need and never nearer "
            "than its label allows, and let it run for two to three hours."
        ),
        (
            "Read the surface with an infrared gun and the air beside it with a probe, then "
            "ask basking with both: that answer is much better than this one."
        ),
        AFTER_A_CHANGE,
    )


def _too_far(query: WattsQuery, wanted: WantedHeat, found: FirstWattage, context: Context) -> Reply:
    """Refuse a distance from which no lamp that is sold is likely to be enough."""
    units, strongest = context.units, steps_sold()[-1]
    # Heat falls about with the square of the distance: from here most lamps sold would do.
    near_m = query.distance.low * sqrt(strongest / found.watts.high)
    return Reply(
        command="watts",
        status="problem",
        title=f"Too far away for {temperature(wanted.aim_c, units)} on the surface",
        answer=(
            f"No lamp brings {temperature(wanted.aim_c, units)} from "
            f"{length(query.distance.low, units)} with any certainty: it would take "
            f"{_reckoned(found)}, and {watts(strongest)} is the most that is sold. Bring lamp and "
            f"surface to about {length(near_m, units)} of each other, then ask again."
        ),
        values=(
            Value.of("lamp_power", found.watts, "W"),
            wanted.value("basking_surface_wanted"),
        ),
        rows=(*wanted.rows, *_shape_rows(query), Row(label="Why so wide", text=_WHY_WIDE)),
        steps=(
            (
                "Build the basking spot higher, or hang the lamp lower, but never nearer than its "
                "label allows or where the animal can touch it."
            ),
            f"Ask watts again with that distance, such as {length(near_m, units)}.",
            AFTER_A_CHANGE,
        ),
        cautions=HEAT_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*wanted.sources, *_SOURCES)),
    )


def _start(found: FirstWattage) -> str:
    if len(found.buy_w) > 1:
        return "with the smaller"
    return "far away with it, because none smaller is sold"


def _or_dimmer(found: FirstWattage) -> str:
    if len(found.buy_w) == 1:
        return ", with a dimmer"
    # Turned down to the smaller one, the larger must keep about four fifths of its power.
    spared = min(found.buy_w) >= (1.0 - MOST_DIMMING) * max(found.buy_w)
    return ", or the larger with a dimmer made for it" if spared else ""


def _steps_range(found: FirstWattage) -> str:
    span = watts_range(found.steps_w[0], found.steps_w[-1])
    return f"somewhere from {span}" if len(found.steps_w) > 1 else f"about {span}"


def _to_buy(found: FirstWattage) -> str:
    return " and ".join(f"one of {watts(step)}" for step in found.buy_w)


def _reckoned(found: FirstWattage) -> str:
    return watts_range(found.watts.low, found.watts.high)
