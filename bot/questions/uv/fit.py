"""What readings of a lamp show together: how far they hold, what is odd. Words: ``meter.ftl``."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from bot.facts import Length, Number, Say, Share, Uvi, metres, plain_number, share, uvi
from bot.language.readings import PlacedReading
from bot.layered import Row, Table
from bot.questions.uv.readings import LampRead, readings_rows
from calc.uv.meter import METER_DOUBT, MeterFit
from calc.uv.point import Shape
from calc.uv.residuals import Pattern

__all__ = ["FitTold", "ReadingMade", "fit_rows", "fit_table", "fit_told"]


@dataclass(frozen=True, slots=True)
class ReadingMade:
    """One reading beside what the lamp by all of them gives there."""

    at: Length
    shows: Uvi
    by_all: Uvi
    used: bool


@dataclass(frozen=True, slots=True)
class FitTold:
    """What all readings show; ``others_only``: one of them was left out."""

    pattern: Pattern
    point: bool
    contradicts: bool
    fixed: Share
    times: Number
    meter_doubt: Share
    suspects: tuple[Say, ...]
    others_only: bool
    readings: tuple[ReadingMade, ...]


def fit_told(fit: MeterFit, typed: Sequence[PlacedReading]) -> FitTold:
    """Return what all readings show."""
    return FitTold(
        pattern=fit.pattern,
        point=fit.shape is Shape.POINT,
        contradicts=fit.contradicts,
        fixed=share(fit.fit.factor - 1.0),
        times=plain_number(round(fit.fit.factor, 1)),
        meter_doubt=share(METER_DOUBT.factor - 1.0),
        suspects=tuple(Say.by("meter-suspect", suspect) for suspect in fit.suspects),
        others_only=fit.set_aside is not None,
        readings=tuple(_made(fit, typed)),
    )


def _made(fit: MeterFit, typed: Sequence[PlacedReading]) -> Iterator[ReadingMade]:
    for i, (one, ratio) in enumerate(zip(typed, fit.ratios, strict=True)):
        at, by_all = metres(one.distance.low), uvi(one.value / ratio)
        yield ReadingMade(at, uvi(one.value), by_all, i != fit.set_aside)


def fit_rows(told: FitTold, read: LampRead) -> Iterator[Row]:
    """Yield how far the readings hold, what is odd, and what was set aside."""
    label = Say("meter-label-others" if told.others_only else "meter-label-readings")
    yield Row(label, Say.by("meter-pattern", told.pattern, told))
    yield from readings_rows(read)
    if told.suspects:
        yield Row(Say("meter-label-suspects"), Say("meter-suspects", told))
    yield Row(Say("meter-label-sure"), Say("meter-sure", told))


def fit_table(told: FitTold) -> Table:
    """Return every reading beside what the lamp by all of them gives there."""
    return Table(
        columns=(
            Say("meter-column-at"),
            Say("meter-column-read"),
            Say("meter-column-all"),
            Say("meter-column-used"),
        ),
        rows=tuple(
            (
                Say("meter-at", one),
                Say("meter-read", one),
                Say("meter-by-all", one),
                Say("meter-used", one),
            )
            for one in told.readings
        ),
    )
