"""The picture of a day that is the same all year: when the lights are on, and the dark night."""

from datetime import time

from bot.drawing import Axis, Mark, Range, Stretch, StretchKind, Ticks, Timeline, TimeRow, Tone
from bot.facts import Say, Says
from bot.layered import Teller
from bot.questions.heat.hours_flat import FlatHours
from bot.reply import Picture
from calc.judgement import Verdict

__all__ = ["day_picture"]

_DAY_H = 24.0


def day_picture(facts: FlatHours, told: tuple[Say, ...], teller: Teller) -> Picture:
    """Return a day as a bar for each lamp; ``told`` are the verdict and what follows on it."""
    say = Says("hours", facts)
    on, off = _hour(facts.on), _hour(facts.off)
    lit, dark = _parts(on, off) or ((0.0, _DAY_H),), _parts(off, on)
    night = teller.say(say("picture-dark"))
    drawing = Timeline(
        over=teller.say(say("title")),
        title=teller.say(told[0]),
        tone=_tone(facts),
        subtitle=" ".join(map(teller.say, told[1:])),
        axis=Axis("", 0.0, _DAY_H, ticks=Ticks.CLOCK),
        rows=tuple(
            TimeRow(tuple(Stretch(kind, *part) for part in lit), teller.say(name))
            for kind, name in _lamps(facts)
        ),
        marks=(
            Mark(on, teller.say(say("picture-on"))),
            Mark(off, teller.say(say("picture-off"))),
        )
        if dark
        else (),
        nights=tuple(Range(*part, night) for part in dark),
        note=teller.say(say("step-dark")),
    )
    words = (say("picture-alt-day"), *told, say("step-dark"))
    return Picture(alt=" ".join(map(teller.say, words)), drawing=drawing)


def _hour(moment: time) -> float:
    return moment.hour + moment.minute / 60.0


def _parts(first: float, last: float) -> tuple[tuple[float, float], ...]:
    """Return what lies from one hour to another within a day, past midnight in two parts."""
    if first <= last:
        return ((first, last),) if first < last else ()
    return tuple(part for part in ((0.0, last), (first, _DAY_H)) if part[0] < part[1])


def _lamps(facts: FlatHours) -> tuple[tuple[StretchKind, Say], ...]:
    """Return what is lit: UV and heat for who basks."""
    if not facts.basking:
        return ((StretchKind.LIGHT, Say("hours-picture-lights")),)
    return (StretchKind.UV, Say("sketch-tube")), (StretchKind.HEAT, Say("sketch-lamp"))


def _tone(facts: FlatHours) -> Tone:
    if facts.alarms:
        return Tone.BAD
    if facts.at_night:
        return Tone.DOUBTFUL
    if facts.verdict is None:
        return Tone.PLAIN
    if facts.verdict is Verdict.FINE:
        return Tone.GOOD
    return Tone.BAD if facts.verdict.wants_change else Tone.DOUBTFUL
