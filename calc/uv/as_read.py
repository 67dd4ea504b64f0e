"""Lamps by what a group read of their class."""

from collections.abc import Mapping

from calc.uv.group_class import GroupClass
from calc.uv.lamp import Fixture, Lamp, of_group

__all__ = ["Groups", "as_read"]

Groups = Mapping[tuple[float, Fixture], GroupClass]
"""What a group's readings say of classes, by strength [%] and fixture."""


def as_read(lamp: Lamp, groups: Groups) -> Lamp:
    """Return a lamp with what a group read of its class; by own readings it stays as it is."""
    if lamp.own is not None:
        return lamp
    return of_group(lamp, groups.get((lamp.strength_percent, lamp.fixture)))
