"""The box that a first lamp goes into: how it was taken, and the air that the lamp holds in it."""

from dataclasses import dataclass

from bot.answers.figures import temperature, temperature_range, watts
from bot.answers.heat_parts import AFTER_A_CHANGE, HEAT_CAUTIONS, box_row
from bot.answers.linking import page_links, source_lines
from bot.language.quantities import Units
from bot.preferences import Context
from bot.queries.heat import WattsQuery
from bot.questions.heat.shared import LAMP_PLACES, box_asked
from bot.questions.shared import limits_for
from bot.reply import Reply, Row, Value
from calc.heat.box import MOST_RISE_K, Spot, air_held
from calc.heat.enclosure import Enclosure, LampPlace
from calc.heat.first_wattage import FirstWattage
from calc.limits import Met, passed
from calc.uncertainty import Estimate
from calc.validity import OutsideModelError

__all__ = ["Boxed", "box_of"]

_GUIDE = ("the-cool-end", "warm-end-and-cool-end")
_SOURCES = ("enclosure_model", "lamp_beams", "lamp_steps")


@dataclass(frozen=True, slots=True)
class Boxed:
    """The enclosure told, and where its lamp hangs."""

    enclosure: Enclosure
    place: LampPlace
    row: Row

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

    def rows(self, found: FirstWattage, room_c: float, units: Units) -> tuple[Row, ...]:
        """Return how the box was taken, and the air to expect in it."""
        held = self.held_c(found, room_c)
        lamp = watts(max(found.buy_w))
        told = f"about {temperature(held.best, units)} with a {lamp} lamp"
        span = temperature_range(held.low, held.high, units)
        return self.row, Row(label="Cool end then", text=f"{told}, within {span}")

    def refused(self, found: FirstWattage, query: WattsQuery, context: Context) -> Reply | None:
        """Return that no such lamp may go into this box, where its cool end passes a limit."""
        held = self.held_c(found, query.room.low)
        if not passed(limits_for(query.animal, context), Met(coolest_air_c=held.best)):
            return None
        if held.best < query.room.low + 1.0:
            # It is the room that is past the limit, and that is said as what was told.
            return None
        units, most = context.units, watts(max(found.buy_w))
        return Reply(
            command="watts",
            status="problem",
            title="Too hot a box for such a lamp",
            answer=f"Do not: a {most} lamp would hold the cool end of this box at about "
            f"{temperature(held.best, units)}, and nothing in it stays cool enough.",
            values=(
                Value.of("lamp_power", found.watts, "W"),
                Value.of("air_held", held, "degC"),
            ),
            rows=(self.row,),
            steps=(
                (
                    "Take a longer box, more mesh or a cooler room, or a weaker lamp nearer to "
                    "the surface; then ask again."
                ),
                AFTER_A_CHANGE,
            ),
            cautions=HEAT_CAUTIONS,
            guide=page_links(_GUIDE, context.guide_url),
            sources=source_lines(_SOURCES),
        )


def box_of(query: WattsQuery) -> Boxed | None:
    """Return the box that was told, or None."""
    if query.enclosure is None:
        return None
    unsaid = tuple(x for x in ("material", "lid") if x not in query.model_fields_set)
    return Boxed(
        box_asked(query.enclosure, query.material, query.lid),
        LAMP_PLACES[query.place],
        box_row(query.enclosure, query.material, query.lid, unsaid),
    )
