"""What a map means for the way an animal lives: its branches, its dock, its night.

Words: ``words/<language>/section.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.facts import Bound, Length, Say, Uvi, metres, uvi
from calc.animal import Animal
from calc.setup.lives import Life, lives_of
from calc.setup.room import Room
from calc.uv.placement import place

__all__ = ["SectionLife", "lives_told"]

_TOLD = (Life.WATER, Life.CLIMBS, Life.NIGHT)


@dataclass(frozen=True, slots=True)
class SectionLife:
    """A way of life; ``branch``: no higher one under the lamp, where the UV index is ``most``."""

    life: Life
    branch: Length | None
    most: Uvi

    @property
    def told(self) -> Say:
        """Return what it means for the map."""
        return Say.by("section-life", self.life, self)


def lives_told(animal: Animal | None, room: Room) -> tuple[SectionLife, ...]:
    """Return what the ways of life of an animal mean for a map; nothing without an animal."""
    return () if animal is None else tuple(_lives(animal, room))


def _lives(animal: Animal, room: Room) -> Iterator[SectionLife]:
    for life in lives_of(animal):
        if life in _TOLD:
            branch_m = _highest_branch_m(room) if life is Life.CLIMBS else None
            branch = None if branch_m is None else metres(branch_m, bound=Bound.AT_MOST)
            yield SectionLife(life, branch, uvi(room.high_uvi))


def _highest_branch_m(room: Room) -> float | None:
    """Return the highest branch under the lamp that keeps a back out of too much UV [m]."""
    tube = room.tubes[0]
    ends = place(room.lamp, tube.screen, room.low_uvi, room.high_uvi).ends
    if ends is None:
        return None
    near, start, _ = ends
    # Where the length is not known, the near end is for a short tube alone.
    nearest_m = start.distance_m if room.lamp.may_be else near.distance_m
    top_m = tube.z_m - nearest_m - room.back_m
    return top_m if top_m > 0.0 else None
