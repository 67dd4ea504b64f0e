"""What is told of the map of the UV. Words: ``words/<language>/section.ftl``."""

from collections.abc import Iterator

from bot.facts import Say, Says
from bot.layered import Brief, Care, Layered, Row, Table
from bot.questions.setup.section_facts import Section
from bot.questions.setup.section_mends import SectionMend
from bot.questions.setup.section_picture import section_picture
from bot.questions.setup.sun import sun_rows
from bot.questions.uv.readings import read_again, readings_rows
from bot.questions.uv.shared import EYES_CARE, SHADE_CARE, between_row, wish_assumed, wish_rows
from bot.questions.uv.tubes import Assumed, length_value, tube_rows
from bot.reply import Picture

__all__ = ["tell_section"]

_GUIDE = ("sun-and-shade", "uv-and-heat-together", "screens")


def tell_section(facts: Section) -> Layered:
    """Tell whether the platform has its UV, and the first thing to move."""
    say = Says("section", facts)
    return Layered(
        command="section",
        title=say("title"),
        brief=_brief(facts, say),
        steps=tuple(_steps(facts, say)),
        numbers=tuple(_numbers(facts, say)),
        table=_table(facts, say),
        why=facts.why,
        care=(EYES_CARE, SHADE_CARE, Care(say("care-walls"))),
        values=(
            ("platform_in_range", facts.in_range),
            ("uvi_strongest", facts.most),
            ("uvi_weakest", facts.least),
            ("shade_share", facts.shade_share),
            ("heat_in_range", facts.heat_in_range),
            ("light", facts.white.spot if facts.white else None),
            length_value(facts.tube),
            ("platform_top", facts.top),
        ),
        guide=_GUIDE,
        sources=facts.sources,
        picture=lambda teller: Picture.later(section_picture, facts, teller),
        alarms=facts.alarms,
        set_up=facts.set_up,
    )


def _brief(facts: Section, say: Says) -> Brief:
    assumed = wish_assumed(facts.wish)
    if facts.assumed is not Assumed.NOTHING:
        assumed += (say.by("assumed", facts.assumed),)
    return Brief(
        head=say.by("head", facts.lit),
        range=(say("most"), say.by("shade", facts.shade)),
        assumed=assumed,
        steps=tuple(_first(facts, say)),
    )


def _first(facts: Section, say: Says) -> Iterator[Say]:
    if facts.is_hopeless:
        yield say("do-plan")
    elif facts.mends and not facts.mends[0].hide:
        first = facts.mends[0]
        yield from first.briefly[:-1]
        yield Say("section-do-then", first)
    else:
        yield say("do-meter")


def _steps(facts: Section, say: Says) -> Iterator[Say]:
    yield from read_again(facts.by_readings)
    for mend in facts.mends:
        yield _mend(mend)
    if facts.overlap is not None and any(mend.warms_anew for mend in facts.mends):
        yield say("step-warmth")
    if facts.is_hopeless:
        yield say("step-plan")
    yield from (life.told for life in facts.lives)
    yield say("step-meter")
    if facts.may_be_longer:
        yield Say("tubes-ask-length", facts.tube)


def _mend(mend: SectionMend) -> Say:
    return Say("section-step-hide" if mend.hide else "section-step-mend", mend)


def _numbers(facts: Section, say: Says) -> Iterator[Row]:
    yield from wish_rows(facts.wish)
    yield from tube_rows(facts.tube)
    yield between_row(facts.between)
    yield from readings_rows(facts.by_readings)
    yield Row(say("label-placed"), say("placed"))
    yield Row(say("label-platform"), say("in-range"))
    yield Row(say("label-strongest"), Say("section-place", facts.strongest))
    yield Row(say("label-weakest"), Say("section-place", facts.weakest))
    yield Row(say("label-shade"), say("shaded"))
    yield Row(say("label-heat"), say("no-lamp" if facts.overlap is None else "heat"))
    yield from sun_rows(facts.sun, facts.white)
    yield Row(say("label-end"), say("end"))
    yield Row(say("label-taken"), say("taken"))


def _table(facts: Section, say: Says) -> Table:
    view = facts.view
    columns = tuple(Say("section-long", along) for along in view.along)
    rows = (
        (Say("section-height", row[0]), *(Say("section-cell", at) for at in row))
        for row in view.rows
    )
    return Table((say("column-height"), *columns), tuple(rows))
