"""The kinds of option a question may have: what reads it, and what a front may offer for it."""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, date, datetime
from typing import Annotated, Any

from pydantic import BeforeValidator, ValidationInfo

from bot.facts import Say
from bot.language.dates import read_age
from bot.language.errors import NotUnderstoodError
from bot.language.lamps import (
    Fixture,
    OtherLamp,
    TubeStrength,
    read_fixture,
    read_tube,
    read_tube_length,
)
from bot.language.light_lamps import LightLamp, read_white_lamps
from bot.language.quantities import (
    Measure,
    Units,
    read_air_temperature,
    read_convertible,
    read_duration,
    read_length,
    read_number,
    read_percent,
    read_power,
    read_setting,
    read_surface_temperature,
    single,
)
from bot.language.readings import (
    DatedReading,
    PlacedReading,
    read_dated_readings,
    read_placed_readings,
    read_uvi_range,
)
from bot.language.screens import Pane, Passes, Screen, read_between
from bot.language.sides import LONGEST
from bot.language.sizes import Size, cross_pattern, read_size
from bot.language.skies import read_latitude, read_month
from bot.language.unsure import NOT_SURE, Unsure, read_some_mesh, read_unsure
from bot.language.uv_lamps import UvLamp, read_uv_lamp
from bot.language.wanted import UpTo
from bot.queries.query import Option, reading
from bot.saved.group import NOTHING_OWN, Own, OwnLamp

__all__ = [
    "Age",
    "AirRange",
    "AirTemperature",
    "AnimalName",
    "AnimalNames",
    "CommandName",
    "Convertible",
    "DatedReadings",
    "Duration",
    "EnclosureLength",
    "EnclosureSize",
    "FixtureIfKnown",
    "FixtureOption",
    "Hours",
    "Latitude",
    "Length",
    "Month",
    "OwnTube",
    "PageName",
    "Percent",
    "Power",
    "Readings",
    "ScreenIfKnown",
    "ScreenOption",
    "Setting",
    "SurfaceRange",
    "SurfaceTemperature",
    "Text",
    "Tube",
    "TubeClass",
    "TubeCount",
    "TubeLength",
    "UvLampKind",
    "UvLampOrOwn",
    "UviRange",
    "WhiteLamps",
    "kind_of",
    "measured",
    "names_a_class",
    "screen_named",
]

_MOST_TUBES = 4
_TUBES_WANTED = Say("wanted-tubes", UpTo(_MOST_TUBES))
_MOST_FEET = 10
_LONGEST_NUMBER = 4


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnTube(TubeStrength):
    """A lamp of the group's own, named where a strength stands otherwise."""

    lamp: OwnLamp


def measured(read: Callable[[str, Units | None], Any]) -> BeforeValidator:
    """Return a validator that gives a bare number the unit of the validation context."""

    def validate(value: object, info: ValidationInfo) -> object:
        if not isinstance(value, str):
            return value
        bare: Units | None = (info.context or {}).get("units")
        return read(value, bare)

    return BeforeValidator(validate)


def _dated(value: object, info: ValidationInfo) -> object:
    """Read readings with dates; today is the asker's own day, or that of Greenwich."""
    if not isinstance(value, str):
        return value
    today: date | None = (info.context or {}).get("today")
    return read_dated_readings(value, today or datetime.now(UTC).date())


def _one(read: Callable[[str, Units | None], Measure]) -> BeforeValidator:
    """Return a validator that takes one value; of a range that was heard it takes the middle."""

    def validate(value: object, info: ValidationInfo) -> object:
        if isinstance(value, Measure):
            return value.narrowed()
        bare: Units | None = (info.context or {}).get("units")
        return single(read(value, bare)) if isinstance(value, str) else value

    return BeforeValidator(validate)


def _unitless(read: Callable[[str], Measure]) -> BeforeValidator:
    """Return a validator that takes one value, which no setting gives its unit."""
    return _one(lambda text, _: read(text))


def _read_enclosure_length(text: str, bare: Units | None) -> Measure | Size:
    """Read the length of an enclosure, alone or in a whole size."""
    if len(cross_pattern().split(text[:LONGEST])) > 1:
        return read_size(text, bare)
    try:
        return single(read_length(text, bare))
    except NotUnderstoodError as error:
        # No home is ten inches long: a bare number up to ten was meant in feet.
        number = text.strip().lstrip("0")[:_LONGEST_NUMBER]
        number = number if number.isascii() and number.isdecimal() else "4"
        unit = "ft" if int(number) <= _MOST_FEET else "in"
        raise NotUnderstoodError(text, error.accepted, f"{number}{unit}") from error


def _read_hours(text: str) -> Measure:
    """Read hours of a day; a bare number is hours."""
    try:
        return single(read_duration(text, "h"))
    except NotUnderstoodError as error:
        raise NotUnderstoodError(text, error.accepted, "10 hours") from error


def _own(info: ValidationInfo) -> Own:
    own: Own = (info.context or {}).get("own", NOTHING_OWN)
    return own


def _read_tubes(value: object) -> object:
    number = read_number(value, _TUBES_WANTED, "2") if isinstance(value, str) else value
    if not isinstance(number, int | float) or number not in range(1, _MOST_TUBES + 1):
        raise NotUnderstoodError(str(value), _TUBES_WANTED, "2")
    return int(number)


