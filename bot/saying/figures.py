"""How figures are shown: rounding and both units, here once for every language and renderer.

Lengths are shown to half an inch and to a centimetre, temperatures to a degree F and half a
degree C: finer digits would promise what no tape measure or lamp keeps.
"""

from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache
from math import ceil, floor, log10

from bot.facts import Bound, Figure, Kind
from bot.language.units import Units, convert

__all__ = ["Form", "Manners", "as_given", "joined", "number", "other_than", "said_figure"]

# A UV index is shown as it was given to within this share; below this it would be rounded away.
_NEARLY = 0.02
# Less than this of a step is a slip of the conversion.
_SLIP = 1e-6
_WEAK_UVI, _FAINT_UVI = 0.05, 0.3
_FINE_BELOW = 10.0
_SMALL = 3.0
_AS_GIVEN_PERCENT = 0.1

Form = str
"""``best range low high doubt``, and of a UV index or share ``given``: as finely as told."""


@dataclass(frozen=True, slots=True)
class Manners:
    """How a language writes figures: from its ``figures.ftl``, none of it in code."""

    decimal: str
    span: str
    both: str
    doubt: str


@dataclass(frozen=True, slots=True)
class _Scale:
    """A unit that is shown: its sign, its name to the conversion, its step, the one below ten."""

    sign: str
    si: str
    unit: str
    step: float
    fine: float


_SIGNS = {Kind.POWER: "W", Kind.SHARE: "%", Kind.LUX: "lx", Kind.LUMENS: "lm"}
# Brightness is told to two digits: no lamp and no meter of lux keeps a third.
_TWO_DIGITS = (Kind.LUX, Kind.LUMENS)
_TWO = {
    Kind.LENGTH: {
        Units.IN: _Scale("in", "m", "in", 0.5, 0.5),
        Units.CM: _Scale("cm", "m", "cm", 1.0, 0.5),
    },
    Kind.TEMPERATURE: {
        Units.IN: _Scale("°F", "degC", "degF", 1.0, 1.0),
        Units.CM: _Scale("°C", "degC", "degC", 0.5, 0.5),
    },
    Kind.DIFFERENCE: {
        Units.IN: _Scale("°F", "delta_degC", "delta_degF", 1.0, 1.0),
        Units.CM: _Scale("°C", "delta_degC", "delta_degC", 0.5, 0.5),
    },
}


def other_than(units: Units) -> Units:
    """Return the system that stands in brackets."""
    return Units.CM if units is Units.IN else Units.IN


def number(value: float, step: float = 1.0) -> str:
    """Return a value rounded to a step, without trailing zeros or a minus before zero."""
    text = f"{round(value / step) * step + 0.0:.3f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def as_given(value: float) -> str:
    """Return a UV index as it was given, such as ``0.75``: rounding never hides it."""
    enough = (s for s in (0.1, 0.01) if abs(round(value / s) * s - value) <= _NEARLY * abs(value))
    return number(value, next(enough, 0.001))


def joined(text: str, sign: str) -> str:
    """Return a number with its unit, which no line break parts."""
    return f"{text}\u00a0{sign}" if sign else text


def _up(steps: float) -> int:
    return ceil(steps - _SLIP)


def _down(steps: float) -> int:
    return floor(steps + _SLIP)


_LOW: dict[Bound, Callable[[float], int]] = {
    Bound.NEAREST: round,
    Bound.AT_LEAST: _up,
    Bound.AT_MOST: _down,
    Bound.INWARD: _up,
    Bound.START: _up,
}
_HIGH: dict[Bound, Callable[[float], int]] = {**_LOW, Bound.INWARD: _down, Bound.START: _down}
_BEST: dict[Bound, Callable[[float], int]] = {**_LOW, Bound.INWARD: round}
# Both ends of these are kept: what lies between is never shown beyond them.
_WITHIN = (Bound.INWARD, Bound.START)


