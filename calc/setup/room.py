"""A box with its light as it is judged: tubes, platform, heat patch, the UV wanted on a back."""

from dataclasses import dataclass, replace

from calc.uv.danger import judge_uvi
from calc.uv.ground import HeatPatch, Platform
from calc.uv.lamp import Lamp, side_by_side
from calc.uv.lengths import DARK_ENDS_M
from calc.uv.patches import CELLS, Glance, Patches, glance, patches
from calc.uv.section import Box, HungTube

__all__ = ["Room"]

_FEW = 10
# Where nothing was told, tubes hang so far from middle to middle [m].
_APART_M = 0.10


@dataclass(frozen=True, slots=True)
class Room:
    """Equal tubes side by side, the basking place under them, and the range wanted there [1].

    ``unchecked``: the range is from memory alone.
    """

    box: Box
    tubes: tuple[HungTube, ...]
    platform: Platform
    back_m: float
    low_uvi: float
    high_uvi: float
    heat: HeatPatch | None = None
    unchecked: bool = False

    @property
    def back_z_m(self) -> float:
        """Height of a back on the platform [m]."""
        return self.platform.top_m + self.back_m

    @property
    def tube_y_m(self) -> float:
        """Middle of the tubes from the back wall [m]."""
        return (self.tubes[0].y_m + self.tubes[-1].y_m) / 2.0

    @property
    def tube_length_m(self) -> float:
        """Length of each tube, dark ends included [m]."""
        return self.tubes[0].lamp.lit_length_m + DARK_ENDS_M

    @property
    def tube_ends_m(self) -> tuple[float, float]:
        """Where the tubes begin and end from the warm end wall [m]."""
        half = self.tube_length_m / 2.0
        return self.tubes[0].x_m - half, self.tubes[0].x_m + half

    @property
    def gap_m(self) -> float:
        """From the middle of one tube to the middle of the next [m]."""
        if len(self.tubes) == 1:
            return _APART_M
        return (self.tubes[-1].y_m - self.tubes[0].y_m) / (len(self.tubes) - 1)

    @property
    def lamp(self) -> Lamp:
        """All tubes together, as one lamp over one place."""
        count = len(self.tubes)
        return side_by_side(self.tubes[0].lamp, count, self.gap_m if count > 1 else 0.0)

    def met(self, cells: int = CELLS) -> Patches:
        """Return what the animal meets, so many cells along each side of the platform."""
        wanted = self.low_uvi, self.high_uvi
        at = self.tubes, self.box, self.platform, self.back_m
        met = patches(*at, *wanted, self.heat, cells)
        return replace(met, judged=judge_uvi(met.strongest.uvi, *wanted, unchecked=self.unchecked))

    def glance(self) -> Glance:
        """Return what a look at few cells tells."""
        wanted = self.low_uvi, self.high_uvi
        return glance(self.tubes, self.box, self.platform, self.back_m, *wanted, _FEW)

    def with_platform(self, x_m: float, y_m: float, top_m: float) -> "Room":
        """Return the room with its platform elsewhere, middle and top [m]; the heat goes along."""
        old, box = self.platform, self.box
        x_old, y_old = old.middle_m
        by_x, by_y = x_m - x_old, y_m - y_old
        # One that touches a wall is not past it by what rounding leaves.
        platform = Platform(
            max(old.x0_m + by_x, 0.0),
            min(old.x1_m + by_x, box.length_m),
            max(old.y0_m + by_y, 0.0),
            min(old.y1_m + by_y, box.depth_m),
            top_m,
        )
        heat = self.heat
        if heat is not None:
            heat = replace(heat, x_m=heat.x_m + by_x, y_m=heat.y_m + by_y)
        return replace(self, platform=platform, heat=heat)

    def with_lamp(self, lamp: Lamp) -> "Room":
        """Return the room with other tubes that begin where these do."""
        x_m = self.tube_ends_m[0] + (lamp.lit_length_m + DARK_ENDS_M) / 2.0
        return replace(self, tubes=tuple(replace(tube, lamp=lamp, x_m=x_m) for tube in self.tubes))

    def with_count(self, count: int) -> "Room":
        """Return the room with more or fewer tubes about the same middle."""
        first, middle, gap = self.tubes[0], self.tube_y_m, self.gap_m
        sides = (middle + gap * (i - (count - 1) / 2.0) for i in range(count))
        return replace(self, tubes=tuple(replace(first, y_m=y) for y in sides))