def _tube(value: object, info: ValidationInfo) -> object:
    if not isinstance(value, str):
        return value
    lamp = _own(info).lamp(value)
    if lamp is None:
        return read_tube(value)
    # The class does not count for a lamp with a constant of its own.
    return OwnTube(percent=12.0, older_scale=False, text=lamp.name, lamp=lamp)


def _lamp_or_kind(value: object, info: ValidationInfo) -> object:
    """Read a kind of UV lamp, one of the group's own by its name."""
    if not isinstance(value, str):
        return value
    return read_uv_lamp(value) if _own(info).lamp(value) is None else _tube(value, info)


def kind_of(tube: TubeStrength | OtherLamp | None, lamp: UvLamp | None) -> UvLamp:
    """Return the kind of UV lamp that is meant; what is not told to be another is a T5 HO tube."""
    if isinstance(tube, OtherLamp) and lamp in (None, UvLamp.T5_HO):
        return tube.kind
    if isinstance(tube, OwnTube):
        return tube.lamp.kind
    return UvLamp.T5_HO if lamp is None else lamp


def names_a_class(tube: TubeStrength | OtherLamp | None, lamp: UvLamp | None) -> bool:
    """Say whether a class of T5 HO tube is named, which readings can be held against."""
    is_class = isinstance(tube, TubeStrength) and not isinstance(tube, OwnTube)
    return is_class and kind_of(tube, lamp) is UvLamp.T5_HO


def screen_named(value: object, info: ValidationInfo) -> object:
    """Read a screen, one of the group's own by its name."""
    if not isinstance(value, str):
        return value
    screen = _own(info).screen(value)
    return read_between(value) if screen is None else Passes(screen.passes, screen.name)


def _screen_if_known(value: object, info: ValidationInfo) -> object:
    """Read a screen, or that no more is known of it than that it is there."""
    if not isinstance(value, str) or _own(info).screen(value) is not None:
        return screen_named(value, info)
    unsure = read_some_mesh(value)
    return screen_named(value, info) if unsure is None else unsure


Text = Annotated[str, Option()]
AnimalName = Annotated[str, Option(completes="animal")]
AnimalNames = Annotated[str, Option(completes="animal", several=True)]
CommandName = Annotated[str, Option(completes="command")]
PageName = Annotated[str, Option(completes="page")]
Convertible = Annotated[Measure, measured(read_convertible), Option()]
Age = Annotated[Measure, _unitless(read_age), Option()]
Duration = Annotated[Measure, _unitless(read_duration), Option()]
EnclosureLength = Annotated[Measure | Size, measured(_read_enclosure_length), Option()]
EnclosureSize = Annotated[Size, measured(read_size), Option()]
Hours = Annotated[Measure, _unitless(_read_hours), Option()]
Latitude = Annotated[float, reading(read_latitude), Option()]
Length = Annotated[Measure, _one(read_length), Option()]
Percent = Annotated[float, reading(read_percent), Option()]
Setting = Annotated[float, reading(read_setting), Option()]
Power = Annotated[Measure, _unitless(read_power), Option()]
Month = Annotated[int, reading(read_month), Option()]
Readings = Annotated[tuple[PlacedReading, ...], measured(read_placed_readings), Option()]
DatedReadings = Annotated[tuple[DatedReading, ...], BeforeValidator(_dated), Option()]
AirTemperature = Annotated[Measure, _one(read_air_temperature), Option()]
AirRange = Annotated[Measure, measured(read_air_temperature), Option()]
SurfaceRange = Annotated[Measure, measured(read_surface_temperature), Option()]
SurfaceTemperature = Annotated[Measure, _one(read_surface_temperature), Option()]
Tube = Annotated[TubeStrength | OtherLamp, BeforeValidator(_tube), Option(completes="tube")]
WhiteLamps = Annotated[tuple[LightLamp, ...], measured(read_white_lamps), Option()]
TubeClass = Annotated[TubeStrength | OtherLamp, reading(read_tube), Option(completes="tube")]
TubeCount = Annotated[int, BeforeValidator(_read_tubes), Option(choices=("1", "2", "3", "4"))]
UvLampKind = Annotated[
    UvLamp, reading(read_uv_lamp), Option(choices=tuple(kind.value for kind in UvLamp))
]
UvLampOrOwn = Annotated[
    UvLamp | OwnTube, BeforeValidator(_lamp_or_kind), Option(completes="uv_lamp")
]
TubeLength = Annotated[Measure, _one(read_tube_length), Option()]
FixtureOption = Annotated[Fixture, reading(read_fixture), Option(choices=("polished", "plain"))]
ScreenOption = Annotated[Screen | Pane, BeforeValidator(screen_named), Option(completes="screen")]
FixtureIfKnown = Annotated[
    Fixture | Unsure,
    reading(lambda text: read_unsure(text) or read_fixture(text)),
    Option(choices=("polished", "plain", NOT_SURE)),
]
ScreenIfKnown = Annotated[
    Screen | Pane | Unsure, BeforeValidator(_screen_if_known), Option(completes="screen")
]
UviRange = Annotated[tuple[float, float], reading(read_uvi_range), Option()]