def _rounded(value: float, scale: _Scale, rounding: Callable[[float], int]) -> float:
    shown = convert(value, scale.si, scale.unit)
    step = scale.fine if abs(shown) < _FINE_BELOW else scale.step
    return rounding(shown / step) * step


def _two(figure: Figure, form: Form, units: Units, manners: Manners) -> str:
    scale = _TWO[figure.kind][units]
    low = _rounded(figure.low, scale, _LOW[figure.bound])
    high = _rounded(figure.high, scale, _HIGH[figure.bound])
    best = _rounded(figure.best, scale, _BEST[figure.bound])
    high = max(low, high)
    if figure.bound in _WITHIN:
        best = min(max(best, low), high)
    texts = [number(value, 0.5) for value in _chosen(low, best, high, form)]
    return joined(_spanned(texts, form, manners), scale.sign)


def _one(figure: Figure, form: Form, manners: Manners) -> str:
    low, best, high = figure.low, figure.best, figure.high
    if figure.kind is Kind.UVI:
        hidden = 0.0 < low < _WEAK_UVI or 0.0 < best < _FAINT_UVI
        digits = 2 if hidden else 1
        given = form in ("given", "range", "low", "high")
        texts = [
            as_given(v) if given else f"{v:.{digits}f}" for v in _chosen(low, best, high, form)
        ]
        return _spanned(texts, form, manners)
    if figure.kind is Kind.TIME:
        return _spanned([_time(v) for v in _chosen(low, best, high, form)], form, manners)
    if figure.kind is Kind.ANGLE:
        halves = [f"{number(v, 0.5)}°" for v in _chosen(low, best, high, form)]
        return _spanned(halves, form, manners)
    if figure.kind is Kind.NUMBER:
        told = [_plain(v) for v in _chosen(low, best, high, form)]
        return _spanned(told if len(set(told)) > 1 else told[:1], form, manners)
    if figure.kind is Kind.SHARE:
        low, best, high = low * 100.0, best * 100.0, high * 100.0
        if form == "given":
            return joined(number(best, _AS_GIVEN_PERCENT).replace(".", manners.decimal), "%")
    whole = _to_two_digits if figure.kind in _TWO_DIGITS else round
    texts = [str(whole(value)) for value in _chosen(low, best, high, form)]
    return joined(_spanned(texts, form, manners), _SIGNS[figure.kind])


def _to_two_digits(value: float) -> int:
    """Return a value rounded to two digits, one of them below ten."""
    step = 10 ** max(0, floor(log10(value)) - 1) if value >= 1.0 else 1
    return round(value / step) * step


def _time(value_h: float) -> str:
    whole, rest = divmod(round(value_h * 60), 60)
    told = joined(str(whole), "h")
    return f"{told} {joined(f'{rest:02d}', 'min')}" if rest else told


def _plain(value: float) -> str:
    """Return a number without a unit: hundredths below 3, tenths below 10, whole above."""
    size = abs(value)
    return number(value, 0.01 if size < _SMALL else 0.1 if size < _FINE_BELOW else 1.0)


def _chosen(low: float, best: float, high: float, form: Form) -> tuple[float, ...]:
    return {
        "best": (best,),
        "given": (best,),
        "range": (low, high),
        "low": (low,),
        "high": (high,),
        "doubt": (best, low, high),
    }[form]


def _spanned(texts: list[str], form: Form, manners: Manners) -> str:
    texts = [text.replace(".", manners.decimal) for text in texts]
    if form == "doubt" and len(texts) > 1:
        return manners.doubt.format(*texts)
    return manners.span.format(*texts) if len(set(texts)) > 1 else texts[0]


@lru_cache(maxsize=8192)
def said_figure(
    figure: Figure, form: Form, units: Units, manners: Manners, *, alone: bool = False
) -> str:
    """Return a figure in a form; a kind with two systems in both, the asker's first."""
    if figure.kind not in _TWO:
        return _one(figure, form, manners)
    first = _two(figure, form, units, manners)
    if alone:
        return first
    return manners.both.format(first, _two(figure, form, other_than(units), manners))
