"""The picture of readings: each thermometer against its range, also those still to be read."""

from collections.abc import Mapping

from bot.answers.curves import shortened
from bot.answers.figures import temperature
from bot.answers.heat_parts import Kept, target_text
from bot.answers.scales import temperatures
from bot.answers.temps_words import missing_text, place_name
from bot.answers.verdicts import verdict_word
from bot.drawing import Axis, Gauge, Sheet, Tone
from bot.language.quantities import Units
from bot.reply import Picture
from calc.heat.judge import Judgement
from calc.heat.readings import PLACES, Finding
from calc.quantities import Quantity
from calc.uncertainty import Estimate

__all__ = ["temps_picture"]

_MARGIN_K = 3.0
_NOTE = "Amber: what is wanted. Diamond: what you read, with its doubt."


def temps_picture(
    judgement: Judgement, read: Mapping[Quantity, Estimate], kept: Kept, units: Units
) -> Picture:
    """Return every reading against what is wanted there, the most important first."""
    findings = {finding.place: finding for finding in judgement.findings}
    gauges = tuple(
        gauge
        for place in PLACES
        if (gauge := _gauge(place, findings.get(place), read.get(place), kept, units))
    )
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


def _gauge(
    place: Quantity, finding: Finding | None, read: Estimate | None, kept: Kept, units: Units
) -> Gauge | None:
    """Return the gauge of a place; None for one that was not read and has no target."""
    wanted, wanted_text = _wanted(place, kept, units)
    where = f"Measure {missing_text((place,))}"
    if finding is None:
        if wanted is None:
            return None
        return Gauge(place_name(place), where, wanted, wanted_text, None, "", "not read yet")
    verdict, tone = _verdict(finding)
    return Gauge(
        place_name(place),
        where,
        wanted,
        wanted_text,
        (read.low, read.high) if read else None,
        f"reads {temperature(finding.reading_c, units)}",
        verdict,
        tone,
    )


def _verdict(finding: Finding) -> tuple[str, Tone]:
    if finding.judged is None:
        return "no target known", Tone.PLAIN
    if finding.keepers_differ:
        return "keepers differ", Tone.DOUBTFUL
    tone = Tone.DOUBTFUL if finding.is_unsure else Tone.GOOD if finding.is_fine else Tone.BAD
    return verdict_word(finding.judged), tone


def _wanted(place: Quantity, kept: Kept, units: Units) -> tuple[tuple[float, float] | None, str]:
    """Return the range [degC] that counts as right, and the same in words."""
    animal = kept.animal
    target = {
        Quantity.BASKING_SURFACE: animal.basking_surface_c,
        Quantity.COOL_AIR: animal.cool_air_c,
        Quantity.WARM_AIR: animal.warm_air_c,
        Quantity.NIGHT_AIR: animal.night_floor_c,
    }[place]
    if target is None:
        return None, ""
    if place is not Quantity.NIGHT_AIR:
        return (target.low, target.high), f"wanted {target_text(target, units)}"
    day = animal.cool_air_c
    # A night is right from where it needs no heat up to the cool end's day.
    ends = (target.high, day.high) if day else None
    return ends, f"heat is wanted below {target_text(target, units)}"
