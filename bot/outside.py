"""One plain sentence for a figure beyond what the model may be believed for.

The ends are rounded inwards and the figure outwards, so that whoever types a printed end is
answered, and no figure is shown as if it were inside.
"""

from dataclasses import dataclass
from enum import StrEnum
from math import ceil, floor, isfinite

from bot.facts import Digits, Say
from bot.language.quantities import Units, convert
from calc.validity import OutsideModelError

__all__ = ["NAMED", "OutOfRange", "outside_told"]

# unit of the engine: for each system the sign, the unit of the conversion and the step shown
_BOTH = {
    "m": {Units.IN: ("in", "in", 0.5), Units.CM: ("cm", "cm", 0.5)},
    "degC": {Units.IN: ("°F", "degF", 1.0), Units.CM: ("°C", "degC", 0.5)},
    "K": {Units.IN: ("°F", "delta_degF", 1.0), Units.CM: ("°C", "delta_degC", 0.5)},
}
_FROM = {"degC": "degC", "K": "delta_degC", "m": "m"}
# Less than this of a step is a slip of the conversion and no reason to go to the next one.
_SLIP = 1e-6
# Finer than this nobody knows a light.
_STEPS = {"lx": 100.0, "lm": 10.0}
_DECIMALS = 3


# What the engine names that an asker can tell: each is a message.
NAMED = frozenset(
    (
        "uv-index",
        "uv-index-read",
        "low-end-of-the-uv-index",
        "high-end-of-the-uv-index",
        "air-beside-the-spot",
        "air-inside",
        "air-temperature",
        "room-air",
        "room-at-night",
        "wanted-surface",
        "wanted-rise",
        "rise-over-the-air",
        "heat-inside",
        "loss-below",
        "absorbed-heat",
        "lamp-distance",
        "lamp-power",
        "lamp-strength",
        "lamp-constant",
        "lamp-time",
        "change-of-power",
        "dimmer-setting",
        "watts-of-the-tube",
        "distance",
        "distance-from-a-tube-to-the-back",
        "tube-height",
        "tube-strength",
        "length",
        "length-of-the-tube",
        "lit-length",
        "number-of-tubes",
        "gap-between-the-tubes",
        "age",
        "screen-transmission",
        "number-of-readings",
        "height-of-the-back",
        "highest-platform",
        "end-of-the-platform",
        "front-of-the-platform",
        "top-of-the-platform",
        "platform-length",
        "platform-depth",
        "radius-of-the-heat-patch",
        "enclosure-length",
        "enclosure-depth",
        "enclosure-height",
        "thermometer-setting",
        "emissivity",
        "reading",
        "mirrored-temperature",
        "hours-of-light",
        "shortest-lights",
        "longest-lights",
        "latitude",
        "longitude",
        "year",
        "month",
        "lumens",
        "illuminance",
        "beam-angle",
        "lamp-watts",
        "panel-length",
        "panel-width",
        "plant-photons",
    )
)


class Ends(StrEnum):
    """Which ends the range has that the model may be believed in."""

    FROM = "from"
    ABOVE = "above"
    UP_TO = "up to"
    ABOVE_TO = "above, and up to"
    BOTH = "from, and up to"


@dataclass(frozen=True, slots=True)
class Outlying:
    """A figure with its sign, and in the other unit where it has two."""

    first: Digits
    sign: str
    second: Digits | None
    other: str

    @property
    def has_sign(self) -> bool:
        """Say whether there is a unit at all."""
        return bool(self.sign)


@dataclass(frozen=True, slots=True)
class OutOfRange:
    """A figure beyond what the model reaches, in the asker's units, and what works."""

    name: Say
    value: Say
    ends: Ends
    low: Say | None
    high: Say | None
    example: str


def outside_told(error: OutsideModelError, units: Units, example: str) -> Say:
    """Return what was out of range, the range in the asker's units, and what works."""
    value = _shown(error.value, error.unit, units, is_up=error.value > error.high)
    low = _shown(error.low, error.unit, units, is_up=True) if isfinite(error.low) else None
    high = _shown(error.high, error.unit, units, is_up=False) if isfinite(error.high) else None
    facts = OutOfRange(_named(error.name), value, _ends(error), low, high, example)
    return Say("refused-outside", facts)


def _named(name: str) -> Say:
    """Return what a figure is of; what only the engine knows is a figure."""
    key = name.lower().replace(" ", "-")
    return Say.of("beyond", key if key in NAMED else "a-value")


def _ends(error: OutsideModelError) -> Ends:
    if not isfinite(error.low):
        return Ends.UP_TO
    if not isfinite(error.high):
        return Ends.ABOVE if error.is_open_low else Ends.FROM
    return Ends.ABOVE_TO if error.is_open_low else Ends.BOTH


def _shown(value: float, unit: str, units: Units, *, is_up: bool) -> Say:
    """Return a figure in both units, each rounded up or down."""
    systems = _BOTH.get(unit)
    if not isfinite(value):
        return Say("refused-no-number")
    if systems is None:
        step = _STEPS.get(unit, 0.01)
        return Say("refused-figure", Outlying(_stepped(value, step, is_up=is_up), unit, None, ""))
    other = Units.CM if units is Units.IN else Units.IN
    (first, sign), (second, other_sign) = (
        (_stepped(convert(value, _FROM[unit], to), step, is_up=is_up), sign)
        for sign, to, step in (systems[units], systems[other])
    )
    return Say("refused-figure", Outlying(first, sign, second, other_sign))


def _stepped(value: float, step: float, *, is_up: bool) -> Digits:
    steps = value / step
    whole = ceil(steps - _SLIP) if is_up else floor(steps + _SLIP)
    return Digits(whole * step, _DECIMALS)
