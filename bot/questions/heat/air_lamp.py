"""The heat lamp in use and the air that it holds by itself."""

from dataclasses import dataclass
from enum import Enum, auto

from bot.dangers.past_limits import alarms_past
from bot.facts import Power, Temp, degrees, watts
from bot.queries.heat import AirQuery
from bot.questions.heat.shared import LAMP_PLACES
from bot.reply import Alarm
from calc.heat.basking import check_power
from calc.heat.box import MOST_RISE_K, Ends, Spot, ends_held
from calc.heat.enclosure import Enclosure, LampPlace
from calc.judgement import Judged, Verdict
from calc.limits import Limits, Met
from calc.uncertainty import Estimate
from calc.validity import OutsideModelError

__all__ = ["AirLamp", "Covers", "held_by", "lamp_told", "overheats"]


class Covers(Enum):
    """Whether the lamp in use holds the air, or is past a limit."""

    FINE = auto()
    SHORT = auto()
    JUST = auto()
    MAYBE_MORE = auto()
    MORE = auto()
    HARMS = auto()


@dataclass(frozen=True, slots=True)
class AirLamp:
    """The lamp in use: what of its watts warms the inside, and the air that it holds."""

    power: Power
    inside: Power
    all_inside: bool
    place: LampPlace
    place_told: bool
    held: Temp
    warm_held: Temp
    covers: Covers


def held_by(query: AirQuery, enclosure: Enclosure) -> Ends:
    """Return the air of both ends that the lamp holds by itself."""
    assert query.watts is not None
    check_power(query.watts.low)
    inside_w = query.watts.low * LAMP_PLACES[query.place].value
    try:
        return ends_held(enclosure, inside_w, query.room.low, Spot.WARM_END)
    except OutsideModelError:
        # Hotter than is answered, and hotter than any animal may have it.
        most = Estimate.exact(query.room.low + MOST_RISE_K)
        return Ends(most, most)


def overheats(held: Ends, judged: Judged | None, limits: Limits) -> tuple[Alarm, ...]:
    """Return the hazard of the air that a lamp holds by itself, where it passes a limit."""
    if judged is None or judged.verdict is not Verdict.DANGEROUS:
        return ()
    return alarms_past(limits, Met(coolest_air_c=held.cool_c.best))


def lamp_told(query: AirQuery, held: Ends, judged: Judged | None, *, harms: bool) -> AirLamp:
    """Return the lamp in use as facts."""
    assert query.watts is not None
    place = LAMP_PLACES[query.place]
    return AirLamp(
        power=watts(query.watts.low),
        inside=watts(query.watts.low * place.value),
        all_inside=place.value == 1.0,
        place=place,
        place_told="place" in query.model_fields_set,
        held=degrees(held.cool_c),
        warm_held=degrees(held.warm_c),
        covers=Covers.HARMS if harms else _covers(judged),
    )


def _covers(judged: Judged | None) -> Covers:
    if judged is None or judged.is_fine:
        return Covers.FINE
    is_warm = judged.value.best > judged.high
    if judged.verdict.wants_change:
        return Covers.MORE if is_warm else Covers.SHORT
    return Covers.MAYBE_MORE if is_warm else Covers.JUST
