"""When the lights go on and off. Words: ``words/<language>/hours.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.command import Command
from bot.facts import Name, Say, Says
from bot.layered import Brief, Care, Layered, Row, Table, Weight
from bot.preferences import Context
from bot.queries.day import Home, HoursQuery
from bot.questions.animals import animal_asked
from bot.questions.heat.day_picture import day_picture
from bot.questions.heat.hours_flat import FlatHours, flat_hours
from bot.questions.heat.hours_picture import year_picture
from bot.questions.heat.hours_seasons import Seasons, seasons
from bot.questions.heat.shared import HEAT_CARE
from bot.questions.shared import animal_name
from bot.reply import Picture
from calc.judgement import Verdict

__all__ = ["HOURS", "FlatHours", "HomeUnknown", "light_hours", "tell"]

_GUIDE = ("day-length", "nights")


@dataclass(frozen=True, slots=True)
class HomeUnknown:
    """An animal of which nobody told where it comes from."""

    animal: Name


def light_hours(query: HoursQuery, context: Context) -> FlatHours | Seasons | HomeUnknown:
    """Work out a flat day, or the light of each month where a latitude is given."""
    if query.latitude is None:
        return flat_hours(query, animal_asked(query.animal, context), context)
    if not isinstance(query.latitude, Home):
        # A place has its seasons whoever lives there: the animal is not asked for.
        return seasons(query, None)
    animal = animal_asked(query.animal, context)
    if animal.home_latitude_deg is None:
        return HomeUnknown(animal_name(animal))
    return seasons(query, animal)


def tell(facts: FlatHours | Seasons | HomeUnknown) -> Layered:
    """Tell the hours, then how to set the timer."""
    if isinstance(facts, FlatHours):
        return _flat_told(facts)
    return _seasons_told(facts) if isinstance(facts, Seasons) else _home_unknown_told(facts)


def _home_unknown_told(facts: HomeUnknown) -> Layered:
    say = Says("hours", facts)
    return Layered(
        command="hours",
        status="problem",
        title=say("no-home-title"),
        brief=Brief(head=say("no-home"), steps=(say("no-home-do"),)),
        steps=(say("no-home-do"),),
        guide=_GUIDE,
    )


def _flat_told(facts: FlatHours) -> Layered:
    say = Says("hours", facts)
    brief = _flat_brief(facts, say)
    told = brief.head, *brief.range
    return Layered(
        command="hours",
        title=say("title"),
        brief=brief,
        steps=(
            *([say("step-morning")] if facts.at_night else []),
            say("step-set"),
            *_timer_steps(say),
            say("step-seasons"),
        ),
        numbers=tuple(_flat_numbers(facts, say)),
        why=(say("why-flat"),),
        care=_care(say),
        values=(("light", facts.light), ("light_told", facts.lit if facts.told else None)),
        guide=_GUIDE,
        sources=facts.sources,
        picture=lambda teller: Picture.later(day_picture, facts, told, teller),
        alarms=facts.alarms,
    )


def _flat_brief(facts: FlatHours, say: Says) -> Brief:
    if facts.at_night:
        awake = say("awake" if facts.basking else "asleep")
        lit = () if facts.verdict is None else (say("lit-at-night"),)
        return Brief(head=say("night"), range=(awake, *lit), steps=(say("do-morning"),))
    if not facts.told:
        return Brief(head=say("simple"), range=(say("times"),), steps=(say("do-set"),))
    if facts.verdict is None:
        return Brief(head=say("unjudged"), range=(say("no-target"),), steps=(say("do-twelve"),))
    fine = facts.verdict is Verdict.FINE
    steps = (say("do-keep" if fine else "do-twelve"),)
    return Brief(head=say.by("judged", facts.verdict), range=(say("aim"),), steps=steps)


def _timer_steps(say: Says) -> tuple[Say, ...]:
    return say("step-one-timer"), say("step-dark")


def _care(say: Says) -> tuple[Care, ...]:
    # No lamp is hotter for it: the guard is told where heat is asked about.
    return (Care(say("care"), say("care-short"), Weight.STEP), *HEAT_CARE[1:])


def _flat_numbers(facts: FlatHours, say: Says) -> Iterator[Row]:
    yield Row(say("label-simple"), say("simple-known"))
    if facts.told:
        yield Row(say("label-told"), say("told"))
    if facts.target is not None and facts.target_is_range:
        yield Row(say("label-target"), say("target"))
    if facts.unused:
        yield Row(say("label-unused"), say("unused-flat"))


def _seasons_told(facts: Seasons) -> Layered:
    say = Says("hours", facts)
    return Layered(
        command="hours",
        title=say("title-home" if facts.home_of else "title-year"),
        brief=Brief(
            head=say("steady" if facts.steady else "seasons"),
            range=(say("just-as-good"), *_turned(facts, say)),
            assumed=() if facts.zone else (say("no-zone-short"),),
            steps=(say("do-month"),),
        ),
        steps=(say("step-month"), *_timer_steps(say), say("step-rest")),
        numbers=tuple(_seasons_numbers(facts, say)),
        table=_table(facts),
        care=_care(say),
        values=tuple((f"light_{n:02d}", lit.lit) for n, lit in enumerate(facts.months, 1)),
        guide=_GUIDE,
        sources=facts.sources,
        picture=lambda teller: Picture.later(year_picture, facts, teller),
    )


def _turned(facts: Seasons, say: Says) -> Iterator[Say]:
    """Yield in whose summer the months stand, where that is not plain."""
    if facts.by_itself:
        yield say("turned-short")
    elif facts.south and not facts.turned:
        yield say("south-short")


def _seasons_numbers(facts: Seasons, say: Says) -> Iterator[Row]:
    yield Row(say("label-latitude"), say("latitude"))
    yield Row(say("label-bound"), say("bound"))
    yield Row(say("label-day"), say("day-meant"))
    yield Row(say("label-clock"), say("clock" if facts.zone else "no-zone"))
    if facts.turned or facts.south:
        yield Row(say("label-seasons"), say("turned" if facts.turned else "south"))
    if facts.unused:
        yield Row(say("label-unused"), say("unused-seasons"))
    if facts.polar:
        yield Row(say("label-polar"), say("polar"))


def _table(facts: Seasons) -> Table:
    columns = (
        Say("hours-column-month"),
        Say("hours-column-lit"),
        Say("hours-column-on"),
        Say("hours-column-off"),
        Say("hours-column-outside"),
    )
    rows = tuple(
        (
            lit.month,
            Say("hours-cell-lit", lit),
            Say("hours-cell-on", lit),
            Say("hours-cell-off", lit),
            Say("hours-cell-outside", lit),
        )
        for lit in facts.months
    )
    return Table(columns, rows)


HOURS = Command(
    name="hours",
    query=HoursQuery,
    facts=light_hours,
    tell=tell,
    examples=(
        "hours animal:bearded dragon",
        "hours animal:corn snake latitude:home zone:America/Chicago year:2026",
        "hours latitude:30S zone:Europe/London months:turned",
    ),
    guide=_GUIDE,
)
