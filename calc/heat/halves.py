"""The two halves of a box: what each loses, what flows between them, and the two balances."""

from dataclasses import dataclass
from enum import Enum
from math import sqrt

from calc.heat.air import KELVIN, dry_air
from calc.heat.enclosure import Enclosure, upright_opening_flow
from calc.roots import rising_root
from calc.validity import check

__all__ = ["HOTTEST_AIR_C", "MOST_RISE_K", "Halves", "Spot", "end_flow"]

MOST_RISE_K = 40.0
"""How far over the room the air is answered."""

HOTTEST_AIR_C = 50.0
"""The warmest air and room that are answered."""

_COLDEST_ROOM_C = 0.0
_GAP_M = 0.45


class Spot(Enum):
    """Where along the box a heater hangs; the value is the share that warms the cool half.

    A lamp shines most of its heat on what is under it. Source: enclosure_model.
    """

    WARM_END = 0.1
    INWARD = 0.3
    MIDDLE = 0.5


@dataclass(frozen=True, slots=True)
class Halves:
    """What a half loses, and what flows between the two, for one enclosure in one room.

    ``room_c`` [degC]; what a kelvin costs by the walls [W/K]; what one kelvin between the halves
    carries over [W]; the squares of what the two flows through vents and lid carry [W²/K].
    """

    room_c: float
    conductance_w_k: float
    over_w_k: float
    through_w2_k: float
    over_lid_w2_k: float

    @classmethod
    def of(cls, enclosure: Enclosure, room_c: float) -> "Halves":
        """Return the halves of an enclosure; a room beyond the model is refused."""
        check("room air", room_c, _COLDEST_ROOM_C, HOTTEST_AIR_C, "degC")
        air = dry_air(room_c)
        heat = air.density_kg_m3 * air.heat_capacity_j_kgk
        # Both flows go as the root of the rise: what one kelvin drives tells every other.
        through, over = enclosure.air_flows_m3_s(1.0, room_c)
        return cls(
            room_c,
            enclosure.conductance_w_k(),
            heat * end_flow(1.0, room_c),
            (heat * through) ** 2 * (room_c + 1.0 + KELVIN),
            (heat * over) ** 2,
        )

    def walls_w(self, rise_k: float) -> float:
        """Return what one half loses through its walls [W]."""
        return self.conductance_w_k * rise_k / 2.0

    def air_w(self, rise_k: float) -> float:
        """Return what one half loses with the air that leaves [W]."""
        rise = max(rise_k, 0.0)
        through = self.through_w2_k / (self.room_c + rise + KELVIN)
        return sqrt(rise * (through + self.over_lid_w2_k)) * rise / 2.0

    def loss_w(self, rise_k: float) -> float:
        """Return what one half loses in all [W]."""
        return self.walls_w(rise_k) + self.air_w(rise_k)

    def apart_k(self, across_w: float) -> float:
        """Return how much warmer the warm half is where so much [W] flows over to the cool one."""
        return float((max(across_w, 0.0) / self.over_w_k) ** (2.0 / 3.0))

    def warm_rise_k(self, cool_rise_k: float, to_cool_w: float) -> float:
        """Return the rise of the warm half from that of the cool one and the heat it is given."""
        return cool_rise_k + self.apart_k(self.loss_w(cool_rise_k) - to_cool_w)

    def more_w(self, cool_rise_k: float, first_w: float, spot: Spot) -> float:
        """Return the heat in the middle [W] that is needed beside what is there already."""
        cool_w = self.loss_w(cool_rise_k)

        def too_much(more_w: float) -> float:
            to_cool = spot.value * first_w + Spot.MIDDLE.value * more_w
            return first_w + more_w - cool_w - self.loss_w(self.warm_rise_k(cool_rise_k, to_cool))

        return max(0.0, rising_root(too_much, -first_w, 2.0 * cool_w))

    def watts(self, cool_rise_k: float, spot: Spot) -> float:
        """Return the heat [W] that holds the cool half so far over the room."""
        cool_w = self.loss_w(cool_rise_k)

        def too_much(watts: float) -> float:
            warm = self.warm_rise_k(cool_rise_k, spot.value * watts)
            return watts - cool_w - self.loss_w(warm)

        return rising_root(too_much, 2.0 * cool_w, cool_w / spot.value)

    def rises_k(self, watts: float, spot: Spot, more_w: float = 0.0) -> tuple[float, float]:
        """Return how far the cool and the warm half come over the room [K]."""
        to_cool_w = spot.value * watts + Spot.MIDDLE.value * more_w
        watts += more_w

        def too_much(cool_rise_k: float) -> float:
            warm = self.warm_rise_k(cool_rise_k, to_cool_w)
            return self.loss_w(cool_rise_k) + self.loss_w(warm) - watts

        if not watts >= 0.0 or too_much(MOST_RISE_K) < 0.0:
            check("heat inside", watts, 0.0, self.watts(MOST_RISE_K, spot), "W")
            cool = MOST_RISE_K
        else:
            cool = rising_root(too_much, 0.0, MOST_RISE_K)
        return cool, self.warm_rise_k(cool, to_cool_w)


def end_flow(apart_k: float, room_c: float) -> float:
    """Return the air that flows over from the warm half to the cool one, and back below.

    Q = (C/3) W H sqrt(g H ΔT/T),  C = 0.65, W = H = 0.45 m

    Parameters
    ----------
    apart_k : how much warmer the warm half is [K], 0 or more
    room_c : room air [degC]

    Returns
    -------
    float
        Flow each way [m³/s].

    Notes
    -----
    Ground, hides and branches are taken to leave one gap open whatever the box, so that a longer
    box has ends that lie further apart.
    Source: doorway_exchange; enclosure_model.

    Examples
    --------
    >>> round(1000.0 * end_flow(2.0, 22.0), 1)
    7.6
    """
    return upright_opening_flow(_GAP_M, _GAP_M, apart_k, room_c)
