"""What is measured in an enclosure: one row a quantity, read by everything that judges one.

Dimension, what a figure may be at all, the usual instrument and its doubt, the step that its
display shows, and how much it matters. Limits of life are per animal, in ``limits``; targets are
per animal, in ``animals``.
"""

from dataclasses import dataclass
from enum import Enum, StrEnum, auto
from math import log

__all__ = ["Dimension", "Instrument", "Quantity", "QuantityRow", "row_of"]


class Quantity(StrEnum):
    """A thing that is measured, in order of importance."""

    UVI = "uvi"
    BASKING_SURFACE = "basking_surface"
    COOL_AIR = "cool_air"
    WARM_AIR = "warm_air"
    NIGHT_AIR = "night_air"
    WATER = "water"
    GRADIENT = "gradient"
    LIGHT_HOURS = "light_hours"
    HUMIDITY = "humidity"


class Dimension(Enum):
    """What kind of figure it is, and so how its doubt combines: a factor, or a difference."""

    UV_INDEX = auto()
    TEMPERATURE = auto()
    DIFFERENCE = auto()
    TIME = auto()
    SHARE = auto()

    @property
    def is_ratio(self) -> bool:
        """Whether doubt is a factor of the value rather than a difference."""
        return self is Dimension.UV_INDEX


class Instrument(Enum):
    """What such a figure is read with."""

    UV_METER = auto()
    INFRARED_GUN = auto()
    DIGITAL_PROBE = auto()
    WATER_THERMOMETER = auto()
    TWO_PROBES = auto()
    TIMER = auto()
    HYGROMETER = auto()


@dataclass(frozen=True, slots=True)
class QuantityRow:
    """One quantity: SI bounds, its instrument, that instrument's doubt and display step.

    ``doubt`` holds nine readings in ten: a half width in the quantity's unit, or the logarithm
    of a factor where the dimension is a ratio. ``step`` is one digit of the display, in the
    quantity's unit; half of it, or ``slack`` where that is more, outside a range still counts as
    inside: a range that was rounded for a sentence comes back. ``far`` is how far outside a
    range is far, in the unit or as a logarithm. ``is_judged`` is false for what is recognised
    and never judged here.
    """

    quantity: Quantity
    dimension: Dimension
    lowest: float
    highest: float
    instrument: Instrument
    doubt: float
    step: float
    far: float
    source: str
    slack: float = 0.0
    is_judged: bool = True


_FAHRENHEIT_STEP_K = 5.0 / 9.0
_COLDEST_C = -20.0


def _heat(
    quantity: Quantity,
    instrument: Instrument,
    doubt_k: float,
    highest_c: float = 80.0,
    lowest_c: float = _COLDEST_C,
    far_k: float = 8.0,
) -> QuantityRow:
    """Return the row of a temperature, all of which are shown in steps of 1 °F."""
    return QuantityRow(
        quantity,
        Dimension.TEMPERATURE,
        lowest_c,
        highest_c,
        instrument,
        doubt_k,
        _FAHRENHEIT_STEP_K,
        far_k,
        "thermometer_judgement",
    )


_GUN, _PROBE = Instrument.INFRARED_GUN, Instrument.DIGITAL_PROBE
_ROWS = (
    QuantityRow(
        Quantity.UVI,
        Dimension.UV_INDEX,
        0.0,
        100.0,
        Instrument.UV_METER,
        log(1.15),
        0.1,
        log(2.0),
        "uv_meter_judgement",
        # A careful reading repeats to this; a distance rounded to half an inch moves it as much.
        slack=log(1.05),
    ),
    _heat(Quantity.BASKING_SURFACE, _GUN, 2.0, 150.0),
    _heat(Quantity.COOL_AIR, _PROBE, 1.5),
    _heat(Quantity.WARM_AIR, _PROBE, 1.5),
    _heat(Quantity.NIGHT_AIR, _PROBE, 1.5, lowest_c=-30.0),
    _heat(Quantity.WATER, Instrument.WATER_THERMOMETER, 1.0, lowest_c=-2.0, far_k=6.0),
    QuantityRow(
        Quantity.GRADIENT,
        Dimension.DIFFERENCE,
        -60.0,
        120.0,
        Instrument.TWO_PROBES,
        2.0,
        _FAHRENHEIT_STEP_K,
        8.0,
        "thermometer_judgement",
    ),
    QuantityRow(
        Quantity.LIGHT_HOURS,
        Dimension.TIME,
        0.0,
        24.0,
        Instrument.TIMER,
        0.25,
        0.5,
        4.0,
        "timer_judgement",
    ),
    QuantityRow(
        Quantity.HUMIDITY,
        Dimension.SHARE,
        0.0,
        1.0,
        Instrument.HYGROMETER,
        0.05,
        0.01,
        0.3,
        "humidity_not_judged",
        is_judged=False,
    ),
)
_BY_QUANTITY = {row.quantity: row for row in _ROWS}


def row_of(quantity: Quantity) -> QuantityRow:
    """Return what holds for a quantity.

    Source: uv_meter_judgement; thermometer_judgement; timer_judgement; humidity_not_judged.

    Examples
    --------
    >>> row_of(Quantity.COOL_AIR).doubt
    1.5
    """
    return _BY_QUANTITY[quantity]
