"""The picture of readings: each thermometer against its range, also those still to be read."""

from bot.answers.figures import temperature
from bot.answers.heat_parts import Kept, target_text
from bot.answers.temps_words import missing_text, place_name
from bot.answers.verdicts import verdict_word
from bot.drawing import Axis, Gauge, Sheet, Tone
from bot.language.quantities import Units
from bot.questions.scales import temperatures
from bot.questions.uv.curves import shortened
from bot.reply import Picture
from calc.quantities import Quantity
from calc.setup.set_up import SetUp, Sign, Spot

__all__ = ["temps_picture"]

_MARGIN_K = 3.0
_TONES = {Sign.FINE: Tone.GOOD, Sign.CHANGE: Tone.BAD, Sign.CANNOT_TELL: Tone.DOUBTFUL}
_NOTE = "Amber: what is wanted. Diamond: what you read, with its doubt."


def temps_picture(set_up: SetUp, kept: Kept, units: Units) -> Picture:
    """Return every reading against what is wanted there, the most important first."""
    gauges = tuple(_gauge(spot, kept, units) for spot in set_up.spots)
    met = [end for g in gauges for ends in (g.wanted, g.reading) if ends for end in ends]
    low, high = (min(met), max(met)) if met else (20.0, 45.0)
    drawing = Sheet(
        title=f"Temperatures for {kept.whom}",
        subtitle="where each thermometer goes, what it reads, what is wanted",
        axis=Axis("Temperature", low - _MARGIN_K, high + _MARGIN_K, temperatures(units)),
        gauges=gauges,
        note=_NOTE,
    )
    told = (
        f"{g.label}: {'; '.join(p for p in (g.reading_text, g.wanted_text, g.verdict) if p)}."
        for g in gauges
    )
    return Picture(alt=shortened([f"Gauges: {drawing.title}.", *told]), drawing=drawing)


def _gauge(spot: Spot, kept: Kept, units: Units) -> Gauge:
    """Return the gauge of a place; a place that was not read has one where a range is wanted."""
    name, where = place_name(spot.quantity), f"Measure {missing_text((spot.quantity,))}"
    wanted_text = _wanted(spot.quantity, kept, units)
    if spot.value is None:
        return Gauge(name, where, spot.wanted, wanted_text, None, "", "not read yet")
    verdict, tone = _verdict(spot)
    return Gauge(
        name,
        where,
        spot.wanted,
        wanted_text,
        (spot.value.low, spot.value.high),
        f"reads {temperature(spot.value.best, units)}",
        verdict,
        tone,
    )


def _verdict(spot: Spot) -> tuple[str, Tone]:
    if spot.judged is None:
        return "no target known", Tone.PLAIN
    told = "keepers differ" if spot.keepers_differ else verdict_word(spot.judged)
    return told, _TONES[spot.sign]


def _wanted(place: Quantity, kept: Kept, units: Units) -> str:
    """Return what is wanted in words."""
    animal = kept.animal
    target = {
        Quantity.BASKING_SURFACE: animal.basking_surface_c,
        Quantity.COOL_AIR: animal.cool_air_c,
        Quantity.WARM_AIR: animal.warm_air_c,
        Quantity.NIGHT_AIR: animal.night_floor_c,
    }[place]
    if target is None:
        return ""
    first = "heat is wanted below" if place is Quantity.NIGHT_AIR else "wanted"
    return f"{first} {target_text(target, units)}"
