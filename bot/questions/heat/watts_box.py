"""The box that a first lamp goes into: how it was told, and the air that the lamp holds in it."""

from dataclasses import dataclass

from bot.queries.heat import WattsQuery
from bot.questions.heat.shared import LAMP_PLACES, Box, box_asked, box_told
from calc.heat.box import MOST_RISE_K, Spot, air_held
from calc.heat.enclosure import Enclosure, LampPlace
from calc.heat.first_wattage import FirstWattage
from calc.uncertainty import Estimate
from calc.validity import OutsideModelError

__all__ = ["Boxed", "boxed"]


@dataclass(frozen=True, slots=True)
class Boxed:
    """The enclosure told, and where its lamp hangs."""

    enclosure: Enclosure
    place: LampPlace
    told: Box

    def held_c(self, found: FirstWattage, room_c: float) -> Estimate:
        """Return the air at the cool end [degC] by the smallest and the largest lamp to buy."""
        least, most = (
            self._held(step * self.place.value, room_c)
            for step in (min(found.buy_w), max(found.buy_w))
        )
        return Estimate(least.low, most.best, most.high)

    def _held(self, inside_w: float, room_c: float) -> Estimate:
        try:
            return air_held(self.enclosure, inside_w, room_c, Spot.WARM_END)
        except OutsideModelError:
            return Estimate.exact(room_c + MOST_RISE_K)


def boxed(query: WattsQuery) -> Boxed | None:
    """Return the box that was told, or None."""
    told = box_told(query.enclosure, query.material, query.lid, query.model_fields_set)
    if query.enclosure is None or told is None:
        return None
    enclosure = box_asked(query.enclosure, query.material, query.lid)
    return Boxed(enclosure, LAMP_PLACES[query.place], told)
