"""The things a keeper can do about temperatures, one word each."""

from enum import Enum, auto

__all__ = ["Step"]


class Step(Enum):
    """One thing for the keeper to do."""

    SWITCH_LAMP_OFF = auto()
    WARM_IT_TONIGHT = auto()
    WAIT_AND_READ_AGAIN = auto()
    USE_TRUSTED_THERMOMETER = auto()
    MEASURE_SURFACE_WITH_GUN = auto()
    MEASURE_AIR_WITH_PROBE = auto()
    CHECK_PROBE_PLACES = auto()
    COOL_DOWN_IF_TRUE = auto()
    MOVE_PROBE_OUT_OF_BEAM = auto()
    MEASURE_SURFACE = auto()
    MEASURE_COOL_END = auto()
    MEASURE_WATER = auto()
    LOWER_LAMP = auto()
    RAISE_LAMP = auto()
    MORE_POWER = auto()
    LESS_POWER = auto()
    MOVE_LAMP_INWARD = auto()
    SECOND_WEAKER_LAMP = auto()
    MORE_AIR = auto()
    LESS_AIR = auto()
    COOLER_ROOM = auto()
    WARMER_ROOM = auto()
    LONGER_ENCLOSURE = auto()
    CHECK_WARM_PROBE = auto()
    WATCH_WARM_END = auto()
    HEAT_THE_NIGHT = auto()
    CONSIDER_NIGHT_HEAT = auto()
    COOLER_NIGHT = auto()
    WARMER_WATER = auto()
    COOLER_WATER = auto()
    CHECK_THE_RANGE = auto()
    MEASURE_AGAIN = auto()
    LEAVE_AS_IT_IS = auto()
