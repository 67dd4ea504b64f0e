"""What is told of a set-up that can be done: the brief, then steps, places and what to buy."""

from collections.abc import Iterator
from dataclasses import replace

from bot.facts import Figure, Say, Says
from bot.layered import Brief, Care, Layered, Row, Table, Teller, Weight
from bot.questions.heat.shared import HEAT_CARE
from bot.questions.setup.plan_facts import Planned
from bot.questions.setup.plan_heat import DayHeat, PlanHeat
from bot.questions.setup.plan_level import level_bought, level_step
from bot.questions.setup.plan_picture import plan_picture
from bot.questions.setup.sun import sun_rows
from bot.questions.uv.shared import UV_CARE, wish_rows
from bot.questions.uv.tubes import Whose, group_differs, group_rows, group_short, group_sources
from bot.reply import Picture
from calc.animal import Subject
from calc.heat.enclosure import LampPlace
from calc.setup.set_up import SetUp
from calc.uncertainty import Estimate
from calc.uv.lengths import DARK_ENDS_M

__all__ = ["tell_planned"]

_GUIDE = (
    "planning-a-set-up",
    "uv-and-heat-together",
    "measuring-temperatures",
    "arranging-the-lamps",
)


def tell_planned(facts: Planned) -> Layered:
    """Tell whether the box will do and where the tube goes, then how to build and measure it."""
    say = Says("plan", facts)
    return Layered(
        command="plan",
        title=say("title"),
        brief=_brief(facts, say),
        steps=tuple(_steps(facts, say)),
        numbers=tuple(_numbers(facts, say)),
        table=Table((say("buy"), say("which")), tuple(_bought(facts, say))),
        why=tuple(_why(facts, say)),
        care=tuple(_care(facts, say)),
        values=tuple(_values(facts)),
        guide=_GUIDE,
        sources=(*facts.sources, *group_sources(facts.tube)),
        picture=lambda teller: Picture.later(plan_picture, facts, teller),
        sheet=lambda teller: _sheet(facts, teller),
        set_up=facts.set_up,
    )


def _sheet(facts: Planned, teller: Teller) -> Picture:
    from bot.questions.general.care_sheet import care_sheet_of

    return care_sheet_of(facts.care, _as_told(facts), teller)


def _as_told(facts: Planned) -> SetUp:
    """Return the set-up as a keeper would tell it, for a sheet that has places of its own."""
    planned, [tube, *_] = facts.set_up, facts.set_up.tubes
    return replace(
        planned,
        tube_to_back_m=Estimate.exact(facts.away.best),
        tube_long_m=tube.lamp.lit_length_m + DARK_ENDS_M,
        tube_is_over=facts.place is LampPlace.ABOVE_MESH,
        spots=(),
    )


def _brief(facts: Planned, say: Says) -> Brief:
    heat = Says("plan", facts.heat)
    small = facts.floor is not None
    steps = [say("do-tube"), heat.by("do-heat", facts.heat.day)]
    if facts.heat.heats_night:
        steps.append(heat("do-night"))
    elif not small:
        steps.append(level_step(facts.level) or say("do-empty"))
    return Brief(
        head=say("small") if small else say("yes"),
        range=(say("for-now"),) if small else (say("range"),),
        assumed=(*_assumed(facts), *group_short(facts.tube)),
        steps=tuple(steps),
    )


def _assumed(facts: Planned) -> tuple[Say, ...]:
    # In one line, and only what changes what is bought.
    told = facts.assumed
    say = Says("plan", told)
    if told.mesh_blocks and told.room_taken:
        return (say("assumed-short"),)
    if told.mesh_blocks:
        return (say("assumed-short-mesh"),)
    return (say("assumed-short-room"),) if told.room_taken else ()


def _steps(facts: Planned, say: Says) -> Iterator[Say]:
    yield say("step-before")
    yield say("step-hang")
    yield say("step-tape")
    yield say("step-meter")
    if facts.surface is not None:
        yield say("step-surface")
    if facts.heat.open:
        yield Say("air-step-cover")
    yield say("step-cool")
    yield say("step-write")
    yield say("step-again")


