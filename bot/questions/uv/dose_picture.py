"""A day under the lamp beside the sun, and how soon people reach their limit, as bars."""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.drawing import Axis, Ladder, Rung, Tone
from bot.facts import Number, Say, Says, plain_number
from bot.layered import Teller
from bot.questions.uv.curves import alt_of
from bot.questions.uv.dose_facts import STRONG_UVI, Dose, People, Waves
from bot.reply import Picture
from calc.uv.dose import dose_sed

__all__ = ["SunHour", "dose_picture"]

_BEYOND = 1.06


@dataclass(frozen=True, slots=True)
class SunHour:
    """What an hour of a strong midday sun gives [SED]."""

    dose: Number


def dose_picture(facts: Dose, told: tuple[Say, Say], teller: Teller) -> Picture:
    """Return the bars; ``told`` are the head of the answer and what it says of people."""
    say = Says("dose", facts)
    rungs = tuple(_rungs(facts, say, teller))
    most = max(rung.high for rung in rungs)
    drawing = Ladder(
        over=teller.say(say("title")),
        title=teller.say(told[0]),
        tone=Tone.PLAIN,
        subtitle=teller.say(told[1]),
        axis=Axis(teller.say(say("picture-axis")), 0.0, _BEYOND * max(most, 1.0)),
        wanted=None,
        rungs=rungs,
        note=teller.say(say.by("picture-note", facts.waves)),
    )
    words = (
        say("picture-alt"),
        *told,
        say("tube"),
        *_alt(facts, say),
        say.by("picture-note", facts.waves),
    )
    alt = alt_of(map(teller.say, words))
    return Picture(alt=alt, drawing=drawing)


def _rungs(facts: Dose, say: Says, teller: Teller) -> Iterator[Rung]:
    def words(label: Say, dose: Number, told: Say, low: float = 0.0) -> Rung:
        texts = teller.say(label), teller.say(told)
        return Rung(texts[0], low, dose.best, dose.high, texts[1], Tone.PLAIN)

    yield words(say("label-tube"), facts.dose, say("picture-lamp"))
    if facts.sun is None:
        hour = SunHour(plain_number(dose_sed(STRONG_UVI, 1.0)))
        yield words(say("picture-hour"), hour.dose, Say("dose-sun-gives", hour))
    else:
        sun = facts.sun
        yield words(say("label-clear-day"), sun.dose, Say("dose-sun-gives", sun), sun.dose.low)
    if facts.waves is Waves.OTHER:
        return
    yield _person(say("label-people"), facts.people, teller)
    if facts.at_arm is not None:
        yield _person(say("label-at-arm"), facts.at_arm, teller)


def _person(label: Say, people: People, teller: Teller) -> Rung:
    """Return what people have got by the time that is told them."""
    got = dose_sed(people.at.best, people.time.best)
    told = Say.by("dose-picture", people.stay, people)
    return Rung(teller.say(label), 0.0, got, got, teller.say(told), Tone.PLAIN)


def _alt(facts: Dose, say: Says) -> Iterator[Say]:
    yield say.by("beside", facts.noon) if facts.sun is None else Say("dose-sun", facts.sun)
    if facts.waves is not Waves.OTHER:
        yield Say.by("dose-limit", facts.people.stay, facts.people)
