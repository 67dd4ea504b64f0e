"""A day under the lamp beside a day of sun, and how long people may stay in its light.

Words: ``words/<language>/dose.ftl``.
"""

from collections.abc import Iterator

from bot.command import Command
from bot.facts import Hours, Number, Say, Says, Uvi
from bot.layered import Brief, Care, Layered, Row, Weight
from bot.queries.uv_depth import DoseQuery
from bot.questions.uv.dose_facts import Dose, Waves, dose
from bot.questions.uv.dose_picture import dose_picture
from bot.questions.uv.readings import off_told, read_again, readings_rows
from bot.reply import Picture

__all__ = ["DOSE", "tell"]


def tell(facts: Dose) -> Layered:
    """Tell the day as time in the sun, then how long people may stay."""
    say = Says("dose", facts)
    head, stay = say.by("head", facts.noon), _stay(facts, say)
    return Layered(
        command="dose",
        title=say("title"),
        brief=Brief(
            head=head,
            range=(stay,),
            assumed=(say.by("assumed", facts.waves),),
            steps=(say("do-shade"), say("do-off")),
        ),
        steps=(*_again(facts), say("step-shade"), say("step-off")),
        numbers=tuple(_numbers(facts, say)),
        why=tuple(_why(facts, say)),
        care=(
            Care(say("care-look"), Say("care-eyes-short"), Weight.STEP),
            Care(say("care-whom")),
            Care(say.by("care-waves", facts.waves)),
        ),
        values=tuple(_values(facts)),
        guide=("uv-and-your-eyes", "sun-and-shade", "reading-a-uv-meter"),
        sources=facts.sources,
        picture=lambda teller: Picture.later(dose_picture, facts, (head, stay), teller),
        alarms=facts.alarms,
    )


def _stay(facts: Dose, say: Says) -> Say:
    if facts.waves is Waves.OTHER:
        return say("people-unknown")
    return Say.by("dose-people", facts.people.stay, facts.people)


def _again(facts: Dose) -> Iterator[Say]:
    if facts.read is not None:
        yield from read_again(facts.read)


def _numbers(facts: Dose, say: Says) -> Iterator[Row]:
    yield Row(say("label-tube"), say("tube"))
    if facts.read is not None:
        yield from readings_rows(facts.read)
    sun = facts.sun
    yield Row(say("label-beside"), say.by("beside", facts.noon))
    if sun is not None:
        if sun.share is not None:
            yield Row(say("label-clear-day"), Say("dose-share", sun))
        if sun.times is not None:
            yield Row(say("label-clear-day"), Say("dose-times", sun))
        yield Row(say("label-sun"), Say("dose-sun", sun))
    yield Row(say("label-people"), Say.by("dose-limit", facts.people.stay, facts.people))
    if facts.at_arm is not None:
        at_arm = facts.at_arm
        yield Row(say("label-arm"), Say("dose-arm", at_arm))
        yield Row(say("label-at-arm"), Say.by("dose-limit", at_arm.stay, at_arm))


def _why(facts: Dose, say: Says) -> Iterator[Say]:
    if facts.read is not None:
        yield from off_told(facts.read.off)
    yield say("why-most")
    if facts.by_kept:
        yield say("why-kept")
    if facts.length_assumed:
        yield say("why-length")


def _values(facts: Dose) -> Iterator[tuple[str, Number | Hours | Uvi]]:
    yield "dose_sed", facts.dose
    yield "people_hours_at_spot", facts.people.allowed
    if facts.at_arm is not None:
        yield "uvi_at_arm", facts.at_arm.at
        yield "people_hours_at_arm", facts.at_arm.allowed
    if facts.sun is not None:
        yield "sun_noon_uvi", facts.sun.noon_uvi
        yield "sun_dose_sed", facts.sun.dose


DOSE = Command(
    name="dose",
    query=DoseQuery,
    facts=dose,
    tell=tell,
    examples=(
        "dose uvi:4 hours:4",
        "dose uvi:4 hours:10 distance:14in latitude:27S month:June",
    ),
    guide=("uv-and-your-eyes", "sun-and-shade"),
)
