"""The picture of readings: each thermometer against its range, also those still to be read."""

from dataclasses import dataclass

from bot.drawing import Axis, Gauge, Sheet, Tone
from bot.facts import Name, Say, Temp, degrees
from bot.layered import Teller
from bot.questions.heat.readings import Place
from bot.questions.heat.shared import aimed, has_best
from bot.questions.scales import temperatures
from bot.questions.shared import animal_name
from bot.reply import Picture
from calc.animal import Animal
from calc.heat.readings import target_at
from calc.judgement import Verdict
from calc.setup.set_up import SetUp, Sign, Spot

__all__ = ["GaugesTold", "gauges_picture", "gauges_told"]

_MARGIN_K = 3.0
_NOTHING_READ_C = (20.0, 45.0)
_TONES = {Sign.FINE: Tone.GOOD, Sign.CHANGE: Tone.BAD, Sign.CANNOT_TELL: Tone.DOUBTFUL}


@dataclass(frozen=True, slots=True)
class GaugeTold:
    """One thermometer: what it reads, what to aim for, and what that is; None: not known."""

    place: Place
    read: Temp | None
    wanted: Temp | None
    has_best: bool
    verdict: Verdict | None
    differ: bool
    ends: tuple[float, float] | None
    sign: Sign


@dataclass(frozen=True, slots=True)
class GaugesTold:
    """The thermometers of one animal, the most important first."""

    animal: Name
    gauges: tuple[GaugeTold, ...]


def gauges_told(set_up: SetUp, animal: Animal) -> GaugesTold:
    """Return the places of a set-up as the picture shows them."""
    return GaugesTold(animal_name(animal), tuple(_told(spot, animal) for spot in set_up.spots))


def _told(spot: Spot, animal: Animal) -> GaugeTold:
    target = target_at(spot.quantity, animal)
    return GaugeTold(
        place=Place[spot.quantity.name],
        read=None if spot.value is None else degrees(spot.value),
        wanted=None if target is None else aimed(target),
        has_best=target is not None and has_best(target),
        verdict=None if spot.judged is None else spot.judged.verdict,
        differ=spot.keepers_differ,
        ends=spot.wanted,
        sign=spot.sign,
    )


def gauges_picture(told: GaugesTold, teller: Teller) -> Picture:
    """Return every reading against what is aimed for there, the most important first."""
    gauges = tuple(_gauge(each, teller) for each in told.gauges)
    met = [end for g in gauges for ends in (g.wanted, g.reading) if ends for end in ends]
    low, high = (min(met), max(met)) if met else _NOTHING_READ_C
    axis = teller.say(Say("gauge-axis"))
    drawing = Sheet(
        title=teller.say(Say("gauge-title", told)),
        subtitle=teller.say(Say("gauge-subtitle")),
        axis=Axis(axis, low - _MARGIN_K, high + _MARGIN_K, temperatures(teller.units)),
        gauges=gauges,
        note=teller.say(Say("gauge-note")),
    )
    alt = (Say("gauge-alt", told), *(Say("gauge-told", each) for each in told.gauges))
    return Picture(alt=" ".join(map(teller.say, alt)), drawing=drawing)


def _gauge(told: GaugeTold, teller: Teller) -> Gauge:
    """Return the gauge of a place; one that was not read has its range where one is known."""
    read, judged = told.read, told.verdict is not None
    return Gauge(
        label=teller.say(Say("gauge-label", told)),
        where=teller.say(Say("gauge-where", told)),
        wanted=told.ends,
        wanted_text=teller.say(Say("gauge-wanted", told)) if told.wanted else "",
        reading=None if read is None else (read.low, read.high),
        reading_text="" if read is None else teller.say(Say("gauge-read", told)),
        verdict=teller.say(Say("gauge-verdict", told)),
        tone=_TONES[told.sign] if read is not None and judged else Tone.PLAIN,
    )