def _numbers(facts: Planned, say: Says) -> Iterator[Row]:
    heat = facts.heat
    warm = Says("plan", heat)
    if facts.floor is not None:
        yield Row(say("label-floor"), say("floor"))
    yield from wish_rows(facts.wish)
    yield Row(say("label-away"), say("away"))
    yield Row(say("label-uvi"), say("uvi"))
    yield from group_rows(facts.tube)
    yield Row(say.by("stand", facts.stand), say("top"))
    yield Row(say("label-along"), say("along"))
    yield Row(say("label-heat"), warm.by("heat", heat.day))
    for aim in facts.aims:
        label = Say.by("plan-aim-label", aim.about)
        yield Row(label, Say("plan-aim", aim))
    if heat.held is not None:
        yield Row(say("label-air"), warm("air"))
    yield from sun_rows(facts.sun, facts.white)
    yield Row(Say("arrange-label-ways"), facts.ways.compared)
    yield Row(say("label-shade"), say("shade"))
    if facts.water_deep is not None:
        yield Row(say("label-water"), say("water-deep"))
    yield Row(say("label-night"), warm.by("night", heat.night))
    yield Row(say("label-hours"), say("hours"))
    if facts.all_assumed:
        yield Row(say("label-assumed"), say("all-assumed"))


def _why(facts: Planned, say: Says) -> Iterator[Say]:
    if facts.tried is not None:
        yield say.by("tried", facts.tried)
    if facts.new_tube:
        yield say("why-strength")
    yield from facts.ways.why
    yield from group_differs(facts.tube) or (say("why-ranges"),)
    if facts.heat.span is not None:
        yield say("why-lamps")
    if facts.heat.open:
        yield Say("air-why-open")


def _care(facts: Planned, say: Says) -> Iterator[Care]:
    if facts.in_water:
        yield Care(say("care-water"), say("care-water-short"), Weight.STEP)
    if facts.white and facts.white.warms and not facts.white.warms.fits:
        yield Care(Say("sun-care-warms"), Say("sun-care-warms-short"), Weight.STEP)
    guard, *rest = HEAT_CARE
    yield guard
    eyes, *uv = UV_CARE[: 2 if facts.sure else None]
    yield replace(eyes, weight=Weight.ALWAYS)
    yield from (*uv, *rest)
    if facts.floor is None:
        yield Care(say("care-size"))


def _bought(facts: Planned, say: Says) -> Iterator[tuple[Say, Say]]:
    yield say("buy-tube"), say("tube")
    if facts.tube.whose is Whose.CLASS:
        yield say("buy-fixture"), say("fixture")
    yield from _heat_bought(facts.heat)
    yield say("buy-timer"), say("timer")
    yield say.by("stand", facts.stand), say("platform")
    yield say("buy-thermometers"), say("thermometers")
    yield say("buy-meter"), say("meter")
    yield say("buy-hides"), say("hides")
    yield from level_bought(facts.level)
    if facts.heat.need is not None:
        yield say("buy-night"), Say("plan-night-heater", facts.heat)


def _heat_bought(heat: PlanHeat) -> Iterator[tuple[Say, Say]]:
    say = Says("plan", heat)
    if heat.sizes is None:
        if heat.day is DayHeat.GENTLE and heat.most is not None:
            yield say("buy-day"), say("day-heater")
        return
    yield say("buy-lamp"), say("lamp")
    yield say("buy-holder"), say("holder")
    yield say("buy-dimmer"), say("dimmer")
    if heat.most is not None:
        yield say("buy-second"), say("second-heater")


def _values(facts: Planned) -> Iterator[tuple[str, Figure | None]]:
    heat = facts.heat
    yield "tube_to_back", facts.away
    yield "uvi", facts.uvi
    yield "platform_top", facts.top
    yield "back", facts.back
    yield "tube_length", facts.long
    yield "middle_from_warm_end", facts.along
    yield "platform_in_range", facts.in_range
    yield "uvi_weakest", facts.weakest
    yield "light_on_back", facts.white.spot if facts.white else None
    yield "lamp_power", heat.worked_out
    yield "lamp_distance", heat.lamp_away
    yield "air_held", heat.held
    yield "night_power", heat.need
    yield "basking_surface_wanted", facts.surface
    yield "warm_air_wanted", facts.aim(Subject.WARM_AIR)
    yield "cool_air_wanted", facts.aim(Subject.COOL_AIR)
    yield "night_floor", heat.floor
    yield "light", facts.light
