"""A first wattage: an honest, wide range, and what to buy."""

from bot.answers.basking_words import GUARD_WORDS
from bot.answers.figures import length, temperature, watts, watts_range
from bot.answers.heat_parts import AFTER_A_CHANGE, HEAT_CAUTIONS, wanted_surface
from bot.answers.linking import page_links, source_lines
from bot.preferences import Context
from bot.queries.heat import WattsQuery
from bot.reply import Reply, Row, Value
from calc.heat.first_wattage import FirstWattage, LampShape, first_wattage
from calc.heat.guards import guards
from calc.uncertainty import Estimate

__all__ = ["SHAPES", "SHAPE_WORDS", "answer_watts"]

_GUIDE = ("dimmers-and-wattage", "basking-lamps", "the-basking-spot")
_SOURCES = ("lamp_beams", "davis2008", "lamp_steps", "holder_mark", "fire_service_lamps")
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
    found = first_wattage(shape, query.room.low, wanted.aim_c, query.distance.low)
    holder = None if query.holder is None else query.holder.low
    tripped = guards(watts=max(found.buy_w), holder_mark_w=holder)
    where = f"{length(query.distance.low, units)} from the surface"
    return Reply(
        command="watts",
        status="ok",
        title=f"A first wattage for {temperature(wanted.aim_c, units)} on the surface",
        answer=(
            f"For {SHAPE_WORDS[shape]} {where}, expect somewhere from {_steps_range(found)}: buy "
            f"{_to_buy(found)}, start {_start(found)}, and let the thermometer decide."
        ),
        values=(
            Value.of("lamp_power", found.watts, "W"),
            Value.of("room", Estimate.exact(query.room.low), "degC"),
            wanted.value("basking_surface_wanted"),
        ),
        rows=(
            Row(label="Sizes sold in that range", text=", ".join(map(watts, found.steps_w))),
            *wanted.rows,
            Row(label="Reckoned", text=f"about {_reckoned(found)} in nine cases of ten"),
            Row(label="Why so wide", text=_WHY_WIDE),
        ),
        steps=(
            f"Buy {_to_buy(found)}, {_or_dimmer(found)}.",
            (
                "Hang it, or the smaller of two, farther away than you think you need, and let it "
                "run for two to three hours."
            ),
            (
                "Read the surface with an infrared gun and the air beside it with a probe, then "
                "ask basking with both: that answer is much better than this one."
            ),
            AFTER_A_CHANGE,
        ),
        cautions=(
            *((_NARROW,) if shape is LampShape.NARROW else ()),
            *(GUARD_WORDS[guard] for guard in tripped),
            *HEAT_CAUTIONS,
        ),
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*wanted.sources, *_SOURCES)),
    )


def _start(found: FirstWattage) -> str:
    if len(found.buy_w) > 1:
        return "with the smaller"
    return "far away with it, because none smaller is sold"


def _or_dimmer(found: FirstWattage) -> str:
    return "or the larger with a dimmer made for it" if len(found.buy_w) > 1 else "with a dimmer"


def _steps_range(found: FirstWattage) -> str:
    return watts_range(found.steps_w[0], found.steps_w[-1])


def _to_buy(found: FirstWattage) -> str:
    return " and ".join(f"one of {watts(step)}" for step in found.buy_w)


def _reckoned(found: FirstWattage) -> str:
    return watts_range(found.watts.low, found.watts.high)
